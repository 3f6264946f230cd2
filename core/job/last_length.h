#pragma once

// LastLength's finder: the shortest length that holds all of a few panels, as far as the search with limited copies finds it
// (cutting/limited_search.h): first one as long as their area needs, then longer
// ones until all find room.
//
// The same question is answered once. Only for open cloth, cloth folded selvedge to
// selvedge, and open cloth folded end to end.

#include <atomic>

#include "batch/order_fill.h"
#include "job/batch_lengths.h"

namespace foldyard {

class LastLengthFinder {
 public:
  // steps: of one search. All must live as long as this.
  LastLengthFinder(const Job& job, const BatchCase& c, BatchLengths& lengths, std::int64_t steps,
                   const std::atomic<bool>* cancelled = nullptr)
      : job_(job), case_(c), lengths_(lengths), steps_(steps), cancelled_(cancelled) {}

  std::optional<int> operator()(int kind, int way, const std::vector<std::int64_t>& needs, Length most);

 private:
  struct Known {
    Length tried;  // none up to this holds all
    std::optional<int> length;
  };
  void search(int kind, int way, const std::vector<std::int64_t>& needs, Length most, Known& known);
  int added(int kind, int way, Length folded, const CutTree& inner);

  const Job& job_;
  const BatchCase& case_;
  BatchLengths& lengths_;
  std::int64_t steps_;
  const std::atomic<bool>* cancelled_;
  std::map<std::tuple<int, int, std::vector<std::int64_t>>, Known> known_;
};

}  // namespace foldyard
