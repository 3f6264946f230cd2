#include "solver/lp_solver.h"

#include <ClpSimplex.hpp>
#include <cmath>

namespace foldyard {

// What is added waits until the next answer is asked for: the solver takes many
// rows or columns at once far quicker than one by one.
struct LpSolver::Model {
  struct Column {
    double cost;
    double most;
    std::vector<LpTerm> terms;
  };
  struct Row {
    double least;
    double most;
  };

  ClpSimplex simplex;
  std::vector<Row> new_rows;
  std::vector<Column> new_columns;
  bool is_sound = true;
  bool is_solved = false;
  bool only_limits_changed = false;  // since the last answer

  void flush_rows() {
    if (new_rows.empty()) return;
    std::vector<double> least, most;
    for (const Row& row : new_rows) {
      least.push_back(row.least);
      most.push_back(row.most);
    }
    const std::vector<int> starts(new_rows.size() + 1, 0);
    simplex.addRows(static_cast<int>(new_rows.size()), least.data(), most.data(), starts.data(), nullptr, nullptr);
    new_rows.clear();
  }

  void flush_columns() {
    if (new_columns.empty()) return;
    std::vector<double> least(new_columns.size(), 0), most, costs, amounts;
    std::vector<int> starts{0}, rows;
    for (const Column& column : new_columns) {
      most.push_back(column.most);
      costs.push_back(column.cost);
      for (const LpTerm& term : column.terms) {
        rows.push_back(term.row);
        amounts.push_back(term.amount);
      }
      starts.push_back(static_cast<int>(rows.size()));
    }
    simplex.addColumns(static_cast<int>(new_columns.size()), least.data(), most.data(), costs.data(), starts.data(),
                       rows.data(), amounts.data());
    new_columns.clear();
  }

  void flush() {
    flush_rows();
    flush_columns();
  }

  int rows() const { return simplex.numberRows() + static_cast<int>(new_rows.size()); }
  int columns() const { return simplex.numberColumns() + static_cast<int>(new_columns.size()); }
  void require(bool holds) { is_sound = is_sound && holds; }
};

LpSolver::LpSolver() : model_(std::make_unique<Model>()) {
  model_->simplex.setLogLevel(0);
  model_->simplex.setPerturbation(100);  // none
  model_->simplex.setOptimizationDirection(1);
}
LpSolver::~LpSolver() = default;
LpSolver::LpSolver(LpSolver&&) noexcept = default;
LpSolver& LpSolver::operator=(LpSolver&&) noexcept = default;

int LpSolver::rows() const { return model_->rows(); }
int LpSolver::columns() const { return model_->columns(); }

int LpSolver::add_row(double least, double most) {
  model_->require(std::isfinite(least) && std::isfinite(most) && least <= most);
  model_->only_limits_changed = false;
  model_->new_rows.push_back({least, most});
  return rows() - 1;
}

int LpSolver::add_column(double cost, double most, const std::vector<LpTerm>& terms) {
  model_->require(std::isfinite(cost) && std::isfinite(most) && most >= 0);
  for (const LpTerm& term : terms)
    model_->require(std::isfinite(term.amount) && 0 <= term.row && term.row < rows());
  model_->only_limits_changed = false;
  model_->new_columns.push_back({cost, most, terms});
  return columns() - 1;
}

void LpSolver::set_row(int row, double least, double most) {
  model_->require(std::isfinite(least) && std::isfinite(most) && least <= most && 0 <= row && row < rows());
  if (!model_->is_sound) return;
  model_->flush();
  model_->simplex.setRowBounds(row, least, most);
}

void LpSolver::set_cost(int column, double cost) {
  model_->require(std::isfinite(cost) && 0 <= column && column < columns());
  if (!model_->is_sound) return;
  model_->flush();
  model_->only_limits_changed = false;
  model_->simplex.setObjectiveCoefficient(column, cost);
}

void LpSolver::set_most(int column, double most) {
  model_->require(std::isfinite(most) && most >= 0 && 0 <= column && column < columns());
  if (!model_->is_sound) return;
  model_->flush();
  model_->simplex.setColumnUpper(column, most);
}

// The dual method goes on from an answer of which only limits were changed, the
// primal method from one that was left out of what is new.
bool LpSolver::solve() {
  Model& m = *model_;
  m.is_solved = false;
  if (!m.is_sound) return false;
  m.flush();
  m.simplex.setMaximumIterations(m.simplex.numberIterations() + 50 * (rows() + columns()) + 1000);
  if (m.only_limits_changed)
    m.simplex.dual(0, 1);
  else
    m.simplex.primal(0, 1);
  if (m.simplex.status() == 4) m.simplex.primal();
  m.is_solved = m.simplex.status() == 0 && std::isfinite(m.simplex.objectiveValue());
  m.only_limits_changed = m.is_solved;
  return m.is_solved;
}

double LpSolver::cost() const { return model_->is_solved ? model_->simplex.objectiveValue() : 0; }

double LpSolver::value(int column) const {
  if (!model_->is_solved || column < 0 || column >= model_->simplex.numberColumns()) return 0;
  const double value = model_->simplex.primalColumnSolution()[column];
  return std::isfinite(value) ? value : 0;
}

double LpSolver::price(int row) const {
  if (!model_->is_solved || row < 0 || row >= model_->simplex.numberRows()) return 0;
  const double price = model_->simplex.dualRowSolution()[row];
  return std::isfinite(price) ? price : 0;
}

}  // namespace foldyard
