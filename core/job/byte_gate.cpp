#include "job/byte_gate.h"

namespace foldyard {

std::int64_t ByteGate::taken() const {
  const std::lock_guard lock(mutex_);
  return taken_;
}

void ByteGate::enter(std::int64_t bytes) {
  std::unique_lock lock(mutex_);
  is_left_.wait(lock, [&] { return taken_ == 0 || taken_ + bytes <= limit_; });
  taken_ += bytes;
}

void ByteGate::leave(std::int64_t bytes) {
  {
    const std::lock_guard lock(mutex_);
    taken_ -= bytes;
  }
  is_left_.notify_all();
}

}  // namespace foldyard
