#include "cutting/limited_fill.h"

namespace foldyard::limited {

int Filler::fill(const InsideTable& inside, const Prices& prices, int corner, bool true_gains) {
  inside_ = &inside;
  prices_ = &prices;
  true_gains_ = true_gains;
  after_stop_ = 0;
  used_ = corner >= 0 ? builds_[corner].copies : Copies{};
  if (corner >= 0 && builds_[corner].rim != cloth_.root) return -1;
  return fill_area({cloth_.root, cloth_.width, cloth_.height}, corner);
}

// What the two rests beside and above a corner of this size promise.
std::int64_t Filler::rest(const Area& a, int width, int height, bool upright) const {
  const int right = a.width - width, top = a.height - height;
  return inside_->most(kLoose, right, upright ? a.height : height) +
         inside_->most(a.rim, upright ? width : a.width, top);
}

Filler::Step Filler::best_step(const Area& a) const {
  Step best;
  for (int i = 0; i < static_cast<int>(cloth_.shapes.size()); ++i) {
    const UnitShape& s = cloth_.shapes[i];
    if (s.rim != a.rim || s.across > a.width || s.along > a.height) continue;
    if (!counting_.within_limits(used_, counting_.one(s.panel, s.uses))) continue;
    const std::int64_t own = true_gains_ ? s.gain * kScale : prices_->priced(s);
    for (bool upright : {false, true}) {
      const std::int64_t promise = own + rest(a, s.across, s.along, upright);
      if (promise > best.promise) best = {promise, i, upright};
    }
  }
  return best;
}

int Filler::join(int first, int second, bool side_by_side) {
  if (first < 0 || second < 0) return first < 0 ? second : first;
  return add(side_by_side ? beside(builds_, first, second) : above(builds_, first, second));
}

int Filler::add(const Build& build) {
  builds_.push_back(build);
  return static_cast<int>(builds_.size()) - 1;
}

int Filler::fill_area(const Area& a, int corner) {
  if (a.width <= 0 || a.height <= 0 || is_over()) return -1;
  Step step;
  if (corner >= 0) {
    const Build& b = builds_[corner];
    step.upright = rest(a, b.width, b.height, true) > rest(a, b.width, b.height, false);
  } else {
    step = best_step(a);
    if (step.shape < 0 && a.rim == kLoose) return -1;
    if (step.shape < 0) {
      const int loose = fill_area({kLoose, a.width - cloth_.fold_trim, a.height}, -1);
      return loose < 0 ? -1 : add(opened(builds_, loose, cloth_));
    }
    corner = add(panel_build(cloth_, counting_, step.shape));
    used_ = used_ + builds_[corner].copies;
  }
  const int width = builds_[corner].width, height = builds_[corner].height;
  const Area right{kLoose, a.width - width, step.upright ? a.height : height};
  const Area top{a.rim, step.upright ? width : a.width, a.height - height};
  const int at_right = fill_area(right, -1);
  const int on_top = fill_area(top, -1);
  return step.upright ? join(join(corner, on_top, false), at_right, true)
                      : join(join(corner, at_right, true), on_top, false);
}

}  // namespace foldyard::limited
