#pragma once

// A name that nothing in a list has: "Product 4" by the pattern "Product %1" of a
// translation context.

#include <QCoreApplication>

#include <algorithm>
#include <string>

namespace foldyard {

template <typename List>
std::string free_name(const List& list, const char* context, const char* pattern) {
  for (std::size_t n = list.size() + 1;; ++n) {
    const std::string name = QCoreApplication::translate(context, pattern).arg(n).toStdString();
    if (std::none_of(list.begin(), list.end(), [&](const auto& each) { return each.name == name; })) return name;
  }
}

}  // namespace foldyard
