#include "batch/bounded_fill.h"

#include <algorithm>
#include <numeric>

#include "measure/index.h"

namespace foldyard {

BoundedFill::BoundedFill(std::vector<Length> sizes, Length whole) {
  std::int64_t unit = 0;
  for (const Length size : sizes) unit = std::gcd(unit, size.units());
  unit = std::max<std::int64_t>(unit, 1);
  const bool is_fine = whole.units() / unit <= kMostPlaces;
  if (!is_fine) unit = (whole.units() + kMostPlaces - 1) / kMostPlaces;
  places_ = whole.units() / unit;
  for (const Length size : sizes) {
    const std::int64_t up = (size.units() + unit - 1) / unit;
    up_.push_back(size <= whole ? std::min(up, places_) : up);  // one alone fits
    down_.push_back(size.units() / unit);
  }
}

std::vector<BoundedFill::Packet> BoundedFill::packets(const std::vector<std::int64_t>& values,
                                                      const std::vector<std::int64_t>& most) const {
  std::vector<Packet> packets;
  for (std::size_t i = 0; i < up_.size(); ++i) {
    if (values[i] <= 0) continue;
    std::int64_t left = most[i];
    if (up_[i] > places_) continue;
    if (down_[i] > 0) left = std::min(left, places_ / down_[i]);
    for (std::int64_t copies = 1; left > 0; copies *= 2) {
      packets.push_back({i, std::min(copies, left)});
      left -= copies;
    }
  }
  return packets;
}

std::int64_t BoundedFill::most_value(const std::vector<Packet>& packets, const std::vector<std::int64_t>& values,
                                     const std::vector<std::int64_t>& sizes,
                                     std::vector<std::vector<bool>>* taken) const {
  std::vector<std::int64_t> best(static_cast<std::size_t>(places_) + 1);
  for (std::size_t p = 0; p < packets.size(); ++p) {
    const std::int64_t size = sizes[packets[p].size] * packets[p].copies;
    const std::int64_t value = values[packets[p].size] * packets[p].copies;
    for (std::int64_t at = places_; at >= size; --at) {
      const std::int64_t with = best[ix(at - size)] + value;
      if (with <= best[ix(at)]) continue;
      best[ix(at)] = with;
      if (taken) (*taken)[p][ix(at)] = true;
    }
  }
  return best.back();
}

BoundedFill::Filling BoundedFill::best(const std::vector<std::int64_t>& values,
                                       const std::vector<std::int64_t>& most) const {
  const std::vector<Packet> packs = packets(values, most);
  std::vector<std::vector<bool>> taken(packs.size(), std::vector<bool>(static_cast<std::size_t>(places_) + 1));
  Filling filling;
  filling.counts.resize(up_.size());
  filling.value = most_value(packs, values, up_, &taken);
  filling.bound = is_exact() ? filling.value : most_value(packs, values, down_, nullptr);
  std::int64_t at = places_;
  for (std::size_t p = packs.size(); p-- > 0;) {
    if (!taken[p][ix(at)]) continue;
    filling.counts[packs[p].size] += packs[p].copies;
    at -= up_[packs[p].size] * packs[p].copies;
  }
  return filling;
}

}  // namespace foldyard
