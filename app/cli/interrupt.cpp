#include "cli/interrupt.h"

#include <atomic>
#include <csignal>

#include "language/tr.h"

namespace foldyard {
namespace {

std::atomic<bool> stopped = false;
static_assert(std::atomic<bool>::is_always_lock_free, "set while a signal is handled");

void take_signal(int) {
  stopped = true;
  std::signal(SIGINT, SIG_DFL);
}

QString stopped_words() { return tr("planning was stopped; this is the best found by then."); }

}  // namespace

Interruptible::Interruptible() {
  stopped = false;
  before_ = std::signal(SIGINT, take_signal);
}

Interruptible::~Interruptible() { std::signal(SIGINT, before_); }

SearchBudget Interruptible::budget() const {
  SearchBudget budget;
  budget.cancelled = &stopped;
  return budget;
}

bool Interruptible::was_stopped() const { return stopped; }

QString Interruptible::complaint() const {
  return was_stopped() ? stopped_words() : QString();
}

}  // namespace foldyard
