#include "job/batch_money.h"

#include <algorithm>

#include "cloth/cloth_of.h"
#include "costing/pace.h"
#include "goods/sewing_time.h"
#include "measure/index.h"
#include "measure/wide.h"

namespace foldyard {
namespace {

const Product& product_of(const Job& job, const Made& made) {
  const OrderLine& line = job.order.lines[ix(made.line)];
  return job.products[ix(line.product)];
}

// Of the pieces of a line that are more than must be made.
Worth worth_beyond(const Job& job, const BatchPlan& plan) {
  Worth beyond;
  for (std::size_t i = 0; i < job.order.lines.size(); ++i) {
    const OrderLine& line = job.order.lines[i];
    std::int64_t pieces = 0;
    for (const Made& made : plan.made) pieces += made.line == static_cast<int>(i) ? made.pieces : 0;
    beyond += job.products[ix(line.product)].worth * std::max<std::int64_t>(pieces - line.must, 0);
  }
  return beyond;
}

std::int64_t rounded_up(Wide a, Wide b) { return static_cast<std::int64_t>((a + b - 1) / b); }

}  // namespace

std::optional<Worth> BatchMoney::an_hour() const {
  const std::int64_t ticks = (cutting + sewing).ticks();
  if (ticks <= 0) return {};
  const Wide product = Wide{earned().parts()} * Duration::kTicksPerHour;
  const Wide down = product / ticks - (product % ticks < 0 ? 1 : 0);
  return Worth::parts(static_cast<std::int64_t>(down));
}

Worth price_of(const Job& job, const Product& product, const std::string& cloth) {
  const auto roll = std::find_if(job.rolls.begin(), job.rolls.end(), [&](const Roll& each) { return cloth_of(each) == cloth; });
  for (const SalePrice& price : product.prices) {
    if (roll != job.rolls.end() && answers_to(*roll, price.of)) return price.price;
  }
  return product.price.value_or(product.worth);
}

Duration sewing_time(const Job& job, const Product& product, std::size_t order) {
  if (order >= product.sewing.size()) return {};
  return with_allowance(basic_time(product.sewing[order]), job.pace.allowance_percent);
}

BatchMoney batch_money(const Job& job, const BatchPlan& plan, const std::vector<WebbingPlan>& webbing) {
  BatchMoney money;
  Length seams;
  for (const Made& made : plan.made) {
    const Product& product = product_of(job, made);
    money.income += price_of(job, product, made.cloth) * made.pieces;
    money.sewing += sewing_time(job, product) * made.pieces;
    money.label_count += product.labels * made.pieces;
    money.is_assumed |= !product.sewing.empty() && is_assumed(product.sewing[0]);
    seams += product.seam * made.pieces;
  }
  money.cloth = plan.cost + worth_beyond(job, plan);
  for (const WebbingPlan& each : webbing) money.webbing += each.price;
  money.reels = rounded_up(Wide{seams.units()} * job.notions.thread_tenths, Wide{job.notions.reel.units()} * 10);
  money.thread = job.notions.reel_price * money.reels;
  money.labels = job.notions.label_price * money.label_count;
  money.cutting = plan.time;
  return money;
}

Worth saved_by_order(const Job& job, const Product& product, std::int64_t pieces, std::size_t order) {
  return cost_of((sewing_time(job, product) - sewing_time(job, product, order)) * pieces, job.pace);
}

Worth saved_by_step(const Job& job, std::int64_t pieces, Duration less) {
  return cost_of(with_allowance(less, job.pace.allowance_percent) * pieces, job.pace);
}

}  // namespace foldyard
