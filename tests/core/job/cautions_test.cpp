#include "job/cautions.h"

#include <gtest/gtest.h>

#include "job/defaults.h"

namespace foldyard {
namespace {

TEST(Cautions, PutTheManualFirstAndAreWholeSentences) {
  ASSERT_FALSE(cautions().empty());
  EXPECT_NE(cautions().front().find("manual"), std::string_view::npos);
  for (std::string_view line : cautions()) EXPECT_EQ(line.back(), '.') << line;
}

// What has to be said wherever the tool leads to a blade.
TEST(Cautions, LeaveNothingOut) {
  std::string all;
  for (std::string_view line : cautions()) all += line;
  for (const char* word : {"manual", "local rules", "trained people", "Guard down", "Free hand away", "Cut-resistant",
                           "Switch off after each cut", "Unplug", "rated height", "table", "light"})
    EXPECT_NE(all.find(word), std::string::npos) << word;
}

TEST(Cautions, NameTheRatedHeightInTheUnitOfTheJob) {
  EXPECT_EQ(height_caution(default_job()),
            "The cutter of this job is rated for a stack of 2.5 cm and at most 12 plies.");
}

// 25 mm are 62.99/64 in: 63/64 in would be over the rated height.
TEST(Cautions, NeverRoundTheHeightUp) {
  Job job = default_job();
  job.unit = Unit::inch;
  EXPECT_NE(height_caution(job).find("a stack of 25 mm"), std::string::npos) << height_caution(job);
}

// 1 km is the longest that is written exactly.
TEST(Cautions, NameAnyHeight) {
  Job job = default_job();
  job.cutter.height = kLongest + Length::mm(10);
  EXPECT_NE(height_caution(job).find("a stack of 100001 cm"), std::string::npos) << height_caution(job);
}

}  // namespace
}  // namespace foldyard
