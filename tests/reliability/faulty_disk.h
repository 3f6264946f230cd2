#pragma once

// A disk that fails when it is told to: the program's calls to the system that
// touch one folder are counted, and one of them fails.
//
// Linked into a test program its functions stand before those of the C library,
// for the libraries the program uses, too. Made for one run in a forked child:
// arm, do what is to be tried, look at has_struck, _exit.

#include <string>

namespace foldyard::faulty {

enum class Fault {
  full_once,      // no space, for this call only
  full_for_ever,  // no space, from this call on
  io_error,       // EIO, for this call only
  short_write,    // half of the bytes are taken; after that the quota is used up
  kill,           // the process ends before the call (SIGKILL)
};
inline constexpr Fault kFaults[] = {Fault::full_once, Fault::full_for_ever, Fault::io_error, Fault::short_write,
                                    Fault::kill};
const char* name_of(Fault fault);

// Calls count from 1; of short_write only the calls that write.
void arm(const std::string& folder, Fault fault, int call);
bool has_struck();

}  // namespace foldyard::faulty
