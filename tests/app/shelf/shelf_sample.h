#pragma once

// A shelf for tests: the two rolls of the sample, and three that have all that
// cloth can have.

#include "cloth/length_estimate.h"
#include "support/job_sample.h"

namespace foldyard::sample {

// Moss, Slate, then: Fern, one-way, railroaded, with repeats and shrinkage; Rust,
// with two flaws; Weld, of estimated length: 31.14 to 42.09 m, most likely 36.05 m
// (the example of length_estimate.h).
inline Job shelf_job() {
  Job job = sample::job();
  Roll fern = job.rolls[0];
  fern.name = "Fern";
  fern.fabric.nap = Nap::one_way;
  fern.fabric.railroaded = true;
  fern.fabric.repeat = {Length::mm(320), Length::mm(160), {}, {}, true};
  fern.fabric.shrinkage = {300, 0};
  Roll rust = job.rolls[1];
  rust.name = "Rust";
  rust.flaws = {{{Length::mm(1000), Length::mm(1020)}, {Length(), Length::mm(1400)}, "join"},
                {{Length::mm(3200), Length::mm(3260)}, {Length::mm(400), Length::mm(550)}, ""}};
  Roll weld = job.rolls[0];
  weld.name = "Weld";
  weld.fabric.width = Length::mm(750);
  weld.measured = ByDiameters{{Length::mm(220), Length::mm(5)}, {Length::mm(50), Length::mm(1)}, {Length::mm(1), Length::units(32)}};
  weld.length = estimate(*weld.measured, weld.fabric.width).value().least;
  for (const Roll& roll : {fern, rust, weld}) job.rolls.push_back(roll);
  return job;
}

}  // namespace foldyard::sample
