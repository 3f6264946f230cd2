#pragma once

// OrderModel: the linear model of an order over the lengths known so far, with
// parts of lengths and of pieces allowed. Its answers guide the search; nothing
// is proved by them.
//
// Unknowns: how often each length is cut from each source, how much of each roll
// is cut off, how many pieces of each line are made of each cloth, and where the
// panels that name cloths come from. Squaring counts for a roll as far as it is
// cut, and no more once it is; of a cloth that must be cut, for one whole roll or more. What a rule lacks is allowed at a price.
//
// Amounts are in whole currency and metres.

#include <map>

#include "batch/order_bound.h"
#include "batch/order_state.h"
#include "solver/lp_solver.h"

namespace foldyard {

// What one of the currency counts for.
struct ModelWeights {
  double cloth = 1;
  double must = 1e4;
  double may = 1;
  double rules = 1e2;
};

class OrderModel {
 public:
  OrderModel(const OrderCase& order, const ModelWeights& weights);

  // Lets a source be cut by a length of the pool; once known, it is not added again.
  void allow(int source, int length, const LengthPool& pool);
  // What is cut already: it yields what it does, and its rolls have less room.
  void set_state(const OrderState& state, const LengthPool& pool);
  bool solve();
  const ModelWeights& weights() const { return weights_; }
  double cost() const { return lp_.cost(); }

  struct Cut {
    int source = 0;
    int length = 0;
    double times = 0;
  };
  // All that are cut at all, in the order in which they were allowed.
  std::vector<Cut> cuts() const;
  double pieces(int line, int cloth) const;
  // Panels of a line's need that come from a cloth it names.
  double named(int line, int need, int cloth) const;
  double panel_price(int cloth, int panel) const;  // ≥ 0
  // What a metre of the source's cloth counts for, at the least.
  double metre_price(int source) const;
  // For cutting some roll of a cloth at all, ≥ 0 (batch/order_bound.h).
  double opening_price(int cloth) const;
  RulePrice rule_price(int line, int rule, std::int64_t scale) const;

 private:
  struct LineRows {
    std::vector<int> at_least, at_most;      // by rule; −1: none
    std::vector<int> pieces;                 // columns by cloth; −1: none
    std::vector<std::map<int, int>> named;   // columns by need, then by cloth
  };
  void add_line(const PieceLine& line);
  void add_pieces(const PieceLine& line, LineRows& rows, int total, const std::vector<int>& need_rows);
  void add_sources();
  // Panels of a roll set apart that serve for the cloth it is of.
  void add_moves(int apart, int cloth);
  void add_openings();
  double metre_cost(const CaseRoll& roll, bool is_cut) const;

  const OrderCase& order_;
  ModelWeights weights_;
  LpSolver lp_;
  std::vector<LineRows> lines_;
  std::vector<std::vector<int>> balance_;  // rows by cloth and panel; −1: not wanted
  std::vector<int> source_rows_;
  std::vector<int> opening_rows_;  // by cloth; −1: none
  std::vector<int> roll_columns_;
  std::vector<double> metre_costs_;  // by roll, as the model has them
  struct Known {
    int source;
    int length;
    int column;
  };
  std::vector<Known> known_;
  std::map<std::pair<int, int>, int> index_;
};

}  // namespace foldyard
