#include "job/batch_lengths.h"

#include "job/cut_back.h"
#include "measure/index.h"

namespace foldyard {

OrderLength BatchLengths::length_of(int kind, int way, const Pattern& pattern) const {
  const Pace& pace = job_.pace;
  const Length width = case_.kinds[ix(kind)].cloth.fabric.width;
  OrderLength length{kind, way, pattern.length + job_.losses.allowance, copies_in(pattern, job_.panels.size()),
                     pattern.plies, {}, {}};
  length.each = pace.cross_cut + travel_time(width, pace.ms_per_metre) + pace.fold * folds_made(pattern.fold.way) +
                pace.handle * std::ssize(pattern.panels);
  length.lay = pace.lift + pace.mark * std::ssize(pattern.cuts) + travel_time(pattern.travel, pace.ms_per_metre);
  return length;
}

int BatchLengths::keep(int kind, int way, const Pattern& pattern) {
  for (int i = 0; i < std::ssize(pool_); ++i) {
    const auto at = static_cast<std::size_t>(i);
    if (pool_[at].kind == kind && pool_[at].way == way && patterns_[at] == pattern) return i;
  }
  OrderLength length = length_of(kind, way, pattern);
  known_.try_emplace(Key{kind, way, length.size, length.yield}, static_cast<int>(pool_.size()));
  return append(std::move(length), pattern);
}

// The yield is kept twice, in the length and in its key.
std::int64_t BatchLengths::bytes_of(const Pattern& pattern) const {
  constexpr std::int64_t kEach = 2 * sizeof(OrderLength) + sizeof(Key) + sizeof(Pattern);
  const auto bytes = [](const auto& list) { return static_cast<std::int64_t>(list.size() * sizeof(list.front())); };
  return kEach + 2 * std::ssize(job_.panels) * static_cast<std::int64_t>(sizeof(std::int64_t)) + bytes(pattern.tree.nodes) +
         bytes(pattern.cuts) + bytes(pattern.panels) + bytes(pattern.rests);
}

// A copy of the pattern takes no more than it needs.
int BatchLengths::append(OrderLength length, const Pattern& pattern) {
  bytes_ += bytes_of(pattern);
  pool_.push_back(std::move(length));
  patterns_.push_back(pattern);
  return static_cast<int>(pool_.size()) - 1;
}

int BatchLengths::add(int kind, int way, const Pattern& pattern) {
  OrderLength length = length_of(kind, way, pattern);
  const auto [found, is_new] =
      known_.try_emplace(Key{kind, way, length.size, length.yield}, static_cast<int>(pool_.size()));
  return is_new ? append(std::move(length), pattern) : found->second;
}

const FoldWay& BatchLengths::way(int length) const {
  const OrderLength& l = pool_[ix(length)];
  return case_.kinds[ix(l.kind)].ways[ix(l.way)];
}

}  // namespace foldyard
