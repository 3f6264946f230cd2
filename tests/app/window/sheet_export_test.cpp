#include "window/sheet_export.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>

#include "job/plan_roll.h"
#include "sample.h"

namespace foldyard {
namespace {

class SheetExportTest : public testing::Test {
 protected:
  Answer answer{sample::job(), compare_ways(sample::job(), 0, Aim::most_worth)};
  int best = answer.comparison.ranking.at(0);
  QTemporaryDir folder;
};

TEST_F(SheetExportTest, WritesWhatTheEndingNames) {
  for (const auto& [name, head] : {std::pair{"d.pdf", "%PDF"}, {"d.SVG", "<?xml"}, {"d.png", "\x89PNG"}}) {
    EXPECT_FALSE(export_sheet(answer, best, folder.filePath(name))) << name;
    QFile file(folder.filePath(name));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << name;
    EXPECT_TRUE(file.read(16).startsWith(head)) << name;
  }
}

TEST_F(SheetExportTest, TellsWhyNothingWasWritten) {
  const auto problem = export_sheet(answer, best, folder.filePath("missing/d.pdf"));
  ASSERT_TRUE(problem);
  EXPECT_FALSE(problem->sentence().empty());
}

}  // namespace
}  // namespace foldyard
