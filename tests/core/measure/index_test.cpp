#include "measure/index.h"

#include <gtest/gtest.h>

#include <vector>

namespace foldyard {
namespace {

TEST(Index, NamesTheEntryOfThatNumber) {
  const std::vector<char> letters = {'a', 'b', 'c'};
  EXPECT_EQ(letters[ix(2)], 'c');
}

}  // namespace
}  // namespace foldyard
