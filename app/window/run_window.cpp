#include "window/run_window.h"

#include <QApplication>

#include "window/cloth_style.h"
#include "window/main_window.h"

namespace foldyard {

int run_window(int argc, char** argv) {
  QApplication app(argc, argv);
  QApplication::setApplicationName(QStringLiteral("Foldyard"));
  QApplication::setStyle(new ClothStyle);
  MainWindow window;
  const auto arguments = QApplication::arguments();
  if (arguments.size() < 2 || !window.open_file(arguments[1])) {
    const auto notice = window.notice();
    window.open_demo();
    window.show_notice(notice);
  }
  window.show();
  return QApplication::exec();
}

}  // namespace foldyard
