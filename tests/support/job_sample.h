#pragma once

// The small job that tests of documents and of the window share.

#include "job/defaults.h"
#include "job/job.h"

namespace foldyard::sample {

// Two rolls, 150 and 140 cm wide; panels of 45 × 90 and 30 × 40 cm.
inline Job job() {
  Job job = default_job();
  job.name = "Sample";
  Roll roll{"Moss", default_fabric(), Length::mm(5000)};
  roll.fabric.width = Length::mm(1500);
  roll.fabric.selvedge = Length::mm(10);
  job.rolls.push_back(roll);
  roll.name = "Slate";
  roll.fabric.width = Length::mm(1400);
  job.rolls.push_back(roll);
  job.panels.push_back({"Carrier", Length::mm(450), Length::mm(900), false, true, Worth::whole(9)});
  job.panels.push_back({"Pouch", Length::mm(300), Length::mm(400), true, true, Worth::whole(2)});
  return job;
}

}  // namespace foldyard::sample
