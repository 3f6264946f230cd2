#pragma once

// The fold ways side by side: each a card with its cloth at the scale of all
// others, what it yields, how much of the cloth it uses, its minutes, and what
// it gives up against the best. Refused ways stay, with their reason.
//
// It looks at the model of a WayTable and shares its choice.

#include <QListView>

#include "table/laid_cloth.h"
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
  double pixels_per_mm() const { return pixels_per_mm_; }
  QSize sizeHint() const override;

 private:
  WayModel* ways_;
  std::vector<LaidClothPtr> cloths_;
  double pixels_per_mm_ = 0.05;
};

}  // namespace foldyard
