#include "batch/order_fill.h"

#include <algorithm>
#include <numeric>

#include "measure/index.h"

namespace foldyard {

namespace {

using Needs = std::vector<std::int64_t>;

Length whole_room(const CaseRoll& roll, const RollState& state, const LengthPool& pool) {
  Length room;
  for (int s = 0; s < std::ssize(roll.stretches); ++s) room += room_left(roll, state, pool, s);
  return room;
}

// Of a length that is longer than all that is needed, only that counts.
std::int64_t useful_area(const OrderLength& length, const Needs& needs, const Needs& areas) {
  std::int64_t area = 0;
  for (std::size_t p = 0; p < needs.size(); ++p) area += std::min(needs[p], length.yield[p]) * areas[p];
  return area;
}

void take_off(const OrderLength& length, Needs& needs) {
  for (std::size_t p = 0; p < needs.size(); ++p) needs[p] = std::max<std::int64_t>(0, needs[p] - length.yield[p]);
}

bool is_met(const Needs& needs) {
  return std::all_of(needs.begin(), needs.end(), [](std::int64_t n) { return n == 0; });
}

class Fill {
 public:
  Fill(const FillTools& tools, int cloth, Needs needs, OrderState& state)
      : tools_(tools), cloth_(cloth), needs_(std::move(needs)), state_(state) {}

  Needs run() {
    while (!is_met(needs_) && !tools_.is_cancelled()) {
      const Choice best = best_length();
      const Choice last = last_length(best);
      const Choice& next = last.length >= 0 ? last : best;
      if (next.length < 0) break;
      if (!cut_from_source(tools_.order, tools_.pool, source(next.source), next.length, state_)) break;
      take_off(at(next.length), needs_);
    }
    return needs_;
  }

 private:
  struct Choice {
    int source = -1;
    int length = -1;
    std::int64_t area = 0;
    Wide cost = 0;
  };

  const OrderLength& at(int length) const { return tools_.pool[ix(length)]; }
  const CaseSource& source(int s) const { return tools_.order.sources[ix(s)]; }
  ClothPrice price(int s) const { return tools_.order.rolls[ix(source(s).rolls.front())].price; }

  bool fits(int s, int length) const {
    return std::any_of(source(s).rolls.begin(), source(s).rolls.end(), [&](int r) {
      return times_it_fits(tools_.order.rolls[ix(r)], state_.rolls[ix(r)], tools_.pool, length) > 0;
    });
  }

  // In the order of most area for the cost; first those that come first.
  static bool is_better(const Choice& a, const Choice& b) {
    if (b.length < 0) return true;
    const Wide left = Wide(a.area) * b.cost, right = Wide(b.area) * a.cost;
    return left != right ? left > right : a.area > b.area;
  }

  Choice best_length() const {
    Choice best;
    for (int s = 0; s < std::ssize(tools_.order.sources); ++s) {
      if (source(s).cloth != cloth_) continue;
      for (int i = 0; i < std::ssize(tools_.pool); ++i) {
        if (at(i).kind != source(s).kind || at(i).size > source(s).room) continue;
        const Choice choice{s, i, useful_area(at(i), needs_, tools_.areas), Wide(price(s).of(at(i).size, 1 << 10)) + 1};
        if (choice.area > 0 && is_better(choice, best) && fits(s, i)) best = choice;
      }
    }
    return best;
  }

  Length longest_room(int s) const {
    Length longest;
    for (const int r : source(s).rolls) {
      const CaseRoll& roll = tools_.order.rolls[ix(r)];
      for (int st = 0; st < std::ssize(roll.stretches); ++st)
        longest = std::max(longest, room_left(roll, state_.rolls[ix(r)], tools_.pool, st));
    }
    return longest;
  }

  Choice last_length(const Choice& best) const {
    Choice last;
    if (!tools_.last || best.length < 0) return last;
    for (int s = 0; s < std::ssize(tools_.order.sources); ++s)
      for (int way = 0; source(s).cloth == cloth_ && way < tools_.ways[ix(source(s).kind)]; ++way) {
        const std::optional<int> length = tools_.last(source(s).kind, way, needs_, longest_room(s));
        if (!length || !fits(s, *length)) continue;
        const Choice choice{s, *length, useful_area(at(*length), needs_, tools_.areas),
                            Wide(price(s).of(at(*length).size, 1 << 10)) + 1};
        if (is_better(choice, last)) last = choice;
      }
    return last;
  }

  const FillTools& tools_;
  int cloth_;
  Needs needs_;
  OrderState& state_;
};

}  // namespace

bool cut_from_source(const OrderCase& order, const LengthPool& pool, const CaseSource& source, int length,
                     OrderState& state) {
  std::vector<int> rolls = source.rolls;
  const auto is_cut = [&](int r) { return !state.rolls[ix(r)].lengths.empty(); };
  const auto room = [&](int r) { return whole_room(order.rolls[ix(r)], state.rolls[ix(r)], pool); };
  std::stable_sort(rolls.begin(), rolls.end(), [&](int a, int b) {
    if (is_cut(a) != is_cut(b)) return is_cut(a);
    return is_cut(a) ? room(a) < room(b) : room(a) > room(b);
  });
  return std::any_of(rolls.begin(), rolls.end(),
                     [&](int r) { return cut_from(order.rolls[ix(r)], state.rolls[ix(r)], pool, length); });
}

std::vector<std::int64_t> fill_needs(const FillTools& tools, int cloth, std::vector<std::int64_t> needs,
                                     OrderState& state) {
  return Fill(tools, cloth, std::move(needs), state).run();
}

}  // namespace foldyard
