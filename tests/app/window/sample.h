#pragma once

// What the tests of the window share: a small job, made-up plans for it, and
// waiting for the window.

#include <QTest>

#include <atomic>
#include <functional>

#include "job/plan_roll.h"
#include "support/job_sample.h"
#include "window/planner.h"

namespace foldyard::sample {

// Open cloth gives four panels in 20 min; selvedge to selvedge three in 12 min;
// quarters are refused.
inline Comparison comparison(const Question& question,
                             const std::atomic<bool>& = std::atomic<bool>(false)) {
  Plan open;
  open.roll = question.roll;
  open.yield = {3, 1};
  open.worth = Worth::whole(29);
  open.cuts = 9;
  open.time = Duration::seconds(1200);
  open.cloth = Length::mm(1500) * Length::mm(5000);
  open.proof = {Worth::whole(29), true, "every place was tried"};
  Plan folded = open;
  folded.way = {FoldKind::selvedge_to_selvedge, 2, false, true};
  folded.yield = {3, 0};
  folded.worth = Worth::whole(27);
  folded.cuts = 4;
  folded.time = Duration::seconds(720);
  folded.proof = {Worth::whole(29), false, "open cloth is the bound"};
  const FoldWay quarters{FoldKind::quarters, 4, false, true};
  Comparison result;
  result.roll = question.roll;
  result.aim = question.aim;
  result.ways = {{open.way, open, ""}, {quarters, {}, "4 plies are too thick"}, {folded.way, folded, ""}};
  result.ranking = {0, 2};
  result.frontier = {0, 2};
  return result;
}

inline Question question(int roll = 0) { return {job(), roll, Aim::most_worth}; }

inline AnswerPtr answer() {
  return std::make_shared<const Answer>(Answer{job(), comparison(question())});
}

// As the search finds it.
inline AnswerPtr planned() {
  return std::make_shared<const Answer>(Answer{job(), compare_ways(job(), 0, Aim::most_worth)});
}

inline bool waited_for(const std::function<bool()>& is_there, int ms = 20000) {
  return QTest::qWaitFor(is_there, ms);
}

}  // namespace foldyard::sample
