#pragma once

// The menu of languages: the system's, or one chosen for good.
//
// The choice is kept in the settings. The words of a window are made once, so
// another language begins at the next start; the menu says so, in the words of
// the language chosen.

#include <QMenu>

#include "document/settings.h"

namespace foldyard {

class LanguageMenu : public QMenu {
  Q_OBJECT

 public:
  // settings: live longer than the menu.
  LanguageMenu(Settings& settings, QWidget* parent);

 signals:
  // A language was chosen; what to say of it.
  void chosen(const QString& words);

 private:
  void add(const QString& text, const QString& code);

  Settings& settings_;
};

}  // namespace foldyard
