#pragma once

// NearStrips: every number of copies that one folded length can give while it
// falls short of the best of its size by no more than an allowed loss.
//
// For each sum of the grid along and each number of lengths in a lay: every
// position of the folds that strip_choices tries, each of its three strips
// filled by NearCells within what the position leaves of the allowance. Equal
// copies keep those columns that no other beats in both size and value.
//
// Used so: allow() for each length, find(), columns(), tree_of().

#include "cutting/near_cells.h"
#include "cutting/strip_search.h"
#include "cutting/strips.h"

namespace foldyard {

class NearStrips {
 public:
  // A rectangle of NearCells as it lies in a strip; place −1: not cut.
  struct Filled {
    TableKind kind;
    int place = -1;
    int entry = 0;
  };
  struct Column {
    int v = 0;                // place of the grid along
    std::int64_t lengths = 1;  // in the lay
    Length size;              // of roll, for the dominance only
    const FoldLayout* layout = nullptr;
    Length left_size, right_size;
    Length middle_start;
    Filled left, middle, right;
    limited::Copies copies{};
    std::int64_t value = 0;  // of the lay
    std::int64_t cost = 0;
  };

  NearStrips(TableSet& tables, const Layouts& layouts, bool end_to_end, const limited::Counting& counting,
             const std::vector<int>& limit_of, const std::vector<std::int64_t>& limits, const NearBudget& budget);

  // Lays of so many lengths of place v, `size` of roll each lay, may lose `loss`
  // against their best. apart: what the lay costs besides its cuts; it is taken
  // off the value of its columns, but is in neither best nor loss.
  void allow(int v, std::int64_t lengths, Length size, std::int64_t best, std::int64_t loss, std::int64_t apart);
  // False where steps ran out: then nothing is known to be complete.
  bool find();
  const std::vector<Column>& columns() const { return columns_; }
  CutTree tree_of(const Column& column);
  std::int64_t steps() const { return steps_ + cells_.steps(); }

 private:
  struct Allowed {
    int v;
    std::int64_t lengths;
    Length size;
    std::int64_t best;
    std::int64_t loss;
    std::int64_t apart;
  };
  // A strip as it may be cut: at a place, exact or narrower, or not at all.
  struct Candidate {
    SizedStrip strip;
    int place = -1;
    std::int64_t value = 0;
  };
  struct Position {
    Allowed allowed;
    Column column;  // entries still open
    std::int64_t value;
    std::int64_t slits;
  };
  struct Kinds {
    TableKind left, middle, right;
  };

  Kinds kinds(const FoldLayout& layout, std::int64_t lengths) const;
  Candidate unused(Length size, Length slit_at) const { return {{size, slit_at, StripUse::none}, -1, 0}; }
  Candidate cut_at(const TableKind& kind, Length size, Length slit_at, int place, bool exact, int v);
  void add_narrower(std::vector<Candidate>& list, const TableKind& kind, Length size, int v);
  std::vector<Candidate> ends(const TableKind& kind, bool has_any, const SizeRange& range, bool goes_under, int v);
  std::vector<Candidate> middles(const TableKind& kind, bool has_any, Length size, int v);
  bool try_layout(const FoldLayout& layout, const Allowed& allowed);
  bool try_pair(const FoldLayout& layout, const Allowed& allowed, const Kinds& kinds, const Candidate& left,
                const Candidate& right);
  const std::vector<NearCells::Entry>& entries(const Filled& strip, int v);
  bool add_sums(const Position& position);
  void add(const Column& column);
  bool spend();

  TableSet& tables_;
  const Layouts& layouts_;
  bool end_to_end_;
  bool worth_first_;
  const limited::Counting& counting_;
  NearBudget budget_;
  NearCells cells_;
  std::vector<Allowed> allowed_;
  std::vector<Position> positions_;
  std::vector<Column> columns_;
  std::unordered_map<limited::Copies, std::vector<int>, CopiesHash> known_;
  std::int64_t steps_ = 0;
};

}  // namespace foldyard
