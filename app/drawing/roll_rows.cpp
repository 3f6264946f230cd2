#include "drawing/roll_rows.h"

#include <algorithm>

#include "job/roll_of.h"
#include "measure/index.h"

namespace foldyard {

namespace {

// Loss where nothing is said about a stretch of the roll.
void fill_gap(std::vector<RollStretch>& stretches, Length to) {
  const Length from = stretches.empty() ? Length() : stretches.back().on_roll.to;
  if (from < to) stretches.push_back({StretchKind::loss, {from, to}, -1});
}

void add(std::vector<RollStretch>& stretches, const RollStretch& next) {
  if (next.on_roll.is_empty()) return;
  fill_gap(stretches, next.on_roll.from);
  stretches.push_back(next);
}

}  // namespace

std::vector<RollStretch> roll_stretches(const Job& job, const Plan& plan) {
  std::vector<RollStretch> stretches;
  auto out = plan.cut_out.begin();
  for (std::size_t i = 0; i < plan.lengths.size(); ++i) {
    for (; out != plan.cut_out.end() && out->from < plan.lengths[i].on_roll.from; ++out)
      add(stretches, {StretchKind::cut_out, *out, -1});
    add(stretches, {StretchKind::length, plan.lengths[i].on_roll, static_cast<int>(i)});
  }
  add(stretches,
      {plan.remnant_kept ? StretchKind::remnant : StretchKind::offcut, plan.remnant, -1});
  fill_gap(stretches, roll_of(job, plan).length);
  return stretches;
}

std::vector<RollRow> rows_of(const std::vector<RollStretch>& stretches, Length row) {
  std::vector<RollRow> rows;
  Length room;
  for (RollStretch stretch : stretches) {
    const bool breakable = stretch.kind != StretchKind::length || stretch.on_roll.size() > row;
    while (!stretch.on_roll.is_empty()) {
      const bool fits = stretch.on_roll.size() <= room;
      if (rows.empty() || room.is_zero() || (!fits && !breakable)) {
        rows.emplace_back();
        room = row;
      }
      RollStretch piece = stretch;
      piece.on_roll.to = std::min(stretch.on_roll.to, stretch.on_roll.from + room);
      rows.back().stretches.push_back(piece);
      room -= piece.on_roll.size();
      stretch.on_roll.from = piece.on_roll.to;
    }
  }
  return rows;
}

}  // namespace foldyard
