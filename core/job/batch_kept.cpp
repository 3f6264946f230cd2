#include "job/batch_kept.h"

#include <algorithm>

#include "job/cut_back.h"
#include "job/kept_length.h"
#include "measure/index.h"

namespace foldyard {

namespace {

class KeptWriter {
 public:
  KeptWriter(const Job& job, BatchCase& c) : job_(job), case_(c) {
    for (const CaseRoll& roll : c.order.rolls) {
      left_.emplace_back();
      for (const Span& stretch : roll.stretches) left_.back().push_back(stretch.size());
    }
  }

  std::optional<Problem> run() {
    for (const KeptLength& kept : job_.order.kept)
      if (std::optional<Problem> problem = add(kept)) return problem;
    return std::nullopt;
  }

 private:
  Problem of_kept(const Words& what) const {
    return {"order.kept", what, say("let one of them go and plan again")};
  }

  std::optional<Problem> add(const KeptLength& kept) {
    const auto found = std::find(case_.rolls.begin(), case_.rolls.end(), roll_named(job_, kept.roll));
    if (found == case_.rolls.end()) return of_kept(say("lengths kept on \"%1\" find no room", kept.roll));
    const int roll = static_cast<int>(found - case_.rolls.begin());
    Result<Pattern> pattern = kept_pattern(job_, kept);
    if (!pattern) return pattern.problem();
    KeptOnRoll on_roll{roll, way_of_kind(case_.order.rolls[ix(roll)].kind, kept.way), *pattern, {}};
    for (std::int64_t n = 0; n < kept.count; ++n)
      if (!put(on_roll)) return of_kept(say("lengths kept on \"%1\" do not find room on it", kept.roll));
    case_.kept.push_back(std::move(on_roll));
    return std::nullopt;
  }

  int way_of_kind(int kind, const FoldWay& way) {
    auto& ways = case_.kinds[ix(kind)].ways;
    const auto found = std::find(ways.begin(), ways.end(), way);
    if (found != ways.end()) return static_cast<int>(found - ways.begin());
    ways.push_back(way);
    return static_cast<int>(ways.size()) - 1;
  }

  bool put(KeptOnRoll& on_roll) {
    CaseRoll& roll = case_.order.rolls[ix(on_roll.roll)];
    const Length size = on_roll.pattern.length + job_.losses.allowance;
    auto& left = left_[ix(on_roll.roll)];
    const auto room = std::find_if(left.begin(), left.end(), [&](Length l) { return l >= size; });
    if (room == left.end()) return false;
    *room = *room - size;
    on_roll.stretches.push_back(static_cast<int>(room - left.begin()));
    ++roll.kept;
    roll.kept_size += size;
    const auto copies = copies_in(on_roll.pattern, job_.panels.size());
    roll.kept_yield.resize(copies.size());
    for (std::size_t p = 0; p < copies.size(); ++p) roll.kept_yield[p] += copies[p];
    return true;
  }

  const Job& job_;
  BatchCase& case_;
  std::vector<std::vector<Length>> left_;  // by roll, then by stretch
};

}  // namespace

std::optional<Problem> add_kept(const Job& job, BatchCase& c) { return KeptWriter(job, c).run(); }

}  // namespace foldyard
