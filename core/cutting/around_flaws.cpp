#include "cutting/around_flaws.h"

#include <algorithm>

namespace foldyard {

namespace {

constexpr Length kNothing = Length::units(-1);
constexpr int kDeepest = 2;
constexpr std::size_t kMostPlaces = 16;
constexpr std::size_t kFewPlaces = 5;

const Rect* first_in(const Rect& rect, const std::vector<Rect>& holes) {
  const auto found = std::find_if(holes.begin(), holes.end(),
                                  [&](const Rect& hole) { return hole.overlaps(rect); });
  return found == holes.end() ? nullptr : &*found;
}

std::size_t count_in(const Rect& rect, const std::vector<Rect>& holes) {
  return static_cast<std::size_t>(std::count_if(
      holes.begin(), holes.end(), [&](const Rect& hole) { return hole.overlaps(rect); }));
}

Rect clipped(const Rect& hole, const Rect& to) {
  return {intersection(hole.across, to.across), intersection(hole.along, to.along)};
}

}  // namespace

// None, and then those up to the limit, the last of them always.
std::vector<Length> AroundCuts::places_up_to(const Grid& grid, Length limit, std::size_t most) const {
  std::vector<Length> places{kNothing};
  const auto count = static_cast<std::size_t>(grid.floor_index(limit) + 1);
  const std::size_t kept = std::min(count, most - 1);
  for (std::size_t i = 1; i <= kept; ++i)
    places.push_back(grid[static_cast<int>(i * count / kept - 1)]);
  return places;
}

Length AroundCuts::widest(const Grid& grid, Length limit) const {
  const int index = grid.floor_index(limit);
  return index < 0 ? Length() : grid[index];
}

// False where no strip can be cut off there.
bool AroundCuts::part(const Rect& rest, const Rect& whole, const Rect& hole, const Peel& peel,
                      Piece& p) const {
  const bool lower = peel.side == Side::left || peel.side == Side::before;
  const bool is_across = peel.side == Side::left || peel.side == Side::right;
  const Span side = is_across ? rest.across : rest.along;
  const Span gap = is_across ? hole.across : hole.along;
  const Length room = lower ? gap.from - side.from : side.to - gap.to;
  const Grid& grid = is_across ? across(peel.side == Side::left && is_joined(rest, whole)) : open_.along();
  const Length size = peel.size.is_zero() ? widest(grid, room) : peel.size;
  if (size <= Length() || size > room) return false;
  p = {rest, rest, is_across ? Direction::along : Direction::across,
       lower ? side.from + size : side.to - size, lower};
  if (is_across && is_joined(rest, whole) && p.at - side.from < trim_) return false;
  Span& piece = is_across ? p.piece.across : p.piece.along;
  Span& left = is_across ? p.rest.across : p.rest.along;
  (lower ? piece.to : piece.from) = p.at;
  (lower ? left.from : left.to) = p.at;
  return true;
}

Cell AroundCuts::clean(const Rect& rect, bool joined) const {
  const CutTable& table = joined ? *joint_ : open_;
  const int x = table.across().floor_index(rect.across.size());
  const int y = table.along().floor_index(rect.along.size());
  if (x < 0 || y < 0) return {};
  Cell cell = table.at(x, y);
  if (cell.gain <= 0) return {};
  if (joint_ && !joined) cell.gain *= 2;
  const Length width = rect.across.size(), height = table.along()[y];
  if (height != rect.along.size()) cell.cost += table.aim().cut(width.units());
  if (table.across()[x] != width) cell.cost += table.aim().cut(height.units());
  return cell;
}

void AroundCuts::fill_clean(TreeBuilder& builder, int node, bool joined) const {
  const CutTable& table = joined ? *joint_ : open_;
  const Rect rect = builder.rect(node);
  const int x = table.across().floor_index(rect.across.size());
  const int y = table.along().floor_index(rect.along.size());
  if (x < 0 || y < 0 || table.at(x, y).gain <= 0) return;
  if (table.along()[y] != rect.along.size())
    node = builder.cut(node, Direction::across, rect.along.from + table.along()[y]).first;
  if (table.across()[x] != rect.across.size())
    node = builder.cut(node, Direction::along, rect.across.from + table.across()[x]).first;
  builder.fill(node, table, x, y, false);
}

Cell AroundCuts::piece_cell(const Piece& p, const Rect& whole, const std::vector<Rect>& holes,
                            int depth) const {
  if (!first_in(p.piece, holes)) return clean(p.piece, is_joined(p.piece, whole));
  return depth >= kDeepest ? Cell{} : best_of(p.piece, whole, holes, depth + 1, nullptr);
}

// Whether a strip is worth the cut that parts it off.
bool AroundCuts::pays(const Cell& cell, Length travel) const {
  const Objective& aim = open_.aim();
  return cell.gain > 0 && (aim.worth_first || cell.gain > cell.cost + aim.cut(travel.units()));
}

// Strips that give nothing are not cut off.
Cell AroundCuts::gain_of(const Peels& peels, const Rect& rect, const Rect& whole, const Rect& hole,
                         const std::vector<Rect>& holes, int depth) const {
  Cell sum;
  Rect rest = rect;
  for (const Peel& peel : peels) {
    Piece p;
    if (!part(rest, whole, hole, peel, p)) continue;
    const Length travel = p.direction == Direction::along ? rest.along.size() : rest.across.size();
    const Cell cell = piece_cell(p, whole, holes, depth);
    if (!pays(cell, travel)) continue;
    sum = {sum.gain + cell.gain, sum.cost + cell.cost + open_.aim().cut(travel.units())};
    rest = p.rest;
  }
  return sum;
}

AroundCuts::Ends AroundCuts::ends(const Grid& low, const Grid& high, Span rect, Span hole,
                                  std::size_t most) const {
  return {places_up_to(low, hole.from - rect.from, most), places_up_to(high, rect.to - hole.to, most)};
}

Cell AroundCuts::best_of(const Rect& rect, const Rect& whole, const std::vector<Rect>& holes, int depth,
                         Peels* chosen) const {
  const Rect hole = clipped(*first_in(rect, holes), rect);
  const std::size_t most = depth == 0 && count_in(rect, holes) == 1 ? kMostPlaces : kFewPlaces;
  const Ends across_ends = ends(across(is_joined(rect, whole)), open_.across(), rect.across, hole.across, most);
  const Ends along_ends = ends(open_.along(), open_.along(), rect.along, hole.along, most);
  Cell best;
  const auto consider = [&](const Peels& peels) {
    const Cell cell = gain_of(peels, rect, whole, hole, holes, depth);
    if (!is_better(open_.aim(), cell, best, 1)) return;
    best = cell;
    if (chosen) *chosen = peels;
  };
  const Peel left{Side::left, {}}, right{Side::right, {}}, before{Side::before, {}}, behind{Side::behind, {}};
  for (const Length a : across_ends.low)
    for (const Length b : across_ends.high)
      consider({Peel{Side::left, a}, {Side::right, b}, before, behind, left, right});
  for (const Length c : along_ends.low)
    for (const Length d : along_ends.high)
      consider({Peel{Side::before, c}, {Side::behind, d}, left, right, before, behind});
  return best;
}

Cell AroundCuts::best(const Rect& whole, const std::vector<Rect>& holes) const {
  if (!first_in(whole, holes)) return clean(whole, is_joined(whole, whole));
  return best_of(whole, whole, holes, 0, nullptr);
}

void AroundCuts::fill(TreeBuilder& builder, int node, const std::vector<Rect>& holes) const {
  const Rect whole = builder.rect(node);  // a copy: cuts move what the builder holds
  fill_part(builder, node, whole, holes, 0);
}

void AroundCuts::fill_part(TreeBuilder& builder, int node, const Rect& whole,
                           const std::vector<Rect>& holes, int depth) const {
  const Rect rect = builder.rect(node);
  const Rect* first = first_in(rect, holes);
  if (!first) return fill_clean(builder, node, is_joined(rect, whole));
  Peels peels{};
  best_of(rect, whole, holes, depth, &peels);
  const Rect hole = clipped(*first, rect);
  for (const Peel& peel : peels) {
    const Rect rest = builder.rect(node);
    Piece p;
    if (!part(rest, whole, hole, peel, p)) continue;
    const Length travel = p.direction == Direction::along ? rest.along.size() : rest.across.size();
    if (!pays(piece_cell(p, whole, holes, depth), travel)) continue;
    const auto [low, high] = builder.cut(node, p.direction, p.at);
    const int piece = p.is_first ? low : high;
    fill_part(builder, piece, whole, holes, depth + 1);
    node = p.is_first ? high : low;
  }
}

}  // namespace foldyard
