#pragma once

// Cuts what is still needed of one cloth from its rolls, with little cloth.
//
// needs: by panel. Length by length the one of the pool that gives most of what is
// needed, by area, for its price. Where one length can hold all that is left, the
// shortest such is asked of `last`; it may add to the pool.
//
// Gives what could not be cut; none is the aim. Once cancelled, nothing more is cut.

#include <atomic>
#include <functional>
#include <optional>

#include "batch/order_state.h"
#include "measure/stop.h"

namespace foldyard {

// The shortest length of a kind, under one of its ways, that is found to hold all the
// needs and takes no more than `most` of roll: an index into the pool, which it may
// add to.
using LastLength =
    std::function<std::optional<int>(int kind, int way, const std::vector<std::int64_t>& needs, Length most)>;

struct FillTools {
  const OrderCase& order;
  LengthPool& pool;
  const std::vector<std::int64_t>& areas;  // by panel; any unit
  LastLength last;                         // may be empty
  std::vector<int> ways = {};              // by kind, of how many `last` is asked
  const std::atomic<bool>* cancelled = nullptr;

  bool is_cancelled() const { return is_set(cancelled); }
};

std::vector<std::int64_t> fill_needs(const FillTools& tools, int cloth, std::vector<std::int64_t> needs,
                                     OrderState& state);
// Cuts a length from a roll of this source: one that is cut already and has the
// least room left for it, else the longest.
bool cut_from_source(const OrderCase& order, const LengthPool& pool, const CaseSource& source, int length,
                     OrderState& state);

}  // namespace foldyard
