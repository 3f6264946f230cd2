#include "job/batch_limits.h"

#include <algorithm>

#include "batch/order_pieces.h"
#include "job/cut_back.h"
#include "measure/index.h"

namespace foldyard {

namespace {

class HoldLimits {
 public:
  HoldLimits(const Job& job, const BatchCase& c, BatchLengths& lengths, OrderState state)
      : job_(job), case_(c), lengths_(lengths), state_(std::move(state)), over_(job.panels.size(), 0) {
    for (const RollState& roll : state_.rolls)
      for (const StateLength& l : roll.lengths)
        for (std::size_t p = 0; p < over_.size(); ++p) over_[p] += lengths.pool()[ix(l.length)].yield[p];
    const std::vector<std::int64_t> most = limits_of(job);
    for (std::size_t p = 0; p < over_.size(); ++p)
      over_[p] = most[p] == kNoLimit ? 0 : std::max<std::int64_t>(0, over_[p] - most[p]);
  }

  OrderState run() {
    for (std::size_t r = state_.rolls.size(); r-- > 0;)
      for (std::size_t i = state_.rolls[r].lengths.size(); i-- > ix(case_.order.rolls[r].kept);) cut_less(r, i);
    return std::move(state_);
  }

 private:
  void cut_less(std::size_t r, std::size_t i) {
    StateLength& at = state_.rolls[r].lengths[i];
    const OrderLength length = lengths_.pool()[ix(at.length)];
    std::vector<std::int64_t> most = length.yield;
    for (std::size_t p = 0; p < most.size(); ++p) most[p] -= std::min({most[p], over_[p], spare(case_.order.rolls[r].cloth, p)});
    if (most == length.yield) return;
    const Roll& cloth = job_.rolls[ix(case_.rolls[r])];
    const std::optional<Pattern> less = cut_back(job_, cloth, lengths_.pattern(at.length), most);
    if (!less) return;
    const auto left = copies_in(*less, job_.panels.size());
    for (std::size_t p = 0; p < left.size(); ++p)
      if (length.yield[p] - left[p] > spare(case_.order.rolls[r].cloth, p)) return;
    for (std::size_t p = 0; p < left.size(); ++p) over_[p] = std::max<std::int64_t>(0, over_[p] - (length.yield[p] - left[p]));
    at.length = lengths_.keep(length.kind, length.way, *less);
  }

  // Copies of a cloth that no piece takes.
  std::int64_t spare(int cloth, std::size_t panel) const {
    const ByClothAndPanel all = yield_of(case_.order, state_, lengths_.pool());
    return all[ix(cloth)][panel] - panels_taken(case_.order, state_.pieces, all)[ix(cloth)][panel];
  }

  const Job& job_;
  const BatchCase& case_;
  BatchLengths& lengths_;
  OrderState state_;
  std::vector<std::int64_t> over_;  // by panel
};

}  // namespace

std::optional<Problem> over_limit(const Job& job) {
  for (std::size_t p = 0; p < job.panels.size(); ++p) {
    if (!job.panels[p].at_most) continue;
    std::int64_t taken = 0;
    for (const OrderLine& line : job.order.lines)
      for (const PanelCount& use : job.products[ix(line.product)].panels)
        if (ix(use.panel) == p) taken += use.count * (line.must + line.may);
    for (const CutPanels& cut : job.on_hand)
      if (ix(cut.panel) == p) taken -= cut.count;
    if (taken <= *job.panels[p].at_most) continue;
    return Problem{"panels[" + std::to_string(p) + "].at_most",
                   say("the order takes up to %1 of %2, and at most %3 may be cut", taken, job.panels[p].name,
                       *job.panels[p].at_most),
                   say("order less, or take the limit off the panel")};
  }
  return std::nullopt;
}

OrderState hold_limits(const Job& job, const BatchCase& c, BatchLengths& lengths, OrderState state) {
  const bool any = std::any_of(job.panels.begin(), job.panels.end(), [](const Panel& p) { return p.at_most.has_value(); });
  return any ? HoldLimits(job, c, lengths, std::move(state)).run() : state;
}

}  // namespace foldyard
