#include "cloth/four_point.h"

#include <gtest/gtest.h>

#include "core/support/lengths.h"

namespace foldyard {
namespace {

using test::inches;

Length yards(int n) { return Length::units(n * Length::kUnitsPerYard); }

Flaw flaw_at(Length from, Length size, const char* kind = "slub") {
  return {{from, from + size}, {Length(), inches(1)}, kind};
}

// So many flaws of 1, 2, 3 and 4 points and holes of 4, each in a yard (or
// metre) of its own.
Roll roll_with(Length width, Length length, PointUnit unit, const std::vector<int>& counts) {
  Roll roll;
  roll.fabric.width = width;
  roll.length = length;
  const bool metric = unit == PointUnit::metre;
  const Length sizes[] = {metric ? Length::mm(75) : inches(3), metric ? Length::mm(150) : inches(6),
                          metric ? Length::mm(230) : inches(9), metric ? Length::mm(300) : inches(10),
                          inches(2)};
  Length at;
  for (std::size_t kind = 0; kind < counts.size(); ++kind)
    for (int n = 0; n < counts[kind]; ++n, at += metric ? Length::mm(1000) : yards(1))
      roll.flaws.push_back(flaw_at(at, sizes[kind], kind == 4 ? "Hole" : "slub"));
  return roll;
}

// Published: 6 × 1, 4 × 2, 2 × 3, 1 × 4 and a hole of 4 on 150 yd × 56 in
// (apparelscience.com); the formula there gives 28 × 3600 / 8400 = 12.00.
TEST(FourPoint, GradesThePublishedRollOf150Yards) {
  const Roll roll = roll_with(inches(56), yards(150), PointUnit::yard, {6, 4, 2, 1, 1});
  EXPECT_EQ(four_point_grade(roll, PointUnit::yard), (FourPointGrade{28, 1200}));
}

// 6 × 1, 5 × 2, 2 × 3, 1 × 4 and a hole of 4 on 130 yd × 45 in, published as
// 18.4 (scribd.com/document/731386482): 30 × 3600 / 5850 = 18.46.
TEST(FourPoint, GradesThePublishedRollOf130Yards) {
  const Roll roll = roll_with(inches(45), yards(130), PointUnit::yard, {6, 5, 2, 1, 1});
  EXPECT_EQ(four_point_grade(roll, PointUnit::yard), (FourPointGrade{30, 1846}));
}

// 7 × 1, 4 × 2, 2 × 3, 1 × 4 and a hole of 4 on 100 m × 1500 mm, published as 19
// (jozwiak.eu, whose sum of 28 should be 29): 29 × 100 000 / 150 000 = 19.33.
TEST(FourPoint, GradesThePublishedRollOf100Metres) {
  const Roll roll = roll_with(Length::mm(1500), Length::mm(100'000), PointUnit::metre, {7, 4, 2, 1, 1});
  EXPECT_EQ(four_point_grade(roll, PointUnit::metre), (FourPointGrade{29, 1933}));
}

TEST(FourPoint, CountsByTheLongerSide) {
  const Length unit = Length::units(1);
  const auto points = [](Length size) { return points_of(flaw_at(Length(), size), PointUnit::yard); };
  EXPECT_EQ(points(inches(3)), 1);
  EXPECT_EQ(points(inches(3) + unit), 2);
  EXPECT_EQ(points(inches(6) + unit), 3);
  EXPECT_EQ(points(inches(9)), 3);
  EXPECT_EQ(points(inches(9) + unit), 4);
  const Flaw wide{{Length(), unit}, {Length(), inches(54)}, "seam"};
  EXPECT_EQ(points_of(wide, PointUnit::yard), 4);
  EXPECT_EQ(points_of(flaw_at(Length(), inches(1), "small hole"), PointUnit::yard), 2);
  EXPECT_EQ(points_of({{Length(), inches(1) + unit}, {Length(), unit}, "HOLE"}, PointUnit::yard), 4);
  EXPECT_EQ(points_of(flaw_at(Length(), Length::mm(75)), PointUnit::metre), 1);
  EXPECT_EQ(points_of(flaw_at(Length(), Length::mm(75) + unit), PointUnit::metre), 2);
}

TEST(FourPoint, CountsNoYardMoreThanFour) {
  Roll roll = roll_with(inches(36), yards(100), PointUnit::yard, {});
  EXPECT_EQ(four_point_grade(roll, PointUnit::yard), FourPointGrade{});
  for (int n = 0; n < 6; ++n) roll.flaws.push_back(flaw_at(inches(5 * n), inches(1)));
  EXPECT_EQ(four_point_grade(roll, PointUnit::yard), (FourPointGrade{4, 400}));
  // One that runs through three yards, from the end of the second on.
  roll.flaws.push_back(flaw_at(inches(70), inches(50)));
  EXPECT_EQ(four_point_grade(roll, PointUnit::yard).points, 4 + 3 * 4);
}

}  // namespace
}  // namespace foldyard
