#include "printing/print_sheet.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>

#include "app/drawing/paper_probe.h"
#include "app/drawing/sample_plans.h"

namespace foldyard {
namespace {

// What a printer would be sent, kept as a file.
QByteArray printed(const Sheet& sheet, PageRange range = {}, int copies = 1) {
  const QTemporaryDir folder;
  QPrinter printer(QPrinter::HighResolution);
  printer.setOutputFormat(QPrinter::PdfFormat);
  printer.setOutputFileName(folder.filePath("print.pdf"));
  printer.setCopyCount(copies);
  EXPECT_TRUE(print_sheet(printer, sheet, range));
  QFile file(folder.filePath("print.pdf"));
  return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

TEST(PrintSheet, IsTrueToScale) {
  for (const SheetOptions& options : {SheetOptions{Paper::a4}, SheetOptions{Paper::letter, true}}) {
    const Sheet sheet = samples::carriers().sheet(options);
    const QSizeF square = probe::square_in(probe::pdf_page(printed(sheet), 0), sheet.page_size_mm());
    EXPECT_NEAR(square.width(), 100, 0.1);
    EXPECT_NEAR(square.height(), 100, 0.1);
  }
}

TEST(PrintSheet, PrintsThePagesOfTheRange) {
  const Sheet sheet = samples::both_edges_in().sheet(Paper::a4);
  EXPECT_EQ(static_cast<int>(probe::pdf_words(printed(sheet)).size()), sheet.pages());
  const auto one = probe::pdf_words(printed(sheet, {1, 1}));
  ASSERT_EQ(one.size(), 1u);
  EXPECT_EQ(one[0].words[0].text, QStringLiteral("Pattern"));
}

TEST(PrintSheet, PrintsNothingWhereThereIsNoPage) {
  QPrinter printer(QPrinter::HighResolution);
  printer.setOutputFormat(QPrinter::PdfFormat);
  const QTemporaryDir folder;
  printer.setOutputFileName(folder.filePath("none.pdf"));
  EXPECT_FALSE(print_sheet(printer, samples::carriers().sheet(Paper::a4), {50, 60}));
  EXPECT_FALSE(QFile::exists(folder.filePath("none.pdf")));
}

TEST(PrintSheet, SaysSoWhereThePrinterCannotBegin) {
  QPrinter printer(QPrinter::HighResolution);
  printer.setOutputFormat(QPrinter::PdfFormat);
  printer.setOutputFileName(QStringLiteral("/no/such/folder/print.pdf"));
  EXPECT_FALSE(print_sheet(printer, samples::carriers().sheet(Paper::a4), {}));
}

}  // namespace
}  // namespace foldyard
