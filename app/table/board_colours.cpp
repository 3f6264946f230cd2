#include "table/board_colours.h"

#include "drawing/palette.h"

namespace foldyard {
namespace {

const BoardColours kLight = {QColor(0xdd, 0xd4, 0xc3), QColor(0xf1, 0xeb, 0xe0), QColor(0xd3, 0xc9, 0xb6),
                             QColor(0xf4, 0xdc, 0x86), QColor(0x26, 0x22, 0x1f), QColor(0, 0, 0, 46),
                             QColor(0xff, 0xfd, 0xf8), QColor(0x26, 0x22, 0x1f), QColor(0xb0, 0x3a, 0x00),
                             QColor(0x26, 0x22, 0x1f)};

const BoardColours kDark = {QColor(0x3a, 0x35, 0x2f), QColor(0x27, 0x24, 0x21), QColor(0x42, 0x3c, 0x35),
                            QColor(0xe0, 0xc4, 0x6a), QColor(0x1b, 0x19, 0x17), QColor(0, 0, 0, 110),
                            QColor(0xff, 0xfd, 0xf8), QColor(0x26, 0x22, 0x1f), QColor(0xff, 0xb0, 0x6b),
                            QColor(0xf3, 0xed, 0xe2)};

const QColor kLinen(0xc9, 0xb7, 0x9c);
const QColor kWhiteChalk(0xff, 0xff, 0xff);
const QColor kDarkChalk(0x00, 0x00, 0x00);

}  // namespace

const BoardColours& board_colours(bool dark) { return dark ? kDark : kLight; }

QColor cloth_colour(const std::string& colour) {
  const QColor named(QString::fromStdString(colour));
  return named.isValid() ? named : kLinen;
}

QColor chalk_on(const QColor& cloth) {
  return contrast(kWhiteChalk, cloth) >= contrast(kDarkChalk, cloth) ? kWhiteChalk : kDarkChalk;
}

}  // namespace foldyard
