#pragma once

// foldyard begin: a first job file made from ready kinds of cloth and goods,
// to be put right by hand. A file that is there already is left alone.
//
// foldyard kinds: what there is to begin from, with what it rests on.

#include "cli/call.h"
#include "cli/outcome.h"

namespace foldyard {

Outcome begin_verb(const Call& call);
Outcome kinds_verb();

}  // namespace foldyard
