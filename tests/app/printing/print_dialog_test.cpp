#include "printing/print_dialog.h"

#include <gtest/gtest.h>

#include <QClipboard>
#include <QFile>
#include <QGuiApplication>
#include <QMimeData>
#include <QPrinterInfo>
#include <QTemporaryDir>
#include <QTest>

#include <set>

#include "app/drawing/paper_probe.h"
#include "print_source.h"

namespace foldyard {
namespace {

class PrintDialogTest : public testing::Test {
 protected:
  PrintDialogTest() { dialog.show(); }
  QByteArray bytes(const QString& name) const {
    QFile file(folder.filePath(name));
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
  }

  PrintDialog dialog{samples::source(samples::both_edges_in()), Paper::a4};
  QTemporaryDir folder;
};

TEST_F(PrintDialogTest, ShowsTheSheetThatIsWritten) {
  EXPECT_EQ(dialog.sheet().pages(), samples::both_edges_in().sheet(Paper::a4).pages());
  EXPECT_EQ(dialog.form()->last()->value(), dialog.sheet().pages());
  EXPECT_EQ(dialog.pages()->page_in_view(), 0);
}

TEST_F(PrintDialogTest, WritesWhatTheEndingNames) {
  for (const auto& [name, head] : {std::pair{"d.pdf", "%PDF"}, {"d.svg", "<?xml"}, {"d.png", "\x89PNG"}}) {
    EXPECT_TRUE(dialog.write_to(folder.filePath(name))) << name;
    EXPECT_TRUE(bytes(name).startsWith(head)) << name;
    EXPECT_TRUE(dialog.news()->text().contains(name));
  }
}

TEST_F(PrintDialogTest, WritesThePagesOfTheRangeWithTheOptions) {
  dialog.form()->turn()->setCurrentIndex(1);
  dialog.form()->first()->setValue(2);
  dialog.form()->last()->setValue(2);
  ASSERT_TRUE(dialog.write_to(folder.filePath("d.pdf")));
  const auto pages = probe::pdf_words(bytes("d.pdf"));
  ASSERT_EQ(pages.size(), 1u);
  EXPECT_GT(pages[0].size.width(), pages[0].size.height());
}

TEST_F(PrintDialogTest, SaysWhyNothingWasWritten) {
  EXPECT_FALSE(dialog.write_to(folder.filePath("missing/d.pdf")));
  EXPECT_TRUE(dialog.news()->text().contains("folder")) << dialog.news()->text().toStdString();
  EXPECT_TRUE(dialog.news()->property("fault").toBool());
}

TEST_F(PrintDialogTest, PrintsToAPrinter) {
  QPrinter printer(QPrinter::HighResolution);
  printer.setOutputFormat(QPrinter::PdfFormat);
  printer.setOutputFileName(folder.filePath("p.pdf"));
  EXPECT_TRUE(dialog.print_on(printer));
  EXPECT_EQ(static_cast<int>(probe::pdf_words(bytes("p.pdf")).size()), dialog.sheet().pages());
  printer.setOutputFileName(folder.filePath("missing/p.pdf"));
  EXPECT_FALSE(dialog.print_on(printer));
  EXPECT_TRUE(dialog.news()->property("fault").toBool());
}

TEST_F(PrintDialogTest, TellsHowToPrintAndLeadsToThePdfWithoutAPrinter) {
  EXPECT_TRUE(dialog.advice()->text().contains("100 %"));
  EXPECT_TRUE(dialog.advice()->text().contains("100 mm"));
  const bool none = QPrinterInfo::availablePrinterNames().isEmpty();
  EXPECT_EQ(dialog.print_button()->isEnabled(), !none);
  EXPECT_EQ(dialog.advice()->text().contains("write a PDF"), none);
}

TEST_F(PrintDialogTest, CopiesThePageInView) {
  QTest::keyClick(dialog.pages(), Qt::Key_End);
  dialog.copy_page();
  EXPECT_TRUE(QGuiApplication::clipboard()->mimeData()->hasFormat(QStringLiteral("image/svg+xml")));
  EXPECT_TRUE(dialog.news()->text().contains(QString::number(dialog.sheet().pages())));
}

TEST_F(PrintDialogTest, OffersNothingWhereThereIsNoPage) {
  dialog.form()->diagram()->setChecked(false);
  EXPECT_EQ(dialog.sheet().pages(), 0);
  EXPECT_FALSE(dialog.pdf_button()->isEnabled());
  EXPECT_FALSE(dialog.news()->text().isEmpty());
  dialog.form()->templates()->item(0)->setCheckState(Qt::Checked);
  EXPECT_GT(dialog.sheet().pages(), 1);
  EXPECT_TRUE(dialog.pdf_button()->isEnabled());
  EXPECT_TRUE(dialog.news()->text().isEmpty());
}

TEST_F(PrintDialogTest, EveryLetterIsUsedOnceAndEveryFieldHasAName) {
  std::set<QChar> letters;
  const auto take = [&](const QString& text) {
    const auto at = text.indexOf(u'&');
    if (at < 0) return;
    EXPECT_TRUE(letters.insert(text.at(at + 1).toLower()).second) << text.toStdString();
  };
  std::set<const QWidget*> named;
  for (auto* button : dialog.findChildren<QAbstractButton*>()) take(button->text());
  for (auto* label : dialog.findChildren<QLabel*>()) {
    take(label->text());
    if (label->buddy()) named.insert(label->buddy());
  }
  for (QWidget* field : dialog.form()->fields())
    EXPECT_TRUE(named.count(field) > 0 || !field->accessibleName().isEmpty() || qobject_cast<QAbstractButton*>(field))
        << field->metaObject()->className();
}

TEST_F(PrintDialogTest, TabGoesFromThePagesThroughTheOptionsToTheButtons) {
  dialog.activateWindow();
  dialog.pages()->setFocus();
  for (QWidget* field : dialog.form()->fields()) {
    QTest::keyClick(dialog.focusWidget(), Qt::Key_Tab);
    EXPECT_EQ(dialog.focusWidget(), field) << dialog.focusWidget()->metaObject()->className();
  }
}

TEST_F(PrintDialogTest, FitsASmallScreen) {
  EXPECT_LE(dialog.minimumSizeHint().width(), 760);
  EXPECT_LE(dialog.minimumSizeHint().height(), 460);
}

}  // namespace
}  // namespace foldyard
