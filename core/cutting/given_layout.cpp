#include "cutting/given_layout.h"

#include <algorithm>

#include "fold/fold_map.h"

namespace foldyard {

namespace {

// What the fold map says of strips.
struct Given {
  std::vector<Length> lines;
  Length whole;
  std::vector<Span> plies;  // their usable cloth, folded
  int left_pairs = 0;
  int right_pairs = 0;
  SizeRange left;
  SizeRange right;
};

class GivenLayout : public FoldLayout {
 public:
  // The middle: so many plies, from this place on; 0 plies: it is not cut.
  GivenLayout(const Fabric& fabric, const Given& given, int plies, Length from)
      : FoldLayout(fabric, {given.left_pairs, plies, given.right_pairs}), given_(given), from_(from) {}

  SizeRange left() const override { return given_.left; }
  SizeRange right(Length) const override { return given_.right; }
  Length middle_start(Length x, Length) const override { return std::max(x, from_); }
  Length folded(Length, Length) const override { return given_.whole; }
  std::vector<Length> lines(Length, Length) const override { return given_.lines; }
  Length middle(Length x, Length y) const override {
    if (x + y > given_.whole) return kNoRoom;
    if (shares_.plies == 0) return given_.whole - x - y;
    const Length start = middle_start(x, y);
    const Length end = std::min(given_.whole - y, covered_to(start));
    return end > start ? end - start : kNoRoom;
  }

 private:
  // How far so many of the plies that have begun at `start` go on.
  Length covered_to(Length start) const {
    std::vector<Length> ends;
    for (const Span& ply : given_.plies)
      if (ply.from <= start) ends.push_back(ply.to);
    if (static_cast<int>(ends.size()) < shares_.plies) return start;
    std::sort(ends.rbegin(), ends.rend());
    return ends[shares_.plies - 1];
  }

  Given given_;
  Length from_;
};

// A layout of the way, as far as its folds lie where they are given.
class LayoutAt : public FoldLayout {
 public:
  LayoutAt(const Fabric& fabric, std::unique_ptr<FoldLayout> of_way, std::vector<Length> lines)
      : FoldLayout(fabric, of_way->shares(), of_way->lies_mirrored()), of_way_(std::move(of_way)),
        lines_(std::move(lines)) {}

  SizeRange left() const override { return of_way_->left(); }
  SizeRange right(Length x) const override { return of_way_->right(x); }
  Length middle(Length x, Length y) const override {
    return of_way_->lines(x, y) == lines_ ? of_way_->middle(x, y) : kNoRoom;
  }
  Length middle_start(Length x, Length y) const override { return of_way_->middle_start(x, y); }
  bool goes_under_left() const override { return of_way_->goes_under_left(); }
  bool goes_under_right() const override { return of_way_->goes_under_right(); }
  Length folded(Length x, Length y) const override { return of_way_->folded(x, y); }
  std::vector<Length> lines(Length, Length) const override { return lines_; }

 private:
  std::unique_ptr<FoldLayout> of_way_;
  std::vector<Length> lines_;
};

Span usable_on(const Leg& leg, const Fabric& fabric) {
  const Span flat = intersection(leg.flat, fabric.usable());
  if (flat.is_empty()) return {};
  const Length before = flat.from - leg.flat.from, after = leg.flat.to - flat.to;
  return leg.mirrored ? Span{leg.folded.from + after, leg.folded.to - before}
                      : Span{leg.folded.from + before, leg.folded.to - after};
}

// The pairs joined at one rim, and how wide a strip they cover from there; all
// of them, or none. A ply that is joined at the far rim, too, ends short of it.
void read_rim(const AxisMap& map, Given& given, bool far, Length trim) {
  const Length rim = far ? map.folded_size() : Length();
  const auto joined = [&](const FoldEdge& e, bool at_far) { return e.cloth_after != at_far; };
  Length most = given.whole;
  int pairs = 0;
  for (const FoldEdge& edge : map.edges()) {
    if (!joined(edge, far)) continue;
    ++pairs;
    for (const int leg : {edge.first_leg, edge.first_leg + 1}) {
      const Span& ply = given.plies[leg];
      const bool reaches = !ply.is_empty() && (far ? ply.to : ply.from) == rim;
      most = std::min(most, reaches ? ply.size() : Length());
      for (const FoldEdge& other : map.edges())
        if (joined(other, !far) && (other.first_leg == leg || other.first_leg + 1 == leg))
          most = std::min(most, given.whole - trim);
    }
  }
  const Length least = pairs > 0 ? std::min(trim, given.whole) : Length();
  if (most < trim) pairs = 0;
  (far ? given.right_pairs : given.left_pairs) = pairs;
  (far ? given.right : given.left) = {least, pairs > 0 ? most : least};
}

bool lies_at_a_rim(const AxisMap& map, const FoldEdge& edge) {
  return edge.cloth_after ? edge.at == Length() : edge.at == map.folded_size();
}

}  // namespace

// A strip at a rim is slit where it uses its whole width; or all that the pairs
// cover is one strip, and what it does not use stays on it.
std::vector<std::unique_ptr<FoldLayout>> layouts_at(const FoldPlan& fold, const Fabric& fabric,
                                                    const FoldLimits& limits) {
  std::vector<std::unique_ptr<FoldLayout>> list;
  const AxisMap map(fabric.width, fold.lines, fold.levels);
  for (const FoldEdge& edge : map.edges())
    if (!lies_at_a_rim(map, edge)) return list;
  Given given;
  given.lines = fold.lines;
  given.whole = map.folded_size();
  std::vector<Length> starts;
  for (const Leg& leg : map.legs()) {
    given.plies.push_back(usable_on(leg, fabric));
    starts.push_back(given.plies.back().from);
  }
  std::sort(starts.begin(), starts.end());
  starts.erase(std::unique(starts.begin(), starts.end()), starts.end());
  read_rim(map, given, false, limits.fold_trim);
  read_rim(map, given, true, limits.fold_trim);
  const SizeRange left = given.left, right = given.right;
  for (const bool left_whole : {false, true})
    for (const bool right_whole : {false, true}) {
      given.left = left_whole ? SizeRange{left.most, left.most} : left;
      given.right = right_whole ? SizeRange{right.most, right.most} : right;
      list.push_back(std::make_unique<GivenLayout>(fabric, given, 0, Length()));
      for (int plies = 1; plies <= static_cast<int>(map.legs().size()); ++plies)
        for (const Length start : starts)
          list.push_back(std::make_unique<GivenLayout>(fabric, given, plies, start));
    }
  for (auto& of_way : layouts_of(fold.way, fabric, limits))
    list.push_back(std::make_unique<LayoutAt>(fabric, std::move(of_way), fold.lines));
  return list;
}

}  // namespace foldyard
