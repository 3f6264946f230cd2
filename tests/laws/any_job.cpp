#include "laws/any_job.h"

#include "job/defaults.h"

namespace foldyard {

void showValue(Length length, std::ostream& out) { out << length.in_mm() << " mm"; }

void showValue(const Panel& p, std::ostream& out) {
  out << p.across.in_mm() << " x " << p.along.in_mm() << (p.may_turn ? " may turn" : "")
      << (p.on_fold ? " on the fold" : "") << " worth " << p.worth.parts();
}

void showValue(const Job& job, std::ostream& out) {
  const Roll& roll = job.rolls.front();
  out << "in mm: width " << roll.fabric.width.in_mm() << ", selvedge "
      << roll.fabric.selvedge.in_mm() << (roll.fabric.nap == Nap::one_way ? ", one-way" : "")
      << ", roll " << roll.length.in_mm() << ", squaring " << job.losses.squaring.in_mm()
      << ", table " << job.table.length.in_mm() << ", allowance " << job.losses.allowance.in_mm()
      << ", fold trim " << job.losses.fold_trim.in_mm();
  for (const Panel& p : job.panels) {
    out << "; ";
    showValue(p, out);
  }
}

namespace test {

rc::Gen<Length> any_size(int low, int high) {
  return rc::gen::map(rc::gen::inRange(low, high + 1), [](int steps) { return kStep * steps; });
}

rc::Gen<Panel> any_panel() {
  return rc::gen::exec([] {
    Panel panel;
    panel.across = *any_size(6, 40);
    panel.along = *any_size(6, 50);
    panel.may_turn = *rc::gen::arbitrary<bool>();
    panel.on_fold = *rc::gen::arbitrary<bool>();
    panel.worth = Worth::parts(*rc::gen::inRange(1, 2000));
    return panel;
  });
}

// The table takes any cloth that it is not laid on lengthwise.
rc::Gen<Job> any_job() {
  return rc::gen::exec([] {
    Job job = default_job();
    Roll roll;
    roll.fabric = default_fabric();
    roll.fabric.width = *any_size(42, 125);
    roll.fabric.selvedge = *any_size(0, 2);
    roll.fabric.nap = *rc::gen::element(Nap::none, Nap::one_way);
    roll.length = *any_size(80, 400);
    job.rolls = {roll};
    for (int n = *rc::gen::inRange(1, 4); n > 0; --n) job.panels.push_back(*any_panel());
    job.table.length = *any_size(60, 200);
    job.table.depth = job.table.reach = Length::mm(3000);
    job.losses.squaring = *any_size(0, 4);
    job.losses.allowance = *any_size(0, 4);
    job.losses.fold_trim = *any_size(1, 2);
    job.cutter = {Length::mm(30), 30};
    job.longest_fan = 5;
    return job;
  });
}

}  // namespace test
}  // namespace foldyard
