#include "window/range_line.h"

#include <gtest/gtest.h>

#include "cloth/length_estimate.h"
#include "sample.h"

namespace foldyard {
namespace {

Job estimated_job() {
  Job job = sample::job();
  job.rolls[0].measured = ByWeight{{2'450, 30}, {0, 0}, {3'500, 0}};
  job.rolls[0].length = estimate(*job.rolls[0].measured, Length::mm(1500)).value().least;
  return job;
}

AnswerPtr answer_for(const Job& job) {
  return std::make_shared<const Answer>(Answer{job, sample::comparison({job, 0, Aim::most_worth})});
}

// Counts how often it is asked.
struct Finder {
  int asked = 0;
  FindRange find() {
    return [this](const RangeQuestion& question, const std::atomic<bool>& stopped) {
      ++asked;
      return find_range(question, stopped);
    };
  }
};

TEST(RangeLine, SaysTheRangeAndWhatToCutFirst) {
  Finder finder;
  RangeLine line(finder.find());
  const Job job = estimated_job();
  line.show_way(answer_for(job), 0);
  EXPECT_FALSE(line.isHidden());
  EXPECT_TRUE(line.text().contains("estimated"));
  ASSERT_TRUE(sample::waited_for([&] { return !line.is_busy(); }, 60000));
  const auto range = yield_range(job, 0, FoldWay{}, Aim::most_worth);
  ASSERT_TRUE(range);
  EXPECT_EQ(line.text(), range_line_words(job, *range));
  EXPECT_TRUE(line.text().contains("of the plan first: even the shortest roll has"));
  EXPECT_TRUE(line.toolTip().contains("Then measure"));
  line.show_way(answer_for(job), 0);  // nothing new
  EXPECT_EQ(finder.asked, 1);
}

TEST(RangeLine, IsNotThereForAKnownLengthARefusedWayOrNone) {
  RangeLine line;
  line.show_way(sample::answer(), 0);
  EXPECT_TRUE(line.isHidden());
  line.show_way(answer_for(estimated_job()), 1);
  EXPECT_TRUE(line.isHidden());
  line.show_way(nullptr, -1);
  EXPECT_TRUE(line.isHidden());
}

}  // namespace
}  // namespace foldyard
