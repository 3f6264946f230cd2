#include "drawing/actual_size.h"

#include <gtest/gtest.h>

#include "app/drawing/paper_probe.h"
#include "app/drawing/sample_plans.h"

namespace foldyard {
namespace {

const QByteArray kWish = "/ViewerPreferences << /PrintScaling /None >>";

const QByteArray& wished() {
  static const QByteArray pdf = sheet_pdf(samples::both_edges_in().sheet(Paper::a4));
  return pdf;
}

// The wish cut out again, but no place moved back.
QByteArray damaged() { return QByteArray(wished()).replace("\n" + kWish, ""); }

TEST(AtActualSize, TheCatalogAsksForNoScaling) {
  EXPECT_EQ(wished().count(kWish), 1);
  EXPECT_LT(wished().indexOf("/Type /Catalog"), wished().indexOf(kWish));
}

TEST(AtActualSize, LeavesASoundFile) {
  EXPECT_EQ(probe::pdf_complaints(wished()), QByteArray());
  EXPECT_FALSE(probe::pdf_page(wished(), 1).isNull());
}

// How many lines of the table do not lead to their object.
int wrong_places(const QByteArray& pdf) {
  const qsizetype table = pdf.lastIndexOf("xref\n0 ");
  const QList<QByteArray> lines = pdf.mid(table).split('\n');
  const int count = lines[1].split(' ')[1].toInt();
  int wrong = pdf.mid(pdf.lastIndexOf("startxref\n") + 10).split(' ')[0].toLongLong() != table;
  for (int i = 1; i < count; ++i)
    wrong += !pdf.mid(lines[i + 2].left(10).toLongLong()).startsWith(QByteArray::number(i) + " 0 obj\n");
  return count > 10 ? wrong : -1;
}

TEST(AtActualSize, EveryPlaceOfTheTableHolds) {
  EXPECT_EQ(wrong_places(wished()), 0);
  EXPECT_GT(wrong_places(damaged()), 10);
}

TEST(AtActualSize, IsAskedForOnce) { EXPECT_EQ(at_actual_size(wished()), wished()); }

TEST(AtActualSize, LeavesWhatItDoesNotUnderstand) {
  const QByteArray appended = wished() + "1 0 obj\nendobj\nstartxref\n0\n%%EOF\n";
  for (const QByteArray& bytes : {QByteArray(), QByteArray("%PDF-1.4\n%%EOF\n"), damaged(), appended,
                                  wished().left(wished().size() / 2), QByteArray("startxref\n99999999999999\n")})
    EXPECT_EQ(at_actual_size(bytes), bytes);
}

// A made-up document: two objects behind the catalog, one unused entry.
TEST(AtActualSize, MovesWhatLiesBehindTheCatalog) {
  QByteArray pdf = "%PDF-1.4\n";
  std::vector<qsizetype> at;
  for (const QByteArray& object : {QByteArray("1 0 obj\n<< /A 1 >>\nendobj\n"), QByteArray("2 0 obj\n<<\n/Type /Catalog\n/Pages 3 0 R\n>>\nendobj\n"),
                                   QByteArray("3 0 obj\n<< /Type /Pages /Kids [] /Count 0 >>\nendobj\n")}) {
    at.push_back(pdf.size());
    pdf += object;
  }
  const qsizetype table = pdf.size();
  pdf += "xref\n0 4\n0000000000 65535 f \n";
  for (const qsizetype place : at) pdf += QByteArray::number(place).rightJustified(10, '0') + " 00000 n \n";
  pdf += "trailer\n<<\n/Size 4 \n/Root 2 0 R\n>>\nstartxref\n" + QByteArray::number(table) + " \n%%EOF\n";
  const QByteArray changed = at_actual_size(pdf);
  const qsizetype longer = kWish.size() + 1;
  EXPECT_EQ(changed.size(), pdf.size() + longer);
  EXPECT_EQ(changed.indexOf("3 0 obj"), at[2] + longer);
  EXPECT_TRUE(changed.contains(QByteArray::number(at[2] + longer).rightJustified(10, '0') + " 00000 n"));
  EXPECT_TRUE(changed.contains(QByteArray::number(at[1]).rightJustified(10, '0') + " 00000 n"));
  EXPECT_TRUE(changed.contains("startxref\n" + QByteArray::number(table + longer) + " "));
}

}  // namespace
}  // namespace foldyard
