#pragma once

// Ctrl-C during a long plan. While an Interruptible lives, the first one ends the
// search with the best it has; the second ends the program, as ever.
//
// REQUIRES that at most one lives at a time.

#include <QString>

#include "job/plan_roll.h"

namespace foldyard {

class Interruptible {
 public:
  Interruptible();
  ~Interruptible();
  Interruptible(const Interruptible&) = delete;
  Interruptible& operator=(const Interruptible&) = delete;

  SearchBudget budget() const;
  bool was_stopped() const;
  // A sentence for the person who stopped it; else empty.
  QString complaint() const;

 private:
  void (*before_)(int);
};

}  // namespace foldyard
