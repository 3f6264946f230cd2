#include "window/pinned_ways.h"

#include <algorithm>

namespace foldyard {

PinnedWays::PinnedWays(const WayModel* ways, QObject* parent) : QObject(parent), ways_(ways) {
  connect(ways, &QAbstractItemModel::modelReset, this, &PinnedWays::changed);
}

bool PinnedWays::toggle(int row) {
  if (row < 0 || row >= ways_->rowCount() || !ways_->plan(row)) return false;
  const FoldWay way = ways_->way_at(row);
  const auto found = std::find(pinned_.begin(), pinned_.end(), way);
  if (found != pinned_.end()) {
    pinned_.erase(found);
  } else {
    if (pinned_.size() == kMost) pinned_.erase(pinned_.begin());
    pinned_.push_back(way);
  }
  emit changed();
  return true;
}

void PinnedWays::clear() {
  pinned_.clear();
  emit changed();
}

bool PinnedWays::has(int row) const {
  return std::find(pinned_.begin(), pinned_.end(), ways_->way_at(row)) != pinned_.end();
}

std::vector<int> PinnedWays::rows() const {
  std::vector<int> rows;
  for (const FoldWay& way : pinned_)
    if (const int row = ways_->row_of(way); row >= 0 && ways_->plan(row)) rows.push_back(row);
  return rows;
}

}  // namespace foldyard
