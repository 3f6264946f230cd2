#pragma once

// Tables to copy into a spreadsheet or a word processor: heads and rows of plain
// cells. Numbers stand alone, their units in the heads.
//
// tab_text: a line a row, cells apart by tabs; tabs and line breaks inside a
// cell become spaces. html: one table, escaped.
//
// Example: comparison_table has a row for each fold way, best first, with the
// count of every panel, worth, use, cuts, minutes; then the ways that are refused
// with their reason.

#include <QString>
#include <QStringList>
#include <vector>

#include "job/job.h"
#include "job/plan.h"

namespace foldyard {

struct CopiedTable {
  QStringList heads;
  std::vector<QStringList> rows;

  QString tab_text() const;
  QString html() const;
};

CopiedTable comparison_table(const Job& job, const Comparison& comparison);
// The cuts of one pattern in their order. REQUIRES 0 ≤ pattern < plan.patterns.size().
CopiedTable cut_table_of(const Job& job, const Plan& plan, int pattern);

}  // namespace foldyard
