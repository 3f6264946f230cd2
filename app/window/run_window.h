#pragma once

// Opens the window: `foldyard` for the demo, `foldyard JOB` for a job file.
// Returns when it is closed, with the exit code.

namespace foldyard {

int run_window(int argc, char** argv);

}  // namespace foldyard
