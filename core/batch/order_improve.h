#pragma once

// OrderImprove: a plan of an order made better step by step.
//
// A step takes some lengths of one cloth off the rolls and fills in anew what its
// pieces then lack (order_fill.h), areas a little changed by chance so that other
// lengths come up. What is no worse is kept. The dice are thrown the same way every
// time, so the answer is the same everywhere.

#include <functional>

#include "batch/order_fill.h"

namespace foldyard {

class OrderImprove {
 public:
  // Whether of two plans of equal score the first is preferred; may be empty.
  using Prefers = std::function<bool(const OrderState&, const OrderState&)>;

  OrderImprove(const FillTools& tools, OrderState state, Prefers prefers = {});

  // One step; true where the plan has become better.
  bool step();
  const OrderState& state() const { return state_; }
  const OrderScore& score() const { return score_; }

 private:
  struct Place {
    int roll;
    int at;
  };
  int dice(int sides);
  std::vector<Place> lengths_of(int cloth) const;
  std::vector<Place> choose(std::vector<Place> places, int count);
  OrderState without(const std::vector<Place>& places) const;
  bool keep_if_better(OrderState next);

  const FillTools& tools_;
  OrderState state_;
  OrderScore score_;
  Prefers prefers_;
  std::uint64_t dice_ = 1;
};

// Takes away lengths that no piece needs.
void drop_idle_lengths(const OrderCase& order, const LengthPool& pool, OrderState& state);

}  // namespace foldyard
