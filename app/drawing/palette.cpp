#include "drawing/palette.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace foldyard {

namespace palette {
QColor paper() {
  return QColor(0xff, 0xff, 0xff);
}
QColor ink() {
  return QColor(0x26, 0x22, 0x1f);
}
QColor soft_ink() {
  return QColor(0x4e, 0x47, 0x41);
}
QColor thread() {
  return QColor(0xb4, 0xab, 0xa0);
}
QColor pale() {
  return QColor(0xfb, 0xfa, 0xf7);
}
QColor tape() {
  return QColor(0xfb, 0xf0, 0xc8);
}
QColor chalk() {
  return QColor(0x1d, 0x46, 0x70);
}
QColor blade() {
  return QColor(0x8c, 0x1f, 0x14);
}
}  // namespace palette

namespace {

QColor mixed(const QColor& a, const QColor& b, double share_of_a) {
  const auto mix = [&](int x, int y) {
    return static_cast<int>(std::lround(x * share_of_a + y * (1 - share_of_a)));
  };
  return QColor(mix(a.red(), b.red()), mix(a.green(), b.green()), mix(a.blue(), b.blue()));
}

constexpr std::array<QRgb, 8> kOkabeIto = {0xffe69f00, 0xff56b4e9, 0xff009e73, 0xffcc79a7,
                                           0xff0072b2, 0xfff0e442, 0xffd55e00, 0xff777777};
constexpr std::array<Hatch, 8> kHatches = {Hatch::none,    Hatch::rising,      Hatch::level,
                                           Hatch::falling, Hatch::upright,     Hatch::crossed,
                                           Hatch::squared, Hatch::rising_dense};

double linear(double channel) {
  return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& c) {
  return 0.2126 * linear(c.redF()) + 0.7152 * linear(c.greenF()) + 0.0722 * linear(c.blueF());
}

}  // namespace

PanelLook panel_look(int panel) {
  const auto i = static_cast<std::size_t>(panel < 0 ? 0 : panel);
  const QColor base = QColor::fromRgb(kOkabeIto[i % 8]);
  return {mixed(base, palette::paper(), 0.34), mixed(base, palette::ink(), 0.62),
          kHatches[(i + i / 8) % 8]};
}

QColor cloth_ground(const std::string& colour) {
  const QColor given(QString::fromStdString(colour));
  const QColor base = given.isValid() ? given : QColor(0xd8, 0xc7, 0xa8);
  double share = 0.30;
  while (share > 0.05 && contrast(palette::ink(), mixed(base, palette::paper(), share)) < 11)
    share -= 0.02;
  return mixed(base, palette::paper(), share);
}

double contrast(const QColor& a, const QColor& b) {
  const double x = luminance(a), y = luminance(b);
  return (std::max(x, y) + 0.05) / (std::min(x, y) + 0.05);
}

}  // namespace foldyard
