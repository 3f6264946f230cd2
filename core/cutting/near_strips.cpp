#include "cutting/near_strips.h"

#include <algorithm>

#include "cutting/laid_strips.h"
#include "measure/index.h"
#include "measure/stop.h"

namespace foldyard {

using limited::operator+;

NearStrips::NearStrips(TableSet& tables, const Layouts& layouts, bool end_to_end,
                       const limited::Counting& counting, const std::vector<int>& limit_of,
                       const std::vector<std::int64_t>& limits, const NearBudget& budget)
    : tables_(tables), layouts_(layouts), end_to_end_(end_to_end), worth_first_(tables.aim().worth_first),
      counting_(counting), budget_(budget), cells_(tables, counting, limit_of, limits, budget) {}

void NearStrips::allow(int v, std::int64_t lengths, Length size, std::int64_t best, std::int64_t loss,
                       std::int64_t apart) {
  allowed_.push_back({v, lengths, size, best, loss, apart});
}

bool NearStrips::spend() {
  if (++steps_ > budget_.steps) return false;
  return steps_ % 4096 != 0 || !is_set(budget_.cancelled);
}

NearStrips::Kinds NearStrips::kinds(const FoldLayout& layout, std::int64_t lengths) const {
  const FoldLayout::Shares& s = layout.shares();
  return {{true, end_to_end_, lengths * s.left_pairs},
          {false, end_to_end_, lengths * s.plies},
          {true, end_to_end_, lengths * s.right_pairs}};
}

NearStrips::Candidate NearStrips::cut_at(const TableKind& kind, Length size, Length slit_at, int place,
                                         bool exact, int v) {
  return {{size, slit_at, exact ? StripUse::exact : StripUse::narrower}, place, cells_.value(kind, place, v)};
}

// Slit at a narrower place: at the next one where it may be trimmed on for
// nothing, else at any.
void NearStrips::add_narrower(std::vector<Candidate>& list, const TableKind& kind, Length size, int v) {
  const int floor = tables_.across(kind.joint_across).floor_index(size);
  for (int i = floor; i >= (worth_first_ ? std::max(floor, 0) : 0); --i) list.push_back(cut_at(kind, size, size, i, false, v));
}

// The sizes of a strip at a fold edge.
std::vector<NearStrips::Candidate> NearStrips::ends(const TableKind& kind, bool has_any, const SizeRange& range,
                                                    bool goes_under, int v) {
  std::vector<Candidate> list;
  const Length least = range.least;
  list.push_back(unused(least, goes_under ? std::min(tables_.fold_trim(), least) : least));
  if (!has_any) return list;
  const Grid& grid = tables_.across(true);
  if (!goes_under) add_narrower(list, kind, least, v);
  for (int x = 0; x < grid.size(); ++x) {
    const bool fits = goes_under ? grid[x] <= least : grid[x] == least;
    if (fits) list.push_back(cut_at(kind, least, grid[x], x, true, v));
    if (least < grid[x] && grid[x] <= range.most && grid.is_sum(x)) list.push_back(cut_at(kind, grid[x], grid[x], x, true, v));
  }
  return list;
}

std::vector<NearStrips::Candidate> NearStrips::middles(const TableKind& kind, bool has_any, Length size, int v) {
  std::vector<Candidate> list{unused({}, {})};
  if (!has_any) return list;
  add_narrower(list, kind, size, v);
  const int floor = tables_.across(false).floor_index(size);
  if (floor >= 0 && tables_.across(false)[floor] == size) list.push_back(cut_at(kind, size, size, floor, true, v));
  return list;
}

bool NearStrips::find() {
  for (const Allowed& allowed : allowed_)
    for (const auto& layout : layouts_)
      if (!try_layout(*layout, allowed)) return false;
  if (!cells_.fill()) return false;
  for (const Position& position : positions_)
    if (!add_sums(position)) return false;
  return true;
}

bool NearStrips::try_layout(const FoldLayout& layout, const Allowed& allowed) {
  const SizeRange range = layout.left();
  if (range.most < range.least) return true;
  const Kinds k = kinds(layout, allowed.lengths);
  const FoldLayout::Shares& s = layout.shares();
  const auto lefts = ends(k.left, s.left_pairs > 0, range, layout.goes_under_left(), allowed.v);
  for (const Candidate& left : lefts) {
    const SizeRange beyond = layout.right(left.strip.size);
    if (beyond.most < beyond.least) continue;
    for (const Candidate& right : ends(k.right, s.right_pairs > 0, beyond, layout.goes_under_right(), allowed.v))
      if (!spend() || !try_pair(layout, allowed, k, left, right)) return false;
  }
  return true;
}

bool NearStrips::try_pair(const FoldLayout& layout, const Allowed& allowed, const Kinds& k, const Candidate& left,
                          const Candidate& right) {
  const std::int64_t slit = tables_.aim().cut(tables_.along(end_to_end_)[allowed.v].units());
  const StripsAt at(layout, left.strip, right.strip);
  if (at.middle < Length()) return true;
  for (const Candidate& middle : middles(k.middle, layout.shares().plies > 0, at.middle, allowed.v)) {
    if (!spend()) return false;
    const std::int64_t cost = slit * at.slits(middle.strip.use);
    const std::int64_t value = left.value + middle.value + right.value - (worth_first_ ? 0 : cost);
    const std::int64_t spare = allowed.loss - std::max<std::int64_t>(0, allowed.best - value);
    if (spare < 0) continue;
    Column c;
    c.v = allowed.v;
    c.lengths = allowed.lengths;
    c.size = allowed.size;
    c.layout = &layout;
    c.left_size = left.strip.size;
    c.right_size = right.strip.size;
    c.middle_start = at.start;
    c.left = {k.left, left.place, 0};
    c.middle = {k.middle, middle.place, 0};
    c.right = {k.right, right.place, 0};
    for (const Filled* strip : {&c.left, &c.middle, &c.right})
      if (strip->place >= 0) cells_.need(strip->kind, strip->place, c.v, spare);
    positions_.push_back({allowed, c, value, cost});
  }
  return true;
}

const std::vector<NearCells::Entry>& NearStrips::entries(const Filled& strip, int v) {
  static const std::vector<NearCells::Entry> kNothing{NearCells::Entry{}};
  return strip.place < 0 ? kNothing : cells_.at(strip.kind, strip.place, v);
}

bool NearStrips::add_sums(const Position& p) {
  const auto &lefts = entries(p.column.left, p.column.v), &middles = entries(p.column.middle, p.column.v),
             &rights = entries(p.column.right, p.column.v);
  const std::int64_t slits = worth_first_ ? 0 : p.slits, least = p.allowed.best - p.allowed.loss;
  const std::int64_t most_middle = middles.empty() ? 0 : middles.front().value;
  const std::int64_t most_right = rights.empty() ? 0 : rights.front().value;
  Column c = p.column;
  for (c.left.entry = 0; c.left.entry < std::ssize(lefts); ++c.left.entry) {
    const NearCells::Entry& left = lefts[ix(c.left.entry)];
    if (left.value + most_middle + most_right - slits < least) break;
    for (c.middle.entry = 0; c.middle.entry < std::ssize(middles); ++c.middle.entry) {
      const NearCells::Entry& middle = middles[ix(c.middle.entry)];
      const std::int64_t both = left.value + middle.value - slits;
      if (both + most_right < least) break;
      if (!spend()) return false;
      if (!counting_.within_limits(left.copies, middle.copies)) continue;
      const limited::Copies copies = left.copies + middle.copies;
      for (c.right.entry = 0; c.right.entry < std::ssize(rights); ++c.right.entry) {
        const NearCells::Entry& right = rights[ix(c.right.entry)];
        if (both + right.value < least) break;
        if (!spend()) return false;
        if (!counting_.within_limits(copies, right.copies)) continue;
        c.copies = copies + right.copies;
        c.value = both + right.value - p.allowed.apart;
        c.cost = left.cost + middle.cost + right.cost + p.slits;
        add(c);
      }
    }
  }
  return std::ssize(columns_) <= budget_.entries;
}

void NearStrips::add(const Column& column) {
  std::vector<int>& same = known_[column.copies];
  for (const int i : same) {
    const Column& other = columns_[ix(i)];
    if (other.size <= column.size && (other.value > column.value || (other.value == column.value && other.cost <= column.cost)))
      return;
  }
  for (const int i : same) {
    Column& other = columns_[ix(i)];
    if (column.size > other.size || column.value < other.value) continue;
    other = column;  // beaten in every way
    return;
  }
  same.push_back(static_cast<int>(columns_.size()));
  columns_.push_back(column);
}

CutTree NearStrips::tree_of(const Column& c) {
  const Length whole = c.layout->folded(c.left_size, c.right_size);
  LaidStrips strips(whole);
  const auto add_strip = [&](const Filled& strip, Length from, bool from_far) {
    if (strip.place < 0 || entries(strip, c.v)[ix(strip.entry)].move == Move::leave) return;
    strips.add(from, tables_.across(strip.kind.joint_across)[strip.place], from_far,
               [&](TreeBuilder& builder, int node, bool flip) {
                 cells_.write(builder, node, strip.kind, strip.place, c.v, strip.entry, flip);
               });
  };
  add_strip(c.left, Length(), false);
  add_strip(c.middle, c.middle_start, false);
  add_strip(c.right, whole, true);
  if (c.layout->lies_mirrored()) strips.mirror();
  return strips.tree(tables_.along(end_to_end_)[c.v]);
}

}  // namespace foldyard
