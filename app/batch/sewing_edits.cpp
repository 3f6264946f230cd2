#include "batch/sewing_edits.h"

#include <QCoreApplication>

#include <algorithm>

#include "batch/free_name.h"
#include "job/limits.h"
#include "measure/index.h"

namespace foldyard {
namespace {

SewingStep step_called(std::string name) { return {std::move(name), Duration::seconds(60), {}}; }

std::vector<SewingOrder>& orders_of(Job& job, int product) { return job.products[ix(product)].sewing; }

}  // namespace

const SewingStep* step_at(const Job& job, const StepPlace& place) {
  const auto* steps = steps_at(const_cast<Job&>(job), place.product, place.order);
  return !steps || place.step < 0 || place.step >= std::ssize(*steps) ? nullptr : &(*steps)[ix(place.step)];
}

std::vector<SewingStep>* steps_at(Job& job, int product, int order) {
  if (product < 0 || product >= std::ssize(job.products)) return nullptr;
  auto& orders = orders_of(job, product);
  return order < 0 || order >= std::ssize(orders) ? nullptr : &orders[ix(order)].steps;
}

Job with_sewing_order(Job job, int product) {
  auto& orders = orders_of(job, product);
  SewingOrder next;
  if (orders.empty()) next.steps = {step_called(free_name(next.steps, "SewingEdits", QT_TRANSLATE_NOOP("SewingEdits", "Step %1")))};
  else next = orders.front();
  next.name = free_name(orders, "SewingEdits", QT_TRANSLATE_NOOP("SewingEdits", "Order %1"));
  orders.push_back(std::move(next));
  return job;
}

Job with_order_used(Job job, int product, int order) {
  auto& orders = orders_of(job, product);
  std::rotate(orders.begin(), orders.begin() + order, orders.begin() + order + 1);
  return job;
}

Job with_step(Job job, int product, int order) {
  auto* steps = steps_at(job, product, order);
  steps->push_back(step_called(free_name(*steps, "SewingEdits", QT_TRANSLATE_NOOP("SewingEdits", "Step %1"))));
  return job;
}

Job with_time(Job job, const StepPlace& place, Duration time) {
  SewingStep& step = (*steps_at(job, place.product, place.order))[ix(place.step)];
  step.timed.push_back(time);
  if (step.timed.size() > limits::kMostTimes) step.timed.erase(step.timed.begin());
  return job;
}

}  // namespace foldyard
