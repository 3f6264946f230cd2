#include <QApplication>
#include <QTest>

#include <atomic>

#include "app/window/longer_words.h"
#include "pictures/studio.h"

namespace foldyard::pictures {
namespace {

using Window = std::unique_ptr<MainWindow>;

Window planned(Studio& studio, QSize size = kUsual) {
  Window window = studio.window(size);
  waited_for_plan(*window);
  return window;
}

void point_at(BoardView& board, const QPointF& scene) {
  for (const QPoint off : {QPoint(2, 0), QPoint()}) QTest::mouseMove(board.viewport(), board.mapFromScene(scene) + off);
}

QPointF middle_of(const LaidCloth& cloth, int patch) {
  return scene_rect(cloth.patches[static_cast<std::size_t>(patch)].folded).center();
}

Window pointed_at(Studio& studio) {
  Window window = planned(studio);
  choose_way(*window, "quarters");
  waited_for_plan(*window);
  BoardView& folded = *window->plan_view()->table()->folded();
  for (int i = 0; i < std::ssize(folded.cloth()->patches); ++i) {
    if (folded.cloth()->patches[static_cast<std::size_t>(i)].is_rest()) continue;
    point_at(folded, middle_of(*folded.cloth(), i));
    break;
  }
  return window;
}

// Dragged by 14 cm, and left there.
Window dragged(Studio& studio) {
  Window window = planned(studio);
  choose_way(*window, "both-edges-in");
  waited_for_plan(*window);
  BoardView& flat = *window->plan_view()->table()->flat();
  const double x = flat.cloth()->cloth().fold.lines.front().in_mm(), y = -flat.cloth()->flat().along.to.in_mm() / 2;
  QTest::mousePress(flat.viewport(), Qt::LeftButton, {}, flat.mapFromScene(QPointF(x, y)));
  for (int i = 1; i <= 14; ++i) {
    QTest::mouseMove(flat.viewport(), flat.mapFromScene(QPointF(x - 10 * i, y)));
    QTest::qWait(10);
  }
  QTest::mouseRelease(flat.viewport(), Qt::LeftButton, {}, flat.mapFromScene(QPointF(x - 140, y)));
  waited_for_plan(*window);
  QTest::qWait(100);
  return window;
}

Window with_tab(Studio& studio, int tab) {
  Window window = planned(studio);
  window->way_tabs()->setCurrentIndex(tab);
  return window;
}

Window compared(Studio& studio, int ways) {
  Window window = planned(studio);
  for (int row = 0; row < 2 * ways; row += 2) window->compare_large()->toggle(row);
  return window;
}

// The last row, where refused ways stand.
Window refused(Studio& studio) {
  Window window = planned(studio);
  window->shelf()->put_on_table(3);
  waited_for_plan(*window);
  const WayModel& ways = *window->way_table()->ways();
  window->way_table()->setCurrentIndex(ways.index(ways.rowCount() - 1, WayModel::way));
  return window;
}

Window batch(Studio& studio) {
  Window window = planned(studio);
  window->show_batch(true);
  waited_for([&] { return window->batch_page()->view()->answer() && !window->batch_page()->planner().is_busy(); });
  return window;
}

Window products(Studio& studio) {
  Window window = batch(studio);
  window->batch_page()->sides()->choose(window->batch_page()->products());
  return window;
}

Window sewing(Studio& studio) {
  Window window = batch(studio);
  window->batch_page()->sides()->choose(window->batch_page()->sewing());
  return window;
}

// Planning that is never done with its tenth way.
Comparison slow(const Question&, Watch& watch) {
  watch.progress.begin(26);
  for (int i = 0; i < 9; ++i) ++watch.progress.done;
  while (!watch.unwanted && !watch.stopped) QTest::qSleep(5);
  return {};
}

Window busy(Studio& studio) {
  auto calls = std::make_shared<std::atomic<int>>(0);
  Window window = studio.window(kUsual, [calls](const Question& question, Watch& watch) {
    return (*calls)++ == 0 ? compare(question, watch) : slow(question, watch);
  });
  waited_for_plan(*window);
  window->shelf()->put_on_table(2);
  waited_for([&] { return window->busy_row()->isVisible(); });
  QTest::qWait(400);
  return window;
}

Window dark(Studio& studio) {
  Window window = planned(studio);
  window->set_shade(Shade::dark);
  return window;
}

Window asked_to_restore(Studio& studio) {
  Window window = studio.after_crashes();
  waited_for_plan(*window);
  return window;
}

Window in_longer_words(Studio& studio) {
  const sample::LongerWords longer;
  Window window = studio.window(kSmall);
  waited_for_plan(*window);
  return window;
}

Window from_the_right(Studio& studio) {
  QApplication::setLayoutDirection(Qt::RightToLeft);
  Window window = planned(studio, kSmall);
  return window;
}

}  // namespace

std::vector<Scene> window_scenes() {
  return {{"first-start", [](Studio& studio) { return studio.first_start(); }},
          {"window", [](Studio& studio) { return planned(studio); }},
          {"section", pointed_at},
          {"by-hand", dragged},
          {"ways-table", [](Studio& studio) { return with_tab(studio, 1); }},
          {"ways-graph", [](Studio& studio) { return with_tab(studio, 2); }},
          {"compare-two", [](Studio& studio) { return compared(studio, 2); }},
          {"compare-three", [](Studio& studio) { return compared(studio, 3); }},
          {"refused", refused},
          {"batch", batch},
          {"products", products},
          {"sewing", sewing},
          {"busy", busy},
          {"window-dark", dark},
          {"recovery", asked_to_restore},
          {"small-screen", [](Studio& studio) { return planned(studio, kSmall); }},
          {"longer-words", in_longer_words},
          {"from-the-right", from_the_right}};
}

}  // namespace foldyard::pictures
