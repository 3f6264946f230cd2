#pragma once

// What was cut before, in words: a row for each time, the last one first.

#include <QStringList>

#include <vector>

#include "job/job.h"

namespace foldyard {

QStringList history_head();
// When, how many lays, and what they gave of which cloth.
std::vector<QStringList> history_rows(const Job& job);

}  // namespace foldyard
