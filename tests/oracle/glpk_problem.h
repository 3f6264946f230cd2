#pragma once

// A problem of GLPK that is deleted where it goes out of scope.

#include <glpk.h>

#include <memory>

namespace foldyard::test {

struct DeleteGlpkProblem {
  void operator()(glp_prob* problem) const { glp_delete_prob(problem); }
};
using GlpkProblem = std::unique_ptr<glp_prob, DeleteGlpkProblem>;

}  // namespace foldyard::test
