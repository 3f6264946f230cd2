#include "inspect/findings.h"

namespace foldyard::inspection {

namespace {

bool is_whole_in(Length length, Unit unit) {
  const bool imperial = unit == Unit::inch || unit == Unit::yard;
  return length.units() % (imperial ? 127 : 32) == 0;
}

}  // namespace

std::string Findings::text(Length length) const {
  const std::string words = write_length(length, unit_);
  if (is_whole_in(length, unit_)) return words;
  return words + " (" + std::to_string(length.units()) + " units of 1/320 mm)";
}

std::string Findings::text(Area area) {
  return std::to_string(area.square_units()) + " square units";
}

std::string Findings::text(Worth worth) {
  return std::to_string(worth.parts()) + " ten-thousandths";
}

std::string Findings::text(Duration duration) {
  return std::to_string(duration.ticks()) + "/320 µs";
}

}  // namespace foldyard::inspection
