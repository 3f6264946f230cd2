#include "oracle/roll_model.h"

#include <algorithm>
#include <array>
#include <map>

#include "oracle/fold_positions.h"
#include "oracle/integer_model.h"

namespace foldyard::test {

namespace {

// Axis 0 is across, axis 1 along; joined[axis]: the near rim that way is a fold edge.
struct Plate {
  std::array<bool, 2> joined{};
  std::array<int, 2> size{};
  auto operator<=>(const Plate&) const = default;
};

struct QuantaShape {
  std::array<int, 2> size;
  bool on_fold;
  int worth;
};

std::vector<QuantaShape> quanta_shapes(const QuantaJob& job) {
  std::vector<QuantaShape> shapes;
  for (const QuantaPanel& p : job.panels) {
    shapes.push_back({{p.across, p.along}, p.on_fold, p.worth});
    if (p.may_turn && !job.one_way) shapes.push_back({{p.along, p.across}, p.on_fold, p.worth});
  }
  return shapes;
}

class LengthModel {
 public:
  LengthModel(const QuantaJob& job, const FoldWay& way)
      : job_(job), way_(way), shapes_(quanta_shapes(job)) {
    for (int axis : {0, 1}) {
      least_[axis] = shapes_.front().size[axis];
      for (const QuantaShape& s : shapes_) least_[axis] = std::min(least_[axis], s.size[axis]);
    }
  }

  std::int64_t solve(const std::vector<Strips>& choices, int height) {
    const int once = model_.add_row(-1);
    for (const Strips& s : choices) add_strips(s, height, once);
    return model_.most();
  }

 private:
  void add_strips(const Strips& s, int height, int once) {
    Terms terms{{once, -1}};
    give(terms, {{true, way_.end_to_end}, {s.left, height}}, s.left_pairs);
    give(terms, {{false, way_.end_to_end}, {s.middle, height}}, s.plies);
    give(terms, {{true, way_.end_to_end}, {s.right, height}}, s.right_pairs);
    if (terms.size() > 1) model_.add_unknown(0, terms);
  }

  // Adds `count` of a plate to what an unknown gives, if it can hold a panel.
  void give(Terms& terms, Plate plate, int count) {
    for (int axis : {0, 1})
      if (!plate.joined[axis]) plate.size[axis] -= plate.size[axis] % 2;
    if (count > 0 && can_hold_a_panel(plate)) terms.push_back({row_of(plate), count});
  }

  bool can_hold_a_panel(const Plate& plate) const {
    for (int axis : {0, 1}) {
      const int most = plate.size[axis] * (plate.joined[axis] ? 2 : 1);
      if (most < least_[axis]) return false;
    }
    return true;
  }

  int row_of(const Plate& plate) {
    const auto known = rows_.find(plate);
    if (known != rows_.end()) return known->second;
    const int row = model_.add_row(0);
    rows_.emplace(plate, row);
    add_takes(plate, row);
    for (int axis : {0, 1}) add_cuts(plate, row, axis);
    return row;
  }

  void add_takes(const Plate& plate, int row) {
    for (const QuantaShape& s : shapes_) {
      bool fits = true;
      for (int axis : {0, 1}) {
        const bool joined = plate.joined[axis];
        fits = fits && s.size[axis] == plate.size[axis] * (joined ? 2 : 1) &&
               (!joined || (s.on_fold && plate.size[axis] >= job_.trim));
      }
      if (fits) model_.add_unknown(s.worth, {{row, -1}});
    }
  }

  // Every cut of which both parts can hold a panel, and the loss of the last
  // quantum; beside a fold edge no cut nearer than the trim.
  void add_cuts(const Plate& plate, int row, int axis) {
    const bool joined = plate.joined[axis];
    const int step = joined ? 1 : 2;
    const int nearest = joined ? job_.trim : least_[axis];
    const int size = plate.size[axis];
    if (size - step >= nearest) add_cut(plate, row, axis, size - step, 0);
    for (int at = nearest; at <= (joined ? size - least_[axis] : size / 2); at += step)
      add_cut(plate, row, axis, at, joined ? 2 : 1);
  }

  void add_cut(const Plate& plate, int row, int axis, int at, int beyond_count) {
    Plate near = plate, beyond = plate;
    near.size[axis] = at;
    beyond.size[axis] -= at;
    beyond.joined[axis] = false;
    Terms terms{{row, -1}};
    give(terms, near, 1);
    give(terms, beyond, beyond_count);
    if (terms.size() > 1) model_.add_unknown(0, terms);
  }

  const QuantaJob& job_;
  const FoldWay& way_;
  std::vector<QuantaShape> shapes_;
  std::array<int, 2> least_{};
  IntegerModel model_;
  std::map<Plate, int> rows_;
};

}  // namespace

std::int64_t length_worth(const QuantaJob& job, const FoldWay& way, int height) {
  return LengthModel(job, way).solve(strips_of(job, way), height);
}

std::int64_t roll_worth(const QuantaJob& job, const FoldWay& way) {
  const std::vector<Strips> choices = strips_of(job, way);
  const int room = job.roll - 2 * job.squaring;
  IntegerModel roll;
  const int fits = roll.add_row(-room);
  std::int64_t before = 0;
  for (int height = 1; height <= job.table; ++height) {
    const int size = height * (way.end_to_end ? 2 : 1) + job.allowance;
    if (size > room) break;
    const std::int64_t worth = LengthModel(job, way).solve(choices, height);
    if (worth > before) roll.add_unknown(before = worth, {{fits, -size}});
  }
  return roll.most();
}

}  // namespace foldyard::test
