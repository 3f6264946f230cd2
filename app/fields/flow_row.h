#pragma once

// FlowRow: widgets one after the other in reading direction, on as many lines as
// the width needs. What comes after the gap stands at the end of the line while
// there is only one.
//
// Words of another language are longer, and a screen may be small: no line of
// buttons may decide how wide a window is. The least width is that of the widest
// widget.
//
// FlowBar: a widget of such a row that keeps as high as its lines, also where it
// lies in something that does not ask how high it is for its width (a splitter).
//
// Example: 100, 100 and 100 wide, 6 apart: one line in 312 and more, two in 311.

#include <QLayout>
#include <QWidget>

#include <vector>

namespace foldyard {

class FlowRow : public QLayout {
 public:
  explicit FlowRow(QWidget* parent = nullptr, int gap = 6);
  ~FlowRow() override;

  // What is added from now on stands at the end of a single line.
  void add_gap() { gap_before_ = count(); }

  // Widgets that stay together.
  void add(QLayout* group);

  void addItem(QLayoutItem* item) override { items_.push_back(item); }
  int count() const override { return static_cast<int>(items_.size()); }
  QLayoutItem* itemAt(int index) const override;
  QLayoutItem* takeAt(int index) override;
  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;
  QSize sizeHint() const override;
  QSize minimumSize() const override;
  Qt::Orientations expandingDirections() const override { return {}; }
  void setGeometry(const QRect& rect) override;

 private:
  struct Line {
    std::vector<int> items;
    int width = 0;
    int height = 0;
  };
  std::vector<Line> lines_for(int width) const;
  QSize around() const;
  void place(const Line& line, const QRect& room, bool only_one);

  std::vector<QLayoutItem*> items_;
  int gap_before_ = -1;
};

class FlowBar : public QWidget {
 public:
  explicit FlowBar(QWidget* parent = nullptr);
  FlowRow* row() const { return row_; }

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  FlowRow* row_;
};

}  // namespace foldyard
