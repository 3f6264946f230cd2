#include "drawing/batch_tables.h"

#include <gtest/gtest.h>

#include "app/drawing/plain_words.h"
#include "core/inspect/sound_batch.h"

namespace foldyard {
namespace {

// Two rolls with two lengths each in one lay, three carriers a length; three bags of
// each cloth, five of which must be made (core/inspect/sound_batch.h).
BatchAnswer wound_bags() {
  SoundBatch batch = sound_batch();
  batch.job.unit = Unit::cm;
  batch.job.webbings = {{"cotton", Length::mm(50'000), Worth::whole(18), {Length::mm(1'200)}, {}}};
  batch.job.products[0].webbing = {{0, Length::mm(550), 2}};
  batch.job.products[0].labels = 1;
  return batch_answer(batch.job, batch.plan);
}

const BatchTable* find(const std::vector<BatchTable>& tables, BatchTableKind kind) {
  for (const BatchTable& table : tables) {
    if (table.kind == kind) return &table;
  }
  return nullptr;
}

TEST(BatchTables, SayWhatIsMadeOfWhichCloth) {
  const auto tables = batch_tables(wound_bags());
  const BatchTable* made = find(tables, BatchTableKind::made);
  ASSERT_TRUE(made);
  EXPECT_EQ(made->rows, (std::vector<QStringList>{{"bag", "blue", "3"}, {"bag", "green", "3"}}));
  EXPECT_FALSE(find(tables, BatchTableKind::lacking));  // it is filled
}

TEST(BatchTables, SayHowLaysAreStacked) {
  const auto tables = batch_tables(wound_bags());
  const BatchTable* lays = find(tables, BatchTableKind::lays);
  ASSERT_TRUE(lays);
  ASSERT_EQ(lays->rows.size(), 1u);
  // Four lengths of two plies of 1 mm.
  EXPECT_EQ(lays->rows[0].mid(0, 2), (QStringList{"1", "2 × blue, 2 × green"}));
  EXPECT_EQ(lays->rows[0][4], "8");
  EXPECT_EQ(plain(lays->rows[0][5]), "8 mm");
  EXPECT_EQ(plain(lays->rows[0].back()), "12 × carrier");
}

// Six bags with two handles of 55 cm: a board of 55 cm girth, 12 turns.
TEST(BatchTables, SayTheBoardsToWindWebbingRound) {
  const auto tables = batch_tables(wound_bags());
  const BatchTable* boards = find(tables, BatchTableKind::winding);
  ASSERT_TRUE(boards);
  ASSERT_EQ(boards->rows.size(), 1u);
  QStringList row = boards->rows[0];
  for (QString& cell : row) cell = plain(cell);
  EXPECT_EQ(row, (QStringList{"cotton", "12 of 55 cm", "55 cm", "12"}));
}

TEST(BatchTables, SayWhatToBuyWithTheEndsUsedFirst) {
  const auto tables = batch_tables(wound_bags());
  const BatchTable* webbing = find(tables, BatchTableKind::webbing);
  ASSERT_TRUE(webbing);
  EXPECT_EQ(webbing->rows.size(), 2u);  // the end gives two handles, a roll ten
  EXPECT_TRUE(webbing->rows[0][1].startsWith("the end of"));
  EXPECT_TRUE(webbing->rows[0][2].startsWith("2 of"));
  const BatchTable* buy = find(tables, BatchTableKind::to_buy);
  ASSERT_TRUE(buy);
  EXPECT_EQ(buy->rows.size(), 2u);
  EXPECT_EQ(buy->rows[0][1], "1");
  EXPECT_EQ(buy->rows[1].mid(0, 2), (QStringList{"labels", "6"}));
}

TEST(BatchTables, HaveAsManyCellsAsColumns) {
  for (const BatchTable& table : batch_tables(wound_bags())) {
    for (const QStringList& row : table.rows) EXPECT_EQ(row.size(), table.head.size()) << table.heading.toStdString();
  }
}

TEST(BatchWords, SayTheAnswerAndItsProof) {
  BatchAnswer answer = wound_bags();
  EXPECT_TRUE(batch_words(answer).startsWith("6 × bag from 2 rolls: 4 lengths in 1 lay")) << batch_words(answer).toStdString();
  EXPECT_EQ(batch_proof_words(answer), "No plan does better (proved).");
  answer.plan.proved = false;
  answer.plan.cost_bound = Worth::parts(249'600);  // 1.84 less; the cloth is worth 36.80
  EXPECT_TRUE(batch_proof_words(answer).endsWith(", 5.0 % of that cloth.")) << batch_proof_words(answer).toStdString();
  answer.plan.filled_bound = Worth::whole(60);
  EXPECT_TRUE(batch_proof_words(answer).startsWith("Pieces worth")) << batch_proof_words(answer).toStdString();
  EXPECT_TRUE(batch_proof_words(answer).endsWith("None that makes as much is better by more than 1.84, 5.0 % of that cloth."))
      << batch_proof_words(answer).toStdString();
}

}  // namespace
}  // namespace foldyard
