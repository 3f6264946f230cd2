#pragma once

// 5 m of cloth 150 cm wide, for seats of 45 cm by 90 cm and arms of 30 cm by 40 cm that may
// be turned.

#include "job/defaults.h"

namespace foldyard::test {

inline Roll cushion_cloth(const char* name = "grey", Length length = Length::mm(5000)) {
  Fabric fabric = default_fabric();
  fabric.width = Length::mm(1500);
  fabric.selvedge = Length::mm(10);
  return {name, fabric, length};
}

inline Job cushions() {
  Job job = default_job();
  job.rolls = {cushion_cloth()};
  job.panels = {{"seat", Length::mm(450), Length::mm(900), false, true, Worth::whole(3)},
                {"arm", Length::mm(300), Length::mm(400), true, true, Worth::whole(1)}};
  return job;
}

// The same from a blue roll, with texts in millimetres.
inline Job blue_cushions() {
  Job job = cushions();
  job.unit = Unit::mm;
  job.rolls = {cushion_cloth("blue")};
  return job;
}

// At most 7 seats and 5 arms.
inline Job few_cushions() {
  Job job = cushions();
  job.panels[0].at_most = 7;
  job.panels[1].at_most = 5;
  return job;
}

}  // namespace foldyard::test
