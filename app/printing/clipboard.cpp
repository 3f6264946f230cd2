#include "printing/clipboard.h"

#include <QClipboard>
#include <QGuiApplication>

namespace foldyard {
namespace {

constexpr int kPageDots = 150;

std::unique_ptr<QMimeData> image_data(const QImage& image, const QByteArray& svg) {
  if (image.isNull() || svg.isEmpty()) return nullptr;
  auto data = std::make_unique<QMimeData>();
  data->setImageData(image);
  data->setData(QStringLiteral("image/svg+xml"), svg);
  return data;
}

}  // namespace

std::unique_ptr<QMimeData> picture_data(const CopiedPicture& picture, double dots_per_inch) {
  return image_data(picture.image(dots_per_inch), picture.svg());
}

std::unique_ptr<QMimeData> page_data(const Sheet& sheet, int page) {
  const PageRange one{page, page};
  return image_data(QImage::fromData(sheet_png(sheet, kPageDots, one)), sheet_svg(sheet, one));
}

std::unique_ptr<QMimeData> table_data(const CopiedTable& table) {
  auto data = std::make_unique<QMimeData>();
  data->setText(table.tab_text());
  data->setHtml(table.html());
  return data;
}

bool put_on_clipboard(std::unique_ptr<QMimeData> data) {
  if (!data) return false;
  QGuiApplication::clipboard()->setMimeData(data.release());
  return true;
}

}  // namespace foldyard
