#include "oracle/batch_model.h"

#include <cmath>
#include <optional>

#include "oracle/glpk_problem.h"

namespace foldyard::test {

namespace {

// GLPK counts rows and columns from one.
class BatchModel {
 public:
  BatchModel(const OrderCase& order, const LengthPool& pool, bool parts_too)
      : order_(order), pool_(pool), parts_too_(parts_too), problem_(glp_create_prob()) {
    glp_term_out(GLP_OFF);
    glp_set_obj_dir(problem_.get(), GLP_MIN);
    for (std::size_t c = 0; c < order.cloths.size(); ++c)
      for (int p = 0; p < order.panels; ++p) balance_.push_back(add_row(0, GLP_LO));
    for (const CaseRoll& roll : order.rolls) add_roll(roll);
    for (const PieceLine& line : order.lines) add_line(line);
  }

  std::optional<double> solve() {
    if (parts_too_) {
      glp_smcp settings;
      glp_init_smcp(&settings);
      settings.msg_lev = GLP_MSG_OFF;
      if (glp_simplex(problem_.get(), &settings) != 0 || glp_get_status(problem_.get()) != GLP_OPT) return std::nullopt;
      return glp_get_obj_val(problem_.get());
    }
    glp_iocp settings;
    glp_init_iocp(&settings);
    settings.presolve = GLP_ON;
    settings.msg_lev = GLP_MSG_OFF;
    if (glp_intopt(problem_.get(), &settings) != 0 || glp_mip_status(problem_.get()) != GLP_OPT) return std::nullopt;
    return glp_mip_obj_val(problem_.get());
  }

 private:
  using Terms = std::vector<std::pair<int, double>>;

  int add_row(double limit, int kind) {
    const int row = glp_add_rows(problem_.get(), 1);
    glp_set_row_bnds(problem_.get(), row, kind, limit, limit);
    return row;
  }

  void add_column(double cost, double most, const Terms& terms) {
    const int column = glp_add_cols(problem_.get(), 1);
    glp_set_obj_coef(problem_.get(), column, cost);
    glp_set_col_kind(problem_.get(), column, parts_too_ ? GLP_CV : GLP_IV);
    if (most >= 0)
      glp_set_col_bnds(problem_.get(), column, most > 0 ? GLP_DB : GLP_FX, 0, most);
    else
      glp_set_col_bnds(problem_.get(), column, GLP_LO, 0, 0);
    std::vector<int> rows{0};
    std::vector<double> amounts{0};
    for (const auto& [row, amount] : terms) {
      rows.push_back(row);
      amounts.push_back(amount);
    }
    glp_set_mat_col(problem_.get(), column, static_cast<int>(terms.size()), rows.data(), amounts.data());
  }

  int balance(int cloth, int panel) const { return balance_[static_cast<std::size_t>(cloth * order_.panels + panel)]; }

  // A roll that is cut pays for its squaring.
  void add_roll(const CaseRoll& roll) {
    const int room = add_row(0, GLP_UP);
    const double price = static_cast<double>(roll.price.parts) / static_cast<double>(roll.price.units);
    add_column(price * static_cast<double>(roll.squaring.units()), 1, {{room, -static_cast<double>(roll.room.units())}});
    for (const OrderLength& length : pool_) {
      if (length.kind != roll.kind || length.size > roll.room) continue;
      Terms terms{{room, static_cast<double>(length.size.units())}};
      for (int p = 0; p < order_.panels; ++p)
        if (const auto n = length.yield[static_cast<std::size_t>(p)]; n > 0)
          terms.push_back({balance(roll.cloth, p), static_cast<double>(n)});
      add_column(price * static_cast<double>(length.size.units()), -1, terms);
    }
  }

  void add_line(const PieceLine& line) {
    const int total = add_row(static_cast<double>(line.must), GLP_FX);
    add_column(-static_cast<double>(line.worth), static_cast<double>(line.may), {{total, -1}});
    std::vector<int> rules;
    for (const PieceRule& rule : line.rules) {
      const bool has_most = rule.at_most != kAnyNumber;
      rules.push_back(add_row(static_cast<double>(has_most ? rule.at_most : rule.at_least), has_most ? GLP_UP : GLP_LO));
    }
    for (const int cloth : line.cloths) {
      Terms terms{{total, 1}};
      for (const PieceNeed& need : line.needs) terms.push_back({balance(cloth, need.panel), -static_cast<double>(need.count)});
      for (std::size_t r = 0; r < rules.size(); ++r)
        for (const int of : line.rules[r].cloths)
          if (of == cloth) terms.push_back({rules[r], 1});
      add_column(0, -1, terms);
    }
  }

  const OrderCase& order_;
  const LengthPool& pool_;
  bool parts_too_;
  GlpkProblem problem_;
  std::vector<int> balance_;
};

}  // namespace

std::optional<double> least_cost(const OrderCase& order, const LengthPool& pool, bool parts_too) {
  return BatchModel(order, pool, parts_too).solve();
}

}  // namespace foldyard::test
