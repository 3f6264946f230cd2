#include "batch/order_improve.h"

#include <algorithm>

#include "batch/order_pieces.h"
#include "measure/index.h"

namespace foldyard {

namespace {

constexpr int kMostAnew = 40;  // lengths, in a large step

}  // namespace

OrderImprove::OrderImprove(const FillTools& tools, OrderState state)
    : tools_(tools), state_(std::move(state)), score_(score_of(tools.order, state_, tools.pool)) {}

// Knuth's multiplier for 64 bits (from memory, no page seen); the high bits are used.
int OrderImprove::dice(int sides) {
  dice_ = dice_ * 6364136223846793005ULL + 1442695040888963407ULL;
  return static_cast<int>((dice_ >> 33) % static_cast<std::uint64_t>(sides));
}

std::vector<OrderImprove::Place> OrderImprove::lengths_of(int cloth) const {
  std::vector<Place> places;
  for (int r = 0; r < std::ssize(tools_.order.rolls); ++r)
    for (int i = tools_.order.rolls[ix(r)].kept; tools_.order.rolls[ix(r)].cloth == cloth && i < std::ssize(state_.rolls[ix(r)].lengths); ++i)
      places.push_back({r, i});
  return places;
}

std::vector<OrderImprove::Place> OrderImprove::choose(std::vector<Place> places, int count) {
  for (int i = 0; i < count; ++i) std::swap(places[ix(i)], places[ix(i + dice(static_cast<int>(places.size()) - i))]);
  places.resize(ix(count));
  std::sort(places.begin(), places.end(), [](const Place& a, const Place& b) {
    return a.roll != b.roll ? a.roll < b.roll : a.at > b.at;
  });
  return places;
}

// places: of a roll the last first.
OrderState OrderImprove::without(const std::vector<Place>& places) const {
  OrderState less = state_;
  for (const Place& place : places) {
    auto& lengths = less.rolls[ix(place.roll)].lengths;
    lengths.erase(lengths.begin() + place.at);
  }
  return less;
}

bool OrderImprove::keep(OrderState next) {
  const OrderScore score = score_of(tools_.order, next, tools_.pool);
  if (is_better(tools_.order, score_, score) || next.rolls == state_.rolls) return false;
  state_ = std::move(next);
  score_ = score;
  return true;
}

bool OrderImprove::step() {
  const int cloth = dice(static_cast<int>(tools_.order.cloths.size()));
  std::vector<Place> places = lengths_of(cloth);
  if (places.empty()) return false;
  const int most = std::min<int>(static_cast<int>(places.size()), 4);
  OrderState next = without(choose(std::move(places), 1 + dice(most)));
  const ByClothAndPanel all = yield_of(tools_.order, state_, tools_.pool);
  const ByClothAndPanel rest = yield_of(tools_.order, next, tools_.pool);
  std::vector<std::int64_t> needs = panels_taken(tools_.order, state_.pieces, all)[ix(cloth)];
  for (std::size_t p = 0; p < needs.size(); ++p) needs[p] = std::max<std::int64_t>(0, needs[p] - rest[ix(cloth)][p]);
  std::vector<std::int64_t> areas = tools_.areas;
  for (std::int64_t& area : areas) area = area * (100 + dice(40)) / 100;
  const auto unmet = fill_needs({tools_.order, tools_.pool, areas, tools_.last, tools_.ways, tools_.cancelled}, cloth, std::move(needs), next);
  if (std::any_of(unmet.begin(), unmet.end(), [](std::int64_t n) { return n > 0; })) return false;
  next.pieces = pieces_from(tools_.order, yield_of(tools_.order, next, tools_.pool), state_.pieces);
  drop_idle_lengths(tools_, next);
  return keep(std::move(next));
}

bool OrderImprove::dive_step(OrderModel& model) {
  const int cloths = static_cast<int>(tools_.order.cloths.size());
  std::vector<int> chosen;
  for (int n = 1 + dice(3); n > 0; --n) chosen.push_back(dice(cloths));
  std::sort(chosen.begin(), chosen.end());
  chosen.erase(std::unique(chosen.begin(), chosen.end()), chosen.end());
  std::vector<Place> places;
  for (const int cloth : chosen)
    for (const Place& place : lengths_of(cloth)) places.push_back(place);
  if (places.empty()) return false;
  const int all = static_cast<int>(places.size());
  const int count = std::clamp(all * (40 + dice(61)) / 100, 1, std::min(all, kMostAnew));
  const DiveSettings settings{0.25 + 0.05 * dice(16), 400};
  OrderState next = dive(tools_, model, without(choose(std::move(places), count)), settings);
  drop_idle_lengths(tools_, next);
  return keep(std::move(next));
}

void drop_idle_lengths(const FillTools& tools, OrderState& state) {
  const OrderCase& order = tools.order;
  const LengthPool& pool = tools.pool;
  OrderScore score = score_of(order, state, pool);
  for (std::size_t r = 0; r < state.rolls.size(); ++r)
    for (std::size_t i = state.rolls[r].lengths.size(); i-- > static_cast<std::size_t>(order.rolls[r].kept);) {
      if (tools.is_cancelled()) return;
      OrderState less = state;
      less.rolls[r].lengths.erase(less.rolls[r].lengths.begin() + static_cast<std::ptrdiff_t>(i));
      less.pieces = pieces_from(order, yield_of(order, less, pool), state.pieces);
      const OrderScore without = score_of(order, less, pool);
      if (!is_better(order, without, score)) continue;
      state = std::move(less);
      score = without;
    }
}

}  // namespace foldyard
