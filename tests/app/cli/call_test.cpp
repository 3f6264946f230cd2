#include "cli/call.h"

#include <gtest/gtest.h>

namespace foldyard {
namespace {

QStringList words(const char* line) {
  return QString::fromUtf8(line).split(u' ', Qt::SkipEmptyParts);
}

Call call_of(const char* line) {
  const Result<Call> call = read_call(words(line));
  EXPECT_TRUE(call) << line;
  return call ? *call : Call();
}

TEST(ReadCall, TakesVerbsAndOptionsInAnyOrder) {
  const Call call = call_of("draw --paper=letter job.json --to out/x.SVG --roll Oak --way thirds-plain");
  EXPECT_EQ(call.verb, Verb::draw);
  EXPECT_EQ(call.job, QStringLiteral("job.json"));
  EXPECT_EQ(call.to, QStringLiteral("out/x.SVG"));
  EXPECT_EQ(call.format, Format::svg);
  EXPECT_EQ(call.paper, Paper::letter);
  EXPECT_EQ(call.roll, QStringLiteral("Oak"));
  EXPECT_EQ(way_key(*call.way), "thirds-plain");
  EXPECT_EQ(call.aim, Aim::most_worth);
}

TEST(ReadCall, TakesTheAimAndJson) {
  const Call call = call_of("plan job.json --aim worth-less-time --json");
  EXPECT_EQ(call.verb, Verb::plan);
  EXPECT_EQ(call.aim, Aim::worth_less_time);
  EXPECT_TRUE(call.json);
  EXPECT_FALSE(call.way);
}

TEST(ReadCall, DrawsTheWholeDiagramWhereNothingElseIsAskedFor) {
  const Call call = call_of("draw job.json --to x.pdf");
  EXPECT_EQ(call.paper, Paper::a4);
  EXPECT_FALSE(call.landscape);
  EXPECT_TRUE(call.comparison);
  EXPECT_FALSE(call.templates);
  EXPECT_FALSE(call.words_in);
  EXPECT_TRUE(call.patterns.isEmpty());
  EXPECT_EQ(call.pages, PageRange());
}

TEST(ReadCall, TakesWhatStandsOnTheSheet) {
  const Call call = call_of(
      "draw job.json --to x.pdf --paper tabloid --landscape --no-comparison --patterns A,C "
      "--unit in --pages 2-4");
  EXPECT_EQ(call.paper, Paper::tabloid);
  EXPECT_TRUE(call.landscape);
  EXPECT_FALSE(call.comparison);
  EXPECT_EQ(call.patterns, (QStringList{"A", "C"}));
  EXPECT_EQ(call.words_in, Unit::inch);
  EXPECT_EQ(call.pages, (PageRange{1, 3}));
  EXPECT_EQ(call_of("draw job.json --to x.pdf --pages 3").pages, (PageRange{2, 2}));
  EXPECT_EQ(call_of("draw job.json --to x.pdf --pages 3-").pages.first, 2);
  EXPECT_GT(call_of("draw job.json --to x.pdf --pages 3-").pages.last, 1'000'000);
  EXPECT_EQ(call_of("draw job.json --to x.pdf --templates --panel Cover").panel, QStringLiteral("Cover"));
}

TEST(ReadCall, TakesAJobThatLooksLikeAnOption) {
  EXPECT_EQ(call_of("check -- --odd.json").job, QStringLiteral("--odd.json"));
}

TEST(ReadCall, TakesHelpAndVersion) {
  EXPECT_EQ(call_of("--help").verb, Verb::help);
  EXPECT_EQ(call_of("plan --help").verb, Verb::help);
  EXPECT_EQ(call_of("--version").verb, Verb::version);
}

struct Row {
  const char* name;
  const char* line;
  const char* what;
};

class WrongCall : public testing::TestWithParam<Row> {};

TEST_P(WrongCall, IsRefusedWithWhatToDo) {
  const Result<Call> call = read_call(words(GetParam().line));
  ASSERT_FALSE(call);
  EXPECT_NE(call.problem().what.find(GetParam().what), std::string::npos)
      << call.problem().sentence();
  EXPECT_FALSE(call.problem().next.empty());
}

const Row kRows[] = {
    {"nothing", "", "nothing was asked"},
    {"unknown_verb", "snip job.json", "no verb \"snip\""},
    {"no_job", "plan", "no job file"},
    {"two_jobs", "plan a.json b.json", "a.json, b.json"},
    {"unknown_option", "plan a.json --fast", "no option --fast"},
    {"option_of_another_verb", "draw a.json --to x.pdf --json", "draw knows no option --json"},
    {"option_for_check", "check a.json --json", "check knows no option"},
    {"twice", "plan a.json --roll A --roll B", "--roll stands twice"},
    {"no_value", "plan a.json --roll", "--roll has no value"},
    {"needless_value", "plan a.json --json=1", "takes no value"},
    {"unknown_aim", "plan a.json --aim most", "\"most\""},
    {"unknown_way", "plan a.json --way sideways", "\"sideways\""},
    {"unknown_paper", "draw a.json --to x.pdf --paper a9", "\"a9\""},
    {"panel_without_templates", "draw a.json --to x.pdf --panel Cover", "--panel names a template"},
    {"patterns_with_templates", "draw a.json --to x.pdf --templates --patterns A", "no patterns"},
    {"pages_in_words", "draw a.json --to x.pdf --pages all", "\"all\""},
    {"pages_backwards", "draw a.json --to x.pdf --pages 4-2", "\"4-2\""},
    {"page_nought", "draw a.json --to x.pdf --pages 0", "\"0\""},
    {"three_pages", "draw a.json --to x.pdf --pages 1-2-3", "\"1-2-3\""},
    {"valued_flag", "draw a.json --to x.pdf --landscape=yes", "takes no value"},
    {"unknown_unit", "draw a.json --to x.pdf --unit ell", "\"ell\""},
    {"no_target", "draw a.json", "where to write"},
    {"unknown_ending", "draw a.json --to x.jpg", "\"x.jpg\""},
    {"no_ending", "draw a.json --to pdf", "\"pdf\""},
};

INSTANTIATE_TEST_SUITE_P(Rows, WrongCall, testing::ValuesIn(kRows),
                         [](const auto& row) { return std::string(row.param.name); });

}  // namespace
}  // namespace foldyard
