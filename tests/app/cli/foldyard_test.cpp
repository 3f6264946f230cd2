// The program as it is called: the real executable on copies of cases.

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTemporaryDir>

#include "program.h"

namespace foldyard {
namespace {

using test::Reply;

class Foldyard : public testing::Test {
 protected:
  void copy_case(const char* name) {
    ASSERT_TRUE(QFile::copy(QStringLiteral(FOLDYARD_SOURCE_DIR "/tests/cases/%1/job.json")
                                .arg(QLatin1String(name)),
                            path("job.json")));
  }
  QString path(const char* name) const { return folder_.filePath(QLatin1String(name)); }
  QStringList names() const {
    return QDir(folder_.path()).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot);
  }
  QByteArray bytes_of(const char* name) const {
    QFile file(path(name));
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
  }
  void change(const QByteArray& from, const QByteArray& to) const {
    QByteArray text = bytes_of("job.json");
    ASSERT_TRUE(text.contains(from));
    QFile file(path("job.json"));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(text.replace(from, to));
  }

  Reply run(const QStringList& words, const char* locale = "C.UTF-8", const QString& output = {}) const {
    return test::run_foldyard(words, folder_.path(), locale, output);
  }

  QTemporaryDir folder_;
};

TEST_F(Foldyard, HelpsAndSaysItsVersion) {
  const Reply help = run({"--help"});
  EXPECT_EQ(help.code, 0);
  EXPECT_TRUE(help.says("foldyard compare JOB"));
  const Reply version = run({"--version"});
  EXPECT_EQ(version.code, 0);
  EXPECT_TRUE(version.out.startsWith("foldyard "));
}

TEST_F(Foldyard, RefusesACallItDoesNotKnow) {
  const Reply wrong = run({"snip", "job.json"});
  EXPECT_EQ(wrong.code, 2);
  EXPECT_TRUE(wrong.complains("foldyard: there is no verb \"snip\"; use one of plan"));
  EXPECT_TRUE(wrong.out.isEmpty());
}

// tests/cases/yard-folded: one panel on the fold and two through both plies.
TEST_F(Foldyard, PlansAYardFoldedSelvedgeToSelvedge) {
  copy_case("yard-folded");
  const Reply plan = run({"plan", "job.json", "--way", "selvedge-to-selvedge"});
  EXPECT_EQ(plan.code, 0) << plan.err.toStdString();
  EXPECT_TRUE(plan.says("3 × Carrier. Fold selvedge to selvedge")) << plan.out.toStdString();
  EXPECT_TRUE(plan.says("3 × Carrier, 18 × 36 in, 1 on the fold"));
  EXPECT_TRUE(plan.says("Proved."));
  EXPECT_TRUE(plan.says("fold line 1: 30 in from either edge"));
  EXPECT_TRUE(plan.says("Guard down"));
  EXPECT_TRUE(plan.err.isEmpty()) << plan.err.toStdString();
}

QJsonObject only_roll(const QByteArray& out) {
  const QJsonArray rolls = QJsonDocument::fromJson(out).object()["rolls"].toArray();
  EXPECT_EQ(rolls.size(), 1);
  return rolls[0].toObject();
}

TEST_F(Foldyard, GivesThePlanAsJson) {
  copy_case("yard-folded");
  const Reply run_json = run({"plan", "job.json", "--way", "selvedge-to-selvedge", "--json"});
  const QJsonObject plan = only_roll(run_json.out)["plan"].toObject();
  EXPECT_EQ(plan["worth"].toString(), QStringLiteral("3"));
  EXPECT_EQ(plan["cuts"].toInt(), 2);
  EXPECT_TRUE(plan["proof"].toObject()["proved"].toBool());
  const QJsonObject pattern = plan["patterns"].toArray()[0].toObject();
  EXPECT_EQ(pattern["fold_lines"].toArray(), QJsonArray{"30 in"});
  EXPECT_EQ(pattern["panels"].toArray().size(), 3);
  // 60 × 36 in = 1.524 × 0.9144 m = 1.3935456 m².
  EXPECT_NEAR(plan["cloth_square_metres"].toDouble(), 1.3935456, 1e-9);
}

// tests/cases/pouches: 24 pouches, two lengths, worth 48.
TEST_F(Foldyard, PlansByTheBestWay) {
  copy_case("pouches");
  const Reply plan = run({"plan", "job.json", "--json"});
  ASSERT_EQ(plan.code, 0) << plan.err.toStdString();
  const QJsonObject json = only_roll(plan.out)["plan"].toObject();
  EXPECT_EQ(json["yield"].toArray()[0].toObject()["count"].toInt(), 24);
  EXPECT_EQ(json["worth"].toString(), QStringLiteral("48"));
  EXPECT_TRUE(json["proof"].toObject()["proved"].toBool());
}

TEST_F(Foldyard, ComparesAllWays) {
  copy_case("one-way");
  const Reply compare = run({"compare", "job.json"});
  EXPECT_EQ(compare.code, 0) << compare.err.toStdString();
  EXPECT_TRUE(compare.says("Roll Pile: 400 cm of cloth 140 cm wide."));
  EXPECT_TRUE(compare.says("in thirds, equal legs, end to end"));
  EXPECT_TRUE(compare.says("Not planned, because the cloth is one-way"));
}

TEST_F(Foldyard, ComparesWithReasonsAsJson) {
  copy_case("one-way");
  const Reply compare = run({"compare", "job.json", "--roll", "Pile", "--json"});
  const QJsonObject roll = only_roll(compare.out);
  EXPECT_FALSE(roll["ranking"].toArray().isEmpty());
  for (const QJsonValue& value : roll["ways"].toArray()) {
    const QJsonObject way = value.toObject();
    const bool end_to_end = way["way"].toString().endsWith(QStringLiteral("end-to-end"));
    EXPECT_EQ(end_to_end, way.contains(QStringLiteral("refused"))) << way["way"].toString().toStdString();
  }
}

TEST_F(Foldyard, ListsTheKindsThereAre) {
  const Reply kinds = run({"kinds"});
  EXPECT_EQ(kinds.code, 0) << kinds.err.toStdString();
  EXPECT_TRUE(kinds.says("velvet"));
  EXPECT_TRUE(kinds.says("half-yard-carrier"));
  EXPECT_TRUE(kinds.says("common practice, no source"));
  EXPECT_EQ(run({"kinds", "job.json"}).code, 2);
}

TEST_F(Foldyard, BeginsAJobThatCanBePlanned) {
  const Reply begin = run({"begin", "new.json", "--cloth", "velvet,canvas", "--goods=tote,cushion",
                           "--length", "4 m", "--unit", "in"});
  ASSERT_EQ(begin.code, 0) << begin.err.toStdString();
  EXPECT_TRUE(begin.says("2 rolls and 3 panels"));
  EXPECT_EQ(names(), QStringList{"new.json"});
  EXPECT_TRUE(bytes_of("new.json").contains("\"two-panel-bag\""));
  const Reply plan = run({"plan", "new.json", "--roll", "Canvas", "--way", "open"});
  EXPECT_EQ(plan.code, 0) << plan.err.toStdString();
  EXPECT_TRUE(plan.says("Goods these panels are enough for")) << plan.out.toStdString();
  EXPECT_TRUE(plan.says("× Tote: two-panel bag"));
  const Reply json = run({"plan", "new.json", "--roll", "Canvas", "--way", "open", "--json"});
  const QJsonObject answer = only_roll(json.out)["plan"].toObject();
  EXPECT_EQ(answer["goods"].toArray().size(), 2);
  EXPECT_EQ(answer["lengths_may_lie_in_a_lift"].toInt(), 12);
  EXPECT_TRUE(run({"check", "new.json"}).says("Goods\n    Tote: two-panel bag"));
}

TEST_F(Foldyard, BeginsNothingWhereTheCallIsWrong) {
  copy_case("pouches");
  const QByteArray before = bytes_of("job.json");
  const QStringList good = {"--cloth", "velvet", "--goods", "tote", "--length", "4 m"};
  const Reply there = run(QStringList{"begin", "job.json"} + good);
  EXPECT_EQ(there.code, 2);
  EXPECT_TRUE(there.complains("the file is there already"));
  EXPECT_EQ(bytes_of("job.json"), before);
  const std::pair<int, const char*> spoilt[] = {
      {1, "silk"}, {3, "sack"}, {5, "4"}, {5, "4 cm"}, {3, "tote,"}, {1, ""}};
  for (const auto& [at, value] : spoilt) {
    QStringList bad = good;
    bad[at] = value;
    const Reply begin = run(QStringList{"begin", "x.json"} + bad);
    EXPECT_EQ(begin.code, 2) << value;
    EXPECT_FALSE(begin.err.isEmpty()) << value;
  }
  EXPECT_TRUE(run({"begin", "x.json", "--cloth", "velvet"}).complains("begin needs --goods"));
  EXPECT_EQ(names(), QStringList{"job.json"});
}

TEST_F(Foldyard, EndsWith1WhereNothingCanBePlanned) {
  copy_case("shallow-table");
  for (const char* verb : {"plan", "compare", "check"}) {
    const Reply run_verb = run({verb, "job.json"});
    EXPECT_EQ(run_verb.code, 1) << verb;
    EXPECT_FALSE(run_verb.err.isEmpty()) << verb;
  }
  EXPECT_EQ(run({"draw", "job.json", "--to", "x.pdf"}).code, 1);
  EXPECT_EQ(run({"plan", "job.json", "--way", "open"}).code, 1);
  EXPECT_EQ(names(), QStringList{"job.json"});
}

TEST_F(Foldyard, EndsWith1WhereTheNamedWayCannotBePlanned) {
  copy_case("one-way");
  const Reply plan = run({"plan", "job.json", "--roll", "Pile", "--way", "open+end-to-end"});
  EXPECT_EQ(plan.code, 1);
  EXPECT_TRUE(plan.complains("Roll Pile cannot be planned: open, end to end: the cloth is one-way"));
}

TEST_F(Foldyard, ChecksEveryPlan) {
  copy_case("one-way");
  const Reply check = run({"check", "job.json"});
  EXPECT_EQ(check.code, 0) << check.err.toStdString();
  EXPECT_TRUE(check.says("all were inspected and sound"));
}

TEST_F(Foldyard, ChecksAndSaysWhatIsSpecial) {
  copy_case("one-way");
  const Reply check = run({"check", "job.json"});
  EXPECT_TRUE(check.says("Roll Pile: one-way.\n")) << check.out.toStdString();
}

TEST_F(Foldyard, DrawsInEveryKindOfFile) {
  copy_case("pouches");
  const std::pair<const char*, QByteArray> kinds[] = {
      {"x.pdf", "%PDF-"}, {"x.svg", "<?xml"}, {"x.png", "\x89PNG"}};
  for (const auto& [name, head] : kinds) {
    const Reply draw = run({"draw", "job.json", "--to", name});
    EXPECT_EQ(draw.code, 0) << draw.err.toStdString();
    EXPECT_TRUE(draw.says(name));
    EXPECT_TRUE(bytes_of(name).startsWith(head)) << name;
  }
  EXPECT_EQ(names(), (QStringList{"job.json", "x.pdf", "x.png", "x.svg"}));
}

TEST_F(Foldyard, DrawsOnlyWhatIsAskedFor) {
  copy_case("pouches");
  const Reply all = run({"draw", "job.json", "--to", "all.pdf"});
  EXPECT_TRUE(all.says("on 2 pages")) << all.out.toStdString();
  const Reply one = run({"draw", "job.json", "--to", "one.pdf", "--pages", "2", "--paper", "a3",
                         "--landscape", "--unit", "in"});
  EXPECT_EQ(one.code, 0) << one.err.toStdString();
  EXPECT_TRUE(one.says("on 1 page to one.pdf")) << one.out.toStdString();
  const Reply none = run({"draw", "job.json", "--to", "none.pdf", "--pages", "7"});
  EXPECT_EQ(none.code, 2);
  EXPECT_TRUE(none.complains("the sheet has no page 7; it has 2.")) << none.err.toStdString();
  const Reply wrong = run({"draw", "job.json", "--to", "none.pdf", "--patterns", "Z"});
  EXPECT_EQ(wrong.code, 2);
  EXPECT_TRUE(wrong.complains("the plan has no pattern \"Z\"")) << wrong.err.toStdString();
  EXPECT_EQ(names(), (QStringList{"all.pdf", "job.json", "one.pdf"}));
}

TEST_F(Foldyard, DrawsTemplatesInFullSize) {
  copy_case("yard-folded");  // a panel of 18 × 36 in: 457.2 × 914.4 mm
  const Reply drawn = run({"draw", "job.json", "--to", "t.pdf", "--templates", "--panel", "Carrier"});
  EXPECT_EQ(drawn.code, 0) << drawn.err.toStdString();
  EXPECT_TRUE(drawn.says("Drew templates for roll")) << drawn.out.toStdString();
  EXPECT_TRUE(bytes_of("t.pdf").contains("/PrintScaling /None"));
  const Reply unknown = run({"draw", "job.json", "--to", "u.pdf", "--templates", "--panel", "Sail"});
  EXPECT_EQ(unknown.code, 2);
  EXPECT_TRUE(unknown.complains("the job has no panel \"Sail\""));
  EXPECT_EQ(names(), (QStringList{"job.json", "t.pdf"}));
}

TEST_F(Foldyard, RefusesATemplateOfTooManyPages) {
  copy_case("yard-folded");
  change("\"36 in\"", "\"70 in\"");
  change("\"18 in\"", "\"59 in\"");
  change("\"1 yd\"", "\"3 yd\"");
  const Reply drawn = run({"draw", "job.json", "--to", "t.pdf", "--templates", "--panel", "Carrier"});
  EXPECT_EQ(drawn.code, 2);
  EXPECT_TRUE(drawn.complains("pages of A4, and 60 is the most; take larger paper"))
      << drawn.err.toStdString();
  EXPECT_EQ(names(), (QStringList{"job.json"}));
}

TEST_F(Foldyard, WritesNothingWhereTheTargetIsWrong) {
  copy_case("pouches");
  const Reply draw = run({"draw", "job.json", "--to", "missing/x.pdf"});
  EXPECT_EQ(draw.code, 2);
  EXPECT_TRUE(draw.complains("the folder does not exist"));
  EXPECT_EQ(names(), QStringList{"job.json"});
}

TEST_F(Foldyard, SaysSoWhereTheAnswerFindsNoRoom) {
  copy_case("pouches");
  const Reply full = run({"plan", "job.json"}, "C.UTF-8", QStringLiteral("/dev/full"));
  EXPECT_EQ(full.code, 2);
  EXPECT_TRUE(full.complains("could not be written"));
}

struct Change {
  const char* name;
  const char* from;
  const char* to;
  const char* complaint;
};

class WrongFile : public Foldyard, public testing::WithParamInterface<Change> {};

TEST_P(WrongFile, EndsWith2NamesTheFieldAndWritesNothing) {
  copy_case("pouches");
  change(GetParam().from, GetParam().to);
  for (const QStringList& words :
       {QStringList{"plan", "job.json"}, {"compare", "job.json"}, {"check", "job.json"},
        {"draw", "job.json", "--to", "x.pdf"}}) {
    const Reply wrong = run(words);
    EXPECT_EQ(wrong.code, 2);
    EXPECT_TRUE(wrong.complains(GetParam().complaint)) << wrong.err.toStdString();
    EXPECT_TRUE(wrong.out.isEmpty());
  }
  EXPECT_EQ(names(), QStringList{"job.json"});
}

const Change kChanges[] = {
    {"unknown_field", "\"name\": \"Duck\"", "\"title\": \"Duck\"",
     "foldyard: job.json: rolls[0].title: no such field is known"},
    {"wide_panel", "25 cm", "101 cm", "job.json: panels[0]: 101 cm × 50 cm fits"},
    {"no_unit", "103 cm", "103", "job.json: rolls[0].width: "},
    {"selvedges", "1.5 cm", "52 cm", "job.json: rolls[0].selvedge: "},
    {"newer", "_job\": 1", "_job\": 3", "job.json: foldyard_job: the file has version 3"},
    {"cut_short", "}]", "}", "job.json: line "},
};

INSTANTIATE_TEST_SUITE_P(Rows, WrongFile, testing::ValuesIn(kChanges),
                         [](const auto& row) { return std::string(row.param.name); });

// tests/cases/measured-roll: 50 to 100 cm, strips of 30 cm.
TEST_F(Foldyard, SaysWhatARollOfUnknownLengthGives) {
  copy_case("measured-roll");
  for (const char* verb : {"plan", "compare"}) {
    const Reply words = run({verb, "job.json"});
    EXPECT_EQ(words.code, 0) << words.err.toStdString();
    EXPECT_TRUE(words.says("Its length is estimated: 50 to 100 cm")) << words.out.toStdString();
    EXPECT_TRUE(words.says("1 to 3 × Strip (2 most likely)"));
    EXPECT_TRUE(words.says("from 90 cm"));
    const Reply json = run({verb, "job.json", "--json"});
    const QJsonObject roll =
        QJsonDocument::fromJson(json.out)["rolls"].toArray().first().toObject();
    EXPECT_EQ(roll["estimate"].toObject()["most"], "100 cm");
    EXPECT_EQ(roll["range"].toObject()["steps"].toArray().size(), 3);
  }
  const Reply drawn = run({"draw", "job.json", "--to", "roll.pdf"});
  EXPECT_EQ(drawn.code, 0) << drawn.err.toStdString();
}

TEST_F(Foldyard, NamesAFileThatIsNotThere) {
  const Reply plan = run({"plan", "none.json"});
  EXPECT_EQ(plan.code, 2);
  EXPECT_EQ(plan.err.toStdString(),
            "foldyard: none.json: there is no such file; check its name and folder.\n");
}

TEST_F(Foldyard, SaysTheSameEachTimeAndInEveryLocale) {
  copy_case("one-way");
  const Reply first = run({"plan", "job.json", "--json"});
  EXPECT_EQ(first.out, run({"plan", "job.json", "--json"}).out);
  EXPECT_EQ(first.out, run({"plan", "job.json", "--json"}, "de_DE.UTF-8").out);
}

}  // namespace
}  // namespace foldyard
