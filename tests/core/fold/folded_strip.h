#pragma once

// A strip of cloth as sample points one unit apart, folded by hand: a part of
// it is lifted, turned over at a place and laid on top of the rest. It knows
// nothing of legs or maps; it is the slow and obvious check of AxisMap.

#include <algorithm>
#include <vector>

namespace foldyard::test {

class FoldedStrip {
 public:
  explicit FoldedStrip(int whole) {
    for (int x = 0; x <= whole; ++x) points_.push_back({x, x, 0, false});
  }

  // Turns over the cloth left (or right) of flat place x, wherever it lies now.
  void fold_cloth_left_of(int x) {
    turn_over(points_[static_cast<std::size_t>(x)].place, [x](const Point& p) { return p.flat < x; });
  }
  void fold_cloth_right_of(int x) {
    turn_over(points_[static_cast<std::size_t>(x)].place, [x](const Point& p) { return p.flat > x; });
  }
  // Turns over everything that lies left of a place, all layers together.
  void fold_all_left_of(int place) {
    turn_over(place, [place](const Point& p) { return p.place < place; });
  }

  // From the left end of the folded strip.
  int place(int x) const { return at(x).place - find_leftmost(); }
  int layer(int x) const { return at(x).layer; }
  bool face_down(int x) const { return at(x).face_down; }

 private:
  struct Point {
    int flat, place, layer;
    bool face_down;
  };

  const Point& at(int x) const { return points_[static_cast<std::size_t>(x)]; }

  int find_leftmost() const {
    return std::min_element(points_.begin(), points_.end(),
                            [](const Point& a, const Point& b) { return a.place < b.place; })
        ->place;
  }

  // The highest of what is lifted comes to lie lowest, all above what stays.
  template <class Lifted>
  void turn_over(int about, Lifted lifted) {
    int top = 0;
    for (const Point& p : points_) top = std::max(top, p.layer);
    for (Point& p : points_) {
      if (!lifted(p)) continue;
      p = {p.flat, 2 * about - p.place, 2 * top + 1 - p.layer, !p.face_down};
    }
  }

  std::vector<Point> points_;
};

}  // namespace foldyard::test
