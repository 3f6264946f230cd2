#include "cutting/strip_columns.h"

namespace foldyard {

template <class V>
const V* StripColumns<V>::exact(int x) const {
  std::call_once(whole_once_, [this] { make_whole(); });
  return exact_.data() + x * rows_.size();
}

template <class V>
const V* StripColumns<V>::upto(int x) const {
  std::call_once(whole_once_, [this] { make_whole(); });
  return upto_.data() + x * rows_.size();
}

template <class V>
const V* StripColumns<V>::full(int x) const {
  std::call_once(full_once_, [this] { make_full(); });
  return full_column_[x] < 0 ? nullptr : full_.data() + full_column_[x] * rows_.size();
}

template <class V>
void StripColumns<V>::make_whole() const {
  const std::size_t count = rows_.size();
  exact_.resize(count * width());
  upto_.resize(count * width());
  for (std::size_t v = 0; v < count; ++v) {
    const V* row = table_.values<V>().data() + rows_[v] * width();
    V best = 0;
    for (std::size_t x = 0; x < width(); ++x) {
      const V here = table_.packing().times(row[x], plies_);
      best = std::max(best, here);
      exact_[x * count + v] = here;
      upto_[x * count + v] = best;
    }
  }
}

// First which strips are full anywhere, then their columns.
template <class V>
void StripColumns<V>::make_full() const {
  const std::size_t count = rows_.size();
  std::vector<char> is_full(count * width(), 0);
  full_column_.assign(width(), -1);
  for (std::size_t v = 0; v < count; ++v) {
    const V* row = table_.values<V>().data() + rows_[v] * width();
    const V cut = table_.packing().cut<V>(table_.along()[rows_[v]]);
    V best = 0;
    for (std::size_t x = 0; x < width(); ++x) {
      if (row[x] > std::max(V(0), best - cut) && table_.across().is_sum(static_cast<int>(x))) {
        is_full[v * width() + x] = 1;
        full_column_[x] = 0;
      }
      best = std::max(best, row[x]);
    }
  }
  int columns = 0;
  for (int& column : full_column_)
    if (column == 0) column = columns++;
  full_.assign(count * columns, kNever<V>);
  for (std::size_t v = 0; v < count; ++v) {
    const V* row = table_.values<V>().data() + rows_[v] * width();
    for (std::size_t x = 0; x < width(); ++x)
      if (is_full[v * width() + x]) full_[full_column_[x] * count + v] = table_.packing().times(row[x], plies_);
  }
}

template class StripColumns<std::int64_t>;
template class StripColumns<Wide>;

}  // namespace foldyard
