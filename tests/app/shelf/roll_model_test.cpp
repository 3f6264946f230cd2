#include "shelf/roll_model.h"

#include <gtest/gtest.h>

#include <random>

#include "shelf/roll_edits.h"
#include "shelf_sample.h"
#include "support/strict_tester.h"

namespace foldyard {
namespace {

class RollModelTest : public testing::Test {
 protected:
  RollModelTest() { document.open(sample::shelf_job(), {}); }

  std::vector<std::string> shown() {
    std::vector<std::string> names;
    for (int row = 0; row < filter.rowCount(); ++row) names.push_back(filter.index(row, 0).data().toString().toStdString());
    return names;
  }

  Document document;
  RollModel model{document};
  RollFilter filter{&model};
  StrictTester tester{&model};
  StrictTester filter_tester{&filter};
};

using Names = std::vector<std::string>;

TEST_F(RollModelTest, ListsTheRollsInTheirOrder) {
  EXPECT_EQ(shown(), (Names{"Moss", "Slate", "Fern", "Rust", "Weld"}));
  EXPECT_EQ(model.widest(), Length::mm(1500));
  EXPECT_EQ(filter.index(3, 0).data(RollModel::RowRole).toInt(), 3);
}

TEST_F(RollModelTest, SaysAllOfARollToAReader) {
  model.set_on_table(2);
  const auto words = model.index(2, 0).data(Qt::AccessibleTextRole).toString();
  for (const char* part : {"Fern", "150 cm", "5 m", "on the table", "one-way", "railroaded", "32 cm", "3 %"})
    EXPECT_TRUE(words.contains(part)) << part;
  EXPECT_EQ(model.index(2, 0).data(Qt::ToolTipRole).toString(), words);
  EXPECT_FALSE(model.index(1, 0).data(Qt::AccessibleTextRole).toString().contains("on the table"));
}

struct SearchCase {
  const char* typed;
  Names found;
};

TEST_F(RollModelTest, NarrowsByNameAndByWords) {
  const SearchCase cases[] = {{"ru", {"Rust"}},      {"one-way", {"Fern"}}, {"flaw", {"Rust"}}, {"estimated", {"Weld"}},
                              {"140 cm", {"Slate", "Rust"}}, {"velvet", {}}};
  for (const auto& c : cases) {
    filter.set_words(QString::fromUtf8(c.typed));
    EXPECT_EQ(shown(), c.found) << c.typed;
  }
  filter.set_words({});
  EXPECT_EQ(shown().size(), 5u);
}

TEST_F(RollModelTest, ANarrowedListKnowsThePlacesInTheJob) {
  filter.set_words(QStringLiteral("rust"));
  EXPECT_EQ(filter.roll_at(filter.index(0, 0)), 3);
  EXPECT_EQ(filter.index_of(3).row(), 0);
  EXPECT_FALSE(filter.index_of(0).isValid());
  EXPECT_EQ(filter.roll_at({}), -1);
}

TEST_F(RollModelTest, ARenamedRollIsFoundByItsNewName) {
  filter.set_words(QStringLiteral("bracken"));
  Job next = document.job();
  next.rolls[2].name = "Bracken";
  ASSERT_FALSE(document.edit(next, "rename"));
  EXPECT_EQ(shown(), Names{"Bracken"});
}

// Whatever is done with the rolls, each index that is kept stays with its roll.
TEST_F(RollModelTest, KeptIndexesFollowTheirRolls) {
  const unsigned seed = std::random_device{}();
  SCOPED_TRACE("seed " + std::to_string(seed));
  std::mt19937 random(seed);
  const auto any = [&](std::size_t count) { return static_cast<int>(random() % count); };
  for (int step = 0; step < 200; ++step) {
    std::vector<std::pair<QPersistentModelIndex, std::string>> kept;
    for (int row = 0; row < model.rowCount(); ++row) kept.emplace_back(model.index(row, 0), model.roll(row).name);
    const Job& job = document.job();
    const auto count = job.rolls.size();
    Job next = job;
    switch (random() % 4) {
      case 0: next = with_moved(job, any(count), any(count + 1)); break;
      case 1: next = count < 12 ? with_copy(job, any(count)) : job; break;
      case 2: next = count > 2 ? std::move(without_roll(job, any(count))).value() : job; break;
      default: document.history().undo(); break;
    }
    if (next != job) document.edit(next, "step");
    ASSERT_EQ(shown(), names_of(document.job().rolls));
    for (const auto& [index, name] : kept) {
      if (!index.isValid()) continue;
      ASSERT_EQ(index.data().toString().toStdString(), name) << "step " << step;
    }
  }
}

}  // namespace
}  // namespace foldyard
