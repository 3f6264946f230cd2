#include "table/laid_cloth.h"

#include <gtest/gtest.h>

#include "laid_sample.h"
#include "laid_squares.h"

namespace foldyard {
namespace {

using sample::laid;

int panels(const LaidCloth& cloth) {
  int count = 0;
  for (const Patch& patch : cloth.patches) count += patch.copies;
  return count;
}

TEST(LaidCloth, EveryPanelOfThePatternLiesInOnePatch) {
  for (const char* key : {"open", "selvedge-to-selvedge", "off-centre"}) {
    const LaidClothPtr cloth = laid(key);
    EXPECT_EQ(panels(*cloth), static_cast<int>(cloth->cloth().panels.size())) << key;
  }
}

TEST(LaidCloth, PatchesCoverTheFoldedClothOnce) {
  const LaidClothPtr cloth = laid("selvedge-to-selvedge");
  Area covered;
  for (const Patch& patch : cloth->patches) covered += patch.folded.area();
  EXPECT_EQ(covered, cloth->folded().area());
}

TEST(LaidCloth, FindsThePatchAtAFoldedAndAtAFlatPlace) {
  const LaidClothPtr cloth = laid("selvedge-to-selvedge");
  for (std::size_t i = 0; i < cloth->patches.size(); ++i) {
    const Patch& patch = cloth->patches[i];
    EXPECT_EQ(cloth->patch_at(patch.folded.across.from, patch.folded.along.from), static_cast<int>(i));
    for (const Rect& flat : patch.flats)
      EXPECT_EQ(cloth->patch_at_flat(flat.across.from, flat.along.from), static_cast<int>(i));
  }
  EXPECT_EQ(cloth->patch_at(cloth->folded().across.to, Length()), -1);
}

TEST(LaidCloth, APanelOnTheFoldHasOnePlaceAndTheNextTwo) {
  const LaidClothPtr cloth = laid("selvedge-to-selvedge");
  int creased = 0, loose = 0;
  for (const Patch& patch : cloth->patches) {
    if (patch.is_rest()) continue;
    EXPECT_EQ(patch.flats.size(), static_cast<std::size_t>(patch.copies));
    (patch.on_fold > 0 ? creased : loose) += patch.copies;
  }
  EXPECT_EQ(creased, 1);
  EXPECT_EQ(loose, 2);
}

TEST(LaidCloth, TenThousandPanelsEachFindTheirOwnPatch) {
  const LaidClothPtr cloth = sample::squares(100);
  EXPECT_EQ(panels(*cloth), 10'000);
  for (const Patch& patch : cloth->patches) {
    if (patch.is_rest()) continue;
    ASSERT_EQ(patch.flats.size(), 1u);
    ASSERT_EQ(patch.flats.front(), patch.folded);
  }
}

}  // namespace
}  // namespace foldyard
