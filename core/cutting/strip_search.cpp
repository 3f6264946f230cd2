#include "cutting/strip_search.h"

#include <algorithm>

#include "cutting/strips.h"

namespace foldyard {

namespace {

// Places where the strip uses its whole size; at any other place it is a
// narrower strip, and the fold had better lie nearer.
std::vector<Sized> full_strips(const CutTable* table, int v) {
  std::vector<Sized> list;
  if (!table) return list;
  for (int x = 0; x < table->across().size(); ++x) {
    const Move move = table->choice(x, v).move;
    if (move != Move::leave && move != Move::trim_across)
      list.push_back({table->across()[x], exact_strip(*table, x, v)});
  }
  return list;
}

// One length: all positions of one layout at place v.
class Positions {
 public:
  Positions(const StripTables& tables, const FoldLayout& layout, const Objective& aim,
            std::int64_t copies, int v, Length length)
      : tables_(tables), layout_(layout), aim_(aim), copies_(copies), v_(v),
        slit_(aim.cut(length.units())), lefts_(full_strips(tables.left, v)),
        rights_(full_strips(tables.right, v)) {
    if (tables.right && tables.right->across().size() > 0)
      most_right_ = tables.right->best_up_to(tables.right->across().size() - 1, v).gain;
  }

  void search(StripChoice& best) {
    const SizeRange range = layout_.left();
    if (range.most < range.least) return;
    for (const Sized& left : forced_strips(tables_.left, range.least, v_)) try_left(left, best);
    for (const Sized& left : lefts_)
      if (range.least < left.size && left.size <= range.most) try_left(left, best);
  }

 private:
  void try_left(const Sized& left, StripChoice& best) {
    const SizeRange range = layout_.right(left.size);
    if (range.most < range.least || cannot_reach(left, range.least, best)) return;
    for (const Sized& right : forced_strips(tables_.right, range.least, v_))
      try_pair(left, right, best);
    for (const Sized& right : rights_)
      if (range.least < right.size && right.size <= range.most) try_pair(left, right, best);
  }

  // No right strip makes this left strip as good as the best so far.
  bool cannot_reach(const Sized& left, Length least_right, const StripChoice& best) const {
    const FoldLayout::Shares& s = layout_.shares();
    const Length middle = layout_.middle(left.size, least_right);
    return aim_.worth_first && left.strip.cell.gain * s.left_pairs + most_right_ * s.right_pairs +
                                       most_middle(middle) * s.plies < best.cell.gain;
  }

  std::int64_t most_middle(Length size) const {
    const int x = tables_.middle ? tables_.middle->across().floor_index(size) : -1;
    return x >= 0 ? tables_.middle->best_up_to(x, v_).gain : 0;
  }

  void try_pair(const Sized& left, const Sized& right, StripChoice& best) {
    const StripsAt at{&layout_, left.size, right.size, layout_.middle(left.size, right.size), slit_};
    if (at.middle < Length()) return;
    const FoldLayout::Shares& shares = layout_.shares();
    if (aim_.worth_first && left.strip.cell.gain * shares.left_pairs +
                                    right.strip.cell.gain * shares.right_pairs +
                                    most_middle(at.middle) * shares.plies < best.cell.gain)
      return;
    const int x = tables_.middle ? tables_.middle->across().floor_index(at.middle) : -1;
    if (x < 0) return consider(at, total(at, left.strip, Strip{}, Length(), right.strip), best);
    // A narrower middle ends before its neighbour: any size short of it will do.
    const Length size = tables_.middle->across()[x];
    const Length short_size = at.middle - Length::units(1);
    consider(at, total(at, left.strip, narrower_strip(*tables_.middle, x, v_), short_size, right.strip), best);
    if (size == at.middle)
      consider(at, total(at, left.strip, exact_strip(*tables_.middle, x, v_), size, right.strip), best);
  }

  void consider(const StripsAt& at, const Cell& cell, StripChoice& best) const {
    if (cell.gain > 0 && is_better(aim_, cell, best.cell, copies_))
      best = {&layout_, at.left, at.right, cell};
  }

  const StripTables& tables_;
  const FoldLayout& layout_;
  const Objective& aim_;
  std::int64_t copies_;
  int v_;
  std::int64_t slit_;
  std::vector<Sized> lefts_;
  std::vector<Sized> rights_;
  std::int64_t most_right_ = 0;
};

}  // namespace

std::vector<StripChoice> strip_choices(TableSet& tables, const Layouts& layouts, bool end_to_end,
                                       std::int64_t copies) {
  const Grid& along = tables.along(end_to_end);
  std::vector<StripChoice> best(along.size());
  for (const auto& layout : layouts) {
    const StripTables three = strip_tables(tables, layout->shares(), end_to_end, copies);
    for (int v = 0; v < along.size(); ++v)
      Positions(three, *layout, tables.aim(), copies, v, along[v]).search(best[v]);
  }
  return best;
}

}  // namespace foldyard
