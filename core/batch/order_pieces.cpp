#include "batch/order_pieces.h"

#include <algorithm>
#include <numeric>

#include "measure/index.h"

namespace foldyard {

namespace {

// Of cloth set apart, which no other cloth can serve.
bool is_apart(const OrderCase& order, const PieceLine& line) {
  return std::any_of(order.also.begin(), order.also.end(), [&](const std::vector<int>& apart) {
    return line.cloths.size() == 1 && is_among(apart, line.cloths.front());
  });
}

// Those of cloth set apart first.
std::vector<int> by_worth(const OrderCase& order) {
  std::vector<int> lines(order.lines.size());
  std::iota(lines.begin(), lines.end(), 0);
  std::stable_sort(lines.begin(), lines.end(),
                   [&](int a, int b) { return order.lines[ix(a)].worth > order.lines[ix(b)].worth; });
  std::stable_partition(lines.begin(), lines.end(), [&](int l) { return is_apart(order, order.lines[ix(l)]); });
  return lines;
}

}  // namespace

PieceCounter::PieceCounter(const OrderCase& order, const ByClothAndPanel& yield)
    : order_(order), spare_(yield),
      pieces_(order.lines.size(), std::vector<std::int64_t>(order.cloths.size(), 0)), made_(order.lines.size(), 0) {}

bool PieceCounter::may_add(int line, int cloth) const {
  const PieceLine& l = order_.lines[ix(line)];
  if (!is_among(l.cloths, cloth) || made(line) >= l.must + l.may) return false;
  return std::none_of(l.rules.begin(), l.rules.end(), [&](const PieceRule& rule) {
    if (rule.at_most == kAnyNumber || !is_among(rule.cloths, cloth)) return false;
    std::int64_t made = 0;
    for (const int c : rule.cloths) made += pieces_[ix(line)][ix(c)];
    return made >= rule.at_most;
  });
}

// Of the named cloths the one with the most left; −1 where none has enough for one. What
// is set apart comes last.
int PieceCounter::source_of(const PieceNeed& need, int cloth) const {
  const auto left = [&](int c) { return spare_[ix(c)][ix(need.panel)]; };
  const auto apart = [&](int c) {
    for (const int a : order_.also_for(c))
      if (left(a) > 0) return a;
    return -1;
  };
  if (need.from.empty()) return left(cloth) > 0 ? cloth : apart(cloth);
  int best = need.from.front();
  for (const int c : need.from)
    if (left(c) > left(best)) best = c;
  if (left(best) > 0) return best;
  for (const int c : need.from)
    if (const int a = apart(c); a >= 0) return a;
  return -1;
}

bool PieceCounter::add(int line, int cloth) {
  if (!may_add(line, cloth)) return false;
  std::vector<std::pair<int, int>> taken;
  for (const PieceNeed& need : order_.lines[ix(line)].needs)
    for (std::int64_t n = 0; n < need.count; ++n) {
      const int from = source_of(need, cloth);
      if (from < 0) {
        for (const auto& [c, p] : taken) ++spare_[ix(c)][ix(p)];
        return false;
      }
      --spare_[ix(from)][ix(need.panel)];
      taken.push_back({from, need.panel});
    }
  ++pieces_[ix(line)][ix(cloth)];
  ++made_[ix(line)];
  return true;
}

namespace {

void add_for_rules(const OrderCase& order, int line, PieceCounter& counter) {
  for (const PieceRule& rule : order.lines[ix(line)].rules)
    for (const int cloth : rule.cloths)
      while (missing(rule, counter.pieces()[ix(line)]) > 0 && counter.add(line, cloth)) {
      }
}

void add_up_to(const OrderCase& order, int line, std::int64_t most, PieceCounter& counter) {
  for (const int cloth : order.lines[ix(line)].cloths)
    while (counter.made(line) < most && counter.add(line, cloth)) {
    }
}

}  // namespace

PiecesMade pieces_from(const OrderCase& order, const ByClothAndPanel& yield, const PiecesMade& wanted) {
  PieceCounter counter(order, yield);
  const std::vector<int> lines = by_worth(order);
  for (const int l : lines)
    for (const int cloth : order.lines[ix(l)].cloths)
      for (std::int64_t n = wanted[ix(l)][ix(cloth)]; n > 0 && counter.add(l, cloth); --n) {
      }
  for (const int l : lines) add_for_rules(order, l, counter);
  for (const int l : lines) add_up_to(order, l, order.lines[ix(l)].must, counter);
  for (const int l : lines) add_up_to(order, l, order.lines[ix(l)].must + order.lines[ix(l)].may, counter);
  return counter.pieces();
}

ByClothAndPanel panels_taken(const OrderCase& order, const PiecesMade& pieces, const ByClothAndPanel& yield) {
  PieceCounter counter(order, yield);
  for (const int l : by_worth(order))
    for (const int cloth : order.lines[ix(l)].cloths)
      for (std::int64_t n = pieces[ix(l)][ix(cloth)]; n > 0 && counter.add(l, cloth); --n) {
      }
  ByClothAndPanel taken = yield;
  for (std::size_t c = 0; c < taken.size(); ++c)
    for (std::size_t p = 0; p < taken[c].size(); ++p) taken[c][p] -= counter.spare()[c][p];
  return taken;
}

}  // namespace foldyard
