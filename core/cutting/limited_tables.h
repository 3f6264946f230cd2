#pragma once

// Priced tables: the most a rectangle can gain, and the most that can be
// gained around a build, when copies are not limited but each has a price.
// Internal to the limited search.
//
// Gains here are scaled by kScale; a shape gains gain × kScale less its price.
// For any prices ≥ 0, gain of a build + around(build) + given_back bounds every
// limited cutting that contains the build.

#include "cutting/limited_cloth.h"

namespace foldyard::limited {

inline constexpr int kScale = 16;
// Rows of up to 16 000 numbers that are worked through between two looks at
// whether the search is stopped: well under a millisecond.
inline constexpr int kRowsBetweenLooks = 16;

struct Prices {
  std::vector<std::int64_t> panel;  // of one copy, scaled
  std::int64_t given_back(const Cloth& cloth) const;
  std::int64_t priced(const UnitShape& shape) const {
    return shape.gain * kScale - panel[shape.panel] * shape.uses;
  }
};

// A search that is stopped leaves its tables unfinished: then what InsideTable
// holds can be had, but it bounds nothing, and AroundTable is of no use.
class InsideTable {
 public:
  InsideTable(const Cloth& cloth, const Prices& prices, Stop stop = nullptr);
  bool is_finished() const { return finished_; }

  // The most inside a rectangle of any size; 0 where nothing fits.
  std::int32_t most(Rim rim, int width, int height) const {
    const int row = cloth_.along.floor[height];
    return row < 0 ? 0 : rows_[rim][row][width];
  }
  const std::vector<std::int32_t>& row(Rim rim, int place) const { return rows_[rim][place]; }
  // How many of each panel one best filling of the whole uses.
  std::vector<std::int64_t> copies_used() const;

 private:
  void fill_loose(int row);
  void fill_joint(int row);
  void start_row(Rim rim, int row);

  const Cloth& cloth_;
  const Prices& prices_;
  Stop stop_;
  bool finished_ = false;
  std::vector<std::vector<std::int32_t>> rows_[2];
};

class AroundTable {
 public:
  static constexpr std::int32_t kNever = -(1 << 30);
  AroundTable(const Cloth& cloth, const InsideTable& inside, Stop stop = nullptr);
  bool is_finished() const { return finished_; }

  // REQUIRES a height that is a place; < 0 where no cutting can hold such a build.
  std::int32_t most(Rim rim, int width, int height) const {
    return rows_[rim][cloth_.along.index[height]][width];
  }
  // By width in units; between two places that of the wider.
  const std::vector<std::int32_t>& row(Rim rim, int place) const { return rows_[rim][place]; }

 private:
  using Row = std::vector<std::int32_t>;

  void fill(Rim rim);
  void start_row(Rim rim, int y);
  std::int32_t beside(Rim rim, int width, int y) const;
  std::int32_t joined(int width, int y) const;

  const Cloth& cloth_;
  const InsideTable& inside_;
  Stop stop_;
  bool finished_ = false;
  std::vector<Row> rows_[2];
};

}  // namespace foldyard::limited
