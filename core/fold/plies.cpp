#include "fold/plies.h"

#include <algorithm>

namespace foldyard {

namespace {

// A stack of `high` legs turned over as one lies the other way up.
int level_of(const Leg& across, const Leg& along, int high) {
  const int within = along.mirrored ? high - 1 - across.level : across.level;
  return along.level * high + within;
}

}  // namespace

std::vector<Ply> plies_of(const FoldMap& map) {
  std::vector<Ply> plies;
  const int high = static_cast<int>(map.across.legs().size());
  for (const Leg& along : map.along.legs())
    for (const Leg& across : map.across.legs())
      plies.push_back({{across.flat, along.flat},
                       {across.folded, along.folded},
                       level_of(across, along, high),
                       across.mirrored,
                       along.mirrored});
  std::sort(plies.begin(), plies.end(),
            [](const Ply& a, const Ply& b) { return a.level < b.level; });
  return plies;
}

NapRun nap_run(const Ply& ply, bool runs_across) {
  if (runs_across) return ply.mirrored_across ? NapRun::left : NapRun::right;
  return ply.mirrored_along ? NapRun::towards : NapRun::away;
}

const char* nap_run_name(NapRun run) {
  switch (run) {
    case NapRun::away: return "away";
    case NapRun::towards: return "towards";
    case NapRun::right: return "right";
    case NapRun::left: return "left";
  }
  return "";
}

}  // namespace foldyard
