#pragma once

// Core's text for Qt.

#include <QString>

#include <string>
#include <string_view>

namespace foldyard {

inline QString text(const std::string& utf8) { return QString::fromStdString(utf8); }
inline QString text(std::string_view utf8) { return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size())); }

}  // namespace foldyard
