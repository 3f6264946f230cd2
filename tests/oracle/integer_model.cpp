#include "oracle/integer_model.h"

#include <cmath>
#include <map>
#include <stdexcept>

#include "oracle/glpk_problem.h"

namespace foldyard::test {

namespace {

// GLPK counts from one and allows no row twice in a column.
void set_terms(glp_prob* problem, int column, const Terms& terms) {
  std::map<int, int> sums;
  for (const auto& [row, amount] : terms) sums[row + 1] += amount;
  std::vector<int> rows{0};
  std::vector<double> amounts{0};
  for (const auto& [row, amount] : sums) {
    rows.push_back(row);
    amounts.push_back(amount);
  }
  glp_set_mat_col(problem, column, static_cast<int>(sums.size()), rows.data(), amounts.data());
}

}  // namespace

int IntegerModel::add_row(int least) {
  least_.push_back(least);
  return static_cast<int>(least_.size()) - 1;
}

void IntegerModel::add_unknown(std::int64_t worth, const Terms& terms) {
  columns_.push_back({worth, terms});
}

std::int64_t IntegerModel::most() const {
  if (columns_.empty()) return 0;
  glp_term_out(GLP_OFF);
  const GlpkProblem problem(glp_create_prob());
  glp_set_obj_dir(problem.get(), GLP_MAX);
  glp_add_rows(problem.get(), static_cast<int>(least_.size()));
  for (int i = 0; i < static_cast<int>(least_.size()); ++i)
    glp_set_row_bnds(problem.get(), i + 1, GLP_LO, least_[static_cast<std::size_t>(i)], 0);
  glp_add_cols(problem.get(), unknowns());
  for (int i = 0; i < unknowns(); ++i) {
    const Column& column = columns_[static_cast<std::size_t>(i)];
    glp_set_col_kind(problem.get(), i + 1, GLP_IV);
    glp_set_col_bnds(problem.get(), i + 1, GLP_LO, 0, 0);
    glp_set_obj_coef(problem.get(), i + 1, static_cast<double>(column.worth));
    set_terms(problem.get(), i + 1, column.terms);
  }
  glp_iocp settings;
  glp_init_iocp(&settings);
  settings.presolve = GLP_ON;
  settings.msg_lev = GLP_MSG_OFF;
  if (glp_intopt(problem.get(), &settings) != 0 || glp_mip_status(problem.get()) != GLP_OPT)
    throw std::runtime_error("GLPK did not solve a model");
  return std::llround(glp_mip_obj_val(problem.get()));
}

}  // namespace foldyard::test
