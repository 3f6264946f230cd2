// The pages in German: their words and numbers, and that longer words still
// find room.

#include <gtest/gtest.h>

#include "app/drawing/paper_probe.h"
#include "app/drawing/plain_words.h"
#include "app/drawing/sample_plans.h"
#include "drawing/cut_list.h"
#include "drawing/pattern_data.h"
#include "drawing/words.h"
#include "job/cautions.h"
#include "language/language.h"
#include "language/spoken.h"

namespace foldyard {
namespace {

class GermanPages : public testing::Test {
 protected:
  void SetUp() override { speak(QStringLiteral("de"), QLocale::c()); }
  void TearDown() override { speak(QStringLiteral("en"), QLocale::c()); }
};

TEST_F(GermanPages, WriteNumbersWithAComma) {
  EXPECT_EQ(plain(length_words(Length::mm(451), Unit::cm)), "45,1 cm");
  EXPECT_EQ(plain(size_words(Length::mm(315), Length::mm(1480), Unit::cm)), "31,5 × 148 cm");
  EXPECT_EQ(plain(worth_words(Worth::parts(25'000))), "2,50");
  EXPECT_EQ(plain(use_words(Length::mm(1) * Length::mm(1), Length::mm(2) * Length::mm(4))), "12,5 %");
}

TEST_F(GermanPages, SayTheAnswer) {
  const samples::Sample sample = samples::carriers();
  EXPECT_EQ(plain(answer_words(sample.job, sample.plan())),
            "42 × Carrier. Faltung: Webkante auf Webkante; abgelängt: 14 Bahnen von 90 cm; 7 Stapel, 21 Schnitte, "
            "42 min. 84,0 % des Stoffs werden zu Teilen; es bleibt ein Abschnitt von 150 × 14 cm.");
  EXPECT_EQ(plain(lays_words(samples::both_edges_in().plan(), 0)), "4 Stapeln mit 3 und 1 mit 2");
}

TEST_F(GermanPages, SayEveryCautionInGerman) {
  const samples::Sample sample = samples::carriers();
  for (const std::string_view caution : cautions()) EXPECT_NE(spoken(caution).toStdString(), caution);
  const auto lines = caution_lines(pattern_data(sample.job, sample.plan(), 0));
  EXPECT_EQ(lines.size(), cautions().size() + 2);  // a heading, and the height
  EXPECT_NE(spoken(height_caution(sample.job)).toStdString(), height_caution(sample.job).english());
}

// 5 mm: what most printers leave blank; common practice, no source.
void expect_inside(const probe::Page& page) {
  const QRectF area = QRectF(QPointF(), page.size).adjusted(5, 5, -5, -5);
  for (const auto& word : page.words) EXPECT_TRUE(area.contains(word.box)) << word.text.toStdString();
}

QStringList cut_off(const std::vector<probe::Page>& pages) {
  QStringList words;
  for (const auto& page : pages)
    for (const auto& word : page.words)
      if (word.text.endsWith(QChar(0x2026))) words << word.text;
  return words;
}

// Words of one line that run into each other.
int collisions(const std::vector<probe::Page>& pages) {
  int count = 0;
  for (const auto& page : pages)
    for (std::size_t i = 0; i < page.words.size(); ++i)
      for (std::size_t k = i + 1; k < page.words.size(); ++k) {
        const QRectF common = page.words[i].box & page.words[k].box;
        count += common.width() > 0.8 && common.height() > 1.2;
      }
  return count;
}

class GermanPaper : public GermanPages, public testing::WithParamInterface<Paper> {};

TEST_P(GermanPaper, HasRoomForTheLongerWords) {
  for (const samples::Sample& sample : samples::all()) {
    const auto german = probe::pdf_words(sheet_pdf(sample.sheet(GetParam())));
    speak(QStringLiteral("en"), QLocale::c());
    const auto english = probe::pdf_words(sheet_pdf(sample.sheet(GetParam())));
    speak(QStringLiteral("de"), QLocale::c());
    ASSERT_FALSE(german.empty());
    for (const auto& page : german) expect_inside(page);
    EXPECT_LE(cut_off(german).size(), cut_off(english).size())
        << sample.job.name << ": " << cut_off(german).join(QStringLiteral(" | ")).toStdString();
    EXPECT_LE(collisions(german), collisions(english)) << sample.job.name;
  }
}

INSTANTIATE_TEST_SUITE_P(Papers, GermanPaper, testing::Values(Paper::a4, Paper::letter),
                         [](const auto& paper) { return std::string(paper.param == Paper::a4 ? "A4" : "Letter"); });

}  // namespace
}  // namespace foldyard
