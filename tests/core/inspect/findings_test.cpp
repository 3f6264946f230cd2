#include "inspect/findings.h"

#include <gtest/gtest.h>

namespace foldyard::inspection {

namespace {

TEST(Findings, SaysOnlyWhatIsBroken) {
  Findings findings(Unit::mm);
  EXPECT_TRUE(findings.require(true, "Never said"));
  EXPECT_TRUE(findings.agree(3, 3, "The number of cuts"));
  EXPECT_FALSE(findings.require(false, "Lay ", 2, ": it holds no length"));
  EXPECT_FALSE(findings.agree(3, 4, "Pattern 2: the number of cuts"));
  EXPECT_EQ(
      std::move(findings).take(),
      (std::vector<std::string>{"Lay 2: it holds no length.",
                                "Pattern 2: the number of cuts is given as 3, but comes to 4."}));
}

// 17 3/4 in is 1136/64 in; one unit of 1/320 mm more is whole in no 64th.
TEST(Findings, ShowsLengthsInTheJobsUnitAndUnitsWhereThatRounds) {
  Findings findings(Unit::inch);
  findings.agree(Length::inches64(1136), Length::inches64(1136) + Length::units(1), "It");
  EXPECT_EQ(std::move(findings).take()[0],
            "It is given as 17 3/4 in, but comes to 17 3/4 in (144273 units of 1/320 mm).");
}

}  // namespace

}  // namespace foldyard::inspection
