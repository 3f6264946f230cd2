#include "window/language_menu.h"

#include <QActionGroup>

#include "language/language.h"

namespace foldyard {

LanguageMenu::LanguageMenu(Settings& settings, QWidget* parent) : QMenu(tr("Lang&uage"), parent), settings_(settings) {
  (new QActionGroup(this))->setObjectName(QStringLiteral("languages"));
  add(tr("&As the system"), {});
  for (const QString& code : languages()) add(QLatin1Char('&') + language_name(code), code);
}

void LanguageMenu::add(const QString& text, const QString& code) {
  auto* action = addAction(text);
  action->setCheckable(true);
  action->setChecked(settings_.language() == code);
  findChild<QActionGroup*>(QStringLiteral("languages"))->addAction(action);
  connect(action, &QAction::triggered, this, [this, code] {
    settings_.set_language(code);
    emit chosen(in_language(language_for(code), "foldyard::LanguageMenu",
                            QT_TR_NOOP("The language changes when the program is started again.")));
  });
}

}  // namespace foldyard
