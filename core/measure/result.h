#pragma once

// Result<T>: a value, or one clear sentence about what is wrong.
//
// Problem says where (a field such as `rolls[2].width`, or empty), what is
// wrong, and what to do next. sentence() joins them for a person, in English:
// "rolls[2].width: 0 mm is not a width; give more than zero."

#include <optional>
#include <string>
#include <utility>

#include "measure/words.h"

namespace foldyard {

struct Problem {
  Words where;
  Words what;
  Words next;

  std::string sentence() const {
    return (where.empty() ? "" : where + ": ") + what + (next.empty() ? "." : "; " + next + ".");
  }
};

template <class T>
class Result {
 public:
  Result(T value) : value_(std::move(value)) {}
  Result(Problem problem) : problem_(std::move(problem)) {}

  explicit operator bool() const { return value_.has_value(); }
  const T& value() const& { return value_.value(); }
  T&& value() && { return std::move(value_).value(); }
  const T& operator*() const { return *value_; }
  const T* operator->() const { return &*value_; }
  // Only where there is no value.
  const Problem& problem() const { return problem_; }

 private:
  std::optional<T> value_;
  Problem problem_;
};

}  // namespace foldyard
