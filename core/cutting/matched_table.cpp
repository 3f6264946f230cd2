#include "cutting/matched_table.h"

#include <algorithm>

#include "measure/index.h"
#include "measure/stop.h"

namespace foldyard {

MatchedTable::MatchedTable(TableKind kind, const PhaseAxis& across, const PhaseAxis& along,
                           const std::vector<PhasedShape>& shapes, const Objective& aim,
                           const MatchedTable* beyond, const MatchedTable* above,
                           const std::atomic<bool>* cancelled)
    : kind_(kind), across_(across), along_(along), shapes_(shapes), aim_(aim), beyond_(beyond),
      above_(above) {
  const std::size_t n = static_cast<std::size_t>(across.size()) * static_cast<std::size_t>(along.size());
  for (auto* cells : {&cells_, &best_across_, &best_along_}) cells->assign(n, Cell{});
  steps_.assign(n, Step{});
  offer_shapes();
  for (int y = 0; y < along.size(); ++y) {
    if (is_set(cancelled)) {
      leave_from(y);
      return;
    }
    for (int x = 0; x < across.size(); ++x) {
      fill_cell(x, y);
      note_best(x, y);
    }
  }
}

void MatchedTable::offer_shapes() {
  for (int i = 0; i < std::ssize(shapes_); ++i) {
    const Shape& s = shapes_[ix(i)].shape;
    const bool odd = (kind_.joint_across && !s.across.is_even()) ||
                     (kind_.joint_along && !s.along.is_even());
    const bool joint = kind_.joint_across || kind_.joint_along;
    if (s.gain > 0 && !(joint && (odd || !s.on_fold))) offer_shape(i);
  }
}

// Rows that are not filled hold nothing, not even single panels: what is best up to them is
// not noted.
void MatchedTable::leave_from(int y) {
  const auto first = static_cast<std::ptrdiff_t>(index(0, y));
  std::fill(cells_.begin() + first, cells_.end(), Cell{});
  std::fill(steps_.begin() + first, steps_.end(), Step{});
}

// Whether what needs a phase on an axis lies in it; a joint axis has none.
bool MatchedTable::is_in_phase(const PhasedShape& shape, int x, int y) const {
  const auto fits = [](const PhaseAxis& axis, const std::optional<Length>& phase, int state) {
    return !phase || (!axis.is_joint() && axis[state].family < axis.lost() &&
                      axis.family_of(*phase) == axis[state].family);
  };
  return fits(across_, shape.across, x) && fits(along_, shape.along, y);
}

void MatchedTable::offer_shape(int i) {
  const PhasedShape& shape = shapes_[ix(i)];
  const Length width = kind_.joint_across ? shape.shape.across / 2 : shape.shape.across;
  const Length height = kind_.joint_along ? shape.shape.along / 2 : shape.shape.along;
  for (int x = 0; x < across_.size() && across_[x].size <= width; ++x) {
    if (across_[x].size != width) continue;
    for (int y = 0; y < along_.size() && along_[y].size <= height; ++y)
      if (along_[y].size == height && is_in_phase(shape, x, y))
        consider({shape.shape.gain, 0}, Move::take, i, index(x, y));
  }
}

void MatchedTable::consider(const Cell& cell, Move move, int i, std::size_t here) {
  if (!is_better(cell, cells_[here])) return;
  cells_[here] = cell;
  steps_[here] = {move, i};
}

void MatchedTable::fill_cell(int x, int y) {
  try_trims(x, y);
  try_parts_across(x, y);
  try_parts_along(x, y);
}

void MatchedTable::try_trims(int x, int y) {
  const int left = across_[x].below, low = along_[y].below;
  if (left >= 0)
    consider(trimmed(best_across_[index(left, y)], cut_upright(y)), Move::trim_across, -1, index(x, y));
  if (low >= 0)
    consider(trimmed(best_along_[index(x, low)], cut_level(x)), Move::trim_along, -1, index(x, y));
}

// One cut frees it from a larger rectangle, if that is worth it.
Cell MatchedTable::trimmed(Cell cell, std::int64_t cut) const {
  cell.cost += cut;
  return cell.gain > 0 && is_better(cell, Cell{}) ? cell : Cell{};
}

Cell MatchedTable::low_across(const PhaseAxis::Part& part, int y) const {
  if (part.low < 0) return {};
  if (part.low_exact) return at(part.low, y);
  return trimmed(best_across_[index(part.low, y)], cut_upright(y));
}

Cell MatchedTable::high_across(const PhaseAxis::Part& part, int y) const {
  const MatchedTable& table = beyond();
  if (part.high_exact) return table.at(part.high, y);
  return table.trimmed(table.best_across_[table.index(part.high, y)], cut_upright(y));
}

Cell MatchedTable::low_along(int x, const PhaseAxis::Part& part) const {
  if (part.low < 0) return {};
  if (part.low_exact) return at(x, part.low);
  return trimmed(best_along_[index(x, part.low)], cut_level(x));
}

Cell MatchedTable::high_along(int x, const PhaseAxis::Part& part) const {
  const MatchedTable& table = above();
  if (part.high_exact) return table.at(x, part.high);
  return table.trimmed(table.best_along_[table.index(x, part.high)], cut_level(x));
}

void MatchedTable::try_parts_across(int x, int y) {
  const std::int64_t n = beyond_ ? 2 : 1;
  const std::vector<PhaseAxis::Part>& parts = across_.parts(x);
  for (int i = 0; i < std::ssize(parts); ++i) {
    const PhaseAxis::Part& part = parts[ix(i)];
    const Cell low = low_across(part, y), high = high_across(part, y);
    consider({low.gain + n * high.gain, low.cost + high.cost + cut_upright(y)}, Move::part_across, i,
             index(x, y));
  }
}

void MatchedTable::try_parts_along(int x, int y) {
  const std::int64_t n = above_ ? 2 : 1;
  const std::vector<PhaseAxis::Part>& parts = along_.parts(y);
  for (int i = 0; i < std::ssize(parts); ++i) {
    const PhaseAxis::Part& part = parts[ix(i)];
    const Cell low = low_along(x, part), high = high_along(x, part);
    consider({low.gain + n * high.gain, low.cost + high.cost + cut_level(x)}, Move::part_along, i,
             index(x, y));
  }
}

void MatchedTable::note_best(int x, int y) {
  const std::size_t here = index(x, y);
  const auto better_of = [&](const Cell& a, const Cell& b) { return is_better(b, a) ? b : a; };
  const int left = across_[x].below, low = along_[y].below;
  best_across_[here] = left >= 0 ? better_of(best_across_[index(left, y)], cells_[here]) : cells_[here];
  best_along_[here] = low >= 0 ? better_of(best_along_[index(x, low)], cells_[here]) : cells_[here];
}

int MatchedTable::best_state_up_to(int x, int y) const {
  const Cell wanted = best_up_to(x, y);
  while (!(at(x, y) == wanted)) x = across_[x].below;
  return x;
}

int MatchedTable::best_state_low(int x, int y) const {
  const Cell wanted = best_along_[index(x, y)];
  while (!(at(x, y) == wanted)) y = along_[y].below;
  return y;
}

namespace {

// Cuts so that the part where the rectangle begins is `keep` large. Gives that
// part and the other.
std::pair<int, int> cut_off(TreeBuilder& builder, int node, Direction direction, Length keep,
                            bool flip) {
  const Rect& rect = builder.rect(node);
  const bool from_far = flip && direction == Direction::along;
  const Length at = direction == Direction::across ? rect.along.from + keep
                    : from_far                     ? rect.across.to - keep
                                                   : rect.across.from + keep;
  const auto [low, high] = builder.cut(node, direction, at);
  return from_far ? std::pair(high, low) : std::pair(low, high);
}

}  // namespace

// A part of a parting across: of just the state's size, or trimmed to the best of
// its family; left where neither is worth a cut.
void MatchedTable::fill_upright(TreeBuilder& builder, int node, int x, int y, bool exact,
                                bool flip) const {
  if (x < 0) return;
  if (exact) return fill(builder, node, x, y, flip);
  if (trimmed(best_up_to(x, y), cut_upright(y)).gain == 0) return;
  const int best = best_state_up_to(x, y);
  fill(builder, cut_off(builder, node, Direction::along, across_[best].size, flip).first, best, y,
       flip);
}

void MatchedTable::fill_level(TreeBuilder& builder, int node, int x, int y, bool exact,
                              bool flip) const {
  if (y < 0) return;
  if (exact) return fill(builder, node, x, y, flip);
  if (trimmed(best_along_[index(x, y)], cut_level(x)).gain == 0) return;
  const int best = best_state_low(x, y);
  fill(builder, cut_off(builder, node, Direction::across, along_[best].size, flip).first, x, best,
       flip);
}

void MatchedTable::fill(TreeBuilder& builder, int node, int x, int y, bool flip) const {
  const Step& step = steps_[index(x, y)];
  switch (step.move) {
    case Move::leave: return;
    case Move::take: {
      const Shape& shape = shapes_[ix(step.index)].shape;
      return builder.take(node, shape.panel, shape.turned);
    }
    case Move::trim_across: return fill_upright(builder, node, across_[x].below, y, false, flip);
    case Move::trim_along: return fill_level(builder, node, x, along_[y].below, false, flip);
    case Move::part_across: {
      const PhaseAxis::Part& part = across_.parts(x)[ix(step.index)];
      const auto [low, high] = cut_off(builder, node, Direction::along, part.at, flip);
      fill_upright(builder, low, part.low, y, part.low_exact, flip);
      return beyond().fill_upright(builder, high, part.high, y, part.high_exact, flip);
    }
    case Move::part_along: {
      const PhaseAxis::Part& part = along_.parts(y)[ix(step.index)];
      const auto [low, high] = cut_off(builder, node, Direction::across, part.at, flip);
      fill_level(builder, low, x, part.low, part.low_exact, flip);
      return above().fill_level(builder, high, x, part.high, part.high_exact, flip);
    }
  }
}

}  // namespace foldyard
