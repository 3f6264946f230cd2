#pragma once

// The name of a test that is run for each fold way.

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

#include "fold/fold_plan.h"

namespace foldyard::test {

inline std::string way_title(const testing::TestParamInfo<FoldWay>& test) {
  std::string key = way_key(test.param);
  std::replace_if(key.begin(), key.end(), [](char c) { return c == '-' || c == '+'; }, '_');
  return key;
}

}  // namespace foldyard::test
