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

TEST(Cautions, NameTheRatedHeightInTheUnitOfTheJob) {
  EXPECT_EQ(height_caution(default_job()),
            "The cutter of this job is rated for a stack of 2.5 cm and at most 12 plies.");
}

}  // namespace
}  // namespace foldyard
