#include "file/read_job.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include "file/write_job.h"
#include "job/defaults.h"
#include "job/limits.h"
#include <sys/stat.h>

namespace foldyard {
namespace {

// The smallest job: what is needed and nothing else.
const char* const kSmall = R"({
  "foldyard_job": 2,
  "rolls": [{"name": "Oak", "length": "20 m"}],
  "panels": [{"name": "Square", "across": "45 cm", "along": "50 cm"}]
})";

TEST(ReadJob, TakesTheDefaultsForWhatIsLeftOut) {
  const Result<Job> job = read_job(kSmall);
  ASSERT_TRUE(job) << job.problem().sentence();
  Job expected = default_job();
  expected.rolls = {{"Oak", default_fabric(), Length::mm(20'000)}};
  // 0.45 m × 0.50 m = 0.225 m² at 20.00 a square metre is 4.50.
  expected.panels = {
      {"Square", Length::mm(450), Length::mm(500), false, true, Worth::parts(45'000)}};
  EXPECT_EQ(*job, expected);
}

TEST(ReadJob, TakesEveryFieldThatIsNamed) {
  const Result<Job> read = read_job(R"({
    "foldyard_job": 2, "name": "Benches", "unit": "in",
    "rolls": [{"name": "Oak", "width": "54 in", "selvedge": "1/2 in", "thickness": "1.2 mm",
               "length": "10 yd", "nap": "one-way", "colour": "#8899AA"}],
    "panels": [{"name": "Seat", "across": "18 in", "along": "1 yd", "may_turn": true,
                "on_fold": false, "worth": "7.50"},
               {"name": "Tie", "across": "2 in", "along": "20 in", "worth": 0.25}],
    "table": {"length": "3 m", "depth": "1.5 m", "reach": "70 cm", "both_sides": false},
    "cutter": {"height": "10 mm", "most_plies": 6},
    "losses": {"squaring": "5 cm", "allowance": "2 cm", "fold_trim": "3 mm",
               "keep_across": "20 cm", "keep_along": "40 cm"},
    "pace": {"unroll": 90, "cross_cut": 45, "fold": "20.5", "lift": 50, "mark": 12.125,
             "seconds_per_metre": 15, "handle": 3, "allowance_percent": 10, "rate": "18.40"},
    "longest_fan": 4})");
  ASSERT_TRUE(read) << read.problem().sentence();
  const Job& job = *read;
  EXPECT_EQ(job.name, "Benches");
  EXPECT_EQ(job.unit, Unit::inch);
  // 54 in = 54 × 8128 units; half an inch 4064; a yard 292608.
  const Fabric fabric{Length::units(438'912), Length::units(4064), Length::units(384),
                      Nap::one_way, "#8899AA"};
  EXPECT_EQ(job.rolls, (std::vector<Roll>{{"Oak", fabric, Length::units(2'926'080)}}));
  EXPECT_EQ(job.panels[0], (Panel{"Seat", Length::units(146'304), Length::units(292'608), true,
                                  false, Worth::parts(75'000)}));
  EXPECT_EQ(job.panels[1].worth, Worth::parts(2500));
  EXPECT_EQ(job.table, (Table{Length::mm(3000), Length::mm(1500), Length::mm(700), false}));
  EXPECT_EQ(job.cutter, (Cutter{Length::mm(10), 6}));
  EXPECT_EQ(job.losses, (Losses{Length::mm(50), Length::mm(20), Length::mm(3), Length::mm(200),
                                Length::mm(400)}));
  EXPECT_EQ(job.pace.fold, Duration::ms(20'500));
  EXPECT_EQ(job.pace.mark, Duration::ms(12'125));
  EXPECT_EQ(job.pace.ms_per_metre, 15'000);
  EXPECT_EQ(job.pace.allowance_percent, 10);
  EXPECT_EQ(job.pace.rate, Worth::parts(184'000));
  EXPECT_EQ(job.longest_fan, 4);
}

TEST(ReadJob, TakesWhatClothCanBe) {
  const Result<Job> read = read_job(R"({
    "foldyard_job": 2,
    "rolls": [{"name": "Rose", "length": "20 m", "railroaded": true,
               "repeat": {"along": "64 cm", "across": "70 cm", "start_along": "10 cm",
                          "start_across": "1.5 cm", "symmetric": true},
               "shrinkage": {"along_percent": 3, "across_percent": "1.25"},
               "flaws": [{"from": "3.2 m", "to": "3.26 m", "left": "40 cm", "right": "55 cm",
                          "kind": "stain"},
                         {"from": "1 m", "to": "1.02 m"}]},
              {"name": "Plain", "length": "20 m", "repeat": {}, "shrinkage": {}, "flaws": []}],
    "panels": [{"name": "Seat", "across": "45 cm", "along": "50 cm", "at_most": 24,
                "grain": "warp", "match": "centred"}]})");
  ASSERT_TRUE(read) << read.problem().sentence();
  Roll roll{"Rose", default_fabric(), Length::mm(20'000)};
  roll.fabric.railroaded = true;
  roll.fabric.repeat = {Length::mm(640), Length::mm(700), Length::mm(100), Length::mm(15), true};
  roll.fabric.shrinkage = {300, 125};
  // In the order in which they begin; the second one over the whole width.
  roll.flaws = {{{Length::mm(1000), Length::mm(1020)}, {Length(), Length::mm(1400)}, ""},
                {{Length::mm(3200), Length::mm(3260)}, {Length::mm(400), Length::mm(550)}, "stain"}};
  EXPECT_EQ(read->rolls[0], roll);
  EXPECT_EQ(read->rolls[1], (Roll{"Plain", default_fabric(), Length::mm(20'000)}));
  EXPECT_EQ(read->panels[0].at_most, 24);
  EXPECT_EQ(read->panels[0].grain, Grain::warp);
  EXPECT_EQ(read->panels[0].match, Match::centred);
}

TEST(ReadJob, TakesARollThatIsMeasured) {
  const Result<Job> read = read_job(R"({
    "foldyard_job": 2,
    "rolls": [{"name": "By diameters",
               "measured": {"by": "diameters", "outer": "22 cm", "outer_give": "5 mm",
                            "tube": "5 cm", "tube_give": "1 mm",
                            "thickness": "1 mm", "thickness_give": "0.1 mm"}},
              {"name": "By turns", "cut_since": "4 m",
               "measured": {"by": "turns", "turns": 85, "turns_give": 1, "outer": "22 cm",
                            "outer_give": "5 mm", "tube": "5 cm", "tube_give": "1 mm"}},
              {"name": "By weight", "length": "36.2 m",
               "measured": {"by": "weight", "roll": 19000, "roll_give": 50, "tube": 1000,
                            "tube_give": 0, "per_square_metre": 350.5,
                            "per_square_metre_give": 10}}],
    "panels": [{"name": "Seat", "across": "45 cm", "along": "50 cm"}]})");
  ASSERT_TRUE(read) << read.problem().sentence();
  const MeasuredLength outer{Length::mm(220), Length::mm(5)};
  const MeasuredLength tube{Length::mm(50), Length::mm(1)};
  const RollMeasure diameters = ByDiameters{outer, tube, {Length::mm(1), Length::units(32)}};
  const RollMeasure turns = ByTurns{{85, 1}, outer, tube};
  EXPECT_EQ(read->rolls[0].measured, diameters);
  // π (21.5² − 5.1²) / (4 × 0.11) cm are 31.1 m and some.
  EXPECT_NEAR(read->rolls[0].length.in_mm(), 31'148, 1);
  EXPECT_EQ(read->rolls[1].measured, turns);
  // 84 turns of π × (21.5 + 4.9) / 2 cm.
  EXPECT_EQ(read->rolls[1].cut_since, Length::mm(4'000));
  EXPECT_NEAR(read->rolls[1].length.in_mm(), 34'834 - 4'000, 1);
  EXPECT_FALSE(read->rolls[0].is_found || read->rolls[1].is_found);
  EXPECT_EQ(read->rolls[2].measured, RollMeasure(ByWeight{{19'000, 50}, {1'000, 0}, {3'505, 100}}));
  EXPECT_EQ(read->rolls[2].length, Length::mm(36'200));
  EXPECT_TRUE(read->rolls[2].is_found);
}

// The file, with `from` (which must be in it) replaced by `to`, is refused
// with a sentence that starts with `where` and holds `what`.
struct BadRow {
  const char* name;
  const char* from;
  const char* to;
  const char* where;
  const char* what;
};

class BadFile : public testing::TestWithParam<BadRow> {};

TEST_P(BadFile, IsRefusedByTheFieldAndSaysWhatToDo) {
  const BadRow& row = GetParam();
  QByteArray text = kSmall;
  ASSERT_TRUE(text.contains(row.from));
  text.replace(row.from, row.to);
  const Result<Job> job = read_job(text);
  ASSERT_FALSE(job);
  EXPECT_EQ(job.problem().where, row.where) << job.problem().sentence();
  EXPECT_NE(job.problem().what.find(row.what), std::string::npos) << job.problem().sentence();
  EXPECT_FALSE(job.problem().next.empty());
}

const BadRow kBadRows[] = {
    {"no_version", "\"foldyard_job\": 2,", "", "foldyard_job", "missing"},
    {"newer_version", "job\": 2", "job\": 3", "foldyard_job", "version 3"},
    {"version_zero", "job\": 2", "job\": 0", "foldyard_job", "no version 0"},
    {"version_as_word", "job\": 2", "job\": \"new\"", "foldyard_job", "not a whole number"},
    {"unknown_on_top", "\"rolls\"", "\"colour\": 1, \"rolls\"", "colour", "no such field"},
    {"unknown_in_roll", "\"length\"", "\"lenght\": 1, \"length\"", "rolls[0].lenght", "no such"},
    {"unknown_in_panel", "\"along\"", "\"count\": 1, \"along\"", "panels[0].count", "no such"},
    {"no_rolls", "\"rolls\"", "\"table\": {}, \"rolled\"", "rolled", "no such field"},
    {"rolls_not_a_list", "[{\"name\": \"Oak\", \"length\": \"20 m\"}]", "7", "rolls", "a number"},
    {"roll_not_an_object", "{\"name\": \"Oak\", \"length\": \"20 m\"}", "7", "rolls[0]", "group"},
    {"rolls_empty", "{\"name\": \"Oak\", \"length\": \"20 m\"}", "", "rolls", "empty"},
    {"no_roll_name", "\"name\": \"Oak\", ", "", "rolls[0].name", "missing"},
    {"no_roll_length", ", \"length\": \"20 m\"", "", "rolls[0].length", "missing"},
    {"no_panel_across", "\"across\": \"45 cm\", ", "", "panels[0].across", "missing"},
    {"length_as_number", "\"20 m\"", "20", "rolls[0].length", "a number is not a length"},
    {"length_as_null", "\"20 m\"", "null", "rolls[0].length", "null"},
    {"length_without_unit", "\"20 m\"", "\"20\"", "rolls[0].length", ""},
    {"length_nan", "\"20 m\"", "\"nan m\"", "rolls[0].length", ""},
    {"length_negative", "\"20 m\"", "\"-20 m\"", "rolls[0].length", ""},
    {"length_zero", "\"20 m\"", "\"0 m\"", "rolls[0].length", "too small"},
    {"length_huge", "\"20 m\"", "\"2000 m\"", "rolls[0].length", ""},
    {"length_overflow", "\"20 m\"", "\"99999999999999999999 m\"", "rolls[0].length", ""},
    {"length_not_exact", "\"45 cm\"", "\"0.33333 cm\"", "panels[0].across", ""},
    {"name_as_number", "\"Oak\"", "7", "rolls[0].name", "not a text"},
    {"name_empty", "\"Oak\"", "\"\"", "rolls[0].name", "empty"},
    {"name_blank", "\"Oak\"", "\"  \"", "rolls[0].name", "empty"},
    {"name_with_line_break", "\"Oak\"", "\"O\\nk\"", "rolls[0].name", "line break"},
    {"name_with_nul", "\"Oak\"", "\"O\\u0000k\"", "rolls[0].name", "control"},
    {"flag_as_text", "\"along\"", "\"may_turn\": \"yes\", \"along\"", "panels[0].may_turn",
     "neither true nor false"},
    {"unknown_nap", "\"length\"", "\"nap\": \"both\", \"length\"", "rolls[0].nap", "\"both\""},
    {"unknown_unit", "\"rolls\"", "\"unit\": \"ell\", \"rolls\"", "unit", "\"ell\""},
    {"bad_colour", "\"length\"", "\"colour\": \"red\", \"length\"", "rolls[0].colour", "\"red\""},
    {"worth_negative", "\"along\"", "\"worth\": -1, \"along\"", "panels[0].worth", "-1 is not"},
    {"worth_zero", "\"along\"", "\"worth\": 0, \"along\"", "panels[0].worth", "too small"},
    {"worth_too_fine", "\"along\"", "\"worth\": 0.00001, \"along\"", "panels[0].worth", "decimals"},
    {"worth_huge", "\"along\"", "\"worth\": 1e300, \"along\"", "panels[0].worth", "not a number"},
    {"worth_with_comma", "\"along\"", "\"worth\": \"7,5\", \"along\"", "panels[0].worth", "7,5"},
    {"table_not_an_object", "\"rolls\"", "\"table\": [], \"rolls\"", "table", "a list"},
    {"unknown_in_table", "\"rolls\"", "\"table\": {\"width\": 1}, \"rolls\"", "table.width", "no"},
    {"plies_not_whole", "\"rolls\"", "\"cutter\": {\"most_plies\": 2.5}, \"rolls\"",
     "cutter.most_plies", "whole number"},
    {"pace_negative", "\"rolls\"", "\"pace\": {\"fold\": -3}, \"rolls\"", "pace.fold", "-3"},
    {"selvedges_take_all", "\"length\"", "\"selvedge\": \"70 cm\", \"length\"",
     "rolls[0].selvedge", "whole width"},
    {"thicker_than_the_cutter", "\"length\"", "\"thickness\": \"26 mm\", \"length\"",
     "rolls[0].thickness", "cutter's height"},
    {"squaring_takes_all", "\"20 m\"", "\"20 cm\"", "rolls[0].length", "whole 20 cm"},
    {"wider_than_the_cloth", "\"45 cm\"", "\"138 cm\"", "panels[0]", "usable cloth of no roll"},
    {"longer_than_the_cloth", "\"50 cm\"", "\"20 m\"", "panels[0]", "usable cloth of no roll"},
    {"of_version_1", "job\": 2,", "job\": 1, \"panel\": 1,", "panel", "no such field"},
    {"newer_field_in_version_1", "job\": 2,\n  \"rolls\": [{", "job\": 1,\n  \"rolls\": [{\"flaws\": [], ",
     "rolls[0].flaws", "version 1"},
    {"railroaded_as_text", "\"length\"", "\"railroaded\": \"yes\", \"length\"",
     "rolls[0].railroaded", "neither true nor false"},
    {"repeat_as_length", "\"length\"", "\"repeat\": \"64 cm\", \"length\"", "rolls[0].repeat",
     "not a group"},
    {"repeat_unknown", "\"length\"", "\"repeat\": {\"down\": \"1 cm\"}, \"length\"",
     "rolls[0].repeat.down", "no such"},
    {"repeat_started_late", "\"length\"",
     "\"repeat\": {\"along\": \"64 cm\", \"start_along\": \"64 cm\"}, \"length\"",
     "rolls[0].repeat.start_along", "begins before 64 cm"},
    {"shrinkage_unknown", "\"length\"", "\"shrinkage\": {\"along\": 3}, \"length\"",
     "rolls[0].shrinkage.along", "no such"},
    {"shrinkage_too_fine", "\"length\"",
     "\"shrinkage\": {\"along_percent\": 3.125}, \"length\"",
     "rolls[0].shrinkage.along_percent", "at most 2 decimals"},
    {"shrinkage_whole", "\"length\"", "\"shrinkage\": {\"across_percent\": 100}, \"length\"",
     "rolls[0].shrinkage.across_percent", "100 is too large"},
    {"flaws_not_a_list", "\"length\"", "\"flaws\": {}, \"length\"", "rolls[0].flaws",
     "not a list"},
    {"flaw_as_length", "\"length\"", "\"flaws\": [\"3 m\"], \"length\"", "rolls[0].flaws[0]",
     "not a group"},
    {"flaw_without_from", "\"length\"", "\"flaws\": [{\"to\": \"3 m\"}], \"length\"",
     "rolls[0].flaws[0].from", "missing"},
    {"flaw_without_to", "\"length\"", "\"flaws\": [{\"from\": \"3 m\"}], \"length\"",
     "rolls[0].flaws[0].to", "missing"},
    {"flaw_unknown", "\"length\"", "\"flaws\": [{\"at\": \"3 m\"}], \"length\"",
     "rolls[0].flaws[0].at", "no such"},
    {"flaw_named_as_in_the_file", "\"length\"",
     "\"flaws\": [{\"from\": \"3 m\", \"to\": \"3.1 m\"},"
     " {\"from\": \"1 m\", \"to\": \"1 m\"}], \"length\"",
     "rolls[0].flaws[1].to", "empty"},
    {"measured_as_length", "\"length\"", "\"measured\": \"3 m\", \"length\"",
     "rolls[0].measured", "not a group"},
    {"cut_since_nothing_was_measured", "\"length\"", "\"cut_since\": \"3 m\", \"length\"",
     "rolls[0].cut_since", "nothing was measured"},
    {"measured_by_nothing", "\"length\"", "\"measured\": {}, \"length\"",
     "rolls[0].measured.by", "missing"},
    {"measured_by_eye", "\"length\"", "\"measured\": {\"by\": \"eye\"}, \"length\"",
     "rolls[0].measured.by", "\"eye\""},
    {"measured_without_a_figure", "\"length\"",
     "\"measured\": {\"by\": \"turns\"}, \"length\"", "rolls[0].measured.turns", "missing"},
    {"measured_without_a_give", "\"length\"",
     "\"measured\": {\"by\": \"weight\", \"roll\": 1800}, \"length\"",
     "rolls[0].measured.roll_give", "missing"},
    {"measured_otherwise", "\"length\"",
     "\"measured\": {\"by\": \"weight\", \"turns\": 18}, \"length\"",
     "rolls[0].measured.turns", "no such"},
    {"measured_on_no_width", "\"length\": \"20 m\"",
     "\"width\": \"0 cm\", \"measured\": {\"by\": \"weight\", \"roll\": 1800, \"roll_give\": 0,"
     " \"tube\": 0, \"tube_give\": 0, \"per_square_metre\": 300, \"per_square_metre_give\": 0}",
     "rolls[0].width", "too small"},
    {"no_length_and_nothing_measured", ", \"length\": \"20 m\"", "", "rolls[0].length",
     "missing"},
    {"at_most_zero", "\"along\"", "\"at_most\": 0, \"along\"", "panels[0].at_most",
     "too small"},
    {"at_most_not_whole", "\"along\"", "\"at_most\": 2.5, \"along\"", "panels[0].at_most",
     "whole number"},
    {"at_most_huge", "\"along\"", "\"at_most\": 1000001, \"along\"", "panels[0].at_most",
     "too large"},
    {"unknown_grain", "\"along\"", "\"grain\": \"weft\", \"along\"", "panels[0].grain",
     "\"weft\""},
    {"unknown_match", "\"along\"", "\"match\": true, \"along\"", "panels[0].match",
     "true or false"},
    {"half_a_file", "]\n}", "]\n", "line 5, column 1", "a } is missing"},
};

INSTANTIATE_TEST_SUITE_P(Rows, BadFile, testing::ValuesIn(kBadRows),
                         [](const auto& row) { return std::string(row.param.name); });

TEST(ReadJob, RefusesAMixOfPanelsWithAndWithoutWorth) {
  const Result<Job> job = read_job(R"({"foldyard_job": 2,
    "rolls": [{"name": "Oak", "length": "20 m"}],
    "panels": [{"name": "A", "across": "45 cm", "along": "50 cm", "worth": 3},
               {"name": "B", "across": "45 cm", "along": "50 cm"}]})");
  ASSERT_FALSE(job);
  EXPECT_EQ(job.problem().where, "panels[1].worth");
}

// 97 cm at 3 % are cut 100 cm, and 102 cm less two selvedges are 99.8 cm.
TEST(ReadJob, NamesTheCutSizeOfAPanelThatShrinkageKeepsOff) {
  const Result<Job> job = read_job(R"({"foldyard_job": 2,
    "rolls": [{"name": "Oak", "length": "20 m", "width": "102 cm", "selvedge": "1.1 cm",
               "shrinkage": {"across_percent": 3}}],
    "panels": [{"name": "A", "across": "97 cm", "along": "50 cm"}]})");
  ASSERT_FALSE(job);
  EXPECT_EQ(job.problem().sentence(),
            "panels[0]: 97 cm × 50 cm, cut 100 cm × 50 cm on roll \"Oak\" for its shrinkage, fits "
            "the usable cloth of no roll in any way it may lie; give a smaller panel, a larger "
            "roll, or may_turn.");
}

TEST(ReadJob, RefusesTheSameNameTwice) {
  const Result<Job> job = read_job(R"({"foldyard_job": 2,
    "rolls": [{"name": "Oak", "length": "20 m"}, {"name": "Oak", "length": "9 m"}],
    "panels": [{"name": "A", "across": "45 cm", "along": "50 cm"}]})");
  ASSERT_FALSE(job);
  EXPECT_EQ(job.problem().sentence(),
            "rolls[1].name: the name \"Oak\" stands twice; give each its own.");
}

// The small job, filled with spaces up to a size.
QByteArray padded(qint64 size) {
  const QByteArray job = kSmall;
  return job + QByteArray(size - job.size(), ' ');
}

TEST(ReadJob, HoldsTheSizeOfAFileOnBothSides) {
  EXPECT_TRUE(read_job(padded(kLargestJobFile)));
  const Result<Job> over = read_job(padded(kLargestJobFile + 1));
  ASSERT_FALSE(over);
  EXPECT_NE(over.problem().what.find("4 MiB"), std::string::npos);
}

// A job with every kind of field that is written for some cloth only.
const char* const kRich = R"({"foldyard_job": 2,
  "rolls": [{"name": "O", "measured": {"by": "weight", "roll": 19000, "roll_give": 50, "tube": 10,
             "tube_give": 0, "per_square_metre": 350.5, "per_square_metre_give": 10},
             "repeat": {"along": "64 cm"}, "shrinkage": {"along_percent": 3},
             "flaws": [{"from": "3 m", "to": "4 m"}, {"from": "1 m", "to": "2 m"}]}],
  "panels": [{"name": "S", "across": "4 cm", "along": "5 cm", "at_most": 9, "match": "start"}]})";

class ChangedBytes : public testing::TestWithParam<const char*> {};

INSTANTIATE_TEST_SUITE_P(Files, ChangedBytes, testing::Values(kSmall, kRich));

TEST_P(ChangedBytes, AreReadOrRefused) {
  const QByteArray whole = GetParam();
  // Every byte of the job in turn set to each of a few telling bytes:
  // refused or read, and what is read can be written and read again.
  for (qsizetype i = 0; i < whole.size(); ++i) {
    for (char byte : {'\0', '"', '{', '}', '9', '-', '\\', '\xC3'}) {
      QByteArray text = whole;
      text[i] = byte;
      const Result<Job> job = read_job(text);
      if (!job) continue;
      const Result<Job> again = read_job(write_job(*job));
      ASSERT_TRUE(again) << again.problem().sentence();
      EXPECT_EQ(*again, *job);
    }
  }
}

class LoadJob : public testing::Test {
 protected:
  QString path(const char* name) const { return folder_.filePath(QLatin1String(name)); }
  void put(const char* name, const QByteArray& bytes) const {
    QFile file(path(name));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
  }
  std::string refusal(const char* name) const {
    const Result<Job> job = load_job(path(name));
    return job ? "" : job.problem().what;
  }
  QTemporaryDir folder_;
};

TEST_F(LoadJob, ReadsAFile) {
  put("job.json", kSmall);
  EXPECT_TRUE(load_job(path("job.json")));
}

TEST_F(LoadJob, RefusesWhatIsNoFile) {
  EXPECT_EQ(refusal("none.json"), "there is no such file");
  ASSERT_TRUE(QDir(folder_.path()).mkdir("folder"));
  EXPECT_EQ(refusal("folder"), "this is not a file");
  ASSERT_EQ(mkfifo(path("pipe").toUtf8().constData(), 0600), 0);
  EXPECT_EQ(refusal("pipe"), "this is not a file");
}

TEST_F(LoadJob, HoldsTheSizeOnBothSides) {
  put("large.json", padded(kLargestJobFile));
  EXPECT_TRUE(load_job(path("large.json")));
  put("over.json", padded(kLargestJobFile + 1));
  EXPECT_EQ(refusal("over.json"), "the file is larger than 4 MiB");
}

}  // namespace
}  // namespace foldyard
