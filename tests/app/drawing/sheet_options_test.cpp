#include "drawing/sheet_options.h"

#include <gtest/gtest.h>

#include "app/drawing/paper_probe.h"
#include "app/drawing/sample_plans.h"

namespace foldyard {
namespace {

QString text_with(const samples::Sample& sample, const SheetOptions& options) {
  return probe::pdf_text(sheet_pdf(sample.sheet(options))).simplified();
}

struct Size {
  const char* name;
  Paper paper;
  double width, height;  // mm: ISO 216; ANSI/ASME Y14.1; Legal 8.5 × 14 in, common practice
};

class OnEveryPaper : public testing::TestWithParam<Size> {};

TEST_P(OnEveryPaper, PagesAreAsLargeAndWordsStayInside) {
  for (bool landscape : {false, true})
    for (const samples::Sample& sample : samples::all()) {
      SheetOptions options{GetParam().paper};
      options.landscape = landscape;
      QSizeF expected(GetParam().width, GetParam().height);
      if (landscape) expected.transpose();
      for (const probe::Page& page : probe::pdf_words(sheet_pdf(sample.sheet(options)))) {
        EXPECT_NEAR(page.size.width(), expected.width(), 0.36);
        EXPECT_NEAR(page.size.height(), expected.height(), 0.36);
        const QRectF area = QRectF(QPointF(), page.size).adjusted(5, 5, -5, -5);
        for (const auto& word : page.words) EXPECT_TRUE(area.contains(word.box)) << word.text.toStdString();
      }
    }
}

INSTANTIATE_TEST_SUITE_P(Papers, OnEveryPaper,
                         testing::Values(Size{"a4", Paper::a4, 210, 297}, Size{"a3", Paper::a3, 297, 420},
                                         Size{"letter", Paper::letter, 215.9, 279.4},
                                         Size{"legal", Paper::legal, 215.9, 355.6},
                                         Size{"tabloid", Paper::tabloid, 279.4, 431.8}),
                         [](const auto& size) { return std::string(size.param.name); });

TEST(SheetOptions, TheSquareMeasuresTheSameOnPaperLaidLengthwise) {
  SheetOptions options{Paper::letter, true};
  const Sheet sheet = samples::carriers().sheet(options);
  const QSizeF square = probe::square_in(probe::pdf_page(sheet_pdf(sheet), 0), sheet.page_size_mm());
  EXPECT_NEAR(square.width(), 100, 0.1);
  EXPECT_NEAR(square.height(), 100, 0.1);
}

TEST(SheetOptions, LeavePatternsOut) {
  const samples::Sample sample = samples::both_edges_in();
  SheetOptions options;
  options.patterns = {1};
  const QString text = text_with(sample, options);
  EXPECT_TRUE(text.contains("Pattern B:"));
  EXPECT_FALSE(text.contains("Pattern A:"));
}

TEST(SheetOptions, LeaveTheComparisonOutButNeverTheCautions) {
  SheetOptions options;
  options.comparison = false;
  options.patterns = std::vector<int>();
  for (bool landscape : {false, true}) {
    options.landscape = landscape;
    const QString text = text_with(samples::carriers(), options);
    EXPECT_FALSE(text.contains("Fold ways compared"));
    EXPECT_TRUE(text.contains("Cautions for the cutter"));
    EXPECT_TRUE(text.contains("at most 12 plies") || text.contains("plies.")) << text.toStdString();
    EXPECT_TRUE(text.contains("100 mm"));
  }
}

TEST(SheetOptions, WriteInAnotherUnit) {
  SheetOptions options;
  options.unit = Unit::inch;
  const Sheet sheet = samples::carriers().sheet(options);
  EXPECT_EQ(sheet.job().unit, Unit::inch);
  // 450 × 900 mm: 17.717 × 35.433 in, in 64ths 17 23/32 and 35 7/16.
  const QString text = probe::pdf_text(sheet_pdf(sheet)).simplified();
  EXPECT_TRUE(text.contains("17 23/32")) << text.left(2000).toStdString();
}

TEST(SheetOptions, PagesOfARangeAreThoseOfTheWholeSheet) {
  const Sheet sheet = samples::both_edges_in().sheet(Paper::a4);
  ASSERT_GE(sheet.pages(), 3);
  const QByteArray pdf = sheet_pdf(sheet, {1, 1});
  EXPECT_EQ(probe::pdf_words(pdf).size(), 1u);
  EXPECT_TRUE(probe::pdf_text(pdf).contains(QStringLiteral("page 2 of %1").arg(sheet.pages())));
  EXPECT_TRUE(sheet_pdf(sheet, {90, 99}).isEmpty());
  EXPECT_TRUE(sheet_svg(sheet, {90, 99}).isEmpty());
  EXPECT_TRUE(sheet_png(sheet, 50, {90, 99}).isEmpty());
  EXPECT_EQ(pages_in(sheet, {-3, 1}), (std::vector<int>{0, 1}));
}

TEST(SheetOptions, WithoutAnythingThereIsNoPage) {
  SheetOptions options;
  options.diagram = false;
  const Sheet sheet = samples::carriers().sheet(options);
  EXPECT_EQ(sheet.pages(), 0);
  EXPECT_TRUE(sheet_pdf(sheet).isEmpty());
}

}  // namespace
}  // namespace foldyard
