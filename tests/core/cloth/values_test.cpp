// The values of cloth are told apart by each member.
#include <gtest/gtest.h>

#include "cloth/four_point.h"
#include "core/support/told_apart.h"

namespace foldyard {
namespace {

TEST(ValuesOfCloth, AreToldApartByEachMember) {
  expect_told_apart(Repeat(), &Repeat::along, &Repeat::across, &Repeat::start_along, &Repeat::start_across,
                    &Repeat::symmetric);
  expect_told_apart(Shrinkage(), &Shrinkage::along, &Shrinkage::across);
  expect_told_apart(Fabric(), &Fabric::width, &Fabric::selvedge, &Fabric::thickness, &Fabric::nap, &Fabric::colour,
                    &Fabric::repeat, &Fabric::railroaded, &Fabric::shrinkage);
  expect_told_apart(Flaw(), &Flaw::along, &Flaw::across, &Flaw::kind);
  expect_told_apart(FourPointGrade(), &FourPointGrade::points, &FourPointGrade::hundredths);
}

TEST(ValuesOfARoll, AreToldApartByEachMember) {
  expect_told_apart(Roll(), &Roll::name, &Roll::fabric, &Roll::length, &Roll::measured, &Roll::is_found,
                    &Roll::cut_since, &Roll::squared, &Roll::flaws, &Roll::cloth, &Roll::marks, &Roll::price,
                    &Roll::in_batch);
}

TEST(ValuesOfAMeasuredRoll, AreToldApartByEachMember) {
  expect_told_apart(MeasuredLength(), &MeasuredLength::value, &MeasuredLength::give);
  expect_told_apart(MeasuredCount(), &MeasuredCount::value, &MeasuredCount::give);
  expect_told_apart(ByDiameters(), &ByDiameters::outer, &ByDiameters::tube, &ByDiameters::thickness);
  expect_told_apart(ByTurns(), &ByTurns::turns, &ByTurns::outer, &ByTurns::tube);
  expect_told_apart(ByWeight(), &ByWeight::roll, &ByWeight::tube, &ByWeight::per_square_metre);
  expect_told_apart(LengthEstimate(), &LengthEstimate::least, &LengthEstimate::likely, &LengthEstimate::most);
}

}  // namespace
}  // namespace foldyard
