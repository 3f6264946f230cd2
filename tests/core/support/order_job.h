#pragma once

// A small order: carriers with two pockets each, and pouches, from three rolls of
// two cloths. Cloth 1400 wide with selvedges of 10, so 1380 can be used; no losses
// but 40 of allowance for each length and 100 at each end of a roll.

#include "job/defaults.h"
#include "job/job.h"

namespace foldyard::test {

inline Roll order_roll(const std::string& name, int length_mm, const std::string& cloth, std::int64_t price) {
  Roll roll;
  roll.name = name;
  roll.fabric = default_fabric();
  roll.fabric.width = Length::mm(1400);
  roll.fabric.selvedge = Length::mm(10);
  roll.length = Length::mm(length_mm);
  roll.cloth = cloth;
  roll.price = Worth::whole(price);
  return roll;
}

inline Job order_job() {
  Job job = default_job();
  job.rolls = {order_roll("moss 1", 8'000, "moss", 8), order_roll("moss 2", 5'000, "moss", 8),
               order_roll("sand 1", 6'000, "sand", 10)};
  job.rolls[2].marks = {"printed"};
  job.panels = {{"body", Length::mm(450), Length::mm(900), false, true, Worth::whole(6)},
                {"pocket", Length::mm(230), Length::mm(200), true, true, Worth::whole(1)},
                {"front", Length::mm(300), Length::mm(400), true, true, Worth::whole(2)}};
  job.products = {{"carrier", {{0, 1}, {1, 2}}, {}, Worth::whole(20)}, {"pouch", {{2, 2}}, {}, Worth::whole(9)}};
  job.order.lines = {{0, 12, 0, {}, 0, {}}, {1, 8, 2, {"printed"}, 0, {}}};
  job.losses.allowance = Length::mm(40);
  job.losses.squaring = Length::mm(100);
  return job;
}

}  // namespace foldyard::test
