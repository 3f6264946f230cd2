#pragma once

// The plies of a folded length one by one: where each lies, which face it
// shows, and which way its nap runs.
//
// A ply is one leg across and one leg along. It lies face down where just one
// of the two is mirrored. level counts from 0 on the table; end to end, the
// near half lies upside down on top of the far one.
//
// NapRun is as seen from the near end (v = 0) on the folded cloth. Nap that
// runs along the roll, from its free end, runs away on a ply that is not
// mirrored along; nap that runs across, from the left selvedge, runs to the
// right on a ply that is not mirrored across.
//
// Example: selvedge to selvedge, nap along: level 0 face up, level 1 face down,
// both away. The same end to end: levels 2 and 3 run towards the near end.

#include <vector>

#include "fold/fold_map.h"

namespace foldyard {

struct Ply {
  Rect flat;
  Rect folded;
  int level = 0;
  bool mirrored_across = false;
  bool mirrored_along = false;

  bool is_face_up() const { return mirrored_across == mirrored_along; }
};

enum class NapRun { away, towards, right, left };

// Bottom to top.
std::vector<Ply> plies_of(const FoldMap& map);
NapRun nap_run(const Ply& ply, bool runs_across);
// "away", "towards", "right", "left".
const char* nap_run_name(NapRun run);

}  // namespace foldyard
