// The two models of tables of words.

#include <gtest/gtest.h>

#include <QSignalSpy>

#include "batch/fill_in_model.h"
#include "batch/words_model.h"
#include "support/strict_tester.h"

namespace foldyard {
namespace {

TEST(WordsModel, ShowsWordsAndFiguresToTheirSides) {
  WordsModel model;
  StrictTester tester(&model);
  model.show({"what", "takes"}, {{"cut", "12 min"}, {"sew 3", "1.5"}});
  EXPECT_EQ(model.index(0, 1).data().toString(), "12 min");
  EXPECT_EQ(model.index(0, 1).data(Qt::TextAlignmentRole).toInt() & Qt::AlignRight, Qt::AlignRight);
  EXPECT_EQ(model.index(1, 0).data(Qt::TextAlignmentRole).toInt() & Qt::AlignRight, 0);
  EXPECT_FALSE(model.index(0, 0).data(Qt::CheckStateRole).isValid());
  EXPECT_FALSE(model.setData(model.index(0, 0), Qt::Checked, Qt::CheckStateRole));
}

TEST(WordsModel, TicksRows) {
  WordsModel model;
  StrictTester tester(&model);
  model.show({"roll", "length"}, {{"moss", "5 m"}, {"sand", "6 m"}}, {true, false});
  QSignalSpy spy(&model, &WordsModel::ticked);
  EXPECT_TRUE(model.setData(model.index(1, 0), Qt::Checked, Qt::CheckStateRole));
  EXPECT_EQ(spy.count(), 1);
  EXPECT_EQ(spy[0][0].toInt(), 1);
  EXPECT_TRUE(spy[0][1].toBool());
  EXPECT_EQ(model.ticks(), (std::vector<bool>{true, true}));
  EXPECT_FALSE(model.setData(model.index(1, 1), Qt::Checked, Qt::CheckStateRole));
}

TEST(WordsModel, IsTextForASpreadsheet) {
  WordsModel model;
  model.show({"a", "b"}, {{"one\ttwo", "3"}, {"four\nfive", "6"}});
  EXPECT_EQ(model.tab_separated(), "a\tb\none two\t3\nfour five\t6\n");
}

TEST(FillInModel, KeepsEntriesWithTheirKeys) {
  FillInModel model({"panel", "spoilt"});
  StrictTester tester(&model);
  model.show({{"p", {"body"}}, {"q", {"pocket"}}});
  QSignalSpy spy(&model, &FillInModel::filled_in);
  EXPECT_TRUE(model.setData(model.index(1, 1), " 2 ", Qt::EditRole));
  EXPECT_EQ(spy.count(), 1);
  model.show({{"q", {"pocket"}}});
  EXPECT_EQ(model.index(0, 1).data().toString(), "2");
  EXPECT_FALSE(model.setData(model.index(0, 0), "x", Qt::EditRole));
}

TEST(FillInModel, SaysWhatIsRefused) {
  FillInModel model({"panel", "spoilt"});
  StrictTester tester(&model);
  model.show({{"p", {"body"}}});
  model.set_reasons({{"p", "too many"}});
  EXPECT_EQ(model.index(0, 1).data(kReasonRole).toString(), "too many");
  EXPECT_EQ(model.index(0, 0).data(kReasonRole).toString(), "");
  model.set_reasons({});
  EXPECT_EQ(model.index(0, 1).data(kReasonRole).toString(), "");
}

}  // namespace
}  // namespace foldyard
