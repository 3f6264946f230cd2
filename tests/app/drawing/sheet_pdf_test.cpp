#include <gtest/gtest.h>

#include <QRegularExpression>
#include <map>

#include "app/drawing/paper_probe.h"
#include "app/drawing/sample_plans.h"

namespace foldyard {
namespace {

// Names may break over lines and cells; what counts is that all letters are
// there in their order.
QString letters(QString text) {
  return text.remove(QRegularExpression("[\\s\\x{00a0}]+"));
}

const QByteArray& pdf_of(std::size_t sample, Paper paper) {
  static std::map<std::pair<std::size_t, Paper>, QByteArray> made;
  QByteArray& pdf = made[{sample, paper}];
  if (pdf.isEmpty()) pdf = sheet_pdf(samples::all()[sample].sheet(paper));
  return pdf;
}

constexpr std::size_t kSamples = 5;

TEST(SheetPdf, TheSquareMeasures100Millimetres) {
  for (Paper paper : {Paper::a4, Paper::letter}) {
    const QSizeF page = samples::carriers().sheet(paper).page_size_mm();
    const QSizeF square = probe::square_in(probe::pdf_page(pdf_of(0, paper), 0), page);
    EXPECT_NEAR(square.width(), 100, 0.1);
    EXPECT_NEAR(square.height(), 100, 0.1);
  }
}

TEST(SheetPdf, PagesAreAsLargeAsTheirPaper) {
  // ISO 216: A4 is 210 × 297 mm. ANSI/ASME Y14.1: A, "Letter", is 8.5 × 11 in.
  // A PDF made by Qt has its pages in whole points of 0.35 mm.
  for (const auto& page : probe::pdf_words(pdf_of(0, Paper::a4))) {
    EXPECT_NEAR(page.size.width(), 210, 0.36);
    EXPECT_NEAR(page.size.height(), 297, 0.36);
  }
  for (const auto& page : probe::pdf_words(pdf_of(0, Paper::letter))) {
    EXPECT_NEAR(page.size.width(), 215.9, 0.36);
    EXPECT_NEAR(page.size.height(), 279.4, 0.36);
  }
}

TEST(SheetPdf, HasAsManyPagesAsTheSheetSays) {
  for (std::size_t i = 0; i < kSamples; ++i)
    for (Paper paper : {Paper::a4, Paper::letter})
      EXPECT_EQ(probe::pdf_words(pdf_of(i, paper)).size(),
                static_cast<std::size_t>(samples::all()[i].sheet(paper).pages()));
}

TEST(SheetPdf, EveryPanelIsNamed) {
  for (std::size_t i = 0; i < kSamples; ++i) {
    const samples::Sample sample = samples::all()[i];
    const QString text = letters(probe::pdf_text(pdf_of(i, Paper::a4)));
    for (std::size_t panel = 0; panel < sample.job.panels.size(); ++panel)
      if (sample.plan().yield[panel] > 0) {
        const QString name = QString::fromStdString(sample.job.panels[panel].name);
        EXPECT_TRUE(text.contains(letters(name))) << name.toStdString();
      }
  }
}

TEST(SheetPdf, EveryCutHasItsNumberInThePictureAndInTheList) {
  for (std::size_t i = 0; i < kSamples; ++i) {
    const samples::Sample sample = samples::all()[i];
    std::map<QString, int> count;
    for (const auto& page : probe::pdf_words(pdf_of(i, Paper::a4)))
      for (const auto& word : page.words) ++count[word.text];
    for (std::size_t cut = 1; cut <= sample.plan().patterns[0].cuts.size(); ++cut)
      EXPECT_GE(count[QString::number(cut)], 2) << "cut " << cut << " of sample " << i;
  }
}

TEST(SheetPdf, NoWordLeavesThePrintableArea) {
  // 5 mm: what most printers leave blank; common practice, no source.
  for (std::size_t i = 0; i < kSamples; ++i)
    for (Paper paper : {Paper::a4, Paper::letter})
      for (const auto& page : probe::pdf_words(pdf_of(i, paper))) {
        const QRectF area = QRectF(QPointF(), page.size).adjusted(5, 5, -5, -5);
        for (const auto& word : page.words)
          EXPECT_TRUE(area.contains(word.box)) << word.text.toStdString();
      }
}

TEST(SheetPdf, SaysHowToPrint) {
  const QString text = probe::pdf_text(pdf_of(0, Paper::a4)).simplified();
  EXPECT_TRUE(text.contains("Print at 100 % (actual size); this square must measure 100 mm"));
}

TEST(SheetPdf, IsTheSameButForItsDate) {
  const auto undated = [](QByteArray pdf) {
    const qsizetype at = pdf.indexOf("/CreationDate");
    return at < 0 ? pdf : pdf.remove(at, pdf.indexOf('\n', at) - at);
  };
  const Sheet sheet = samples::both_edges_in().sheet(Paper::a4);
  EXPECT_EQ(undated(sheet_pdf(sheet)), undated(sheet_pdf(sheet)));
}

TEST(SheetPdf, APatternIsDarkEnoughInGrey) {
  // Outlines must reach 3 : 1 on paper (WCAG 2.2, 1.4.11): grey 148 or darker.
  const QImage page = probe::pdf_page(pdf_of(1, Paper::a4), 1);
  ASSERT_FALSE(page.isNull());
  int dark = 0;
  for (int x = 0; x < page.width(); ++x) dark += qGray(page.pixel(x, page.height() / 3)) <= 148;
  EXPECT_GT(dark, 30);
}

}  // namespace
}  // namespace foldyard
