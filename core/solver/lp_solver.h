#pragma once

// LpSolver: a linear model with unknowns ≥ 0, made least by a general solver
// (CLP, https://github.com/coin-or/Clp, licence EPL 2.0).
//
// Its answers are approximate: whoever uses them rounds them and checks with
// whole numbers. One thread, no clock, no chance: the same calls give the same
// answers with the same solver.
//
// A number that is not finite, or a row or column that there is none of, makes the
// model unsound: then solve() gives false from there on. kNoLimit stands for "no limit"
// where a limit is asked for.
//
// Example: least 3x + 2y with x + y ≥ 4 and x ≥ 1: y = 3, x = 1, cost 9; the
// row's price is 2.

#include <memory>
#include <vector>

namespace foldyard {

struct LpTerm {
  int row = 0;
  double amount = 0;
};

class LpSolver {
 public:
  static constexpr double kNoLimit = 1e30;

  LpSolver();
  ~LpSolver();
  LpSolver(LpSolver&&) noexcept;
  LpSolver& operator=(LpSolver&&) noexcept;

  // A sum that lies between least and most; gives its number, from 0.
  int add_row(double least, double most);
  // An unknown from 0 to most; gives its number, from 0. Rows not yet added are
  // no rows.
  int add_column(double cost, double most, const std::vector<LpTerm>& terms);
  void set_row(int row, double least, double most);
  void set_cost(int column, double cost);
  void set_most(int column, double most);

  int rows() const;
  int columns() const;

  // False where there is no answer, or none within as many steps as 50 for each
  // row and column.
  bool solve();
  // Of the last answer; 0 where there is none.
  double cost() const;
  double value(int column) const;
  // What the least cost rises by if the row is moved up by one.
  double price(int row) const;

 private:
  struct Model;
  std::unique_ptr<Model> model_;
};

}  // namespace foldyard
