#pragma once

// Wide: a 128-bit whole number for products of two 64-bit ones.

namespace foldyard {

__extension__ typedef __int128 Wide;

}  // namespace foldyard
