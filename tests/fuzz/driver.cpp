// The door for libFuzzer: FOLDYARD_FUZZ_TARGET names the target.

#include <cstdlib>
#include <string_view>

#include "fuzz/targets.h"

namespace {

const foldyard::fuzz::Target& wanted() {
  const char* name = std::getenv("FOLDYARD_FUZZ_TARGET");
  for (const auto& target : foldyard::fuzz::targets())
    if (name && std::string_view(target.name) == name) return target;
  std::abort();
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
  static const auto& target = wanted();
  target.run(bytes, size);
  return 0;
}
