#include "cutting/near_cells.h"

#include <algorithm>

#include "measure/index.h"
#include "measure/stop.h"

namespace foldyard {

using limited::operator+;

NearCells::NearCells(TableSet& tables, const limited::Counting& counting,
                     const std::vector<int>& limit_of, const std::vector<std::int64_t>& limits,
                     const NearBudget& budget)
    : tables_(tables), counting_(counting), limit_of_(limit_of), limits_(limits), budget_(budget),
      worth_first_(tables.aim().worth_first) {}

NearCells::Cells& NearCells::cells(const TableKind& kind) {
  const auto [found, is_new] = cells_.try_emplace(kind);
  Cells& c = found->second;
  if (!is_new) return c;
  c.kind = kind;
  c.table = &tables_.table(kind);
  const std::size_t count =
      static_cast<std::size_t>(c.table->across().size()) * static_cast<std::size_t>(c.table->along().size());
  c.need.assign(count, -1);
  c.found.resize(count);
  c.beyond = kind.joint_across ? &cells({false, kind.joint_along, kind.copies * 2}) : &c;
  c.above = kind.joint_along ? &cells({kind.joint_across, false, kind.copies * 2}) : &c;
  return c;
}

std::int64_t NearCells::value(const Cells& c, int x, int y) const {
  return worth_first_ ? c.kind.copies * c.table->at(x, y).gain : static_cast<std::int64_t>(c.table->value(x, y));
}

std::int64_t NearCells::value(const TableKind& kind, int x, int y) { return value(cells(kind), x, y); }

void NearCells::need(const TableKind& kind, int x, int y, std::int64_t loss) {
  Cells& c = cells(kind);
  std::int64_t& there = c.need[index(c, x, y)];
  there = std::max(there, loss);
}

const std::vector<NearCells::Entry>& NearCells::at(const TableKind& kind, int x, int y) {
  Cells& c = cells(kind);
  return c.found[index(c, x, y)];
}

// Those that stand on others first: the most joints.
std::vector<NearCells::Cells*> NearCells::in_order() {
  std::vector<Cells*> order;
  for (auto& [kind, c] : cells_) order.push_back(&c);
  std::stable_sort(order.begin(), order.end(), [](const Cells* a, const Cells* b) {
    return a->kind.joint_across + a->kind.joint_along > b->kind.joint_across + b->kind.joint_along;
  });
  return order;
}

bool NearCells::spend() {
  if (++steps_ > budget_.steps || entries_ > budget_.entries) return false;
  return steps_ % 4096 != 0 || !is_set(budget_.cancelled);
}

bool NearCells::fill() {
  const std::vector<Cells*> order = in_order();
  for (Cells* c : order)
    if (!spread_needs(*c)) return false;
  for (auto c = order.rbegin(); c != order.rend(); ++c)
    if (!fill(**c)) return false;
  return true;
}

// Where nothing is lost in value a trim to the next place is enough, as that
// may be trimmed in turn; where each cut has its price, to every place.
template <class Visit>
void NearCells::trims(const Cells& c, int x, int y, Visit visit) const {
  const Objective& aim = tables_.aim();
  const std::int64_t upright = aim.cut(c.table->along()[y].units()), level = aim.cut(c.table->across()[x].units());
  for (int i = x - 1; i >= (worth_first_ ? std::max(x - 1, 0) : 0); --i)
    visit(Split{Move::trim_across, i, i, y, nullptr, -1, -1, upright, false});
  for (int j = y - 1; j >= (worth_first_ ? std::max(y - 1, 0) : 0); --j)
    visit(Split{Move::trim_along, j, x, j, nullptr, -1, -1, level, false});
}

template <class Visit>
void NearCells::parts_across(Cells& c, int x, int y, Visit visit) const {
  const Grid &own = c.table->across(), &other = c.beyond->table->across();
  const std::int64_t cut = tables_.aim().cut(c.table->along()[y].units());
  for (int low = 0; low < x; ++low) {
    const Length rest = own[x] - own[low];
    const int floor = other.floor_index(rest);
    if (floor < 0) return;
    Split split{Move::part_across, low, low, y, c.beyond, floor, y, cut, false};
    if (other[floor] != rest)
      odd_across(c, split, floor, y, rest, visit);
    else if (c.kind.joint_across || own[low] <= rest)  // else the same was tried the other way round
      visit(split);
  }
}

template <class Visit>
void NearCells::parts_along(Cells& c, int x, int y, Visit visit) const {
  const Grid &own = c.table->along(), &other = c.above->table->along();
  const std::int64_t cut = tables_.aim().cut(c.table->across()[x].units());
  for (int low = 0; low < y; ++low) {
    const Length rest = own[y] - own[low];
    const int floor = other.floor_index(rest);
    if (floor < 0) return;
    Split split{Move::part_along, low, x, low, c.above, x, floor, cut, false};
    if (other[floor] != rest)
      odd_along(c, split, x, floor, rest, visit);
    else if (c.kind.joint_along || own[low] <= rest)
      visit(split);
  }
}

// An upper part that is no place: trimmed by one cut, or, where it is used lower,
// too, by two in either order (then the one that trims its uneven side first).
template <class Visit>
void NearCells::odd_across(Cells& c, Split split, int floor, int y, Length width, Visit visit) const {
  const Objective& aim = tables_.aim();
  const std::int64_t cut = split.cost, one = aim.cut(c.table->along()[y].units());
  for (int i = floor; i >= (worth_first_ ? floor : 0); --i) {
    split.x = i;
    split.cost = cut + one;
    visit(split);
    for (int j = y - 1; j >= (worth_first_ ? y : 0); --j) {
      Split two = split;
      two.y = j;
      two.height_first = true;
      two.cost = cut + aim.cut(width.units()) + aim.cut(c.table->along()[j].units());
      visit(two);
    }
  }
}

template <class Visit>
void NearCells::odd_along(Cells& c, Split split, int x, int floor, Length height, Visit visit) const {
  const Objective& aim = tables_.aim();
  const std::int64_t cut = split.cost, one = aim.cut(c.table->across()[x].units());
  for (int j = floor; j >= (worth_first_ ? floor : 0); --j) {
    split.y = j;
    split.cost = cut + one;
    visit(split);
    for (int i = x - 1; i >= (worth_first_ ? x : 0); --i) {
      Split two = split;
      two.x = i;
      two.cost = cut + aim.cut(height.units()) + aim.cut(c.table->across()[i].units());
      visit(two);
    }
  }
}

// Visits the splits that lose no more than is allowed, with their loss.
template <class Visit>
bool NearCells::for_each_split(Cells& c, int x, int y, std::int64_t allowed, Visit visit) {
  const std::int64_t best = value(c, x, y);
  bool goes_on = true;
  const auto consider = [&](const Split& split) {
    if (!goes_on || !(goes_on = spend())) return;
    std::int64_t both = value(c, split.low_x, split.low_y) - (worth_first_ ? 0 : split.cost);
    if (split.upper) both += value(*split.upper, split.x, split.y);
    if (best - both <= allowed) visit(split, std::max<std::int64_t>(0, best - both));
  };
  trims(c, x, y, consider);
  parts_across(c, x, y, consider);
  parts_along(c, x, y, consider);
  return goes_on;
}

bool NearCells::spread_needs(Cells& c) {
  const int nx = c.table->across().size();
  for (int y = c.table->along().size() - 1; y >= 0; --y)
    for (int x = nx - 1; x >= 0; --x) {
      const std::int64_t allowed = c.need[index(c, x, y)];
      if (allowed < 0) continue;
      const bool done = for_each_split(c, x, y, allowed, [&](const Split& split, std::int64_t loss) {
        std::int64_t& low = c.need[index(c, split.low_x, split.low_y)];
        low = std::max(low, allowed - loss);
        if (!split.upper) return;
        std::int64_t& upper = split.upper->need[index(*split.upper, split.x, split.y)];
        upper = std::max(upper, allowed - loss);
      });
      if (!done) return false;
    }
  return true;
}

bool NearCells::fill(Cells& c) {
  const int nx = c.table->across().size();
  for (int y = 0; y < c.table->along().size(); ++y)
    for (int x = 0; x < nx; ++x) {
      const std::size_t here = index(c, x, y);
      if (c.need[here] >= 0 && !fill_cell(c, x, y, c.need[here])) return false;
    }
  return true;
}

bool NearCells::fill_cell(Cells& c, int x, int y, std::int64_t allowed) {
  now_.clear();
  known_.clear();
  const std::int64_t least = value(c, x, y) - allowed;
  if (least <= 0) add(Entry{});
  add_takes(c, x, y, least);
  bool goes_on = true;
  const bool done = for_each_split(c, x, y, allowed, [&](const Split& split, std::int64_t) {
    goes_on = goes_on && add_sums(c, split, least);
  });
  if (!done || !goes_on) return false;
  std::stable_sort(now_.begin(), now_.end(), [](const Entry& a, const Entry& b) {
    return a.value != b.value ? a.value > b.value : a.cost < b.cost;
  });
  entries_ += std::ssize(now_);
  c.found[index(c, x, y)] = now_;
  return true;
}

void NearCells::add_takes(Cells& c, int x, int y, std::int64_t least) {
  const Length width = c.table->across()[x] * (c.kind.joint_across ? 2 : 1);
  const Length height = c.table->along()[y] * (c.kind.joint_along ? 2 : 1);
  const bool joined = c.kind.joint_across || c.kind.joint_along;
  const std::vector<Shape>& shapes = tables_.shapes();
  for (int i = 0; i < std::ssize(shapes); ++i) {
    const Shape& s = shapes[ix(i)];
    if (s.across != width || s.along != height || (joined && !s.on_fold)) continue;
    Entry entry;
    entry.value = s.gain * c.kind.copies;
    entry.move = Move::take;
    entry.index = i;
    const int limit = limit_of_[ix(s.panel)];
    if (limit >= 0) {
      if (c.kind.copies > limits_[ix(limit)]) continue;
      entry.copies = counting_.one(limit, static_cast<int>(c.kind.copies));
    }
    if (entry.value >= least) add(entry);
  }
}

// All sums of what the two parts give; both are sorted, most value first.
bool NearCells::add_sums(Cells& c, const Split& split, std::int64_t least) {
  const std::vector<Entry>& lows = c.found[index(c, split.low_x, split.low_y)];
  static const std::vector<Entry> kNothing{Entry{}};
  const std::vector<Entry>& uppers = split.upper ? split.upper->found[index(*split.upper, split.x, split.y)] : kNothing;
  const std::int64_t cut = worth_first_ ? 0 : split.cost;
  for (int a = 0; a < std::ssize(lows); ++a) {
    const Entry& low = lows[ix(a)];
    const bool trims_on = !split.upper && low.move == split.move;  // one trim instead of two
    for (int b = 0; b < std::ssize(uppers); ++b) {
      const Entry& upper = uppers[ix(b)];
      const std::int64_t value = low.value + upper.value - cut;
      if (value < least) break;
      if (!spend()) return false;
      if (!counting_.within_limits(low.copies, upper.copies)) continue;
      add({low.copies + upper.copies, value, low.cost + upper.cost + (trims_on ? 0 : split.cost), split.move, split.index,
           a, b, split.x, split.y, split.height_first});
    }
  }
  return true;
}

void NearCells::add(const Entry& entry) {
  const auto [found, is_new] = known_.try_emplace(entry.copies, static_cast<int>(now_.size()));
  if (is_new) return now_.push_back(entry);
  Entry& there = now_[ix(found->second)];
  if (entry.value > there.value || (entry.value == there.value && entry.cost < there.cost)) there = entry;
}

namespace {

// Cuts off what lies beyond `keep` from the origin side (the right when flipped).
int keep_part(TreeBuilder& builder, int node, Direction direction, Length keep, bool flip, int* other) {
  const Rect rect = builder.rect(node);
  const bool from_far = flip && direction == Direction::along;
  const Length at = direction == Direction::across ? rect.along.from + keep
                    : from_far                     ? rect.across.to - keep
                                                   : rect.across.from + keep;
  const auto [low, high] = builder.cut(node, direction, at);
  if (other) *other = from_far ? low : high;
  return from_far ? high : low;
}

}  // namespace

void NearCells::write(TreeBuilder& builder, int node, const TableKind& kind, int x, int y, int entry, bool flip) {
  Cells& c = cells(kind);
  const Entry& e = c.found[index(c, x, y)][ix(entry)];
  switch (e.move) {
    case Move::leave: return;
    case Move::take: {
      const Shape& shape = tables_.shapes()[ix(e.index)];
      return builder.take(node, shape.panel, shape.turned);
    }
    case Move::trim_across:
    case Move::trim_along: return write_trim(builder, node, c, x, y, e, flip);
    default: return write_part(builder, node, c, x, y, e, flip);
  }
}

// Trims that follow one another in one direction are one cut; an empty rest none.
void NearCells::write_trim(TreeBuilder& builder, int node, Cells& c, int x, int y, const Entry& entry, bool flip) {
  const bool across = entry.move == Move::trim_across;
  const Entry* e = &entry;
  int kept_entry = -1;
  while (e->move == entry.move) {
    kept_entry = e->first;
    (across ? x : y) = e->index;
    e = &c.found[index(c, x, y)][ix(kept_entry)];
  }
  if (e->move == Move::leave) return;
  const Length keep = across ? c.table->across()[x] : c.table->along()[y];
  const int kept = keep_part(builder, node, across ? Direction::along : Direction::across, keep, flip, nullptr);
  write(builder, kept, c.kind, x, y, kept_entry, flip);
}

void NearCells::write_part(TreeBuilder& builder, int node, Cells& c, int x, int y, const Entry& e, bool flip) {
  const bool across = e.move == Move::part_across;
  Cells& upper_cells = across ? *c.beyond : *c.above;
  const Length keep = across ? c.table->across()[e.index] : c.table->along()[e.index];
  int upper = -1;
  const int lower = keep_part(builder, node, across ? Direction::along : Direction::across, keep, flip, &upper);
  write(builder, lower, c.kind, across ? e.index : x, across ? y : e.index, e.first, flip);
  const Entry& rest = upper_cells.found[index(upper_cells, e.across, e.along)][ix(e.second)];
  if (rest.move == Move::leave) return;
  const Length width = upper_cells.table->across()[e.across], height = upper_cells.table->along()[e.along];
  const bool wide = builder.rect(upper).across.size() != width;
  if (wide && !e.height_first) upper = keep_part(builder, upper, Direction::along, width, flip, nullptr);
  if (builder.rect(upper).along.size() != height)
    upper = keep_part(builder, upper, Direction::across, height, flip, nullptr);
  if (wide && e.height_first) upper = keep_part(builder, upper, Direction::along, width, flip, nullptr);
  write(builder, upper, upper_cells.kind, e.across, e.along, e.second, flip);
}

}  // namespace foldyard
