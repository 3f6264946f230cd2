#pragma once

// What holds where a job says nothing: every default in one table, each with
// what it rests on.
//
// key is the field of the job file, `rolls[]` and `panels[]` standing for any
// roll or panel. value is its text as a job file would have it. basis names
// the source or says that there is none; is_assumption: nothing outside backs
// the figure, so the maker should put their own in its place.
//
// Example: {"losses.allowance", "4 cm", "2 cm at each end …", false}.

#include <string_view>
#include <vector>

#include "job/job.h"

namespace foldyard {

struct Default {
  std::string_view key;
  std::string_view value;
  std::string_view basis;
  bool is_assumption = false;
};

const std::vector<Default>& defaults();
// REQUIRES that the table has the key.
const Default& default_of(std::string_view key);

Fabric default_fabric();
// A job without rolls and panels; all else by the table.
Job default_job();
// What a panel is worth where no panel of the job names a worth: its area at
// the default worth of a square metre, rounded down to 1/10000, but never 0.
Worth default_worth(Area area);

}  // namespace foldyard
