#include "drawing/ribbon.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <numeric>

namespace foldyard {

namespace {

// A point of the middle line with the way the ribbon goes there; y upwards.
struct Step {
  QPointF at;
  QPointF way;
};

void add_leg(std::vector<Step>& steps, const Leg& leg, const Scale& scale, double height) {
  const double from = scale.mm(leg.mirrored ? leg.folded.to : leg.folded.from);
  const double to = scale.mm(leg.mirrored ? leg.folded.from : leg.folded.to);
  const QPointF way(leg.mirrored ? -1 : 1, 0);
  steps.push_back({{from, height}, way});
  steps.push_back({{to, height}, way});
}

void add_bend(std::vector<Step>& steps, const FoldEdge& edge, const Scale& scale, double from,
              double to) {
  constexpr int kSteps = 16;
  constexpr double kPi = 3.14159265358979323846;
  const double radius = std::abs(to - from) / 2, out = edge.cloth_after ? -1 : 1,
               up = to > from ? 1 : -1;
  const QPointF centre(scale.mm(edge.at), (from + to) / 2);
  for (int i = 1; i < kSteps; ++i) {
    const double turn = kPi * i / kSteps;
    const QPointF place(out * radius * std::sin(turn), -up * radius * std::cos(turn));
    steps.push_back({centre + place, {out * std::cos(turn), up * std::sin(turn)}});
  }
}

QPolygonF side_of(const std::vector<Step>& steps, double offset) {
  QPolygonF side;
  for (const Step& step : steps) {
    const QPointF left(-step.way.y(), step.way.x());
    const QPointF place = step.at + left * offset;
    side << QPointF(place.x(), -place.y());
  }
  return side;
}

}  // namespace

std::vector<int> settled_levels(const AxisMap& axis) {
  const auto& legs = axis.legs();
  std::vector<std::size_t> upwards(legs.size());
  std::iota(upwards.begin(), upwards.end(), std::size_t{0});
  std::sort(upwards.begin(), upwards.end(),
            [&](std::size_t a, std::size_t b) { return legs[a].level < legs[b].level; });
  std::vector<int> settled(legs.size(), 0);
  for (auto leg = upwards.begin(); leg != upwards.end(); ++leg)
    for (auto below = upwards.begin(); below != leg; ++below)
      if (legs[*below].folded.overlaps(legs[*leg].folded))
        settled[*leg] = std::max(settled[*leg], settled[*below] + 1);
  return settled;
}

int highest_level(const AxisMap& axis) {
  const std::vector<int> settled = settled_levels(axis);
  return *std::max_element(settled.begin(), settled.end());
}

double level_height(const RibbonShape& shape, int level) {
  return shape.pitch * level + shape.thickness / 2 + 0.3;
}

Ribbon ribbon_of(const AxisMap& axis, const Scale& scale, const RibbonShape& shape) {
  std::vector<Step> steps;
  const auto& legs = axis.legs();
  const std::vector<int> levels = settled_levels(axis);
  for (std::size_t i = 0; i < legs.size(); ++i) {
    const double height = level_height(shape, levels[i]);
    add_leg(steps, legs[i], scale, height);
    if (i + 1 < legs.size())
      add_bend(steps, axis.edges()[i], scale, height, level_height(shape, levels[i + 1]));
  }
  return {side_of(steps, shape.thickness / 2), side_of(steps, -shape.thickness / 2)};
}

double ribbon_bulge(const AxisMap& axis, const RibbonShape& shape) {
  double bulge = 0;
  const std::vector<int> levels = settled_levels(axis);
  for (const FoldEdge& edge : axis.edges()) {
    const auto i = static_cast<std::size_t>(edge.first_leg);
    const int apart = std::abs(levels[i] - levels[i + 1]);
    bulge = std::max(bulge, shape.pitch * apart / 2 + shape.thickness / 2);
  }
  return bulge;
}

}  // namespace foldyard
