#include "drawing/disc_places.h"

#include <algorithm>

#include "drawing/strokes.h"

namespace foldyard {

namespace {

QRectF disc_at(const QPointF& centre, double width) {
  return {centre - QPointF(width / 2, kDiscRadius), QSizeF(width, 2 * kDiscRadius)};
}

double overlap(const QRectF& disc, const std::vector<QRectF>& covered) {
  double area = 0;
  for (const QRectF& each : covered) {
    const QRectF both = disc & each;
    area += both.isEmpty() ? 0 : both.width() * both.height();
  }
  return area;
}

QPointF best_place(const QLineF& cut, double width, const std::vector<QRectF>& covered) {
  constexpr int kTries = 24;
  const double length = std::max(cut.length(), 1e-9), from = std::min(1.4, length / 2);
  QPointF best = cut.pointAt(from / length);
  double least = overlap(disc_at(best, width), covered);
  for (int i = 1; i <= kTries && least > 0; ++i) {
    const QPointF place = cut.pointAt((from + (length - 2 * from) * i / kTries) / length);
    const double area = overlap(disc_at(place, width), covered);
    if (area < least - 1e-9) best = place, least = area;
  }
  return best;
}

}  // namespace

std::vector<QPointF> disc_places(const std::vector<QLineF>& cuts, std::vector<QRectF> covered) {
  std::vector<QPointF> places;
  for (const QLineF& cut : cuts) {
    const double width = disc_width(QString::number(places.size() + 1));
    places.push_back(best_place(cut, width, covered));
    covered.push_back(disc_at(places.back(), width));
  }
  return places;
}

}  // namespace foldyard
