#pragma once

// LengthPricer: what every length of one kind of cloth gives at the most when
// each panel sells at a price, and the pattern that gives it.
//
// Panels of price 0 or less are not cut, nor, from cloth that repeats, those that must match.
// Lengths are those worth cutting: sums along of the panels that sell (cutting/grid.h), up to
// the table's length and the roll's. Copies are free of limits.
//
// bounding: lengths that bound those of every way, whether cloth may lie so or
// not: open cloth bounds every fold (docs/method.md, section 2), and open cloth
// folded end to end those that are folded so besides.
//
// A length holds at most about 10 000 panels: where more would lie on one, longer ones are
// left out, except as the largest panel needs them. Tables take kMostBytes: of larger ones
// places are left out.
//
// is_whole: no place and no length was left out; else what is found can be cut, but more may be
// had, and most_by_area() bounds them.
//
// Example: panels 450 × 900 at 5 on cloth 1480 wide: a length of 900 gives 15.

#include <map>
#include <memory>

#include "job/roll_planner.h"
#include "measure/words.h"

namespace foldyard {

// A price for each panel by its area: 1, and 1 more for every full 25 mm².
std::vector<std::int64_t> prices_by_area(const Job& job);

struct PricedLength {
  int way = 0;      // index into the ways asked for
  int place = 0;    // of the grid along
  Length length;    // flat
  std::int64_t value = 0;
};

class LengthPricer {
 public:
  static constexpr std::int64_t kMostBytes = std::int64_t{125} << 20;

  // REQUIRES job, cloth and ways to live as long as this.
  LengthPricer(const Job& job, const Roll& cloth, const std::vector<std::int64_t>& prices, std::int64_t steps,
               const std::atomic<bool>* cancelled = nullptr);

  // Those that give something, by way, then ascending; of a way that is refused none.
  std::vector<PricedLength> lengths(const std::vector<FoldWay>& ways);
  // Of these ways of the list alone.
  std::vector<PricedLength> lengths(const std::vector<int>& asked, const std::vector<FoldWay>& ways);
  // The same of open cloth, however deep the table, or of it folded end to end.
  std::vector<PricedLength> bounding(bool end_to_end);
  // REQUIRES a length from lengths(ways) of the same ways.
  Pattern pattern(const PricedLength& length, const std::vector<FoldWay>& ways);

  // Why the cloth may not be cut so; empty where it may, or nothing sells.
  Words refusal(const FoldWay& way) const { return planner_ ? planner_->refusal(way) : Words(); }
  // Whether it may be cut so and find room on the table.
  bool may_cut(const FoldWay& way) const;
  bool sells() const { return !panels_.empty(); }
  // What its tables take at most, in bytes, by estimate; nothing where nothing sells.
  std::int64_t most_bytes() const { return planner_ ? planner_->bytes_of_one() : 0; }
  bool is_whole() const;
  // No length of this size gives more.
  Wide most_by_area(Length length) const;

 private:
  // A way as it has been searched; the search refers to its layouts.
  struct Searched {
    Layouts layouts;
    std::unique_ptr<StripSearch> search;
  };
  const Searched& searched(const FoldWay& way);
  std::vector<PricedLength> priced(const Searched& searched, int way, bool end_to_end);

  const Job& job_;
  const Roll& cloth_;
  Job sold_;                 // with the panels that sell, worth their prices
  std::vector<int> panels_;  // of job, by panel of sold_
  bool is_shortened_ = false;
  const std::atomic<bool>* cancelled_;
  std::unique_ptr<RollPlanner> planner_;  // null where nothing sells
  std::map<FoldWay, Searched> searched_;
};

}  // namespace foldyard
