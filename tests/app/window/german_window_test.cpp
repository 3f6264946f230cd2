// The window in German: its words fit a small screen, none is left in English, and
// no menu has a letter twice.

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QAction>
#include <QFile>
#include <QHeaderView>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QTabBar>
#include <QTableView>
#include <QXmlStreamReader>

#include <string_view>

#include "every_page.h"
#include "language/language.h"
#include "sample.h"
#include "window/main_window.h"

namespace foldyard {
namespace {

// English texts that have another text in German.
QSet<QString> english_texts() {
  QFile file(QStringLiteral(FOLDYARD_SOURCE_DIR "/resources/languages/window_de.ts"));
  EXPECT_TRUE(file.open(QIODevice::ReadOnly));
  QXmlStreamReader xml(&file);
  QSet<QString> english, german;
  QString source;
  while (!xml.atEnd()) {
    xml.readNext();
    if (!xml.isStartElement()) continue;
    if (xml.name() == QLatin1String("source")) source = xml.readElementText();
    if (xml.name() != QLatin1String("translation")) continue;
    const QString words = xml.readElementText(QXmlStreamReader::IncludeChildElements);
    german << words;
    if (words != source) english << source;
  }
  return english - german;
}

QStringList texts_of_headers(const QWidget& window) {
  QStringList texts;
  for (const auto* table : window.findChildren<QTableView*>())
    for (int column = 0; table->model() && column < table->model()->columnCount(); ++column)
      texts << table->model()->headerData(column, Qt::Horizontal).toString()
            << table->model()->headerData(column, Qt::Horizontal, Qt::ToolTipRole).toString();
  return texts;
}

QStringList texts_of(const QWidget& window) {
  QStringList texts = texts_of_headers(window);
  texts << window.windowTitle();
  for (const auto* widget : window.findChildren<QWidget*>())
    texts << widget->toolTip() << widget->accessibleName() << widget->accessibleDescription();
  for (const auto* label : window.findChildren<QLabel*>()) texts << label->text();
  for (const auto* button : window.findChildren<QAbstractButton*>()) texts << button->text();
  for (const auto* action : window.findChildren<QAction*>()) texts << action->text() << action->toolTip();
  for (const auto* tabs : window.findChildren<QTabBar*>())
    for (int tab = 0; tab < tabs->count(); ++tab) texts << tabs->tabText(tab) << tabs->tabToolTip(tab);
  texts.removeAll(QString());
  return texts;
}

class GermanWindowTest : public testing::TestWithParam<sample::PageCase> {
 protected:
  GermanWindowTest() { speak(QStringLiteral("de"), QLocale(QStringLiteral("de_DE"))); }
  ~GermanWindowTest() override { speak(QStringLiteral("en"), QLocale::c()); }
};

class GermanWordsTest : public GermanWindowTest {};

TEST_P(GermanWindowTest, FitsASmallScreen) { sample::expect_fits_a_small_screen(GetParam().make().get()); }

TEST_P(GermanWordsTest, HaveNoEnglishAmongThem) {
  const auto english = english_texts();
  ASSERT_GT(english.size(), 400);
  const auto window = GetParam().make();
  const QStringList texts = texts_of(*window);
  EXPECT_GE(texts.size(), 5);
  for (const QString& text : texts) EXPECT_FALSE(english.contains(text)) << text.toStdString();
}

// The words of the print dialog stand in the other catalogue.
std::vector<sample::PageCase> with_words_of_the_window() {
  auto all = sample::pages();
  for (auto& dialog : sample::dialogs())
    if (std::string_view(dialog.name) != "print") all.push_back(dialog);
  return all;
}

INSTANTIATE_TEST_SUITE_P(Pages, GermanWindowTest, testing::ValuesIn(sample::pages()), sample::name_of);
INSTANTIATE_TEST_SUITE_P(Dialogs, GermanWindowTest, testing::ValuesIn(sample::dialogs()), sample::name_of);
INSTANTIATE_TEST_SUITE_P(Window, GermanWordsTest, testing::ValuesIn(with_words_of_the_window()), sample::name_of);

QString letter_of(const QString& text) {
  const auto keys = QKeySequence::mnemonic(text);
  return keys.isEmpty() ? QString() : keys.toString();
}

void expect_letters_differ(const QString& menu, const QList<QAction*>& actions) {
  QMap<QString, QString> seen;
  for (const QAction* action : actions) {
    const QString letter = letter_of(action->text());
    if (letter.isEmpty()) continue;
    EXPECT_FALSE(seen.contains(letter)) << menu.toStdString() << ": " << action->text().toStdString() << ", " << seen[letter].toStdString();
    seen[letter] = action->text();
  }
}

class LettersTest : public testing::TestWithParam<const char*> {
 protected:
  LettersTest() { speak(QString::fromLatin1(GetParam()), QLocale(QString::fromLatin1(GetParam()))); }
  ~LettersTest() override { speak(QStringLiteral("en"), QLocale::c()); }
};

// On a page of the window, the letters of its menus and of its buttons reach one thing each.
TEST_P(LettersTest, StandOnceInEveryMenuAndOnThePage) {
  MainWindow window;
  window.show();
  window.document().open(sample::job(), {});
  ASSERT_TRUE(sample::waited_for([&] { return !window.planner().is_busy() && window.way_table()->row() >= 0; }, 60000));
  for (const auto* menu : window.findChildren<QMenu*>()) {
    emit const_cast<QMenu*>(menu)->aboutToShow();
    expect_letters_differ(menu->title(), menu->actions());
  }
  QMap<QString, QString> seen;
  QStringList texts;
  for (const auto* action : window.menuBar()->actions()) texts << action->text();
  for (const auto* button : window.findChildren<QAbstractButton*>())
    if (button->isVisible()) texts << button->text();
  for (const auto* label : window.findChildren<QLabel*>())
    if (label->isVisible() && label->buddy()) texts << label->text();
  for (const QString& text : texts) {
    const QString letter = letter_of(text);
    if (letter.isEmpty()) continue;
    EXPECT_FALSE(seen.contains(letter)) << text.toStdString() << ", " << seen[letter].toStdString();
    seen[letter] = text;
  }
  EXPECT_GE(seen.size(), 10);
}

INSTANTIATE_TEST_SUITE_P(Languages, LettersTest, testing::Values("en", "de"),
                         [](const auto& language) { return std::string(language.param); });

}  // namespace
}  // namespace foldyard
