#include "file/strict_json.h"

#include <gtest/gtest.h>

#include <cstring>

namespace foldyard {
namespace {

struct JsonCase {
  const char* name;
  QByteArray text;
  const char* fault;  // empty: passes
};

class StrictJson : public testing::TestWithParam<JsonCase> {};

TEST_P(StrictJson, PassesOrNamesTheFault) {
  const auto problem = check_json(GetParam().text);
  const std::string sentence = problem ? problem->sentence() : "";
  if (std::strlen(GetParam().fault) == 0) {
    EXPECT_EQ(sentence, "");
  } else {
    EXPECT_NE(sentence.find(GetParam().fault), std::string::npos) << sentence;
  }
}

// Which texts are JSON follows RFC 8259. The rows "point without digits",
// "raw NUL" and "lone surrogate" are what QJsonDocument 6.4.2 lets pass.
const JsonCase kRows[] = {
    {"empty_object", "{}", ""},
    {"all_kinds", R"({"a": [1, -2.5e+3, "x\n\u00e4\ud83d\ude00", true, false, null, {}, []]})", ""},
    {"nested_same_name", R"({"a": {"a": 1}})", ""},
    {"empty", "", "line 1, column 1: a job file starts with {"},
    {"list_on_top", "[]", "starts with {"},
    {"byte_order_mark", "\xEF\xBB\xBF{}", "byte order mark"},
    {"junk_behind", "{}\n {}", "line 2, column 2: something stands after"},
    {"twice", "{\"a\": 1,\n \"a\": 2}", "line 2, column 2: the field \"a\" stands twice"},
    {"escaped_name", R"({"\u0061": 1})", "backslash"},
    {"comma_at_end", R"({"a": 1,})", "a \" is missing"},
    {"comma_at_list_end", R"({"a": [1,]})", "a value or a digit is missing"},
    {"no_colon", R"({"a" 1})", "a : is missing"},
    {"no_end", R"({"a": 1)", "a } is missing"},
    {"open_text", R"({"a": "x)", "not closed"},
    {"point_without_digits", R"({"a": 1.})", "digit is missing"},
    {"needless_zero", R"({"a": 01})", "needless 0"},
    {"plus", R"({"a": +1})", "digit is missing"},
    {"not_a_number", R"({"a": nan})", "unknown word"},
    {"capital_nan", R"({"a": NaN})", "digit is missing"},
    {"half_true", R"({"a": tru})", "unknown word"},
    {"raw_NUL", QByteArray("{\"a\": \"x\0y\"}", 12), "control character"},
    {"raw_line_break", "{\"a\": \"x\ny\"}", "control character"},
    {"lone_surrogate", R"({"a": "\ud800"})", "surrogate"},
    {"low_surrogate", R"({"a": "\ude00"})", "surrogate"},
    {"unpaired_surrogate", R"({"a": "\ud800\u0041"})", "surrogate"},
    {"bad_escape", R"({"a": "\x"})", "unknown escape"},
    {"short_hex", R"({"a": "\u00g0"})", "hexadecimal"},
    {"not_utf8", "{\"a\": \"\xFF\"}", "not UTF-8"},
    {"surrogate_in_utf8", "{\"a\": \"\xED\xA0\x80\"}", "not UTF-8"},
    {"comment", "{} // x", "after the closing"},
};

INSTANTIATE_TEST_SUITE_P(Rows, StrictJson, testing::ValuesIn(kRows),
                         [](const auto& row) { return std::string(row.param.name); });

QByteArray nested(int lists) {
  return "{\"a\": " + QByteArray(lists, '[') + QByteArray(lists, ']') + "}";
}

TEST(StrictJsonDepth, IsHeldAtSixteen) {
  EXPECT_FALSE(check_json(nested(15)));  // the object is the sixteenth level
  EXPECT_TRUE(check_json(nested(16)));
  EXPECT_TRUE(check_json(nested(1'000'000)));
}

TEST(StrictJsonCut, NoHeadOfAFileIsAFile) {
  const QByteArray whole = R"({"a": [1.5, "x\u00e4", {"b": true}], "c": null})";
  EXPECT_FALSE(check_json(whole));
  for (qsizetype n = 0; n < whole.size(); ++n) {
    EXPECT_TRUE(check_json(whole.left(n))) << whole.left(n).toStdString();
  }
}

}  // namespace
}  // namespace foldyard
