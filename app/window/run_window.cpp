#include "window/run_window.h"

#include <QApplication>
#include <QIcon>

#include "document/settings.h"
#include "language/language.h"
#include "window/cloth_style.h"
#include "window/main_window.h"

namespace foldyard {

int run_window(int argc, char** argv) {
  QApplication app(argc, argv);
  QApplication::setApplicationName(QStringLiteral("Foldyard"));
  QGuiApplication::setDesktopFileName(QStringLiteral("org.foldyard.foldyard"));
  QApplication::setWindowIcon(QIcon(QStringLiteral(":/desktop/org.foldyard.foldyard.svg")));
  QApplication::setStyle(new ClothStyle);
  const Places places = usual_places();
  speak(language_for(Settings(places.settings).language()));
  MainWindow window(compare, places);
  window.start(QApplication::arguments().value(1));
  window.show();
  return QApplication::exec();
}

}  // namespace foldyard
