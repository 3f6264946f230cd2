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
// what to cut first, where that was asked for (range).
//
// REQUIRES 0 ≤ chosen < comparison.ways.size() and a plan there; a range is of the
// chosen way.

#include <QByteArray>
#include <QSizeF>
#include <optional>

#include "job/job.h"
#include "job/plan.h"
#include "job/yield_range.h"

class QPainter;

namespace foldyard {

enum class Paper { a4, letter };

class Sheet {
 public:
  Sheet(Job job, Comparison comparison, int chosen, Paper paper,
        std::optional<YieldRange> range = {});

  int pages() const;
  QSizeF page_size_mm() const;  // A4 210 × 297 (ISO 216), Letter 215.9 × 279.4
  // The painter's unit is 1 mm of paper, origin at the page's top left corner.
  void paint(QPainter& painter, int page) const;

  const Job& job() const { return job_; }
  const Comparison& comparison() const { return comparison_; }
  const Plan& plan() const { return *comparison_.ways[chosen_].plan; }
  int chosen() const { return chosen_; }
  Paper paper() const { return paper_; }
  const std::optional<YieldRange>& range() const { return range_; }

 private:
  Job job_;
  Comparison comparison_;
  int chosen_;
  Paper paper_;
  std::optional<YieldRange> range_;
};

// All pages as one file; empty on failure (no font to write with, no memory).
// PDF has a page each; SVG and PNG show the pages one below the other. The
// same sheet gives the same bytes, but for the date inside a PDF.
QByteArray sheet_pdf(const Sheet& sheet);
QByteArray sheet_svg(const Sheet& sheet);
QByteArray sheet_png(const Sheet& sheet, int dots_per_inch);

}  // namespace foldyard
