#include "batch/order_words.h"

#include <gtest/gtest.h>

#include "core/support/order_job.h"

namespace foldyard {
namespace {

TEST(OrderWords, NamesThePlaceOfAProblem) {
  const Job job = test::order_job();
  EXPECT_EQ(order_problem_text({"order.lines[1].from[0]", "no such cloth", "name one"}, job), "Line 2, “pouch”, from 1: no such cloth; name one.");
  EXPECT_EQ(order_problem_text({"products[0].panels[1].count", "0 is too few", ""}, job), "Product “carrier”, panels 2, count: 0 is too few.");
  EXPECT_EQ(order_problem_text({"rolls[2].width", "too wide", "cut it"}, job), "Roll “sand 1”, width: too wide; cut it.");
  EXPECT_EQ(order_problem_text({"", "nothing to do", ""}, job), "nothing to do.");
}

TEST(OrderWords, ReadsClothsApartBySemicolonsOrCommas) {
  Job job = test::order_job();
  EXPECT_EQ(typed_words(" moss ; printed;; ", job), (std::vector<std::string>{"moss", "printed"}));
  EXPECT_EQ(typed_words("moss, printed", job), (std::vector<std::string>{"moss", "printed"}));
  job.rolls[0].cloth = job.rolls[1].cloth = "canvas, moss";
  EXPECT_EQ(typed_words("canvas, moss; printed", job), (std::vector<std::string>{"canvas, moss", "printed"}));
  EXPECT_TRUE(typed_words("  ", job).empty());
  EXPECT_EQ(words_text({"canvas, moss", "printed"}), "canvas, moss; printed");
}

TEST(OrderWords, ReadsCounts) {
  EXPECT_EQ(*typed_count(" 12 "), 12);
  EXPECT_EQ(*typed_count("0"), 0);
  for (const char* bad : {"", "-1", "1.5", "many", "99999999999999999999"}) EXPECT_FALSE(typed_count(QString::fromUtf8(bad))) << bad;
}

}  // namespace
}  // namespace foldyard
