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
    if (table->across().is_sum(x) && move != Move::leave && move != Move::trim_across)
      list.push_back({table->across()[x], table->across()[x], exact_strip(*table, x, v)});
  }
  return list;
}

// One length: all positions of one layout at place v.
class Positions {
 public:
  Positions(const StripTables& tables, const FoldLayout& layout, const TableSet& set,
            const CutTable& open, std::int64_t copies, int v, Length length)
      : tables_(tables), layout_(layout), aim_(set.aim()), open_(open),
        open_bounds_(set.aim().worth_first && !set.is_thinned()), usable_(set.widest()),
        trim_(set.fold_trim()), copies_(copies),
        v_(v), slit_(aim_.cut(length.units())), lefts_(full_strips(tables.left, v)),
        rights_(full_strips(tables.right, v)) {}

  void search(StripChoice& best) {
    const SizeRange range = layout_.left();
    if (range.most < range.least) return;
    for (const Sized& left : least_strips(tables_.left, lefts_, range.least, layout_.goes_under_left()))
      try_left(left, best);
    for (const Sized& left : lefts_)
      if (range.least < left.size && left.size <= range.most) try_left(left, best);
  }

 private:
  // A strip of the least size. Where the middle goes on under it, it may be
  // slit at any place, or only to open the fold; a larger one never so, as then
  // the fold might lie nearer.
  std::vector<Sized> least_strips(const CutTable* table, const std::vector<Sized>& full, Length least,
                                  bool goes_under) const {
    if (!goes_under) return forced_strips(table, least, v_);
    std::vector<Sized> list{{least, std::min(trim_, least), Strip{}}};
    for (const Sized& s : full)
      if (s.size <= least) list.push_back({least, s.size, s.strip});
    return list;
  }

  void try_left(const Sized& left, StripChoice& best) {
    const SizeRange range = layout_.right(left.size);
    if (range.most < range.least) return;
    if (falls_short(left, {}, best)) return;
    for (const Sized& right : least_strips(tables_.right, rights_, range.least, layout_.goes_under_right()))
      if (!falls_short(left, right, best)) try_pair(left, right, best);
    for (const Sized& right : rights_)
      if (range.least < right.size && right.size <= range.most &&
          !falls_short(left, right, best))
        try_pair(left, right, best);
  }

  // All the cloth that these strips leave, cut open, does not make them the best
  // so far. (Without a right strip: all that the left one leaves.)
  bool falls_short(const Sized& left, const Sized& right, const StripChoice& best) const {
    if (!open_bounds_) return false;
    const FoldLayout::Shares& s = layout_.shares();
    const Length rest = usable_ - left.slit_at * (2 * s.left_pairs) - right.slit_at * (2 * s.right_pairs);
    const int x = open_.across().floor_index(rest);
    return left.strip.cell.gain * s.left_pairs + right.strip.cell.gain * s.right_pairs +
               (x >= 0 ? open_.at(x, v_).gain : 0) < best.cell.gain;
  }

  std::int64_t most_gain(const StripsAt& at, std::int64_t left, std::int64_t right) const {
    const FoldLayout::Shares& s = layout_.shares();
    const int x = tables_.middle ? tables_.middle->across().floor_index(at.middle) : -1;
    return left * s.left_pairs + right * s.right_pairs +
           (x >= 0 ? tables_.middle->best_up_to(x, v_).gain * s.plies : 0);
  }

  void try_pair(const Sized& left, const Sized& right, StripChoice& best) {
    const StripsAt at(layout_, left, right, slit_);
    if (at.middle < Length()) return;
    if (aim_.worth_first &&
        most_gain(at, left.strip.cell.gain, right.strip.cell.gain) < best.cell.gain)
      return;
    const auto consider = [&](const Strip& middle, Length size) {
      const Cell cell = total(at, left.strip, middle, size, right.strip);
      if (cell.gain > 0 && is_better(aim_, cell, best.cell, copies_))
        best = {&layout_, left.size, right.size, left.slit_at, right.slit_at, cell};
    };
    const int x = tables_.middle ? tables_.middle->across().floor_index(at.middle) : -1;
    if (x < 0) return consider(Strip{}, Length());
    // A narrower middle ends before its neighbour: any size short of it will do.
    consider(narrower_strip(*tables_.middle, x, v_), at.middle - Length::units(1));
    if (tables_.middle->across()[x] == at.middle)
      consider(exact_strip(*tables_.middle, x, v_), at.middle);
  }

  const StripTables& tables_;
  const FoldLayout& layout_;
  const Objective& aim_;
  const CutTable& open_;  // of the same length
  bool open_bounds_;      // it knows every place
  Length usable_;
  Length trim_;
  std::int64_t copies_;
  int v_;
  std::int64_t slit_;
  std::vector<Sized> lefts_;
  std::vector<Sized> rights_;
};

}  // namespace

std::vector<StripChoice> strip_choices(TableSet& tables, const Layouts& layouts, bool end_to_end,
                                       std::int64_t copies) {
  const Grid& along = tables.along(end_to_end);
  std::vector<StripChoice> best(along.size());
  const CutTable& open = tables.table({false, end_to_end, copies});
  for (const auto& layout : layouts) {
    const StripTables three = strip_tables(tables, layout->shares(), end_to_end, copies);
    for (int v = 0; v < along.size() && !tables.is_cancelled(); ++v)
      if (along.is_sum(v)) Positions(three, *layout, tables, open, copies, v, along[v]).search(best[v]);
  }
  return best;
}

}  // namespace foldyard
