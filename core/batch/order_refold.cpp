#include "batch/order_refold.h"

#include <algorithm>
#include <set>

#include "batch/order_pieces.h"
#include "measure/index.h"

namespace foldyard {

namespace {

class Refold {
 public:
  Refold(const FillTools& tools, const std::vector<int>& ways, int tries, OrderState& state)
      : tools_(tools), order_(tools.order), ways_(ways), tries_(tries), state_(state), score_(score_of(order_, state, tools.pool)) {}

  bool run_each() {
    for (const auto& [kind, length] : kinds_of_length()) each_another_way(kind, length);
    return is_other_;
  }

  bool run() {
    run_each();
    for (int r = 0; r < std::ssize(order_.rolls); ++r) two_as_one(r);
    return is_other_;
  }

 private:
  const OrderLength& at(int length) const { return tools_.pool[ix(length)]; }
  bool is_over() const { return tries_ <= 0 || tools_.is_cancelled(); }

  std::set<std::pair<int, int>> kinds_of_length() const {
    std::set<std::pair<int, int>> found;  // kind, length
    for (int r = 0; r < std::ssize(order_.rolls); ++r)
      for (std::size_t i = ix(order_.rolls[ix(r)].kept); i < state_.rolls[ix(r)].lengths.size(); ++i)
        found.insert({order_.rolls[ix(r)].kind, state_.rolls[ix(r)].lengths[i].length});
    return found;
  }

  void each_another_way(int kind, int length) {
    const std::vector<std::int64_t> yield = at(length).yield;
    const Length size = at(length).size;
    int now = length;
    for (int way = 0; way < ways_[ix(kind)] && !is_over(); ++way) {
      if (way == at(now).way) continue;
      --tries_;
      const std::optional<int> other = tools_.last(kind, way, yield, size);
      if (!other || *other == now) continue;
      OrderState next = state_;
      for (std::size_t r = 0; r < next.rolls.size(); ++r)
        for (std::size_t i = ix(order_.rolls[r].kept); order_.rolls[r].kind == kind && i < next.rolls[r].lengths.size(); ++i)
          if (next.rolls[r].lengths[i].length == now) next.rolls[r].lengths[i].length = *other;
      if (keep(std::move(next))) now = *other;
    }
  }

  // Each pair of kinds of length of a roll once, until none is better as one.
  void two_as_one(int r) {
    std::set<std::pair<int, int>> tried;
    const std::size_t kept = ix(order_.rolls[ix(r)].kept);
    for (std::size_t i = kept; i < state_.rolls[ix(r)].lengths.size(); ++i)
      for (std::size_t k = i + 1; k < state_.rolls[ix(r)].lengths.size(); ++k) {
        const StateLength a = state_.rolls[ix(r)].lengths[i], b = state_.rolls[ix(r)].lengths[k];
        if (a.stretch != b.stretch || is_over() || !tried.insert(std::minmax(a.length, b.length)).second) continue;
        if (as_one(r, i, k)) return two_as_one(r);
      }
  }

  bool as_one(int r, std::size_t i, std::size_t k) {
    const auto& lengths = state_.rolls[ix(r)].lengths;
    const int a = lengths[i].length, b = lengths[k].length, kind = order_.rolls[ix(r)].kind;
    std::vector<std::int64_t> needs = at(a).yield;
    for (std::size_t p = 0; p < needs.size(); ++p) needs[p] += at(b).yield[p];
    const Length most = at(a).size + at(b).size;
    for (int way = 0; way < ways_[ix(kind)] && !is_over(); ++way) {
      --tries_;
      const std::optional<int> one = tools_.last(kind, way, needs, most);
      if (!one) continue;
      OrderState next = state_;
      auto& of_roll = next.rolls[ix(r)].lengths;
      of_roll[i].length = *one;
      of_roll.erase(of_roll.begin() + static_cast<std::ptrdiff_t>(k));
      if (keep(std::move(next))) return true;
    }
    return false;
  }

  bool keep(OrderState next) {
    next.pieces = pieces_from(order_, yield_of(order_, next, tools_.pool), state_.pieces);
    const OrderScore score = score_of(order_, next, tools_.pool);
    if (!is_better(order_, score, score_)) return false;
    state_ = std::move(next);
    score_ = score;
    return is_other_ = true;
  }

  const FillTools& tools_;
  const OrderCase& order_;
  const std::vector<int>& ways_;
  int tries_;
  OrderState& state_;
  OrderScore score_;
  bool is_other_ = false;
};

}  // namespace

bool refold(const FillTools& tools, const std::vector<int>& ways, int most_tries, OrderState& state) {
  return tools.last && Refold(tools, ways, most_tries, state).run();
}

bool refold_each(const FillTools& tools, const std::vector<int>& ways, int most_tries, OrderState& state) {
  return tools.last && Refold(tools, ways, most_tries, state).run_each();
}

}  // namespace foldyard
