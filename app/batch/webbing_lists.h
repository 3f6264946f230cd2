#pragma once

// The lists of what goes into goods besides cloth: webbings with what is on hand of
// them, and the prices and figures of thread, labels and the rest of a batch.

#include "batch/job_table.h"

namespace foldyard {

enum class WebbingColumn { name, roll, price, ends, loss };
JobList webbing_list();

// A row for each figure: what it is, and its value.
enum class NotionRow { thread, reel, reel_price, label_price, cloth_price, sitting };
JobList notion_list();

}  // namespace foldyard
