#pragma once

// A picture on paper that fits the window, or is looked at from near by.
//
// At zoom 1 the picture fits the view, or the least size at which it can be
// read; nearer, its paper is larger than the
// view and scrolls (arrow keys too) while words keep their size. Paper stays
// light in the dark window.

#include <QScrollArea>

#include <functional>

class QPainter;

namespace foldyard {

class PictureView : public QScrollArea {
  Q_OBJECT

 public:
  // Paints into the area, in pixels.
  using Paint = std::function<void(QPainter&, const QRectF& area)>;

  explicit PictureView(const QString& name, QWidget* parent = nullptr);
  // No picture is made smaller than this; the view scrolls instead.
  static constexpr QSize kLeast{420, 600};

  // words: the picture told for those who do not see it.
  void show(Paint paint, const QString& words);
  double zoom() const { return zoom_; }

 public slots:
  void zoom_in();
  void zoom_out();
  void fit();

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;

 private:
  class Paper;
  void set_zoom(double zoom);
  void size_paper();

  Paper* paper_;
  double zoom_ = 1;
};

}  // namespace foldyard
