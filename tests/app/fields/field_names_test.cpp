#include "fields/field_names.h"

#include <gtest/gtest.h>

#include "language/language.h"

namespace foldyard {
namespace {

struct Case {
  const char* field;
  const char* english;
  const char* german;
};

class FieldNamesTest : public testing::TestWithParam<Case> {
 protected:
  ~FieldNamesTest() override { speak(QStringLiteral("en"), QLocale::c()); }
};

TEST_P(FieldNamesTest, CountFromOneInEitherLanguage) {
  EXPECT_EQ(field_words(GetParam().field), GetParam().english);
  speak(QStringLiteral("de"), QLocale(QStringLiteral("de_DE")));
  EXPECT_EQ(field_words(GetParam().field), GetParam().german);
}

INSTANTIATE_TEST_SUITE_P(Fields, FieldNamesTest,
                         testing::Values(Case{"width", "width", "Breite"}, Case{"flaws[1].from", "flaws 2, from", "Fehler 2, von"},
                                         Case{"repeat.start_along", "repeat, start along", "Rapport, Anfang längs"},
                                         Case{"each_at_least", "each at least", "von jedem mindestens"}, Case{"", "", ""},
                                         Case{"no_such_field", "no such field", "no such field"}));

}  // namespace
}  // namespace foldyard
