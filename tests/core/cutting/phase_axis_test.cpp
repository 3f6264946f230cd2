#include "cutting/phase_axis.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/support/lengths.h"

namespace foldyard {
namespace {

using test::u;

std::vector<int> sizes(const PhaseAxis& axis, int family) {
  std::vector<int> list;
  for (int s : axis.family(family)) list.push_back(static_cast<int>(axis[s].size.units()));
  return list;
}

TEST(MatchedPhase, IsWhereThePanelBeginsWithinARepeat) {
  EXPECT_EQ(matched_phase(Match::none, u(50), u(64)), std::nullopt);
  EXPECT_EQ(matched_phase(Match::start, u(50), Length()), std::nullopt);
  EXPECT_EQ(matched_phase(Match::start, u(50), u(64)), u(0));
  // 50 in the middle of 64: 7 from its start, 7 from its end.
  EXPECT_EQ(matched_phase(Match::centred, u(50), u(64)), u(7));
  EXPECT_EQ(matched_phase(Match::centred, u(51), u(64)), u(6));
  // 70: from 3 before the start of a repeat; 71: from 3.5 before, rounded down.
  EXPECT_EQ(matched_phase(Match::centred, u(70), u(64)), u(61));
  EXPECT_EQ(matched_phase(Match::centred, u(71), u(64)), u(60));
}

TEST(PhaseAt, CountsFromTheStartOfARepeat) {
  EXPECT_EQ(phase_at(u(74), u(10), u(64)), u(0));
  EXPECT_EQ(phase_at(u(0), u(10), u(64)), u(54));
}

// Published: repeats per cut are rounded up, n = ceil(cut / repeat), so a second
// panel begins n repeats further. Sizes and results in whole units of the source;
// the sources are diyideas.com (96 / 27 → 108), patemeadows.com (90 / 27 → 108),
// spotidoc.com 91348 (116 / 25 → 125), btalmadge.blogspot.com (118 / 13 → 130),
// et-wholesale.com.au (240 / 37 → 259); 108 / 27 → 108 is arithmetic.
TEST(PhaseAxis, SpacesPanelsByWholeRepeatsAsPublished) {
  struct Row {
    int cut, repeat, spaced;
  };
  for (const Row& row : {Row{96, 27, 108}, Row{90, 27, 108}, Row{116, 25, 125}, Row{118, 13, 130},
                         Row{240, 37, 259}, Row{108, 27, 108}}) {
    const PhaseAxis axis(u(row.repeat), std::nullopt, {{u(row.cut), u(0)}}, u(row.spaced * 2 + row.cut));
    EXPECT_EQ(sizes(axis, 0), (std::vector<int>{row.cut, row.spaced + row.cut, row.spaced * 2 + row.cut}))
        << row.cut << " on " << row.repeat;
  }
}

TEST(PhaseAxis, PartsAStretchAtItsPlacesAndWhereAPhaseBegins) {
  const PhaseAxis axis(u(64), std::nullopt, {{u(50), u(0)}}, u(178));
  ASSERT_EQ(axis.phases().size(), 1u);
  EXPECT_EQ(sizes(axis, 0), (std::vector<int>{50, 114, 178}));
  EXPECT_TRUE(axis.family(axis.lost()).empty());
  const auto& parts = axis.parts(axis.floor(0, u(178)));
  // At 50 and 114 the phase is lost, where nothing can be cut.
  ASSERT_EQ(parts.size(), 2u);
  EXPECT_EQ(parts[0].at, u(64));
  EXPECT_EQ(axis[parts[0].low].size, u(50));
  EXPECT_FALSE(parts[0].low_exact);
  EXPECT_EQ(axis[parts[0].high].size, u(114));
  EXPECT_TRUE(parts[0].high_exact);
  EXPECT_EQ(parts[1].at, u(128));
}

TEST(PhaseAxis, LetsOtherPanelsLieAnywhere) {
  const PhaseAxis axis(u(10), std::nullopt, {{u(7), u(0)}, {u(2), std::nullopt}}, u(13));
  // In phase: 7, then 2s; or 2s, then at 10 nothing more fits but 2.
  EXPECT_EQ(sizes(axis, 0), (std::vector<int>{2, 4, 6, 7, 8, 9, 10, 11, 12, 13}));
  EXPECT_EQ(sizes(axis, axis.lost()), (std::vector<int>{2, 4, 6, 8, 10, 12}));
  EXPECT_EQ(axis.family_of(u(0)), 0);
  EXPECT_EQ(axis.family_of(u(3)), axis.lost());
}

TEST(PhaseAxis, KeepsThePhaseAtWhichTheClothBegins) {
  // The cloth begins 4 beyond the start of a repeat of 10: the next is 6 on.
  const PhaseAxis axis(u(10), u(4), {{u(7), u(0)}}, u(25));
  EXPECT_EQ(axis.phases(), (std::vector<Length>{u(0), u(4)}));
  EXPECT_EQ(sizes(axis, axis.family_of(u(4))), (std::vector<int>{13, 23}));
  const auto& parts = axis.parts(axis.floor(axis.family_of(u(4)), u(25)));
  ASSERT_FALSE(parts.empty());
  EXPECT_EQ(parts[0].at, u(6));
  EXPECT_EQ(parts[0].low, -1);
  EXPECT_EQ(axis[parts[0].high].family, axis.family_of(u(0)));
}

TEST(PhaseAxis, HasNoPhasesWithoutARepeat) {
  const PhaseAxis axis(Length(), std::nullopt, {{u(3), std::nullopt}}, u(10));
  EXPECT_EQ(axis.lost(), 0);
  EXPECT_EQ(sizes(axis, 0), (std::vector<int>{3, 6, 9}));
}

TEST(PhaseAxis, BeginsAtAFoldEdgeWithAHalfOrTheTrim) {
  const PhaseAxis plain(Length(), std::nullopt, {{u(6), std::nullopt}}, u(20));
  const PhaseAxis joint(plain, {u(1), u(3)}, {u(6)}, u(10));
  EXPECT_TRUE(joint.is_joint());
  EXPECT_EQ(sizes(joint, 0), (std::vector<int>{1, 3, 7, 9}));
  const auto& parts = joint.parts(joint.floor(0, u(9)));
  ASSERT_EQ(parts.size(), 2u);  // beyond 1 and beyond 3; nothing fits beyond 7
  EXPECT_EQ(parts[1].at, u(3));
  EXPECT_EQ(plain[parts[1].high].size, u(6));
  EXPECT_TRUE(parts[1].high_exact);
}

TEST(PhaseAxis, ThinsPlacesAndSaysSo) {
  const PhaseAxis axis(Length(), std::nullopt, {{u(7), std::nullopt}, {u(9), std::nullopt}}, u(500), 20);
  EXPECT_TRUE(axis.is_thinned());
  EXPECT_LE(axis.size(), 24);
  EXPECT_GE(axis.floor(0, u(7)), 0);
  EXPECT_EQ(axis[axis.floor(0, u(9))].size, u(9));
}

std::vector<int> all_sizes(const PhaseAxis& axis) {
  std::vector<int> list;
  for (int s = 0; s < axis.size(); ++s) list.push_back(static_cast<int>(axis[s].size.units()));
  std::sort(list.begin(), list.end());
  return list;
}

// Each family keeps its single panels and its largest place, and no place that was none.
TEST(PhaseAxis, ThinsAFamilyOfManyPlaces) {
  const std::vector<PhasedSize> goods{{u(7), {}}, {u(11), {}}, {u(50), u(0)}};
  const PhaseAxis whole(u(64), std::nullopt, goods, u(400)), few(u(64), std::nullopt, goods, u(400), 12);
  EXPECT_FALSE(whole.is_thinned());
  EXPECT_TRUE(few.is_thinned());
  for (int f = 0; f <= few.lost(); ++f) {
    const std::vector<int> all = sizes(whole, f), kept = sizes(few, f);
    EXPECT_LT(kept.size(), all.size());
    EXPECT_LE(kept.size(), 13u);
    EXPECT_TRUE(std::includes(all.begin(), all.end(), kept.begin(), kept.end()));
    EXPECT_EQ(kept.back(), all.back());
    for (const int single : {7, 11}) EXPECT_TRUE(std::binary_search(kept.begin(), kept.end(), single)) << f;
  }
}

// Beside a fold edge the first sizes are kept, those that the cloth has room for.
TEST(PhaseAxis, ThinsPlacesBesideAFoldEdge) {
  const std::vector<Length> firsts{u(2), u(5), u(500)}, goods{u(7), u(11)};
  const PhaseAxis plain(Length(), std::nullopt, {{u(7), {}}, {u(11), {}}}, u(100));
  const PhaseAxis whole(plain, firsts, goods, u(100)), few(plain, firsts, goods, u(100), 20);
  EXPECT_FALSE(whole.is_thinned());
  EXPECT_TRUE(few.is_thinned());
  const std::vector<int> all = all_sizes(whole), kept = all_sizes(few);
  EXPECT_LT(kept.size(), all.size());
  EXPECT_TRUE(std::includes(all.begin(), all.end(), kept.begin(), kept.end()));
  EXPECT_EQ(kept.front(), 2);
  EXPECT_EQ(kept[1], 5);
  EXPECT_EQ(kept.back(), all.back());
  const PhaseAxis thin(Length(), std::nullopt, {{u(7), {}}, {u(11), {}}}, u(100), 10);
  EXPECT_TRUE(PhaseAxis(thin, firsts, goods, u(100)).is_thinned());
}

TEST(PhaseAxis, HasNoStatesWhereThereIsNoClothOrNothingFits) {
  EXPECT_EQ(PhaseAxis(u(64), u(3), {{u(50), u(0)}, {u(7), {}}}, Length()).size(), 0);
  EXPECT_EQ(PhaseAxis(u(64), u(3), {}, u(100)).size(), 0);
  const PhaseAxis too_long(u(64), u(3), {{u(150), u(0)}}, u(100));
  EXPECT_EQ(too_long.size(), 0);
  EXPECT_TRUE(too_long.phases().empty());
}

// Of what is thinned, what one panel takes alone stays; a panel longer than all takes nothing.
TEST(PhaseAxis, ThinsTheSameBesideAPanelThatIsTooLong) {
  const std::vector<PhasedSize> panels = {{u(7), std::nullopt}, {u(9), std::nullopt}};
  std::vector<PhasedSize> more = panels;
  more.push_back({u(600), std::nullopt});
  const PhaseAxis axis(Length(), std::nullopt, panels, u(500), 20), same(Length(), std::nullopt, more, u(500), 20);
  EXPECT_EQ(sizes(same, 0), sizes(axis, 0));
  for (const int size : {7, 9}) {
    const std::vector<int> all = sizes(same, 0);
    EXPECT_TRUE(std::binary_search(all.begin(), all.end(), size)) << size;
  }
}

}  // namespace
}  // namespace foldyard
