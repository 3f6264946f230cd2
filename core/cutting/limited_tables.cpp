#include "cutting/limited_tables.h"

#include <algorithm>

namespace foldyard::limited {

namespace {

using Row = std::vector<std::int32_t>;

// to[i] = max(to[i], a[i] + b[i]) for n places.
void raise_to_sum(std::int32_t* __restrict to, const std::int32_t* __restrict a,
                  const std::int32_t* __restrict b, int n) {
  for (int i = 0; i < n; ++i) to[i] = std::max(to[i], a[i] + b[i]);
}

// to[i] = max(to[i], from[i] + extra) for n places.
void raise_to(std::int32_t* __restrict to, const std::int32_t* __restrict from, std::int32_t extra, int n) {
  for (int i = 0; i < n; ++i) to[i] = std::max(to[i], from[i] + extra);
}

// Lets every place of the row begin with a part of this width and gain, any
// number of times; in blocks no longer than the part, which do not overlap.
void chain(Row& row, int width, std::int32_t gain) {
  const int n = static_cast<int>(row.size());
  for (int start = width; start < n; start += width)
    raise_to(&row[start], &row[start - width], gain, std::min(width, n - start));
}

void make_rising(Row& row) {
  for (std::size_t i = 1; i < row.size(); ++i) row[i] = std::max(row[i], row[i - 1]);
}

}  // namespace

std::int64_t Prices::given_back(const Cloth& cloth) const {
  std::int64_t sum = 0;
  for (std::size_t p = 0; p < panel.size(); ++p) sum += panel[p] * cloth.limits[p];
  return sum;
}

InsideTable::InsideTable(const Cloth& cloth, const Prices& prices) : cloth_(cloth), prices_(prices) {
  for (auto& rows : rows_) rows.assign(cloth.along.count(), Row(cloth.width + 1, 0));
  for (int row = 0; row < cloth.along.count(); ++row) {
    fill_loose(row);
    if (cloth.root == kJoint) fill_joint(row);
  }
}

// What the row below has, the shapes of this very height, and two rows stacked.
void InsideTable::start_row(Rim rim, int row) {
  Row& r = rows_[rim][row];
  if (row > 0) r = rows_[rim][row - 1];
  const int height = cloth_.along.list[row];
  for (const UnitShape& s : cloth_.shapes)
    if (s.rim == rim && s.along == height)
      r[s.across] = std::max(r[s.across], static_cast<std::int32_t>(prices_.priced(s)));
  for (int low = 0; low < row && 2 * cloth_.along.list[low] <= height; ++low) {
    const int high = cloth_.along.floor[height - cloth_.along.list[low]];
    if (high >= 0)
      raise_to_sum(r.data(), rows_[rim][low].data(), rows_[rim][high].data(), cloth_.width + 1);
  }
  make_rising(r);
}

void InsideTable::fill_loose(int row) {
  start_row(kLoose, row);
  Row& r = rows_[kLoose][row];
  std::int32_t before = 0;  // the most of narrower places, chained
  for (int width : cloth_.across[kLoose].list) {
    if (r[width] > before) chain(r, width, r[width]);
    before = std::max(before, r[width]);
  }
  make_rising(r);
}

void InsideTable::fill_joint(int row) {
  start_row(kJoint, row);
  Row& r = rows_[kJoint][row];
  const Row& loose = rows_[kLoose][row];
  const Row first = r;
  std::int32_t before = -1;
  for (int width : cloth_.across[kJoint].list) {
    if (first[width] <= before) continue;
    raise_to(&r[width], loose.data(), first[width], cloth_.width + 1 - width);
    before = first[width];
  }
  make_rising(r);
}

namespace {

struct Open {
  Rim rim;
  int width;
  int height;
};

}  // namespace

std::vector<std::int64_t> InsideTable::copies_used() const {
  std::vector<std::int64_t> used(cloth_.limits.size(), 0);
  std::vector<Open> open{{cloth_.root, cloth_.width, cloth_.height}};
  const auto take = [&](const Open& o, std::int32_t gain) {
    for (const UnitShape& s : cloth_.shapes)
      if (s.rim == o.rim && s.across <= o.width && s.along <= o.height && prices_.priced(s) == gain)
        return used[s.panel] += s.uses, true;
    return false;
  };
  const auto part = [&](Open low, Open high, std::int32_t gain) {
    if (most(low.rim, low.width, low.height) + most(high.rim, high.width, high.height) != gain)
      return false;
    open.push_back(low);
    open.push_back(high);
    return true;
  };
  const auto part_anywhere = [&](const Open& o, std::int32_t gain) {
    for (int x : cloth_.across[o.rim].list)
      if (x < o.width && part({o.rim, x, o.height}, {kLoose, o.width - x, o.height}, gain)) return;
    for (int y : cloth_.along.list)
      if (y < o.height && part({o.rim, o.width, y}, {o.rim, o.width, o.height - y}, gain)) return;
  };
  while (!open.empty()) {
    Open o = open.back();
    open.pop_back();
    const int x = cloth_.across[o.rim].floor[o.width], y = cloth_.along.floor[o.height];
    if (x < 0 || y < 0) continue;
    o.width = cloth_.across[o.rim].list[x];
    o.height = cloth_.along.list[y];
    const std::int32_t gain = most(o.rim, o.width, o.height);
    if (gain > 0 && !take(o, gain)) part_anywhere(o, gain);
  }
  return used;
}

AroundTable::AroundTable(const Cloth& cloth, const InsideTable& inside) : cloth_(cloth), inside_(inside) {
  for (Rim rim : {kJoint, kLoose})
    table_[rim].assign(static_cast<std::size_t>(cloth.across[rim].count()) * cloth.along.count(), kNever);
  if (cloth.root == kJoint) fill(kJoint);
  fill(kLoose);
}

// From the largest build down: nothing more; or as a larger build of the same
// kind; or with something beside, above, or (loose) between it and the joint.
void AroundTable::fill(Rim rim) {
  const int nx = cloth_.across[rim].count(), ny = cloth_.along.count();
  for (int y = ny - 1; y >= 0; --y)
    for (int x = nx - 1; x >= 0; --x) {
      std::int32_t best = rim == cloth_.root ? 0 : kNever;
      if (x + 1 < nx) best = std::max(best, table_[rim][at(rim, x + 1, y)]);
      if (y + 1 < ny) best = std::max(best, table_[rim][at(rim, x, y + 1)]);
      best = std::max({best, beside(rim, x, y), above(rim, x, y)});
      if (rim != cloth_.root) best = std::max(best, joined(x, y));
      table_[rim][at(rim, x, y)] = best;
    }
}

std::int32_t AroundTable::beside(Rim rim, int x, int y) const {
  const Places& own = cloth_.across[rim];
  const Row& loose = inside_.row(kLoose, y);
  std::int32_t best = kNever;
  for (int more : cloth_.across[kLoose].list) {
    const int width = own.list[x] + more;
    if (width > cloth_.width) break;
    if (own.index[width] >= 0)
      best = std::max(best, loose[more] + table_[rim][at(rim, own.index[width], y)]);
  }
  return best;
}

std::int32_t AroundTable::above(Rim rim, int x, int y) const {
  std::int32_t best = kNever;
  for (int more = 0; more < cloth_.along.count(); ++more) {
    const int height = cloth_.along.list[y] + cloth_.along.list[more];
    if (height > cloth_.height) break;
    const int place = cloth_.along.index[height];
    if (place >= 0)
      best = std::max(best, inside_.row(rim, more)[cloth_.across[rim].list[x]] + table_[rim][at(rim, x, place)]);
  }
  return best;
}

// A loose build with a build at the joint on its left, or with the fold opened.
std::int32_t AroundTable::joined(int x, int y) const {
  const Places& at_joint = cloth_.across[kJoint];
  const Row& joint = inside_.row(kJoint, y);
  std::int32_t best = kNever;
  for (int left : at_joint.list) {
    const int width = left + cloth_.across[kLoose].list[x];
    if (width > cloth_.width) break;
    if (at_joint.index[width] >= 0)
      best = std::max(best, joint[left] + table_[kJoint][at(kJoint, at_joint.index[width], y)]);
  }
  return best;
}

}  // namespace foldyard::limited
