#include "batch/flawed_front.h"

namespace foldyard {

bool FlawedFront::rises(const Reached& over, std::int64_t gain, std::int64_t cost) const {
  if (gain >= over.gain + least_rise_) return true;
  return least_rise_ == 1 && gain == over.gain && cost < over.cost;
}

bool FlawedFront::would_rise(Length place, std::int64_t gain, std::int64_t cost) const {
  const auto behind = reached_.upper_bound(place);
  return behind == reached_.begin() || rises(std::prev(behind)->second, gain, cost);
}

void FlawedFront::add(const Reached& reached) {
  const Length place = reached.pick.on_roll.to;
  if (!would_rise(place, reached.gain, reached.cost)) return;
  auto next = std::next(reached_.insert_or_assign(place, reached).first);
  while (next != reached_.end() && !rises(reached, next->second.gain, next->second.cost))
    next = reached_.erase(next);
}

Length FlawedFront::next_after(Length place) const {
  const auto next = reached_.upper_bound(place);
  return next == reached_.end() ? kNoPlace : next->first;
}

}  // namespace foldyard
