#pragma once

// A plan made by hand, as the printing room takes it.

#include "app/drawing/sample_plans.h"
#include "printing/print_form.h"

namespace foldyard::samples {

inline PrintSource source(const Sample& sample) { return {sample.job, sample.comparison, sample.chosen}; }

}  // namespace foldyard::samples
