#include <gtest/gtest.h>

#include <random>

#include "core/inspect/sound_plans.h"
#include "core/support/fold_ways.h"
#include "core/support/lengths.h"
#include "inspect/inspect_plan.h"

namespace foldyard {
namespace {

using test::kOpen;
using test::mm_rect;

// Rests of the selvedge-to-selvedge plan, by x: 1 selvedge [0,10], 2 offcut
// [10,75], 3 offcut [1425,1490], 4 selvedge [1490,1500]; all 900 long.
Rest& rest(Sound& s, std::size_t number) {
  return s.pattern().rests[number - 1];
}

// 1500 × 900 mm in square units: 480 000 × 288 000 = 138 240 000 000. A strip
// of 10 mm × 900 mm is 3200 × 288 000 = 921 600 000; one of a unit 288 000.
TEST(InspectCover, FindsClothLostOrUsedTwice) {
  expect_found({
      {"a rest left out",
       selvedge_to_selvedge,
       [](Sound& s) { s.pattern().rests.pop_back(); },
       {"Pattern 1: the area of panels and rests is given as 137318400000 square units, but comes "
        "to 138240000000 square units."}},
      {"a rest a unit too narrow",
       selvedge_to_selvedge,
       [](Sound& s) { rest(s, 2).flat.across.to -= Length::units(1); },
       {"Pattern 1: the area of panels and rests is given as 138239712000 square units, but comes "
        "to 138240000000 square units."}},
      {"a rest under a panel",
       selvedge_to_selvedge,
       [](Sound& s) { rest(s, 2).flat.across.to += Length::units(1); },
       {"Pattern 1: rest 2 and panel 2 overlap."}},
      {"a rest over a panel",
       selvedge_to_selvedge,
       [](Sound& s) { rest(s, 3).flat.across.from -= Length::units(1); },
       {"Pattern 1: panel 3 and rest 3 overlap."}},
      {"a rest twice",
       selvedge_to_selvedge,
       [](Sound& s) { s.pattern().rests.push_back(rest(s, 3)); },
       {"Pattern 1: rest 3 and rest 5 overlap."}},
      {"two panels in one place",
       fan_of_five,
       [](Sound& s) { s.pattern().panels[1].flat = s.pattern().panels[0].flat; },
       {"Pattern 1: panel 1 and panel 2 overlap."}},
      {"an empty rest",
       selvedge_to_selvedge,
       [](Sound& s) {
         s.pattern().rests.push_back({RestKind::offcut, mm_rect(20, 20, 0, 900)});
       },
       {"Pattern 1: rest 5 is empty."}},
      {"a rest off the cloth",
       selvedge_to_selvedge,
       [](Sound& s) { rest(s, 4).flat.across.to += Length::units(1); },
       {"Pattern 1: rest 4 runs off the cloth."}},
  });
}

TEST(InspectCover, FindsRestsCalledWhatTheyAreNot) {
  expect_found({
      {"a selvedge called offcut",
       selvedge_to_selvedge,
       [](Sound& s) { rest(s, 1).kind = RestKind::offcut; },
       {"Pattern 1: rest 1 reaches into a selvedge but is not called one."}},
      {"an offcut called selvedge",
       selvedge_to_selvedge,
       [](Sound& s) { rest(s, 2).kind = RestKind::selvedge; },
       {"Pattern 1: rest 2 is called selvedge but lies in usable cloth."}},
      {"an offcut called remnant",
       selvedge_to_selvedge,
       [](Sound& s) { rest(s, 2).kind = RestKind::remnant; },
       {"Pattern 1: rest 2 is called a remnant but is too small to keep."}},
      {"remnants called offcuts",
       selvedge_to_selvedge,
       [](Sound& s) { s.job.losses.keep_across = Length::mm(65); },
       {"Pattern 1: rest 2 is called an offcut but is large enough to keep.",
        "Pattern 1: rest 3 is called an offcut but is large enough to keep."}},
      {"a remnant cut apart",
       +[] {
         return bare({kOpen, {}, {0}, 1500, 1});
       },
       [](Sound& s) {
         cut_along(s, 0, 700);
         list_cuts(s);
         settle(s);
       },
       {"Pattern 1: rest 2 is called a remnant but is cut apart."}},
  });
}

bool is_in_taken_rect(const Rect& rect, const std::vector<Rect>& tiles) {
  for (const Rect& tile : tiles) {
    if (tile.overlaps(rect)) return true;
  }
  return false;
}

// The sweep against every pair: random rests on a cloth of 12 × 12 cells of
// 100 mm without selvedges, said to overlap exactly if two do.
TEST(InspectCover, AgreesWithEveryPairOnRandomRests) {
  const unsigned seed = std::random_device{}();
  SCOPED_TRACE("seed " + std::to_string(seed));
  std::mt19937 random(seed);
  const auto cell = [&] { return static_cast<int>(random() % 9) * 100; };
  const auto size = [&] { return static_cast<int>(1 + random() % 4) * 100; };
  for (int round = 0; round < 500; ++round) {
    Sound sound = bare({kOpen, {}, {0}, 1500, 1, 1200});
    sound.roll().fabric.selvedge = Length();
    sound.job.losses.keep_across = Length::mm(1'000'000);
    std::vector<Rect> tiles;
    bool overlaps = false;
    sound.pattern().rests.clear();
    for (unsigned i = 0; i < 2 + random() % 6; ++i) {
      const int x = cell(), y = cell();
      const Rect rect = mm_rect(x, x + size(), y, y + size());
      overlaps |= is_in_taken_rect(rect, tiles);
      tiles.push_back(rect);
      sound.pattern().rests.push_back({RestKind::offcut, rect});
    }
    bool found = false;
    for (const std::string& sentence : inspect_plan(sound.job, sound.plan)) {
      found |= sentence.find("overlap") != std::string::npos;
    }
    EXPECT_EQ(found, overlaps);
  }
}

}  // namespace

}  // namespace foldyard
