#include "drawing/calibration_square.h"

#include <QPainter>
#include <functional>

#include "drawing/flat_picture.h"
#include "drawing/flaw_marks.h"
#include "drawing/strokes.h"
#include "drawing/text.h"
#include "language/tr.h"

namespace foldyard {

namespace {

constexpr double kRuler = 5.6;
const TextStyle kNumber{kSmallestPoints, false, false, palette::ink()};
const TextStyle kHeading{9, true, true, palette::chalk()};
const TextStyle kBody{7.5, false, false, palette::ink()};

// Ticks from the top edge down, one every `step`; numbers every `numbered`.
void draw_ruler(QPainter& painter, double step, int numbered, int half) {
  const int ticks = static_cast<int>(kSquare / step + 1e-9);
  for (int i = 1; i <= ticks; ++i) {
    const double x = i * step, high = i % numbered == 0 ? 2.8 : i % half == 0 ? 2.0 : 1.1;
    if (x < kSquare - 0.1) {
      painter.setPen(QPen(palette::ink(), 0.14, Qt::SolidLine, Qt::FlatCap));
      painter.drawLine(QLineF(x, 0, x, high));
    }
    if (i % numbered == 0 && x < kSquare - 3)
      draw_text(painter, QRectF(x - 4, 2.9, 8, 2.6),
                QString::number(i / (numbered == 10 ? 1 : numbered)), kNumber, Qt::AlignCenter);
  }
}

void draw_rulers(QPainter& painter) {
  painter.setPen(Qt::NoPen);
  painter.setBrush(palette::tape());
  painter.drawRect(QRectF(0, 0, kSquare, kRuler));
  painter.drawRect(QRectF(0, 0, kRuler, kSquare));
  draw_ruler(painter, 1, 10, 5);
  painter.save();
  painter.translate(0, kSquare);
  painter.rotate(-90);
  draw_ruler(painter, 25.4 / 8, 8, 4);
  painter.restore();
}

using Sign = std::function<void(QPainter&, const QRectF&)>;

struct KeyLine {
  Sign sign;
  QString words;
};

QLineF middle_of(const QRectF& box) {
  return {box.left(), box.center().y(), box.right(), box.center().y()};
}

std::vector<KeyLine> key_lines() {
  return {
      {[](QPainter& p, const QRectF& b) { draw_fold_line(p, middle_of(b)); },
       tr("fold line, on the flat cloth")},
      {[](QPainter& p, const QRectF& b) { draw_fold_edge(p, middle_of(b)); },
       tr("fold edge, on the folded cloth")},
      {[](QPainter& p, const QRectF& b) { draw_selvedge(p, middle_of(b), 0.9); },
       tr("selvedge")},
      {[](QPainter& p, const QRectF& b) {
         p.setPen(cut_pen());
         p.drawLine(middle_of(b));
         draw_disc(p, b.center(), QStringLiteral("3"));
       },
       tr("cut, numbered in the order of cutting")},
      {[](QPainter& p, const QRectF& b) { draw_repeat_line(p, middle_of(b)); },
       tr("where a repeat of the pattern begins")},
      {[](QPainter& p, const QRectF& b) { draw_panel_ground(p, b, 1); },
       tr("panel: colour and hatch by kind")},
      {[](QPainter& p, const QRectF& b) { draw_rest_ground(p, b, RestKind::offcut, {}); },
       tr("offcut or loss")},
      {[](QPainter& p, const QRectF& b) { draw_rest_ground(p, b, RestKind::remnant, {}); },
       tr("remnant, back to the shelf")},
      {[](QPainter& p, const QRectF& b) {
         draw_lost(p, b);
         draw_flaw(p, QRectF(b.center().x() - 1.2, b.center().y() - 0.9, 2.4, 1.8), {}, b);
       },
       tr("flaw; crossed out: panel lost to it")},
      {[](QPainter& p, const QRectF& b) { draw_blade(p, b.center() + QPointF(0, 1.1)); },
       tr("where the blade goes through the plies")},
      {[](QPainter& p, const QRectF& b) { draw_arrow(p, middle_of(b), palette::chalk(), 0.45); },
       tr("nap, on one-way cloth; in the table: this plan")},
      {[](QPainter& p, const QRectF& b) {
         p.setPen(Qt::NoPen);
         p.setBrush(palette::chalk());
         p.drawEllipse(b.center(), 0.55, 0.55);
       },
       tr("in the table: no way beats it in worth and time")},
      {[](QPainter& p, const QRectF& b) {
         draw_text(p, b, QStringLiteral("✓"), kBody, Qt::AlignCenter);
       },
       tr("in the table: folded end to end, too")},
  };
}

constexpr double kInside = kRuler + 4;
constexpr double kWordsWidth = kSquare - kInside - 3;

// Returns where its words end.
double draw_square_with_words(QPainter& painter) {
  draw_rulers(painter);
  painter.setPen(QPen(palette::ink(), 0.3, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(QRectF(0, 0, kSquare, kSquare));
  draw_text(painter, QRectF(kInside, 8, kWordsWidth, 5),
            tr("Is the print true to scale?"), kHeading);
  return 13.6 +
         draw_paragraph(
             painter, {kInside, 13.6}, kWordsWidth,
             tr("Print at 100 % (actual size); this square must measure 100 mm on each "
                            "side. Numbers: centimetres above, inches at the left."),
             kBody);
}

}  // namespace

void draw_key(QPainter& painter, const QRectF& area) {
  constexpr double kPitch = 5.4, kSign = 12;
  double y = area.top();
  for (const KeyLine& line : key_lines()) {
    line.sign(painter, QRectF(area.left(), y + 0.9, kSign, kPitch - 2));
    draw_text(painter,
              QRectF(area.left() + kSign + 2.5, y, area.width() - kSign - 2.5, kPitch - 0.2),
              line.words, kBody);
    y += kPitch;
  }
}

void draw_plain_square(QPainter& painter, const QPointF& top_left) {
  painter.save();
  painter.translate(top_left);
  draw_square_with_words(painter);
  painter.restore();
}

void draw_calibration_square(QPainter& painter, const QPointF& top_left) {
  painter.save();
  painter.translate(top_left);
  const double below = draw_square_with_words(painter);
  draw_text(painter, QRectF(kInside, below + 4.4, kWordsWidth, 5), tr("Signs"),
            kHeading);
  draw_key(painter, QRectF(kInside, below + 10.4, kWordsWidth, kSquare));
  painter.restore();
}

}  // namespace foldyard
