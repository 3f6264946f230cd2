#include "cutting/matched_strips.h"

#include <algorithm>

#include "cutting/laid_strips.h"

namespace foldyard {

namespace {

// Sizes along one axis, each with the phase that it needs there.
std::vector<PhasedSize> sizes_of(const std::vector<PhasedShape>& shapes, Length Shape::*size,
                                 std::optional<Length> PhasedShape::*phase) {
  std::vector<PhasedSize> sizes;
  for (const PhasedShape& s : shapes) sizes.push_back({s.shape.*size, s.*phase});
  return sizes;
}

std::vector<Length> plain_sizes(const std::vector<PhasedShape>& shapes, Length Shape::*size) {
  std::vector<Length> sizes;
  for (const PhasedShape& s : shapes) sizes.push_back(s.shape.*size);
  return sizes;
}

// The sizes that may stand first beside a fold edge, ascending.
std::vector<Length> first_sizes(const std::vector<PhasedShape>& shapes, Length Shape::*size,
                                Length trim) {
  std::vector<Length> firsts{trim};
  for (const PhasedShape& s : shapes)
    if (s.shape.on_fold && (s.shape.*size).is_even() && s.shape.*size / 2 >= trim)
      firsts.push_back(s.shape.*size / 2);
  std::sort(firsts.begin(), firsts.end());
  return firsts;
}

}  // namespace

MatchedTables::MatchedTables(std::vector<PhasedShape> shapes, const Objective& aim,
                             const MatchedLimits& l)
    : shapes_(std::move(shapes)), aim_(aim), limits_(l),
      across_(l.repeat_across, l.phase_across,
              sizes_of(shapes_, &Shape::across, &PhasedShape::across), l.widest, l.most_places),
      along_(l.repeat_along, std::nullopt, sizes_of(shapes_, &Shape::along, &PhasedShape::along),
             l.tallest, l.most_places),
      across_joint_(across_, first_sizes(shapes_, &Shape::across, l.fold_trim),
                    plain_sizes(shapes_, &Shape::across), l.widest / 2, l.most_places),
      along_joint_(along_, first_sizes(shapes_, &Shape::along, l.fold_trim),
                   plain_sizes(shapes_, &Shape::along), l.tallest, l.most_places),
      least_flap_(l.widest) {
  for (const PhasedShape& s : shapes_) {
    least_flap_ = std::min(least_flap_, l.fold_trim + s.shape.across);
    const Length half = s.shape.across / 2;
    if (s.shape.on_fold && s.shape.across.is_even() && half >= l.fold_trim)
      least_flap_ = std::min(least_flap_, half);
  }
}

int MatchedTables::first_family() const { return across_.family_of(limits_.phase_across); }

bool MatchedTables::is_thinned() const {
  return across_.is_thinned() || along_.is_thinned() || across_joint_.is_thinned() ||
         along_joint_.is_thinned();
}

std::int64_t MatchedTables::steps() const {
  std::int64_t parts_across = 0, parts_along = 0;
  for (int x = 0; x < across_.size(); ++x) parts_across += std::ssize(across_.parts(x));
  for (int y = 0; y < along_.size(); ++y) parts_along += std::ssize(along_.parts(y));
  return parts_across * along_.size() + parts_along * across_.size();
}

const MatchedTable& MatchedTables::table(TableKind kind) {
  const std::lock_guard lock(mutex_);
  return make(kind);
}

const MatchedTable& MatchedTables::make(const TableKind& wanted) {
  TableKind kind = wanted;
  if (aim_.worth_first) kind.copies = 1;  // copies do not change what is best
  const auto found = tables_.find(kind);
  if (found != tables_.end()) return *found->second;
  const MatchedTable* beyond = nullptr;
  const MatchedTable* above = nullptr;
  if (kind.joint_across) beyond = &make({false, kind.joint_along, kind.copies * 2});
  if (kind.joint_along) above = &make({kind.joint_across, false, kind.copies * 2});
  auto made = std::make_unique<MatchedTable>(
      kind, kind.joint_across ? across_joint_ : across_, along(kind.joint_along), shapes_, aim_,
      beyond, above, limits_.cancelled);
  return *(tables_[kind] = std::move(made));
}

namespace {

struct ThreeTables {
  const MatchedTable* left = nullptr;
  const MatchedTable* middle = nullptr;
  const MatchedTable* right = nullptr;
};

ThreeTables three_tables(MatchedTables& tables, const FoldLayout::Shares& shares, bool end_to_end,
                         std::int64_t copies) {
  ThreeTables three;
  if (shares.left_pairs) three.left = &tables.table({true, end_to_end, copies * shares.left_pairs});
  if (shares.plies) three.middle = &tables.table({false, end_to_end, copies * shares.plies});
  if (shares.right_pairs)
    three.right = &tables.table({true, end_to_end, copies * shares.right_pairs});
  return three;
}

MatchedStrip strip_of(const Cell& cell, int state, StripUse use) {
  return cell.gain > 0 ? MatchedStrip{cell, state, use} : MatchedStrip{};
}

MatchedStrip whole_strip(const MatchedTable& table, int x, int v) {
  return strip_of(table.at(x, v), x, StripUse::exact);
}

// Slit at the best narrower place.
MatchedStrip narrower(const MatchedTable& table, int x, int v) {
  return strip_of(table.best_up_to(x, v), table.best_state_up_to(x, v), StripUse::narrower);
}

// A strip at a fold edge, the size that the fold gives it, and where it is slit.
struct Placed {
  Length size;
  Length slit_at;
  MatchedStrip strip;
  SizedStrip sized() const { return {size, slit_at, strip.use}; }
};

// All positions of one layout at one length.
class MatchedPositions {
 public:
  MatchedPositions(const FoldLayout& layout, const ThreeTables& three, MatchedTables& tables,
                   std::int64_t copies, int v, std::int64_t slit)
      : layout_(layout), three_(three), aim_(tables.aim()), trim_(tables.fold_trim()),
        first_family_(tables.first_family()), copies_(copies), v_(v), slit_(slit),
        lefts_(full(three.left)), rights_(full(three.right)) {}

  void search(MatchedChoice& best) const {
    const SizeRange range = layout_.left();
    if (range.most < range.least) return;
    for (const Placed& left : within(three_.left, lefts_, range, layout_.goes_under_left())) {
      const SizeRange other = layout_.right(left.size);
      if (other.most < other.least) continue;
      for (const Placed& right : within(three_.right, rights_, other, layout_.goes_under_right()))
        try_pair(left, right, best);
    }
  }

 private:
  // Strips of the size of a place.
  std::vector<Placed> full(const MatchedTable* table) const {
    std::vector<Placed> list;
    if (!table) return list;
    for (int x = 0; x < table->across().size(); ++x)
      if (table->at(x, v_).gain > 0)
        list.push_back({table->across()[x].size, table->across()[x].size, whole_strip(*table, x, v_)});
    return list;
  }

  std::vector<Placed> within(const MatchedTable* table, const std::vector<Placed>& full,
                            const SizeRange& range, bool goes_under) const {
    std::vector<Placed> list = goes_under ? under(full, range.least) : forced(table, range.least);
    for (const Placed& s : full)
      if (range.least < s.size && s.size <= range.most) list.push_back(s);
    return list;
  }

  // Of the least size, slit at any place, as the middle goes on under it.
  std::vector<Placed> under(const std::vector<Placed>& full, Length least) const {
    std::vector<Placed> list{{least, std::min(trim_, least), MatchedStrip{}}};
    for (const Placed& s : full)
      if (s.size <= least) list.push_back({least, s.size, s.strip});
    return list;
  }

  std::vector<Placed> forced(const MatchedTable* table, Length size) const {
    const int x = table ? table->across().floor(0, size) : -1;
    if (x < 0) return {{size, size, MatchedStrip{}}};
    std::vector<Placed> list{{size, size, narrower(*table, x, v_)}};
    if (table->across()[x].size == size) list.push_back({size, size, whole_strip(*table, x, v_)});
    return list;
  }

  // The middle begins at the selvedge of open cloth, at its phase; else beyond a
  // strip, on cloth whose axis across has no phases.
  int middle_state(Length size) const {
    if (!three_.middle) return -1;
    const PhaseAxis& axis = three_.middle->across();
    return axis.floor(layout_.shares().left_pairs == 0 ? first_family_ : axis.lost(), size);
  }

  void try_pair(const Placed& left, const Placed& right, MatchedChoice& best) const {
    const StripsAt at(layout_, left.sized(), right.sized());
    if (at.middle < Length()) return;
    const auto consider = [&](const MatchedStrip& middle) {
      const Cell cell = total(left.strip, middle, right.strip, at.slits(middle.use));
      if (cell.gain > 0 && is_better(aim_, cell, best.cell, copies_))
        best = {&layout_, left.size, right.size, at.start, at.whole, left.strip, found(middle), right.strip, cell};
    };
    const int x = middle_state(at.middle);
    if (x < 0) return consider(MatchedStrip{});
    if (aim_.worth_first && most_gain(left.strip, right.strip, x) < best.cell.gain) return;
    consider(strip_of(three_.middle->best_up_to(x, v_), x, StripUse::narrower));
    if (three_.middle->across()[x].size == at.middle) consider(whole_strip(*three_.middle, x, v_));
  }

  // The middle with its state, where only the largest it may be is known.
  MatchedStrip found(MatchedStrip middle) const {
    if (middle.use == StripUse::narrower) middle.state = three_.middle->best_state_up_to(middle.state, v_);
    return middle;
  }

  std::int64_t most_gain(const MatchedStrip& left, const MatchedStrip& right, int x) const {
    const FoldLayout::Shares& s = layout_.shares();
    return left.cell.gain * s.left_pairs + three_.middle->best_up_to(x, v_).gain * s.plies +
           right.cell.gain * s.right_pairs;
  }

  // Of all plies of one length, and of all cuts through the lay.
  Cell total(const MatchedStrip& left, const MatchedStrip& middle, const MatchedStrip& right,
             int slits) const {
    const FoldLayout::Shares& s = layout_.shares();
    return {left.cell.gain * s.left_pairs + middle.cell.gain * s.plies +
                right.cell.gain * s.right_pairs,
            left.cell.cost + middle.cell.cost + right.cell.cost + slit_ * slits};
  }

  const FoldLayout& layout_;
  const ThreeTables& three_;
  const Objective& aim_;
  Length trim_;
  int first_family_;
  std::int64_t copies_;
  int v_;
  std::int64_t slit_;
  std::vector<Placed> lefts_;
  std::vector<Placed> rights_;
};

}  // namespace

MatchedChoice matched_choice(MatchedTables& tables, const Layouts& layouts, bool end_to_end,
                             std::int64_t copies, int v) {
  MatchedChoice best;
  const std::int64_t slit = tables.aim().cut(tables.along(end_to_end)[v].size.units());
  for (const auto& layout : layouts) {
    const ThreeTables three = three_tables(tables, layout->shares(), end_to_end, copies);
    MatchedPositions(*layout, three, tables, copies, v, slit).search(best);
  }
  return best;
}

namespace {

void add_strip(LaidStrips& strips, const MatchedTable* table, const MatchedStrip& strip, int v, Length from,
               bool from_far) {
  if (!table || strip.use == StripUse::none) return;
  strips.add(from, table->across()[strip.state].size, from_far,
             [=](TreeBuilder& builder, int node, bool flip) { table->fill(builder, node, strip.state, v, flip); });
}

}  // namespace

CutTree matched_tree(MatchedTables& tables, const MatchedChoice& choice, bool end_to_end,
                     std::int64_t copies, int v) {
  const ThreeTables three = three_tables(tables, choice.layout->shares(), end_to_end, copies);
  LaidStrips strips(choice.whole);
  add_strip(strips, three.left, choice.left_strip, v, Length(), false);
  add_strip(strips, three.middle, choice.middle_strip, v, choice.start, false);
  add_strip(strips, three.right, choice.right_strip, v, choice.whole, true);
  if (choice.layout->lies_mirrored()) strips.mirror();
  return strips.tree(tables.along(end_to_end)[v].size);
}

}  // namespace foldyard
