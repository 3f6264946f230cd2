#pragma once

// Webbing, tape, cord or zip: anything that is cut to length from a long narrow
// roll.
//
// roll: the length of a full roll as it is bought; price: of such a roll. ends:
// lengths on hand; one too short for any cut is left. loss: what each cut takes
// besides (a sealed or frayed end). Limits: job/limits.h, held by the reader.
//
// Fact of the trade, common practice, no source: bag handles of 55 cm in pairs
// from rolls of 50 m.

#include <string>
#include <vector>

#include "measure/length.h"
#include "measure/worth.h"

namespace foldyard {

struct Webbing {
  std::string name;
  Length roll;
  Worth price = {};
  std::vector<Length> ends = {};
  Length loss = {};
  bool operator==(const Webbing&) const = default;
};

}  // namespace foldyard
