#pragma once

// Edits of what is set by hand; each gives a new value. What sets nothing is not
// kept, so that equal sets compare equal.
//
// Example: with_line({}, off-centre, 0, 405 mm) pins its only line at 40.5 cm.

#include "job/hand.h"

namespace foldyard {

// What was set there; empty where nothing was.
Hand hand_at(const HandSet& set, const HandSet::Place& place);
// The set with this in place of what was set there.
HandSet with_hand(HandSet set, const HandSet::Place& place, const Hand& hand);
// line: from 0, left to right, of a way with so many legs. place: none takes the
// pin out.
Hand with_line(Hand hand, const FoldWay& way, int line, std::optional<Length> place);
// copies: 0 takes the pin out.
Hand with_at_least(Hand hand, const std::string& panel, std::int64_t copies);

// By panel of the job; 0 where nothing is set.
std::vector<std::int64_t> least_of(const Job& job, const Hand& hand);

}  // namespace foldyard
