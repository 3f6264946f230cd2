// Each law is tried on 300 cases; RC_PARAMS in the environment says otherwise,
// for example "seed=1" with the seed that a run has printed.

#include <gtest/gtest.h>

#include <cstdlib>

int main(int argc, char** argv) {
  setenv("RC_PARAMS", "max_success=300", 0);
  testing::InitGoogleTest(&argc, argv);
  return RUN_ALL_TESTS();
}
