#include "bench/workshop_job.h"

#include "job/defaults.h"

namespace foldyard::bench {

namespace {

struct Good {
  const char* name;
  int across;  // mm
  int along;
  bool may_turn;
};

constexpr Good kGoods[] = {
    {"seat", 560, 640, false},         {"back", 560, 780, false},
    {"arm", 310, 705, false},          {"front band", 640, 185, true},
    {"cushion", 465, 465, true},       {"bolster", 245, 910, false},
    {"bag", 420, 385, true},           {"pouch", 230, 155, true},
    {"wide seat", 720, 655, false},    {"wide back", 720, 815, false},
    {"high arm", 335, 840, false},     {"wide band", 790, 195, true},
    {"large cushion", 515, 515, true}, {"long bolster", 260, 1130, false},
    {"large bag", 475, 430, true},     {"large pouch", 275, 180, true},
};

}  // namespace

Job workshop_job(int goods) {
  Job job = default_job();
  Fabric cloth = default_fabric();
  cloth.width = Length::mm(1500);
  cloth.selvedge = Length::mm(10);
  job.rolls = {{"roll", cloth, Length::mm(50'000)}};
  job.table.length = Length::mm(3000);
  job.table.depth = Length::mm(1700);
  for (int i = 0; i < goods; ++i) {
    const Good& good = kGoods[i];
    const Length across = Length::mm(good.across), along = Length::mm(good.along);
    job.panels.push_back(
        {good.name, across, along, good.may_turn, true, default_worth(across * along)});
  }
  return job;
}

}  // namespace foldyard::bench
