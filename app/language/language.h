#pragma once

// The languages that the program speaks, and how one is begun.
//
// English stands in the sources; every other language is a pair of catalogues in
// resources/languages, built into the program: one for the window, one for what is
// drawn, printed and written. English has catalogues too, of plurals only ("%n
// roll(s)" is "1 roll" and "2 rolls"), so a language is begun in every program and
// in every test that looks at words.

#include <QLocale>
#include <QString>
#include <QStringList>

namespace foldyard {

// The codes: "en" first, then the others by their code.
QStringList languages();
// By its own name: "English", "Deutsch".
QString language_name(const QString& code);

// The code of the language to speak: the chosen one where there is such a language;
// else, with nothing chosen, the first that the system asks for, else English.
// What the system asks for is told by LANGUAGE, LC_ALL and LANG.
QString language_for(const QString& chosen, const QLocale& system = QLocale::system());

// Begins a language, in place of the one before: its words, those of the library's
// own dialogs, and how numbers and dates are written. Where the system speaks the
// language too, numbers and dates are as the system writes them, else as is usual
// in the language. REQUIRES a QCoreApplication, and a code of languages().
void speak(const QString& code, const QLocale& system = QLocale::system());

// A text of the window in another language than is spoken: English where it has no
// such text. `context` is that of the class, as in QCoreApplication::translate.
QString in_language(const QString& code, const char* context, const char* text);

}  // namespace foldyard
