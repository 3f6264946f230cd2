#include "drawing/sheet.h"

#include <QPainter>
#include <algorithm>
#include <numeric>
#include <utility>

#include "drawing/front_page.h"
#include "drawing/pattern_page.h"
#include "drawing/range_page.h"
#include "drawing/template_page.h"
#include "drawing/words.h"
#include "language/tr.h"

namespace foldyard {
namespace {

QString front_title() { return tr("The answer and the roll"); }
QString range_title() { return tr("If the roll is longer"); }
QString pattern_title(int pattern) { return tr("Pattern %1").arg(pattern_letter(pattern)); }
QString template_title(int panel) { return tr("Template %1").arg(panel_code(panel)); }
QString with_page(const QString& title, int page) { return tr("%1, page %2").arg(title).arg(page); }

}  // namespace

Sheet::Sheet(Job job, Comparison comparison, int chosen, SheetOptions options,
             std::optional<YieldRange> range)
    : job_(std::move(job)), comparison_(std::move(comparison)), chosen_(chosen),
      options_(std::move(options)), range_(std::move(range)) {
  if (options_.unit) job_.unit = *options_.unit;
}

std::vector<int> Sheet::patterns() const {
  std::vector<int> all(plan().patterns.size());
  std::iota(all.begin(), all.end(), 0);
  if (!options_.patterns) return all;
  std::erase_if(all, [&](int pattern) {
    const auto& wanted = *options_.patterns;
    return std::find(wanted.begin(), wanted.end(), pattern) == wanted.end();
  });
  return all;
}

std::vector<Sheet::Run> Sheet::runs() const {
  std::vector<Run> runs;
  if (options_.diagram) {
    runs.push_back({Kind::front, 0, front_pages(*this)});
    runs.push_back({Kind::range, 0, range_pages(*this)});
    for (int pattern : patterns())
      runs.push_back({Kind::pattern, pattern, pattern_pages(*this, pattern)});
  }
  for (int panel : options_.templates)
    runs.push_back({Kind::template_of, panel, template_pages(*this, panel)});
  return runs;
}

const Sheet::Run& Sheet::run_of(const std::vector<Run>& runs, int& page) {
  std::size_t at = 0;
  while (at + 1 < runs.size() && page >= runs[at].pages) page -= runs[at++].pages;
  return runs[at];
}

int Sheet::pages() const {
  int pages = 0;
  for (const Run& run : runs()) pages += run.pages;
  return pages;
}

void Sheet::paint(QPainter& painter, int page) const {
  const std::vector<Run> all = runs();
  if (all.empty()) return;
  const int pages = std::accumulate(all.begin(), all.end(), 0,
                                    [](int sum, const Run& run) { return sum + run.pages; });
  draw_foot(painter, *this, page, pages);
  const Run& run = run_of(all, page);
  switch (run.kind) {
    case Kind::front: return draw_front(painter, *this, page);
    case Kind::range: return draw_range_page(painter, *this, page);
    case Kind::pattern: return draw_pattern_page(painter, *this, run.index, page);
    case Kind::template_of: return draw_template_page(painter, *this, run.index, page);
  }
}

QString Sheet::page_title(int page) const {
  const std::vector<Run> all = runs();
  if (all.empty()) return {};
  const Run& run = run_of(all, page);
  QString words;
  switch (run.kind) {
    case Kind::front: words = front_title(); break;
    case Kind::range: words = range_title(); break;
    case Kind::pattern: words = pattern_title(run.index); break;
    case Kind::template_of: words = template_title(run.index); break;
  }
  return page == 0 ? words : with_page(words, page + 1);
}

std::vector<int> pages_in(const Sheet& sheet, PageRange range) {
  std::vector<int> pages;
  const int last = std::min(range.last, sheet.pages() - 1);
  for (int page = std::max(range.first, 0); page <= last; ++page) pages.push_back(page);
  return pages;
}

}  // namespace foldyard
