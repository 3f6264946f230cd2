#include "cutting/fold_layout.h"

#include <algorithm>
#include <numeric>

namespace foldyard {

namespace {

class OpenLayout : public FoldLayout {
 public:
  explicit OpenLayout(const Fabric& f) : FoldLayout(f, {0, 1, 0}) {}
  bool is_fixed() const override { return true; }
  Length middle(Length, Length) const override { return usable(); }
  Length middle_start(Length, Length) const override { return selvedge_; }
  Length folded(Length, Length) const override { return width_; }
  std::vector<Length> lines(Length, Length) const override { return {}; }
};

class HalfLayout : public FoldLayout {
 public:
  explicit HalfLayout(const Fabric& f) : FoldLayout(f, {1, 0, 0}) {}
  bool is_fixed() const override { return true; }
  SizeRange left() const override { return {width_ / 2 - selvedge_, width_ / 2 - selvedge_}; }
  Length middle(Length, Length) const override { return {}; }
  Length folded(Length, Length) const override { return width_ - width_ / 2; }
  std::vector<Length> lines(Length, Length) const override { return {width_ / 2}; }
};

class OffCentreLayout : public FoldLayout {
 public:
  OffCentreLayout(const Fabric& f, const FoldLimits& l)
      : FoldLayout(f, {1, 1, 0}), least_(std::max(l.flap, width_ - selvedge_ - l.depth)) {}
  SizeRange left() const override { return {least_, usable() / 2}; }
  bool goes_under_left() const override { return true; }
  Length middle(Length x, Length) const override { return usable() - x * 2; }
  Length folded(Length x, Length) const override { return width_ - selvedge_ - x; }
  std::vector<Length> lines(Length x, Length) const override { return {x + selvedge_}; }

 private:
  Length least_;
};

// Both edges in, flaps of any size that do not meet under each other.
class FlapsLayout : public FoldLayout {
 public:
  FlapsLayout(const Fabric& f, const FoldLimits& l) : FoldLayout(f, {1, 1, 1}), limits_(l) {}
  SizeRange left() const override { return {limits_.flap, room() - limits_.flap}; }
  SizeRange right(Length x) const override {
    return {std::max(limits_.flap, usable() - x - limits_.depth), room() - x};
  }
  bool goes_under_left() const override { return true; }
  bool goes_under_right() const override { return true; }
  Length middle(Length x, Length y) const override {
    return x + y > room() ? kNoRoom : usable() - (x + y) * 2;
  }
  Length folded(Length x, Length y) const override { return usable() - x - y; }
  std::vector<Length> lines(Length x, Length y) const override {
    return {x + selvedge_, width_ - selvedge_ - y};
  }

 private:
  // For both flaps together: their selvedges still lie side by side.
  Length room() const { return usable() / 2 - selvedge_; }
  FoldLimits limits_;
};

// Both edges in, meeting in the middle.
class MeetingFlapsLayout : public FoldLayout {
 public:
  MeetingFlapsLayout(const Fabric& f, Length trim) : FoldLayout(f, {1, 1, 1}), trim_(trim) {}
  bool is_fixed() const override { return true; }
  SizeRange left() const override { return {trim_, flap() - selvedge_}; }
  SizeRange right(Length) const override { return left(); }
  Length middle(Length x, Length y) const override { return folded(x, y) - x - y; }
  Length folded(Length, Length) const override { return width_ - flap() * 2; }
  std::vector<Length> lines(Length, Length) const override { return {flap(), width_ - flap()}; }

 private:
  Length flap() const { return width_ / 4; }
  Length trim_;
};

std::vector<Length> fan_lines(Length first, Length leg, int legs) {
  std::vector<Length> lines{first};
  while (static_cast<int>(lines.size()) < legs - 1) lines.push_back(lines.back() + leg);
  return lines;
}

// What the fans share: n legs of `leg` each, the first and last shorter.
class FanLayout : public FoldLayout {
 public:
  FanLayout(const Fabric& f, int legs, Shares shares, bool mirrored, const FoldLimits& l)
      : FoldLayout(f, shares, mirrored), n_(legs), limits_(l) {}
  Length folded(Length x, Length y) const override { return leg(x, y); }
  std::vector<Length> lines(Length x, Length y) const override {
    return fan_lines(first(x, y) + selvedge_, leg(x, y), n_);
  }
  Length middle(Length x, Length y) const override {
    const Length g = leg(x, y);
    const Length longest = std::max(first(x, y), last(x, y)) + selvedge_;
    const Length shortest = std::min(first(x, y), last(x, y));
    return g <= limits_.depth && longest <= g && shortest >= limits_.flap ? g - x - y : kNoRoom;
  }


 protected:
  virtual Length leg(Length x, Length y) const = 0;
  virtual Length first(Length x, Length y) const = 0;  // its usable part
  Length last(Length x, Length y) const { return usable() - first(x, y) - leg(x, y) * (n_ - 2); }
  // A strip from a fold edge that leaves a selvedge, or a trim, outside.
  Length margin() const { return std::max(selvedge_, limits_.fold_trim); }
  int n_;
  FoldLimits limits_;
};

// n odd, first and last leg long: all n plies lie in the middle. What does not
// divide by n (less than n units) lengthens the last or the first leg, or, where
// both are at their longest, the legs are a unit longer and the last shorter.
class LongOddFan : public FanLayout {
 public:
  LongOddFan(const Fabric& f, int n, const FoldLimits& l)
      : FanLayout(f, n, {(n - 1) / 2, n, (n - 1) / 2}, false, l) {}
  SizeRange left() const override { return {margin(), usable() / (n_ - 1) - margin()}; }
  SizeRange right(Length) const override { return left(); }
  Length middle(Length x, Length y) const override {
    const Length covered = last(x, y) - x;  // by the last leg
    return std::min(FanLayout::middle(x, y), covered);
  }

 protected:
  Length leg(Length x, Length y) const override {
    const Length g = (usable() + x + y) / n_;
    return over(x, y) > room(x) && over(x, y) > room(y) ? g + Length::units(1) : g;
  }
  Length first(Length x, Length y) const override {
    const bool into_first = over(x, y) > room(y) && over(x, y) <= room(x);
    return leg(x, y) - x + (into_first ? over(x, y) : Length());
  }

 private:
  Length over(Length x, Length y) const {
    return usable() + x + y - (usable() + x + y) / n_ * n_;
  }
  Length room(Length strip) const { return strip - selvedge_; }
};

// n odd, first and last leg short, each only over its own fold edge.
class ShortOddFan : public FanLayout {
 public:
  ShortOddFan(const Fabric& f, int n, const FoldLimits& l)
      : FanLayout(f, n, {(n - 1) / 2, n - 2, (n - 1) / 2}, false, l) {}
  SizeRange left() const override {
    return {limits_.flap, std::max(limits_.flap, usable() / (n_ - 1) - limits_.flap)};
  }
  SizeRange right(Length x) const override {
    const Length least = std::max(limits_.flap, usable() - x - limits_.depth * (n_ - 2));
    return {least, std::max(least, usable() / (n_ - 1) - x)};
  }

  bool goes_under_left() const override { return true; }
  bool goes_under_right() const override { return true; }

 protected:
  Length leg(Length x, Length y) const override { return (usable() - x - y) / (n_ - 2); }
  Length first(Length, Length y) const override { return y; }
};

// n odd, one end leg long and one short: n − 1 plies in the middle. The short leg
// is as long as its strip, or as the least flap.
class MixedOddFan : public FanLayout {
 public:
  MixedOddFan(const Fabric& f, int n, Length over, const FoldLimits& l)
      : FanLayout(f, n, {(n - 1) / 2, n - 1, (n - 1) / 2}, false, l), over_(over) {}
  SizeRange left() const override { return {limits_.fold_trim, usable() / (n_ - 1)}; }
  SizeRange right(Length) const override {
    // What does not divide by n − 1 lengthens the long leg, short of its selvedge.
    return {std::max(limits_.fold_trim, selvedge_ + over_), usable() / (n_ - 1)};
  }

 protected:
  Length leg(Length x, Length y) const override {
    return (usable() - first(x, y) + y) / (n_ - 1);
  }
  Length first(Length, Length y) const override { return std::max(y, limits_.flap); }

 private:
  Length over_;
};

// n odd on a table that is less deep than the legs might be long: the inner legs
// as long as it takes, the ends longer than their strips need. Cut through all
// plies in the middle, or through the inner ones only.
class DeepOddFan : public FanLayout {
 public:
  DeepOddFan(const Fabric& f, int n, bool through_all, const FoldLimits& l)
      : FanLayout(f, n, {(n - 1) / 2, through_all ? n : n - 2, (n - 1) / 2}, false, l),
        through_all_(through_all), ends_(usable() - l.depth * (n - 2)) {}
  SizeRange left() const override { return {least(), through_all_ ? limits_.depth : ends_ / 2}; }
  SizeRange right(Length x) const override {
    if (!through_all_) return {least(), std::min(ends_ / 2, limits_.depth - x)};
    return {std::max(least(), limits_.depth * 2 - ends_ - x), limits_.depth - x};
  }

 protected:
  Length leg(Length, Length) const override { return limits_.depth; }
  Length first(Length, Length y) const override {
    return std::min(through_all_ ? ends_ - limits_.depth + y : ends_ / 2, limits_.depth - selvedge_);
  }

 private:
  Length least() const { return through_all_ ? margin() : limits_.fold_trim; }
  bool through_all_;
  Length ends_;  // of both end legs together, usable
};

// n even: both ends lie on the right; the first leg long, the last short. What does not
// divide by n − 1 (less than n − 1 units) lengthens the last leg, or, where its selvedge would
// then lie beyond the others, the legs are a unit longer and the first shorter.
class EvenFan : public FanLayout {
 public:
  EvenFan(const Fabric& f, int n, bool mirrored, const FoldLimits& l)
      : FanLayout(f, n, {(n - 2) / 2, n - 1, n / 2}, mirrored, l) {}
  SizeRange left() const override { return {margin(), (usable() - limits_.flap * n_) / (n_ - 2)}; }
  SizeRange right(Length x) const override {
    return {std::max(limits_.flap, usable() + x - limits_.depth * (n_ - 1)), usable() / n_};
  }
  bool goes_under_right() const override { return true; }
  Length middle_start(Length x, Length y) const override { return std::max(x, leg(x, y) - first(x, y)); }
  Length middle(Length x, Length y) const override {
    const Length covered = first(x, y) - y;  // by the first leg
    return covered < Length() ? kNoRoom : std::min(FanLayout::middle(x, y), covered);
  }

 protected:
  Length leg(Length x, Length y) const override {
    return is_raised(x, y) ? even(x, y) + Length::units(1) : even(x, y);
  }
  Length first(Length x, Length y) const override {
    return is_raised(x, y) ? usable() - y - leg(x, y) * (n_ - 2) : even(x, y) - x;
  }

 private:
  Length even(Length x, Length y) const { return (usable() + x - y) / (n_ - 1); }
  bool is_raised(Length x, Length y) const {
    const Length over = usable() + x - y - even(x, y) * (n_ - 1);
    return over > Length() && y + over + selvedge_ > even(x, y);
  }
};

// n even, both ends as short as a flap may be: the inner legs may be cut under
// them, too.
class ShortEvenFan : public FanLayout {
 public:
  ShortEvenFan(const Fabric& f, int n, bool mirrored, const FoldLimits& l)
      : FanLayout(f, n, {(n - 2) / 2, 0, n / 2}, mirrored, l),
        flap_(std::max(l.flap, (usable() - l.depth * (n - 2) + Length::units(1)) / 2)) {}
  SizeRange left() const override { return {limits_.fold_trim, leg({}, {}) - limits_.fold_trim}; }
  SizeRange right(Length x) const override {
    return {limits_.fold_trim, std::min(flap_, leg({}, {}) - x)};
  }

 protected:
  Length leg(Length, Length) const override { return (usable() - flap_ * 2) / (n_ - 2); }
  Length first(Length, Length) const override { return flap_; }

 private:
  Length flap_;
};

// Equal legs, as folded without measuring. The sizes are where strips are slit;
// the folds lie where they lie.
class PlainFan : public FoldLayout {
 public:
  PlainFan(const Fabric& f, int n, Shares shares, bool mirrored, Length trim)
      : FoldLayout(f, shares, mirrored), n_(n), leg_((f.width + Length::units(n - 1)) / n), trim_(trim) {}
  bool is_fixed() const override { return true; }
  Length folded(Length, Length) const override { return leg_; }
  std::vector<Length> lines(Length, Length) const override { return fan_lines(leg_, leg_, n_); }

 protected:
  Length first() const { return leg_ - selvedge_; }
  Length last() const { return width_ - leg_ * (n_ - 1) - selvedge_; }
  int n_;
  Length leg_;
  Length trim_;
};

// Which of the two end legs the middle strip is cut through besides the others.
struct Ends {
  bool first;
  bool last;
};

class PlainOddFan : public PlainFan {
 public:
  PlainOddFan(const Fabric& f, int n, Ends ends, Length trim)
      : PlainFan(f, n, {(n - 1) / 2, n - 2 + ends.first + ends.last, (n - 1) / 2}, false, trim),
        ends_(ends) {}
  SizeRange left() const override { return {trim_, last()}; }
  SizeRange right(Length x) const override { return {trim_, std::min(first(), leg_ - x)}; }
  Length middle_start(Length x, Length) const override {
    return ends_.first ? std::max(x, leg_ - first()) : x;
  }
  Length middle(Length x, Length y) const override {
    if (x + y > leg_) return kNoRoom;
    const Length end = ends_.last ? std::min(leg_ - y, last()) : leg_ - y;
    return std::max(end - middle_start(x, y), Length());
  }

 private:
  Ends ends_;
};

class PlainEvenFan : public PlainFan {
 public:
  PlainEvenFan(const Fabric& f, int n, bool mirrored, Length trim)
      : PlainFan(f, n, {(n - 2) / 2, 0, n / 2}, mirrored, trim) {}
  SizeRange left() const override { return {trim_, leg_ - trim_}; }
  SizeRange right(Length x) const override {
    const Length y = std::min({leg_ - x, first(), last()});
    return {y, y};
  }
  Length middle(Length x, Length y) const override { return leg_ - x - y; }
};

template <class Layout, class... Args>
void add(std::vector<std::unique_ptr<FoldLayout>>& list, Args&&... args) {
  list.push_back(std::make_unique<Layout>(std::forward<Args>(args)...));
}

void add_fans(std::vector<std::unique_ptr<FoldLayout>>& list, const FoldWay& way,
              const Fabric& fabric, const FoldLimits& limits) {
  const bool mirrored = way.kind == FoldKind::quarters;
  const bool odd = way.legs % 2 == 1;
  if (way.plain && odd) {
    for (Ends ends : {Ends{true, true}, Ends{true, false}, Ends{false, true}, Ends{false, false}})
      add<PlainOddFan>(list, fabric, way.legs, ends, limits.fold_trim);
  } else if (way.plain) {
    add<PlainEvenFan>(list, fabric, way.legs, mirrored, limits.fold_trim);
  } else if (odd) {
    add<LongOddFan>(list, fabric, way.legs, limits);
    add<MixedOddFan>(list, fabric, way.legs, Length(), limits);
    add<MixedOddFan>(list, fabric, way.legs, Length::units(way.legs - 2), limits);
    add<ShortOddFan>(list, fabric, way.legs, limits);
    if (fabric.usable_width() <= limits.depth * (way.legs - 2)) return;
    add<DeepOddFan>(list, fabric, way.legs, true, limits);
    add<DeepOddFan>(list, fabric, way.legs, false, limits);
  } else {
    add<EvenFan>(list, fabric, way.legs, mirrored, limits);
    add<ShortEvenFan>(list, fabric, way.legs, mirrored, limits);
  }
}

}  // namespace

std::vector<std::unique_ptr<FoldLayout>> layouts_of(const FoldWay& way, const Fabric& fabric,
                                                    const FoldLimits& limits) {
  std::vector<std::unique_ptr<FoldLayout>> list;
  switch (way.kind) {
    case FoldKind::open: add<OpenLayout>(list, fabric); break;
    case FoldKind::selvedge_to_selvedge: add<HalfLayout>(list, fabric); break;
    case FoldKind::off_centre: add<OffCentreLayout>(list, fabric, limits); break;
    case FoldKind::both_edges_in:
      if (way.plain) add<MeetingFlapsLayout>(list, fabric, limits.fold_trim);
      else add<FlapsLayout>(list, fabric, limits);
      break;
    case FoldKind::fan:
    case FoldKind::quarters:
      add_fans(list, way, fabric, limits);
      break;
  }
  return list;
}

std::vector<int> levels_of(const FoldWay& way) {
  switch (way.kind) {
    case FoldKind::open: return {0};
    case FoldKind::selvedge_to_selvedge:
    case FoldKind::off_centre: return {1, 0};
    case FoldKind::both_edges_in: return {1, 0, 2};
    case FoldKind::quarters: return {1, 2, 3, 0};
    case FoldKind::fan: break;
  }
  std::vector<int> levels(way.legs);
  std::iota(levels.begin(), levels.end(), 0);
  return levels;
}

}  // namespace foldyard
