#include "drawing/flat_picture.h"

#include <QPainter>
#include <algorithm>
#include <set>

#include "drawing/edge_marks.h"
#include "drawing/flaw_marks.h"
#include "drawing/flaw_words.h"
#include "drawing/label.h"
#include "drawing/palette.h"
#include "drawing/repeat_words.h"
#include "drawing/strokes.h"
#include "drawing/text.h"
#include "drawing/words.h"
#include "job/roll_of.h"
#include "language/local_numbers.h"
#include "language/tr.h"
#include "measure/index.h"

namespace foldyard {

namespace {

const TextStyle kSmall{kSmallestPoints, false, false, palette::soft_ink()};

std::vector<EdgeMark> fold_marks(const PatternData& data, const ClothFrame& frame) {
  std::vector<EdgeMark> marks;
  for (Length line : data.pattern.fold.lines)
    marks.push_back({frame.x(line), number_words(line, data.job.unit)});
  return marks;
}

std::vector<EdgeMark> end_fold_marks(const PatternData& data, const ClothFrame& frame) {
  std::vector<EdgeMark> marks;
  for (const FoldEdge& edge : data.map.along.edges())
    marks.push_back({frame.y(edge.line), number_words(edge.line, data.job.unit)});
  return marks;
}

void draw_rests(QPainter& painter, const ClothFrame& frame, const PatternData& data) {
  for (const Rest& rest : data.pattern.rests)
    draw_rest_ground(painter, frame.rect(rest.flat), rest.kind, data.fabric);
}

void label_rests(QPainter& painter, const ClothFrame& frame, const PatternData& data) {
  for (const Rest& rest : data.pattern.rests) {
    if (rest.kind == RestKind::selvedge) continue;
    const bool kept = rest.kind == RestKind::remnant;
    draw_label(
        painter, frame.rect(rest.flat),
        {kept ? tr("remnant") : tr("offcut"),
         size_words(rest.flat, data.job.unit), kept ? QStringLiteral("R") : QString(), 7, kept});
  }
}

void draw_panels(QPainter& painter, const ClothFrame& frame, const PatternData& data) {
  for (const PlacedPanel& placed : data.pattern.panels)
    draw_panel_ground(painter, frame.rect(placed.flat), placed.panel);
}

void label_panels(QPainter& painter, const ClothFrame& frame, const PatternData& data) {
  for (const PlacedPanel& placed : data.pattern.panels) {
    QString detail = panel_size_words(data.job, data.fabric, placed.panel, placed.turned);
    if (placed.turned) detail = tr("%1, turned").arg(detail);
    draw_label(
        painter, frame.rect(placed.flat),
        {QString::fromStdString(data.job.panels[ix(placed.panel)].name),
         detail, panel_code(placed.panel), 7.5, true});
  }
}

void draw_repeats(QPainter& painter, const ClothFrame& frame, const PatternData& data) {
  for (Length at : repeats_across(data))
    draw_repeat_line(painter, QLineF(frame.at(at, Length()), frame.at(at, data.pattern.length)));
  for (Length at : repeats_along(data))
    draw_repeat_line(painter, QLineF(frame.at(Length(), at), frame.at(data.fabric.width, at)));
}

// Right of the cloth, or below it where the nap runs from selvedge to selvedge.
void draw_nap(QPainter& painter, const ClothFrame& frame, const PatternData& data) {
  if (data.fabric.nap == Nap::none) return;
  const QRectF cloth = frame.rect(data.flat());
  if (data.fabric.railroaded) return draw_nap_right(painter, cloth.bottomLeft() + QPointF(1, 3.4));
  draw_nap_away(painter, cloth.bottomRight() + QPointF(5.4, -1), cloth.height() - 2);
}

// Lost in at least one length of this pattern; the flaws say in which.
void draw_lost_panels(QPainter& painter, const ClothFrame& frame, const PatternData& data) {
  std::set<int> panels;
  for (const LostPanel& lost : data.plan.lost) {
    const int lay = data.plan.lengths[ix(lost.length)].lay;
    if (data.plan.lays[ix(lay)].pattern == data.index) panels.insert(lost.panel);
  }
  for (const int panel : panels)
    draw_lost(painter, frame.rect(data.pattern.panels[ix(panel)].flat));
}

void draw_flaws(QPainter& painter, const ClothFrame& frame, const PatternData& data) {
  const Roll& roll = roll_of(data.job, data.plan);
  for (const FlawUnder& under : flaws_under(data.job, data.plan, data.index))
    draw_flaw(painter, frame.rect(under.flat),
              QString::number(under.length + 1) + QStringLiteral(": ") +
                  flaw_name(roll.flaws[ix(under.flaw)]),
              frame.rect(data.flat()));
}

void draw_folds(QPainter& painter, const ClothFrame& frame, const PatternData& data) {
  const QRectF cloth = frame.rect(data.flat());
  for (Length line : data.pattern.fold.lines)
    draw_fold_line(painter,
                   QLineF(frame.x(line), cloth.bottom() + 1.5, frame.x(line), cloth.top() - 1.5));
  for (const FoldEdge& edge : data.map.along.edges())
    draw_fold_line(painter, QLineF(cloth.left() - 1.5, frame.y(edge.line), cloth.right() + 1.5,
                                   frame.y(edge.line)));
}

void draw_edges(QPainter& painter, const ClothFrame& frame, const PatternData& data) {
  const QRectF cloth = frame.rect(data.flat());
  painter.setPen(outline_pen(0.4));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(cloth);
  const double band = std::max(0.8, frame.scale.mm(data.fabric.selvedge));
  draw_selvedge(painter, QLineF(cloth.bottomLeft(), cloth.topLeft()), -band);
  draw_selvedge(painter, QLineF(cloth.bottomRight(), cloth.topRight()), band);
  // Away from the middle, where a fold end to end has its mark.
  const double high = data.pattern.fold.way.end_to_end ? cloth.height() / 2 - 2 : cloth.height();
  draw_upward(painter, QRectF(cloth.left() - 3.4, cloth.top(), 3, high), tr("selvedge"),
              kSmall);
  draw_upward(painter, QRectF(cloth.right() + 0.6, cloth.top(), 3, high),
              tr("selvedge"), kSmall);
  draw_text(painter, QRectF(cloth.left(), cloth.bottom() + 1.8, cloth.width(), 3),
            tr("near end"), kSmall, Qt::AlignCenter);
}

}  // namespace

void draw_panel_ground(QPainter& painter, const QRectF& rect, int panel) {
  const PanelLook look = panel_look(panel);
  painter.setPen(Qt::NoPen);
  painter.setBrush(look.fill);
  painter.drawRect(rect);
  draw_hatch(painter, rect, look.hatch, 2.2, look.line, 0.2);
  painter.setPen(outline_pen(0.35));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(rect);
}

void draw_rest_ground(QPainter& painter, const QRectF& rect, RestKind kind, const Fabric& fabric) {
  painter.setPen(kind == RestKind::selvedge ? QPen(Qt::NoPen) : QPen(palette::soft_ink(), 0.14));
  painter.setBrush(kind == RestKind::remnant ? cloth_ground(fabric.colour) : palette::paper());
  painter.drawRect(rect);
  if (kind == RestKind::offcut)
    draw_hatch(painter, rect, Hatch::rising, 1.1, palette::thread(), 0.16);
}

QMarginsF flat_margins(const PatternData& data, const Scale& scale) {
  const ClothFrame frame{{}, scale};
  const double above = marks_height(scale.mm(data.fabric.width), fold_marks(data, frame));
  const double left = std::max(3.8, marks_depth(end_fold_marks(data, frame)));
  const bool beside = data.fabric.nap == Nap::one_way && !data.fabric.railroaded;
  return {left, std::max(above, 1.5) + 1.5, beside ? 9.4 : 4.0, 5.2};
}

void draw_flat(QPainter& painter, const ClothFrame& frame, const PatternData& data) {
  draw_rests(painter, frame, data);
  draw_panels(painter, frame, data);
  draw_repeats(painter, frame, data);
  draw_edges(painter, frame, data);
  draw_folds(painter, frame, data);
  draw_nap(painter, frame, data);
  label_rests(painter, frame, data);
  draw_lost_panels(painter, frame, data);
  label_panels(painter, frame, data);
  draw_flaws(painter, frame, data);
  const QRectF cloth = frame.rect(data.flat());
  const QLineF top(cloth.left(), cloth.top() - 1.5, cloth.right(), cloth.top() - 1.5);
  draw_marks_above(painter, top, flat_margins(data, frame.scale).top() - 1.5,
                   fold_marks(data, frame));
  draw_marks_left(painter,
                  QLineF(cloth.left() - 0.5, cloth.bottom(), cloth.left() - 0.5, cloth.top()),
                  flat_margins(data, frame.scale).left(), end_fold_marks(data, frame));
}

}  // namespace foldyard
