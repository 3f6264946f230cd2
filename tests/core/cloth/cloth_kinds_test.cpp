#include "cloth/cloth_kinds.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

namespace foldyard {
namespace {

std::int64_t tenths_of_mm(Length length) { return length.units() / 32; }

TEST(ClothKinds, StandInTheOrderOfTheirKeysAndAreFoundByThem) {
  const auto& kinds = cloth_kinds();
  EXPECT_GE(kinds.size(), 10u);
  EXPECT_TRUE(std::is_sorted(kinds.begin(), kinds.end(), [](const auto& a, const auto& b) {
    return a.key < b.key;
  }));
  for (const ClothKind& kind : kinds) EXPECT_EQ(cloth_kind(kind.key), &kind);
  EXPECT_EQ(cloth_kind("Velvet"), nullptr);
  EXPECT_EQ(cloth_kind(""), nullptr);
}

TEST(ClothKinds, SayWhatTheyRestOn) {
  for (const ClothKind& kind : cloth_kinds()) {
    EXPECT_TRUE(kind.basis.find("no source") != std::string::npos ||
                kind.basis.find(".co") != std::string::npos)
        << kind.key;
  }
}

// Widths of 110 to 160 cm and selvedges of 6 to 20 mm are what shops name
// (designandmake.net, glossary, width; textileglossary.com, selvedge);
// thicknesses of 0.4 to 2.5 mm from memory, no source.
TEST(ClothKinds, LieWithinWhatClothCommonlyMeasures) {
  for (const ClothKind& kind : cloth_kinds()) {
    const Fabric& cloth = kind.fabric;
    EXPECT_GE(cloth.width, Length::mm(1100)) << kind.key;
    EXPECT_LE(cloth.width, Length::mm(1600)) << kind.key;
    EXPECT_GE(cloth.selvedge, Length::mm(6)) << kind.key;
    EXPECT_LE(cloth.selvedge, Length::mm(20)) << kind.key;
    EXPECT_GE(tenths_of_mm(cloth.thickness), 4) << kind.key;
    EXPECT_LE(tenths_of_mm(cloth.thickness), 25) << kind.key;
    EXPECT_LE(cloth.shrinkage.along, 700) << kind.key;
    EXPECT_EQ(cloth.colour.size(), 7u) << kind.key;
  }
}

TEST(ClothKinds, WithAPileLieOneWay) {
  for (const char* key : {"velvet", "corduroy", "chenille"}) {
    EXPECT_EQ(cloth_kind(key)->fabric.nap, Nap::one_way) << key;
  }
}

// A duck's number is 19 less the ounces of a piece of 36 × 22 in (source:
// sizes.com/materials/duck.htm). In grams per square metre, an ounce being
// 28.349523125 g and an inch 2.54 cm: n oz / (36 × 22 × 0.0254²) each.
TEST(ClothKinds, WeighCottonDuckByItsNumber) {
  const double square_metres = 36 * 22 * 0.0254 * 0.0254;
  EXPECT_NEAR(cloth_kind("duck-10")->grams / 10.0, (19 - 10) * 28.349523125 / square_metres, 0.06);
  EXPECT_NEAR(cloth_kind("duck-12")->grams / 10.0, (19 - 12) * 28.349523125 / square_metres, 0.06);
}

// Woven cloth holds about 0.3 to 0.6 g/cm³ (from memory, no source): weight and
// thickness of a kind must not contradict each other.
TEST(ClothKinds, WeighWhatTheirThicknessAllows) {
  for (const ClothKind& kind : cloth_kinds()) {
    const double density = (kind.grams / 10.0) / (tenths_of_mm(kind.fabric.thickness) * 100.0);
    EXPECT_GE(density, 0.2) << kind.key;
    EXPECT_LE(density, 0.7) << kind.key;
  }
}

}  // namespace
}  // namespace foldyard
