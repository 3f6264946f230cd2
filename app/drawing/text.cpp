#include "drawing/text.h"

#include <QFont>
#include <QFontDatabase>
#include <QFontMetricsF>
#include <QGuiApplication>
#include <QPainter>
#include <QRawFont>

namespace foldyard {

namespace {

// Fonts are set at this many pixels and scaled by the painter, so that
// metrics and pictures do not depend on any resolution.
constexpr int kPixels = 100;

QString family(bool serif) {
  static const QStringList all = QFontDatabase::families();
  const QString wanted = serif ? QStringLiteral("DejaVu Serif") : QStringLiteral("DejaVu Sans");
  if (all.contains(wanted)) return wanted;
  return QFontDatabase::systemFont(QFontDatabase::GeneralFont).family();
}

QFont font_of(const TextStyle& style) {
  QFont font(family(style.serif));
  font.setPixelSize(kPixels);
  font.setBold(style.bold);
  font.setHintingPreference(QFont::PreferNoHinting);
  font.setStyleStrategy(QFont::StyleStrategy(QFont::PreferOutline | QFont::PreferAntialias));
  return font;
}

const QFontMetricsF& metrics_of(const TextStyle& style) {
  static const QFontMetricsF faces[4] = {
      QFontMetricsF(font_of({8, false, false, {}})), QFontMetricsF(font_of({8, true, false, {}})),
      QFontMetricsF(font_of({8, false, true, {}})), QFontMetricsF(font_of({8, true, true, {}}))};
  return faces[(style.serif ? 2 : 0) + (style.bold ? 1 : 0)];
}

double mm_per_pixel(const TextStyle& style) {
  return style.points * kMmPerPoint / kPixels;
}

double baseline(const QRectF& box, const TextStyle& style, Qt::Alignment alignment) {
  const double cap = metrics_of(style).capHeight() * mm_per_pixel(style);
  if (alignment & Qt::AlignTop) return box.top() + metrics_of(style).ascent() * mm_per_pixel(style);
  if (alignment & Qt::AlignBottom)
    return box.bottom() - metrics_of(style).descent() * mm_per_pixel(style);
  return box.center().y() + cap / 2;
}

double left_of(const QRectF& box, double width, Qt::Alignment alignment) {
  if (alignment & Qt::AlignRight) return box.right() - width;
  if (alignment & Qt::AlignHCenter) return box.center().x() - width / 2;
  return box.left();
}

// How many leading characters fit the width; at least one, so that wrapping
// ends. Never parts a surrogate pair.
qsizetype fitting(const QString& word, const TextStyle& style, double width) {
  qsizetype n = 1;
  while (n < word.size() && text_width(word.left(n + 1), style) <= width) ++n;
  if (n < word.size() && word[n].isLowSurrogate()) n += n > 1 ? -1 : 1;
  return n;
}

}  // namespace

bool font_is_ready() {
  const TextStyle plain;
  return QRawFont::fromFont(font_of(plain)).supportsCharacter(QLatin1Char('W')) &&
         text_width(QStringLiteral("i"), plain) != text_width(QStringLiteral("W"), plain);
}

double text_width(const QString& text, const TextStyle& style) {
  return metrics_of(style).horizontalAdvance(text) * mm_per_pixel(style);
}

double line_height(const TextStyle& style) {
  return style.points * kMmPerPoint * 1.28;
}

QString elided(const QString& text, const TextStyle& style, double width) {
  return metrics_of(style).elidedText(text, Qt::ElideRight, width / mm_per_pixel(style) + 0.01);
}

QStringList wrapped(const QString& text, const TextStyle& style, double width) {
  QStringList lines;
  QString line;
  for (QString word : text.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
    const QString longer = line.isEmpty() ? word : line + QLatin1Char(' ') + word;
    if (text_width(longer, style) <= width) {
      line = longer;
      continue;
    }
    if (!line.isEmpty()) lines << line;
    while (text_width(word, style) > width && word.size() > 1) {
      const qsizetype n = fitting(word, style, width);
      if (n >= word.size()) break;
      lines << word.left(n);
      word = word.mid(n);
    }
    line = word;
  }
  if (!line.isEmpty()) lines << line;
  return lines;
}

double paragraph_height(const QString& text, const TextStyle& style, double width) {
  return static_cast<double>(wrapped(text, style, width).size()) * line_height(style);
}

void draw_text(QPainter& painter, const QRectF& box, const QString& text, const TextStyle& style,
               Qt::Alignment alignment) {
  const QString shown = elided(text, style, box.width());
  if (shown.isEmpty()) return;
  painter.save();
  painter.translate(left_of(box, text_width(shown, style), alignment),
                    baseline(box, style, alignment));
  painter.scale(mm_per_pixel(style), mm_per_pixel(style));
  painter.setFont(font_of(style));
  painter.setPen(style.colour);
  painter.drawText(QPointF(0, 0), shown);
  painter.restore();
}

void draw_upward(QPainter& painter, const QRectF& box, const QString& text, const TextStyle& style,
                 Qt::Alignment alignment) {
  painter.save();
  painter.translate(box.left(), box.bottom());
  painter.rotate(-90);
  draw_text(painter, QRectF(0, 0, box.height(), box.width()), text, style, alignment);
  painter.restore();
}

double draw_paragraph(QPainter& painter, const QPointF& top_left, double width, const QString& text,
                      const TextStyle& style, Qt::Alignment alignment) {
  double y = top_left.y();
  for (const QString& line : wrapped(text, style, width)) {
    draw_text(painter, QRectF(top_left.x(), y, width, line_height(style)), line, style,
              alignment | Qt::AlignVCenter);
    y += line_height(style);
  }
  return y - top_left.y();
}

}  // namespace foldyard
