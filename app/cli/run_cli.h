#pragma once

// The command line, without a display: reads the call and the job, runs the
// verb, prints its answer, and gives the code to end with (call.h, outcome.h).

#include <QStringList>

#include "cli/outcome.h"

namespace foldyard {

// The words are those behind the program's name. draw REQUIRES that a
// QGuiApplication is there.
Outcome answer(const QStringList& arguments);

int run_cli(int argc, char** argv);

}  // namespace foldyard
