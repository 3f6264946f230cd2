#pragma once

// A job with room around each of its figures, so that each can be taken to its limit alone:
// 40 m of cloth 140 cm wide, one square panel of 5 cm, a thick cutter.

#include <functional>
#include <string>

#include "job/check_job.h"
#include "job/defaults.h"

namespace foldyard::test {

inline Job roomy_job() {
  Job job = default_job();
  job.rolls = {{"Oak", default_fabric(), Length::mm(40'000)}};
  job.panels = {{"Square", Length::mm(50), Length::mm(50), false, true, Worth::whole(1)}};
  return job;
}

using JobEdit = std::function<void(Job&)>;

// The last value that passes, and the first that does not.
struct BothSides {
  const char* name;
  JobEdit good;
  JobEdit bad;
  const char* where;
};

// A name of so many letters, of two bytes each.
inline std::string umlauts(std::size_t count) {
  std::string text;
  for (; count > 0; --count) text += "ü";
  return text;
}

// Of the first fault; empty where there is none.
inline std::string where(const Job& job) {
  const auto problem = check_job(job);
  return problem ? problem->where : "";
}

}  // namespace foldyard::test
