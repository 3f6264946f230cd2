#pragma once

// The sheet: the cutting diagram that goes to the table, page by page.
//
// Page 1 shows the roll with its cross-cuts and the comparison of the fold
// ways; then one page for each pattern of the chosen plan: the flat cloth with
// the panels of every ply, the folded cloth as it lies on the table, a section
// through the plies, numbered cuts with the distances to mark, and cautions.
// Everything is painted by one painter in millimetres of paper, so screen,
// PDF, SVG and PNG show the same.
//
// Behind page 1, for a roll whose length is estimated: what each length gives and
// what to cut first, where that was asked for (range). At the end the templates
// of the panels that were asked for.
//
// REQUIRES 0 ≤ chosen < comparison.ways.size() and a plan there; a range is of the
// chosen way; patterns and templates that the options name are there, and no
// template has a problem (template_page.h).

#include <QByteArray>
#include <QSizeF>
#include <optional>

#include "drawing/sheet_options.h"
#include "job/job.h"
#include "job/plan.h"
#include "job/yield_range.h"
#include "measure/index.h"

class QPainter;

namespace foldyard {

class Sheet {
 public:
  Sheet(Job job, Comparison comparison, int chosen, SheetOptions options = {},
        std::optional<YieldRange> range = {});

  int pages() const;
  QSizeF page_size_mm() const { return paper_size_mm(options_.paper, options_.landscape); }
  // The painter's unit is 1 mm of paper, origin at the page's top left corner.
  void paint(QPainter& painter, int page) const;
  // What stands on the page, in a few words: "Pattern A", "Template P2, page 3".
  QString page_title(int page) const;

  const Job& job() const { return job_; }
  const Comparison& comparison() const { return comparison_; }
  const Plan& plan() const { return *comparison_.ways[ix(chosen_)].plan; }
  int chosen() const { return chosen_; }
  const SheetOptions& options() const { return options_; }
  const std::optional<YieldRange>& range() const { return range_; }
  // The patterns that have pages.
  std::vector<int> patterns() const;

 private:
  // A run of pages of one kind.
  enum class Kind { front, range, pattern, template_of };
  struct Run {
    Kind kind;
    int index;  // of a pattern or a panel
    int pages;
  };
  std::vector<Run> runs() const;
  // The run that a page is in; `page` becomes its number in the run.
  static const Run& run_of(const std::vector<Run>& runs, int& page);

  Job job_;
  Comparison comparison_;
  int chosen_;
  SheetOptions options_;
  std::optional<YieldRange> range_;
};

// All pages of the range as one file; empty on failure (no font to write with,
// no memory, no page). PDF has a page each, and asks viewers to print at actual
// size; SVG and PNG show the pages one below the other. The same sheet gives
// the same bytes, but for the date inside a PDF.
QByteArray sheet_pdf(const Sheet& sheet, PageRange range = {});
QByteArray sheet_svg(const Sheet& sheet, PageRange range = {});
QByteArray sheet_png(const Sheet& sheet, int dots_per_inch, PageRange range = {});

// The numbers of the pages of a range that the sheet has.
std::vector<int> pages_in(const Sheet& sheet, PageRange range);

}  // namespace foldyard
