#include "printing/page_column.h"

#include <QKeyEvent>
#include <QPaintEvent>
#include <QPainter>
#include <QPixmap>
#include <QScrollBar>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>
#include <map>

#include "drawing/palette.h"
#include "measure/index.h"

namespace foldyard {
namespace {

constexpr int kGap = 14;
constexpr double kStep = 1.25;
constexpr double kNearest = 5;

}  // namespace

class PageColumn::Paper : public QWidget {
 public:
  using QWidget::QWidget;

  void show_pages(std::shared_ptr<const Sheet> sheet, std::vector<int> pages) {
    sheet_ = std::move(sheet);
    pages_ = std::move(pages);
    painted_.clear();
    update();
  }

  const std::vector<int>& pages() const { return pages_; }
  const Sheet* sheet() const { return sheet_.get(); }

  void take_width(int width) {
    painted_.clear();
    const QSize page = page_size(width);
    const int count = static_cast<int>(pages_.size());
    resize(width, count * (page.height() + kGap) + kGap);
    update();
  }

  QRect place(int shown) const {
    const QSize page = page_size(width());
    return {QPoint(kGap, kGap + shown * (page.height() + kGap)), page};
  }

 protected:
  void paintEvent(QPaintEvent* event) override {
    QPainter painter(this);
    for (int i = 0; i < static_cast<int>(pages_.size()); ++i) {
      const QRect page = place(i);
      if (!page.adjusted(-1, -1, 1, 1).intersects(event->rect())) continue;
      painter.drawPixmap(page.topLeft(), painted(i));
      painter.setPen(palette().color(QPalette::Mid));
      painter.setBrush(Qt::NoBrush);
      painter.drawRect(page.adjusted(-1, -1, 0, 0));
    }
  }

 private:
  QSize page_size(int width) const {
    const QSizeF mm = sheet_ ? sheet_->page_size_mm() : QSizeF(210, 297);
    const int wide = std::max(40, width - 2 * kGap);
    return {wide, static_cast<int>(std::lround(wide * mm.height() / mm.width()))};
  }

  const QPixmap& painted(int shown) {
    QPixmap& kept = painted_[shown];
    if (kept.isNull()) kept = paint_page(pages_[ix(shown)]);
    return kept;
  }

  QPixmap paint_page(int page) const {
    const QSize size = page_size(width());
    const double ratio = devicePixelRatioF();
    QPixmap pixmap(size * ratio);
    pixmap.setDevicePixelRatio(ratio);
    pixmap.fill(palette::paper());
    QPainter painter(&pixmap);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    const double dots_per_mm = size.width() / sheet_->page_size_mm().width();
    painter.scale(dots_per_mm, dots_per_mm);
    sheet_->paint(painter, page);
    return pixmap;
  }

  std::shared_ptr<const Sheet> sheet_;
  std::vector<int> pages_;
  std::map<int, QPixmap> painted_;
};

PageColumn::PageColumn(QWidget* parent) : QScrollArea(parent), paper_(new Paper(this)) {
  setWidget(paper_);
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("The pages"));
  setMinimumSize(220, 160);
  // Fixed, so that the width of a page does not depend on the height of all.
  setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
  connect(verticalScrollBar(), &QScrollBar::valueChanged, this, &PageColumn::tell);
}

void PageColumn::show_pages(std::shared_ptr<const Sheet> sheet, PageRange range) {
  std::vector<int> pages = sheet ? pages_in(*sheet, range) : std::vector<int>();
  paper_->show_pages(std::move(sheet), std::move(pages));
  size_paper();
  tell();
}

int PageColumn::page_in_view() const {
  const auto& pages = paper_->pages();
  const int middle = verticalScrollBar()->value() + viewport()->height() / 2;
  for (int i = 0; i < static_cast<int>(pages.size()); ++i)
    if (place(i).bottom() + kGap > middle) return pages[ix(i)];
  return pages.empty() ? -1 : pages.back();
}

QRect PageColumn::place(int shown) const { return paper_->place(shown); }

void PageColumn::zoom_in() { set_zoom(zoom_ * kStep); }
void PageColumn::zoom_out() { set_zoom(zoom_ / kStep); }
void PageColumn::fit() { set_zoom(1); }

void PageColumn::set_zoom(double zoom) {
  const double from = verticalScrollBar()->maximum() > 0
                          ? double(verticalScrollBar()->value()) / verticalScrollBar()->maximum()
                          : 0;
  zoom_ = std::clamp(zoom, 1.0, kNearest);
  size_paper();
  verticalScrollBar()->setValue(static_cast<int>(from * verticalScrollBar()->maximum()));
}

void PageColumn::size_paper() {
  paper_->take_width(static_cast<int>(viewport()->width() * zoom_));
}

void PageColumn::tell() {
  const int page = page_in_view();
  setAccessibleDescription(page < 0 ? tr("No pages.")
                                    : tr("Page %1 of %2: %3")
                                          .arg(page + 1)
                                          .arg(paper_->sheet()->pages())
                                          .arg(paper_->sheet()->page_title(page)));
}

void PageColumn::resizeEvent(QResizeEvent* event) {
  QScrollArea::resizeEvent(event);
  size_paper();
}

void PageColumn::wheelEvent(QWheelEvent* event) {
  if (!(event->modifiers() & Qt::ControlModifier)) return QScrollArea::wheelEvent(event);
  event->angleDelta().y() > 0 ? zoom_in() : zoom_out();
  event->accept();
}

void PageColumn::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Plus:
    case Qt::Key_Equal: return zoom_in();
    case Qt::Key_Minus: return zoom_out();
    case Qt::Key_0: return fit();
    case Qt::Key_Home: return verticalScrollBar()->setValue(0);
    case Qt::Key_End: return verticalScrollBar()->setValue(verticalScrollBar()->maximum());
    default: QScrollArea::keyPressEvent(event);
  }
}

}  // namespace foldyard
