// A moment of what `tests/fuzz/run` does for hours: the corpus, and bytes made
// from it by chance.

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <iterator>
#include <random>
#include <string>

#include "fuzz/targets.h"

namespace foldyard::fuzz {
namespace {

using Random = std::mt19937_64;

std::string text_of(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

std::vector<std::string> corpus_of(const Target& target) {
  std::vector<std::filesystem::path> paths;
  for (const auto& entry : std::filesystem::directory_iterator(FOLDYARD_SOURCE_DIR "/tests/fuzz/corpus/" + std::string(target.name)))
    paths.push_back(entry.path());
  std::sort(paths.begin(), paths.end());
  std::vector<std::string> corpus;
  for (const auto& path : paths) corpus.push_back(text_of(path));
  return corpus;
}

std::size_t below(std::size_t n, Random& random) { return n == 0 ? 0 : random() % n; }

// One small change.
void change(std::string& text, const std::vector<std::string>& corpus, Random& random) {
  const std::size_t at = below(text.size() + 1, random);
  const std::size_t count = std::min(text.size() - at, std::size_t{1} << below(8, random));
  switch (below(7, random)) {
    case 0: text.insert(at, 1, static_cast<char>(random())); break;
    case 1: text.erase(at, count); break;
    case 2: text.insert(at, text.substr(at, count)); break;
    case 3: if (at < text.size()) text[at] = static_cast<char>(text[at] ^ (1 << below(8, random))); break;
    case 4: if (at < text.size()) text[at] = "0123456789.,-+eE\"{}[]:;\\ \n"[below(27, random)]; break;
    case 5: {
      const std::string& other = corpus[below(corpus.size(), random)];
      const std::size_t from = below(other.size() + 1, random);
      text.replace(at, count, other.substr(from, std::size_t{1} << below(10, random)));
      break;
    }
    default: text.resize(at);
  }
}

std::string changed(std::string text, const std::vector<std::string>& corpus, Random& random) {
  for (std::size_t changes = 1 + below(4, random); changes > 0; --changes) change(text, corpus, random);
  return text;
}

// The words of the promise that was broken, or none.
std::string broken_by(const Target& target, const std::string& text) {
  try {
    target.run(reinterpret_cast<const std::uint8_t*>(text.data()), text.size());
  } catch (const Broken& broken) {
    return broken.what();
  }
  return "";
}

std::uint64_t seed() {
  const char* wanted = std::getenv("FOLDYARD_SEED");
  return wanted ? std::strtoull(wanted, nullptr, 10) : std::random_device{}();
}

class Mutations : public testing::TestWithParam<Target> {};

TEST_P(Mutations, BreakNoPromise) {
  const Target& target = GetParam();
  const auto corpus = corpus_of(target);
  ASSERT_FALSE(corpus.empty());
  for (const auto& text : corpus) ASSERT_EQ(broken_by(target, text), "") << text;
  const auto first = seed();
  std::cout << target.moment << " inputs, FOLDYARD_SEED=" << first << "\n";
  Random random(first);
  for (int input = 0; input < target.moment; ++input) {
    const std::string text = changed(corpus[below(corpus.size(), random)], corpus, random);
    ASSERT_EQ(broken_by(target, text), "") << "FOLDYARD_SEED=" << first << ", input " << input << ":\n" << text;
  }
}

INSTANTIATE_TEST_SUITE_P(Targets, Mutations, testing::ValuesIn(targets()),
                         [](const auto& target) { return std::string(target.param.name); });

}  // namespace
}  // namespace foldyard::fuzz
