#include "drawing/pattern_page.h"

#include <QPainter>
#include <algorithm>
#include <optional>

#include "drawing/cut_list.h"
#include "drawing/front_page.h"
#include "drawing/pattern_picture.h"
#include "drawing/repeat_words.h"
#include "drawing/strokes.h"
#include "drawing/text.h"
#include "drawing/words.h"
#include "language/tr.h"

namespace foldyard {

namespace {

constexpr double kBetween = 8;  // columns
constexpr double kWidePage = 240;
const TextStyle kTitle{14, true, true, palette::ink()};
const TextStyle kBody{8, false, false, palette::ink()};
const TextStyle kSoft{7.5, false, false, palette::soft_ink()};

QString title_of(const PatternData& data) {
  const std::int64_t count = lengths_of(data.plan, data.index);
  return tr("Pattern %1: %n length(s) of %2, in %3", nullptr, static_cast<int>(count))
      .arg(pattern_letter(data.index), length_words(data.pattern.length, data.job.unit), lays_words(data.plan, data.index));
}

QString folding_of(const PatternData& data) {
  const QStringList lines = fold_line_words(data.pattern, data.fabric.width, data.job.unit);
  QString words = folding_words(data.pattern);
  if (lines.isEmpty()) return words;
  QString where = lines.join(QStringLiteral("; "));
  where[0] = where[0].toUpper();
  return words + QLatin1Char(' ') + where + QLatin1Char('.');
}

QString yield_of(const PatternData& data) {
  return tr("One length gives %1. %2 %3")
      .arg(yield_words(data.job, pattern_yield(data.job, data.pattern)),
           plies_words(data.plan, data.index), phase_words(data))
      .trimmed();
}

double heading_height(const PatternData& data, double width) {
  return 8 + paragraph_height(folding_of(data), kBody, width) +
         paragraph_height(yield_of(data), kBody, width) + 4;
}

// Returns where the heading ends.
double draw_heading(QPainter& painter, const QRectF& page, const PatternData& data) {
  double y = page.top();
  draw_text(painter, QRectF(page.left(), y, page.width(), 7), title_of(data), kTitle);
  y += 8;
  y += draw_paragraph(painter, {page.left(), y}, page.width(), folding_of(data), kBody);
  y += draw_paragraph(painter, {page.left(), y}, page.width(), yield_of(data), kBody) + 1.5;
  draw_stitches(painter, QLineF(page.left(), y, page.right(), y));
  return y + 2.5;
}

void draw_scale_line(QPainter& painter, const QRectF& page, double y, const PatternLayout& layout,
                     Unit unit) {
  const QString words = tr("Flat and folded cloth: scale %1").arg(layout.scale.words());
  const double width = text_width(words, kSoft) + 0.5;
  draw_text(painter, QRectF(page.left(), y, width, 4), words, kSoft);
  draw_scale_bar(painter, {page.left() + width + 3, y + 2}, layout.scale, unit, 50);
}

struct PageLayout {
  PatternLayout pictures;
  double lists = 0;  // height for the lists below the pictures, or beside them
  double side = 0;   // width of the lists beside the pictures; 0: they stand below
};

constexpr double kScaleLine = 5.5;

int columns_on(const QRectF& page) { return page.width() > kWidePage ? 3 : 2; }

double column_width(const QRectF& page) {
  const int columns = columns_on(page);
  return (page.width() - kBetween * (columns - 1)) / columns;
}

// On a wide page the lists stand beside the pictures, unless those would shrink
// below 1.5 times their finest scale for it.
std::optional<PageLayout> lay_out_beside(const QRectF& page, const PatternData& data, double room,
                                         const PatternLayout& large) {
  if (page.width() <= kWidePage) return {};
  const double side = column_width(page);
  const PatternLayout beside =
      lay_out_pattern(data, {page.width() - side - kBetween, room}, true);
  if (beside.height > room || beside.scale.denominator > 1.5 * large.scale.denominator) return {};
  return PageLayout{beside, room + kScaleLine, side};
}

// All on one page if the pictures need not shrink below 1.5 times their finest
// scale for it; else the pictures take the page, and lists what is left.
PageLayout lay_out_page(const Sheet& sheet, const PatternData& data,
                        const std::vector<ListLine>& lines) {
  const QRectF page = text_area(sheet);
  const double room = page.height() - heading_height(data, page.width()) - kScaleLine;
  const double lists = balanced_height(lines, 0, column_width(page), columns_on(page), page.height()) + 3;
  const PatternLayout large = lay_out_pattern(data, {page.width(), room}, true);
  if (const auto beside = lay_out_beside(page, data, room, large)) return *beside;
  if (lists < room) {
    const PatternLayout small = lay_out_pattern(data, {page.width(), room - lists}, true);
    if (small.height <= room - lists && small.scale.denominator <= 1.5 * large.scale.denominator)
      return {small, room - small.height};
  }
  const double left = room - large.height;
  return {large, left > 30 ? left : 0};
}

// What stands where: lists below or beside the pictures, then a page of lists each.
struct PageList {
  double below = 0;                 // top of the lists on the first page
  double height = 0;                // of its columns; 0: none there
  std::vector<std::size_t> firsts;  // the first line of each further page
};

PageList lay_out_lists(const Sheet& sheet, const PatternData& data, const PageLayout& layout,
                       const std::vector<ListLine>& lines) {
  const QRectF page = text_area(sheet);
  PageList list;
  const double heading = page.top() + heading_height(data, page.width());
  list.below = layout.side > 0 ? heading : heading + layout.pictures.height + kScaleLine;
  std::size_t next = 0;
  if (layout.side > 0) {
    list.height = page.bottom() - list.below;
    next = fitting_lines(lines, 0, {layout.side, list.height}, 1);
  } else if (layout.lists > 0) {
    list.height =
        balanced_height(lines, 0, column_width(page), columns_on(page), page.bottom() - list.below);
    next = fitting_lines(lines, 0, {column_width(page), list.height}, columns_on(page));
  }
  while (next < lines.size()) {
    list.firsts.push_back(next);
    next += std::max<std::size_t>(
        1, fitting_lines(lines, next, {column_width(page), page.height() - 9}, columns_on(page)));
  }
  return list;
}

void draw_pictures_page(QPainter& painter, const Sheet& sheet, const PatternData& data,
                        const PageLayout& layout, const PageList& list,
                        const std::vector<ListLine>& lines) {
  const QRectF page = text_area(sheet);
  const double top = draw_heading(painter, page, data);
  const double width = layout.side > 0 ? page.width() - layout.side - kBetween : page.width();
  draw_pattern(painter, {page.left(), top}, width, layout.pictures, data);
  draw_scale_line(painter, page, top + layout.pictures.height, layout.pictures, data.job.unit);
  if (layout.side > 0)
    draw_list(painter, QRectF(page.right() - layout.side, list.below, layout.side, list.height), 1,
              kBetween, lines, 0);
  else if (list.height > 0)
    draw_list(painter, QRectF(page.left(), list.below, page.width(), list.height), columns_on(page),
              kBetween, lines, 0);
}

void draw_lists_page(QPainter& painter, const Sheet& sheet, const PatternData& data,
                     const std::vector<ListLine>& lines, std::size_t first) {
  const QRectF page = text_area(sheet);
  draw_text(painter, QRectF(page.left(), page.top(), page.width(), 7),
            tr("%1 (continued)").arg(title_of(data)), kTitle);
  const double height =
      balanced_height(lines, first, column_width(page), columns_on(page), page.height() - 9);
  draw_list(painter, QRectF(page.left(), page.top() + 9, page.width(), height), columns_on(page), kBetween,
            lines, first);
}

}  // namespace

int pattern_pages(const Sheet& sheet, int pattern) {
  const PatternData data = pattern_data(sheet.job(), sheet.plan(), pattern);
  const std::vector<ListLine> lines = pattern_lines(data);
  const PageList list = lay_out_lists(sheet, data, lay_out_page(sheet, data, lines), lines);
  return 1 + static_cast<int>(list.firsts.size());
}

void draw_pattern_page(QPainter& painter, const Sheet& sheet, int pattern, int page) {
  const PatternData data = pattern_data(sheet.job(), sheet.plan(), pattern);
  const std::vector<ListLine> lines = pattern_lines(data);
  const PageLayout layout = lay_out_page(sheet, data, lines);
  const PageList list = lay_out_lists(sheet, data, layout, lines);
  if (page == 0)
    draw_pictures_page(painter, sheet, data, layout, list, lines);
  else
    draw_lists_page(painter, sheet, data, lines, list.firsts[static_cast<std::size_t>(page) - 1]);
}

}  // namespace foldyard
