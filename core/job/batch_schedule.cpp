#include "job/batch_schedule.h"

#include <algorithm>
#include <limits>

#include "job/batch_money.h"
#include "measure/index.h"

namespace foldyard {
namespace {

class Schedule {
 public:
  explicit Schedule(const Job& job) : job_(job) {}

  void cut(Duration time) {
    for (; time > Duration(); time = time - sittings_.back().time)
      sittings_.push_back({{}, std::min(time, job_.sitting)});
  }

  void sew(int line, std::int64_t pieces) {
    const OrderLine& order = job_.order.lines[ix(line)];
    const Duration piece = sewing_time(job_, job_.products[ix(order.product)]);
    while (pieces > 0) {
      const std::int64_t now = std::min(pieces, room_for(piece));
      if (now > 0) put(line, now, piece);
      pieces -= now;
      if (pieces > 0) is_open_ = false;
    }
  }

  std::vector<Sitting> take() { return std::move(sittings_); }

 private:
  std::int64_t room_for(Duration piece) const {
    if (piece == Duration()) return std::numeric_limits<std::int64_t>::max();
    if (!is_open_) return std::max<std::int64_t>(job_.sitting.ticks() / piece.ticks(), 1);
    return (job_.sitting - sittings_.back().time).ticks() / piece.ticks();
  }

  void put(int line, std::int64_t pieces, Duration piece) {
    if (!is_open_) sittings_.push_back({});
    is_open_ = true;
    Sitting& sitting = sittings_.back();
    if (!sitting.sewn.empty() && sitting.sewn.back().line == line) sitting.sewn.back().pieces += pieces;
    else sitting.sewn.push_back({line, pieces});
    sitting.time += piece * pieces;
  }

  const Job& job_;
  std::vector<Sitting> sittings_;
  bool is_open_ = false;  // the last sitting is one of sewing and may take more
};

}  // namespace

std::vector<Sitting> batch_schedule(const Job& job, const BatchPlan& plan) {
  Schedule schedule(job);
  schedule.cut(plan.time);
  for (const Made& made : plan.made) schedule.sew(made.line, made.pieces);
  return schedule.take();
}

}  // namespace foldyard
