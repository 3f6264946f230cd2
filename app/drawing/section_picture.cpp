#include "drawing/section_picture.h"

#include <QPainter>
#include <algorithm>
#include <map>

#include "drawing/edge_marks.h"
#include "drawing/palette.h"
#include "drawing/ribbon.h"
#include "drawing/strokes.h"
#include "drawing/text.h"
#include "drawing/words.h"
#include "language/tr.h"

namespace foldyard {

namespace {

constexpr double kHead = 9.5;    // discs and blades above the plies
constexpr double kFoot = 1.6;    // the table
constexpr double kNames = 27.0;  // ply names at the right
constexpr double kNapNames = 47.0;  // the same with the nap of each
const TextStyle kSmall{kSmallestPoints, false, false, palette::soft_ink()};

// Wider where a language has longer words for the faces or the nap.
double names_width(const PatternData& data, const AxisMap& axis) {
  const bool has_nap = data.fabric.nap == Nap::one_way;
  const QString ply = tr("ply %1").arg(highest_level(axis) + 1) + QStringLiteral(", ");
  double nap = 0;
  for (const bool across : {false, true})
    for (const bool along : {false, true}) {
      Ply lying;
      lying.mirrored_across = across;
      lying.mirrored_along = along;
      if (has_nap) nap = std::max(nap, text_width(QStringLiteral(", ") + nap_words(lying, data.fabric), kSmall));
    }
  const double face = std::max(text_width(ply + tr("face down"), kSmall), text_width(ply + tr("face up"), kSmall));
  return std::max(has_nap ? kNapNames : kNames, face + nap + 0.5);
}

RibbonShape shape_of(const AxisMap& axis) {
  return highest_level(axis) < 8 ? RibbonShape{3.6, 1.5} : RibbonShape{2.9, 1.1};
}

double top_of(const AxisMap& axis) {
  const RibbonShape shape = shape_of(axis);
  return level_height(shape, highest_level(axis)) + shape.thickness / 2 + 0.4;
}

void draw_ribbon(QPainter& painter, const Ribbon& ribbon, const QColor& ground) {
  QPolygonF body = ribbon.face;
  for (auto point = ribbon.back.rbegin(); point != ribbon.back.rend(); ++point) body << *point;
  painter.setPen(Qt::NoPen);
  painter.setBrush(ground);
  painter.drawPolygon(body);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(palette::soft_ink(), 0.16, Qt::SolidLine, Qt::FlatCap));
  painter.drawPolyline(ribbon.back);
  painter.setPen(QPen(palette::ink(), 0.6, Qt::SolidLine, Qt::FlatCap));
  painter.drawPolyline(ribbon.face);
}

void draw_table(QPainter& painter, double width) {
  painter.setPen(QPen(palette::soft_ink(), 0.5));
  painter.drawLine(QLineF(-2, 0.2, width + 2, 0.2));
  draw_hatch(painter, QRectF(-2, 0.4, width + 4, 1.1), Hatch::rising, 1.2, palette::thread(), 0.2);
}

// The nap of one leg of the section, as if nothing were folded the other way.
QString leg_nap(const PatternData& data, Direction direction, const Leg& leg) {
  Ply ply;
  (direction == Direction::along ? ply.mirrored_across : ply.mirrored_along) = leg.mirrored;
  return nap_words(ply, data.fabric);
}

// "ply 2, face down, nap away from you"; legs that lie equally high but
// differently are named without their face, and the nap only on one-way cloth.
QString ply_name(const PatternData& data, const AxisMap& axis, Direction direction,
                 const std::vector<int>& levels, int level) {
  QStringList words{tr("ply %1").arg(level + 1)};
  QStringList faces, naps;
  for (std::size_t i = 0; i < levels.size(); ++i) {
    if (levels[i] != level) continue;
    faces << (axis.legs()[i].mirrored ? tr("face down") : tr("face up"));
    naps << leg_nap(data, direction, axis.legs()[i]);
  }
  faces.removeDuplicates();
  naps.removeDuplicates();
  if (faces.size() == 1) words << faces;
  if (naps.size() == 1 && data.fabric.nap == Nap::one_way) words << naps;
  return words.join(QStringLiteral(", "));
}

void draw_names(QPainter& painter, const PatternData& data, const AxisMap& axis,
                Direction direction, double left) {
  const std::vector<int> levels = settled_levels(axis);
  for (int level = 0; level <= highest_level(axis); ++level) {
    const double y = -level_height(shape_of(axis), level);
    draw_text(painter, QRectF(left, y - 1.5, names_width(data, axis), 3),
              ply_name(data, axis, direction, levels, level), kSmall);
  }
}

// The numbers of the cuts at each place, in the order of cutting.
std::map<Length, QString> numbers_by_place(const PatternData& data, Direction direction) {
  std::map<Length, QString> numbers;
  for (std::size_t i = 0; i < data.pattern.cuts.size(); ++i) {
    const Cut& cut = data.pattern.cuts[i];
    if (cut.direction != direction) continue;
    QString& words = numbers[cut.at];
    words += (words.isEmpty() ? QString() : QStringLiteral(" ")) + QString::number(i + 1);
  }
  return numbers;
}

// Many cuts at one place: the first and the last of them name it.
QString short_numbers(const QString& words) {
  const QStringList all = words.split(QLatin1Char(' '));
  return all.size() <= 3 ? words : all.front() + QStringLiteral(" … ") + all.back();
}

void draw_blades(QPainter& painter, const PatternData& data, const Scale& scale,
                 Direction direction, double top, double width) {
  const std::map<Length, QString> numbers = numbers_by_place(data, direction);
  std::vector<double> places;
  double gap = 2 * kDiscRadius;
  for (const auto& [at, words] : numbers) {
    places.push_back(scale.mm(at));
    gap = std::max(gap, disc_width(short_numbers(words)) + 0.5);
  }
  const std::vector<double> discs = spread(places, gap, -2, width + 2);
  std::size_t i = 0;
  for (const auto& [at, words] : numbers) {
    const QPointF tip(places[i], -top - 0.4), disc(discs[i], -top - 6.6);
    painter.setPen(QPen(palette::blade(), 0.25, Qt::DashLine));
    painter.drawLine(QLineF(tip.x(), tip.y(), tip.x(), 0));
    painter.setPen(QPen(palette::blade(), 0.2));
    painter.drawLine(QLineF(tip - QPointF(0, 2.2), disc));
    draw_blade(painter, tip);
    draw_disc(painter, disc, short_numbers(words));
    ++i;
  }
}

}  // namespace

double section_height(const AxisMap& axis) {
  return kHead + top_of(axis) + kFoot;
}

Scale section_scale(const PatternData& data, const AxisMap& axis, double width, bool round) {
  const double room =
      std::max(8.0, width - names_width(data, axis) - 2 * (ribbon_bulge(axis, shape_of(axis)) + 2.5));
  const double needed = axis.folded_size().in_mm() / room;
  return round ? round_scale(needed) : free_scale(needed);
}

void draw_section(QPainter& painter, const QRectF& area, const Scale& scale,
                  const PatternData& data, const AxisMap& axis, Direction direction) {
  const double bulge = ribbon_bulge(axis, shape_of(axis)) + 2.5,
               width = scale.mm(axis.folded_size());
  painter.save();
  painter.translate(area.left() + bulge, area.top() + kHead + top_of(axis));
  draw_table(painter, width);
  draw_ribbon(painter, ribbon_of(axis, scale, shape_of(axis)), cloth_ground(data.fabric.colour));
  draw_names(painter, data, axis, direction, width + bulge + 0.5);
  draw_blades(painter, data, scale, direction, top_of(axis), width);
  painter.restore();
}

}  // namespace foldyard
