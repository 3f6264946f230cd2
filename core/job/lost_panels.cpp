#include "job/lost_panels.h"

namespace foldyard {

namespace {

Span shifted(Span span, Length by) { return {span.from + by, span.to + by}; }

// The first flaw that a rectangle of the roll touches, or −1.
int flaw_under(const Rect& rect, const std::vector<Flaw>& flaws) {
  for (int i = 0; i < static_cast<int>(flaws.size()); ++i)
    if (rect.overlaps({flaws[i].across, flaws[i].along})) return i;
  return -1;
}

}  // namespace

std::vector<LostPanel> lost_panels(const Job& job, const Plan& plan) {
  std::vector<LostPanel> lost;
  const std::vector<Flaw>& flaws = job.rolls[plan.roll].flaws;
  if (flaws.empty()) return lost;
  for (int i = 0; i < static_cast<int>(plan.lengths.size()); ++i) {
    const LengthOnRoll& length = plan.lengths[i];
    const Pattern& pattern = pattern_of(plan, length);
    const Length start = length.pattern_start(job.losses.allowance);
    for (int p = 0; p < static_cast<int>(pattern.panels.size()); ++p) {
      const Rect& flat = pattern.panels[p].flat;
      const int flaw = flaw_under({flat.across, shifted(flat.along, start)}, flaws);
      if (flaw >= 0) lost.push_back({i, p, flaw});
    }
  }
  return lost;
}

Worth lost_worth(const Job& job, const Plan& plan) {
  Worth worth;
  for (const LostPanel& lost : plan.lost) {
    const Lay& lay = plan.lays[plan.lengths[lost.length].lay];
    worth += job.panels[plan.patterns[lay.pattern].panels[lost.panel].panel].worth;
  }
  return worth;
}

std::vector<Flaw> flaws_that_matter(const Roll& roll, Span along) {
  const Rect cloth{roll.fabric.usable(), along};
  std::vector<Flaw> flaws;
  for (const Flaw& flaw : roll.flaws)
    if (cloth.overlaps({flaw.across, flaw.along})) flaws.push_back(flaw);
  return flaws;
}

}  // namespace foldyard
