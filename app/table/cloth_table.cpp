#include "table/cloth_table.h"

#include <QLabel>
#include <QStackedLayout>
#include <QVBoxLayout>

#include <algorithm>

namespace foldyard {

// What lies on the table while no cloth does.
class ClothTable::Empty : public QLabel {
 public:
  explicit Empty(QWidget* parent) : QLabel(parent) {
    setAlignment(Qt::AlignCenter);
    setWordWrap(true);
    setMargin(24);
  }
};

ClothTable::ClothTable(QWidget* parent)
    : QWidget(parent), flat_(new BoardView(Side::flat, tr("Flat cloth"))),
      folded_(new BoardView(Side::folded, tr("Folded cloth on the table"))), section_(new SectionStrip),
      split_(new QSplitter(Qt::Horizontal)), empty_(new Empty(this)) {
  split_->setChildrenCollapsible(false);
  split_->addWidget(flat_);
  split_->addWidget(folded_);
  auto* laid = new QWidget;
  auto* column = new QVBoxLayout(laid);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  column->addWidget(split_, 1);
  column->addWidget(section_);
  auto* layers = new QStackedLayout(this);
  layers->addWidget(empty_);
  layers->addWidget(laid);
  for (BoardView* view : {flat_, folded_}) {
    view->setAcceptDrops(false);  // whoever holds the table takes what is dropped on it
    view->viewport()->setAcceptDrops(false);
    connect(view, &BoardView::line_taken, this, &ClothTable::line_taken);
    connect(view, &BoardView::line_moved, this, &ClothTable::line_moved);
    connect(view, &BoardView::line_left, this, &ClothTable::line_left);
    connect(view, &BoardView::line_stepped, this, &ClothTable::line_stepped);
    connect(view, &BoardView::pin_toggled, this, &ClothTable::pin_toggled);
    connect(view, &BoardView::menu_wanted, this, &ClothTable::menu_wanted);
  }
  connect(folded_, &BoardView::pointed, this, [this](int patch, Length, Length along) { light(patch, along); });
  connect(flat_, &BoardView::pointed, this, [this](int patch, Length, Length along) {
    const LaidClothPtr& cloth = flat_->cloth();
    light(patch, cloth && patch >= 0 ? cloth->map.along.fold(std::clamp(along, Length(), cloth->cloth().length))
                                     : Length());
  });
}

void ClothTable::show_cloth(const LaidClothPtr& cloth) {
  flat_->show_cloth(cloth);
  folded_->show_cloth(cloth);
  section_->show_cloth(cloth);
  static_cast<QStackedLayout*>(layout())->setCurrentIndex(cloth ? 1 : 0);
  if (cloth) share_room();
}

// Flat and folded cloth at about the same scale: room by width.
void ClothTable::share_room() {
  const LaidCloth& cloth = *folded_->cloth();
  const double flat = cloth.flat().across.to.in_mm(), folded = cloth.job->table.depth.in_mm();
  const int whole = std::max(2, split_->width());
  const int left = std::clamp(static_cast<int>(whole * flat / (flat + folded)), whole / 4, whole / 2);
  split_->setSizes({left, whole - left});
}

void ClothTable::light(int patch, Length along_folded) {
  flat_->light(patch);
  folded_->light(patch);
  if (patch >= 0) section_->show_place(along_folded, patch);
}

void ClothTable::set_dark(bool dark) {
  flat_->set_dark(dark);
  folded_->set_dark(dark);
}

void ClothTable::set_measuring(bool on) {
  flat_->set_measuring(on);
  folded_->set_measuring(on);
}

void ClothTable::set_lines_movable(bool on) { flat_->set_line_movable(on); }
void ClothTable::set_empty_words(const QString& words) { empty_->setText(words); }

BoardView* ClothTable::active() const { return flat_->hasFocus() ? flat_ : folded_; }
void ClothTable::zoom_in() { active()->zoom_in(); }
void ClothTable::zoom_out() { active()->zoom_out(); }

void ClothTable::fit() {
  flat_->fit();
  folded_->fit();
}

}  // namespace foldyard
