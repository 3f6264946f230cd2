#include "drawing/edge_marks.h"

#include <QPainter>
#include <algorithm>

#include "drawing/palette.h"
#include "drawing/text.h"

namespace foldyard {

namespace {

constexpr double kTick = 1.2;    // at the edge
constexpr double kLeader = 3.2;  // from the edge to the words
constexpr double kLine = 2.9;    // from one line of words to the next
const TextStyle kWords{kSmallestPoints, false, false, palette::ink()};

// A run of words that touch, as one block around the mean of its wishes.
struct Block {
  double sum = 0;  // of (wish − offset inside the block)
  int count = 0;
  double first() const { return sum / count; }
};

std::vector<double> evenly(std::size_t n, double low, double high) {
  std::vector<double> places;
  for (std::size_t i = 0; i < n; ++i)
    places.push_back(n == 1 ? (low + high) / 2
                            : low + (high - low) * static_cast<double>(i) /
                                        static_cast<double>(n - 1));
  return places;
}

std::vector<double> places_of(const std::vector<EdgeMark>& marks) {
  std::vector<double> places;
  for (const EdgeMark& mark : marks) places.push_back(mark.at);
  return places;
}

double widest(const std::vector<EdgeMark>& marks) {
  double width = 0;
  for (const EdgeMark& mark : marks) width = std::max(width, text_width(mark.words, kWords));
  return width;
}

bool fit_level(const std::vector<EdgeMark>& marks, double width) {
  return static_cast<double>(marks.size()) * (widest(marks) + 1) <= width;
}

void draw_leader(QPainter& painter, const QPointF& edge, const QPointF& tick,
                 const QPointF& words) {
  painter.setPen(QPen(palette::soft_ink(), 0.16, Qt::SolidLine, Qt::FlatCap));
  painter.drawPolyline(QPolygonF({edge, tick, words}));
}

// side: +1 below the edge, −1 above it.
void draw_level_edge(QPainter& painter, const QLineF& edge, double depth,
                     const std::vector<EdgeMark>& marks, int side) {
  if (marks.empty()) return;
  const bool level = fit_level(marks, edge.dx());
  const double gap = level ? widest(marks) + 1 : kLine;
  const double slack = level ? 0 : gap / 2;
  const std::vector<double> places = spread(places_of(marks), gap, edge.x1() + gap / 2 - slack - 2,
                                            edge.x2() - gap / 2 + slack + 2);
  for (std::size_t i = 0; i < marks.size(); ++i) {
    const double y = edge.y1();
    draw_leader(painter, {marks[i].at, y}, {marks[i].at, y + side * kTick},
                {places[i], y + side * kLeader});
    const double high = level ? kLine : depth - kLeader;
    const double top = side > 0 ? y + kLeader : y - kLeader - high;
    const QRectF box(places[i] - gap / 2, top, gap, high);
    if (level)
      draw_text(painter, box, marks[i].words, kWords, Qt::AlignCenter);
    else
      draw_upward(painter, box, marks[i].words, kWords,
                  side > 0 ? Qt::AlignRight | Qt::AlignVCenter : Qt::AlignLeft | Qt::AlignVCenter);
  }
}

}  // namespace

std::vector<double> spread(std::vector<double> wished, double gap, double low, double high) {
  const auto n = wished.size();
  if (n == 0) return {};
  if (static_cast<double>(n - 1) * gap > high - low) return evenly(n, low, high);
  std::vector<Block> blocks;
  for (double wish : wished) {
    blocks.push_back({wish, 1});
    while (blocks.size() > 1) {
      const Block last = blocks.back();
      Block& before = blocks[blocks.size() - 2];
      if (before.first() + before.count * gap <= last.first()) break;
      before.sum += last.sum - last.count * before.count * gap;
      before.count += last.count;
      blocks.pop_back();
    }
  }
  std::vector<double> places;
  for (const Block& block : blocks)
    for (int i = 0; i < block.count; ++i) places.push_back(block.first() + i * gap);
  for (std::size_t i = 0; i < n; ++i)
    places[i] = std::max(places[i], i == 0 ? low : places[i - 1] + gap);
  for (std::size_t i = n; i-- > 0;)
    places[i] = std::min(places[i], i + 1 == n ? high : places[i + 1] - gap);
  return places;
}

std::vector<EdgeMark> merged(std::vector<EdgeMark> marks) {
  std::stable_sort(marks.begin(), marks.end(),
                   [](const EdgeMark& a, const EdgeMark& b) { return a.at < b.at; });
  marks.erase(std::unique(marks.begin(), marks.end(),
                          [](const EdgeMark& a, const EdgeMark& b) {
                            return b.at - a.at < 1e-6 && a.words == b.words;
                          }),
              marks.end());
  return marks;
}

double marks_depth(const std::vector<EdgeMark>& marks) {
  return marks.empty() ? 0 : widest(marks) + kLeader + 0.6;
}

double marks_height(double width, const std::vector<EdgeMark>& marks) {
  if (marks.empty()) return 0;
  return fit_level(marks, width) ? kLeader + kLine : marks_depth(marks);
}

void draw_marks_below(QPainter& painter, const QLineF& edge, double depth,
                      const std::vector<EdgeMark>& marks) {
  draw_level_edge(painter, edge, depth, marks, 1);
}

void draw_marks_above(QPainter& painter, const QLineF& edge, double depth,
                      const std::vector<EdgeMark>& marks) {
  draw_level_edge(painter, edge, depth, marks, -1);
}

void draw_marks_left(QPainter& painter, const QLineF& edge, double depth,
                     const std::vector<EdgeMark>& marks) {
  if (marks.empty()) return;
  const std::vector<double> places =
      spread(places_of(marks), kLine, std::min(edge.y1(), edge.y2()) - 1,
             std::max(edge.y1(), edge.y2()) + 1);
  for (std::size_t i = 0; i < marks.size(); ++i) {
    const double x = edge.x1();
    draw_leader(painter, {x, marks[i].at}, {x - kTick, marks[i].at},
                {x - kLeader + 0.4, places[i]});
    draw_text(painter, QRectF(x - depth, places[i] - kLine / 2, depth - kLeader, kLine),
              marks[i].words, kWords, Qt::AlignRight | Qt::AlignVCenter);
  }
}

}  // namespace foldyard
