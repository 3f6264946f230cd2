#include <algorithm>

#include "inspect/batch_checks.h"
#include "measure/index.h"

namespace foldyard::inspection {

namespace {

std::string line_name(const Job& job, int line) {
  const OrderLine& order = job.order.lines[ix(line)];
  return "Line " + std::to_string(line + 1) + " (" + job.products[ix(order.product)].name + ")";
}

int place_of(const std::vector<Cloth>& cloths, const std::string& name) {
  const auto at = std::find_if(cloths.begin(), cloths.end(), [&](const Cloth& cloth) { return cloth.name == name; });
  return at == cloths.end() ? -1 : static_cast<int>(at - cloths.begin());
}

class MadeCheck {
 public:
  MadeCheck(const Job& job, const BatchPlan& plan, Findings& findings)
      : job_(job), plan_(plan), findings_(findings), cloths_(cloths_of(job)) {}

  bool run() {
    if (!names_exist()) return false;
    in_order();
    for (int line = 0; line < std::ssize(job_.order.lines); ++line) check(line);
    return true;
  }

 private:
  bool is_line(int line) const { return 0 <= line && line < std::ssize(job_.order.lines); }

  bool names_exist() {
    bool all = true;
    for (const Made& made : plan_.made) {
      all &= findings_.require(is_line(made.line) && place_of(cloths_, made.cloth) >= 0,
                               "Pieces are made of a line or a cloth (", made.cloth, ") that the job does not have");
    }
    for (const Shortfall& lack : plan_.shortfalls) {
      all &= findings_.require(is_line(lack.line) && place_of(cloths_, lack.cloth) >= 0,
                               "Something lacks of a line or a cloth (", lack.cloth, ") that the job does not have");
    }
    return all;
  }

  void in_order() {
    std::pair<int, int> last{-1, -1};
    for (const Made& made : plan_.made) {
      const std::pair place{made.line, place_of(cloths_, made.cloth)};
      findings_.require(last < place, line_name(job_, made.line), ": ", made.cloth,
                        " stands twice or out of its order");
      findings_.require(made.pieces > 0, line_name(job_, made.line), ": no piece is made of ", made.cloth);
      last = place;
    }
  }

  // Of the line, from cloths that answer to the word.
  std::int64_t made_of(int line, const std::string& word) const {
    std::int64_t pieces = 0;
    for (const Made& made : plan_.made) {
      const Cloth& cloth = cloths_[ix(place_of(cloths_, made.cloth))];
      if (made.line == line && (word.empty() || cloth.words.contains(word))) pieces += made.pieces;
    }
    return pieces;
  }

  // Of one cloth by its name, whatever marks are called.
  std::int64_t made_of_cloth(int line, const std::string& name) const {
    std::int64_t pieces = 0;
    for (const Made& made : plan_.made) pieces += made.line == line && made.cloth == name ? made.pieces : 0;
    return pieces;
  }

  // A line kept on a roll is of its cloth.
  bool may_serve(const OrderLine& order, const Cloth& cloth) const {
    for (const Roll& roll : job_.rolls)
      if (roll.name == order.roll) return cloth_name(roll) == cloth.name;
    return cloth.serves(order.from);
  }

  bool meets_least(int line) const {
    const OrderLine& order = job_.order.lines[ix(line)];
    bool all = true;
    for (const ClothRule& rule : order.rules) all &= made_of(line, rule.of) >= rule.at_least;
    for (const Cloth& cloth : cloths_) {
      if (may_serve(order, cloth)) all &= made_of_cloth(line, cloth.name) >= order.each_at_least;
    }
    return all;
  }

  void check(int line) {
    const OrderLine& order = job_.order.lines[ix(line)];
    const std::string name = line_name(job_, line);
    const std::int64_t pieces = made_of(line, {});
    findings_.require(pieces <= order.must + order.may, name, ": ", pieces, " pieces are made, but at most ",
                      order.must + order.may, " are taken");
    for (const Made& made : plan_.made) {
      if (made.line != line) continue;
      const Cloth& cloth = cloths_[ix(place_of(cloths_, made.cloth))];
      findings_.require(may_serve(order, cloth), name, ": ", made.cloth, " may not serve");
    }
    for (const ClothRule& rule : order.rules) {
      if (!rule.at_most) continue;
      findings_.require(made_of(line, rule.of) <= *rule.at_most, name, ": ", made_of(line, rule.of), " pieces of ",
                        rule.of, " are made, but at most ", *rule.at_most, " are wanted");
    }
    check_lack(line, name, order.must - pieces);
  }

  void check_lack(int line, const std::string& name, std::int64_t lack) {
    std::int64_t said = 0;
    for (const Shortfall& each : plan_.shortfalls) {
      if (each.line != line) continue;
      findings_.require(each.pieces > 0, name, ": a shortfall lacks nothing");
      said += each.pieces;
    }
    const bool lacks = lack > 0 || !meets_least(line);
    findings_.require(lacks || said == 0, name, ": it is served and is said to lack ", said, " pieces");
    findings_.require(!lacks || said >= std::max<std::int64_t>(lack, 1), name, ": it lacks ", std::max<std::int64_t>(lack, 1),
                      " pieces or more, of which ", said, " are said to lack");
  }

  const Job& job_;
  const BatchPlan& plan_;
  Findings& findings_;
  std::vector<Cloth> cloths_;
};

}  // namespace

bool inspect_made(const Job& job, const BatchPlan& plan, Findings& findings) {
  return MadeCheck(job, plan, findings).run();
}

}  // namespace foldyard::inspection
