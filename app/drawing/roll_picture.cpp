#include "drawing/roll_picture.h"

#include <QPainter>
#include <algorithm>

#include "drawing/edge_marks.h"
#include "drawing/flaw_marks.h"
#include "drawing/flaw_words.h"
#include "drawing/label.h"
#include "drawing/palette.h"
#include "drawing/strokes.h"
#include "drawing/tape.h"
#include "drawing/text.h"
#include "drawing/words.h"
#include "job/roll_of.h"
#include "language/local_numbers.h"
#include "language/tr.h"
#include "measure/index.h"

namespace foldyard {

namespace {

constexpr double kTape = 4.2;
constexpr double kBetweenRows = 2.2;

Length row_length(const Scale& scale, double width) {
  return Length::units(static_cast<std::int64_t>(width * scale.denominator * Length::kUnitsPerMm));
}

// Where the roll is cut across: both ends of every length.
std::vector<EdgeMark> cut_marks(const RollRow& row, const Scale& scale, double left, Unit unit) {
  std::vector<EdgeMark> marks;
  for (const RollStretch& stretch : row.stretches) {
    if (stretch.kind != StretchKind::length) continue;
    for (Length at : {stretch.on_roll.from, stretch.on_roll.to})
      marks.push_back({left + scale.mm(at - row.on_roll().from),
                       local_numbers(QString::fromStdString(unit == Unit::yard ? write_length(at, unit)
                                                                               : write_number(at, unit)))});
  }
  return merged(marks);
}

double marks_room(const std::vector<RollRow>& rows, const Scale& scale, Unit unit) {
  double room = 0;
  for (const RollRow& row : rows)
    room = std::max(room,
                    marks_height(scale.mm(row.on_roll().size()), cut_marks(row, scale, 0, unit)));
  return room;
}

QString cut_out_name() { return tr("cut out"); }
QString rest_name(bool kept) { return kept ? tr("remnant") : tr("offcut"); }
QString lay_name(int pattern, int lay) {
  return tr("%1 lay %2", "pattern, number").arg(pattern_letter(pattern)).arg(lay + 1);
}

struct RowPainter {
  QPainter& painter;
  const Job& job;
  const Plan& plan;
  const RollLayout& layout;
  QRectF cloth;

  QRectF box(Span on_roll, Span row) const {
    return {cloth.left() + layout.scale.mm(on_roll.from - row.from), cloth.top(),
            layout.scale.mm(on_roll.size()), cloth.height()};
  }

  void draw_plain(const QRectF& rect, const RollStretch& stretch) const {
    const bool kept = stretch.kind == StretchKind::remnant;
    painter.setPen(outline_pen(0.2));
    painter.setBrush(kept ? cloth_ground(roll_of(job, plan).fabric.colour) : palette::paper());
    painter.drawRect(rect);
    if (!kept) draw_hatch(painter, rect, Hatch::rising, 1.4, palette::soft_ink(), 0.14);
    if (stretch.kind == StretchKind::loss) return;
    if (stretch.kind == StretchKind::cut_out) {
      draw_label(painter, rect, {cut_out_name(), length_words(stretch.on_roll.size(), job.unit), QString(), 7, false});
      return;
    }
    // Breakable here: a narrow remnant shows its size on two lines.
    QString size = size_words(roll_of(job, plan).fabric.width, plan.remnant.size(), job.unit);
    size.replace(QChar(0xa0), QLatin1Char(' '));
    const QString name = rest_name(kept);
    draw_label(painter, rect, {name, size, kept ? QStringLiteral("R") : QString(), 7.5, kept});
  }

  // The allowance is what the span holds beyond the pattern's own length, half
  // of it at either end.
  void draw_allowance(const QRectF& rect, const RollStretch& stretch) const {
    const Length allowance = job.losses.allowance;
    if (allowance <= Length()) return;
    const Length before = allowance / 2;
    const double first = std::min(layout.scale.mm(before), rect.width());
    const double last = std::min(layout.scale.mm(allowance - before), rect.width());
    const Span whole = plan.lengths[ix(stretch.number)].on_roll;
    if (stretch.on_roll.from == whole.from)
      draw_band(QRectF(rect.left(), rect.top(), first, rect.height()));
    if (stretch.on_roll.to == whole.to)
      draw_band(QRectF(rect.right() - last, rect.top(), last, rect.height()));
  }

  void draw_band(const QRectF& band) const {
    painter.setPen(Qt::NoPen);
    painter.setBrush(palette::paper());
    painter.drawRect(band);
    draw_hatch(painter, band, Hatch::rising, 0.8, palette::soft_ink(), 0.14);
  }

  void draw_length(const QRectF& rect, const RollStretch& stretch) const {
    const int lay = plan.lengths[ix(stretch.number)].lay;
    const int pattern = plan.lays[ix(lay)].pattern;
    painter.setPen(Qt::NoPen);
    painter.setBrush(lay % 2 == 0 ? cloth_ground(roll_of(job, plan).fabric.colour)
                                  : palette::pale());
    painter.drawRect(rect);
    draw_allowance(rect, stretch);
    painter.setPen(outline_pen(0.3));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(rect);
    const QString number = QString::number(stretch.number + 1);
    const QString detail =
        lay_name(pattern, lay);
    draw_label(painter, rect, {number, detail, number, 9, true});
  }

  // The left edge of the cloth is the upper one, the free end being at the left.
  QRectF place(const Rect& on_roll, Span row) const {
    const Rect shown{on_roll.across, intersection(on_roll.along, row)};
    return {cloth.left() + layout.scale.mm(shown.along.from - row.from),
            cloth.top() + layout.scale.mm(shown.across.from), layout.scale.mm(shown.along.size()),
            layout.scale.mm(shown.across.size())};
  }

  void draw_lost_panels(Span row) const {
    for (const LostPanel& lost : plan.lost) {
      const LengthOnRoll& length = plan.lengths[ix(lost.length)];
      const Lay& lay = plan.lays[ix(length.lay)];
      const Rect& flat = plan.patterns[ix(lay.pattern)]
                             .panels[ix(lost.panel)]
                             .flat;
      const Length start = length.pattern_start(job.losses.allowance);
      const Rect on_roll{flat.across, {start + flat.along.from, start + flat.along.to}};
      if (!row.overlaps(on_roll.along)) continue;
      const QRectF rect = place(on_roll, row);
      painter.setPen(outline_pen(0.2));
      painter.setBrush(Qt::NoBrush);
      painter.drawRect(rect);
      draw_lost(painter, rect);
    }
  }

  void draw_flaws(Span row) const {
    for (const Flaw& flaw : roll_of(job, plan).flaws)
      if (row.overlaps(flaw.along))
        draw_flaw(painter, place({flaw.across, flaw.along}, row), flaw_name(flaw), cloth);
  }

  void draw(const RollRow& row) const {
    const Span span = row.on_roll();
    for (const RollStretch& stretch : row.stretches) {
      const QRectF rect = box(stretch.on_roll, span);
      stretch.kind == StretchKind::length ? draw_length(rect, stretch) : draw_plain(rect, stretch);
    }
    draw_lost_panels(span);
    draw_flaws(span);
    const double band =
        std::min(0.9, std::max(0.4, layout.scale.mm(roll_of(job, plan).fabric.selvedge)));
    draw_selvedge(painter, QLineF(cloth.topLeft(), cloth.topRight()), -band);
    draw_selvedge(painter, QLineF(cloth.bottomLeft(), cloth.bottomRight()), band);
    draw_marks_above(painter, QLineF(cloth.topLeft(), cloth.topRight()), layout.marks,
                     cut_marks(row, layout.scale, cloth.left(), job.unit));
    draw_tape(painter, QRectF(cloth.left(), cloth.bottom() + 0.3, cloth.width(), kTape - 0.3),
              layout.scale, span, job.unit);
  }
};

RollLayout at_scale(const Job& job, const std::vector<RollStretch>& stretches, const Scale& scale,
                    Length width, double room) {
  RollLayout layout{scale, rows_of(stretches, row_length(scale, room)), 0, scale.mm(width), 0};
  layout.marks = marks_room(layout.rows, scale, job.unit);
  layout.height = static_cast<double>(layout.rows.size()) *
                  (layout.marks + layout.cloth + kTape + kBetweenRows);
  return layout;
}

}  // namespace

RollLayout lay_out_roll(const Job& job, const Plan& plan, const QSizeF& room) {
  const std::vector<RollStretch> stretches = roll_stretches(job, plan);
  const Length width = roll_of(job, plan).fabric.width;
  RollLayout layout;
  for (Scale scale = round_scale(5); scale.denominator < 1e6;
       scale = round_scale(scale.denominator * 1.01)) {
    layout = at_scale(job, stretches, scale, width, room.width());
    if (layout.height <= room.height()) break;
  }
  return layout;
}

void draw_roll(QPainter& painter, const QPointF& top_left, const RollLayout& layout, const Job& job,
               const Plan& plan) {
  double y = top_left.y();
  for (const RollRow& row : layout.rows) {
    const QRectF cloth(top_left.x(), y + layout.marks, layout.scale.mm(row.on_roll().size()),
                       layout.cloth);
    RowPainter{painter, job, plan, layout, cloth}.draw(row);
    y = cloth.bottom() + kTape + kBetweenRows;
  }
}

}  // namespace foldyard
