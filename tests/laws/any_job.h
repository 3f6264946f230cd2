#pragma once

// Jobs for laws: a roll of 0.5 to 1.5 m width and up to 5 m, one to three
// panels, everything in steps of 12 mm, which halves, thirds, quarters and
// fifths of a unit divide evenly.

#include <rapidcheck.h>

#include <ostream>

#include "job/job.h"

namespace foldyard {

// Found by RapidCheck, so that it can say what breaks a law.
void showValue(Length length, std::ostream& out);
void showValue(const Panel& panel, std::ostream& out);
void showValue(const Job& job, std::ostream& out);

namespace test {

inline constexpr Length kStep = Length::mm(12);

// From low to high steps, both included.
rc::Gen<Length> any_size(int low, int high);
rc::Gen<Panel> any_panel();
rc::Gen<Job> any_job();

}  // namespace test
}  // namespace foldyard
