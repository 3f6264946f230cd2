#pragma once

// FoldPlan: where the folds of one length lie and which way each turns.
//
// lines are the fold lines across, in x from the left edge of the flat cloth,
// ascending, each strictly inside the width. They part the cloth into
// lines.size() + 1 legs, numbered from the left; neighbouring legs lie face to
// face or back to back, so every second leg lies mirrored and face down.
// levels[i] is the place of leg i in the stack, 0 on the table; it is a
// permutation. The leg at level 0 lies face up and unmirrored.
// end_to_end: besides, the free end is folded back over the whole, so that the
// cut ends meet: one fold line across the roll at half the length.
//
// The ways are names for members of this family:
//   way                   lines                            levels
//   open                  none                             0
//   selvedge to selvedge  one at half the width            1 0
//   off-centre            one, the far part single         1 0
//   both edges in         two, flaps on top, not overlapping  1 0 2
//   fan of n              n − 1, to and fro; 3: in thirds  0 1 … n−1
//   quarters              three, folded double twice       1 2 3 0
// A fan of 4 lays the same places over each other as quarters but takes three
// folds instead of two, so it is not a way of its own.
//
// Example: 1500 mm selvedge to selvedge: lines {750 mm}, levels {1, 0}: the
// left half is folded over onto the right half.

#include <string>
#include <vector>

#include "measure/length.h"
#include "measure/result.h"
#include "measure/words.h"

namespace foldyard {

enum class FoldKind { open, selvedge_to_selvedge, off_centre, both_edges_in, fan, quarters };

// A way of folding, before positions are known. legs is 1, 2, 2, 3, n, 4.
struct FoldWay {
  FoldKind kind = FoldKind::open;
  int legs = 1;
  bool end_to_end = false;
  // plain: at the symmetric position, as people fold without measuring.
  // Else the positions are searched. Open and selvedge to selvedge have only
  // the one position and are always plain; off-centre has no plain form, since
  // that would be selvedge to selvedge.
  bool plain = true;
  auto operator<=>(const FoldWay&) const = default;
};

struct FoldPlan {
  FoldWay way;
  std::vector<Length> lines;
  std::vector<int> levels{0};
  bool operator==(const FoldPlan&) const = default;
};

// The most legs a fan may have.
inline constexpr int kLongestFan = 99;

// In words: "in thirds, end to end", "fan of 5", "both edges in, edges meeting",
// "in thirds, equal legs". The last two are plain ways.
Words way_name(const FoldWay& way);
// Why there is no plan of this way.
inline Problem refused(const FoldWay& way, const Words& why) { return {way_name(way), why, ""}; }
// For command lines and files: "thirds", "fan-5", "both-edges-in+end-to-end",
// "thirds-plain". Every way has one key; way_from_key reads just these, and for
// any other text returns false and leaves `way` as it was.
std::string way_key(const FoldWay& way);
bool way_from_key(const std::string& key, FoldWay& way);

// How often the cloth is turned over by hand: quarters 2, fan of n n − 1.
int folds_made(const FoldWay& way);
// The most plies that lie on one place: legs (both edges in: 2), doubled end to end.
int most_plies(const FoldWay& way);
// The ways in the order of the comparison: open, selvedge to selvedge,
// off-centre, both edges in, thirds, quarters, fans of 5 … `longest_fan`, where
// both positions exist the plain one first; then all of them end to end.
// REQUIRES longest_fan ≤ kLongestFan.
std::vector<FoldWay> all_ways(int longest_fan);

}  // namespace foldyard
