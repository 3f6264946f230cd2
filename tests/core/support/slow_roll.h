#pragma once

// Small random jobs, and the most worth of one roll under one way, by the slow
// folding of every length and every series of lengths.

#include <algorithm>
#include <vector>

#include "core/support/small_cloth.h"
#include "job/job.h"

namespace foldyard::test {

struct SmallRoll {
  SmallCase cloth;
  int length = 0;
  int squaring = 0;
  int allowance = 0;
};

inline SmallRoll throw_small_roll(unsigned seed, bool deep) {
  SmallRoll r;
  r.cloth = throw_small_case(seed, deep, SlowAim{true, 1000, 1});
  Dice dice(seed + 77);
  r.cloth.tallest = dice.from_to(4, 10);
  r.length = dice.from_to(12, 40);
  r.squaring = dice.from_to(0, 2);
  r.allowance = dice.from_to(0, 2);
  return r;
}

// The roll as a job, every size `scale` times as large. Time costs something,
// so that both aims have something to weigh.
inline Job job_of(const SmallRoll& r, int scale) {
  const auto size = [scale](int n) { return Length::units(n * scale); };
  Job job;
  job.rolls = {{"roll", fabric_of(r.cloth, scale), size(r.length)}};
  job.panels = r.cloth.panels;
  for (Panel& p : job.panels) {
    p.across = p.across * scale;
    p.along = p.along * scale;
    p.worth = p.worth * 1000;
  }
  const Length depth = size(r.cloth.cloth.depth);
  job.table = {size(r.cloth.tallest), depth, depth, true};
  job.cutter = {size(12), 12};
  job.losses = {size(r.squaring), size(r.allowance), size(r.cloth.trim), size(6), size(6)};
  job.pace.unroll = Duration::ms(50);
  job.pace.cross_cut = Duration::ms(20);
  job.pace.fold = Duration::ms(10);
  job.pace.lift = Duration::ms(30);
  job.pace.mark = Duration::ms(8);
  job.pace.ms_per_metre = 20'000;
  job.pace.handle = Duration::ms(2);
  job.pace.allowance_percent = 15;
  job.pace.rate = Worth::whole(20'000);
  return job;
}

// In the worth of the small panels; a job of job_of has 1000 times as much.
inline std::int64_t slow_worth(const SmallRoll& r, const FoldWay& way) {
  SlowRectangle rectangles(slow_shapes(r.cloth.panels, false), r.cloth.aim, r.cloth.trim);
  const int room = r.length - 2 * r.squaring;
  std::vector<std::int64_t> most(static_cast<std::size_t>(std::max(room, 0)) + 1);
  for (int folded = 1; folded <= r.cloth.tallest; ++folded) {
    const int size = folded * (way.end_to_end ? 2 : 1) + r.allowance;
    if (size > room) break;
    const std::int64_t gain = slow_best(r.cloth, way, rectangles, folded, least_flap(r.cloth)).gain;
    for (int c = size; c <= room; ++c) {
      std::int64_t& here = most[static_cast<std::size_t>(c)];
      here = std::max(here, most[static_cast<std::size_t>(c - size)] + gain);
    }
  }
  return most.back();
}

}  // namespace foldyard::test
