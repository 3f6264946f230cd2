// Whatever is edited in the window, what it shows no field for stays as it was.

#include <gtest/gtest.h>

#include <QTest>

#include "cloth/length_estimate.h"
#include "file/read_job.h"
#include "file/write_job.h"
#include "job/check_job.h"
#include "sample.h"
#include "shelf/shelf.h"
#include "window/panel_model.h"

namespace foldyard {
namespace {

// The sample job on cloth that has all that cloth can have; its second roll is
// known by its weight: 2.45 kg of 350 g a square metre, 1.4 m wide, are 5 m.
Job rich_job() {
  Job job = sample::job();
  Roll& moss = job.rolls[0];
  moss.fabric.railroaded = true;
  moss.fabric.repeat = {Length::mm(640), Length::mm(700), Length::mm(100), Length::mm(15), true};
  moss.fabric.shrinkage = {300, 125};
  moss.flaws = {{{Length::mm(1000), Length::mm(1020)}, {Length(), Length::mm(1500)}, "join"},
                {{Length::mm(3200), Length::mm(3260)}, {Length::mm(400), Length::mm(550)}, ""}};
  job.rolls[1].measured = ByWeight{{2'450, 0}, {0, 0}, {3'500, 0}};
  job.panels[0].at_most = 24;
  job.panels[0].grain = Grain::warp;
  job.panels[0].match = Match::centred;
  return job;
}

class KeptFields : public testing::Test {
 protected:
  KeptFields() { document.open(rich_job(), {}); }

  void type(int field, const QString& text) {
    form.field(field)->line()->selectAll();
    QTest::keyClicks(form.field(field)->line(), text);
    QTest::keyClick(form.field(field)->line(), Qt::Key_Return);
  }
  bool put(int column, const QString& text) {
    return panels.setData(panels.index(0, column), text, Qt::EditRole);
  }
  void expect(const Job& job) {
    EXPECT_EQ(document.job(), job);
    EXPECT_EQ(document.history().count(), 1);
    const Result<Job> saved = read_job(write_job(document.job()));
    ASSERT_TRUE(saved) << saved.problem().sentence();
    EXPECT_EQ(*saved, job);
    document.history().undo();
    EXPECT_EQ(document.job(), rich_job());
  }

  Document document;
  Shelf shelf{document};
  RollForm& form{*shelf.form()};
  PanelModel panels{document};
  Job wanted = rich_job();
};

TEST_F(KeptFields, StandInTheFirstPlace) { ASSERT_FALSE(check_job(rich_job())); }

TEST_F(KeptFields, OutliveAnEditOfTheWidth) {
  type(0, "160");
  wanted.rolls[0].fabric.width = Length::mm(1600);
  wanted.rolls[0].flaws[0].across.to = Length::mm(1600);
  expect(wanted);
}

TEST_F(KeptFields, OutliveAnEditOfTheLength) {
  type(1, "6 m");
  wanted.rolls[0].length = Length::mm(6000);
  expect(wanted);
}

TEST_F(KeptFields, OutliveAnEditOfTheSelvedge) {
  type(2, "2");
  wanted.rolls[0].fabric.selvedge = Length::mm(20);
  expect(wanted);
}

TEST_F(KeptFields, OutliveAnEditOfTheThickness) {
  type(3, "1.5 mm");
  wanted.rolls[0].fabric.thickness = Length::units(480);
  expect(wanted);
}

TEST_F(KeptFields, OutliveAnEditOfTheNap) {
  form.one_way()->click();
  wanted.rolls[0].fabric.nap = Nap::one_way;
  expect(wanted);
}

// 7 m² at 1.25 m are 5.6 m.
TEST_F(KeptFields, EstimateARollAnewThatIsKnownByItsWeight) {
  shelf.choose(1);
  type(0, "125");
  wanted.rolls[1].fabric.width = Length::mm(1250);
  wanted.rolls[1].length = Length::mm(5600);
  expect(wanted);
}

TEST_F(KeptFields, RememberWhatWasMeasuredWhenALengthIsFound) {
  shelf.choose(1);
  type(1, "5.2 m");
  wanted.rolls[1].length = Length::mm(5200);
  wanted.rolls[1].is_found = true;
  expect(wanted);
}

TEST_F(KeptFields, OutliveEveryEditOfAPanel) {
  ASSERT_TRUE(put(PanelModel::across, "44 cm"));
  wanted.panels[0].across = Length::mm(440);
  expect(wanted);
  ASSERT_TRUE(put(PanelModel::worth, "8"));
  wanted = rich_job();
  wanted.panels[0].worth = Worth::whole(8);
  expect(wanted);
  ASSERT_TRUE(put(PanelModel::name, "Log carrier"));
  wanted = rich_job();
  wanted.panels[0].name = "Log carrier";
  expect(wanted);
  panels.setData(panels.index(0, PanelModel::on_fold), Qt::Unchecked, Qt::CheckStateRole);
  wanted = rich_job();
  wanted.panels[0].on_fold = false;
  expect(wanted);
}

TEST_F(KeptFields, TellOfAFlawByItsRollAndNumber) {
  type(1, "2 m");
  EXPECT_EQ(form.field(1)->reason().toStdString(),
            "Roll “Moss”, flaws 2, to: the flaw goes to 326 cm and the cloth ends at 200 cm; correct "
            "the flaw or the length of the roll.");
  EXPECT_EQ(document.job(), rich_job());
}

}  // namespace
}  // namespace foldyard
