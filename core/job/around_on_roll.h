#pragma once

// AroundOnRoll: lengths of a roll that are cut around the flaws under them, on
// open cloth and on cloth folded selvedge to selvedge (not end to end).
//
// Folded, a flaw counts where it lies on either ply: what is cut around it is
// cut through both. Sizes tried end where a panel beside the flaws or one that
// begins behind a flaw ends.
//
// Example: open cloth, a flaw of 5 cm across the whole width 92 cm behind the
// start: a length of 92 + 5 + 90 cm gives the panels of two lengths of 90.

#include "batch/flawed_series.h"
#include "cutting/around_flaws.h"
#include "cutting/table_set.h"
#include "job/aim_scale.h"
#include "job/plan.h"

namespace foldyard {

struct AroundCase {
  const Job& job;
  const Roll& roll;
  const FoldWay& way;
  const AimScale& scale;
  TableSet& tables;
  const FlawedCloth& cloth;
};

class AroundOnRoll : public AroundFlaws {
 public:
  static bool can_cut(const FoldWay& way);
  // REQUIRES can_cut(way), and all that the case names to live as long as this.
  explicit AroundOnRoll(const AroundCase& c);

  std::vector<Length> sizes(Length from) const override;
  std::int64_t most_gain(Length size) const override;
  Gain best(Length from, Length size) const override;
  Pattern pattern(Span on_roll) const;

 private:
  Length start_of(Length from) const { return from + c_.cloth.lead; }
  bool is_folded() const { return c_.way.kind != FoldKind::open; }
  FoldPlan fold() const;
  Span strip() const;  // of the folded cloth, usable throughout
  Length folded_width() const;
  std::vector<Rect> holes(Length from, Length length) const;
  std::int64_t slits() const;

  AroundCase c_;
  const CutTable& whole_;  // of the strip
  AroundCuts cuts_;
  std::vector<std::int64_t> most_;  // by place along, of all up to there
};

}  // namespace foldyard
