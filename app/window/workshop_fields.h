#pragma once

// The fields of a job that say how the workshop cuts: its table and cutter, what
// is lost, and the pace. Keys are those of a job file.

#include <QString>

#include <cstdint>
#include <vector>

#include "job/job.h"
#include "job/limits.h"

namespace foldyard {

enum class WorkshopGroup { job, table, losses, pace };

struct WorkshopLength {
  WorkshopGroup group;
  const char* key;
  const char* label;  // for WorkshopDialog::tr
  const char* help;
  Length& (*of)(Job&);
  bool is_small;  // shown in mm where the job is in metric units
};

// value: in the last of `places` decimals.
struct WorkshopNumber {
  WorkshopGroup group;
  const char* key;
  const char* label;
  const char* help;
  const char* suffix;
  int places;
  NumberLimit limit;
  std::int64_t (*get)(const Job&);
  void (*set)(Job&, std::int64_t);
};

const std::vector<WorkshopLength>& workshop_lengths();
const std::vector<WorkshopNumber>& workshop_numbers();

// "Assumed: time your own" where the job still has a default that nothing
// outside backs (job/defaults.h); else empty.
QString assumption_note(const Job& job, const QString& key);
// What the default of the key rests on.
QString basis_of(const QString& key);

}  // namespace foldyard
