#include "lay/stack.h"

#include <algorithm>
#include <numeric>

#include "measure/index.h"

namespace foldyard {

namespace {

constexpr std::size_t kMostTried = 12;

class Stacking {
 public:
  Stacking(const std::vector<Length>& heights, int plies, const Cutter& cutter)
      : heights_(heights), height_(cutter.height), most_(static_cast<std::size_t>(std::max(1, cutter.most_plies / plies))),
        order_(heights.size()) {
    std::iota(order_.begin(), order_.end(), 0);
    std::stable_sort(order_.begin(), order_.end(), [&](int a, int b) { return height_of(a) > height_of(b); });
  }

  Stacks run() {
    first_fit();
    const std::int64_t least = least_stacks();
    for (std::int64_t count = least; count < std::ssize(best_) && heights_.size() <= kMostTried; ++count) {
      now_.assign(static_cast<std::size_t>(count), {});
      room_.assign(now_.size(), height_);
      if (place(0)) best_ = now_;
    }
    for (auto& stack : best_) std::sort(stack.begin(), stack.end());
    std::sort(best_.begin(), best_.end());
    return {best_, heights_.size() <= kMostTried ? std::ssize(best_) : least};
  }

 private:
  Length height_of(int i) const { return heights_[ix(i)]; }

  std::int64_t least_stacks() const {
    Length sum;
    for (const Length h : heights_) sum += h;
    const auto up = [](std::int64_t a, std::int64_t b) { return (a + b - 1) / b; };
    // Of the lowest, this many go into one stack; no stack holds more.
    std::size_t fit = 0;
    Length low;
    while (fit < order_.size() && low + height_of(order_[order_.size() - 1 - fit]) <= height_)
      low += height_of(order_[order_.size() - 1 - fit++]);
    const auto most = static_cast<std::int64_t>(std::max<std::size_t>(1, std::min(fit, most_)));
    return std::max(up(sum.units(), height_.units()), up(std::ssize(heights_), most));
  }

  void first_fit() {
    std::vector<Length> room;
    for (const int i : order_) {
      std::size_t s = 0;
      while (s < best_.size() && (room[s] < height_of(i) || best_[s].size() >= most_)) ++s;
      if (s == best_.size()) {
        best_.emplace_back();
        room.push_back(height_);
      }
      best_[s].push_back(i);
      room[s] -= height_of(i);
    }
  }

  // Of stacks with equal room only the first is tried.
  bool place(std::size_t next) {
    if (next == order_.size()) return true;
    const int i = order_[next];
    for (std::size_t s = 0; s < now_.size(); ++s) {
      if (room_[s] < height_of(i) || now_[s].size() >= most_) continue;
      bool tried = false;
      for (std::size_t t = 0; t < s; ++t) tried |= room_[t] == room_[s] && now_[t].size() == now_[s].size();
      if (tried) continue;
      now_[s].push_back(i);
      room_[s] -= height_of(i);
      if (place(next + 1)) return true;
      now_[s].pop_back();
      room_[s] += height_of(i);
    }
    return false;
  }

  const std::vector<Length>& heights_;
  Length height_;
  std::size_t most_;
  std::vector<int> order_;
  std::vector<std::vector<int>> best_, now_;
  std::vector<Length> room_;
};

}  // namespace

Stacks fewest_stacks(const std::vector<Length>& heights, int plies, const Cutter& cutter) {
  return Stacking(heights, plies, cutter).run();
}

}  // namespace foldyard
