#pragma once

// The recursion of cutting/cut_table.h, filled cell by cell with gains and costs
// apart and every choice kept: the slow witness of the tables, which keep one
// number a cell and fill whole rows.
//
// It knows the same places (so it is quicker than slow_rectangle.h, which tries
// every unit) and can be held against larger tables.

#include <vector>

#include "cutting/cut_table.h"

namespace foldyard::test {

class SlowTable {
 public:
  // beyond: R, above: U; null where the table is its own (no joint that way).
  // REQUIRES both to live as long as this, with grids that agree. all_places:
  // the grids hold every normal place; else a remainder may be trimmed by one
  // cut to a place that no even parting reaches, and that is tried too.
  // cancelled: once true, the higher rectangles are left uncut.
  SlowTable(TableKind kind, Grid across, Grid along, const std::vector<Shape>& shapes,
           const Objective& aim, const SlowTable* beyond, const SlowTable* above,
           bool all_places = true, const std::atomic<bool>* cancelled = nullptr);
  SlowTable(const SlowTable&) = delete;
  SlowTable& operator=(const SlowTable&) = delete;

  const TableKind& kind() const { return kind_; }
  const Grid& across() const { return across_; }
  const Grid& along() const { return along_; }
  const Objective& aim() const { return aim_; }
  const SlowTable& beyond() const { return beyond_ ? *beyond_ : *this; }
  const SlowTable& above() const { return above_ ? *above_ : *this; }

  const Cell& at(int x, int y) const { return cells_[index(x, y)]; }
  const Choice& choice(int x, int y) const { return choices_[index(x, y)]; }
  // The best at (x, y) or any narrower place, without the cut to get there.
  const Cell& best_up_to(int x, int y) const { return best_across_[index(x, y)]; }
  // The same for any lower place.
  const Cell& best_low(int x, int y) const { return best_along_[index(x, y)]; }

 private:
  // A way to part a place: the lower part a place, the remainder no place.
  struct OddPart {
    std::int32_t low;
    std::int32_t floor;  // of the remainder, in the other table
    std::int64_t remainder;
  };
  // For every place of an axis, how it may be parted. exact[i * n + l] is the
  // other table's place that remains beyond place l of place i, or −1.
  struct Parts {
    std::vector<std::int32_t> exact;
    std::vector<OddPart> odd;
    std::vector<std::int32_t> odd_start;
  };

  static Parts parts_of(const Grid& own, const Grid& other);
  std::size_t index(int x, int y) const { return static_cast<std::size_t>(y) * nx_ + x; }
  std::size_t column_index(int x, int y) const { return static_cast<std::size_t>(x) * ny_ + y; }
  void set_leaves(const std::vector<Shape>& shapes);
  template <bool kWorthFirst> void fill();
  template <bool kWorthFirst> void fill_cell(int x, int y);
  template <bool kWorthFirst> void try_trims(int x, int y, Cell& best, Choice& choice) const;
  template <bool kWorthFirst> void try_parts_across(int x, int y, Cell& best, Choice& choice) const;
  template <bool kWorthFirst> void try_parts_along(int x, int y, Cell& best, Choice& choice) const;
  template <bool kWorthFirst> bool could_gain(Cell smaller, const Cell& best) const;
  template <bool kWorthFirst>
  void try_odd_across(const OddPart& part, int y, Cell& best, Choice& choice) const;
  template <bool kWorthFirst>
  void try_odd_along(const OddPart& part, int x, Cell& best, Choice& choice) const;
  template <bool kWorthFirst> void note_prefixes(int x, int y);
  void note_whole(int x, int y);
  template <bool kWorthFirst>
  Cell better_trim(const Cell& two, Cell one, std::int64_t cut) const;
  Cell odd_across(int place, int y, std::int64_t width) const;
  Cell odd_along(int x, int place, std::int64_t height) const;

  TableKind kind_;
  Grid across_, along_;
  Objective aim_;
  const SlowTable* beyond_;
  const SlowTable* above_;
  bool all_places_;
  const std::atomic<bool>* cancelled_;
  int nx_, ny_;
  Parts parts_across_, parts_along_;
  // Places not parted, or trimmed, in that direction: a row of parts side by
  // side may begin with any of its parts, so only these need come first.
  std::vector<std::int32_t> whole_across_;                // of the row being filled
  std::vector<std::vector<std::int32_t>> whole_along_;    // of each column
  std::vector<Cell> cells_;
  std::vector<Cell> columns_;  // cells_ again, column by column
  std::vector<Choice> choices_;
  std::vector<Cell> best_across_, best_along_;  // best of places up to here
  std::vector<Cell> corner_across_;  // for trims by two cuts, row by row
  std::vector<Cell> corner_along_;   // the same, column by column
};

inline SlowTable::SlowTable(TableKind kind, Grid across, Grid along, const std::vector<Shape>& shapes,
                   const Objective& aim, const SlowTable* beyond, const SlowTable* above,
                   bool all_places, const std::atomic<bool>* cancelled)
    : kind_(kind), across_(std::move(across)), along_(std::move(along)), aim_(aim),
      beyond_(beyond), above_(above), all_places_(all_places), cancelled_(cancelled), nx_(across_.size()), ny_(along_.size()) {
  const Grid& beyond_grid = this->beyond().across_;
  const Grid& above_grid = this->above().along_;
  parts_across_ = parts_of(across_, beyond_grid);
  parts_along_ = parts_of(along_, above_grid);
  whole_along_.resize(nx_);
  const std::size_t n = static_cast<std::size_t>(nx_) * ny_;
  for (auto* cells : {&cells_, &columns_, &best_across_, &best_along_, &corner_across_, &corner_along_})
    cells->assign(n, Cell{});
  choices_.assign(n, Choice{});
  set_leaves(shapes);
  aim_.worth_first ? fill<true>() : fill<false>();
}

// For each place of `own`, the ways to part it with the lower part a place, too,
// and the remainder in `other`.
inline SlowTable::Parts SlowTable::parts_of(const Grid& own, const Grid& other) {
  Parts result;
  result.exact.assign(static_cast<std::size_t>(own.size()) * own.size(), -1);
  result.odd_start.push_back(0);
  for (int i = 0; i < own.size(); ++i) {
    for (int low = 0; low < i; ++low) {
      const Length remainder = own[i] - own[low];
      const int floor = other.floor_index(remainder);
      if (floor < 0) break;
      if (other[floor] == remainder)
        result.exact[static_cast<std::size_t>(i) * own.size() + low] = floor;
      else
        result.odd.push_back({low, floor, remainder.units()});
    }
    result.odd_start.push_back(static_cast<std::int32_t>(result.odd.size()));
  }
  return result;
}

inline void SlowTable::set_leaves(const std::vector<Shape>& shapes) {
  for (int i = 0; i < static_cast<int>(shapes.size()); ++i) {
    const Shape& s = shapes[i];
    if ((kind_.joint_across || kind_.joint_along) && !s.on_fold) continue;
    if ((kind_.joint_across && !s.across.is_even()) || (kind_.joint_along && !s.along.is_even()))
      continue;
    const int x = across_.index_of(kind_.joint_across ? s.across / 2 : s.across);
    const int y = along_.index_of(kind_.joint_along ? s.along / 2 : s.along);
    if (x < 0 || y < 0 || s.gain <= cells_[index(x, y)].gain) continue;
    cells_[index(x, y)] = {s.gain, 0};
    choices_[index(x, y)] = {Move::take, i};
  }
}

template <bool kWorthFirst>
void SlowTable::fill() {
  for (int y = 0; y < ny_; ++y) {
    if (cancelled_ && cancelled_->load(std::memory_order_relaxed)) return;
    whole_across_.clear();
    for (int x = 0; x < nx_; ++x) {
      fill_cell<kWorthFirst>(x, y);
      note_prefixes<kWorthFirst>(x, y);
      note_whole(x, y);
    }
  }
}

// A first part of no gain is a trim, but at a fold edge it opens the fold.
inline void SlowTable::note_whole(int x, int y) {
  const Move move = choice(x, y).move;
  const bool gains = at(x, y).gain > 0;
  if ((gains || beyond_) && move != Move::part_across && move != Move::trim_across)
    whole_across_.push_back(x);
  if ((gains || above_) && move != Move::part_along && move != Move::trim_along)
    whole_along_[x].push_back(y);
}

template <bool kWorthFirst>
void SlowTable::fill_cell(int x, int y) {
  Cell best = cells_[index(x, y)];
  Choice choice = choices_[index(x, y)];
  try_trims<kWorthFirst>(x, y, best, choice);
  try_parts_across<kWorthFirst>(x, y, best, choice);
  try_parts_along<kWorthFirst>(x, y, best, choice);
  cells_[index(x, y)] = best;
  columns_[column_index(x, y)] = best;
  choices_[index(x, y)] = choice;
}

template <bool kWorthFirst>
void SlowTable::try_trims(int x, int y, Cell& best, Choice& choice) const {
  if (x > 0) {
    Cell cell = best_across_[index(x - 1, y)];
    cell.cost += aim_.cut(along_[y].units());
    if (is_better<kWorthFirst>(cell, best, kind_.copies)) {
      best = cell;
      choice = {Move::trim_across, -1};
    }
  }
  if (y > 0) {
    Cell cell = best_along_[index(x, y - 1)];
    cell.cost += aim_.cut(across_[x].units());
    if (is_better<kWorthFirst>(cell, best, kind_.copies)) {
      best = cell;
      choice = {Move::trim_along, -1};
    }
  }
}

// Two cuts, the first along the remainder's uneven side: its cost but for what
// corner_across_ holds already.
inline Cell SlowTable::odd_across(int place, int y, std::int64_t width) const {
  Cell cell = corner_across_[index(place, y)];
  cell.cost += 2 * aim_.per_cut + aim_.per_unit * width;
  return cell;
}

inline Cell SlowTable::odd_along(int x, int place, std::int64_t height) const {
  Cell cell = corner_along_[column_index(x, place)];
  cell.cost += 2 * aim_.per_cut + aim_.per_unit * height;
  return cell;
}

// The better of a trim by two cuts and one by one cut, where that can matter.
template <bool kWorthFirst>
Cell SlowTable::better_trim(const Cell& two, Cell one, std::int64_t cut) const {
  one.cost += cut;
  return !all_places_ && is_better<kWorthFirst>(one, two, kind_.copies) ? one : two;
}

template <bool kWorthFirst>
void SlowTable::try_parts_across(int x, int y, Cell& best, Choice& choice) const {
  const Cell* own_row = &cells_[index(0, y)];
  const Cell* right_row = &beyond().cells_[beyond().index(0, y)];
  const std::int32_t* exact = &parts_across_.exact[static_cast<std::size_t>(x) * nx_];
  const std::int64_t n = beyond_ ? 2 : 1;
  const std::int64_t cut = aim_.cut(along_[y].units());
  for (const std::int32_t low : whole_across_) {
    if (exact[low] < 0) continue;
    const Cell &a = own_row[low], &b = right_row[exact[low]];
    const Cell cell{a.gain + n * b.gain, a.cost + b.cost + cut};
    if (is_better<kWorthFirst>(cell, best, kind_.copies)) {
      best = cell;
      choice = {Move::part_across, low};
    }
  }
  if (x == 0 || !could_gain<kWorthFirst>(best_across_[index(x - 1, y)], best)) return;
  for (std::int32_t i = parts_across_.odd_start[x]; i < parts_across_.odd_start[x + 1]; ++i)
    try_odd_across<kWorthFirst>(parts_across_.odd[i], y, best, choice);
}

// Whether an odd parting might beat `best`: it costs at least one cut more
// than an even parting of some smaller place, so than the best of those.
template <bool kWorthFirst>
bool SlowTable::could_gain(Cell smaller, const Cell& best) const {
  smaller.cost += aim_.per_cut;
  return !all_places_ || is_better<kWorthFirst>(smaller, best, kind_.copies);
}

// The remainder is no place. It is trimmed by two cuts, the first along its
// uneven side. (Trimmed by one cut it equals a trim and then an even parting.)
template <bool kWorthFirst>
void SlowTable::try_odd_across(const OddPart& part, int y, Cell& best, Choice& choice) const {
  const SlowTable& right = beyond();
  const std::int64_t n = beyond_ ? 2 : 1;
  const std::int64_t cut = aim_.cut(along_[y].units());
  const std::size_t there = right.index(part.floor, y);
  const Cell& low = at(part.low, y);
  if (kWorthFirst && low.gain + n * right.corner_across_[there].gain < best.gain) return;
  const Cell rest = right.better_trim<kWorthFirst>(right.odd_across(part.floor, y, part.remainder),
                                                   right.best_across_[there], cut);
  const Cell cell{low.gain + n * rest.gain, low.cost + rest.cost + cut};
  if (!is_better<kWorthFirst>(cell, best, kind_.copies)) return;
  best = cell;
  choice = {Move::part_across, part.low};
}

template <bool kWorthFirst>
void SlowTable::try_parts_along(int x, int y, Cell& best, Choice& choice) const {
  const Cell* own_column = &columns_[column_index(x, 0)];
  const Cell* upper_column = &above().columns_[above().column_index(x, 0)];
  const std::int32_t* exact = &parts_along_.exact[static_cast<std::size_t>(y) * ny_];
  const std::int64_t n = above_ ? 2 : 1;
  const std::int64_t cut = aim_.cut(across_[x].units());
  for (const std::int32_t low : whole_along_[x]) {
    if (exact[low] < 0) continue;
    const Cell &a = own_column[low], &b = upper_column[exact[low]];
    const Cell cell{a.gain + n * b.gain, a.cost + b.cost + cut};
    if (is_better<kWorthFirst>(cell, best, kind_.copies)) {
      best = cell;
      choice = {Move::part_along, low};
    }
  }
  if (y == 0 || !could_gain<kWorthFirst>(best_along_[index(x, y - 1)], best)) return;
  for (std::int32_t i = parts_along_.odd_start[y]; i < parts_along_.odd_start[y + 1]; ++i)
    try_odd_along<kWorthFirst>(parts_along_.odd[i], x, best, choice);
}

template <bool kWorthFirst>
void SlowTable::try_odd_along(const OddPart& part, int x, Cell& best, Choice& choice) const {
  const SlowTable& upper = above();
  const std::int64_t n = above_ ? 2 : 1;
  const std::int64_t cut = aim_.cut(across_[x].units());
  const Cell& low = columns_[column_index(x, part.low)];
  if (kWorthFirst &&
      low.gain + n * upper.corner_along_[upper.column_index(x, part.floor)].gain < best.gain)
    return;
  const Cell rest = upper.better_trim<kWorthFirst>(upper.odd_along(x, part.floor, part.remainder),
                                                   upper.best_along_[upper.index(x, part.floor)], cut);
  const Cell cell{low.gain + n * rest.gain, low.cost + rest.cost + cut};
  if (!is_better<kWorthFirst>(cell, best, kind_.copies)) return;
  best = cell;
  choice = {Move::part_along, part.low};
}

template <bool kWorthFirst>
void SlowTable::note_prefixes(int x, int y) {
  const std::size_t here = index(x, y);
  const auto better_of = [&](const Cell& a, const Cell& b) {
    return is_better<kWorthFirst>(b, a, kind_.copies) ? b : a;
  };
  const Cell cell = cells_[here];
  best_across_[here] = x > 0 ? better_of(best_across_[here - 1], cell) : cell;
  best_along_[here] = y > 0 ? better_of(best_along_[here - nx_], cell) : cell;
  Cell by_height = cell, by_width = cell;
  by_height.cost += aim_.per_unit * along_[y].units();
  by_width.cost += aim_.per_unit * across_[x].units();
  const std::size_t in_column = column_index(x, y);
  if (x > 0) {
    by_height = better_of(corner_across_[here - 1], by_height);
    by_width = better_of(corner_along_[in_column - ny_], by_width);
  }
  if (y > 0) {
    by_height = better_of(corner_across_[here - nx_], by_height);
    by_width = better_of(corner_along_[in_column - 1], by_width);
  }
  corner_across_[here] = by_height;
  corner_along_[in_column] = by_width;
}


}  // namespace foldyard::test
