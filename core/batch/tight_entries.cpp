#include "batch/tight_entries.h"

#include <algorithm>
#include <numeric>

#include "cutting/row_ops.h"

namespace foldyard {

namespace {

constexpr std::int64_t kMostSteps = 1 << 23;  // of all entries together

struct Step {
  std::int64_t size;
  std::int64_t gain;
};

// Of entries that no smaller one equals: sizes in units, ascending.
std::vector<Step> steps_of(const std::vector<SeriesEntry>& entries, std::int64_t unit) {
  std::vector<Step> all, kept;
  for (const SeriesEntry& e : entries) all.push_back({e.size.units() / unit, e.gain});
  std::sort(all.begin(), all.end(), [](const Step& a, const Step& b) {
    return a.size != b.size ? a.size < b.size : a.gain > b.gain;
  });
  for (const Step& s : all)
    if (kept.empty() || s.gain > kept.back().gain) kept.push_back(s);
  return kept;
}

// The most gain for each capacity: what is not filled lies before the first entry.
std::vector<std::int64_t> most_gains(const std::vector<Step>& steps, std::int64_t capacity) {
  std::vector<std::int64_t> most(capacity + 1, 0);
  for (const Step& s : steps) {
    if (s.size > capacity) break;
    if (s.gain <= most[s.size]) continue;  // smaller ones give as much
    for (std::int64_t at = s.size; at <= capacity; at += s.size)
      rows::raise_to(&most[at], &most[at - s.size], s.gain,
                     static_cast<int>(std::min(s.size, capacity + 1 - at)));
  }
  return most;
}

}  // namespace

std::vector<int> tight_entries(const std::vector<SeriesEntry>& entries, Length capacity) {
  std::vector<int> tight(entries.size());
  std::iota(tight.begin(), tight.end(), 0);
  std::int64_t unit = 0;
  for (const SeriesEntry& e : entries) unit = std::gcd(unit, e.size.units());
  if (unit == 0) return tight;
  const std::vector<Step> steps = steps_of(entries, unit);
  const std::int64_t last = capacity.units() / unit;
  if (last > kMostSteps / std::ssize(steps)) return tight;
  const std::vector<std::int64_t> most = most_gains(steps, last);
  std::erase_if(tight, [&](int i) {
    const std::int64_t size = entries[i].size.units() / unit;
    return size > last || most[last - size] + entries[i].gain < most[last];
  });
  return tight;
}

}  // namespace foldyard
