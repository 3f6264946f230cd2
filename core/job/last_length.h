#pragma once

// LastLength's finder: the shortest length that holds all of a few panels, as far as the search with limited copies finds it
// (cutting/limited_search.h): first one as long as their area needs, then longer
// ones until all find room.
//
// The same question is answered once. So for open cloth, cloth folded selvedge to
// selvedge, and open cloth folded end to end. Under other ways a length is found where one
// that is best at some prices of the panels asked for (job/length_pricer.h) holds them all:
// first at prices by area, then at some more, dearer for what lacked.

#include <atomic>

#include "batch/order_fill.h"
#include "job/batch_lengths.h"
#include "job/length_pricer.h"

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
  void search_by_prices(int kind, int way, const std::vector<std::int64_t>& needs, Length most, Known& known);
  std::optional<Pattern> at_prices(const BatchKind& of, int way, const std::vector<std::int64_t>& needs, Length most,
                                   std::vector<std::int64_t>& prices);

  const Job& job_;
  const BatchCase& case_;
  BatchLengths& lengths_;
  std::int64_t steps_;
  const std::atomic<bool>* cancelled_;
  std::map<std::tuple<int, int, std::vector<std::int64_t>>, Known> known_;
  // Of the last prices asked for: its tables serve all ways.
  std::unique_ptr<LengthPricer> pricer_;
  std::pair<const BatchKind*, std::vector<std::int64_t>> priced_;
};

}  // namespace foldyard
