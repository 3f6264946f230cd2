#include "cutting/limited_prices.h"

#include <algorithm>
#include <cmath>

namespace foldyard::limited {

namespace {

constexpr int kRounds = 60;
constexpr int kPatience = 4;  // rounds without a lower bound before steps halve

// Every copy at its full gain, or just less; a higher price is of no use.
Prices dearest(const Cloth& cloth) {
  Prices prices{std::vector<std::int64_t>(cloth.limits.size(), 0)};
  for (const UnitShape& s : cloth.shapes)
    prices.panel[s.panel] = std::max(prices.panel[s.panel], s.gain * kScale / s.uses);
  return prices;
}

class Subgradient {
 public:
  Subgradient(const Cloth& cloth, const OnRound& on_round, Stop stop)
      : cloth_(cloth), on_round_(on_round), stop_(stop), most_(dearest(cloth)) {
    at_.panel.assign(cloth.limits.size(), 0);
  }

  Priced run() {
    best_ = {most_, most_.given_back(cloth_)};
    least_bound_ = std::min(cloth_.total_gain(), cloth_.free_gain()) * kScale;
    for (int round = 0; round < kRounds && pace_ > 0.01; ++round)
      if (!step()) break;
    return {best_.prices, least_bound_};
  }

 private:
  // One round; false when no better prices are to be had.
  bool step() {
    const InsideTable inside(cloth_, at_, stop_);
    const std::int64_t bound =
        inside.most(cloth_.root, cloth_.width, cloth_.height) + at_.given_back(cloth_);
    const std::int64_t found = on_round_(inside, at_);
    if (!inside.is_finished()) return false;
    note(bound);
    least_bound_ = std::min(least_bound_, bound);
    if (least_bound_ / kScale <= found) return false;
    return move(inside.copies_used(), bound, found);
  }

  void note(std::int64_t bound) {
    if (bound < best_.bound) {
      best_ = {at_, bound};
      waited_ = 0;
    } else if (++waited_ >= kPatience) {
      pace_ /= 2;
      waited_ = 0;
      at_ = best_.prices;
    }
  }

  bool move(const std::vector<std::int64_t>& used, std::int64_t bound, std::int64_t found) {
    std::vector<double> over(used.size());
    double square = 0;
    for (std::size_t p = 0; p < used.size(); ++p) {
      over[p] = static_cast<double>(used[p] - cloth_.limits[p]);
      if (over[p] < 0 && at_.panel[p] == 0) over[p] = 0;
      square += over[p] * over[p];
    }
    if (square == 0) return false;
    const double target = std::max<double>(static_cast<double>(found * kScale), 0.95 * static_cast<double>(best_.bound));
    const double stride = pace_ * (static_cast<double>(bound) - target) / square;
    for (std::size_t p = 0; p < used.size(); ++p)
      at_.panel[p] = std::clamp<std::int64_t>(at_.panel[p] + std::llround(stride * over[p]), 0, most_.panel[p]);
    return true;
  }

  const Cloth& cloth_;
  const OnRound& on_round_;
  Stop stop_;
  Prices most_;
  Prices at_;
  Priced best_;  // prices to go on from
  std::int64_t least_bound_ = 0;
  double pace_ = 1;
  int waited_ = 0;
};

}  // namespace

Priced find_prices(const Cloth& cloth, const OnRound& on_round, Stop stop) {
  return Subgradient(cloth, on_round, stop).run();
}

}  // namespace foldyard::limited
