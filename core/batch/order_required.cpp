#include "batch/order_required.h"

#include <optional>
#include <set>

#include "batch/order_pieces.h"
#include "measure/index.h"
#include "measure/stop.h"

namespace foldyard {

namespace {

class Required {
 public:
  Required(const OrderCase& order, const LengthPool& pool, OrderState& state, int roll)
      : order_(order), pool_(pool), state_(state), roll_(roll) {}

  void run() {
    try_moves();
    try_more();
    if (best_) state_ = std::move(*best_);
  }

 private:
  const CaseRoll& of(int roll) const { return order_.rolls[ix(roll)]; }

  // One of each kind of length is enough.
  void try_moves() {
    std::set<std::pair<int, int>> tried;  // roll, length
    for (int r = 0; r < std::ssize(order_.rolls); ++r)
      for (int i = of(r).kept; of(r).kind == of(roll_).kind && i < std::ssize(state_.rolls[ix(r)].lengths); ++i) {
        const int length = state_.rolls[ix(r)].lengths[ix(i)].length;
        if (r == roll_ || !tried.insert({r, length}).second) continue;
        OrderState next = state_;
        next.rolls[ix(r)].lengths.erase(next.rolls[ix(r)].lengths.begin() + i);
        consider(std::move(next), length);
      }
  }

  void try_more() {
    for (int l = 0; l < std::ssize(pool_); ++l)
      if (pool_[ix(l)].kind == of(roll_).kind) consider(state_, l);
  }

  void consider(OrderState next, int length) {
    if (!cut_from(of(roll_), next.rolls[ix(roll_)], pool_, length)) return;
    next.pieces = pieces_from(order_, yield_of(order_, next, pool_), state_.pieces);
    const OrderScore score = score_of(order_, next, pool_);
    if (best_ && !is_better(order_, score, score_)) return;
    best_ = std::move(next);
    score_ = score;
  }

  const OrderCase& order_;
  const LengthPool& pool_;
  OrderState& state_;
  int roll_;
  std::optional<OrderState> best_;
  OrderScore score_;
};

}  // namespace

void cut_required(const OrderCase& order, const LengthPool& pool, OrderState& state,
                  const std::atomic<bool>* cancelled) {
  for (int r = 0; r < std::ssize(order.rolls) && !is_set(cancelled); ++r)
    if (order.rolls[ix(r)].must && state.rolls[ix(r)].lengths.empty()) Required(order, pool, state, r).run();
}

}  // namespace foldyard
