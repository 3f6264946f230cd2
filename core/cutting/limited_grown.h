#pragma once

// Builds that others are joined with, by their size, those of one size with the
// greatest priced gain first; and which sizes, joined with a build, could still
// lead to enough. Internal to the limited search.

#include <algorithm>
#include <limits>
#include <vector>

#include "cutting/limited_builds.h"
#include "cutting/limited_rows.h"
#include "cutting/limited_tables.h"

namespace foldyard::limited {

struct SizeClass {
  struct Entry {
    std::int64_t priced;
    std::int64_t gain;
    int build;
  };

  int width;
  int height;
  Rim rim;
  std::int64_t most_gain = 0;
  std::vector<Entry> builds;
  std::vector<std::uint64_t> copies;  // of each, the words in use
};

class GrownBuilds {
 public:
  GrownBuilds(const Cloth& cloth, const Counting& counting);

  void add(const Build& b, int index);
  const SizeClass& at(int index) const { return classes_[index]; }

  // Whether a build of the same size and rim holds all that b holds and more:
  // then b is never needed.
  bool is_covered(const Build& b) const;

  // Visits, by index, every class whose greatest priced gain and the most around
  // the join come to `need`, and some that do not. visit gives false to end.
  // Returns how many sizes were looked at.
  template <class Visit>
  std::int64_t beside(const Build& b, const AroundTable& around, std::int64_t need, Visit visit) const;
  template <class Visit>
  std::int64_t above(const Build& b, const AroundTable& around, std::int64_t need, Visit visit) const;

 private:
  // Sizes of one height, by width in units.
  struct Row {
    std::vector<std::int32_t> most;  // greatest priced gain; kNever where there is none
    std::vector<int> class_at;       // −1 where there is none
  };

  static constexpr int kBlock = 64;

  const Row* row(Rim rim, int y) const { return rows_[rim][y].most.empty() ? nullptr : &rows_[rim][y]; }
  static std::int32_t in_range(std::int64_t need) {
    return static_cast<std::int32_t>(std::clamp<std::int64_t>(need, std::numeric_limits<std::int32_t>::min() + 1,
                                                              std::numeric_limits<std::int32_t>::max()));
  }
  // Visits the classes of widths [from, to] that come to need: with what `around`
  // holds by width, or (null) alone.
  template <class Visit>
  static bool scan(const Row& row, const std::int32_t* around, int from, int to, std::int32_t need, Visit visit);

  const Cloth& cloth_;
  const Counting& counting_;
  std::vector<Row> rows_[2];
  std::vector<SizeClass> classes_;
};

template <class Visit>
bool GrownBuilds::scan(const Row& row, const std::int32_t* around, int from, int to, std::int32_t need,
                       Visit visit) {
  const std::int32_t* most = row.most.data();
  for (int i = from; i <= to; i += kBlock) {
    const int n = std::min(kBlock, to + 1 - i);
    if ((around ? most_of_sum(most + i, around + i, n) : most_of(most + i, n)) < need) continue;
    for (int w = i; w < i + n; ++w)
      if (row.class_at[w] >= 0 && most[w] + (around ? around[w] : 0) >= need && !visit(row.class_at[w])) return false;
  }
  return true;
}

template <class Visit>
std::int64_t GrownBuilds::beside(const Build& b, const AroundTable& around, std::int64_t need, Visit visit) const {
  std::int64_t seen = 0;
  for (const Rim rim : {kLoose, kJoint}) {
    if (rows_[rim].empty() || (rim == kJoint && b.rim == kJoint)) continue;
    for (int y = 0; y < cloth_.along.count(); ++y) {
      const Row* theirs = row(rim, y);
      if (!theirs) continue;
      const int height = std::max(y, cloth_.along.index[b.height]);
      const std::int32_t* joined = around.row(rim == kJoint ? kJoint : b.rim, height).data() + b.width;
      seen += cloth_.width - b.width;
      if (!scan(*theirs, joined, 1, cloth_.width - b.width, in_range(need), visit)) return seen;
    }
  }
  return seen;
}

template <class Visit>
std::int64_t GrownBuilds::above(const Build& b, const AroundTable& around, std::int64_t need, Visit visit) const {
  std::int64_t seen = 0;
  for (int y = 0; y < cloth_.along.count(); ++y) {
    const int height = cloth_.along.ceil(b.height + cloth_.along.list[y]);
    if (height < 0) break;
    const Row* theirs = row(b.rim, y);
    if (!theirs) continue;
    const std::int32_t* joined = around.row(b.rim, height).data();
    seen += cloth_.width;
    if (!scan(*theirs, nullptr, 1, b.width, in_range(need - joined[b.width]), visit)) return seen;
    if (!scan(*theirs, joined, b.width + 1, cloth_.width, in_range(need), visit)) return seen;
  }
  return seen;
}

}  // namespace foldyard::limited
