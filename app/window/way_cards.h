#pragma once

// The fold ways side by side: each a card with its cloth at the scale of all
// others, what it yields, how much of the cloth it uses, its minutes, and what
// it gives up against the best. Refused ways stay, with their reason.
//
// It looks at the model of a WayTable and shares its choice. Ways that can be
// compared large have a pin in the corner of their card.

#include <QListView>

#include "table/laid_cloth.h"
#include "window/pinned_ways.h"
#include "window/way_table.h"

namespace foldyard {

class WayCards : public QListView {
  Q_OBJECT

 public:
  explicit WayCards(WayTable* table, QWidget* parent = nullptr);

  // Lays the cards' cloth anew, for another answer.
  void show_answer(const AnswerPtr& answer);
  // The cloth of a row's card; null where the way is refused.
  LaidClothPtr cloth(int row) const {
    const auto place = static_cast<std::size_t>(row);
    return place < cloths_.size() ? cloths_[place] : nullptr;
  }
  const WayModel* ways() const { return ways_; }
  // Which ways are pinned; shown and asked to change here.
  void set_pinned(const PinnedWays* pinned);
  bool is_pinned(int row) const { return pinned_ && pinned_->has(row); }
  bool has_pins() const { return pinned_ != nullptr; }
  // Where the pin of a card lies, in the viewport.
  QRect pin_box(int row) const;
  double pixels_per_mm() const { return pixels_per_mm_; }
  QSize sizeHint() const override;

 signals:
  void pin_pressed(int row);

 protected:
  void mousePressEvent(QMouseEvent* event) override;

 private:
  const PinnedWays* pinned_ = nullptr;
  WayModel* ways_;
  std::vector<LaidClothPtr> cloths_;
  double pixels_per_mm_ = 0.05;
};

}  // namespace foldyard
