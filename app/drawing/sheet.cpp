#include "drawing/sheet.h"

#include <QPainter>
#include <utility>

#include "drawing/front_page.h"
#include "drawing/pattern_page.h"
#include "drawing/range_page.h"

namespace foldyard {

Sheet::Sheet(Job job, Comparison comparison, int chosen, Paper paper,
             std::optional<YieldRange> range)
    : job_(std::move(job)), comparison_(std::move(comparison)), chosen_(chosen), paper_(paper),
      range_(std::move(range)) {}

int Sheet::pages() const {
  int pages = front_pages(*this) + range_pages(*this);
  for (std::size_t i = 0; i < plan().patterns.size(); ++i)
    pages += pattern_pages(*this, static_cast<int>(i));
  return pages;
}

QSizeF Sheet::page_size_mm() const {
  return paper_ == Paper::a4 ? QSizeF(210, 297) : QSizeF(215.9, 279.4);
}

void Sheet::paint(QPainter& painter, int page) const {
  draw_foot(painter, *this, page, pages());
  const int front = front_pages(*this);
  if (page < front) return draw_front(painter, *this, page);
  page -= front;
  const int ranges = range_pages(*this);
  if (page < ranges) return draw_range_page(painter, *this, page);
  page -= ranges;
  for (int i = 0; i < static_cast<int>(plan().patterns.size()); ++i) {
    const int pages = pattern_pages(*this, i);
    if (page < pages) return draw_pattern_page(painter, *this, i, page);
    page -= pages;
  }
}

}  // namespace foldyard
