// Measures the searches and prints the figures as Markdown.
//
//   foldyard_bench                 all of it
//   foldyard_bench --quick         fewer and shorter runs
//   foldyard_bench --only NAME     one section: comparison moving growth limited
//                                  limited-rolls unlimited batch cancel solver
//   foldyard_bench --write FILE    puts it between the marks of FILE too; not with --only

#include <algorithm>
#include <iostream>
#include <iterator>
#include <string>
#include <vector>

#include "bench/markdown.h"
#include "bench/sections.h"

namespace {

using namespace foldyard::bench;

struct Section {
  const char* name;
  std::string (*write)(bool quick);
};

constexpr Section kSections[] = {{"comparison", comparison_section},
                                 {"moving", moving_section},
                                 {"growth", growth_section},
                                 {"limited", limited_section},
                                 {"limited-rolls", limited_rolls_section},
                                 {"unlimited", unlimited_section},
                                 {"batch", batch_section},
                                 {"cancel", cancel_section},
                                 {"solver", solver_section}};

struct Call {
  bool quick = false;
  std::string only;
  std::string file;
  bool understood = true;
};

bool is_section(const std::string& name) {
  return std::any_of(std::begin(kSections), std::end(kSections),
                     [&](const Section& section) { return section.name == name; });
}

Call read_call(const std::vector<std::string>& words) {
  Call call;
  for (std::size_t i = 0; i < words.size(); ++i) {
    const bool has_next = i + 1 < words.size();
    if (words[i] == "--quick") call.quick = true;
    else if (words[i] == "--only" && has_next) call.only = words[++i];
    else if (words[i] == "--write" && has_next) call.file = words[++i];
    else call.understood = false;
  }
  if (!call.only.empty())
    call.understood = call.understood && is_section(call.only) && call.file.empty();
  return call;
}

}  // namespace

int main(int count, char** words) {
  const Call call = read_call({words + 1, words + count});
  if (!call.understood) {
    std::cerr << "foldyard_bench [--quick] [--only SECTION | --write FILE]\n";
    return 2;
  }
  std::string all;
  for (const Section& section : kSections) {
    if (!call.only.empty() && call.only != section.name) continue;
    const std::string text = section.write(call.quick);
    std::cout << text << std::flush;
    all += text;
  }
  if (!call.file.empty() && !write_between_marks(call.file, all)) {
    std::cerr << call.file << " cannot be written, or has no marks for the tables\n";
    return 1;
  }
  return 0;
}
