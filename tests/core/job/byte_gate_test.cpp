#include "job/byte_gate.h"

#include <gtest/gtest.h>

#include <atomic>
#include <chrono>
#include <optional>
#include <thread>

namespace foldyard {
namespace {

TEST(ByteGate, LetsInWhatFitsTogether) {
  ByteGate gate(100);
  const ByteGate::Pass first(gate, 40), second(gate, 60);
  EXPECT_EQ(gate.taken(), 100);
}

TEST(ByteGate, LetsInAloneWhatIsMoreThanItsLimit) {
  ByteGate gate(100);
  {
    const ByteGate::Pass large(gate, 500);
    EXPECT_EQ(gate.taken(), 500);
  }
  EXPECT_EQ(gate.taken(), 0);
}

TEST(ByteGate, LetsWaitUntilThereIsRoom) {
  ByteGate gate(100);
  std::optional<ByteGate::Pass> first;
  first.emplace(gate, 70);
  std::atomic<bool> is_before = false, is_in = false;
  std::thread other([&] {
    is_before = true;
    const ByteGate::Pass second(gate, 31);
    is_in = true;
  });
  while (!is_before) std::this_thread::yield();
  std::this_thread::sleep_for(std::chrono::milliseconds(20));  // long enough to get in, were there no gate
  EXPECT_FALSE(is_in);
  first.reset();
  other.join();
  EXPECT_TRUE(is_in);
}

// Each looks at what all take while it is in.
TEST(ByteGate, NeverLetsInMoreThanItsLimit) {
  ByteGate gate(100);
  std::atomic<std::int64_t> most = 0;
  std::vector<std::thread> threads;
  for (int t = 0; t < 4; ++t)
    threads.emplace_back([&gate, &most, t] {
      for (int turn = 0; turn < 200; ++turn) {
        const ByteGate::Pass pass(gate, 20 + 15 * t);
        for (std::int64_t now = gate.taken(), seen = most; now > seen && !most.compare_exchange_weak(seen, now);) {}
      }
    });
  for (std::thread& thread : threads) thread.join();
  EXPECT_LE(most, 100);
  EXPECT_EQ(gate.taken(), 0);
}

}  // namespace
}  // namespace foldyard
