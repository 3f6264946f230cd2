#include "batch/order_dive.h"

#include <algorithm>
#include <cmath>

#include "batch/order_pieces.h"
#include "measure/index.h"

namespace foldyard {

namespace {

constexpr double kAlmost = 1e-6;
// What one cloth could not give after all is looked for in the others.
constexpr int kMostPasses = 4;

// Whole numbers that add up to `total` and lie as near to `parts` as may be: each
// rounded down, then those that lost most rounded up.
std::vector<std::int64_t> rounded(const std::vector<double>& parts, std::int64_t total) {
  std::vector<std::int64_t> whole;
  std::vector<int> order;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    whole.push_back(static_cast<std::int64_t>(std::floor(parts[i] + kAlmost)));
    total -= whole.back();
    if (parts[i] > kAlmost) order.push_back(static_cast<int>(i));
  }
  std::stable_sort(order.begin(), order.end(), [&](int a, int b) {
    return parts[ix(a)] - static_cast<double>(whole[ix(a)]) > parts[ix(b)] - static_cast<double>(whole[ix(b)]) + kAlmost;
  });
  for (const int i : order) {
    if (total <= 0) break;
    ++whole[ix(i)];
    --total;
  }
  return whole;
}

class Dive {
 public:
  Dive(const FillTools& tools, OrderModel& model, OrderState state, const DiveSettings& settings)
      : tools_(tools), order_(tools.order), model_(model), state_(std::move(state)), settings_(settings) {}

  OrderState run() {
    for (int pass = 0; pass < kMostPasses; ++pass) {
      const std::vector<RollState> before = state_.rolls;
      if (!cut_turn_by_turn()) break;
      fill(wanted_pieces());
      state_.pieces = pieces_from(order_, yield_of(order_, state_, tools_.pool), wanted_);
      if (makes_all() || state_.rolls == before) break;
    }
    if (wanted_.empty()) state_.pieces = pieces_from(order_, yield_of(order_, state_, tools_.pool), state_.pieces);
    return state_;
  }

 private:
  bool cut(const OrderModel::Cut& cut) {
    return cut_from_source(order_, tools_.pool, order_.sources[ix(cut.source)], cut.length, state_);
  }

  // False where the model could not be solved.
  bool cut_turn_by_turn() {
    for (int turn = 0; turn < settings_.most_turns && !tools_.is_cancelled(); ++turn) {
      model_.set_state(state_, tools_.pool);
      if (!model_.solve()) return false;
      if (!cut_wholes() && !cut_nearest()) return true;
    }
    return false;
  }

  bool makes_all() const {
    for (int l = 0; l < std::ssize(order_.lines); ++l)
      if (pieces_of(state_.pieces, l) < order_.lines[ix(l)].must) return false;
    return true;
  }

  bool cut_wholes() {
    bool any = false;
    for (const OrderModel::Cut& c : model_.cuts())
      for (double n = std::floor(c.times + kAlmost); n >= 1 && cut(c); --n) any = true;
    return any;
  }

  bool cut_nearest() {
    const std::vector<OrderModel::Cut> cuts = model_.cuts();
    const OrderModel::Cut* nearest = nullptr;
    for (const OrderModel::Cut& c : cuts)
      if (c.times >= settings_.share && (!nearest || c.times > nearest->times + kAlmost)) nearest = &c;
    return nearest && cut(*nearest);
  }

  const PiecesMade& wanted_pieces() {
    wanted_.clear();
    for (int l = 0; l < std::ssize(order_.lines); ++l) {
      std::vector<double> parts;
      double sum = 0;
      for (int c = 0; c < std::ssize(order_.cloths); ++c) {
        parts.push_back(model_.pieces(l, c));
        sum += parts.back();
      }
      const std::int64_t must = order_.lines[ix(l)].must;
      const auto down = static_cast<std::int64_t>(std::floor(sum + 1e-4));
      wanted_.push_back(rounded(parts, down < must ? static_cast<std::int64_t>(std::llround(sum)) : down));
    }
    return wanted_;
  }

  // Panels that name cloths are looked for where most are spare, else in the first
  // cloth that has rolls left.
  ByClothAndPanel needs_of(const PiecesMade& pieces) const {
    ByClothAndPanel needs(order_.cloths.size(), std::vector<std::int64_t>(ix(order_.panels), 0));
    for (int l = 0; l < std::ssize(order_.lines); ++l)
      for (int n = 0; n < std::ssize(order_.lines[ix(l)].needs); ++n) add_need(pieces, l, n, needs);
    return needs;
  }

  void add_need(const PiecesMade& pieces, int l, int n, ByClothAndPanel& needs) const {
    const PieceNeed& need = order_.lines[ix(l)].needs[ix(n)];
    if (need.from.empty()) {
      for (std::size_t c = 0; c < needs.size(); ++c) needs[c][ix(need.panel)] += need.count * pieces[ix(l)][c];
      return;
    }
    std::vector<double> parts;
    for (const int c : need.from) parts.push_back(model_.named(l, n, c));
    const std::vector<std::int64_t> shares = rounded(parts, need.count * pieces_of(pieces, l));
    std::int64_t rest = need.count * pieces_of(pieces, l);
    for (std::size_t i = 0; i < shares.size(); ++i) rest -= shares[i];
    for (std::size_t i = 0; i < shares.size(); ++i)
      needs[ix(need.from[i])][ix(need.panel)] += shares[i] + (i == 0 ? std::max<std::int64_t>(0, rest) : 0);
  }

  void fill(const PiecesMade& wanted) {
    ByClothAndPanel needs = needs_of(wanted);
    const ByClothAndPanel yield = yield_of(order_, state_, tools_.pool);
    for (int c = 0; c < std::ssize(order_.cloths); ++c)
      for (const int apart : order_.also_for(c)) take_from(apart, c, yield, needs);
    for (int c = 0; c < std::ssize(order_.cloths); ++c) {
      for (std::size_t p = 0; p < needs[ix(c)].size(); ++p)
        needs[ix(c)][p] = std::max<std::int64_t>(0, needs[ix(c)][p] - yield[ix(c)][p]);
      auto unmet = fill_needs(tools_, c, needs[ix(c)], state_);
      for (const int apart : order_.also_for(c)) unmet = fill_needs(tools_, apart, std::move(unmet), state_);
    }
  }

  // What a roll set apart has over serves its cloth.
  static void take_from(int apart, int cloth, const ByClothAndPanel& yield, ByClothAndPanel& needs) {
    for (std::size_t p = 0; p < needs[ix(cloth)].size(); ++p) {
      const std::int64_t over = yield[ix(apart)][p] - needs[ix(apart)][p];
      const std::int64_t moved = std::clamp<std::int64_t>(needs[ix(cloth)][p] - yield[ix(cloth)][p], 0, std::max<std::int64_t>(over, 0));
      needs[ix(cloth)][p] -= moved;
      needs[ix(apart)][p] += moved;
    }
  }

  const FillTools& tools_;
  const OrderCase& order_;
  OrderModel& model_;
  OrderState state_;
  DiveSettings settings_;
  PiecesMade wanted_;
};

}  // namespace

OrderState dive(const FillTools& tools, OrderModel& model, OrderState state, const DiveSettings& settings) {
  Dive run(tools, model, std::move(state), settings);
  return run.run();
}

}  // namespace foldyard
