#pragma once

// The lists of an order that are edited: its lines, and the rules of one line.

#include <functional>

#include "batch/job_table.h"

namespace foldyard {

enum class LineColumn { product, must, may, from, each_at_least, roll, rules };
JobList line_list();

enum class RuleColumn { of, at_least, at_most };
// line: which one; −1: none.
JobList rule_list(std::function<int()> line);

// "at least 6 of printed and at most 12 of printed".
QString rule_words(const ClothRule& rule);
// Every cloth and mark of the rolls and of what is on hand, each once, in their order.
QStringList cloths_and_marks(const Job& job);

}  // namespace foldyard
