#include "fuzz/shaped_job.h"

#include "job/defaults.h"

namespace foldyard::fuzz {
namespace {

class Choices {
 public:
  Choices(const std::uint8_t* bytes, std::size_t size) : bytes_(bytes), size_(size) {}

  // From low to high, both included; at most 256 choices.
  int between(int low, int high) {
    const int byte = at_ < size_ ? bytes_[at_++] : 0;
    return low + byte % (high - low + 1);
  }
  bool one_in(int n) { return between(1, n) == n; }
  // In steps of 5 mm.
  Length steps(int low, int high) { return Length::mm(5) * between(low, high); }

 private:
  const std::uint8_t* bytes_;
  std::size_t size_;
  std::size_t at_ = 0;
};

Flaw any_flaw(Choices& choices, const Roll& roll) {
  Flaw flaw;
  const Length longest = roll.length - Length::mm(100);
  const Length start = std::min(Length::mm(20) * choices.between(0, 200), longest);
  flaw.along = {start, start + Length::mm(choices.between(1, 50))};
  flaw.across = {Length{}, choices.one_in(2) ? roll.fabric.width : roll.fabric.width / 3};
  return flaw;
}

Roll any_roll(Choices& choices) {
  Roll roll{"Roll", default_fabric(), Length::mm(20) * choices.between(60, 200)};
  roll.fabric.width = choices.steps(60, 200) + Length::mm(200);
  roll.fabric.selvedge = choices.steps(0, 6);
  roll.fabric.thickness = Length::units(100 * choices.between(1, 12));
  roll.fabric.nap = choices.one_in(4) ? Nap::one_way : Nap::none;
  roll.fabric.railroaded = choices.one_in(8);
  roll.squared = static_cast<Squared>(choices.between(0, 2));
  if (choices.one_in(5)) roll.flaws.push_back(any_flaw(choices, roll));
  return roll;
}

Panel any_panel(Choices& choices, int number) {
  Panel panel;
  panel.name = "Panel " + std::to_string(number);
  panel.across = choices.steps(10, 80);
  panel.along = choices.steps(10, 80);
  panel.may_turn = choices.one_in(2);
  panel.on_fold = choices.one_in(2);
  panel.worth = Worth::whole(choices.between(1, 20));
  if (choices.one_in(5)) panel.at_most = choices.between(1, 9);
  return panel;
}

}  // namespace

Job shaped_job(const std::uint8_t* bytes, std::size_t size) {
  Choices choices(bytes, size);
  Job job = default_job();
  job.name = "Shaped";
  job.rolls = {any_roll(choices)};
  const int panels = choices.between(1, 3);
  for (int number = 1; number <= panels; ++number) job.panels.push_back(any_panel(choices, number));
  job.longest_fan = choices.between(3, 4);
  job.cutter.most_plies = choices.between(2, 12);
  return job;
}

}  // namespace foldyard::fuzz
