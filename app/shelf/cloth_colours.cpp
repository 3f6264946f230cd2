#include "shelf/cloth_colours.h"

#include <QCoreApplication>

namespace foldyard {
namespace {

ClothColour colour(const char* name, const char* value) {
  return {QCoreApplication::translate("ClothColours", name), QString::fromLatin1(value)};
}

}  // namespace

const std::vector<ClothColour>& cloth_colours() {
  static const std::vector<ClothColour> kColours = {
      colour(QT_TRANSLATE_NOOP("ClothColours", "Chalk"), "#ece6d8"),
      colour(QT_TRANSLATE_NOOP("ClothColours", "Linen"), "#c9b79c"),
      colour(QT_TRANSLATE_NOOP("ClothColours", "Straw"), "#c9b26b"),
      colour(QT_TRANSLATE_NOOP("ClothColours", "Mustard"), "#b8862b"),
      colour(QT_TRANSLATE_NOOP("ClothColours", "Rust"), "#a8582f"),
      colour(QT_TRANSLATE_NOOP("ClothColours", "Brick"), "#8f3b32"),
      colour(QT_TRANSLATE_NOOP("ClothColours", "Plum"), "#7a5c7e"),
      colour(QT_TRANSLATE_NOOP("ClothColours", "Denim"), "#3f5f8a"),
      colour(QT_TRANSLATE_NOOP("ClothColours", "Teal"), "#2f6f73"),
      colour(QT_TRANSLATE_NOOP("ClothColours", "Moss"), "#6f7d4e"),
      colour(QT_TRANSLATE_NOOP("ClothColours", "Bottle"), "#2f4a3a"),
      colour(QT_TRANSLATE_NOOP("ClothColours", "Slate"), "#6b7480"),
      colour(QT_TRANSLATE_NOOP("ClothColours", "Bark"), "#54463a"),
      colour(QT_TRANSLATE_NOOP("ClothColours", "Charcoal"), "#33363a")};
  return kColours;
}

}  // namespace foldyard
