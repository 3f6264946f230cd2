#pragma once

// PinnedWays: the fold ways that are to be looked at side by side, in the order in
// which they were pinned: up to three. Pinning a fourth lets the first go.
//
// Ways stay pinned when a new answer comes; only those that have a plan are looked
// at (rows).

#include <QObject>

#include "window/way_model.h"

namespace foldyard {

class PinnedWays : public QObject {
  Q_OBJECT

 public:
  static constexpr std::size_t kMost = 3;

  explicit PinnedWays(const WayModel* ways, QObject* parent = nullptr);

  // A way that is refused is not pinned, and false.
  bool toggle(int row);
  void clear();
  bool has(int row) const;
  // Of the pinned ways that have a plan now, in their order.
  std::vector<int> rows() const;

 signals:
  void changed();

 private:
  const WayModel* ways_;
  std::vector<FoldWay> pinned_;
};

}  // namespace foldyard
