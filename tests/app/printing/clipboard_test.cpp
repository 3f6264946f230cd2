#include "printing/clipboard.h"

#include <gtest/gtest.h>

#include <QClipboard>
#include <QGuiApplication>
#include <QImage>

#include "app/drawing/sample_plans.h"

namespace foldyard {
namespace {

TEST(Clipboard, APictureIsAnImageAndSvg) {
  const samples::Sample sample = samples::carriers();
  ASSERT_TRUE(put_on_clipboard(picture_data({sample.job, sample.plan(), 0}, 96)));
  const QMimeData* data = QGuiApplication::clipboard()->mimeData();
  EXPECT_TRUE(data->hasImage());
  EXPECT_GT(qvariant_cast<QImage>(data->imageData()).width(), 400);
  EXPECT_TRUE(data->data(QStringLiteral("image/svg+xml")).contains("<svg"));
}

TEST(Clipboard, APageIsAnImageAndSvg) {
  const auto data = page_data(samples::carriers().sheet(Paper::a4), 1);
  ASSERT_TRUE(data);
  // A4 at 150 dots an inch: 1240 × 1754.
  EXPECT_EQ(qvariant_cast<QImage>(data->imageData()).size(), QSize(1240, 1754));
  EXPECT_FALSE(page_data(samples::carriers().sheet(Paper::a4), 99));
}

TEST(Clipboard, ATableIsTextWithTabsAndHtml) {
  const samples::Sample sample = samples::carriers();
  ASSERT_TRUE(put_on_clipboard(table_data(comparison_table(sample.job, sample.comparison))));
  const QMimeData* data = QGuiApplication::clipboard()->mimeData();
  EXPECT_TRUE(data->text().startsWith(QStringLiteral("fold way\t")));
  EXPECT_TRUE(data->html().contains(QStringLiteral("<table>")));
}

TEST(Clipboard, KeepsWhatItHasWhereThereIsNothingToCopy) {
  QGuiApplication::clipboard()->setText(QStringLiteral("before"));
  EXPECT_FALSE(put_on_clipboard(nullptr));
  EXPECT_EQ(QGuiApplication::clipboard()->text(), QStringLiteral("before"));
}

}  // namespace
}  // namespace foldyard
