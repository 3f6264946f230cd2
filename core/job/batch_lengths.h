#pragma once

// The lengths that the plan of an order may be put together from, each with the
// pattern that it is cut by. Lengths of one kind, way and size that yield the same
// are one: the first.
//
// Their patterns take memory. A search looks at the room() before it adds more than it needs.

#include <algorithm>
#include <map>
#include <tuple>

#include "batch/order_state.h"
#include "job/batch_case.h"
#include "job/plan.h"
#include "measure/index.h"

namespace foldyard {

class BatchLengths {
 public:
  static constexpr std::int64_t kMostBytes = std::int64_t{100} << 20;
  // What a panel, its cuts and what is left beside it take in a pattern, about.
  static constexpr std::int64_t kBytesAPanel = 350;
  static constexpr std::int64_t kMostPanels = kMostBytes / kBytesAPanel;

  BatchLengths(const Job& job, const BatchCase& c) : job_(job), case_(c) {}

  // way: index into the kind's ways. Gives the length's index.
  int add(int kind, int way, const Pattern& pattern);
  // The same, but that only a length of an equal pattern is the same one.
  int keep(int kind, int way, const Pattern& pattern);
  // For how many panels.
  std::int64_t room() const { return std::max<std::int64_t>(0, (kMostBytes - bytes_) / kBytesAPanel); }
  LengthPool& pool() { return pool_; }
  const LengthPool& pool() const { return pool_; }
  const Pattern& pattern(int length) const { return patterns_[ix(length)]; }
  const FoldWay& way(int length) const;

 private:
  int append(OrderLength length, const Pattern& pattern);
  std::int64_t bytes_of(const Pattern& pattern) const;
  OrderLength length_of(int kind, int way, const Pattern& pattern) const;

  using Key = std::tuple<int, int, Length, std::vector<std::int64_t>>;
  const Job& job_;
  const BatchCase& case_;
  LengthPool pool_;
  std::vector<Pattern> patterns_;
  std::int64_t bytes_ = 0;  // of all patterns, and what else is kept of each length
  std::map<Key, int> known_;
};

}  // namespace foldyard
