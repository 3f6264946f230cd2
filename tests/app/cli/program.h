#pragma once

// The real executable, called as a shell calls it: without a display.

#include <QByteArray>
#include <QStringList>

namespace foldyard::test {

// code: −1 where it did not end by itself.
struct Reply {
  int code = -1;
  QByteArray out;
  QByteArray err;
  bool says(const char* words) const { return out.contains(words); }
  bool complains(const char* words) const { return err.contains(words); }
};

// output: a file for what it prints; empty: the reply has it.
Reply run_foldyard(const QStringList& words, const QString& folder, const char* locale = "C.UTF-8",
                   const QString& output = {});

}  // namespace foldyard::test
