#include "oracle/small_job.h"

#include <algorithm>

#include "core/support/dice.h"

namespace foldyard::test {

namespace {

Length size(int quanta) { return Length::units(60 * quanta); }

Panel panel_of(const QuantaPanel& small, std::size_t number) {
  Panel panel;
  panel.name = "panel " + std::to_string(number);
  panel.across = size(small.across);
  panel.along = size(small.along);
  panel.may_turn = small.may_turn;
  panel.on_fold = small.on_fold;
  panel.worth = Worth::parts(small.worth);
  if (small.at_most >= 0) panel.at_most = small.at_most;
  return panel;
}

Roll roll_of(const QuantaJob& small) {
  Roll roll;
  roll.name = "roll";
  roll.fabric.width = size(small.width);
  roll.fabric.selvedge = size(small.selvedge);
  roll.fabric.thickness = Length::units(16);
  roll.fabric.nap = small.one_way ? Nap::one_way : Nap::none;
  roll.length = size(small.roll);
  return roll;
}

// Cloth of many legs takes narrow panels only.
QuantaPanel throw_panel(Dice& dice, int widest) {
  QuantaPanel p;
  p.across = 2 * dice.from_to(widest > 4 ? 2 : 1, widest);
  p.along = 2 * dice.from_to(2, 5);
  p.may_turn = dice.coin();
  p.on_fold = dice.from_to(0, 3) > 0;
  p.worth = dice.coin() ? p.across * p.along / 4 : dice.from_to(1, 30);
  return p;
}

}  // namespace

QuantaJob job_by_hand() {
  QuantaJob job;
  job.panels = {{4, 6, false, true, 1}};
  job.width = 14;
  job.selvedge = 1;
  job.depth = 14;
  job.table = 12;
  job.roll = 20;
  job.squaring = 1;
  return job;
}

Job job_of(const QuantaJob& small) {
  Job job;
  job.rolls = {roll_of(small)};
  for (const QuantaPanel& p : small.panels) job.panels.push_back(panel_of(p, job.panels.size()));
  job.table = {size(small.table), size(small.depth), size(small.depth), true};
  job.cutter = {Length::mm(100), 12};
  job.losses = {size(small.squaring), size(small.allowance), size(small.trim), size(8), size(8)};
  return job;
}

QuantaJob throw_job(unsigned seed, const FoldWay& way) {
  Dice dice(seed);
  QuantaJob job;
  job.width = dice.from_to(16, 28);
  job.selvedge = way.legs > 4 ? dice.from_to(0, 1) : dice.from_to(0, 2);
  job.one_way = !way.end_to_end && dice.from_to(0, 2) == 0;
  job.depth = dice.from_to(0, 2) ? job.width : dice.from_to(job.width / way.legs, job.width);
  job.table = way.end_to_end ? dice.from_to(6, 13) : dice.from_to(8, 24);
  job.roll = dice.from_to(20, 60);
  job.squaring = dice.from_to(0, 2);
  job.allowance = dice.from_to(0, 3);
  job.trim = dice.from_to(1, 3);
  const int widest = std::max(2, way.legs > 3 ? 12 / way.legs : 7);
  for (int n = dice.from_to(1, 3); n > 0; --n) job.panels.push_back(throw_panel(dice, widest));
  return job;
}

QuantaJob throw_limited_job(unsigned seed, const FoldWay& way) {
  QuantaJob job = throw_job(seed, way);
  Dice dice(seed + 1);
  for (QuantaPanel& p : job.panels)
    if (dice.from_to(0, 3) > 0) p.at_most = dice.from_to(0, 6);
  return job;
}

std::string text(const QuantaJob& j) {
  const auto number = [](const char* what, int n) { return std::string(what) + std::to_string(n); };
  std::string s = number("in quanta of 60 units: width ", j.width) +
                  number(", selvedge ", j.selvedge) + (j.one_way ? ", one-way" : "") +
                  number(", depth ", j.depth) + number(", table ", j.table) +
                  number(", roll ", j.roll) + number(", squaring ", j.squaring) +
                  number(", allowance ", j.allowance) + number(", trim ", j.trim);
  for (const QuantaPanel& p : j.panels)
    s += number("; ", p.across) + number(" x ", p.along) + (p.may_turn ? " may turn" : "") +
         (p.on_fold ? " on the fold" : "") + number(" worth ", p.worth) +
         (p.at_most >= 0 ? number(" at most ", p.at_most) : "");
  return s;
}

}  // namespace foldyard::test
