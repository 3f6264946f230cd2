#include <algorithm>
#include <map>

#include "inspect/checks.h"

namespace foldyard::inspection {

namespace {

// A rectangle of the flat cloth with what a sentence calls it.
struct Tile {
  Rect rect;
  const char* kind;
  std::size_t number;
};

std::vector<Tile> tiles_of(const Pattern& pattern) {
  std::vector<Tile> tiles;
  std::size_t number = 0;
  for (const PlacedPanel& panel : pattern.panels) tiles.push_back({panel.flat, "panel ", ++number});
  number = 0;
  for (const Rest& rest : pattern.rests) tiles.push_back({rest.flat, "rest ", ++number});
  return tiles;
}

// Sweeps along the length and keeps the tiles that lie under the line, by
// place across; a new one can only meet its two neighbours there.
class Sweep {
 public:
  Sweep(const Subject& subject, Findings& findings) : s_(subject), findings_(findings) {}

  bool run(std::vector<Tile>& tiles) {
    std::sort(tiles.begin(), tiles.end(), [](const Tile& a, const Tile& b) {
      return std::pair(a.rect.along.from, a.rect.across.from) <
             std::pair(b.rect.along.from, b.rect.across.from);
    });
    for (const Tile& tile : tiles) enter(tile);
    return clear_;
  }

 private:
  using Under = std::map<Length, const Tile*>;

  void leave_behind(Length along) {
    while (!ends_.empty() && ends_.begin()->first <= along) {
      under_.erase(ends_.begin()->second);
      ends_.erase(ends_.begin());
    }
  }

  bool is_clear(const Tile& a, const Tile& b) {
    return findings_.require(!a.rect.overlaps(b.rect), s_.name, a.kind, a.number, " and ", b.kind,
                             b.number, " overlap");
  }

  void enter(const Tile& tile) {
    leave_behind(tile.rect.along.from);
    const auto after = under_.lower_bound(tile.rect.across.from);
    bool clear = after == under_.end() || is_clear(*after->second, tile);
    if (after != under_.begin()) clear &= is_clear(*std::prev(after)->second, tile);
    clear_ &= clear;
    if (!clear) return;
    under_[tile.rect.across.from] = &tile;
    ends_.emplace(tile.rect.along.to, tile.rect.across.from);
  }

  const Subject& s_;
  Findings& findings_;
  Under under_;
  std::multimap<Length, Length> ends_;
  bool clear_ = true;
};

bool lie_inside(const Subject& s, const std::vector<Tile>& tiles, Findings& findings) {
  const Rect whole{{Length(), s.fabric.width}, {Length(), s.pattern.length}};
  bool inside = true;
  for (const Tile& tile : tiles) {
    inside &= findings.require(!tile.rect.is_empty(), s.name, tile.kind, tile.number, " is empty");
    inside &= findings.require(whole.covers(tile.rect), s.name, tile.kind, tile.number,
                               " runs off the cloth");
  }
  return inside;
}

// Apart from each other and inside, tiles cover the cloth if their areas do.
void inspect_areas(const Subject& s, const std::vector<Tile>& tiles, Findings& findings) {
  Area covered;
  for (const Tile& tile : tiles) covered += tile.rect.area();
  findings.agree(covered, s.fabric.width * s.pattern.length, s.name,
                 "the area of panels and rests");
}

bool is_in_a_selvedge(const Fabric& fabric, Span across) {
  return across.to <= fabric.usable().from || fabric.usable().to <= across.from;
}

bool is_worth_keeping(const Losses& losses, const Rect& flat) {
  return losses.keep_across <= flat.across.size() && losses.keep_along <= flat.along.size();
}

// Whether one uncut rectangle of the folded cloth holds all of a flat one.
bool is_in_one_piece(const Subject& s, const FoldedCloth& cloth, const Rect& flat) {
  const std::vector<Span> across = fold_span(cloth.across, flat.across);
  const std::vector<Span> along = fold_span(cloth.along, flat.along);
  const auto holds = [&](const CutNode& node) {
    const auto covers = [](Span outer, const std::vector<Span>& pieces) {
      return std::all_of(pieces.begin(), pieces.end(), [&](Span p) { return outer.covers(p); });
    };
    return node.kind != NodeKind::cut && covers(node.rect.across, across) &&
           covers(node.rect.along, along);
  };
  return std::any_of(s.pattern.tree.nodes.begin(), s.pattern.tree.nodes.end(), holds);
}

void inspect_rest(const Subject& s, const FoldedCloth& cloth, const Rest& rest, std::size_t number,
                  Findings& findings) {
  const auto require = [&](bool holds, const char* what) {
    return findings.require(holds, s.name, "rest ", number, " ", what);
  };
  if (rest.kind == RestKind::selvedge) {
    require(is_in_a_selvedge(s.fabric, rest.flat.across),
            "is called selvedge but lies in usable cloth");
    return;
  }
  require(s.fabric.usable().covers(rest.flat.across),
          "reaches into a selvedge but is not called one");
  const bool kept = is_worth_keeping(s.job.losses, rest.flat);
  const bool remnant = rest.kind == RestKind::remnant;
  require(remnant || !kept, "is called an offcut but is large enough to keep");
  require(!remnant || kept, "is called a remnant but is too small to keep");
  require(!remnant || is_in_one_piece(s, cloth, rest.flat), "is called a remnant but is cut apart");
}

}  // namespace

void inspect_cover(const Subject& s, const FoldedCloth& cloth, Findings& findings) {
  std::vector<Tile> tiles = tiles_of(s.pattern);
  if (lie_inside(s, tiles, findings) && Sweep(s, findings).run(tiles)) {
    inspect_areas(s, tiles, findings);
  }
  std::size_t number = 0;
  for (const Rest& rest : s.pattern.rests) inspect_rest(s, cloth, rest, ++number, findings);
}

}  // namespace foldyard::inspection
