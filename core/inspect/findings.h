#pragma once

// Findings: what an inspection has found broken, one sentence each.
//
// require(holds, words…) adds a sentence made of its words unless `holds`;
// agree(given, found, words…) adds one unless a promise equals what was found.
// Both return whether all is well, so that a check can stop where its further
// questions would make no sense. Text is only made for what is broken.
//
// Patterns, lays, lengths, panels, cuts and rests are counted from 1 in the
// sentences, as a person counts them.
//
// Example: agree(3, 4, "Pattern 2: the number of cuts") adds
// "Pattern 2: the number of cuts is given as 3, but comes to 4."

#include <concepts>
#include <string>
#include <utility>
#include <vector>

#include "measure/duration.h"
#include "measure/length.h"
#include "measure/worth.h"
#include "measure/write_length.h"

namespace foldyard::inspection {

class Findings {
 public:
  explicit Findings(Unit unit) : unit_(unit) {}

  template <class... Words>
  bool require(bool holds, const Words&... words) {
    if (!holds) sentences_.push_back((text(words) + ... + std::string(".")));
    return holds;
  }

  template <class Value, class... Words>
  bool agree(const Value& given, const Value& found, const Words&... words) {
    return require(given == found, words..., " is given as ", given, ", but comes to ", found);
  }

  std::vector<std::string> take() && { return std::move(sentences_); }

 private:
  static std::string text(const std::string& words) { return words; }
  static std::string text(const char* words) { return words; }
  static std::string text(std::integral auto number) { return std::to_string(number); }
  // In the job's unit, and in units of 1/320 mm too where that one rounds.
  std::string text(Length length) const;
  static std::string text(Area area);
  static std::string text(Worth worth);
  static std::string text(Duration duration);

  Unit unit_;
  std::vector<std::string> sentences_;
};

}  // namespace foldyard::inspection
