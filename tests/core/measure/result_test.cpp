#include "measure/result.h"

#include <gtest/gtest.h>

namespace foldyard {
namespace {

TEST(Problem, JoinsWhereWhatAndNextIntoASentence) {
  EXPECT_EQ((Problem{"rolls[2].width", "0 mm is not a width", "give more than zero"}.sentence()),
            "rolls[2].width: 0 mm is not a width; give more than zero.");
}

TEST(Problem, LeavesOutWhatItDoesNotKnow) {
  EXPECT_EQ((Problem{"", "the file is empty", ""}.sentence()), "the file is empty.");
  EXPECT_EQ((Problem{"name", "it is missing", ""}.sentence()), "name: it is missing.");
  EXPECT_EQ((Problem{"", "it is empty", "write one"}.sentence()), "it is empty; write one.");
}

TEST(Result, HoldsAValueOrAProblem) {
  const Result<int> good = 0;
  EXPECT_TRUE(good) << "a value of zero is a value";
  EXPECT_EQ(good.value(), 0);
  const Result<int> bad = Problem{"", "no", ""};
  EXPECT_FALSE(bad);
  EXPECT_EQ(bad.problem().what, "no");
}

TEST(Result, GivesItsValueAway) {
  Result<std::string> text = std::string("cloth");
  EXPECT_EQ(text->size(), 5u);
  EXPECT_EQ(std::move(text).value(), "cloth");
}

}  // namespace
}  // namespace foldyard
