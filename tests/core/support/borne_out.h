#pragma once

// The plan of a search that was cut short, held against that of the whole search of the same
// job. Net worth is rounded to a part, so a part is given.

#include <gtest/gtest.h>

#include "core/support/planned.h"
#include "inspect/inspect_plan.h"

namespace foldyard::test {

// Each bound holds for the other plan, and what the short one calls proved is no less.
inline void expect_borne_out(const Plan& few, const Plan& all) {
  EXPECT_LE(aimed_worth(all), few.proof.bound.parts() + 1);
  EXPECT_LE(aimed_worth(few), all.proof.bound.parts() + 1);
  if (few.proof.proved) {
    EXPECT_GE(aimed_worth(few) + 1, aimed_worth(all));
  }
}

// A sound plan that the whole bears out, or the word that it was stopped.
inline void expect_sound_or_stopped(const Job& job, const Result<Plan>& found, const Result<Plan>& whole) {
  ASSERT_TRUE(whole);
  if (!found) {
    EXPECT_NE(found.problem().what.find("stopped"), std::string::npos) << found.problem().what;
    return;
  }
  EXPECT_EQ(inspect_plan(job, *found), std::vector<std::string>());
  expect_borne_out(*found, *whole);
}

}  // namespace foldyard::test
