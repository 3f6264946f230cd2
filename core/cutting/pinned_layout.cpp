#include "cutting/pinned_layout.h"

#include <algorithm>

#include "cutting/given_layout.h"

namespace foldyard {

namespace {

using Pins = std::vector<std::optional<Length>>;

constexpr std::size_t kMostFolds = 12;

// A layout of the way that is passed on to.
class OfWay : public FoldLayout {
 public:
  OfWay(const Fabric& fabric, std::unique_ptr<FoldLayout> of_way)
      : FoldLayout(fabric, of_way->shares(), of_way->lies_mirrored()), of_way_(std::move(of_way)) {}

  SizeRange left() const override { return of_way_->left(); }
  SizeRange right(Length x) const override { return of_way_->right(x); }
  Length middle(Length x, Length y) const override { return of_way_->middle(x, y); }
  Length middle_start(Length x, Length y) const override { return of_way_->middle_start(x, y); }
  bool goes_under_left() const override { return of_way_->goes_under_left(); }
  bool goes_under_right() const override { return of_way_->goes_under_right(); }
  Length folded(Length x, Length y) const override { return of_way_->folded(x, y); }
  std::vector<Length> lines(Length x, Length y) const override { return of_way_->lines(x, y); }

 protected:
  std::unique_ptr<FoldLayout> of_way_;
};

// Its folds as far as the pinned lines lie where they are pinned.
class WherePinned : public OfWay {
 public:
  WherePinned(const Fabric& fabric, std::unique_ptr<FoldLayout> of_way, Pins pins)
      : OfWay(fabric, std::move(of_way)), pins_(std::move(pins)) {}

  Length middle(Length x, Length y) const override {
    const std::vector<Length> at = lines(x, y);
    for (std::size_t i = 0; i < pins_.size(); ++i)
      if (pins_[i] && (i >= at.size() || at[i] != *pins_[i])) return kNoRoom;
    return OfWay::middle(x, y);
  }

 private:
  Pins pins_;
};

// Both edges in: one flap has its size, the other is found. Seen from either
// side the layout of the way is the same.
class OneFlap : public OfWay {
 public:
  OneFlap(const Fabric& fabric, std::unique_ptr<FoldLayout> of_way, bool pinned_left, Length size)
      : OfWay(fabric, std::move(of_way)), pinned_left_(pinned_left), size_(size) {}

  SizeRange left() const override { return pinned_left_ ? SizeRange{size_, size_} : of_way_->right(size_); }
  SizeRange right(Length x) const override {
    return pinned_left_ ? of_way_->right(x) : SizeRange{size_, size_};
  }

 private:
  bool pinned_left_;
  Length size_;
};

Layouts one_flap(const FoldWay& way, const Pins& pins, const Fabric& fabric, const FoldLimits& limits) {
  const bool left = pins[0].has_value();
  const Length size = left ? *pins[0] - fabric.selvedge : fabric.width - *pins[1] - fabric.selvedge;
  Layouts layouts;
  if (size <= Length()) return layouts;
  for (auto& of_way : layouts_of(way, fabric, limits)) {
    auto pinned = std::make_unique<OneFlap>(fabric, std::move(of_way), left, size);
    const SizeRange other = left ? pinned->right(size) : pinned->left();
    if (other.least <= other.most) layouts.push_back(std::move(pinned));
  }
  return layouts;
}

// The legs of a fan: `first`, so many inner ones of `leg`, and what is left.
struct FanLegs {
  Length first;
  Length leg;
  bool operator==(const FanLegs&) const = default;
};

class Fans {
 public:
  Fans(const FoldWay& way, const Pins& pins, const Fabric& fabric, const FoldLimits& limits)
      : legs_(way.legs), fabric_(fabric), limits_(limits) {
    for (std::size_t i = 0; i < pins.size(); ++i)
      if (pins[i]) pins_.push_back({static_cast<int>(i), *pins[i]});
  }

  std::vector<FanLegs> all(const Grid& joint) const { return pins_.size() > 1 ? of_two() : of_one(joint); }

  std::vector<Length> lines(const FanLegs& fan) const {
    std::vector<Length> lines{fan.first};
    while (std::ssize(lines) < legs_ - 1) lines.push_back(lines.back() + fan.leg);
    return lines;
  }

 private:
  struct Pin {
    int line;
    Length at;
  };

  // ends: the least that an end leg may be.
  bool lies_so(const FanLegs& fan, Length ends) const {
    const Length last = fabric_.width - fan.first - fan.leg * (legs_ - 2);
    return ends <= fan.first && fan.first <= fan.leg && ends <= last && last <= fan.leg && fan.leg <= limits_.depth;
  }

  std::vector<FanLegs> of_two() const {
    const Pin a = pins_[0], b = pins_[1];
    const Length leg = (b.at - a.at) / (b.line - a.line);
    const FanLegs fan{a.at - leg * a.line, leg};
    for (const Pin& pin : pins_)
      if (fan.first + fan.leg * pin.line != pin.at) return {};
    return lies_so(fan, Length::units(1)) ? std::vector{fan} : std::vector<FanLegs>{};
  }

  // What is left over of a unit lengthens the end leg.
  FanLegs with_leg(Length leg) const { return {pins_[0].at - leg * pins_[0].line, leg}; }

  std::vector<FanLegs> of_one(const Grid& joint) const {
    const Pin pin = pins_[0];
    const int after = legs_ - 2 - pin.line;  // inner legs behind the pin
    std::vector<FanLegs> fans;
    const auto add = [&](const FanLegs& fan) {
      if (lies_so(fan, fabric_.selvedge + limits_.flap)) fans.push_back(fan);
    };
    const auto up = [](Length size, int parts) { return (size + Length::units(parts - 1)) / parts; };
    add(with_leg(std::max(up(pin.at, pin.line + 1), up(fabric_.width - pin.at, after + 1))));
    for (int i = 0; i < joint.size(); ++i) {
      const Length end = joint[i] + fabric_.selvedge;
      if (pin.line > 0) add(with_leg((pin.at - end) / pin.line));
      if (after > 0) add(with_leg((fabric_.width - pin.at - end) / after));
    }
    std::sort(fans.begin(), fans.end(), [](const FanLegs& a, const FanLegs& b) { return a.leg < b.leg; });
    fans.erase(std::unique(fans.begin(), fans.end()), fans.end());
    return spread(fans);
  }

  static std::vector<FanLegs> spread(const std::vector<FanLegs>& fans) {
    if (fans.size() <= kMostFolds) return fans;
    std::vector<FanLegs> some;
    for (std::size_t i = 0; i < kMostFolds; ++i) some.push_back(fans[i * (fans.size() - 1) / (kMostFolds - 1)]);
    return some;
  }

  int legs_;
  const Fabric& fabric_;
  const FoldLimits& limits_;
  std::vector<Pin> pins_;
};

void add_at(Layouts& layouts, const FoldWay& way, const std::vector<Length>& lines, const Fabric& fabric,
            const FoldLimits& limits) {
  for (auto& layout : layouts_at({way, lines, levels_of(way)}, fabric, limits)) layouts.push_back(std::move(layout));
}

PinnedLayouts fans_within(const FoldWay& way, const Pins& pins, const Fabric& fabric, const FoldLimits& limits,
                          const Grid& joint) {
  PinnedLayouts found;
  for (auto& of_way : layouts_of(way, fabric, limits))
    found.layouts.push_back(std::make_unique<WherePinned>(fabric, std::move(of_way), pins));
  const Fans fans(way, pins, fabric, limits);
  const std::vector<FanLegs> all = fans.all(joint);
  if (all.empty()) return {};
  for (const FanLegs& fan : all) add_at(found.layouts, way, fans.lines(fan), fabric, limits);
  found.is_complete = std::count_if(pins.begin(), pins.end(), [](const auto& p) { return p.has_value(); }) > 1;
  return found;
}

}  // namespace

PinnedLayouts layouts_within(const FoldWay& way, const std::vector<std::optional<Length>>& pins,
                             const Fabric& fabric, const FoldLimits& limits, const Grid& joint) {
  Pins all = pins;
  all.resize(static_cast<std::size_t>(way.legs) - 1);
  if (std::all_of(all.begin(), all.end(), [](const auto& pin) { return pin.has_value(); })) {
    PinnedLayouts found;
    std::vector<Length> lines;
    for (const auto& pin : all) lines.push_back(*pin);
    add_at(found.layouts, way, lines, fabric, limits);
    found.is_complete = true;
    return found;
  }
  if (way.kind == FoldKind::both_edges_in) return {one_flap(way, all, fabric, limits), true};
  return fans_within(way, all, fabric, limits, joint);
}

}  // namespace foldyard
