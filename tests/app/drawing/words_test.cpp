#include "drawing/words.h"

#include <gtest/gtest.h>

#include "app/drawing/plain_words.h"
#include "app/drawing/sample_plans.h"

namespace foldyard {
namespace {

TEST(Words, PatternsAreLetteredPastZ) {
  EXPECT_EQ(pattern_letter(0), "A");
  EXPECT_EQ(pattern_letter(25), "Z");
  EXPECT_EQ(pattern_letter(26), "AA");
  EXPECT_EQ(pattern_letter(27), "AB");
}

TEST(Words, SizesNameTheUnitOnce) {
  EXPECT_EQ(plain(size_words(Length::mm(310), Length::mm(1480), Unit::cm)), "31 × 148 cm");
}

TEST(Words, LaysAreCountedByTheirStack) {
  const samples::Sample sample = samples::both_edges_in();
  EXPECT_EQ(lays_words(sample.plan(), 0), "4 lays of 3 and 1 of 2");
  EXPECT_EQ(lengths_of(sample.plan(), 0), 14);
  EXPECT_EQ(plies_words(sample.plan(), 0),
            "Under the blade lie at most 2 plies of one length, 6 of a lay of 3.");
}

TEST(Words, TheAnswerSaysAllThatMatters) {
  const samples::Sample sample = samples::carriers();
  // 14 lengths of three panels; 42 × 450 × 900 of 1500 × 13500 mm is 84 %.
  EXPECT_EQ(plain(answer_words(sample.job, sample.plan())),
            "42 × Carrier. Fold selvedge to selvedge; cross-cut 14 lengths of 90 cm; 7 lays, 21 "
            "cuts, 42 min. "
            "84.0 % of the cloth ends in panels; an offcut of 150 × 14 cm is left.");
}

TEST(Words, TheAnswerSaysWhichLimitsBind) {
  samples::Sample sample = samples::carriers();
  EXPECT_EQ(limit_words(sample.job, sample.plan()), QString());
  sample.job.panels[0].at_most = 42;
  EXPECT_TRUE(plain(answer_words(sample.job, sample.plan())).endsWith(" Limits: Carrier 42 of at most 42."));
}

TEST(Words, AProofThatIsNoneSaysSo) {
  EXPECT_TRUE(proof_words(samples::end_to_end().plan()).startsWith("Not proved best"));
  EXPECT_TRUE(proof_words(samples::carriers().plan()).startsWith("Proved. "));
}

TEST(Words, FoldLinesAreMeasuredFromTheNearerEdge) {
  const samples::Sample sample = samples::both_edges_in();
  // Lines at 290 and 1010 of 1400 mm: the second is 390 mm from the right.
  EXPECT_EQ(fold_line_words(sample.plan().patterns[0], Length::mm(1400), Unit::mm),
            (QStringList{"fold line 1: 290 mm from the left edge",
                         "fold line 2: 390 mm from the right edge"}));
}

TEST(Words, NamesWithCommasAreSetApartBySemicolons) {
  const samples::Sample sample = samples::open_long_names();
  EXPECT_TRUE(
      plain(yield_words(sample.job, sample.plan().yield)).contains("13 × Outside arm, left; 13 ×"));
}

TEST(Words, UseOfNothingIsNothing) {
  EXPECT_EQ(use_words(Area(), Area()), "0.0 %");
}

// 45 × 90 cm; 10 % lost along: 90 / 0.9 = 100.
TEST(Words, PanelsOnClothThatShrinksAreCutLarger) {
  samples::Sample sample = samples::carriers();
  Fabric& fabric = sample.job.rolls[0].fabric;
  EXPECT_EQ(plain(panel_size_words(sample.job, fabric, 0, false)), "45 × 90 cm");
  fabric.shrinkage.along = 1000;
  EXPECT_EQ(plain(panel_size_words(sample.job, fabric, 0, false)),
            "cut 45 × 100 cm, finishes 45 × 90 cm");
  EXPECT_EQ(plain(panel_size_words(sample.job, fabric, 0, true)),
            "cut 90 × 50 cm, finishes 90 × 45 cm");
  EXPECT_TRUE(roll_words(sample.job, sample.plan()).endsWith("shrinks 10 % along and 0 % across"));
}

TEST(Words, NapIsNamedAsSeenFromTheNearEnd) {
  Fabric fabric;
  Ply ply;
  EXPECT_EQ(nap_words(ply, fabric), "nap away from you");
  ply.mirrored_along = true;
  EXPECT_EQ(nap_words(ply, fabric), "nap towards you");
  fabric.railroaded = true;
  EXPECT_EQ(nap_words(ply, fabric), "nap to the right");
  ply.mirrored_across = true;
  EXPECT_EQ(nap_words(ply, fabric), "nap to the left");
}

}  // namespace
}  // namespace foldyard
