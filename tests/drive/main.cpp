// Drives the window as a newcomer would, with a real mouse and real keys
// (xdotool), from the first start to the PDF of an own roll. Built by name only,
// run under a display of its own by docs/pictures/drive.
//
//   foldyard_drive FOLDER    the PDF, and a picture after each step

#include <QApplication>
#include <QElapsedTimer>
#include <QFile>
#include <QFileDialog>
#include <QProcess>
#include <QScreen>
#include <QTemporaryDir>
#include <QTest>

#include <functional>
#include <iostream>

#include "window/cloth_style.h"
#include "window/guide_strip.h"
#include "window/main_window.h"
#include "window/own_roll_dialog.h"

namespace foldyard {
namespace {

constexpr int kStepMs = 30'000;
constexpr int kAllMs = 60'000;

QStringList at(const QPoint& place) { return {QString::number(place.x()), QString::number(place.y())}; }

class Drive {
 public:
  explicit Drive(QString folder)
      : folder_(std::move(folder)), window_(compare, {own_.filePath("settings.ini"), own_.filePath("recovery")}) {}

  bool run() {
    clock_.start();
    QFile::remove(pdf());
    window_.resize(1480, 900);
    window_.start({});
    window_.show();
    const bool done = step("start", [] {}, [this] { return window_.isActiveWindow(); }) &&
                      step("drag", [this] { drag_second_roll(); }, [this] { return window_.shelf()->on_table() == 1 && has_plan(); }) &&
                      step("own-roll", [this] { click(window_.first_steps()->strip()->own_roll()); }, is_open<OwnRollDialog>) &&
                      step("planned", [this] { fill_in_roll(); }, [this] { return window_.document().job().rolls.size() == 1 && has_plan(); }) &&
                      step("export", [this] { keys({"ctrl+e"}); }, is_open<QFileDialog>) &&
                      step("written", [this] { name_file(); }, [this] { return QFile::exists(pdf()); });
    std::cout << (done ? "from start to PDF in " : "stopped after ") << clock_.elapsed() / 1000.0 << " s" << std::endl;
    return done && clock_.elapsed() < kAllMs;
  }

 private:
  QString pdf() const { return folder_ + QLatin1String("/diagram.pdf"); }
  bool has_plan() { return !window_.planner().is_busy() && window_.plan_view()->plan(); }
  template <class Dialog>
  static bool is_open() {
    QWidget* dialog = QApplication::activeModalWidget();
    return qobject_cast<Dialog*>(dialog) && dialog->isVisible();
  }

  // The acts of a step, what is to be seen after it, and its picture.
  bool step(const char* name, const std::function<void()>& act, const std::function<bool()>& is_done) {
    act();
    const bool done = QTest::qWaitFor(is_done, kStepMs);
    QTest::qWait(150);
    const QString file = QStringLiteral("%1/drive-%2-%3.png").arg(folder_).arg(++number_).arg(QLatin1String(name));
    QApplication::primaryScreen()->grabWindow(0).save(file);
    std::cout << name << (done ? ": done at " : ": NOT done at ") << clock_.elapsed() / 1000.0 << " s" << std::endl;
    return done;
  }

  // The window goes on while the tool works.
  void tool(const QStringList& words) {
    QProcess process;
    process.start(QStringLiteral("xdotool"), words);
    if (!QTest::qWaitFor([&] { return process.state() == QProcess::NotRunning; }, kStepMs)) process.kill();
  }
  void keys(const QStringList& names) {
    tool({"windowfocus", QString::number(QApplication::activeWindow() ? QApplication::activeWindow()->winId() : window_.winId())});
    tool(QStringList{"key", "--delay", "30"} + names);
  }
  void type(const QString& text) { tool({"type", "--delay", "15", text}); }
  void click(QWidget* widget) {
    tool(QStringList{"mousemove"} + at(widget->mapToGlobal(widget->rect().center())) + QStringList{"click", "1"});
  }

  void drag_second_roll() {
    RollList* list = window_.shelf()->list();
    const QPoint from = list->viewport()->mapToGlobal(list->visualRect(list->model()->index(1, 0)).center());
    QWidget* table = window_.plan_view();
    const QPoint to = table->mapToGlobal(table->rect().center());
    QStringList words = QStringList{"mousemove"} + at(from) + QStringList{"mousedown", "1"};
    for (int i = 1; i <= 20; ++i) words += QStringList{"mousemove"} + at(from + (to - from) * i / 20) + QStringList{"sleep", "0.03"};
    tool(words + QStringList{"mouseup", "1"});
  }

  void fill_in_roll() {
    keys({"ctrl+a"});
    type("140 cm");
    keys({"Tab", "ctrl+a"});
    type("6 m");
    keys({"Return"});
  }

  void name_file() {
    keys({"ctrl+a"});
    type(pdf());
    keys({"Return"});
  }

  QString folder_;
  QTemporaryDir own_;
  QElapsedTimer clock_;
  MainWindow window_;
  int number_ = 0;
};

}  // namespace
}  // namespace foldyard

int main(int count, char** words) {
  QApplication app(count, words);
  QApplication::setStyle(new foldyard::ClothStyle);
  const QStringList call = QApplication::arguments().mid(1);
  if (call.size() == 1) return foldyard::Drive(call[0]).run() ? 0 : 1;
  std::cerr << "foldyard_drive FOLDER\n";
  return 2;
}
