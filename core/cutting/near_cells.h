#pragma once

// NearCells: every number of copies that a rectangle can give while it falls
// short of its best by no more than an allowed loss.
//
// The tables hold the best of every rectangle at given prices. Whatever else is
// cut loses against them, and the losses of a tree's splits add up to the loss
// of the whole:
//
//   loss of a split = best of the rectangle − best of its two parts (− its cut)
//
// so with an allowance at the top, each part's allowance follows (spread_needs),
// and from the smallest up each needed rectangle's counts are those of its
// parts, added, within their allowance (fill). Equal counts keep the one of most
// value, then of least cost. Counts beyond the limits are dropped. As the
// enumeration follows the tables' own recursion, it misses none that the tables
// could have held.
//
// A take of a rectangle of kind.copies c gives c copies. Value is c × gain for an
// aim that puts worth first, else c × gain − cost. Panels without a limit count in
// value only.
//
// Used so: need() for all rectangles wanted, fill(), at(), write().

#include <cstdint>
#include <map>
#include <unordered_map>
#include <vector>

#include "cutting/copies_hash.h"
#include "cutting/table_set.h"
#include "cutting/tree_builder.h"

namespace foldyard {

struct NearBudget {
  std::int64_t steps = 30'000'000;
  std::int64_t entries = 500'000;  // about 120 bytes each
  const std::atomic<bool>* cancelled = nullptr;
};

class NearCells {
 public:
  struct Entry {
    limited::Copies copies{};
    std::int64_t value = 0;
    std::int64_t cost = 0;
    Move move = Move::leave;
    std::int32_t index = -1;   // shape, or place of the lower or kept part
    std::int32_t first = -1;   // entries of the parts
    std::int32_t second = -1;
    std::int32_t across = -1;  // place of the upper part
    std::int32_t along = -1;
    bool height_first = false;  // it is trimmed by two cuts, the first of its height
  };

  // limit_of: by panel its index in counting, −1 without a limit; limits: by
  // that index. REQUIRES counting.fits() and all to outlive this.
  NearCells(TableSet& tables, const limited::Counting& counting, const std::vector<int>& limit_of,
            const std::vector<std::int64_t>& limits, const NearBudget& budget);

  std::int64_t value(const TableKind& kind, int x, int y);
  void need(const TableKind& kind, int x, int y, std::int64_t loss);
  // False where steps or entries ran out or it was cancelled.
  bool fill();
  // Most value first. Empty where it was not needed.
  const std::vector<Entry>& at(const TableKind& kind, int x, int y);
  void write(TreeBuilder& builder, int node, const TableKind& kind, int x, int y, int entry, bool flip);
  std::int64_t steps() const { return steps_; }

 private:
  struct Cells {
    TableKind kind;
    const CutTable* table = nullptr;
    Cells* beyond = nullptr;  // itself where no joint lies that way
    Cells* above = nullptr;
    std::vector<std::int64_t> need;  // −1: not needed
    std::vector<std::vector<Entry>> found;
  };
  // A rectangle in one or two parts, by one cut and those that trim the upper.
  struct Split {
    Move move;
    std::int32_t index;
    int low_x, low_y;
    Cells* upper = nullptr;  // null: trimmed, nothing beyond
    int x = -1, y = -1;
    std::int64_t cost = 0;
    bool height_first = false;
  };

  Cells& cells(const TableKind& kind);
  std::int64_t value(const Cells& c, int x, int y) const;
  std::size_t index(const Cells& c, int x, int y) const {
    return static_cast<std::size_t>(y) * static_cast<std::size_t>(c.table->across().size()) + static_cast<std::size_t>(x);
  }
  std::vector<Cells*> in_order();
  bool spend();
  template <class Visit> bool for_each_split(Cells& c, int x, int y, std::int64_t allowed, Visit visit);
  template <class Visit> void trims(const Cells& c, int x, int y, Visit visit) const;
  template <class Visit> void parts_across(Cells& c, int x, int y, Visit visit) const;
  template <class Visit> void parts_along(Cells& c, int x, int y, Visit visit) const;
  template <class Visit> void odd_across(Cells& c, Split split, int floor, int y, Length width, Visit visit) const;
  template <class Visit> void odd_along(Cells& c, Split split, int x, int floor, Length height, Visit visit) const;
  bool spread_needs(Cells& c);
  bool fill(Cells& c);
  bool fill_cell(Cells& c, int x, int y, std::int64_t allowed);
  void add_takes(Cells& c, int x, int y, std::int64_t least);
  bool add_sums(Cells& c, const Split& split, std::int64_t least);
  void add(const Entry& entry);
  void write_trim(TreeBuilder& builder, int node, Cells& c, int x, int y, const Entry& entry, bool flip);
  void write_part(TreeBuilder& builder, int node, Cells& c, int x, int y, const Entry& entry, bool flip);

  TableSet& tables_;
  const limited::Counting& counting_;
  const std::vector<int>& limit_of_;
  const std::vector<std::int64_t>& limits_;
  NearBudget budget_;
  bool worth_first_;
  std::map<TableKind, Cells> cells_;
  std::vector<Entry> now_;  // of the rectangle being filled
  std::unordered_map<limited::Copies, int, CopiesHash> known_;
  std::int64_t steps_ = 0;
  std::int64_t entries_ = 0;
};

}  // namespace foldyard
