#include "table/cloth_strokes.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>
#include <QPixmap>

#include <algorithm>
#include <cmath>

#include "drawing/hatch.h"
#include "drawing/palette.h"
#include "table/board_colours.h"

namespace foldyard {
namespace {

constexpr double kLeastOutlined = 4;  // pixels of the shorter side
constexpr double kLeastLarge = 21;
constexpr double kLeastWords = 34;    // of the longer side
constexpr int kLeastLetters = 4;       // of a name that is cut off
constexpr double kLeastWoven = 60;    // of the whole cloth
constexpr int kThread = 3;
constexpr int kTile = 48;
constexpr double kTag = 9;

const QColor kWaste(0, 0, 0, 60);  // lies on the cloth
const QColor kKept(0, 0, 0, 18);

QColor faint(QColor colour, int alpha) {
  colour.setAlpha(alpha);
  return colour;
}

// Panels stand out from the cloth away from the chalk, so that words read better.
QColor panel_tint(const ClothLook& look, bool lit) {
  const QColor away = look.chalk.lightness() < 128 ? QColor(Qt::white) : QColor(Qt::black);
  return faint(away, lit ? 120 : 52);
}

double shorter(const QRectF& box) { return std::min(box.width(), box.height()); }

double widest(const QFontMetricsF& metrics, const QStringList& lines) {
  double width = 0;
  for (const QString& line : lines) width = std::max(width, metrics.horizontalAdvance(line));
  return width;
}

bool fits(const QFontMetricsF& metrics, const QStringList& lines, const QSizeF& room) {
  return widest(metrics, lines) <= room.width() && metrics.height() * static_cast<double>(lines.size()) <= room.height();
}

// What may stand on a panel, the fullest first: a size that is cut off would mislead.
std::vector<QStringList> choices(const PanelWords& words) {
  const QStringList name = words.name.split(QLatin1Char(' '), Qt::SkipEmptyParts);
  std::vector<QStringList> all = {{words.name, words.detail}, name + QStringList(words.detail), {words.name}, name};
  for (QStringList& lines : all) lines.removeAll(QString());
  return all;
}

void paint_lines(QPainter& painter, const QSizeF& room, const QStringList& lines, const QColor& ink) {
  const QFontMetricsF metrics(painter.font());
  double y = -metrics.height() * static_cast<double>(lines.size()) / 2;
  painter.setPen(ink);
  for (const QString& line : lines) {
    painter.drawText(QRectF(-room.width() / 2, y, room.width(), metrics.height()), Qt::AlignCenter, line);
    y += metrics.height();
  }
}

void paint_turned(QPainter& painter, const QRectF& box, const QStringList& lines, bool upwards, const QColor& ink) {
  painter.save();
  painter.translate(box.center());
  if (upwards) painter.rotate(-90);
  paint_lines(painter, upwards ? box.size().transposed() : box.size(), lines, ink);
  painter.restore();
}

// The fullest of the choices that stands whole, level if it can; else the beginning
// of the name, along the longer side.
void paint_words(QPainter& painter, const QRectF& box, const PanelWords& words, const QColor& ink) {
  const QFontMetricsF metrics(painter.font());
  for (const QStringList& lines : choices(words))
    for (const bool upwards : {false, true})
      if (fits(metrics, lines, upwards ? box.size().transposed() : box.size()))
        return paint_turned(painter, box, lines, upwards, ink);
  const bool upwards = box.height() > box.width();
  const QString begun = metrics.elidedText(words.name, Qt::ElideRight, std::max(box.width(), box.height()));
  if (begun.size() <= kLeastLetters || shorter(box) < metrics.height()) return;
  paint_turned(painter, box, {begun}, upwards, ink);
}

// A sewn-in label at the corner; none on a panel that is too small for one.
QRectF label_on(const QRectF& box) {
  if (box.width() < 2.5 * kTag || box.height() < 2.5 * kTag) return {};
  const double height = std::clamp(shorter(box) / 7, kTag, 2 * kTag);
  return {box.left() + 5, box.top() + 5, height * 1.7, height};
}

// The larger of the two rooms below the label and beside it.
QRectF room_for_words(const QRectF& box, const QRectF& label) {
  QRectF below = box.adjusted(4, 4, -4, -4), beside = below;
  if (label.isEmpty()) return below;
  below.setTop(label.bottom() + 1);
  beside.setLeft(label.right() + 1);
  return below.width() * below.height() >= beside.width() * beside.height() ? below : beside;
}

// In the panel's own colour and hatch.
void paint_label(QPainter& painter, const QRectF& label, int panel) {
  if (label.isEmpty()) return;
  const PanelLook look = panel_look(panel);
  painter.setPen(QPen(QColor(Qt::black), 1));
  painter.setBrush(look.fill);
  painter.drawRect(label);
  draw_hatch(painter, label.adjusted(1, 1, -1, -1), look.hatch, 3, look.line, 1);
}

QColor mixed(const QColor& below, const QColor& above) {
  const auto mix = [&](int under, int over) { return under + (over - under) * above.alpha() / 255; };
  return {mix(below.red(), above.red()), mix(below.green(), above.green()), mix(below.blue(), above.blue())};
}

// Threads both ways on the cloth's colour, some of them: as a tile it is laid in one
// stroke, where many thin lines that let the cloth through take longer than all else.
QPixmap weave_tile(const ClothLook& look) {
  QPixmap tile(kTile, kTile);
  tile.fill(look.cloth);
  QPainter painter(&tile);
  const QColor thread = faint(look.chalk, 15), one = mixed(look.cloth, thread), two = mixed(one, thread);
  for (int at = kThread / 2; at < kTile; at += kThread) {
    painter.fillRect(0, at, kTile, 1, one);
    painter.fillRect(at, 0, 1, kTile, one);
  }
  for (int x = kThread / 2; x < kTile; x += kThread)
    for (int y = kThread / 2; y < kTile; y += kThread) painter.fillRect(x, y, 1, 1, two);
  return tile;
}

QRect on_pixels(const QRectF& box, int inset) {
  const QPoint from(qRound(box.left()) + inset, qRound(box.top()) + inset);
  return {from, QPoint(qRound(box.right()) - inset - 1, qRound(box.bottom()) - inset - 1)};
}

// Opaque and on whole pixels, which is painted fastest.
void paint_grounds(QPainter& painter, const std::vector<QRectF>& boxes, const QColor& colour, int inset) {
  if (boxes.empty()) return;
  std::vector<QRect> rects;
  rects.reserve(boxes.size());
  for (const QRectF& box : boxes) rects.push_back(on_pixels(box, inset));
  painter.setPen(Qt::NoPen);
  painter.setBrush(colour);
  painter.drawRects(rects.data(), static_cast<int>(rects.size()));
}

}  // namespace

void paint_weave(QPainter& painter, const QRectF& box, const QRectF& shown, const ClothLook& look) {
  const QRectF seen = box.intersected(shown);
  if (box.width() < kLeastWoven) return painter.fillRect(seen, look.cloth);
  painter.setBrushOrigin(box.topLeft().toPoint());
  painter.fillRect(seen, QBrush(weave_tile(look)));
}

// The upper and left of a shadow lie under the cloth.
void paint_shadow(QPainter& painter, const QRectF& box) {
  for (int i = 3; i >= 1; --i) {
    const QColor shade(0, 0, 0, 22);
    painter.fillRect(QRectF(box.right(), box.top(), 2 * i, box.height() + 2 * i), shade);
    painter.fillRect(QRectF(box.left(), box.bottom(), box.width(), 2 * i), shade);
  }
}

bool has_words(const QRectF& box) {
  return shorter(box) >= kLeastLarge && std::max(box.width(), box.height()) >= kLeastWords;
}

bool SmallPatches::takes(const QRectF& box, bool rest) {
  const double least = shorter(box);
  if (least >= (rest ? kLeastOutlined : kLeastLarge)) return false;
  (rest ? rests_ : least >= kLeastOutlined ? outlined_ : bare_).push_back(box);
  return true;
}

// An outline is what a smaller ground leaves of a larger one.
void SmallPatches::paint(QPainter& painter, const ClothLook& look) const {
  const QColor panel = mixed(look.cloth, panel_tint(look, false));
  paint_grounds(painter, bare_, panel, 0);
  paint_grounds(painter, outlined_, look.chalk, 0);
  paint_grounds(painter, outlined_, panel, 1);
  paint_grounds(painter, rests_, mixed(look.cloth, kWaste), 0);
}

void paint_panel(QPainter& painter, const QRectF& box, const ClothLook& look, int panel,
                 const PanelWords& words, bool lit) {
  painter.fillRect(box, panel_tint(look, lit));
  if (shorter(box) < kLeastOutlined) return;
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(look.chalk, lit ? 3 : 1));  // any wider one is painted ten times slower
  painter.drawRect(box.adjusted(1.5, 1.5, -1.5, -1.5));
  const QRectF label = label_on(box);
  paint_label(painter, label, panel);
  if (has_words(box)) paint_words(painter, room_for_words(box, label), words, look.chalk);
}

void paint_rest(QPainter& painter, const QRectF& box, const ClothLook& look, const QString& size,
                bool remnant, bool lit) {
  painter.fillRect(box, remnant ? kKept : kWaste);
  draw_hatch(painter, box, Hatch::falling, remnant ? 14 : 6, faint(look.chalk, lit ? 220 : 120), 1);
  const QFontMetricsF metrics(painter.font());
  const QSizeF room(metrics.horizontalAdvance(size) + 14, metrics.height() + 6);
  const bool upwards = room.width() > box.width() && box.height() > box.width();
  const QSizeF needed = upwards ? room.transposed() : room;
  if (needed.width() > box.width() || needed.height() > box.height()) return;
  const QRectF tag(box.center() - QPointF(needed.width() / 2, needed.height() / 2), needed);
  painter.setPen(QPen(board_colours(look.dark).on_tag, 1, remnant ? Qt::SolidLine : Qt::DotLine));
  painter.setBrush(board_colours(look.dark).tag);
  painter.drawRoundedRect(tag, 3, 3);
  paint_words(painter, tag, {size, {}}, board_colours(look.dark).on_tag);
}

void paint_selvedge(QPainter& painter, const QRectF& band, const ClothLook& look) {
  painter.fillRect(band, faint(look.chalk, 60));
  draw_hatch(painter, band, band.width() > band.height() ? Hatch::upright : Hatch::level, 3, faint(look.chalk, 150), 1);
}

void paint_fold_edge(QPainter& painter, const QLineF& edge, const QPointF& inward, const ClothLook& look) {
  for (int i = 1; i <= 5; ++i) {
    painter.setPen(QPen(QColor(0, 0, 0, 26), 2 * i, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(edge.translated(-inward * 1.5));
  }
  const QPointF a = inward * 1.5, b = -inward * 2.5;
  QPainterPath path;
  path.moveTo(edge.p1() + a);
  path.lineTo(edge.p2() + a);
  path.quadTo(edge.p2() + (a + b) / 2 + (edge.p2() - edge.p1()) / std::max(1.0, edge.length()) * 3, edge.p2() + b);
  path.lineTo(edge.p1() + b);
  path.quadTo(edge.p1() + (a + b) / 2 - (edge.p2() - edge.p1()) / std::max(1.0, edge.length()) * 3, edge.p1() + a);
  painter.setPen(QPen(look.chalk, 1.3));
  painter.setBrush(look.cloth);
  painter.drawPath(path);
}

void paint_fold_line(QPainter& painter, const QLineF& line, const ClothLook& look, bool held) {
  painter.setPen(QPen(QColor(0, 0, 0, 90), held ? 6 : 4));
  painter.drawLine(line);
  QPen chalk(held ? board_colours(false).tape : look.chalk, held ? 3 : 2, Qt::CustomDashLine);
  chalk.setDashPattern({7, 4});
  painter.setPen(chalk);
  painter.drawLine(line);
}

void paint_nap(QPainter& painter, const QLineF& arrow, const QColor& ink) {
  painter.setPen(QPen(ink, 2, Qt::SolidLine, Qt::RoundCap));
  painter.drawLine(arrow);
  QLineF side = QLineF::fromPolar(8, arrow.angle() + 150).translated(arrow.p2());
  painter.drawLine(side);
  side = QLineF::fromPolar(8, arrow.angle() - 150).translated(arrow.p2());
  painter.drawLine(side);
}

}  // namespace foldyard
