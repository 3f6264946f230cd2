#pragma once

// The shelf after cutting: the Job with less cloth, and panels on hand.
//
// Of each lay that was cut: every roll in it is shorter by its length, allowance
// and what squaring its free end took (once, then the end is square); what a length
// leaves over that is worth keeping stands on the shelf as a roll of its own, both
// ends square, without selvedges, named after its roll; the panels are on hand, in
// their cloth. A roll of which nothing is worth keeping when all its lengths are cut
// leaves the shelf; but one roll always stays.
//
// What really happened: spoilt panels are not on hand; `left` is what a roll was
// found to hold afterwards, in place of what was reckoned.
//
// A roll that was only measured stays so: what was cut off it is taken off its estimate
// (cloth/roll_estimate.h), low end and high. It stays on the shelf while it most likely
// holds more that can be cut.
//
// Refused, in one sentence: no lay; a lay twice or that the plan has not; more
// spoilt than was cut; a roll left longer than it was, or could be at the most; on
// cloth with flaws or a repeat, a length behind one that is not cut (its place on the
// roll would be lost); a shelf that would be too full.
//
// The history says when, how many lays, what they gave, what was spoilt, how much each
// roll lost and what it held then: of a roll that was only measured, at the least.
//
// The order stays as it is: planned again, it finds the panels on hand. But lengths that
// were kept and are cut are kept no more, a roll that had to be cut need not be any more,
// and what was kept on a roll that leaves the shelf may come from any.
//
// Example: 10 m, squaring 10 cm, two lengths of 96 cm with 4 cm allowance: 7.9 m
// stay, the free end square.

#include "job/batch_plan.h"
#include "job/job.h"
#include "measure/result.h"

namespace foldyard {

struct FoundLeft {
  int roll = 0;  // index into Job::rolls
  Length left;
  bool operator==(const FoundLeft&) const = default;
};

struct CutReport {
  std::string when;
  std::vector<int> lays;  // of BatchPlan::lays
  std::vector<CutPanels> spoilt = {};
  std::vector<FoundLeft> left = {};
  bool operator==(const CutReport&) const = default;
};

// REQUIRES the invariants of Job and a plan of it.
Result<Job> mark_cut(const Job& job, const BatchPlan& plan, const CutReport& report);
// Every lay of the plan, as planned.
CutReport all_cut(const BatchPlan& plan, const std::string& when);

}  // namespace foldyard
