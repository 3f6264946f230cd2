// One repaint of the cutting table, whole and zoomed in, beside a plain scene of
// as many rectangles as the table shows.

#include <QApplication>
#include <QGraphicsRectItem>
#include <QGraphicsView>

#include <algorithm>
#include <functional>
#include <vector>

#include "app/table/laid_squares.h"
#include "frames/sections.h"
#include "frames/thread_time.h"
#include "table/cloth_table.h"

namespace foldyard::frames {
namespace {

constexpr int kFrames = 31;
constexpr int kNearer = 8;  // steps of zoom: about six times as large
constexpr double kFrame = 0.016;
constexpr QSize kSize(1200, 800);

double seconds(const std::function<void()>& act) {
  const double begin = thread_seconds();
  act();
  return thread_seconds() - begin;
}

double middle(const std::function<void(int)>& frame) {
  std::vector<double> each;
  for (int i = 0; i < kFrames; ++i) each.push_back(seconds([&] { frame(i); }));
  std::nth_element(each.begin(), each.begin() + kFrames / 2, each.end());
  return each[kFrames / 2];
}

void show(QWidget& widget) {
  widget.resize(kSize);
  widget.show();
  QApplication::processEvents();
}

// As many rectangles as n × n panels on both sides of the table, one scene each.
double plain_frame(int n) {
  QGraphicsScene scene;
  const double side = 1200.0 / n;
  for (int i = 0; i < n; ++i)
    for (int j = 0; j < n; ++j) scene.addRect(i * side, j * side, side - 1, side - 1, QPen(Qt::black, 0), Qt::gray);
  QWidget both;
  std::vector<QGraphicsView*> views;
  for (int i = 0; i < 2; ++i) {
    views.push_back(new QGraphicsView(&scene, &both));
    views.back()->setGeometry(i * kSize.width() / 2, 0, kSize.width() / 2, kSize.height());
  }
  show(both);
  for (QGraphicsView* view : views) view->fitInView(scene.sceneRect(), Qt::KeepAspectRatio);
  return middle([&](int) { both.repaint(); });
}

struct Frame {
  double set_up = 0;
  double fit = 0;
  double pointed = 0;
  double near = 0;
  double plain = 0;
};

void repaint(ClothTable& table) {
  table.flat()->viewport()->repaint();
  table.folded()->viewport()->repaint();
  table.section()->repaint();
}

Frame measure(int n) {
  Frame frame;
  ClothTable table;
  show(table);
  frame.set_up = seconds([&] {
    table.show_cloth(sample::squares(n));
    QApplication::processEvents();
  });
  const LaidClothPtr cloth = table.flat()->cloth();
  frame.fit = middle([&](int) { repaint(table); });
  frame.pointed = middle([&](int i) {
    const int patch = (i * 37) % static_cast<int>(cloth->patches.size());
    const Rect& at = cloth->patches[static_cast<std::size_t>(patch)].folded;
    emit table.folded()->pointed(cloth->patch_at(at.across.from, at.along.from), at.across.from, at.along.from);
    QApplication::processEvents();
  });
  for (int i = 0; i < kNearer; ++i)
    for (BoardView* view : {table.flat(), table.folded()}) view->zoom_in();
  QApplication::processEvents();
  frame.near = middle([&](int) { repaint(table); });
  frame.plain = plain_frame(n);
  return frame;
}

}  // namespace

std::string frames_section() {
  bench::Table table({"panels", "fit, of a frame (16 ms)", "to a plain scene", "fit, ms", "pointer moved, ms",
                      "zoomed in, ms", "laid and shown, ms", "plain scene, ms"});
  for (const int n : {10, 32, 100}) {
    const Frame frame = measure(n);
    table.add({std::to_string(n * n), bench::times(frame.fit / kFrame), bench::times(frame.fit / frame.plain),
               bench::milliseconds(frame.fit), bench::milliseconds(frame.pointed), bench::milliseconds(frame.near),
               bench::milliseconds(frame.set_up), bench::milliseconds(frame.plain)});
  }
  return "### Frames of the cutting table\n\n"
         "One length with square panels on a table view of 1200 × 800 pixels, painted by the processor: the\n"
         "flat and the folded cloth and the section, so each panel twice; the middle of 31 frames,\n"
         "in processor time. "
         "The plain scene holds as many bare rectangles in two views of the library's own.\n\n" +
         table.text();
}

}  // namespace foldyard::frames
