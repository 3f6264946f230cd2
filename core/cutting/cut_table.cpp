#include "cutting/cut_table.h"

namespace foldyard {

CutTable::CutTable(TableKind kind, Grid across, Grid along, const std::vector<Shape>& shapes,
                   const Objective& aim, const CutTable* beyond, const CutTable* above)
    : kind_(kind), across_(std::move(across)), along_(std::move(along)), aim_(aim),
      beyond_(beyond), above_(above), nx_(across_.size()), ny_(along_.size()) {
  const Grid& beyond_grid = this->beyond().across_;
  const Grid& above_grid = this->above().along_;
  parts_across_ = parts_of(across_, across_, beyond_grid, !beyond_);
  parts_along_ = parts_of(along_, along_, above_grid, !above_);
  if (beyond_) parts_across_high_ = parts_of(across_, beyond_grid, across_, false);
  if (above_) parts_along_high_ = parts_of(along_, above_grid, along_, false);
  const std::size_t n = static_cast<std::size_t>(nx_) * ny_;
  for (auto* cells : {&cells_, &columns_, &best_across_, &best_along_, &corner_across_, &corner_along_})
    cells->assign(n, Cell{});
  choices_.assign(n, Choice{});
  set_leaves(shapes);
  aim_.worth_first ? fill<true>() : fill<false>();
}

// For each place of `own`, the ways to part it with the tight part a place of
// `tight` and the remainder in `other`. halve: both parts alike, so the larger
// of two exact parts need not come first.
CutTable::Parts CutTable::parts_of(const Grid& own, const Grid& tight, const Grid& other, bool halve) {
  Parts result;
  result.start.push_back(0);
  for (Length whole : own.places()) {
    int rest = other.size() - 1;
    for (int low = 0; low < tight.size() && tight[low] < whole; ++low) {
      const Length remainder = whole - tight[low];
      while (rest >= 0 && other[rest] > remainder) --rest;
      if (rest < 0) break;
      const bool exact = other[rest] == remainder;
      if (exact && halve && tight[low] > remainder) continue;
      result.parts.push_back({low, rest, exact ? 0 : remainder.units()});
    }
    result.start.push_back(static_cast<std::int32_t>(result.parts.size()));
  }
  return result;
}

void CutTable::set_leaves(const std::vector<Shape>& shapes) {
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
void CutTable::fill() {
  for (int y = 0; y < ny_; ++y)
    for (int x = 0; x < nx_; ++x) {
      fill_cell<kWorthFirst>(x, y);
      note_prefixes<kWorthFirst>(x, y);
    }
}

template <bool kWorthFirst>
void CutTable::fill_cell(int x, int y) {
  Cell best = cells_[index(x, y)];
  Choice choice = choices_[index(x, y)];
  try_trims<kWorthFirst>(x, y, best, choice);
  try_parts_across<kWorthFirst>(x, y, best, choice);
  try_parts_along<kWorthFirst>(x, y, best, choice);
  cells_[index(x, y)] = best;
  columns_[static_cast<std::size_t>(x) * ny_ + y] = best;
  choices_[index(x, y)] = choice;
}

template <bool kWorthFirst>
void CutTable::try_trims(int x, int y, Cell& best, Choice& choice) const {
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
Cell CutTable::odd_across(int place, int y, std::int64_t width) const {
  Cell cell = corner_across_[index(place, y)];
  cell.cost += 2 * aim_.per_cut + aim_.per_unit * width;
  return cell;
}

Cell CutTable::odd_along(int x, int place, std::int64_t height) const {
  Cell cell = corner_along_[index(x, place)];
  cell.cost += 2 * aim_.per_cut + aim_.per_unit * height;
  return cell;
}

template <bool kWorthFirst>
void CutTable::try_parts_across(int x, int y, Cell& best, Choice& choice) const {
  const CutTable& right = beyond();
  const Cell* own_row = &cells_[index(0, y)];
  const Cell* right_row = &right.cells_[right.index(0, y)];
  const std::int64_t n = beyond_ ? 2 : 1;
  const std::int64_t cut = aim_.cut(along_[y].units());
  const auto consider = [&](const Cell& low, const Cell& high, Move move, std::int32_t i) {
    const Cell cell{low.gain + n * high.gain, low.cost + high.cost + cut};
    if (is_better<kWorthFirst>(cell, best, kind_.copies)) {
      best = cell;
      choice = {move, i};
    }
  };
  for (std::int32_t i = parts_across_.start[x]; i < parts_across_.start[x + 1]; ++i) {
    const Part& part = parts_across_.parts[i];
    if (part.odd == 0)
      consider(own_row[part.low], right_row[part.rest], Move::part_across, part.low);
    else
      consider(own_row[part.low], right.odd_across(part.rest, y, part.odd), Move::part_across, part.low);
  }
  if (!beyond_) return;
  for (std::int32_t i = parts_across_high_.start[x]; i < parts_across_high_.start[x + 1]; ++i) {
    const Part& part = parts_across_high_.parts[i];
    if (part.odd != 0)
      consider(odd_across(part.rest, y, part.odd), right_row[part.low], Move::part_across_high, part.low);
  }
}

template <bool kWorthFirst>
void CutTable::try_parts_along(int x, int y, Cell& best, Choice& choice) const {
  const CutTable& upper = above();
  const Cell* own_column = &columns_[static_cast<std::size_t>(x) * ny_];
  const Cell* upper_column = &upper.columns_[static_cast<std::size_t>(x) * upper.ny_];
  const std::int64_t n = above_ ? 2 : 1;
  const std::int64_t cut = aim_.cut(across_[x].units());
  const auto consider = [&](const Cell& low, const Cell& high, Move move, std::int32_t i) {
    const Cell cell{low.gain + n * high.gain, low.cost + high.cost + cut};
    if (is_better<kWorthFirst>(cell, best, kind_.copies)) {
      best = cell;
      choice = {move, i};
    }
  };
  for (std::int32_t i = parts_along_.start[y]; i < parts_along_.start[y + 1]; ++i) {
    const Part& part = parts_along_.parts[i];
    if (part.odd == 0)
      consider(own_column[part.low], upper_column[part.rest], Move::part_along, part.low);
    else
      consider(own_column[part.low], upper.odd_along(x, part.rest, part.odd), Move::part_along, part.low);
  }
  if (!above_) return;
  for (std::int32_t i = parts_along_high_.start[y]; i < parts_along_high_.start[y + 1]; ++i) {
    const Part& part = parts_along_high_.parts[i];
    if (part.odd != 0)
      consider(odd_along(x, part.rest, part.odd), upper_column[part.low], Move::part_along_high, part.low);
  }
}

template <bool kWorthFirst>
void CutTable::note_prefixes(int x, int y) {
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
  if (x > 0) {
    by_height = better_of(corner_across_[here - 1], by_height);
    by_width = better_of(corner_along_[here - 1], by_width);
  }
  if (y > 0) {
    by_height = better_of(corner_across_[here - nx_], by_height);
    by_width = better_of(corner_along_[here - nx_], by_width);
  }
  corner_across_[here] = by_height;
  corner_along_[here] = by_width;
}

namespace {

// The place among [0, count) whose cell, with `extra` added, is best and equal
// to `wanted`; the first such.
template <class CellAt>
int place_of(const Cell& wanted, int count, CellAt cell_at) {
  for (int i = 0; i < count; ++i)
    if (cell_at(i) == wanted) return i;
  return -1;
}

}  // namespace

Remainder CutTable::remainder_across(Length width, int y) const {
  const int x = across_.floor_index(width);
  if (x < 0) return {};
  if (across_[x] == width) return {at(x, y), x, y, 0, false};
  Cell one = best_across_[index(x, y)];
  one.cost += aim_.cut(along_[y].units());
  const Cell two = odd_across(x, y, width.units());
  if (is_better(aim_, two, one, kind_.copies)) {
    if (!is_better(aim_, two, Cell{}, kind_.copies)) return {};
    for (int j = 0; j <= y; ++j) {
      const int i = place_of(corner_across_[index(x, y)], x + 1, [&](int k) {
        Cell c = at(k, j);
        c.cost += aim_.per_unit * along_[j].units();
        return c;
      });
      if (i >= 0) return {two, i, j, 2, true};
    }
  }
  if (!is_better(aim_, one, Cell{}, kind_.copies)) return {};
  const int i = place_of(best_across_[index(x, y)], x + 1, [&](int k) { return at(k, y); });
  return {one, i, y, 1, false};
}

Remainder CutTable::remainder_along(int x, Length height) const {
  const int y = along_.floor_index(height);
  if (y < 0) return {};
  if (along_[y] == height) return {at(x, y), x, y, 0, false};
  Cell one = best_along_[index(x, y)];
  one.cost += aim_.cut(across_[x].units());
  const Cell two = odd_along(x, y, height.units());
  if (is_better(aim_, two, one, kind_.copies)) {
    if (!is_better(aim_, two, Cell{}, kind_.copies)) return {};
    for (int i = 0; i <= x; ++i) {
      const int j = place_of(corner_along_[index(x, y)], y + 1, [&](int k) {
        Cell c = at(i, k);
        c.cost += aim_.per_unit * across_[i].units();
        return c;
      });
      if (j >= 0) return {two, i, j, 2, false};
    }
  }
  if (!is_better(aim_, one, Cell{}, kind_.copies)) return {};
  const int j = place_of(best_along_[index(x, y)], y + 1, [&](int k) { return at(x, k); });
  return {one, x, j, 1, false};
}

}  // namespace foldyard
