#pragma once

// Jobs that are damaged in one place each, and the sentence of the first fault.

#include <gtest/gtest.h>

#include <string>

#include "job/check_job.h"

namespace foldyard::test {

struct Damage {
  const char* name;
  void (*damage)(Job&);
  const char* sentence;  // empty: it stands
};

template <std::size_t n>
void expect_sentences(const Job& sound, const Damage (&rows)[n]) {
  for (const Damage& row : rows) {
    Job job = sound;
    row.damage(job);
    const auto problem = check_job(job);
    EXPECT_EQ(problem ? problem->sentence() : "", row.sentence) << row.name;
  }
}

}  // namespace foldyard::test
