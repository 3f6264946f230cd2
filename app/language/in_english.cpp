#include "language/in_english.h"

#include "language/language.h"

namespace foldyard {
namespace {

bool is_english(const QLocale& locale) {
  return locale.language() == QLocale::C || locale.language() == QLocale::English;
}

}  // namespace

InEnglish::InEnglish() {
  if (!is_english(before_)) speak(QStringLiteral("en"), QLocale::c());
}

InEnglish::~InEnglish() {
  if (!is_english(before_)) speak(before_.name().section(QLatin1Char('_'), 0, 0), before_);
}

}  // namespace foldyard
