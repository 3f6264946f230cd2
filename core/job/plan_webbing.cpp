#include "job/plan_webbing.h"

#include <functional>
#include <map>

#include "measure/index.h"

namespace foldyard {
namespace {

std::vector<WantedLength> wanted_of(const Job& job, int webbing, const std::vector<std::int64_t>& pieces) {
  std::map<Length, std::int64_t, std::greater<>> counts;
  for (std::size_t i = 0; i < job.products.size(); ++i) {
    for (const WebbingCut& cut : job.products[i].webbing) {
      if (cut.webbing == webbing && pieces[i] > 0) counts[cut.length] += cut.count * pieces[i];
    }
  }
  std::vector<WantedLength> wanted;
  for (const auto& [length, count] : counts) wanted.push_back({length, count});
  return wanted;
}

}  // namespace

std::vector<WebbingPlan> plan_webbing(const Job& job, const std::vector<std::int64_t>& pieces) {
  std::vector<WebbingPlan> plans;
  for (int i = 0; i < std::ssize(job.webbings); ++i) {
    const Webbing& webbing = job.webbings[ix(i)];
    WebbingPlan plan{i, wanted_of(job, i, pieces), {}, {}};
    if (plan.wanted.empty()) continue;
    plan.cuts = cut_to_length(plan.wanted, webbing.roll, webbing.loss, webbing.ends);
    plan.price = webbing.price * plan.cuts.rolls;
    plans.push_back(std::move(plan));
  }
  return plans;
}

std::vector<std::int64_t> pieces_of(const Job& job, const BatchPlan& plan) {
  std::vector<std::int64_t> pieces(job.products.size());
  for (const Made& made : plan.made) {
    const OrderLine& line = job.order.lines[ix(made.line)];
    pieces[ix(line.product)] += made.pieces;
  }
  return pieces;
}

Winding winding(const Webbing& webbing, Length length, std::int64_t count) { return {length + webbing.loss, count}; }

}  // namespace foldyard
