#include "file/sewn_fields.h"

#include <gtest/gtest.h>

#include "core/support/any_goods.h"
#include "file/read_job.h"
#include "file/write_job.h"
#include "goods/cut_size.h"
#include "job/defaults.h"
#include "job/start_job.h"

namespace foldyard {
namespace {

QByteArray file_of(const QByteArray& panel, int version = 2) {
  return "{\"foldyard_job\": " + QByteArray::number(version) +
         ", \"rolls\": [{\"name\": \"Oak\", \"length\": \"20 m\"}], \"panels\": [{\"name\": \"Bag\", " +
         panel + "}]}";
}

const QByteArray kTurnings = "\"depth\": \"12 cm\", \"seam\": \"1 cm\", \"hem\": \"3 cm\"";
const QByteArray kBag =
    "\"sewn\": {\"kind\": \"one-piece-bag\", \"width\": \"30 cm\", \"height\": \"35 cm\", " +
    kTurnings + "}";

Panel panel_of(const QByteArray& fields) {
  const Result<Job> job = read_job(file_of(fields));
  EXPECT_TRUE(job) << job.problem().sentence();
  return job ? job->panels.front() : Panel();
}

std::string fault_of_sewn(const QByteArray& fields, int version = 2) {
  const Result<Job> job = read_job(file_of(fields, version));
  return job ? "" : job.problem().sentence();
}

// 30 × 35 × 12 cm, seams 1 cm, hem 3 cm: 30 + 12 + 2 = 44 cm across, 2 × 38 +
// 12 = 88 cm along.
TEST(ReadSewn, GivesThePanelItsCutSize) {
  const Panel panel = panel_of(kBag);
  EXPECT_EQ(panel.across, Length::mm(440));
  EXPECT_EQ(panel.along, Length::mm(880));
  EXPECT_EQ(panel.worth, default_worth(panel.area()));
}

TEST(ReadSewn, GivesTheGoodsTheirFinishedSize) {
  const Panel panel = panel_of("\"across\": \"44 cm\", \"along\": \"88 cm\", \"sewn\": {\"kind\": "
                               "\"one-piece-bag\", " + kTurnings + "}");
  EXPECT_EQ(panel.sewn, panel_of(kBag).sewn);
}

TEST(ReadSewn, TakesBothWhereTheyAgree) {
  EXPECT_EQ(panel_of("\"across\": \"44 cm\", \"along\": \"88 cm\", " + kBag), panel_of(kBag));
  EXPECT_EQ(panel_of("\"across\": \"88 cm\", \"along\": \"44 cm\", " + kBag).across,
            Length::mm(880));
  EXPECT_NE(fault_of_sewn("\"across\": \"44 cm\", \"along\": \"87 cm\", " + kBag)
                .find("panels[0].across: 44 cm × 87 cm is not the 44 cm × 88 cm"),
            std::string::npos);
}

struct Refusal {
  const char* says;
  QByteArray fields;
};

TEST(ReadSewn, RefusesWhatContradictsItself) {
  const Refusal rows[] = {
      {"panels[0].along: the field is missing", "\"across\": \"44 cm\", " + kBag},
      {"panels[0].sewn.kind: the field is missing", "\"sewn\": {}"},
      {"panels[0].sewn.kind: \"sack\" is not one of",
       "\"sewn\": {\"kind\": \"sack\"}"},
      {"panels[0].sewn.seam: the field is missing", "\"sewn\": {\"kind\": \"one-piece-bag\"}"},
      {"panels[0].sewn.hem: the field is missing",
       "\"sewn\": {\"kind\": \"flat-pouch\", \"seam\": \"1 cm\"}"},
      {"panels[0].sewn.width: the field is missing",
       "\"sewn\": {\"kind\": \"one-piece-bag\", " + kTurnings + "}"},
      {"panels[0].sewn.height: the field is missing",
       "\"sewn\": {\"kind\": \"one-piece-bag\", \"width\": \"3 cm\", " + kTurnings + "}"},
      {"panels[0].sewn.width: the field is missing",
       "\"across\": \"44 cm\", \"along\": \"88 cm\", \"sewn\": {\"kind\": \"one-piece-bag\", "
       "\"lining\": true, " + kTurnings + "}"},
      {"panels[0].sewn.colour: no such field is known",
       "\"sewn\": {\"kind\": \"strap\", \"colour\": \"red\"}"},
      {"panels[0].sewn.depth: half of it",
       "\"sewn\": {\"kind\": \"one-piece-bag\", \"width\": \"3 cm\", \"height\": \"3 cm\", "
       "\"depth\": \"1/64 in\", \"seam\": \"1 cm\", \"hem\": \"1 cm\"}"},
      {"panels[0].across: seams, hems and depth take all",
       "\"across\": \"14 cm\", \"along\": \"88 cm\", \"sewn\": {\"kind\": \"one-piece-bag\", " +
           kTurnings + "}"},
      {"panels[0].sewn.seam: a strap has no such size",
       "\"sewn\": {\"kind\": \"strap\", \"width\": \"3 cm\", \"height\": \"99 cm\", \"seam\": "
       "\"1 cm\", \"hem\": \"1 cm\"}"},
      {"panels[0].sewn: a text is not a group of fields", "\"sewn\": \"bag\""},
  };
  for (const Refusal& row : rows) {
    EXPECT_EQ(fault_of_sewn(row.fields).rfind(row.says, 0), 0u) << fault_of_sewn(row.fields);
  }
}

TEST(ReadSewn, IsNotKnownInVersion1) {
  EXPECT_NE(fault_of_sewn("\"across\": \"44 cm\", \"along\": \"88 cm\", " + kBag, 1).find("panels[0].sewn"),
            std::string::npos);
}

TEST(SewnText, LeavesOutWhatIsNone) {
  EXPECT_EQ(sewn_text(*panel_of(kBag).sewn, Unit::cm),
            "{\"kind\": \"one-piece-bag\", \"width\": \"30 cm\", \"height\": \"35 cm\", \"depth\": "
            "\"12 cm\", \"seam\": \"1 cm\", \"hem\": \"3 cm\"}");
}

TEST(SewnText, RoundTripsEveryPieceOfReadyAndRandomGoods) {
  test::Dice dice(test::first_seed());
  for (int i = 0; i < 40; ++i) {
    Job job = default_job();
    job.unit = static_cast<Unit>(i % 5);
    add_roll(job, *cloth_kind("canvas"), Length::mm(10'500));
    job.rolls[0].fabric.width = Length::mm(9'900);
    for (const ReadyGoods& ready : ready_goods()) {
      EXPECT_FALSE(add_goods(job, std::string(ready.name), ready.goods, ready.is_lined));
    }
    for (GoodsKind kind : kGoodsKinds) {
      const Goods goods = test::any_goods(dice, kind);
      EXPECT_FALSE(add_goods(job, "Any", goods, has_lining(kind)));
    }
    const Result<Job> read = read_job(write_job(job));
    ASSERT_TRUE(read) << read.problem().sentence();
    EXPECT_EQ(*read, job);
  }
}

}  // namespace
}  // namespace foldyard
