#pragma once

// Throws for random tests. A throw prints its seed when it is made; with
// FOLDYARD_SEED set in the environment the same throws come again.

#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <random>
#include <string>

namespace foldyard::test {

inline unsigned first_seed() {
  const char* given = std::getenv("FOLDYARD_SEED");
  const unsigned seed =
      given ? static_cast<unsigned>(std::strtoul(given, nullptr, 10)) : std::random_device{}();
  std::printf("FOLDYARD_SEED=%u\n", seed);
  return seed;
}

class Dice {
 public:
  explicit Dice(unsigned seed) : engine_(seed) {}

  // From low to high, both included.
  int from_to(int low, int high) {
    return low + static_cast<int>(engine_() % static_cast<unsigned>(high - low + 1));
  }
  bool coin() { return from_to(0, 1) == 1; }

 private:
  std::mt19937 engine_;
};

}  // namespace foldyard::test
