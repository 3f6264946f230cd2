#pragma once

// The pages of a sheet as they will be printed, one below the other, on white
// paper in the dark window too.
//
// They are as wide as the view; nearer (+, − and 0, or Ctrl and the wheel) they
// scroll both ways. A page is painted when it is first seen. Arrow and page keys
// scroll.

#include <QScrollArea>
#include <memory>

#include "drawing/sheet.h"

namespace foldyard {

class PageColumn : public QScrollArea {
  Q_OBJECT

 public:
  explicit PageColumn(QWidget* parent = nullptr);

  void show_pages(std::shared_ptr<const Sheet> sheet, PageRange range);
  // The page at the middle of the view, counted in the sheet; −1 without any.
  int page_in_view() const;
  double zoom() const { return zoom_; }
  // Where the n-th page shown stands in the column, in pixels.
  QRect place(int shown) const;

 public slots:
  void zoom_in();
  void zoom_out();
  void fit();

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  class Paper;
  void set_zoom(double zoom);
  void size_paper();
  void tell();

  Paper* paper_;
  double zoom_ = 1;
};

}  // namespace foldyard
