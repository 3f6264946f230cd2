#include "drawing/folded_picture.h"

#include <QPainter>
#include <algorithm>

#include "drawing/disc_places.h"
#include "drawing/edge_marks.h"
#include "drawing/flat_picture.h"
#include "drawing/flaw_marks.h"
#include "drawing/flaw_words.h"
#include "drawing/label.h"
#include "drawing/palette.h"
#include "drawing/repeat_words.h"
#include "drawing/strokes.h"
#include "drawing/tape.h"
#include "drawing/text.h"
#include "drawing/words.h"
#include "language/local_numbers.h"
#include "language/tr.h"
#include "measure/index.h"

namespace foldyard {

namespace {

constexpr double kTape = 2.4;
constexpr double kTapeGap = 1.4;
const TextStyle kSmall{kSmallestPoints, false, false, palette::soft_ink()};

std::vector<EdgeMark> marks_of(const PatternData& data, const ClothFrame& frame,
                               Direction direction) {
  std::vector<EdgeMark> marks;
  for (const Cut& cut : data.pattern.cuts) {
    if (cut.direction != direction) continue;
    const double at = direction == Direction::along ? frame.x(cut.at) : frame.y(cut.at);
    const Unit unit = data.job.unit;
    marks.push_back({at, local_numbers(QString::fromStdString(unit == Unit::yard ? write_length(cut.at, unit)
                                                                                 : write_number(cut.at, unit)))});
  }
  return merged(std::move(marks));
}

QString taken_words(const Taken& taken) {
  const QString words = QStringLiteral("× ") + QString::number(taken.panels);
  if (taken.on_fold == taken.panels) return tr("%1 on the fold", "× 4 on the fold").arg(words);
  return taken.on_fold > 0 ? tr("%1, %2 on the fold").arg(words).arg(taken.on_fold) : words;
}

void draw_ground(QPainter& painter, const ClothFrame& frame, const PatternData& data) {
  painter.setPen(outline_pen(0.4));
  painter.setBrush(cloth_ground(data.fabric.colour));
  painter.drawRect(frame.rect(data.folded()));
  for (const CutNode& node : data.pattern.tree.nodes) {
    if (node.kind == NodeKind::take) draw_panel_ground(painter, frame.rect(node.rect), node.panel);
    if (node.kind == NodeKind::leave)
      draw_rest_ground(painter, frame.rect(node.rect), RestKind::offcut, data.fabric);
  }
}

// On the top ply; where the cloth is folded the same way as it repeats, plies
// differ and no line is drawn.
void draw_repeats(QPainter& painter, const ClothFrame& frame, const PatternData& data) {
  if (data.map.across.legs().size() == 1)
    for (Length at : repeats_across(data))
      draw_repeat_line(painter, QLineF(frame.at(at, Length()), frame.at(at, data.pattern.folded_along)));
  if (data.map.along.legs().size() == 1)
    for (Length at : repeats_along(data))
      draw_repeat_line(painter, QLineF(frame.at(Length(), at), frame.at(data.pattern.folded_across, at)));
}

// Most numbers stand at the left end of a cut or at the near end of one.
QRectF clear_of_discs(const QRectF& rect) {
  const double left = rect.width() > 14 ? kDiscRadius + 1.4 : 0;
  const double below = rect.height() > 16 ? kDiscRadius + 1.4 : 0;
  return rect.adjusted(left, 0, 0, -below);
}

std::vector<QRectF> label_taken(QPainter& painter, const ClothFrame& frame,
                                const PatternData& data) {
  std::vector<QRectF> covered;
  for (const CutNode& node : data.pattern.tree.nodes) {
    if (node.kind != NodeKind::take) continue;
    const std::string& name = data.job.panels[ix(node.panel)].name;
    const QString words = taken_words(taken_from(data.pattern, node));
    covered.push_back(
        draw_label(painter, clear_of_discs(frame.rect(node.rect)),
                   {QString::fromStdString(name), words, panel_code(node.panel), 7.5, true}));
  }
  return covered;
}

// On whatever ply they lie; the flat picture names them.
void draw_flaws(QPainter& painter, const ClothFrame& frame, const PatternData& data) {
  for (const FlawUnder& under : flaws_under(data.job, data.plan, data.index))
    for (const Rect& place : folded_places(data.map, under.flat))
      draw_flaw(painter, frame.rect(place), QString::number(under.length + 1),
                frame.rect(data.folded()));
}

QLineF line_of(const Cut& cut, const ClothFrame& frame) {
  if (cut.direction == Direction::along)
    return {frame.at(cut.at, cut.over.from), frame.at(cut.at, cut.over.to)};
  return {frame.at(cut.over.from, cut.at), frame.at(cut.over.to, cut.at)};
}

void draw_cuts(QPainter& painter, const ClothFrame& frame, const PatternData& data,
               std::vector<QRectF> covered) {
  std::vector<QLineF> lines;
  for (const Cut& cut : data.pattern.cuts) lines.push_back(line_of(cut, frame));
  painter.setPen(cut_pen());
  for (const QLineF& line : lines) painter.drawLine(line);
  const std::vector<QPointF> places = disc_places(lines, std::move(covered));
  for (std::size_t i = 0; i < places.size(); ++i)
    draw_disc(painter, places[i], QString::number(i + 1));
}

// A selvedge that another ply covers shows only as a thin dashed line.
bool is_covered(const AxisMap& axis, const Leg& leg, Length at) {
  return std::any_of(axis.legs().begin(), axis.legs().end(), [&](const Leg& other) {
    return other.level > leg.level && other.folded.from < at && at < other.folded.to;
  });
}

void draw_selvedge_of(QPainter& painter, const ClothFrame& frame, const PatternData& data,
                      const Leg& leg, bool left_one) {
  const bool at_low_end = left_one != leg.mirrored;
  const Length at = at_low_end ? leg.folded.from : leg.folded.to;
  const QLineF line(frame.at(at, Length()), frame.at(at, data.pattern.folded_along));
  if (is_covered(data.map.across, leg, at)) {
    painter.setPen(QPen(palette::soft_ink(), 0.2, Qt::DashLine));
    painter.drawLine(line);
    return;
  }
  const double band = std::max(0.8, frame.scale.mm(data.fabric.selvedge));
  draw_selvedge(painter, line, at_low_end ? -band : band);
}

void draw_edges(QPainter& painter, const ClothFrame& frame, const PatternData& data) {
  const AxisMap& across = data.map.across;
  draw_selvedge_of(painter, frame, data, across.legs().front(), true);
  draw_selvedge_of(painter, frame, data, across.legs().back(), false);
  for (const FoldEdge& edge : across.edges())
    draw_fold_edge(
        painter, QLineF(frame.at(edge.at, Length()), frame.at(edge.at, data.pattern.folded_along)));
  for (const FoldEdge& edge : data.map.along.edges())
    draw_fold_edge(painter, QLineF(frame.at(Length(), edge.at),
                                   frame.at(data.pattern.folded_across, edge.at)));
}

void draw_zones(QPainter& painter, const ClothFrame& frame, const PatternData& data) {
  const double y = frame.y(data.pattern.folded_along) - 1.6;
  for (const PlyZone& zone : ply_zones(data.map)) {
    const double x0 = frame.x(zone.across.from) + 0.3, x1 = frame.x(zone.across.to) - 0.3;
    painter.setPen(QPen(palette::soft_ink(), 0.2));
    painter.drawPolyline(
        QPolygonF({QPointF(x0, y), QPointF(x0, y - 1), QPointF(x1, y - 1), QPointF(x1, y)}));
    QString words = tr("%n ply(ies)", nullptr, zone.plies);
    if (text_width(words, kSmall) > x1 - x0) words = QString::number(zone.plies);
    draw_text(painter, QRectF(x0 - 1, y - 4.2, x1 - x0 + 2, 3), words, kSmall, Qt::AlignCenter);
  }
}

// Right of the cloth, or above it where the nap runs from selvedge to selvedge:
// the same for all plies, as no plan lays one against it.
void draw_nap(QPainter& painter, const ClothFrame& frame, const PatternData& data) {
  if (data.fabric.nap != Nap::one_way) return;
  const QRectF cloth = frame.rect(data.folded());
  if (data.fabric.railroaded) return draw_nap_right(painter, cloth.topLeft() + QPointF(0, -7.6));
  draw_nap_away(painter, cloth.bottomRight() + QPointF(2.6, -1), cloth.height() - 2);
}

void draw_tapes(QPainter& painter, const ClothFrame& frame, const PatternData& data) {
  const QRectF cloth = frame.rect(data.folded());
  const QMarginsF room = folded_margins(data, frame.scale);
  const QRectF below(cloth.left(), cloth.bottom() + kTapeGap, cloth.width(), kTape);
  const QRectF left(cloth.left() - kTapeGap - kTape, cloth.top(), kTape, cloth.height());
  draw_plain_tape(painter, below, frame.scale, data.pattern.folded_across, data.job.unit);
  draw_plain_tape_upright(painter, left, frame.scale, data.pattern.folded_along, data.job.unit);
  draw_marks_below(painter, QLineF(below.bottomLeft(), below.bottomRight()),
                   room.bottom() - kTape - kTapeGap - 3, marks_of(data, frame, Direction::along));
  draw_marks_left(painter, QLineF(left.bottomLeft(), left.topLeft()),
                  room.left() - kTape - kTapeGap, marks_of(data, frame, Direction::across));
}

void draw_edge_names(QPainter& painter, const ClothFrame& frame, const PatternData& data) {
  const QRectF cloth = frame.rect(data.folded());
  const double bottom = cloth.bottom() + folded_margins(data, frame.scale).bottom();
  const QString words = tr("near end: %1 · left: %2").arg(near_end_name(data.map), left_edge_name(data.map));
  const double width = text_width(words, kSmall) + 0.5,
               spare = std::max(0.0, (width - cloth.width()) / 2);
  draw_text(painter, QRectF(cloth.left() - spare, bottom - 3, cloth.width() + 2 * spare, 3), words,
            kSmall, Qt::AlignCenter);
}

}  // namespace

QMarginsF folded_margins(const PatternData& data, const Scale& scale) {
  const ClothFrame frame{{}, scale};
  const double left = kTape + kTapeGap + marks_depth(marks_of(data, frame, Direction::across));
  const double below =
      kTape + kTapeGap + 3 +
      marks_height(scale.mm(data.pattern.folded_across), marks_of(data, frame, Direction::along));
  const bool one_way = data.fabric.nap == Nap::one_way, railroaded = data.fabric.railroaded;
  return {left, one_way && railroaded ? 10.0 : 6.2, one_way && !railroaded ? 6.6 : 2.0, below};
}

void draw_folded(QPainter& painter, const ClothFrame& frame, const PatternData& data) {
  draw_ground(painter, frame, data);
  draw_repeats(painter, frame, data);
  draw_edges(painter, frame, data);
  draw_zones(painter, frame, data);
  draw_tapes(painter, frame, data);
  draw_edge_names(painter, frame, data);
  draw_nap(painter, frame, data);
  const std::vector<QRectF> covered = label_taken(painter, frame, data);
  draw_flaws(painter, frame, data);
  draw_cuts(painter, frame, data, covered);
}

}  // namespace foldyard
