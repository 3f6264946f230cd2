#include "cutting/cut_table.h"

namespace foldyard {

CutTable::CutTable(TableKind kind, Grid across, Grid along, const std::vector<Shape>& shapes,
                   const Packing& packing, const CutTable* beyond, const CutTable* above,
                   bool all_places, const std::atomic<bool>* cancelled)
    : kind_(kind), across_(std::move(across)), along_(std::move(along)), shapes_(shapes),
      packing_(packing), beyond_(beyond), above_(above), all_places_(all_places),
      nx_(across_.size()), ny_(along_.size()) {
  std::vector<Leaf> leaves;
  for (const Shape& s : shapes_)
    if (const Leaf leaf = leaf_of(s); leaf.x >= 0 && leaf.y >= 0 && leaf.gain > 0) leaves.push_back(leaf);
  const std::size_t n = static_cast<std::size_t>(nx_) * ny_;
  if (packing_.is_wide()) {
    wide_values_.resize(n);
    fill_table(*this, leaves, wide_values_, cancelled);
  } else {
    values_.resize(n);
    fill_table(*this, leaves, values_, cancelled);
  }
}

Leaf CutTable::leaf_of(const Shape& s) const {
  if ((kind_.joint_across || kind_.joint_along) && !s.on_fold) return {-1, -1, 0};
  if ((kind_.joint_across && !s.across.is_even()) || (kind_.joint_along && !s.along.is_even()))
    return {-1, -1, 0};
  return {across_.index_of(kind_.joint_across ? s.across / 2 : s.across),
          along_.index_of(kind_.joint_along ? s.along / 2 : s.along), s.gain};
}

int CutTable::best_place_across(int x, int y) const {
  int best = 0;
  for (int i = 1; i <= x; ++i)
    if (value(i, y) > value(best, y)) best = i;
  return best;
}

int CutTable::best_place_along(int x, int y) const {
  int best = 0;
  for (int j = 1; j <= y; ++j)
    if (value(x, j) > value(x, best)) best = j;
  return best;
}

// Ties are broken in this order, and by the lower place.
Choice CutTable::choice(int x, int y) const {
  const Wide wanted = value(x, y);
  if (wanted <= 0) return {};
  for (int i = 0; i < static_cast<int>(shapes_.size()); ++i) {
    const Leaf leaf = leaf_of(shapes_[i]);
    if (leaf.x == x && leaf.y == y && packing_.gain<Wide>(leaf.gain, kind_.copies) == wanted)
      return {Move::take, i};
  }
  const Wide along_cut = cut_over(along_[y]), across_cut = cut_over(across_[x]);
  if (x > 0 && value(best_place_across(x - 1, y), y) - along_cut == wanted) return {Move::trim_across, -1};
  if (y > 0 && value(x, best_place_along(x, y - 1)) - across_cut == wanted) return {Move::trim_along, -1};
  if (const int low = part_across(x, y, wanted + along_cut); low >= 0) return {Move::part_across, low};
  return {Move::part_along, part_along(x, y, wanted + across_cut)};
}

int CutTable::part_across(int x, int y, Wide wanted) const {
  const CutTable& right = beyond();
  for (int low = 0; low < x; ++low) {
    const int rest = right.across_.index_of(across_[x] - across_[low]);
    if (rest >= 0 && value(low, y) + upper_value(right.value(rest, y), beyond_) == wanted) return low;
  }
  for (int low = 0; low < x; ++low)
    if (is_odd_part_across(x, y, low, wanted)) return low;
  return -1;
}

int CutTable::part_along(int x, int y, Wide wanted) const {
  const CutTable& upper = above();
  for (int low = 0; low < y; ++low) {
    const int rest = upper.along_.index_of(along_[y] - along_[low]);
    if (rest >= 0 && value(x, low) + upper_value(upper.value(x, rest), above_) == wanted) return low;
  }
  for (int low = 0; low < y; ++low)
    if (is_odd_part_along(x, y, low, wanted)) return low;
  return -1;
}

// The upper part is no place. What it gives must be what is wanted beyond the
// lower part; where even its gain without any cut is less, it is not looked for.
bool CutTable::is_odd_part_across(int x, int y, int low, Wide wanted) const {
  const CutTable& right = beyond();
  const Length remainder = across_[x] - across_[low];
  const int floor = right.across_.floor_index(remainder);
  if (floor < 0 || right.across_[floor] == remainder) return false;
  const Wide rest = wanted - value(low, y);
  if (upper_value(right.value(floor, y), beyond_) < rest) return false;
  return right.trimmed_across(remainder, y, beyond_ ? 2 : 1).value == rest;
}

bool CutTable::is_odd_part_along(int x, int y, int low, Wide wanted) const {
  const CutTable& upper = above();
  const Length remainder = along_[y] - along_[low];
  const int floor = upper.along_.floor_index(remainder);
  if (floor < 0 || upper.along_[floor] == remainder) return false;
  const Wide rest = wanted - value(x, low);
  if (upper_value(upper.value(x, floor), above_) < rest) return false;
  return upper.trimmed_along(x, remainder, above_ ? 2 : 1).value == rest;
}

// The best of two cuts, to any lower and narrower place, the first along the
// uneven side; or of one.
CutTable::Trimmed CutTable::trimmed_across(Length width, int y, int plies) const {
  const int x = across_.floor_index(width);
  Trimmed best{kNever<Wide>, -1, -1, false};
  const Wide two_cuts = 2 * packing_.per_cut<Wide>() + packing_.travel<Wide>(width);
  for (int i = 0; i <= x; ++i) {
    best.keep({packing_.times(value(i, y), plies) - cut_over(along_[y]), i, y, false});
    for (int j = 0; j <= y; ++j)
      best.keep({packing_.times(value(i, j), plies) - two_cuts - packing_.travel<Wide>(along_[j]), i, j, true});
  }
  return best;
}

CutTable::Trimmed CutTable::trimmed_along(int x, Length height, int plies) const {
  const int y = along_.floor_index(height);
  Trimmed best{kNever<Wide>, -1, -1, false};
  const Wide two_cuts = 2 * packing_.per_cut<Wide>() + packing_.travel<Wide>(height);
  for (int j = 0; j <= y; ++j) {
    best.keep({packing_.times(value(x, j), plies) - cut_over(across_[x]), x, j, false});
    for (int i = 0; i <= x; ++i)
      best.keep({packing_.times(value(i, j), plies) - two_cuts - packing_.travel<Wide>(across_[i]), i, j, true});
  }
  return best;
}

Remainder CutTable::remainder_of(const Trimmed& trimmed, bool height_first) const {
  if (trimmed.value <= 0) return {};
  const int cuts = trimmed.two_cuts ? 2 : 1;
  return {cell(trimmed.value, gain(trimmed.x, trimmed.y)), trimmed.x, trimmed.y, cuts,
          trimmed.two_cuts && height_first};
}

Remainder CutTable::remainder_across(Length width, int y) const {
  const int x = across_.floor_index(width);
  if (x < 0) return {};
  if (across_[x] == width) return {at(x, y), x, y, 0, false};
  return remainder_of(trimmed_across(width, y, 1), true);
}

Remainder CutTable::remainder_along(int x, Length height) const {
  const int y = along_.floor_index(height);
  if (y < 0) return {};
  if (along_[y] == height) return {at(x, y), x, y, 0, false};
  return remainder_of(trimmed_along(x, height, 1), false);
}

Cell CutTable::at(int x, int y) const {
  return cell(value(x, y), packing_.aim().worth_first ? 0 : gain(x, y));
}

Cell CutTable::cell(Wide value, std::int64_t gain) const {
  if (packing_.aim().worth_first) return packing_.unpack(value);
  return {gain, static_cast<std::int64_t>(Wide(kind_.copies) * gain - value)};
}

// For one ply; where time is weighed it is found by following the cuts, once.
std::int64_t CutTable::gain(int x, int y) const {
  if (packing_.aim().worth_first) return packing_.unpack(value(x, y)).gain;
  std::call_once(gains_once_, [this] {
    std::vector<std::atomic<std::int64_t>> unknown(static_cast<std::size_t>(nx_) * ny_);
    for (auto& gain : unknown) gain.store(-1, std::memory_order_relaxed);
    gains_.swap(unknown);
  });
  std::atomic<std::int64_t>& known = gains_[index(x, y)];
  if (known.load(std::memory_order_relaxed) < 0)
    known.store(followed_gain(x, y), std::memory_order_relaxed);
  return known.load(std::memory_order_relaxed);
}

std::int64_t CutTable::followed_gain(int x, int y) const {
  const Choice c = choice(x, y);
  switch (c.move) {
    case Move::leave: return 0;
    case Move::take: return shapes_[c.index].gain;
    case Move::trim_across: return gain(best_place_across(x - 1, y), y);
    case Move::trim_along: return gain(x, best_place_along(x, y - 1));
    case Move::part_across:
      return gain(c.index, y) + (beyond_ ? 2 : 1) * beyond().gain_of(beyond().remainder_across(across_[x] - across_[c.index], y));
    case Move::part_along: break;
  }
  return gain(x, c.index) + (above_ ? 2 : 1) * above().gain_of(above().remainder_along(x, along_[y] - along_[c.index]));
}

}  // namespace foldyard
