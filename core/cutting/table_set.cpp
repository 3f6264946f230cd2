#include "cutting/table_set.h"

#include <algorithm>
#include <numeric>
#include <utility>

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

// Lengths ≥ 0 of one unit, each kept once where there is room to mark them all:
// there are far fewer than times they come up.
class DistinctLengths {
 public:
  DistinctLengths(std::int64_t unit, Length most) : unit_(unit) {
    if (most.units() / unit < kMostMarks) seen_.resize(most.units() / unit + 1, 0);
  }

  void add(Length length) {
    if (!seen_.empty() && std::exchange(seen_[length.units() / unit_], char{1})) return;
    lengths_.push_back(length);
  }
  std::vector<Length> take() { return std::move(lengths_); }

 private:
  static constexpr std::int64_t kMostMarks = 1 << 22;

  std::int64_t unit_;
  std::vector<char> seen_;
  std::vector<Length> lengths_;
};

}  // namespace

TableSet::TableSet(std::vector<Shape> shapes, const Objective& aim, const TableLimits& limits)
    : shapes_(std::move(shapes)), limits_(limits), packing_(aim, {}, {}, {}) {
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
  for (const bool joint : {false, true})
    for (int y = 0; y < along_[joint].size(); ++y)
      if (along_[joint].is_sum(y)) lengths_[joint].push_back(y);
  packing_ = Packing(aim, shapes_, limits.widest, limits.tallest, shared_unit());
}

// Strips are read exact, up to a place, and full.
std::int64_t TableSet::most_bytes(std::int64_t copies) const {
  const std::int64_t value = packing_.is_wide() ? sizeof(Wide) : sizeof(std::int64_t);
  const std::int64_t tables = aim().worth_first ? 1 : copies;
  std::int64_t cells = 0;
  for (const bool joint : {false, true})
    for (const Grid& across : across_)
      cells += across.size() * (tables * along_[joint].size() + 3 * copies * std::ssize(lengths_[joint]));
  return cells * value;
}

// Of all places; so every cut is as long as some number of it.
Length TableSet::shared_unit() const {
  std::int64_t unit = 0;
  for (const Grid* grid : {&across_[0], &across_[1], &along_[0], &along_[1]})
    for (const Length place : grid->places()) unit = std::gcd(unit, place.units());
  return Length::units(std::max<std::int64_t>(unit, 1));
}

// Beside a joint a part may be kept beyond another of any place, and then the
// rest at the joint has what remains of some place: those are places, too. So is
// the limit, whose far rim need not be trimmed.
Grid TableSet::with_remainders(const Grid& joint, const Grid& normal, Length limit) const {
  std::vector<Length> wholes = joint.places();
  wholes.push_back(limit);
  std::int64_t unit = 0;
  for (Length whole : wholes) unit = std::gcd(unit, whole.units());
  for (Length part : normal.places()) unit = std::gcd(unit, part.units());
  DistinctLengths more(std::max<std::int64_t>(unit, 1), *std::max_element(wholes.begin(), wholes.end()));
  for (Length whole : wholes) {
    if (whole >= limits_.fold_trim) more.add(whole);
    for (Length part : normal.places()) {
      if (whole - part < limits_.fold_trim) break;
      more.add(whole - part);
    }
  }
  return joint.with(more.take());
}

template <class Made>
template <class Make>
const Made& TableSet::Shelf<Made>::get(const TableKind& kind, Make make) {
  std::promise<std::unique_ptr<Made>> promise;
  std::shared_future<std::unique_ptr<Made>> made;
  bool is_mine = false;
  {
    const std::lock_guard lock(mutex_);
    const auto found = made_.find(kind);
    is_mine = found == made_.end();
    made = is_mine ? promise.get_future().share() : found->second;
    if (is_mine) made_.emplace(kind, made);
  }
  if (is_mine) {
    try {
      promise.set_value(make());
    } catch (...) {
      promise.set_exception(std::current_exception());
    }
  }
  return *made.get();
}

const CutTable& TableSet::table(TableKind kind) {
  if (aim().worth_first) kind.copies = 1;  // copies do not change what is best
  return tables_.get(kind, [&] { return make(kind); });
}

template <class V>
const StripColumns<V>& TableSet::columns(const TableKind& kind, int plies) {
  const TableKind all{kind.joint_across, kind.joint_along, aim().worth_first ? plies : kind.copies * plies};
  const auto make_columns = [&] {
    return std::make_unique<StripColumns<V>>(table(all), lengths(kind.joint_along), plies);
  };
  if constexpr (sizeof(V) == sizeof(Wide)) return wide_columns_.get(all, make_columns);
  else return columns_.get(all, make_columns);
}

template const StripColumns<std::int64_t>& TableSet::columns(const TableKind&, int);
template const StripColumns<Wide>& TableSet::columns(const TableKind&, int);

// The tables it stands on have fewer joints, so no two wait for each other.
std::unique_ptr<CutTable> TableSet::make(const TableKind& kind) {
  const CutTable* beyond = nullptr;
  const CutTable* above = nullptr;
  if (kind.joint_across) beyond = &table({false, kind.joint_along, kind.copies * 2});
  if (kind.joint_along) above = &table({kind.joint_across, false, kind.copies * 2});
  return std::make_unique<CutTable>(kind, across_[kind.joint_across], along_[kind.joint_along],
                                    shapes_, packing_, beyond, above, !thinned_,
                                    limits_.cancelled);
}

}  // namespace foldyard
