#include "job/around_on_roll.h"

#include <algorithm>

#include "cutting/fold_layout.h"
#include "fold/fold_map.h"
#include "job/write_pattern.h"

namespace foldyard {

namespace {

const CutTable& strip_table(const AroundCase& c) {
  return c.tables.table({c.way.kind != FoldKind::open, false, 1});
}

AroundCuts cuts_of(const AroundCase& c) {
  if (c.way.kind == FoldKind::open) return {strip_table(c), nullptr, c.tables.fold_trim()};
  return {c.tables.table({false, false, 2}), &strip_table(c), c.tables.fold_trim()};
}

}  // namespace

bool AroundOnRoll::can_cut(const FoldWay& way) {
  return !way.end_to_end &&
         (way.kind == FoldKind::open || way.kind == FoldKind::selvedge_to_selvedge);
}

AroundOnRoll::AroundOnRoll(const AroundCase& c) : c_(c), whole_(strip_table(c)), cuts_(cuts_of(c)) {
  const int x = whole_.across().floor_index(strip().size());
  std::int64_t most = 0;
  for (int y = 0; x >= 0 && y < whole_.along().size(); ++y) {
    const Cell cell = whole_.at(whole_.best_place_across(x, y), y);
    most = std::max(most, whole_.aim().worth_first ? cell.gain : cell.gain - cell.cost);
    most_.push_back(most);
  }
}

FoldPlan AroundOnRoll::fold() const {
  FoldPlan plan{c_.way, {}, levels_of(c_.way)};
  if (is_folded()) plan.lines = {c_.roll.fabric.width / 2};
  return plan;
}

Span AroundOnRoll::strip() const {
  const Fabric& fabric = c_.roll.fabric;
  return is_folded() ? Span{Length(), fabric.width / 2 - fabric.selvedge} : fabric.usable();
}

Length AroundOnRoll::folded_width() const {
  const Length width = c_.roll.fabric.width;
  return is_folded() ? width - width / 2 : width;
}

// How many cuts along part the strip from the rest of the width.
std::int64_t AroundOnRoll::slits() const {
  return (strip().from > Length() ? 1 : 0) + (strip().to < folded_width() ? 1 : 0);
}

std::vector<Length> AroundOnRoll::sizes(Length from) const {
  const Length start = start_of(from);
  const std::vector<Length>& places = whole_.along().places();
  std::vector<Length> lengths;
  if (places.empty()) return lengths;
  const Length longest =
      std::min(c_.job.table.length, c_.cloth.usable.size() - c_.job.losses.allowance);
  const auto first = std::find_if(c_.cloth.flaws.begin(), c_.cloth.flaws.end(),
                                  [&](const Rect& flaw) { return flaw.along.to > start; });
  if (first == c_.cloth.flaws.end()) return lengths;
  for (const Length place : places)
    if (start + place > first->along.from) lengths.push_back(place);
  for (auto flaw = first; flaw != c_.cloth.flaws.end() && flaw->along.to < start + longest; ++flaw)
    for (const Length place : places)
      if (flaw->along.to > start && flaw->along.to - start + place <= longest)
        lengths.push_back(flaw->along.to - start + place);
  std::sort(lengths.begin(), lengths.end());
  lengths.erase(std::unique(lengths.begin(), lengths.end()), lengths.end());
  for (Length& length : lengths) length += c_.job.losses.allowance;
  return lengths;
}

std::int64_t AroundOnRoll::most_gain(Length size) const {
  const int y = whole_.along().floor_index(size - c_.job.losses.allowance);
  return y < 0 || most_.empty() ? 0 : most_[y];
}

std::vector<Rect> AroundOnRoll::holes(Length from, Length length) const {
  const Length start = start_of(from);
  const Length middle = c_.roll.fabric.width / 2;
  std::vector<Rect> holes;
  const auto add = [&](Length left, Length right, const Rect& flaw) {
    const Rect hole{intersection({left, right}, strip()),
                    intersection({flaw.along.from - start, flaw.along.to - start}, {Length(), length})};
    if (!hole.is_empty()) holes.push_back(hole);
  };
  for (const Rect& flaw : c_.cloth.flaws) {
    if (!is_folded()) {
      add(flaw.across.from, flaw.across.to, flaw);
      continue;
    }
    if (flaw.across.from < middle) add(middle - std::min(flaw.across.to, middle), middle - flaw.across.from, flaw);
    if (flaw.across.to > middle) add(std::max(flaw.across.from, middle) - middle, flaw.across.to - middle, flaw);
  }
  return holes;
}

AroundFlaws::Gain AroundOnRoll::best(Length from, Length size) const {
  const Length length = size - c_.job.losses.allowance;
  const Cell cell = cuts_.best({strip(), {Length(), length}}, holes(from, length));
  if (cell.gain <= 0) return {};
  const std::int64_t cost = cell.cost + slits() * whole_.aim().cut(length.units()) +
                            c_.scale.per_length + c_.scale.per_lay;
  return whole_.aim().worth_first ? Gain{cell.gain, cost} : Gain{cell.gain - cost, 0};
}

Pattern AroundOnRoll::pattern(Span on_roll) const {
  const Length length = on_roll.size() - c_.job.losses.allowance;
  TreeBuilder builder(&c_.tables.shapes());
  int node = builder.add({{Length(), folded_width()}, {Length(), length}});
  if (strip().from > Length()) node = builder.cut(node, Direction::along, strip().from).second;
  if (strip().to < folded_width()) node = builder.cut(node, Direction::along, strip().to).first;
  cuts_.fill(builder, node, holes(on_roll.from, length));
  return write_pattern(c_.job, c_.roll, fold(), length, builder.take_tree());
}

}  // namespace foldyard
