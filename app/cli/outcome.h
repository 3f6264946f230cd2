#pragma once

// What a verb answers: text for standard output, a complaint for standard
// error, and the code the program ends with.

#include <QString>

#include "language/spoken.h"
#include "measure/result.h"

namespace foldyard {

enum class Exit { done = 0, cannot_plan = 1, wrong_call = 2 };

struct Outcome {
  Exit code = Exit::done;
  QString text;
  QString complaint;
};

inline Outcome refusal(Exit code, const Problem& problem) {
  return {code, {}, spoken(problem)};
}

}  // namespace foldyard
