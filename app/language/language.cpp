#include "language/language.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QTranslator>

#include <memory>
#include <vector>

namespace foldyard {
namespace {

// Those of the language that is spoken, the last one asked first.
std::vector<std::unique_ptr<QTranslator>>& installed() {
  static std::vector<std::unique_ptr<QTranslator>> all;
  return all;
}

const QString kFolder = QStringLiteral(":/languages");

// A catalogue that is not there leaves its words in English.
void install(const QString& name, const QString& folder) {
  auto catalogue = std::make_unique<QTranslator>();
  if (!catalogue->load(name, folder)) return;
  QCoreApplication::installTranslator(catalogue.get());
  installed().push_back(std::move(catalogue));
}

// A system without a country ("C") writes its plain numbers in English.
QLocale locale_for(const QString& code, const QLocale& system) {
  const QLocale usual(code);
  const bool is_plain = system.language() == QLocale::C && code == QLatin1String("en");
  return is_plain || system.language() == usual.language() ? system : usual;
}

QString language_of(const QString& tag) { return tag.section(QLatin1Char('-'), 0, 0).toLower(); }

}  // namespace

QStringList languages() { return {QStringLiteral("en"), QStringLiteral("de")}; }

QString language_name(const QString& code) {
  return code == QLatin1String("de") ? QStringLiteral("Deutsch") : QStringLiteral("English");
}

QString language_for(const QString& chosen, const QLocale& system) {
  if (languages().contains(chosen)) return chosen;
  for (const QString& tag : system.uiLanguages())
    if (languages().contains(language_of(tag))) return language_of(tag);
  return languages().front();
}

void speak(const QString& code, const QLocale& system) {
  installed().clear();
  install(QStringLiteral("qtbase_") + code, QLibraryInfo::path(QLibraryInfo::TranslationsPath));
  install(QStringLiteral("pages_") + code, kFolder);
  install(QStringLiteral("window_") + code, kFolder);
  QLocale::setDefault(locale_for(code, system));
}

QString in_language(const QString& code, const char* context, const char* text) {
  QTranslator catalogue;
  const bool is_there = catalogue.load(QStringLiteral("window_") + code, kFolder);
  const QString words = is_there ? catalogue.translate(context, text) : QString();
  return words.isEmpty() ? QString::fromUtf8(text) : words;
}

}  // namespace foldyard
