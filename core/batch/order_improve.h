#pragma once

// OrderImprove: a plan of an order made better step by step.
//
// A small step takes some lengths of one cloth off the rolls and fills in anew what its
// pieces then lack (order_fill.h), areas a little changed by chance so that other
// lengths come up. A large step takes many lengths of up to three cloths off and dives anew
// (order_dive.h): then pieces may move from cloth to cloth. What is no worse is gone on
// from. The dice are thrown the same way every time, so the answer is the same everywhere.

#include "batch/order_dive.h"

namespace foldyard {

class OrderImprove {
 public:
  OrderImprove(const FillTools& tools, OrderState state);

  // One small step; true where the plan is another.
  bool step();
  // One large step, led by the model.
  bool dive_step(OrderModel& model);
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
  bool keep(OrderState next);

  const FillTools& tools_;
  OrderState state_;
  OrderScore score_;
  std::uint64_t dice_ = 1;
};

// Takes away lengths that no piece needs, but for those that are kept; once cancelled, no more.
void drop_idle_lengths(const FillTools& tools, OrderState& state);

}  // namespace foldyard
