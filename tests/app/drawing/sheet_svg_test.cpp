#include <gtest/gtest.h>

#include <QRegularExpression>
#include <QXmlStreamReader>

#include "app/drawing/paper_probe.h"
#include "app/drawing/sample_plans.h"

namespace foldyard {
namespace {

TEST(SheetSvg, TheSquareMeasures100Millimetres) {
  for (Paper paper : {Paper::a4, Paper::letter}) {
    const Sheet sheet = samples::carriers().sheet(paper);
    const QSizeF square =
        probe::square_in(probe::svg_picture(sheet_svg(sheet)), sheet.page_size_mm());
    EXPECT_NEAR(square.width(), 100, 0.1);
    EXPECT_NEAR(square.height(), 100, 0.1);
  }
}

TEST(SheetSvg, IsWellFormedWhateverTheNames) {
  for (const samples::Sample& sample : samples::all()) {
    QXmlStreamReader xml(sheet_svg(sample.sheet(Paper::a4)));
    QString title, text;
    while (!xml.atEnd()) {
      if (xml.readNext() == QXmlStreamReader::StartElement && xml.name() == QLatin1String("title"))
        title = xml.readElementText();
      else if (xml.isCharacters())
        text += xml.text();
    }
    EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
    EXPECT_EQ(title.toStdString(), sample.job.name);
    EXPECT_TRUE(text.contains(QString::fromStdString(sample.job.name)));
  }
}

TEST(SheetSvg, SaysItsSizeInMillimetres) {
  const Sheet sheet = samples::carriers().sheet(Paper::a4);
  const QByteArray svg = sheet_svg(sheet);
  EXPECT_TRUE(svg.contains("width=\"210mm\""));
  EXPECT_TRUE(svg.contains("viewBox=\"0 0 210 " + QByteArray::number(297 * sheet.pages()) + "\""));
}

TEST(SheetSvg, HoldsNumbersOnlyAndIsTheSameEachTime) {
  const QRegularExpression no_number("[\"(,\\s]-?(nan|inf)[\",)\\s]");
  for (const samples::Sample& sample : samples::all()) {
    const QByteArray svg = sheet_svg(sample.sheet(Paper::letter));
    EXPECT_FALSE(QString::fromUtf8(svg).contains(no_number));
    EXPECT_EQ(svg, sheet_svg(sample.sheet(Paper::letter)));
  }
}

}  // namespace
}  // namespace foldyard
