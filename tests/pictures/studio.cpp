#include "pictures/studio.h"

#include <QDateTime>
#include <QTest>

namespace foldyard::pictures {

bool waited_for(const std::function<bool()>& is_there) { return QTest::qWaitFor(is_there, 60'000); }

bool waited_for_plan(MainWindow& window) {
  return waited_for([&] { return !window.planner().is_busy() && window.plan_view()->plan() && !window.fold_hand().is_busy(); });
}

void choose_way(MainWindow& window, const char* key) {
  FoldWay way;
  if (!way_from_key(key, way)) return;
  const WayModel& ways = *window.way_table()->ways();
  window.way_table()->setCurrentIndex(ways.index(ways.row_of(way), WayModel::way));
}

Places Studio::places() {
  const QString each = folder_.filePath(QString::number(++number_));
  return {each + QLatin1String(".ini"), each};
}

std::unique_ptr<MainWindow> Studio::first_start() {
  auto window = std::make_unique<MainWindow>(compare, places());
  window->resize(kUsual);
  window->start({});
  window->show();
  return window;
}

// A side file whose window is gone was left by a crash; who takes it counts one.
std::unique_ptr<MainWindow> Studio::after_crashes() {
  const Places kept = places();
  const Job job = window()->document().job();
  (void)Recovery(kept.recovery).keep({job, {}, {}, QDateTime(QDate(2026, 3, 14), QTime(10, 20)), 0});
  {
    Recovery second(kept.recovery);
    (void)second.take(second.left().front().id);
  }
  auto window = std::make_unique<MainWindow>(compare, kept);
  window->documents()->settings().set_guide_closed(true);
  window->resize(kUsual);
  window->start({});
  window->show();
  return window;
}

std::unique_ptr<MainWindow> Studio::window(QSize size, Compare compare) {
  auto window = std::make_unique<MainWindow>(std::move(compare), places());
  window->documents()->settings().set_guide_closed(true);
  window->resize(size);
  window->start({});
  window->show();
  return window;
}

}  // namespace foldyard::pictures
