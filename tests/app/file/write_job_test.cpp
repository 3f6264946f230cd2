#include "file/write_job.h"

#include <gtest/gtest.h>

#include <random>

#include "file/exact_length.h"
#include "file/read_job.h"
#include "job/defaults.h"
#include "measure/read_length.h"

namespace foldyard {
namespace {

Job small_job() {
  Job job = default_job();
  job.rolls = {{"Oak \"A\" \\ ä", default_fabric(), Length::mm(20'000)}};
  job.panels = {{"Square", Length::mm(450), Length::mm(505), true, false, Worth::parts(75'001)}};
  return job;
}

TEST(WriteJob, WritesAFilePeopleCanRead) {
  const std::string text = write_job(small_job()).toStdString();
  EXPECT_EQ(text.find("{\n  \"foldyard_job\": 1,\n  \"name\": \"\",\n  \"unit\": \"cm\",\n"), 0u);
  EXPECT_NE(text.find("{\"name\": \"Square\", \"across\": \"45 cm\", \"along\": \"50.5 cm\", "
                      "\"may_turn\": true, \"on_fold\": false, \"worth\": \"7.5001\"}"),
            std::string::npos)
      << text;
}

TEST(WriteJob, IsTheSameEachTime) { EXPECT_EQ(write_job(small_job()), write_job(small_job())); }

TEST(WriteJob, RoundTripsInEveryUnit) {
  for (Unit unit : {Unit::mm, Unit::cm, Unit::m, Unit::inch, Unit::yard}) {
    Job job = small_job();
    job.unit = unit;
    const Result<Job> read = read_job(write_job(job));
    ASSERT_TRUE(read) << read.problem().sentence();
    EXPECT_EQ(*read, job);
  }
}

Length some_length(std::mt19937& random, std::int64_t least, std::int64_t most) {
  return Length::units(std::uniform_int_distribution<std::int64_t>(least, most)(random));
}

TEST(WriteJob, RoundTripsLengthsThatNoTapeShows) {
  const unsigned seed = 20'260'101;
  SCOPED_TRACE(seed);
  std::mt19937 random(seed);
  for (int i = 0; i < 200; ++i) {
    Job job = small_job();
    job.unit = static_cast<Unit>(i % 5);
    job.rolls[0].fabric.width = some_length(random, 400'000, 900'000);
    job.rolls[0].length = some_length(random, 3'000'000, 300'000'000);
    job.panels[0].across = some_length(random, 1600, 300'000);
    job.pace.mark = Duration::ms(i * 37);
    const Result<Job> read = read_job(write_job(job));
    ASSERT_TRUE(read) << read.problem().sentence();
    EXPECT_EQ(*read, job);
  }
}

TEST(ExactLength, ReadsBackWhateverTheLength) {
  EXPECT_EQ(exact_length(Length::units(1), Unit::cm), "0.003125 mm");
  for (std::int64_t units : {1, 16, 31, 32, 127, 8127, 8128, 152'127, 320'000'000}) {
    for (Unit unit : {Unit::mm, Unit::cm, Unit::m, Unit::inch, Unit::yard}) {
      const std::string text = exact_length(Length::units(units), unit);
      const Result<Length> read = read_length(text);
      ASSERT_TRUE(read) << text << " " << read.problem().sentence();
      EXPECT_EQ(*read, Length::units(units)) << text;
    }
  }
}

}  // namespace
}  // namespace foldyard
