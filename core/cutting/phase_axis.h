#pragma once

// PhaseAxis: one axis of cloth with a repeat, as the stretches that it can be cut
// into.
//
// The phase of a place is how far it lies beyond the start of a repeat. A matched
// panel begins at one phase (matched_phase). Phases are kept where a panel may
// begin at them; beyond a cut at any other place the phase is lost, and there only
// panels that need not match are cut. A stretch is a State: its size and its
// family, which is the kept phase where it begins, or the last one, lost.
//
// The size of a stretch is a place of its family: where panels end that lie one
// after another from its beginning, each as near to the one before as its phase
// lets it. A stretch is parted at such a place, or where a kept phase begins; what
// lies beyond is of the family of that place. A part that is no place is trimmed
// to the largest place in it. Why that is enough: docs/method.md.
//
// A joint axis begins at a fold edge, which has no phase: its states are of one
// family, its first size is half a panel or the fold trim, and what lies beyond a
// cut is a state of the plain axis.
//
// States are in ascending order of size. `most`: where a family has more places,
// those of single panels are kept and the others thinned evenly.
//
// Example: repeat 64, phase 0 kept, a matched panel of 50: places of phase 0 are
// 50, 114, 178 …; it is parted at 50 (then lost), 64 (phase 0), 114, 128 …

#include <optional>
#include <vector>

#include "cloth/repeat.h"
#include "cutting/grid.h"
#include "goods/panel.h"
#include "measure/index.h"

namespace foldyard {

// Where a panel of this size begins within a repeat: at its start; centred, so
// that the middle of a repeat is its middle (rounded down to a unit). Nothing
// where it need not match or the pattern does not repeat. REQUIRES size > 0.
std::optional<Length> matched_phase(Match match, Length size, Length repeat);

// How far a place lies beyond the start of a repeat; `start`: where one begins.
Length phase_at(Length place, Length start, Length repeat);

struct PhasedSize {
  Length size;
  std::optional<Length> phase;
};

class PhaseAxis {
 public:
  struct State {
    Length size;
    int family = 0;
    int below = -1;  // the next smaller of its family
  };
  // low and high: states, −1 where nothing fits. Exact: of just that size; else
  // the part is larger and is trimmed.
  struct Part {
    Length at;
    int low = -1;
    int high = -1;
    bool low_exact = false;
    bool high_exact = false;
  };

  // first: the phase at which the cloth begins, kept, too.
  PhaseAxis(Length repeat, std::optional<Length> first, const std::vector<PhasedSize>& sizes,
            Length limit, int most = kAllPlaces);
  // Joint, beside a fold edge. REQUIRES `plain` to live as long and no size of it
  // to have a phase; firsts ascending.
  PhaseAxis(const PhaseAxis& plain, const std::vector<Length>& firsts,
            const std::vector<Length>& sizes, Length limit, int most = kAllPlaces);

  int size() const { return static_cast<int>(states_.size()); }
  const State& operator[](int i) const { return states_[ix(i)]; }
  const std::vector<Part>& parts(int state) const { return parts_[ix(state)]; }
  bool is_joint() const { return beyond_ != nullptr; }
  bool is_thinned() const { return thinned_; }

  const std::vector<Length>& phases() const { return phases_; }
  int lost() const { return static_cast<int>(phases_.size()); }
  // Of a kept phase; lost for any other.
  int family_of(Length phase) const;
  // The states of a family, ascending.
  const std::vector<int>& family(int f) const { return of_family_[ix(f)]; }
  // The largest state of a family that is no longer; −1: none.
  int floor(int family, Length length) const;

 private:
  void add_states(const std::vector<Grid>& places);
  void part_states(const std::vector<Grid>& places);
  Part part_at(const State& state, Length at) const;

  Length repeat_;
  std::vector<Length> phases_;
  const PhaseAxis* beyond_ = nullptr;
  std::vector<State> states_;
  std::vector<std::vector<Part>> parts_;
  std::vector<std::vector<int>> of_family_;
  bool thinned_ = false;
};

}  // namespace foldyard
