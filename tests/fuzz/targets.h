#pragma once

// What is thrown at the doors of the program: any bytes are a legal call.
//
// Each target throws Broken if a promise does not hold; a crash, a hang or a
// sanitizer's word count as well. `run` beside this file drives them by
// libFuzzer for as long as one likes; mutation_test.cpp for a moment.

#include <cstddef>
#include <cstdint>
#include <ostream>
#include <stdexcept>
#include <vector>

namespace foldyard::fuzz {

struct Broken : std::logic_error {
  using std::logic_error::logic_error;
};

struct Target {
  const char* name;  // and of its folder in corpus
  void (*run)(const std::uint8_t* bytes, std::size_t size);
  int moment;        // inputs of the short run
};

// job: a job file is refused in words, or comes back equal when written.
// table: so a table; and a shelf read into a job leaves a job that stands.
// length: so a length.
// side: the body of a side file, its hash put before it; without that it is refused.
// shape: bytes choose a legal job; its plans pass the inspector.
const std::vector<Target>& targets();

// For the test runner's words.
inline void PrintTo(const Target& target, std::ostream* out) { *out << target.name; }

}  // namespace foldyard::fuzz
