// Words that are longer: every page and every dialog still fits a small screen,
// and nothing that is written is cut off.

#include <gtest/gtest.h>

#include "every_page.h"
#include "longer_words.h"

namespace foldyard {
namespace {

class LongerWordsTest : public testing::TestWithParam<sample::PageCase> {};

TEST_P(LongerWordsTest, AreNotCutOffOnASmallScreen) {
  const sample::LongerWords longer;
  sample::expect_fits_a_small_screen(GetParam().make().get());
}

INSTANTIATE_TEST_SUITE_P(Pages, LongerWordsTest, testing::ValuesIn(sample::pages()), sample::name_of);
INSTANTIATE_TEST_SUITE_P(Dialogs, LongerWordsTest, testing::ValuesIn(sample::dialogs()), sample::name_of);

}  // namespace
}  // namespace foldyard
