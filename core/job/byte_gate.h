#pragma once

// ByteGate: lets threads take memory at once only as far as it is no more than a limit in all.
// Who asks waits until there is room; who asks for more than the limit gets in alone. So none
// waits for ever, as long as nobody asks for more while being in.
//
// Example: with a limit of 100 MiB two that take 40 MiB each go in together, a third waits.

#include <condition_variable>
#include <cstdint>
#include <mutex>

namespace foldyard {

class ByteGate {
 public:
  // limit: in bytes.
  explicit ByteGate(std::int64_t limit) : limit_(limit) {}

  // In from when it is made until it goes out of scope.
  class Pass {
   public:
    // REQUIRES the gate to live as long as this, and bytes ≥ 0.
    Pass(ByteGate& gate, std::int64_t bytes) : gate_(gate), bytes_(bytes) { gate_.enter(bytes_); }
    ~Pass() { gate_.leave(bytes_); }
    Pass(const Pass&) = delete;
    Pass& operator=(const Pass&) = delete;

   private:
    ByteGate& gate_;
    std::int64_t bytes_;
  };

  // In bytes, by all that are in.
  std::int64_t taken() const;

 private:
  void enter(std::int64_t bytes);
  void leave(std::int64_t bytes);

  const std::int64_t limit_;
  mutable std::mutex mutex_;  // guards all below
  std::condition_variable is_left_;
  std::int64_t taken_ = 0;
};

}  // namespace foldyard
