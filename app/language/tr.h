#pragma once

// Words of the program, in the language that is spoken, where no class stands for
// their context: in free functions. Classes of QObject have a tr of their own, and
// other classes get one by Q_DECLARE_TR_FUNCTIONS.
//
// The text is a literal: the command that collects texts reads no variables. `note`
// tells two uses of one English text apart. With n, "%n" in the text is n, in the
// form that the language has for so many.
//
// Example: tr("%n flaw(s)", nullptr, 2) is "2 flaws".

#include <QCoreApplication>
#include <QString>

namespace foldyard {

// The context is the namespace, as the command that collects texts has it.
inline QString tr(const char* text, const char* note = nullptr, int n = -1) {
  return QCoreApplication::translate("foldyard", text, note, n);
}

}  // namespace foldyard
