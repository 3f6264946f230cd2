#include "job/lost_panels.h"

#include <gtest/gtest.h>

#include "core/support/lengths.h"
#include "job/defaults.h"

namespace foldyard {
namespace {

using test::mm;

// Cloth of 1000 with selvedges of 10; two lengths of 200 with 41 units of
// allowance, the ends squared by 100. Two panels side by side.
class TwoLengths : public testing::Test {
 protected:
  TwoLengths() {
    job_ = default_job();
    job_.rolls = {{"cloth", {Length::mm(1000), Length::mm(10), Length::mm(1), Nap::none, ""},
                   Length::mm(2000)}};
    job_.panels = {{"pouch", Length::mm(400), Length::mm(200), false, true, Worth::whole(1)}};
    job_.losses.squaring = Length::mm(100);
    job_.losses.allowance = Length::units(41);
    Pattern pattern;
    pattern.length = Length::mm(200);
    pattern.panels = {{0, false, false, {mm(10, 410), mm(0, 200)}, {}},
                      {0, false, false, {mm(410, 810), mm(0, 200)}, {}}};
    plan_.patterns = {pattern};
    plan_.lays = {{0, 2}};
    const Length end = Length::mm(300) + Length::units(41);
    plan_.lengths = {{0, {Length::mm(100), end}}, {0, {end, end + Length::mm(200) + Length::units(41)}}};
  }

  std::vector<LostPanel> lost(std::vector<Flaw> flaws) {
    job_.rolls[0].flaws = std::move(flaws);
    return lost_panels(job_, plan_);
  }

  Job job_;
  Plan plan_;
};

using Lost = std::vector<LostPanel>;

TEST_F(TwoLengths, LoseNothingWithoutFlaws) { EXPECT_EQ(lost({}), Lost()); }

TEST_F(TwoLengths, LoseTheOnePanelOrBothThatAFlawTouches) {
  EXPECT_EQ(lost({{mm(150, 160), mm(100, 110), ""}}), (Lost{{0, 0, 0}}));
  EXPECT_EQ(lost({{mm(150, 160), mm(400, 420), ""}}), (Lost{{0, 0, 0}, {0, 1, 0}}));
  EXPECT_EQ(lost({{mm(290, 320), mm(0, 50), ""}}), (Lost{{0, 0, 0}, {1, 0, 0}}));
}

// The pattern of the first length lies 20 units (half of 41, rounded down)
// behind its start at 100 mm, and ends at 300 mm and 20 units.
TEST_F(TwoLengths, EndWhereAFlawBegins) {
  const Length begin = Length::mm(100) + Length::units(20), end = begin + Length::mm(200);
  const Length one = Length::units(1);
  const Span all = mm(0, 1000);
  EXPECT_EQ(lost({{{Length(), begin}, all, ""}}), Lost());
  EXPECT_EQ(lost({{{Length(), begin + one}, all, ""}}).size(), 2u);
  EXPECT_EQ(lost({{{end, end + one}, all, ""}}), Lost());
  EXPECT_EQ(lost({{{end - one, end}, all, ""}}).size(), 2u);
  EXPECT_EQ(lost({{mm(0, 2000), mm(810, 1000), ""}}), Lost());
}

TEST_F(TwoLengths, NameTheFirstFlawOfSeveral) {
  EXPECT_EQ(lost({{mm(120, 130), mm(500, 510), ""}, {mm(140, 150), mm(20, 520), ""}}),
            (Lost{{0, 0, 1}, {0, 1, 0}}));
}

TEST(FlawsThatMatter, LeaveOutSelvedgesAndSquaredEnds) {
  Roll roll{"cloth", {Length::mm(1000), Length::mm(10), Length::mm(1), Nap::none, ""}, Length::mm(2000)};
  roll.flaws = {{mm(0, 100), mm(0, 1000), "in the free end"},
                {mm(99, 101), mm(0, 1000), "over the free end"},
                {mm(500, 600), mm(0, 10), "in the left selvedge"},
                {mm(500, 600), mm(0, 11), "over the left selvedge"},
                {mm(700, 800), mm(990, 1000), "in the right selvedge"},
                {mm(1900, 2000), mm(0, 1000), "in the far end"}};
  const std::vector<Flaw> found = flaws_that_matter(roll, {Length::mm(100), roll.length - Length::mm(100)});
  ASSERT_EQ(found.size(), 2u);
  EXPECT_EQ(found[0].kind, "over the free end");
  EXPECT_EQ(found[1].kind, "over the left selvedge");
}

}  // namespace
}  // namespace foldyard
