// The project as it stands keeps the rules of the house. That each check can
// fail is shown in checkers_test.cpp.

#include <gtest/gtest.h>

#include <iostream>

#include "floors.h"
#include "papers.h"
#include "said.h"
#include "sizes.h"
#include "type_names.h"

namespace foldyard::house {
namespace {

const std::vector<std::string> kCode = {".cpp", ".h"};

std::vector<Source> all_code() {
  std::vector<Source> all;
  for (const auto* folder : {"app", "core", "tests"})
    for (auto& source : sources_in(folder, kCode)) all.push_back(std::move(source));
  return all;
}

std::vector<Source> all_text() {
  auto all = sources_in(".", {".cpp", ".h", ".md", ".txt", ".json"});
  for (const auto* script : {"app/start", "app/prepare", "app/build", "tests/run", ".ci/run"})
    all.push_back({script, read_file(script)});
  return all;
}

void expect_none(const std::vector<std::string>& faults) {
  for (const auto& fault : faults) ADD_FAILURE() << fault;
}

TEST(House, CoreIncludesOnlyDownwards) {
  for (const auto& source : sources_in("core", kCode)) expect_none(upward_includes(source));
}

TEST(House, CoreLinksOnlyDownwardsAndWhatItIncludes) {
  const auto rooms = room_links(read_file("core/CMakeLists.txt"));
  EXPECT_GE(rooms.size(), 10u);
  expect_none(upward_links(rooms));
  for (const auto& source : sources_in("core", kCode)) expect_none(unlinked_includes(source, rooms));
}

TEST(House, CoreHasNoQt) {
  for (const auto& source : sources_in("core", kCode)) expect_none(qt_in_core(source));
}

// What the inspector finds and what the solver meets is told to engineers alone.
TEST(House, WhatCoreTellsAPersonCanBeTranslated) {
  for (const auto* room : {"core/measure", "core/cloth", "core/goods", "core/fold", "core/lay", "core/costing",
                           "core/cutting", "core/batch", "core/job", "app/file"})
    for (const auto& source : sources_in(room, {".cpp", ".h"})) expect_none(unsaid(source));
}

TEST(House, OnlyTheWindowHasWidgets) {
  for (const auto* room : {"app/file", "app/drawing", "app/document", "app/cli"})
    for (const auto& source : sources_in(room, kCode)) expect_none(widgets_below_window(source));
  expect_none(widget_links(room_links(read_file("app/CMakeLists.txt"))));
}

TEST(House, FunctionsAndFilesStayShort) {
  std::vector<Function> shipped;
  for (const auto& source : all_code()) {
    expect_none(long_functions(source));
    expect_none(long_file(source));
    if (starts_with(source.path, "tests/")) continue;
    for (auto& function : functions_in(source)) shipped.push_back(std::move(function));
  }
  std::cout << shipped.size() << " functions, median " << median_lines(shipped) << " lines\n";
  EXPECT_LE(median_lines(shipped), 8);
}

TEST(House, TypesHaveNamesOfTheirOwn) {
  std::vector<Source> shipped;
  for (auto& source : all_code())
    if (!starts_with(source.path, "tests/")) shipped.push_back(std::move(source));
  expect_none(types_named_twice(shipped));
}

TEST(House, EveryCoreUnitHasItsTest) {
  expect_none(units_without_test(sources_in("core", {".cpp"}), exists));
}

TEST(House, NoTestUsesSilentMacros) {
  for (const auto& source : sources_in("tests", kCode)) expect_none(silent_macros(source));
}

TEST(House, TopHoldsOnlyWhatBelongsThere) { expect_none(wrong_at_top(names_at_top())); }

TEST(House, PackagesAreNamedInOnePlace) {
  const auto names = package_names(read_file("app/packages.txt"));
  EXPECT_FALSE(names.empty());
  for (const auto& source : all_text())
    if (source.path != "app/packages.txt") expect_none(packages_named(source, names));
}

TEST(House, LinksBetweenDocumentsLeadSomewhere) {
  for (const auto& document : sources_in(".", {".md"})) expect_none(broken_links(document, exists));
}

// But for the list of changes, which names what has gone since.
TEST(House, PathsInDocumentsAreThere) {
  for (const auto& document : sources_in(".", {".md"}))
    if (document.path != "docs/CHANGELOG.md") expect_none(missing_paths(document, exists));
}

TEST(House, MutationsStillApply) { expect_none(stale_mutations(read_file("tests/mutations/list.txt"), read_file)); }

}  // namespace
}  // namespace foldyard::house
