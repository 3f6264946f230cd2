#include "drawing/template_page.h"

#include <QPainter>
#include <algorithm>

#include "drawing/calibration_square.h"
#include "drawing/facts.h"
#include "drawing/front_page.h"
#include "drawing/strokes.h"
#include "drawing/template_data.h"
#include "drawing/template_tile.h"
#include "drawing/text.h"
#include "drawing/words.h"
#include "language/spoken.h"
#include "language/tr.h"
#include "measure/index.h"

namespace foldyard {

namespace {

const TextStyle kTitle{17, true, true, palette::ink()};
const TextStyle kHeading{9, true, true, palette::chalk()};
const TextStyle kAnswer{11, false, false, palette::ink()};
const TextStyle kBody{8.5, false, false, palette::ink()};
const TextStyle kCell{8, true, false, palette::ink()};
const TextStyle kHead{8, false, false, palette::soft_ink()};

const Panel& panel_of(const Sheet& sheet, int panel) {
  return sheet.job().panels[ix(panel)];
}

const Fabric& fabric_of(const Sheet& sheet) {
  return sheet.job().rolls[ix(sheet.plan().roll)].fabric;
}

TemplateData data_of(const Sheet& sheet, int panel) {
  const SheetOptions& options = sheet.options();
  return template_data(sheet.job(), fabric_of(sheet), panel,
                       tile_size(options.paper, options.landscape));
}

QString name_of(const Sheet& sheet, int panel) {
  return panel_code(panel) + QLatin1Char(' ') +
         QString::fromStdString(panel_of(sheet, panel).name);
}

QString size_of(const Sheet& sheet, int panel) {
  return panel_size_words(sheet.job(), fabric_of(sheet), panel, false);
}

// "Cut 12": how many the plan has.
QString count_words(const Sheet& sheet, int panel) {
  const std::vector<std::int64_t>& yield = sheet.plan().yield;
  const std::size_t at = static_cast<std::size_t>(panel);
  const std::int64_t count = at < yield.size() ? yield[at] : 0;
  return count > 0 ? tr("cut %1").arg(count)
                   : tr("none of them on this plan");
}

QString sewn_words(const Panel& panel) {
  if (!panel.sewn) return {};
  const int count = needed(*panel.sewn);
  return tr(" Of this panel %n go(es) into each %1.", nullptr, count).arg(spoken(kind_name(panel.sewn->goods.kind)));
}

// "seam lines (long dashes) lie 12 mm inside, hems (dots) 40 mm".
QString turning_words(const Sheet& sheet, const TemplateData& data) {
  QStringList words;
  const Turnings& lie = data.turnings;
  for (bool seam : {true, false}) {
    QStringList depths;
    for (const Turning& turning : {lie.left, lie.right, lie.near, lie.far}) {
      const QString depth = length_words(turning.depth, sheet.job().unit);
      if (turning.is_seam == seam && !turning.depth.is_zero() && !depths.contains(depth))
        depths << depth;
    }
    if (depths.isEmpty()) continue;
    QString inside = depths.takeFirst();
    for (const QString& depth : depths) inside = tr("%1 or %2").arg(inside, depth);
    words << (seam ? tr("long dashes are seam lines, %1 inside") : tr("dots are the last fold of hems, %1 inside"))
                 .arg(inside);
  }
  if (words.isEmpty()) return {};
  QString all = words.join(QStringLiteral("; "));
  all[0] = all[0].toUpper();
  return QLatin1Char(' ') + all + QLatin1Char('.');
}

QString grain_words(const Sheet& sheet, int panel) {
  const Fabric& fabric = fabric_of(sheet);
  if (fabric.nap == Nap::one_way)
    return tr("The arrow runs along the roll, away from its free end; all panels lie "
                          "the same way, as the nap runs one way.");
  return panel_of(sheet, panel).may_turn
             ? tr("The arrow runs along the roll, either way up; this panel may also lie across it.")
             : tr("The arrow runs along the roll, either way up.");
}

QString joining_words(const TileGrid& grid) {
  if (grid.tiles() == 1)
    return tr("The template stands on the next page. Cut along the full line.");
  return tr("The template stands on the next %1 pages, in %n row(s) by %2. Cut each page "
                        "along the thin frame at its left and at its top, lay it over its "
                        "neighbour up to the dashed line, so that crosses of the same name meet, "
                        "and tape. Then cut along the full line.",
            nullptr, static_cast<int>(grid.rows))
      .arg(grid.tiles())
      .arg(grid.columns);
}

// The template with its tiles, as large as the area holds.
void draw_map(QPainter& painter, const QRectF& area, const TileGrid& grid) {
  const QRectF all = QRectF(QPointF(), grid.tile_rect(static_cast<int>(grid.rows) - 1,
                                                      static_cast<int>(grid.columns) - 1)
                                           .bottomRight());
  const double scale = std::min(area.width() / all.width(), area.height() / all.height());
  painter.save();
  painter.translate(area.topLeft());
  painter.scale(scale, scale);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(palette::ink(), 0.5 / scale));
  painter.drawRect(grid.panel_rect());
  painter.setPen(QPen(palette::soft_ink(), 0.15 / scale));
  for (int row = 0; row < grid.rows; ++row)
    for (int column = 0; column < grid.columns; ++column)
      painter.drawRect(grid.tile_rect(row, column));
  painter.restore();
  for (int row = 0; row < grid.rows; ++row)
    for (int column = 0; column < grid.columns; ++column) {
      const QRectF tile = grid.tile_rect(row, column);
      draw_text(painter,
                QRectF(area.topLeft() + tile.topLeft() * scale, tile.size() * scale),
                QStringLiteral("%1·%2").arg(row + 1).arg(column + 1), kCell, Qt::AlignCenter);
    }
}

double draw_first_words(QPainter& painter, const Sheet& sheet, const TemplateData& data) {
  const QRectF page = text_area(sheet);
  const int panel = data.panel;
  double y = page.top();
  draw_text(painter, QRectF(page.left(), y, page.width(), 8),
            tr("Template %1").arg(name_of(sheet, panel)), kTitle);
  y += 9;
  draw_stitches(painter, QLineF(page.left(), y, page.right(), y));
  y += 2.5;
  const auto add = [&](const QString& words, const TextStyle& style) {
    y += draw_paragraph(painter, {page.left(), y}, page.width(), words, style) + 1.5;
  };
  QString answer = size_of(sheet, panel) + QStringLiteral(", ") + count_words(sheet, panel) +
                   QLatin1Char('.') + sewn_words(panel_of(sheet, panel));
  answer[0] = answer[0].toUpper();
  add(answer, kAnswer);
  add(tr("The full line is the cut line.") + turning_words(sheet, data) +
          QLatin1Char(' ') + grain_words(sheet, panel),
      kBody);
  add(joining_words(data.grid), kBody);
  return y;
}

void draw_first_page(QPainter& painter, const Sheet& sheet, const TemplateData& data) {
  const QRectF page = text_area(sheet);
  const double y = draw_first_words(painter, sheet, data) + 2;
  const double left = page.width() - kSquare - 6;
  draw_text(painter, QRectF(page.left(), y, left, 5),
            tr("The pages, row · column"), kHeading);
  draw_map(painter, QRectF(page.left(), y + 6, left, page.bottom() - y - 6), data.grid);
  draw_plain_square(painter, {page.right() - kSquare, page.bottom() - kSquare});
}

QStringList tile_words(const Sheet& sheet, const TemplateData& data, int row, int column) {
  QStringList words{name_of(sheet, data.panel), size_of(sheet, data.panel),
                    count_words(sheet, data.panel)};
  if (data.grid.tiles() > 1)
    words << tr("row %1, column %2").arg(row + 1).arg(column + 1);
  return words;
}

void draw_tile_page(QPainter& painter, const Sheet& sheet, const TemplateData& data, int tile) {
  const int columns = static_cast<int>(data.grid.columns);
  const int row = tile / columns, column = tile % columns;
  const QRectF area = tile_area(sheet);
  draw_text(painter, QRectF(area.left(), area.top() - 5, area.width(), 4),
            tr("Template %1: row %2 of %3, column %4 of %5")
                .arg(name_of(sheet, data.panel))
                .arg(row + 1)
                .arg(data.grid.rows)
                .arg(column + 1)
                .arg(columns),
            kHead);
  painter.save();
  painter.translate(area.topLeft());
  draw_tile(painter, data, row, column, tile_words(sheet, data, row, column));
  painter.restore();
}

}  // namespace

QRectF tile_area(const Sheet& sheet) {
  const QRectF area = text_area(sheet);
  const QSizeF tile = tile_size(sheet.options().paper, sheet.options().landscape);
  return {QPointF(area.left(), area.bottom() - tile.height()), tile};
}

int template_pages(const Sheet& sheet, int panel) {
  return static_cast<int>(
      std::min(data_of(sheet, panel).grid.pages(), kMostTemplatePages));
}

void draw_template_page(QPainter& painter, const Sheet& sheet, int panel, int page) {
  const TemplateData data = data_of(sheet, panel);
  page == 0 ? draw_first_page(painter, sheet, data)
            : draw_tile_page(painter, sheet, data, page - 1);
}

}  // namespace foldyard
