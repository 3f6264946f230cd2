#include <algorithm>

#include "inspect/checks.h"
#include "measure/index.h"

namespace foldyard::inspection {

namespace {

constexpr int kNone = -1;

bool meets(Span a, Span b) { return std::max(a.from, b.from) < std::min(a.to, b.to); }

// Half the allowance is cut off before the pattern, so its panels lie from
// there on.
int first_flaw_under(const Roll& roll, Length begin, const Rect& flat) {
  const Span along{begin + flat.along.from, begin + flat.along.to};
  for (std::size_t f = 0; f < roll.flaws.size(); ++f) {
    if (meets(along, roll.flaws[f].along) && meets(flat.across, roll.flaws[f].across))
      return static_cast<int>(f);
  }
  return kNone;
}

// What both lists say of one panel of one length.
struct Verdict {
  int length;
  int panel;
  int given = kNone;
  int found = kNone;
};

bool is_of(const LostPanel& lost, int length, int panel) {
  return lost.length == length && lost.panel == panel;
}

int flaw_in(const std::vector<LostPanel>& list, int length, int panel) {
  const auto it = std::find_if(list.begin(), list.end(), [&](const LostPanel& lost) {
    return is_of(lost, length, panel);
  });
  return it == list.end() ? kNone : it->flaw;
}

void judge(const Job& job, const Plan& plan, const Verdict& v, Findings& findings) {
  const Pattern& pattern = pattern_of(plan, plan.lengths[ix(v.length)]);
  const PlacedPanel& placed = pattern.panels[ix(v.panel)];
  const std::string head = "Length " + std::to_string(v.length + 1) + ": panel " +
                           std::to_string(v.panel + 1) + " (" +
                           job.panels[ix(placed.panel)].name + ") ";
  if (v.found == kNone)
    findings.require(v.given == kNone, head, "is given as lost but touches no flaw");
  else if (v.given == kNone)
    findings.require(false, head, "touches flaw ", v.found + 1, " but counts as whole");
  else
    findings.require(v.given == v.found, head, "is given as lost to flaw ", v.given + 1,
                     " but the first that it touches is flaw ", v.found + 1);
}

bool names_placed_panel(const Plan& plan, const LostPanel& lost) {
  if (lost.length < 0 || lost.length >= static_cast<int>(plan.lengths.size())) return false;
  const Pattern& pattern = pattern_of(plan, plan.lengths[ix(lost.length)]);
  return 0 <= lost.panel && lost.panel < static_cast<int>(pattern.panels.size());
}

bool come_in_order(const std::vector<LostPanel>& lost) {
  for (std::size_t i = 1; i < lost.size(); ++i) {
    const LostPanel &a = lost[i - 1], &b = lost[i];
    if (b.length < a.length || (b.length == a.length && b.panel <= a.panel)) return false;
  }
  return true;
}

}  // namespace

std::vector<LostPanel> find_lost_panels(const Job& job, const Plan& plan) {
  const Roll& roll = job.rolls[ix(plan.roll)];
  std::vector<LostPanel> found;
  for (std::size_t i = 0; i < plan.lengths.size(); ++i) {
    const Length begin = plan.lengths[i].on_roll.from + job.losses.allowance / 2;
    const std::vector<PlacedPanel>& panels = pattern_of(plan, plan.lengths[i]).panels;
    for (std::size_t p = 0; p < panels.size() && !roll.flaws.empty(); ++p) {
      const int flaw = first_flaw_under(roll, begin, panels[p].flat);
      if (flaw != kNone) found.push_back({static_cast<int>(i), static_cast<int>(p), flaw});
    }
  }
  return found;
}

void inspect_lost_panels(const Job& job, const Plan& plan, Findings& findings) {
  const std::vector<LostPanel> found = find_lost_panels(job, plan);
  for (std::size_t i = 0; i < plan.lost.size(); ++i) {
    const LostPanel& lost = plan.lost[i];
    if (!findings.require(names_placed_panel(plan, lost), "Lost panel ", i + 1,
                          ": it names no panel of a length"))
      continue;
    judge(job, plan, {lost.length, lost.panel, lost.flaw, flaw_in(found, lost.length, lost.panel)},
          findings);
  }
  for (const LostPanel& lost : found) {
    if (flaw_in(plan.lost, lost.length, lost.panel) == kNone)
      judge(job, plan, {lost.length, lost.panel, kNone, lost.flaw}, findings);
  }
  findings.require(come_in_order(plan.lost),
                   "The lost panels are not given once each in the order of lengths and panels");
}

}  // namespace foldyard::inspection
