// Each check of the house can fail: it finds the fault in a bad sample and
// leaves a good one alone.

#include <gtest/gtest.h>

#include "floors.h"
#include "papers.h"
#include "said.h"
#include "sizes.h"
#include "type_names.h"

namespace foldyard::house {
namespace {

using Texts = std::vector<std::string>;

Source at(const std::string& path, const std::string& text) { return {path, text}; }

std::string lines(int n) {
  std::string text;
  for (int i = 0; i < n; ++i) text += "  step();\n";
  return text;
}

const Exists kNothing = [](const std::string&) { return false; };

TEST(Includes, AreReadInBothForms) {
  EXPECT_EQ(includes_of("#include <vector>\n  #  include \"fold/fold_map.h\"\n// #include no\n"),
            (Texts{"vector", "fold/fold_map.h"}));
}

TEST(UpwardIncludes, AreFound) {
  EXPECT_EQ(upward_includes(at("core/measure/a.cpp", "#include \"fold/fold_map.h\"\n")).size(), 1u);
  EXPECT_EQ(upward_includes(at("core/cloth/a.h", "#include \"goods/panel.h\"\n")).size(), 1u);
  EXPECT_EQ(upward_includes(at("core/job/a.h", "#include \"app/window.h\"\n")).size(), 1u);
  EXPECT_TRUE(upward_includes(at("core/cutting/a.cpp", "#include \"fold/fold_map.h\"\n")).empty());
  EXPECT_TRUE(upward_includes(at("core/fold/a.cpp", "#include \"fold/fold_map.h\"\n")).empty());
}

TEST(UpwardIncludes, HoldTheInspectorToNouns) {
  EXPECT_EQ(upward_includes(at("core/inspect/a.cpp", "#include \"fold/fold_map.h\"\n")).size(), 1u);
  EXPECT_EQ(upward_includes(at("core/inspect/a.cpp", "#include \"job/plan_roll.h\"\n")).size(), 1u);
  EXPECT_TRUE(upward_includes(at("core/inspect/a.cpp", "#include \"job/plan.h\"\n")).empty());
}

TEST(Unsaid, IsFound) {
  EXPECT_EQ(unsaid(at("core/job/a.cpp", "return {\"rolls\", \"no panel\", say(\"cut it\")};\n")).size(), 1u);
  EXPECT_EQ(unsaid(at("core/job/a.cpp", "x = say(\"no \") + \"panel fits\";\n")).size(), 1u);
  EXPECT_TRUE(unsaid(at("core/job/a.cpp", "// \"no panel\"\ny = say(\"no panel \"\n  \"fits here\");\n")).empty());
  EXPECT_TRUE(unsaid(at("core/job/a.cpp", "constexpr auto k = to_say(\"no panel\");\nkey(\"panels[].at_most\");\n")).empty());
}

TEST(TypeNames, AreThoseForOthers) {
  EXPECT_EQ(types_in(at("core/a.h", "namespace a {\nstruct B : C { struct D {}; };\nenum class E { f };\nclass G;\n"
                                    "namespace {\nstruct H {};\n}\nint i() { struct J {}; return 0; }\n}\n")),
            (Texts{"a::B", "a::E"}));
}

TEST(TypeNames, AreFoundTwice) {
  const Source a = at("core/a.h", "namespace x {\nstruct A {};\n}\n");
  EXPECT_EQ(types_named_twice({a, at("core/b.h", a.text)}), (Texts{"x::A stands in core/a.h and core/b.h"}));
  EXPECT_TRUE(types_named_twice({a, at("core/b.h", "namespace y {\nstruct A {};\n}\n")}).empty());
}

TEST(QtInCore, IsFound) {
  for (const auto* qt : {"QString", "QtCore/QString", "qglobal.h"})
    EXPECT_EQ(qt_in_core(at("core/fold/a.cpp", std::string("#include <") + qt + ">\n")).size(), 1u) << qt;
  EXPECT_TRUE(qt_in_core(at("core/fold/a.cpp", "#include <queue>\n")).empty());
}

TEST(WidgetsBelowWindow, AreFound) {
  for (const auto* name : {"QWidget", "QtWidgets/QLabel", "QApplication", "QGraphicsScene", "QTableView"})
    EXPECT_EQ(widgets_below_window(at("app/cli/a.cpp", std::string("#include <") + name + ">\n")).size(), 1u)
        << name;
  for (const auto* name : {"QPageLayout", "QPainter", "QGuiApplication", "QSvgGenerator", "QBuffer"})
    EXPECT_TRUE(widgets_below_window(at("app/cli/a.cpp", std::string("#include <") + name + ">\n")).empty())
        << name;
}

TEST(RoomLinks, AreReadAndHeldToTheFloors) {
  const auto rooms = room_links("foldyard_room(measure)\nfoldyard_room(fold LINKS cutting measure)\n");
  ASSERT_EQ(rooms.size(), 2u);
  EXPECT_EQ(rooms[1].links, (Texts{"cutting", "measure"}));
  EXPECT_EQ(upward_links(rooms), (Texts{"fold links cutting, which is not on a lower floor"}));
  EXPECT_EQ(upward_links({{"attic", {}}}).size(), 1u);
}

TEST(UnlinkedIncludes, AreFound) {
  const std::vector<RoomLinks> rooms = {{"cutting", {"measure"}}};
  EXPECT_EQ(unlinked_includes(at("core/cutting/a.cpp", "#include \"fold/fold_map.h\"\n"), rooms).size(), 1u);
  EXPECT_TRUE(unlinked_includes(at("core/cutting/a.cpp", "#include \"measure/rect.h\"\n"), rooms).empty());
}

TEST(WidgetLinks, AreFound) {
  const auto rooms = room_links("foldyard_app_room(cli LINKS job Qt6::Widgets)\n");
  EXPECT_EQ(widget_links(rooms), (Texts{"app/cli links Widgets"}));
}

TEST(Functions, AreMeasuredFromHeadToBrace) {
  const auto found = functions_in(at("core/a.cpp",
                                     "namespace x {\n"
                                     "struct Row { int a = 0; };\n"
                                     "const Row kRows[] = {{1}, {2}};\n"
                                     "class Box {\n"
                                     " public:\n"
                                     "  explicit Box(int a)\n"
                                     "      : a_{a}, b_(f(a)) {\n"
                                     "    if (a) { go(\"}\"); }  // }\n"
                                     "  }\n"
                                     "  int a_, b_;\n"
                                     "};\n"
                                     "template <class T>\n"
                                     "T twice(T t) { return t + t; }\n"
                                     "}\n"));
  ASSERT_EQ(found.size(), 2u);
  EXPECT_EQ(found[0].where, "core/a.cpp:6");
  EXPECT_EQ(found[0].lines, 4);  // lines 6 to 9
  EXPECT_EQ(found[1].lines, 2);  // lines 12 and 13
}

TEST(LongFunctions, AreFoundFromSixtyOneLinesOn) {
  EXPECT_TRUE(long_functions(at("core/a.cpp", "void f() {\n" + lines(58) + "}\n")).empty());
  EXPECT_EQ(long_functions(at("core/a.cpp", "void f() {\n" + lines(59) + "}\n")).size(), 1u);
}

TEST(LongFiles, AreFound) {
  EXPECT_TRUE(long_file(at("core/a.cpp", lines(500))).empty());
  EXPECT_EQ(long_file(at("core/a.cpp", lines(501))).size(), 1u);
  EXPECT_TRUE(long_file(at("core/a.h", lines(350))).empty());
  EXPECT_EQ(long_file(at("core/a.h", lines(351))).size(), 1u);
}

TEST(Median, IsTheMiddleOne) {
  EXPECT_EQ(median_lines({{"", "", 9}, {"", "", 1}, {"", "", 3}}), 3);
  EXPECT_EQ(median_lines({}), 0);
}

TEST(UnitsWithoutTest, AreFound) {
  EXPECT_EQ(units_without_test({{"core/fold/fold_map.cpp", ""}, {"core/fold/fold_map.h", ""}}, kNothing),
            (Texts{"core/fold/fold_map.cpp has no tests/core/fold/fold_map_test.cpp"}));
}

TEST(SilentMacros, AreFoundInCodeOnly) {
  EXPECT_EQ(silent_macros(at("tests/a.cpp", "QVERIFY(x); QCOMPARE(a, b); QTRY_VERIFY(c);")).size(), 3u);
  EXPECT_TRUE(silent_macros(at("tests/a.cpp", "// QVERIFY\nf(\"QCOMPARE\");")).empty());
}

TEST(Top, RefusesMoreAndLess) {
  const Texts whole = {"CMakeLists.txt", "DEVELOPERS.md", "README.md", "app", "core", "docs", "resources", "tests"};
  EXPECT_TRUE(wrong_at_top(whole).empty());
  auto more = whole;
  more.push_back("scripts");
  EXPECT_EQ(wrong_at_top(more), Texts{"scripts"});
  EXPECT_EQ(wrong_at_top({whole.begin() + 1, whole.end()}), Texts{"CMakeLists.txt"});
}

TEST(PackageNames, AreFoundWhole) {
  const auto names = package_names("# not-this\nbuild  g++\nbuild  lib-a-dev | lib-b-dev\n");
  EXPECT_EQ(names, (Texts{"lib-a-dev", "lib-b-dev"}));
  EXPECT_EQ(packages_named(at("README.md", "get lib-a-dev."), names).size(), 1u);
  EXPECT_TRUE(packages_named(at("README.md", "xlib-a-dev lib-a-devel"), names).empty());
}

TEST(BrokenLinks, AreFound) {
  const Exists only_a = [](const std::string& path) { return path == "docs/a.md"; };
  const auto document = at("docs/sub/page.md", "[a](../a.md#top) [b](b.md) [c](https://x.org) [d](#here)");
  EXPECT_EQ(broken_links(document, only_a), (Texts{"docs/sub/page.md links b.md, which is not there"}));
}

TEST(MissingPaths, AreFound) {
  const Exists some = [](const std::string& path) { return path == "core/a.h" || path == "tests/run"; };
  const auto document = at("docs/page.md", "`core/a.h` `core/a` `tests/run --room x` `core/b.h` `core/<room>/x.h` core/c.h");
  EXPECT_EQ(missing_paths(document, some), (Texts{"docs/page.md names core/b.h, which is not there"}));
}

TEST(StaleMutations, AreFound) {
  const auto read = [](const std::string& path) { return std::string(path == "a.cpp" ? "x = 1; y = 1; z = 2;" : ""); };
  const std::string rest = "\nto: 3\ntests: job\n";
  const auto of = [&](const std::string& from) { return "# why\nname: n\nfile: a.cpp\nfrom: " + from + rest; };
  EXPECT_EQ(stale_mutations(of("z = 2") + "\n" + of("x = 1"), read), Texts{});
  EXPECT_EQ(stale_mutations(of("z = 2") + "\n" + of("= 1"), read), (Texts{"the mutation n does not apply to a.cpp"}));
  EXPECT_EQ(stale_mutations(of("w"), read).size(), 1u);
  EXPECT_EQ(stale_mutations("name: n\nfile: b.cpp\nfrom: x" + rest, read).size(), 1u);
  EXPECT_EQ(stale_mutations("name: n\nfile: a.cpp\nfrom: z = 2\n", read).size(), 1u);
}

}  // namespace
}  // namespace foldyard::house
