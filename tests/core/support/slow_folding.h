#pragma once

// One length, folded in every way at every whole unit and slit at every whole
// unit: the slow and obvious check of the strip search. The cloth is folded
// here by walking along it; no fold map and no layout of the project is used.
//
// The rule of strips: slits part the folded width in at most three. A strip at
// an end of the folded cloth where plies are joined counts the joined pairs if
// all of them cover it from side to side; any other strip counts the loose plies
// that do. Only usable cloth covers. A slit keeps the fold trim from a fold edge.

#include <algorithm>
#include <vector>

#include "core/support/slow_rectangle.h"

namespace foldyard::test {

struct SlowCloth {
  int width = 0;
  int selvedge = 0;
  int depth = 0;  // the deepest it may lie folded
};

using Lines = std::vector<int>;

// Where one ply lies, and where its usable cloth does.
struct SlowPly {
  int from = 0, to = 0;
  int usable_from = 0, usable_to = 0;
  bool covers(int a, int b) const { return usable_from <= a && b <= usable_to; }
};

// The cloth folded at these lines.
class SlowFold {
 public:
  SlowFold(const SlowCloth& cloth, const Lines& lines) {
    int place = 0, at = 0, step = 1;
    Lines ends = lines;
    ends.push_back(cloth.width);
    for (const int end : ends) {
      const auto fold_to = [&](int x) { return place + step * (x - at); };
      const int good_from = std::clamp(cloth.selvedge, at, end);
      const int good_to = std::clamp(cloth.width - cloth.selvedge, at, end);
      plies_.push_back(ply(fold_to(at), fold_to(end), fold_to(good_from), fold_to(good_to)));
      place = fold_to(end);
      edges_.push_back(place);
      at = end;
      step = -step;
    }
    edges_.pop_back();
    start_at_zero();
  }

  int size() const { return size_; }
  const std::vector<SlowPly>& plies() const { return plies_; }

  int loose(int a, int b) const {
    int count = 0;
    for (const SlowPly& p : plies_) count += p.covers(a, b);
    return count;
  }
  // The pairs joined at `edge`, one end of the strip, if they all cover it and
  // are joined to nothing at its other end; else none.
  int pairs(int edge, int a, int b) const {
    const int other = edge == a ? b : a;
    int count = 0;
    for (std::size_t i = 0; i < edges_.size(); ++i) {
      if (edges_[i] != edge) continue;
      const bool held = (i > 0 && edges_[i - 1] == other) ||
                        (i + 1 < edges_.size() && edges_[i + 1] == other);
      if (held || !plies_[i].covers(a, b) || !plies_[i + 1].covers(a, b)) return 0;
      ++count;
    }
    return count;
  }
  bool has_edge(int at) const { return std::count(edges_.begin(), edges_.end(), at) > 0; }
  bool may_slit(int u, int trim) const {
    if (u == 0 || u == size_) return true;
    return !(has_edge(0) && u < trim) && !(has_edge(size_) && size_ - u < trim);
  }

 private:
  static SlowPly ply(int a, int b, int good_a, int good_b) {
    return {std::min(a, b), std::max(a, b), std::min(good_a, good_b), std::max(good_a, good_b)};
  }

  void start_at_zero() {
    int least = plies_[0].from, most = plies_[0].to;
    for (const SlowPly& p : plies_) {
      least = std::min(least, p.from);
      most = std::max(most, p.to);
    }
    for (SlowPly& p : plies_)
      p = {p.from - least, p.to - least, p.usable_from - least, p.usable_to - least};
    for (int& e : edges_) e -= least;
    size_ = most - least;
  }

  std::vector<SlowPly> plies_;
  Lines edges_;
  int size_ = 0;
};

// The best of one length folded so; gain of the whole length, cost of all cuts.
class SlowStrips {
 public:
  SlowStrips(SlowRectangle& rectangles, bool end_to_end, int copies)
      : rectangles_(rectangles), end_to_end_(end_to_end), copies_(copies) {}

  SlowCell best(const SlowFold& fold, int height) {
    SlowCell best;
    const int trim = rectangles_.fold_trim();
    for (int p = 0; p <= fold.size(); ++p)
      for (int q = p; q <= fold.size(); ++q) {
        if (!fold.may_slit(p, trim) || !fold.may_slit(q, trim)) continue;
        const SlowCell cell = three(fold, p, q, height);
        if (beats(rectangles_.aim(), cell, best, copies_)) best = cell;
      }
    return best;
  }

 private:
  struct Slit {
    int at;
    bool needed;
  };

  // Each of the three cut for panels or left, whichever is best together.
  SlowCell three(const SlowFold& fold, int p, int q, int height) {
    const int ends[4] = {0, p, q, fold.size()};
    SlowCell strips[3], best;
    for (int i = 0; i < 3; ++i)
      if (ends[i] < ends[i + 1]) strips[i] = strip(fold, ends[i], ends[i + 1], height);
    for (int used = 1; used < 8; ++used) {
      SlowCell sum{0, slits(ends, used, fold.size()) * rectangles_.aim().cut(height)};
      for (int i = 0; i < 3; ++i)
        if (used >> i & 1) sum = {sum.gain + strips[i].gain, sum.cost + strips[i].cost};
      if (beats(rectangles_.aim(), sum, best, copies_)) best = sum;
    }
    return best;
  }

  static int slits(const int ends[4], int used, int size) {
    std::vector<int> at;
    for (int i = 0; i < 3; ++i)
      if (used >> i & 1) at.insert(at.end(), {ends[i], ends[i + 1]});
    std::sort(at.begin(), at.end());
    at.erase(std::unique(at.begin(), at.end()), at.end());
    return static_cast<int>(std::count_if(at.begin(), at.end(), [&](int u) { return u > 0 && u < size; }));
  }

  SlowCell strip(const SlowFold& fold, int a, int b, int height) {
    const bool joined = (a == 0 && fold.has_edge(0)) || (b == fold.size() && fold.has_edge(b));
    int count = fold.loose(a, b);
    if (joined)
      count = std::max(a == 0 ? fold.pairs(0, a, b) : 0,
                       b == fold.size() ? fold.pairs(b, a, b) : 0);
    if (count == 0) return {};
    const SlowCell one = rectangles_.best(b - a, height, joined, end_to_end_, copies_ * count);
    return {one.gain * count, one.cost};
  }

  SlowRectangle& rectangles_;
  bool end_to_end_;
  int copies_;
};

// Every place the fold lines of a way may have, plain ways apart. Each flap
// holds at least `flap` of usable cloth, each outer leg of a fan is at least
// `least` long; a fan's inner legs are equal and its outer legs no longer.
inline std::vector<Lines> off_centre_lines(const SlowCloth& c, int flap) {
  std::vector<Lines> all;
  for (int a = c.selvedge + flap; 2 * a <= c.width; ++a)
    if (c.width - a <= c.depth) all.push_back({a});
  return all;
}

inline std::vector<Lines> both_edges_in_lines(const SlowCloth& c, int flap) {
  std::vector<Lines> all;
  const int least = c.selvedge + flap;
  for (int a = least; a < c.width; ++a)
    for (int b = least; a + b <= c.width - a - b; ++b)
      if (c.width - a - b <= c.depth) all.push_back({a, c.width - b});
  return all;
}

inline std::vector<Lines> fan_lines(const SlowCloth& c, int legs, int least) {
  std::vector<Lines> all;
  for (int g = 1; g <= c.depth; ++g)
    for (int first = least; first <= g; ++first) {
      const int last = c.width - first - g * (legs - 2);
      if (last < least || last > g) continue;
      Lines lines{first};
      while (static_cast<int>(lines.size()) < legs - 1) lines.push_back(lines.back() + g);
      all.push_back(lines);
    }
  return all;
}

}  // namespace foldyard::test
