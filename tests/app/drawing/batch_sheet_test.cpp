#include "drawing/batch_sheet.h"

#include <gtest/gtest.h>

#include "app/drawing/paper_probe.h"
#include "core/inspect/sound_batch.h"

namespace foldyard {
namespace {

BatchAnswer one_remnant_kept() {
  SoundBatch batch = sound_batch();
  batch.plan.rolls[0].remnant_kept = true;
  batch.plan.rolls[1].remnant_kept = false;
  return batch_answer(batch.job, batch.plan);
}

TEST(BatchSheet, HasTicketsAPageForThePatternAndLabels) {
  const BatchSheet sheet(one_remnant_kept(), Paper::a4);
  EXPECT_EQ(sheet.labels().size(), 1u);
  // One pattern is cut, whichever rolls it is cut from.
  EXPECT_GE(sheet.pages(), 3);
  const QString text = probe::pdf_text(batch_pdf(sheet));
  EXPECT_EQ(text.count(u'\f'), sheet.pages());
  for (const char* words : {"What is made", "Lays, in cutting order", "Time and money", "Before you cut", "from blue"})
    EXPECT_TRUE(text.contains(QString::fromLatin1(words))) << words;
}

TEST(BatchSheet, HasNoLabelsWhereNothingIsKept) {
  SoundBatch batch = sound_batch();
  for (Plan& roll : batch.plan.rolls) roll.remnant_kept = false;
  EXPECT_TRUE(BatchSheet(batch_answer(batch.job, batch.plan), Paper::letter).labels().empty());
}

}  // namespace
}  // namespace foldyard
