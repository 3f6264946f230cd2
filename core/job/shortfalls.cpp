#include "job/shortfalls.h"

#include <algorithm>

#include "measure/index.h"

namespace foldyard {

namespace {

class Shortfalls {
 public:
  Shortfalls(const BatchCase& c, const BatchLengths& lengths, const OrderState& state)
      : order_(c.order), pool_(lengths.pool()), state_(state) {}

  std::vector<Shortfall> list() {
    for (int l = 0; l < std::ssize(order_.lines); ++l) {
      const PieceLine& line = order_.lines[ix(l)];
      const std::int64_t lack = line.must - pieces_of(state_.pieces, l);
      if (lack > 0) add(l, lack, line.cloths);
      for (const PieceRule& rule : line.rules)
        if (const std::int64_t of_cloth = missing(rule, state_.pieces[ix(l)]); of_cloth > 0)
          add(l, of_cloth, rule.cloths);
    }
    return std::move(list_);
  }

 private:
  // Rolls of a cloth too short to be cut have no kind.
  const CaseRoll* first_roll(int cloth) const {
    for (const CaseRoll& roll : order_.rolls)
      if (roll.cloth == cloth) return &roll;
    return nullptr;
  }

  Length for_panel(int kind, int panel, std::int64_t count) const {
    const OrderLength* best = nullptr;
    const auto much = [&](const OrderLength& l) { return l.yield[ix(panel)]; };
    for (const OrderLength& l : pool_)
      if (l.kind == kind && much(l) > 0 && (!best || Wide(much(l)) * best->size.units() > Wide(much(*best)) * l.size.units()))
        best = &l;
    return best ? best->size * ((count + much(*best) - 1) / much(*best)) : Length();
  }

  Length for_pieces(const PieceLine& line, const CaseRoll& roll, std::int64_t pieces) const {
    Length length;
    for (const PieceNeed& need : line.needs)
      if (need.from.empty()) length += for_panel(roll.kind, need.panel, need.count * pieces);
    return length;
  }

  void add(int l, std::int64_t pieces, const std::vector<int>& cloths) {
    const PieceLine& line = order_.lines[ix(l)];
    Shortfall best{l, pieces, cloths.empty() ? order_.cloths.front() : order_.cloths[ix(cloths.front())], Length()};
    std::int64_t least = kAnyNumber;
    for (const int cloth : cloths) {
      const CaseRoll* roll = first_roll(cloth);
      if (!roll) continue;
      const Length needed = for_pieces(line, *roll, pieces);
      const std::int64_t cost = roll->price.of(needed);
      if (needed.is_zero() || cost >= least) continue;
      least = cost;
      best.cloth = order_.cloths[ix(cloth)];
      best.needed = needed;
    }
    list_.push_back(best);
  }

  const OrderCase& order_;
  const LengthPool& pool_;
  const OrderState& state_;
  std::vector<Shortfall> list_;
};

}  // namespace

std::vector<Shortfall> shortfalls_of(const BatchCase& c, const BatchLengths& lengths, const OrderState& state) {
  return Shortfalls(c, lengths, state).list();
}

}  // namespace foldyard
