#include "window/panel_model.h"

#include <gtest/gtest.h>

#include "sample.h"
#include "support/strict_tester.h"

namespace foldyard {
namespace {

class PanelModelTest : public testing::Test {
 protected:
  PanelModelTest() { document.open(sample::job(), {}); }

  QModelIndex cell(int row, int column) { return model.index(row, column); }
  QString shown(int row, int column) { return cell(row, column).data().toString(); }
  bool put(int row, int column, const QString& text) { return model.setData(cell(row, column), text, Qt::EditRole); }

  Document document;
  PanelModel model{document};
  StrictTester tester{&model};
};

TEST_F(PanelModelTest, ShowsThePanelsOfTheJob) {
  EXPECT_EQ(model.rowCount(), 2);
  EXPECT_EQ(shown(0, PanelModel::name), "Carrier");
  EXPECT_EQ(shown(0, PanelModel::across), "45 cm");
  EXPECT_EQ(shown(0, PanelModel::along), "90 cm");
  EXPECT_EQ(shown(0, PanelModel::worth), "9");
  EXPECT_EQ(cell(0, PanelModel::may_turn).data(Qt::AccessibleTextRole).toString(), "Turn no");
  EXPECT_EQ(cell(1, PanelModel::may_turn).data(Qt::CheckStateRole).toInt(), Qt::Checked);
}

TEST_F(PanelModelTest, PutsAGoodTextIntoTheJob) {
  EXPECT_TRUE(put(0, PanelModel::across, "18\""));
  EXPECT_EQ(document.job().panels[0].across, Length::inches64(18 * 64));
  EXPECT_TRUE(put(0, PanelModel::worth, "7,50"));
  EXPECT_EQ(document.job().panels[0].worth, Worth::parts(75000));
  EXPECT_TRUE(put(0, PanelModel::name, "Log carrier"));
  EXPECT_EQ(document.job().panels[0].name, "Log carrier");
  EXPECT_EQ(document.history().undoText(), "rename “Carrier”");
}

TEST_F(PanelModelTest, PutsAFlagIntoTheJob) {
  EXPECT_TRUE(model.setData(cell(0, PanelModel::may_turn), Qt::Checked, Qt::CheckStateRole));
  EXPECT_TRUE(document.job().panels[0].may_turn);
  EXPECT_TRUE(model.setData(cell(0, PanelModel::on_fold), Qt::Unchecked, Qt::CheckStateRole));
  EXPECT_FALSE(document.job().panels[0].on_fold);
}

struct BadRow {
  const char* name;
  int column;
  const char* text;
};

const BadRow kBad[] = {
    {"no length", PanelModel::across, "wide"},       {"empty", PanelModel::along, ""},
    {"zero", PanelModel::across, "0 cm"},            {"wider than any cloth", PanelModel::across, "9 m"},
    {"no worth", PanelModel::worth, "much"},         {"worth nothing", PanelModel::worth, "0"},
    {"no limit", PanelModel::at_most, "few"},        {"limit of nothing", PanelModel::at_most, "0"},
    {"no match", PanelModel::match, "mirrored"},     {"no grain", PanelModel::grain, "bias"},
    {"no name", PanelModel::name, "  "},             {"the name of another", PanelModel::name, "Pouch"},
};

TEST_F(PanelModelTest, KeepsARefusedTextInItsCellWithTheReason) {
  for (const auto& bad : kBad) {
    EXPECT_FALSE(put(0, bad.column, bad.text)) << bad.name;
    EXPECT_EQ(document.job(), sample::job()) << bad.name;
    EXPECT_EQ(shown(0, bad.column), bad.text) << bad.name;
    EXPECT_FALSE(model.reason(cell(0, bad.column)).isEmpty()) << bad.name;
    EXPECT_EQ(cell(0, bad.column).data(Qt::ToolTipRole).toString(), model.reason(cell(0, bad.column)));
    EXPECT_TRUE(cell(0, bad.column).data(Qt::ForegroundRole).isValid()) << bad.name;
    model.drop_draft(cell(0, bad.column));
    EXPECT_TRUE(model.first_reason().isEmpty()) << bad.name;
  }
}

TEST_F(PanelModelTest, PutsALimitMatchAndGrainIntoTheJob) {
  EXPECT_TRUE(put(0, PanelModel::at_most, "12"));
  EXPECT_EQ(document.job().panels[0].at_most, 12);
  EXPECT_EQ(shown(0, PanelModel::at_most), "12");
  EXPECT_TRUE(put(0, PanelModel::at_most, ""));
  EXPECT_FALSE(document.job().panels[0].at_most);
  EXPECT_EQ(cell(0, PanelModel::at_most).data(Qt::AccessibleTextRole).toString(), "At most no limit");
  EXPECT_TRUE(put(0, PanelModel::match, "centred"));
  EXPECT_EQ(document.job().panels[0].match, Match::centred);
  EXPECT_TRUE(put(1, PanelModel::grain, "warp"));
  EXPECT_EQ(document.job().panels[1].grain, Grain::warp);
  EXPECT_EQ(document.history().undoText(), "change “grain” of “Pouch”");
}

TEST_F(PanelModelTest, GivesTheChoicesOfACell) {
  EXPECT_EQ(cell(0, PanelModel::match).data(kChoicesRole).toStringList(), (QStringList{"none", "start", "centred"}));
  EXPECT_EQ(cell(0, PanelModel::grain).data(kChoicesRole).toStringList(), (QStringList{"pattern", "warp"}));
  EXPECT_TRUE(cell(0, PanelModel::at_most).data(kChoicesRole).toStringList().isEmpty());
}

TEST_F(PanelModelTest, KnowsWhichRareColumnsAreUsed) {
  for (const int column : {PanelModel::at_most, PanelModel::match, PanelModel::grain}) {
    EXPECT_TRUE(PanelModel::is_rare(column));
    EXPECT_FALSE(model.is_used(column));
  }
  put(1, PanelModel::match, "start");
  EXPECT_TRUE(model.is_used(PanelModel::match));
  EXPECT_FALSE(model.is_used(PanelModel::grain));
}

TEST_F(PanelModelTest, KeepsAPanelThatAProductIsSewnFrom) {
  Job job = sample::job();
  job.products.push_back({"Bag", {{1, 2}}, {}, Worth::whole(30)});
  document.open(job, {});
  const auto problem = model.take_away(1);
  ASSERT_TRUE(problem);
  EXPECT_EQ(document.job(), job);
  EXPECT_FALSE(model.take_away(0));
  EXPECT_EQ(document.job().products[0].panels[0].panel, 0);
}

TEST_F(PanelModelTest, AGoodTextEndsARefusal) {
  put(0, PanelModel::across, "wide");
  EXPECT_TRUE(put(0, PanelModel::across, "40 cm"));
  EXPECT_EQ(shown(0, PanelModel::across), "40 cm");
  EXPECT_TRUE(model.first_reason().isEmpty());
}

TEST_F(PanelModelTest, AddsAPanelUnderAFreeName) {
  EXPECT_FALSE(model.add_panel());
  EXPECT_EQ(model.rowCount(), 3);
  EXPECT_EQ(shown(2, PanelModel::name), "Panel 3");
  EXPECT_EQ(shown(2, PanelModel::across), "30 cm");  // as the last one
  EXPECT_FALSE(model.add_panel());
  EXPECT_EQ(shown(3, PanelModel::name), "Panel 4");
}

TEST_F(PanelModelTest, TakesAPanelAwayButNeverTheLast) {
  model.take_away(0);
  EXPECT_EQ(model.rowCount(), 1);
  EXPECT_EQ(shown(0, PanelModel::name), "Pouch");
  EXPECT_TRUE(model.take_away(0));
  EXPECT_EQ(model.rowCount(), 1);
  document.history().undo();
  EXPECT_EQ(model.rowCount(), 2);
  EXPECT_EQ(document.job(), sample::job());
}

TEST_F(PanelModelTest, OpeningAnotherJobDropsTheDrafts) {
  put(0, PanelModel::across, "wide");
  model.add_panel();
  EXPECT_TRUE(model.first_reason().isEmpty());
}

// A pouch of 24 × 17 cm, seams and hems 1.2 cm: its panel is 26.4 × 36.4 cm.
TEST_F(PanelModelTest, AddsThePanelsOfReadyGoods) {
  EXPECT_FALSE(model.add_ready(*goods_by_key("pouch")));
  ASSERT_EQ(model.rowCount(), 3);
  EXPECT_EQ(shown(2, PanelModel::name), "Pouch 2");  // the job has a Pouch
  EXPECT_EQ(shown(2, PanelModel::across), "26.4 cm");
  EXPECT_EQ(shown(2, PanelModel::along), "36.4 cm");
  EXPECT_TRUE(cell(2, PanelModel::name).data(Qt::ToolTipRole).toString().contains("flat pouch"));
  EXPECT_EQ(document.history().undoText(), "add “Pouch”");
  EXPECT_FALSE(model.add_ready(*goods_by_key("cushion")));
  EXPECT_EQ(model.rowCount(), 5);
  document.history().undo();
  document.history().undo();
  EXPECT_EQ(document.job(), sample::job());
}

TEST_F(PanelModelTest, ASewnPanelsSizeMovesItsGoods) {
  EXPECT_FALSE(model.add_ready(*goods_by_key("cushion")));
  const auto front = [&] { return document.job().panels[2]; };
  const auto back = [&] { return document.job().panels[3]; };
  EXPECT_TRUE(put(2, PanelModel::along, "52.4 cm"));
  EXPECT_EQ(front().sewn->goods.height, Length::mm(500));
  EXPECT_EQ(back().along, front().along);
  EXPECT_FALSE(put(3, PanelModel::across, "30 cm"));
  EXPECT_TRUE(model.reason(cell(3, PanelModel::across)).contains("follows from the goods"));
  EXPECT_FALSE(put(2, PanelModel::across, "2 cm"));  // its seams are 2.4 cm
  EXPECT_EQ(front().sewn->goods.width, Length::mm(450));
}

}  // namespace
}  // namespace foldyard
