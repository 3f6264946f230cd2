#include "file/write_job.h"

#include <gtest/gtest.h>

#include <random>

#include "cloth/flaw_order.h"
#include "cloth/roll_estimate.h"
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
  EXPECT_EQ(text.find("{\n  \"foldyard_job\": 2,\n  \"name\": \"\",\n  \"unit\": \"cm\",\n"), 0u);
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

TEST(WriteJob, LeavesOutWhatPlainClothHasNot) {
  const QByteArray text = write_job(small_job());
  for (const char* key : {"measured", "railroaded", "repeat", "shrinkage", "flaws", "at_most",
                          "grain", "match"}) {
    EXPECT_FALSE(text.contains(key)) << key;
  }
}

Job rich_job() {
  Job job = small_job();
  Roll& roll = job.rolls[0];
  roll.fabric.railroaded = true;
  roll.fabric.repeat = {Length::mm(640), Length(), Length::mm(100), Length(), true};
  roll.fabric.shrinkage = {300, 0};
  roll.flaws = {{{Length::mm(1000), Length::mm(1020)}, {Length(), Length::mm(1400)}, ""},
                {{Length::mm(3200), Length::mm(3260)}, {Length::mm(400), Length::mm(550)}, "spot"}};
  job.panels[0].at_most = 24;
  job.panels[0].grain = Grain::warp;
  job.panels[0].match = Match::centred;
  return job;
}

TEST(WriteJob, WritesWhatDiffersFromPlainCloth) {
  const std::string text = write_job(rich_job()).toStdString();
  EXPECT_NE(text.find(R"("nap": "none", "colour": "#c9b79c", "railroaded": true, )"
                      R"("repeat": {"along": "64 cm", "start_along": "10 cm", "symmetric": true}, )"
                      R"("shrinkage": {"along_percent": 3}, "flaws": [
      {"from": "100 cm", "to": "102 cm"},
      {"from": "320 cm", "to": "326 cm", "left": "40 cm", "right": "55 cm", "kind": "spot"}]})"),
            std::string::npos)
      << text;
  EXPECT_NE(text.find(R"("worth": "7.5001", "at_most": 24, "grain": "warp", "match": "centred"})"),
            std::string::npos)
      << text;
}

TEST(WriteJob, WritesWhatWasMeasuredInPlaceOfALength) {
  Job job = small_job();
  const RollMeasure measure = ByWeight{{19'000, 50}, {1'000, 0}, {3'505, 100}};
  job.rolls[0].measured = measure;
  job.rolls[0].length = estimate(measure, job.rolls[0].fabric.width)->least;
  const std::string words =
      R"("measured": {"by": "weight", "roll": 19000, "roll_give": 50, "tube": 1000, "tube_give": 0, )"
      R"("per_square_metre": 350.5, "per_square_metre_give": 10}, "nap")";
  EXPECT_NE(write_job(job).toStdString().find(R"("thickness": "0.1 cm", )" + words),
            std::string::npos)
      << write_job(job).toStdString();
  job.rolls[0].length = Length::mm(36'200);
  job.rolls[0].is_found = true;
  EXPECT_NE(write_job(job).toStdString().find(R"("length": "3620 cm", )" + words),
            std::string::npos)
      << write_job(job).toStdString();
}

// A job with whatever a roll and a panel may have, each by a throw of dice.
class AnyJob {
 public:
  explicit AnyJob(unsigned seed) : random_(seed) {}

  Job make() {
    Job job = small_job();
    job.unit = static_cast<Unit>(below(5));
    const int rolls = 1 + below(3);
    for (int i = 1; i < rolls; ++i) job.rolls.push_back({std::to_string(i), job.rolls[0].fabric, {}});
    for (Roll& roll : job.rolls) fill(roll);
    Panel& panel = job.panels[0];
    if (below(2)) panel.at_most = 1 + below(1'000'000);
    panel.grain = static_cast<Grain>(below(2));
    panel.match = static_cast<Match>(below(3));
    return job;
  }

 private:
  int below(int end) { return std::uniform_int_distribution<int>(0, end - 1)(random_); }
  Length length(std::int64_t least, std::int64_t most) { return some_length(random_, least, most); }
  MeasuredLength about(int mm, int give) {
    return {Length::mm(mm) + length(0, 3000), below(3) ? length(0, Length::mm(give).units()) : Length()};
  }

  // Gives 10 m or more of cloth 1.25 m wide or wider.
  RollMeasure measure() {
    switch (below(3)) {
      case 0: return ByDiameters{about(220, 5), about(50, 5), {length(160, 480), length(0, 100)}};
      case 1: return ByTurns{{80 + below(20), below(9)}, about(220, 5), about(50, 5)};
      default: return ByWeight{{19'000 + below(999), below(99)}, {below(999), below(99)},
                               {2'000 + below(999), below(99)}};
    }
  }

  Span span(Length end) {
    const Length from = length(0, end.units() - 1);
    return {from, length(from.units() + 1, end.units())};
  }

  void fill(Roll& roll) {
    Fabric& fabric = roll.fabric;
    fabric.width = length(400'000, 900'000);
    fabric.nap = static_cast<Nap>(below(2));
    fabric.railroaded = below(2);
    fabric.repeat.symmetric = below(2);
    if (below(2)) fabric.repeat.along = length(320, 700'000);
    if (below(2)) fabric.repeat.across = length(320, 400'000);
    if (below(2)) fabric.repeat.start_along = fabric.repeat.along / 3;
    if (below(2)) fabric.repeat.start_across = fabric.repeat.across / 7;
    if (below(2)) fabric.shrinkage = {below(5001), below(2000)};
    roll.length = length(3'000'000, 300'000'000);
    if (below(2)) roll.measured = measure();
    roll.is_found = roll.measured && below(2);
    if (roll.measured && below(2)) roll.cut_since = Length::mm(10 + below(100));
    if (roll.measured && !roll.is_found) roll.length = estimate_of(roll)->least;
    for (int i = below(4); i > 0; --i) {
      const Span across = below(2) ? span(fabric.width) : Span{Length(), fabric.width};
      roll.flaws.push_back({span(roll.length), across, below(2) ? "slub" : ""});
    }
    put_in_order(roll.flaws);
  }

  std::mt19937 random_;
};

TEST(WriteJob, RoundTripsWhateverClothCanBe) {
  const unsigned seed = 20'260'201;
  SCOPED_TRACE(seed);
  AnyJob any(seed);
  for (int i = 0; i < 500; ++i) {
    const Job job = any.make();
    const QByteArray text = write_job(job);
    const Result<Job> read = read_job(text);
    ASSERT_TRUE(read) << read.problem().sentence() << "\n" << text.toStdString();
    ASSERT_EQ(*read, job) << text.toStdString();
    ASSERT_EQ(write_job(*read), text);
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
