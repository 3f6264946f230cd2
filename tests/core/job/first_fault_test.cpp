#include "job/first_fault.h"

#include <gtest/gtest.h>

namespace foldyard {
namespace {

std::string sentence(const FirstFault& faults) {
  return faults.fault() ? faults.fault()->sentence() : "";
}

TEST(FirstFault, KeepsTheFirstOnly) {
  FirstFault faults(Unit::cm);
  faults.name("name", "Oak", true);
  EXPECT_EQ(sentence(faults), "");
  faults.name("name", "", true);
  faults.length("width", Length(), limits::kRollWidth);
  EXPECT_EQ(sentence(faults), "name: the name is empty; give it one.");
}

TEST(FirstFault, NamesALengthInTheUnitOfTheJob) {
  FirstFault faults(Unit::inch);
  faults.length("width", Length::inches64(32), {Length::mm(20), Length::mm(30), "2 cm to 3 cm"});
  EXPECT_EQ(sentence(faults), "width: 1/2 in is too small; give 2 cm to 3 cm.");
}

TEST(FirstFault, NamesANumberWithItsDecimals) {
  FirstFault faults(Unit::cm);
  faults.number("along_percent", 5001, {0, 5000}, 2);
  EXPECT_EQ(sentence(faults), "along_percent: 50.01 is too large; give 0 to 50.");
}

TEST(FirstFault, CountsAListThatIsNeededAndOneThatIsNot) {
  FirstFault needed(Unit::cm);
  needed.count("rolls", 0, 200);
  EXPECT_EQ(sentence(needed), "rolls: the list is empty; give at least one.");
  FirstFault faults(Unit::cm);
  faults.no_more("flaws", 0, 200);
  faults.no_more("flaws", 200, 200);
  EXPECT_EQ(sentence(faults), "");
  faults.no_more("flaws", 201, 200);
  EXPECT_EQ(sentence(faults), "flaws: the list has 201 entries; use at most 200.");
}

TEST(FirstFault, RefusesNamesThatNoLineCanHold) {
  FirstFault empty(Unit::cm), broken(Unit::cm), sound(Unit::cm);
  empty.name("rolls[0].name", " ", true);
  broken.name("rolls[0].name", "Moss\ngreen", true);
  sound.name("rolls[0].cloth", "", false);
  EXPECT_EQ(empty.fault()->sentence(), "rolls[0].name: the name is empty; give it one.");
  EXPECT_EQ(broken.fault()->sentence(),
            "rolls[0].name: the name holds a line break or another control character; leave it out.");
  EXPECT_FALSE(sound.fault());
}

TEST(FirstFault, NamesAnEntryOfAList) { EXPECT_EQ(at("rolls", 2), "rolls[2]"); }

}  // namespace
}  // namespace foldyard
