#pragma once

// The lists beside a pattern: its cuts in order with the distances to mark,
// what one length gives, what is left over, and the cautions for the cutter.

#include "drawing/list_flow.h"
#include "drawing/pattern_data.h"

namespace foldyard {

// A row for each cut: number, direction, where, from – to, length of the cut.
std::vector<ListLine> cut_lines(const PatternData& data);
std::vector<ListLine> count_lines(const PatternData& data);
// Equal rests are counted together.
std::vector<ListLine> rest_lines(const PatternData& data);
// Which length carries which flaw, and what it costs; none without flaws.
std::vector<ListLine> flaw_list_lines(const PatternData& data);
std::vector<ListLine> caution_lines(const PatternData& data);

// All of them, in the order above.
std::vector<ListLine> pattern_lines(const PatternData& data);

}  // namespace foldyard
