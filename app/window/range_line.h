#pragma once

// Below the figures of a plan: what the roll will yield where its length is only
// estimated, and what to cut first. Nothing is shown for a roll of known length.
//
// It is found on another thread for the way that is shown; the tool tip has the
// order of work.

#include <QLabel>

#include <optional>

#include "shelf/range_teller.h"
#include "window/planner.h"

namespace foldyard {

class RangeLine : public QLabel {
  Q_OBJECT

 public:
  explicit RangeLine(FindRange find = find_range, QWidget* parent = nullptr);

  // way: index into the comparison's ways; −1 for none.
  void show_way(const AnswerPtr& answer, int way);
  bool is_busy() const { return teller_.is_busy(); }

 private:
  void show_range(const RangeAnswer& answer);

  RangeTeller teller_;
  std::optional<RangeQuestion> shown_;
};

// "By its length the roll gives 11 to 14 × Carrier (12 most likely); worth … . Cut
// the 5 lengths of the plan first: even the shortest roll has them."
QString range_line_words(const Job& job, const YieldRange& range);

}  // namespace foldyard
