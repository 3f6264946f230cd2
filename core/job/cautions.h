#pragma once

// The cautions for the cutter: what stands beside every plan, on paper and on
// the command line, each one sentence. They are reminders, not instructions:
// the machine's manual, local rules and trained people come first, and the
// first of them says so.

#include <string>
#include <string_view>
#include <vector>

#include "job/job.h"
#include "measure/words.h"

namespace foldyard {

// Each is said by say(); its literal ends with a null.
const std::vector<std::string_view>& cautions();
// The rated height of this job's cutter and what it means for a stack.
Words height_caution(const Job& job);

}  // namespace foldyard
