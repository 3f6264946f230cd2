// A clock that ticks in the thread of the window: the longest time between two
// ticks is how long it did not answer.

#include <QApplication>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

#include <algorithm>
#include <functional>

#include "app/table/laid_squares.h"
#include "frames/sections.h"
#include "frames/thread_time.h"
#include "window/main_window.h"

namespace foldyard::frames {
namespace {

constexpr int kTickMs = 5;
constexpr int kWaitMs = 120'000;
constexpr int kDragSteps = 40;
constexpr double kMostBlock = 0.1;

class Ticker {
 public:
  Ticker() {
    timer_.setTimerType(Qt::PreciseTimer);
    timer_.setInterval(kTickMs);
    QObject::connect(&timer_, &QTimer::timeout, [this] { tick(); });
  }
  // The longest that one turn of the event loop took while `work` went on.
  double longest(const std::function<void()>& work) {
    longest_ = 0;
    last_ = thread_seconds();
    timer_.start();
    work();
    QTest::qWait(4 * kTickMs);
    timer_.stop();
    return longest_;
  }

 private:
  void tick() {
    const double now = thread_seconds();
    longest_ = std::max(longest_, now - last_);
    last_ = now;
  }

  QTimer timer_;
  double last_ = 0;
  double longest_ = 0;
};

// By the event loop, as a person's acts come.
void later(const std::function<void()>& act) {
  bool done = false;
  QTimer::singleShot(0, [&] {
    act();
    done = true;
  });
  (void)QTest::qWaitFor([&] { return done; }, kWaitMs);
}

void wait_for_plan(MainWindow& window) {
  (void)QTest::qWaitFor([&] { return !window.planner().is_busy() && window.plan_view()->plan(); }, kWaitMs);
}

void choose_off_centre(MainWindow& window) {
  WayModel& ways = *window.way_table()->ways();
  for (int row = 0; row < ways.rowCount(); ++row)
    if (ways.way_at(row) == FoldWay{FoldKind::off_centre, 2, false, false})
      window.way_table()->setCurrentIndex(ways.index(row, WayModel::way));
}

void drag_fold_line(MainWindow& window) {
  BoardView* flat = window.plan_view()->table()->flat();
  const auto place = [&](double mm) { return flat->mapFromScene(QPointF(mm, -flat->cloth()->flat().along.to.in_mm() / 2)); };
  const double from = flat->cloth()->cloth().fold.lines.front().in_mm();
  later([&] { QTest::mousePress(flat->viewport(), Qt::LeftButton, {}, place(from)); });
  for (int i = 1; i <= kDragSteps; ++i) {
    later([&] { QTest::mouseMove(flat->viewport(), place(from - 10 * i)); });
    QTest::qWait(kTickMs);
  }
  later([&] { QTest::mouseRelease(flat->viewport(), Qt::LeftButton, {}, place(from - 10 * kDragSteps)); });
  (void)QTest::qWaitFor([&] { return !window.fold_hand().is_busy(); }, kWaitMs);
}

void point_at_ten_thousand(ClothTable& table) {
  later([&] { table.show_cloth(sample::squares(100)); });
  QTest::qWait(2 * kTickMs);
  QWidget* board = table.folded()->viewport();
  for (int i = 0; i < kDragSteps; ++i)
    later([&] { QTest::mouseMove(board, QPoint(board->width() / 2 + i, board->height() / 2)); });
}

}  // namespace

std::string blocks_section() {
  bench::Table table({"while", "of 100 ms", "ms"});
  const auto add = [&](const char* what, double seconds) {
    table.add({what, bench::times(seconds / kMostBlock), bench::milliseconds(seconds)});
  };
  Ticker ticker;
  const QTemporaryDir folder;
  MainWindow window(compare, {folder.filePath("settings.ini"), folder.filePath("recovery")});
  window.resize(1480, 900);
  later([&] { window.show(); });
  add("the demo is opened and planned", ticker.longest([&] {
    later([&] { window.open_demo(); });
    wait_for_plan(window);
  }));
  add("one roll after the other is put on the table", ticker.longest([&] {
    for (int roll = 1; roll < 5; ++roll) {
      later([&] { window.shelf()->put_on_table(roll); });
      wait_for_plan(window);
    }
  }));
  add("fold ways are gone through", ticker.longest([&] {
    for (int row = 0; row < window.way_table()->ways()->rowCount(); ++row)
      later([&] { window.way_table()->setCurrentIndex(window.way_table()->ways()->index(row, WayModel::way)); });
  }));
  choose_off_centre(window);
  add("a fold line is dragged", ticker.longest([&] { drag_fold_line(window); }));
  add("the batch is planned and shown", ticker.longest([&] {
    later([&] { window.show_batch(true); });
    QTest::qWait(1000);
  }));
  ClothTable squares;
  squares.resize(1200, 800);
  squares.show();
  add("10 000 panels are shown and pointed at", ticker.longest([&] { point_at_ten_thousand(squares); }));
  return "### The longest that the window does not answer\n\n"
         "A clock ticks every 5 ms in the thread of the window; the longest from one tick to the next, in\n"
         "processor time of that thread. The goal is less than 100 ms.\n\n" +
         table.text();
}

}  // namespace foldyard::frames
