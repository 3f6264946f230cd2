#include "cutting/table_fill.h"

#include "cutting/parts_across.h"
#include "cutting/parts_along.h"
#include "measure/stop.h"

namespace foldyard {

template <class V>
void fill_table(const CutTable& table, const std::vector<Leaf>& leaves, std::vector<V>& values,
                const std::atomic<bool>* cancelled) {
  if (is_set(cancelled)) return;
  const std::size_t n = table.across().size();
  for (const Leaf& leaf : leaves) {
    V& value = values[leaf.y * n + leaf.x];
    value = std::max(value, table.packing().template gain<V>(leaf.gain, table.kind().copies));
  }
  PartsAlong<V> along(table, values);
  PartsAcross<V> across(table);
  for (int y = 0; y < table.along().size(); ++y) {
    if (is_set(cancelled)) return;
    V* row = values.data() + y * n;
    along.raise(row, y);
    across.raise(row, y, table.along()[y]);
    along.note(y);
  }
}

template void fill_table<std::int64_t>(const CutTable&, const std::vector<Leaf>&,
                                       std::vector<std::int64_t>&, const std::atomic<bool>*);
template void fill_table<Wide>(const CutTable&, const std::vector<Leaf>&, std::vector<Wide>&,
                               const std::atomic<bool>*);

}  // namespace foldyard
