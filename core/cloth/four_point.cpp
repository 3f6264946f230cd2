#include "cloth/four_point.h"

#include <algorithm>
#include <map>

#include "measure/wide.h"

namespace foldyard {

namespace {

constexpr std::int64_t kMost = 4;

struct Scale {
  Length one, two, three;  // points up to this
  Length small_hole;
  Length unit;
};

const Scale& scale_of(PointUnit unit) {
  constexpr auto inches = [](std::int64_t n) { return Length::inches64(n * 64); };
  static const Scale yard{inches(3), inches(6), inches(9), inches(1),
                          Length::units(Length::kUnitsPerYard)};
  static const Scale metre{Length::mm(75), Length::mm(150), Length::mm(230), Length::mm(25),
                           Length::mm(1000)};
  return unit == PointUnit::yard ? yard : metre;
}

Length longer_side(const Flaw& flaw) { return std::max(flaw.along.size(), flaw.across.size()); }

bool is_hole(const Flaw& flaw) {
  std::string kind = flaw.kind;
  for (char& c : kind)
    if ('A' <= c && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return kind.find("hole") != std::string::npos;
}

// The points by yard (or metre), counted from the free end.
void add_points(const Flaw& flaw, PointUnit unit, std::map<std::int64_t, std::int64_t>& by_yard) {
  const Scale& scale = scale_of(unit);
  const std::int64_t first = flaw.along.from / scale.unit;
  by_yard[first] += points_of(flaw, unit);
  if (flaw.along.size() <= scale.three) return;
  const std::int64_t last = (flaw.along.to - Length::units(1)) / scale.unit;
  for (std::int64_t yard = first + 1; yard <= last; ++yard) by_yard[yard] += kMost;
}

}  // namespace

std::int64_t points_of(const Flaw& flaw, PointUnit unit) {
  const Scale& scale = scale_of(unit);
  const Length size = longer_side(flaw);
  if (is_hole(flaw)) return size <= scale.small_hole ? 2 : kMost;
  return size <= scale.one ? 1 : size <= scale.two ? 2 : size <= scale.three ? 3 : kMost;
}

FourPointGrade four_point_grade(const Roll& roll, PointUnit unit) {
  std::map<std::int64_t, std::int64_t> by_yard;
  for (const Flaw& flaw : roll.flaws) add_points(flaw, unit, by_yard);
  FourPointGrade grade;
  for (const auto& [yard, points] : by_yard) grade.points += std::min(points, kMost);
  const Length side = scale_of(unit).unit;
  const Wide hundred = Wide((side * side).square_units()) * 100;
  const Wide cloth = (roll.fabric.width * roll.length).square_units();
  grade.hundredths =
      static_cast<std::int64_t>((Wide(grade.points) * 100 * hundred * 2 + cloth) / (cloth * 2));
  return grade;
}

}  // namespace foldyard
