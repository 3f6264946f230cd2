#include "job/limited_prices.h"

#include <algorithm>
#include <bit>

#include "measure/index.h"
#include "measure/wide.h"

namespace foldyard {

namespace {

// All copies allowed, if all panels have a limit: no plan gains more.
std::int64_t gain_of_all(const LimitedCase& c) {
  Wide gain = 0;
  for (std::size_t p = 0; p < c.most.size(); ++p) {
    if (c.gains[p] <= 0) continue;
    if (c.most[p] == kNoLimit) return std::int64_t{1} << 61;
    gain += Wide(c.gains[p]) * c.most[p];
  }
  return static_cast<std::int64_t>(std::min<Wide>(gain, Wide(1) << 61));
}

}  // namespace

PriceSearch::PriceSearch(const LimitedCase& c, std::vector<std::int64_t> start)
    : case_(c), at_(std::move(start)), bound_(gain_of_all(c)) {
  at_.resize(c.most.size(), 0);
  for (std::size_t p = 0; p < at_.size(); ++p)
    at_[p] = c.most[p] == kNoLimit ? 0 : std::clamp<std::int64_t>(at_[p], 0, std::max<std::int64_t>(0, c.gains[p]));
  best_ = at_;
}

// Beyond any bound where limits are so high that it would not be one.
std::int64_t PriceSearch::given_back(const std::vector<std::int64_t>& prices) const {
  Wide sum = 0;
  for (const int p : case_.limited)
    sum += Wide(prices[ix(p)]) * case_.most[ix(p)];
  return static_cast<std::int64_t>(std::min<Wide>(sum, Wide(1) << 61));
}

bool PriceSearch::note(const std::vector<std::int64_t>& used, std::int64_t bound, std::int64_t reached) {
  const std::int64_t whole = bound + given_back(at_);
  if (whole < bound_) {
    bound_ = whole;
    best_ = at_;
    waited_ = 0;
  } else if (++waited_ >= kPatience) {
    waited_ = 0;
    at_ = best_;
    if (++halvings_ > kHalvings) return false;
  }
  return bound_ - reached >= case_.scale && move(used, whole, reached);
}

bool PriceSearch::move(const std::vector<std::int64_t>& used, std::int64_t bound, std::int64_t reached) {
  std::vector<std::int64_t> over(used.size(), 0), weight(used.size(), 0);
  Wide square = 0;
  int shift = 0;
  const std::int64_t dearest = *std::max_element(case_.gains.begin(), case_.gains.end());
  while (dearest >> shift >= std::int64_t{1} << 16) ++shift;
  for (const int limited : case_.limited) {
    const auto p = static_cast<std::size_t>(limited);
    over[p] = used[p] - std::min<std::int64_t>(case_.most[p], 1 << 20);
    if (case_.gains[p] <= 0 || (over[p] < 0 && at_[p] == 0)) over[p] = 0;
    weight[p] = std::max<std::int64_t>(1, case_.gains[p] >> shift);
    square += Wide(weight[p]) * over[p] * weight[p] * over[p];
  }
  if (square == 0) return false;
  const std::int64_t target = std::max(reached, bound_ - bound_ / 16);
  const Wide stride = std::max<std::int64_t>(1, (bound - target) >> halvings_);
  for (std::size_t p = 0; p < used.size(); ++p) {
    const Wide step = stride * (Wide(weight[p]) * weight[p] * over[p]) / square;
    at_[p] = static_cast<std::int64_t>(std::clamp<Wide>(at_[p] + step, 0, std::max<std::int64_t>(0, case_.gains[p])));
  }
  return true;
}

}  // namespace foldyard
