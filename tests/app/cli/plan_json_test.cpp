#include "cli/plan_json.h"

#include <gtest/gtest.h>

#include <QJsonArray>
#include <QJsonDocument>

#include "job/defaults.h"

namespace foldyard {
namespace {

Job oak_square() {
  Job job = default_job();
  job.rolls = {{"Oak", default_fabric(), Length::mm(3000)}};
  job.panels = {{"Square", Length::mm(450), Length::mm(500), true, true, Worth::whole(2)}};
  return job;
}

TEST(PlanJson, KeepsLengthsExactAndWorthsSigned) {
  Plan plan;
  plan.travel = Length::units(1);  // 1/320 mm
  plan.net = Worth::parts(-12'500);
  plan.time = Duration::ms(90'500);
  plan.yield = {4};
  const QJsonObject json = plan_json(oak_square(), plan)["plan"].toObject();
  EXPECT_EQ(json["travel"].toString(), QStringLiteral("0.003125 mm"));
  EXPECT_EQ(json["net"].toString(), QStringLiteral("-1.25"));
  EXPECT_EQ(json["seconds"].toDouble(), 90.5);
  const QJsonObject yield = json["yield"].toArray()[0].toObject();
  EXPECT_EQ(yield["panel"].toString(), QStringLiteral("Square"));
  EXPECT_EQ(yield["count"].toInt(), 4);
}

TEST(PlanJson, NamesFlawsLostPanelsAndWhatIsCutOut) {
  Job job = oak_square();
  job.rolls[0].flaws = {{{Length::mm(10), Length::mm(20)}, {Length::mm(30), Length::mm(40)}, "knot"}};
  Plan plan;
  plan.patterns.resize(1);
  plan.patterns[0].panels.resize(2);
  plan.lays = {{0, 1}};
  plan.lengths = {{0, {}}};
  plan.lost = {{0, 1, 0}};
  plan.cut_out = {{Length(), Length::mm(5)}};
  const QJsonObject json = plan_json(job, plan)["plan"].toObject();
  EXPECT_EQ(json["flaws"].toArray()[0].toObject()["kind"].toString(), QStringLiteral("knot"));
  const QJsonObject lost = json["lost"].toArray()[0].toObject();
  EXPECT_EQ(lost["panel"].toString(), QStringLiteral("Square"));
  EXPECT_EQ(lost["placed"].toInt(), 1);
  EXPECT_EQ(json["cut_out"].toArray()[0].toObject()["to"].toString(), QStringLiteral("0.5 cm"));
  EXPECT_FALSE(plan_json(oak_square(), plan)["plan"].toObject().contains("flaws"));
}

TEST(PlanJson, HoldsThePatternWithItsFoldAndPanels) {
  Plan plan;
  Pattern pattern;
  pattern.fold.lines = {Length::mm(700)};
  pattern.fold.levels = {1, 0};
  const Rect place{{Length::mm(15), Length::mm(465)}, {Length(), Length::mm(500)}};
  pattern.panels = {{0, true, false, place, place}};
  plan.patterns = {pattern};
  const QJsonObject json =
      plan_json(oak_square(), plan)["plan"].toObject()["patterns"].toArray()[0].toObject();
  EXPECT_EQ(json["fold_lines"].toArray(), QJsonArray{"70 cm"});
  EXPECT_EQ(json["levels"].toArray(), (QJsonArray{1, 0}));
  const QJsonObject placed = json["panels"].toArray()[0].toObject();
  EXPECT_TRUE(placed["turned"].toBool());
  EXPECT_EQ(placed["flat"].toObject()["across"].toObject()["to"].toString(),
            QStringLiteral("46.5 cm"));
}

TEST(ComparisonJson, GivesReasonsRankingAndWhatAWayGivesUp) {
  Comparison comparison;
  Plan better, worse;
  better.worth = Worth::whole(5);
  worse.worth = Worth::whole(3);
  const FoldWay thirds{FoldKind::fan, 3, false, false};
  const FoldWay quarters{FoldKind::quarters, 4, false, true};
  comparison.ways = {{FoldWay{}, worse, ""}, {thirds, better, ""}, {quarters, {}, "too thick"}};
  comparison.ranking = {1, 0};
  comparison.frontier = {1};
  const QJsonObject json = comparison_json(oak_square(), comparison);
  const QJsonArray ways = json["ways"].toArray();
  EXPECT_EQ(ways[0].toObject()["gives_up"].toString(), QStringLiteral("2"));
  EXPECT_EQ(ways[2].toObject()["refused"].toString(), QStringLiteral("too thick"));
  EXPECT_EQ(json["ranking"].toArray()[1].toString(), QStringLiteral("open"));
  EXPECT_EQ(json["frontier"].toArray().size(), 1);
}

TEST(AnswerText, IsOneObjectThatNamesVersionVerbAndAim) {
  const QString text = answer_text(QStringLiteral("plan"), Aim::worth_less_time,
                                   {refused_json(oak_square(), 0, QStringLiteral("too short"))});
  const QJsonObject json = QJsonDocument::fromJson(text.toUtf8()).object();
  EXPECT_EQ(json["foldyard_answer"].toInt(), kAnswerVersion);
  EXPECT_EQ(json["verb"].toString(), QStringLiteral("plan"));
  EXPECT_EQ(json["aim"].toString(), QStringLiteral("worth-less-time"));
  EXPECT_EQ(json["rolls"].toArray()[0].toObject()["refused"].toString(),
            QStringLiteral("too short"));
}

TEST(PlanJson, ListsThePliesWithFaceAndNap) {
  Job job = oak_square();
  job.rolls[0].fabric.nap = Nap::one_way;
  Plan plan;
  Pattern pattern;
  pattern.length = Length::mm(500);
  pattern.fold.lines = {Length::mm(700)};
  pattern.fold.levels = {1, 0};
  plan.patterns = {pattern};
  const QJsonArray stack = plan_json(job, plan)["plan"]
                               .toObject()["patterns"]
                               .toArray()[0]
                               .toObject()["stack"]
                               .toArray();
  ASSERT_EQ(stack.size(), 2);
  EXPECT_EQ(stack[0].toObject()["face"].toString(), QStringLiteral("up"));
  EXPECT_EQ(stack[1].toObject()["face"].toString(), QStringLiteral("down"));
  EXPECT_EQ(stack[1].toObject()["nap"].toString(), QStringLiteral("away"));
}

TEST(PlanJson, GivesRepeatPhaseAndWhatMatchingCosts) {
  Job job = oak_square();
  job.losses.allowance = Length::mm(40);
  job.rolls[0].fabric.repeat = {Length::mm(640), {}, Length::mm(100), {}, false};
  Plan plan;
  Pattern pattern;
  pattern.length = Length::mm(500);
  plan.patterns = {pattern};
  plan.lays = {{0, 1}};
  plan.lengths = {{0, {Length::mm(87), Length::mm(627)}}};  // its pattern begins at 107
  plan.cut_out = {{Length::mm(20), Length::mm(87)}};
  plan.unmatched = Unmatched{Worth::whole(7), {}};
  const QJsonObject json = plan_json(job, plan)["plan"].toObject();
  EXPECT_EQ(json["repeat"].toObject()["along"].toString(), QStringLiteral("64 cm"));
  EXPECT_EQ(json["lengths"].toArray()[0].toObject()["phase"].toString(), QStringLiteral("0.7 cm"));
  EXPECT_EQ(json["cut_out"].toArray()[0].toObject()["to"].toString(), QStringLiteral("8.7 cm"));
  EXPECT_EQ(json["where_nothing_need_match"].toObject()["worth"].toString(), QStringLiteral("7"));
}

}  // namespace
}  // namespace foldyard
