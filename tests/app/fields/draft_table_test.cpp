#include "fields/draft_table.h"

#include <gtest/gtest.h>

#include "fields/edit_table.h"
#include "support/strict_tester.h"

namespace foldyard {
namespace {

// A list of counts; what is no number is refused.
class Counts : public DraftTable {
 public:
  Counts() { show_anew(); }
  int columnCount(const QModelIndex& parent = {}) const override { return parent.isValid() ? 0 : 2; }
  void set(std::vector<int> counts) {
    counts_ = std::move(counts);
    follow();
  }
  const std::vector<int>& counts() const { return counts_; }

 protected:
  int count_rows() const override { return static_cast<int>(counts_.size()); }
  QString head(int column) const override { return column == 0 ? "What" : "Count"; }
  QString help(int, int) const override { return "how many"; }
  bool is_word(int column) const override { return column == 0; }
  bool is_typed(int, int column) const override { return column == 1; }
  QString text(int row, int column) const override {
    const int count = counts_[static_cast<std::size_t>(row)];
    return column == 0 ? QString("row") : count == 0 ? QString() : QString::number(count);
  }
  QString empty_text(int) const override { return "none"; }
  QStringList choices(int) const override { return {}; }
  std::optional<QString> put(int row, int, const QString& text) override {
    bool is_number = false;
    const int count = text.toInt(&is_number);
    if (!is_number) return "no number";
    counts_[static_cast<std::size_t>(row)] = count;
    follow();
    return std::nullopt;
  }

 private:
  std::vector<int> counts_ = {3, 0};
};

struct DraftTableTest : testing::Test {
  QModelIndex cell(int row) { return table.index(row, 1); }
  bool type(int row, const QString& text) { return table.setData(cell(row), text, Qt::EditRole); }

  Counts table;
  StrictTester tester{&table};
};

TEST_F(DraftTableTest, ShowsTextsAndWhatStandsWhereThereIsNone) {
  EXPECT_EQ(cell(0).data().toString(), "3");
  EXPECT_EQ(cell(1).data().toString(), "none");
  EXPECT_EQ(cell(1).data(Qt::EditRole).toString(), "");
  EXPECT_EQ(cell(0).data(Qt::TextAlignmentRole).toInt() & Qt::AlignRight, Qt::AlignRight);
  EXPECT_FALSE(table.flags(table.index(0, 0)) & Qt::ItemIsEditable);
  EXPECT_FALSE(table.setData(table.index(0, 0), "x", Qt::EditRole));
}

TEST_F(DraftTableTest, KeepsWhatIsRefusedAndTheValueBesideIt) {
  EXPECT_FALSE(type(0, "many"));
  EXPECT_EQ(cell(0).data().toString(), "many");
  EXPECT_EQ(cell(0).data(kReasonRole).toString(), "no number");
  EXPECT_EQ(cell(0).data(Qt::AccessibleDescriptionRole).toString(), "no number");
  EXPECT_EQ(table.counts()[0], 3);
  EXPECT_TRUE(type(0, "5"));
  EXPECT_EQ(cell(0).data(kReasonRole).toString(), "");
  EXPECT_EQ(table.counts()[0], 5);
}

TEST_F(DraftTableTest, DropsDraftsWhenRowsComeOrGo) {
  type(1, "many");
  table.set({1});
  EXPECT_EQ(table.rowCount(), 1);
  EXPECT_TRUE(table.first_reason().isEmpty());
}

TEST_F(DraftTableTest, TheReasonStandsBelowItsTable) {
  EditTable shown(&table, "Counts");
  EXPECT_EQ(shown.view()->accessibleName(), "Counts");
  EXPECT_TRUE(shown.reason().isEmpty());
  type(0, "many");
  EXPECT_EQ(shown.reason(), "no number");
  type(0, "4");
  EXPECT_TRUE(shown.reason().isEmpty());
}

// Signs and weight besides the colour.
TEST_F(DraftTableTest, ARefusedCellIsMarkedNotByColourAlone) {
  struct Seen : CellEditor {
    using CellEditor::initStyleOption;
  } editor;
  type(0, "many");
  QStyleOptionViewItem refused, plain;
  refused.palette.setColor(QPalette::BrightText, Qt::red);
  editor.initStyleOption(&refused, cell(0));
  editor.initStyleOption(&plain, cell(1));
  EXPECT_EQ(refused.text, "⚠ many");
  EXPECT_TRUE(refused.font.bold());
  EXPECT_EQ(refused.palette.color(QPalette::Text), QColor(Qt::red));
  EXPECT_EQ(plain.text, "none");
  EXPECT_FALSE(plain.font.bold());
}

}  // namespace
}  // namespace foldyard
