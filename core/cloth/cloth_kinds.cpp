#include "cloth/cloth_kinds.h"

#include <algorithm>

#include "measure/words.h"

namespace foldyard {
namespace {

// Thicknesses lie within what is commonly held of each kind (plain canvas 0.5
// to 0.8 mm, flat weaves 0.7 to 1.1, jacquard and chenille 1.0 to 1.6, velvet
// and corduroy 1.2 to 2.2, coated cloth 0.9 to 1.3; from memory, no source).
// Shrinkage: woven cotton and linen 2 to 7 %, polyester none
// (onlineclothingstudy.com, August 2018). Selvedges up to 20 mm
// (textileglossary.com, selvedge), 13 mm are commonly deducted
// (fashion-incubator.com, What is cuttable width).
Fabric cloth(int width_cm, int thickness_tenths, Nap nap, const char* colour, int shrinks_percent) {
  Fabric fabric;
  fabric.width = Length::mm(width_cm * 10);
  fabric.selvedge = Length::mm(15);
  fabric.thickness = Length::units(thickness_tenths * 32);
  fabric.nap = nap;
  fabric.colour = colour;
  fabric.shrinkage = {shrinks_percent * 100, shrinks_percent * 100};
  return fabric;
}

const std::vector<ClothKind>& kinds() {
  static const std::vector<ClothKind> kKinds = {
      {"canvas", to_say("Canvas"), cloth(150, 7, Nap::none, "#c9b79c", 3), 3500,
       to_say("common practice, no source; 350 g/m² and more is heavy cloth (fabric-online.co.uk)")},
      {"chenille", to_say("Chenille"), cloth(140, 14, Nap::one_way, "#8d7b92", 0), 4500,
       to_say("common practice, no source; its pile lies one way")},
      {"coated", to_say("Coated cloth"), cloth(140, 11, Nap::none, "#54606b", 0), 5000,
       to_say("common practice, no source; do not crease it, look whether folds press out")},
      {"corduroy", to_say("Corduroy"), cloth(140, 17, Nap::one_way, "#a8582f", 3), 4000,
       to_say("common practice, no source; its pile lies one way")},
      {"duck-10", to_say("Cotton duck No. 10"), cloth(150, 8, Nap::none, "#b8a888", 3), 4993,
       to_say("9 oz a piece of 36 × 22 in (duck numbers: sizes.com/materials/duck.htm); thickness from "
              "memory, no source")},
      {"duck-12", to_say("Cotton duck No. 12"), cloth(150, 7, Nap::none, "#c4b594", 3), 3884,
       to_say("7 oz a piece of 36 × 22 in (duck numbers: sizes.com/materials/duck.htm); thickness from "
              "memory, no source")},
      {"flat-weave", to_say("Flat weave"), cloth(137, 9, Nap::none, "#6b7480", 0), 3500,
       to_say("54 in is the most usual width (orangechair513.wordpress.com, October 2012); the rest is "
              "common practice, no source")},
      {"jacquard", to_say("Jacquard"), cloth(140, 13, Nap::one_way, "#7a5c7e", 0), 4000,
       to_say("common practice, no source; its pattern may be one-way: look at yours")},
      {"linen", to_say("Furnishing linen"), cloth(140, 8, Nap::none, "#a9a186", 5), 3000,
       to_say("furnishing prints are 135 to 145 cm wide (designandmake.net, glossary, width); the rest is "
              "common practice, no source")},
      {"lining", to_say("Cotton lining"), cloth(150, 4, Nap::none, "#d8d3c4", 5), 1500,
       to_say("up to 150 g/m² is light cloth (fabric-online.co.uk); the rest is common practice, no "
              "source")},
      {"velvet", to_say("Velvet"), cloth(140, 16, Nap::one_way, "#2f5a52", 0), 4000,
       to_say("common practice, no source; its pile lies one way")},
  };
  return kKinds;
}

}  // namespace

const std::vector<ClothKind>& cloth_kinds() { return kinds(); }

const ClothKind* cloth_kind(std::string_view key) {
  const auto found = std::find_if(kinds().begin(), kinds().end(),
                                  [&](const ClothKind& kind) { return kind.key == key; });
  return found == kinds().end() ? nullptr : &*found;
}

}  // namespace foldyard
