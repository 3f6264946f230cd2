#include "cloth/cloth_of.h"

#include <gtest/gtest.h>

namespace foldyard {
namespace {

Roll moss() {
  Roll roll;
  roll.name = "Moss 2";
  roll.cloth = "Canvas, moss";
  roll.marks = {"plain", "heavy"};
  return roll;
}

TEST(ClothOf, IsTheClothThatTheRollNames) { EXPECT_EQ(cloth_of(moss()), "Canvas, moss"); }

TEST(ClothOf, IsTheRollsNameWhereItNamesNone) {
  Roll roll = moss();
  roll.cloth.clear();
  EXPECT_EQ(cloth_of(roll), "Moss 2");
  EXPECT_TRUE(answers_to(roll, "Moss 2"));
}

TEST(ClothOf, AnswersToItsClothAndItsMarksOnly) {
  EXPECT_TRUE(answers_to(moss(), "Canvas, moss"));
  EXPECT_TRUE(answers_to(moss(), "heavy"));
  EXPECT_FALSE(answers_to(moss(), "Moss 2"));
  EXPECT_FALSE(answers_to(moss(), "printed"));
}

TEST(ClothOf, NoWordsAskForNothing) {
  EXPECT_TRUE(answers_to_any(moss(), {}));
  EXPECT_TRUE(answers_to_any(moss(), {"printed", "plain"}));
  EXPECT_FALSE(answers_to_any(moss(), {"printed"}));
}

}  // namespace
}  // namespace foldyard
