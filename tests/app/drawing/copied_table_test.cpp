#include "drawing/copied_table.h"

#include <gtest/gtest.h>

#include "app/drawing/sample_plans.h"

namespace foldyard {
namespace {

QStringList lines_of(const CopiedTable& table) { return table.tab_text().trimmed().split(u'\n'); }

TEST(CopiedTable, HasEqualRowsInBothForms) {
  const samples::Sample sample = samples::open_long_names();
  for (const CopiedTable& table : {comparison_table(sample.job, sample.comparison), cut_table_of(sample.job, sample.plan(), 0)}) {
    const QStringList lines = lines_of(table);
    ASSERT_EQ(static_cast<std::size_t>(lines.size()), table.rows.size() + 1);
    for (const QString& line : lines) EXPECT_EQ(line.count(u'\t') + 1, table.heads.size()) << line.toStdString();
    EXPECT_EQ(table.html().count(QStringLiteral("<tr>")), lines.size());
    EXPECT_EQ(table.html().count(QStringLiteral("<th>")), table.heads.size());
  }
}

TEST(CopiedTable, EscapesWhatHtmlAndTabsWouldMisread) {
  const CopiedTable table{{QStringLiteral("a\tb"), QStringLiteral("<c> & \"d\"")}, {{QStringLiteral("e\nf"), QStringLiteral("g")}}};
  EXPECT_EQ(table.tab_text(), QStringLiteral("a b\t<c> & \"d\"\ne f\tg\n"));
  EXPECT_TRUE(table.html().contains(QStringLiteral("&lt;c&gt; &amp; &quot;d&quot;")));
}

TEST(CopiedTable, OfTheWaysHasTheCountOfEveryPanelAndPlainNumbers) {
  const samples::Sample sample = samples::carriers();
  const CopiedTable table = comparison_table(sample.job, sample.comparison);
  const qsizetype column = table.heads.indexOf(QString::fromStdString(sample.job.panels[0].name));
  ASSERT_GE(column, 1);
  const Plan& best = *sample.comparison.ways[static_cast<std::size_t>(sample.comparison.ranking[0])].plan;
  EXPECT_EQ(table.rows[0][column], QString::number(best.yield[0]));
  bool is_number = false;
  table.rows[0][table.heads.indexOf(QStringLiteral("cloth used, %"))].toDouble(&is_number);
  EXPECT_TRUE(is_number);
  EXPECT_EQ(table.rows.size(), sample.comparison.ways.size());
}

TEST(CopiedTable, OfTheCutsHasThemInTheirOrder) {
  const samples::Sample sample = samples::carriers();
  const CopiedTable table = cut_table_of(sample.job, sample.plan(), 0);
  const std::vector<Cut>& cuts = sample.plan().patterns[0].cuts;
  ASSERT_EQ(table.rows.size(), cuts.size());
  EXPECT_EQ(table.rows[0][0], QStringLiteral("1"));
  EXPECT_EQ(table.rows[0][2], QString::fromStdString(write_number(cuts[0].at, sample.job.unit)));
  EXPECT_EQ(table.heads[2], QStringLiteral("at, ") + QString::fromStdString(unit_name(sample.job.unit)));
}

}  // namespace
}  // namespace foldyard
