#include "job/hand_edit.h"

#include "measure/index.h"

namespace foldyard {

Hand hand_at(const HandSet& set, const HandSet::Place& place) {
  const auto found = set.hands.find(place);
  return found == set.hands.end() ? Hand{} : found->second;
}

HandSet with_hand(HandSet set, const HandSet::Place& place, const Hand& hand) {
  if (hand.is_empty()) set.hands.erase(place);
  else set.hands[place] = hand;
  return set;
}

// Without a pinned line there are no lines, so that equal hands compare equal.
Hand with_line(Hand hand, const FoldWay& way, int line, std::optional<Length> place) {
  if (line < 0 || line >= way.legs - 1) return hand;
  hand.lines.resize(static_cast<std::size_t>(way.legs) - 1);
  hand.lines[ix(line)] = place;
  if (!hand.has_lines()) hand.lines.clear();
  return hand;
}

Hand with_at_least(Hand hand, const std::string& panel, std::int64_t copies) {
  if (copies > 0) hand.at_least[panel] = copies;
  else hand.at_least.erase(panel);
  return hand;
}

std::vector<std::int64_t> least_of(const Job& job, const Hand& hand) {
  std::vector<std::int64_t> least;
  for (const Panel& panel : job.panels) {
    const auto found = hand.at_least.find(panel.name);
    least.push_back(found == hand.at_least.end() ? 0 : found->second);
  }
  return least;
}

}  // namespace foldyard
