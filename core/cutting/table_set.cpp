#include "cutting/table_set.h"

#include <algorithm>

namespace foldyard {

namespace {

// The sizes that may stand first beside a fold edge: half of each shape that
// may be cut on the fold, and the trim that opens the fold.
std::vector<Length> first_sizes(const std::vector<Shape>& shapes, Length Shape::*size, Length trim) {
  std::vector<Length> firsts{trim};
  for (const Shape& s : shapes)
    if (s.on_fold && (s.*size).is_even() && s.*size / 2 >= trim) firsts.push_back(s.*size / 2);
  return firsts;
}

std::vector<Length> sizes_of(const std::vector<Shape>& shapes, Length Shape::*size) {
  std::vector<Length> sizes;
  for (const Shape& s : shapes) sizes.push_back(s.*size);
  return sizes;
}

}  // namespace

TableSet::TableSet(std::vector<Shape> shapes, const Objective& aim, const TableLimits& limits)
    : shapes_(std::move(shapes)), aim_(aim), limits_(limits) {
  const int most = limits.most_places;
  const auto make = [&](Grid grids[2], Length Shape::*size, Length limit, Length joint_limit) {
    const std::vector<Length> sizes = sizes_of(shapes_, size);
    grids[0] = normal_places(sizes, limit, most);
    grids[1] = places_after(first_sizes(shapes_, size, limits.fold_trim), sizes, joint_limit, most);
    const bool cut_off = grids[0].size() >= most || grids[1].size() >= most;
    thinned_ = thinned_ || cut_off;
    if (!cut_off) grids[1] = with_remainders(grids[1], grids[0], joint_limit);
  };
  least_flap_ = limits.widest;
  for (const Shape& s : shapes_) least_flap_ = std::min(least_flap_, limits_.fold_trim + s.across);
  const std::vector<Length> firsts = first_sizes(shapes_, &Shape::across, limits_.fold_trim);
  for (std::size_t i = 1; i < firsts.size(); ++i) least_flap_ = std::min(least_flap_, firsts[i]);
  make(across_, &Shape::across, limits.widest, limits.widest / 2);
  make(along_, &Shape::along, limits.tallest, limits.tallest);
}

// Beside a joint a part may be kept beyond another of any place, and then the
// rest at the joint has what remains of some place: those are places, too. So is
// the limit, whose far rim need not be trimmed.
Grid TableSet::with_remainders(const Grid& joint, const Grid& normal, Length limit) const {
  std::vector<Length> wholes = joint.places(), more;
  wholes.push_back(limit);
  for (Length whole : wholes) {
    if (whole >= limits_.fold_trim) more.push_back(whole);
    for (Length part : normal.places()) {
      if (whole - part < limits_.fold_trim) break;
      more.push_back(whole - part);
    }
  }
  return joint.with(std::move(more));
}

const CutTable& TableSet::table(TableKind kind) {
  if (aim_.worth_first) kind.copies = 1;  // copies do not change what is best
  std::promise<std::unique_ptr<CutTable>> promise;
  std::shared_future<std::unique_ptr<CutTable>> made;
  bool is_mine = false;
  {
    const std::lock_guard lock(mutex_);
    const auto found = tables_.find(kind);
    is_mine = found == tables_.end();
    made = is_mine ? promise.get_future().share() : found->second;
    if (is_mine) tables_.emplace(kind, made);
  }
  if (is_mine) {
    try {
      promise.set_value(make(kind));
    } catch (...) {
      promise.set_exception(std::current_exception());
    }
  }
  return *made.get();
}

// The tables it stands on have fewer joints, so no two wait for each other.
std::unique_ptr<CutTable> TableSet::make(const TableKind& kind) {
  const CutTable* beyond = nullptr;
  const CutTable* above = nullptr;
  if (kind.joint_across) beyond = &table({false, kind.joint_along, kind.copies * 2});
  if (kind.joint_along) above = &table({kind.joint_across, false, kind.copies * 2});
  return std::make_unique<CutTable>(kind, across_[kind.joint_across], along_[kind.joint_along],
                                    shapes_, aim_, beyond, above, !thinned_,
                                    limits_.cancelled);
}

}  // namespace foldyard
