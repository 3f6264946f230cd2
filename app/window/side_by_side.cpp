#include "window/side_by_side.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>
#include <QTimer>
#include <QVBoxLayout>
#include <QWheelEvent>

#include <algorithm>

#include "drawing/words.h"
#include "fields/reading_order.h"
#include "measure/index.h"
#include "table/board_colours.h"
#include "table/cloth_item.h"
#include "window/pinned_ways.h"

namespace foldyard {
namespace {

constexpr double kBetween = 60;  // millimetres of cloth between flat and folded
constexpr int kRim = 12;     // pixels around both

}  // namespace

class ClothPair::Items {
 public:
  ClothItem* flat = new ClothItem(Side::flat);
  ClothItem* folded = new ClothItem(Side::folded);
};

ClothPair::ClothPair(QWidget* parent) : QGraphicsView(parent), items_(std::make_unique<Items>()) {
  auto* scene = new QGraphicsScene(this);
  scene->addItem(items_->flat);
  scene->addItem(items_->folded);
  setScene(scene);
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setFocusPolicy(Qt::StrongFocus);
  viewport()->setFocusPolicy(Qt::NoFocus);
  setMinimumSize(120, 120);
}

ClothPair::~ClothPair() = default;

void ClothPair::show_cloth(const LaidClothPtr& cloth) {
  items_->flat->show(cloth);
  items_->folded->show(cloth);
}

void ClothPair::set_dark(bool dark) {
  dark_ = dark;
  items_->flat->set_dark(dark);
  items_->folded->set_dark(dark);
  viewport()->update();
}

QSizeF ClothPair::size_of(bool stacked) const {
  const LaidClothPtr& cloth = items_->flat->cloth();
  if (!cloth) return {1, 1};
  const QSizeF a = scene_rect(cloth->flat()).size(), b = scene_rect(cloth->folded()).size();
  return stacked ? QSizeF(std::max(a.width(), b.width()), a.height() + kBetween + b.height())
                 : QSizeF(a.width() + kBetween + b.width(), std::max(a.height(), b.height()));
}

double ClothPair::best_scale(bool stacked) const {
  const QSizeF size = size_of(stacked);
  return std::max(1e-3, std::min((viewport()->width() - 2 * kRim) / size.width(), (viewport()->height() - 2 * kRim) / size.height()));
}

// The near ends stand on one line; stacked, the folded cloth lies below.
void ClothPair::set_scale(double scale, bool stacked) {
  scale_ = scale;
  const LaidClothPtr& cloth = items_->flat->cloth();
  if (!cloth) return;
  const QSizeF size = size_of(stacked), flat = scene_rect(cloth->flat()).size(), folded = scene_rect(cloth->folded()).size();
  items_->flat->setPos(0, stacked ? -folded.height() - kBetween : 0);
  items_->folded->setPos(stacked ? 0 : flat.width() + kBetween, 0);
  const double rim = kRim / scale;
  setTransform(QTransform::fromScale(scale, scale));
  scene()->setSceneRect(QRectF(0, -size.height(), size.width(), size.height()).adjusted(-rim, -rim, rim, rim));
  setAlignment(Qt::AlignHCenter | Qt::AlignBottom);
  viewport()->update();
}

void ClothPair::drawBackground(QPainter* painter, const QRectF& rect) { painter->fillRect(rect, board_colours(dark_).board); }

void ClothPair::drawForeground(QPainter* painter, const QRectF&) {
  if (!hasFocus()) return;
  painter->save();
  painter->setWorldTransform(QTransform());
  painter->setPen(QPen(palette().color(QPalette::Highlight), 2));
  painter->setBrush(Qt::NoBrush);
  painter->drawRect(viewport()->rect().adjusted(1, 1, -1, -1));
  painter->restore();
}

// All stay at one scale.
void ClothPair::wheelEvent(QWheelEvent* event) { event->ignore(); }

SideBySide::SideBySide(QWidget* parent) : QWidget(parent) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(8);
  for (std::size_t i = 0; i < PinnedWays::kMost; ++i) add_column();
}

void SideBySide::add_column() {
  Column column{new QWidget, new QLabel, new QLabel, new ClothPair};
  auto* layout = new QVBoxLayout(column.whole);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(2);
  QFont bold = column.name->font();
  bold.setBold(true);
  column.name->setFont(bold);
  for (QLabel* label : {column.name, column.figures}) {
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    label->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    layout->addWidget(label);
  }
  layout->addWidget(column.cloth, 1);
  static_cast<QHBoxLayout*>(this->layout())->addWidget(column.whole, 1);
  columns_.push_back(column);
}

void SideBySide::show_plans(const std::vector<ComparedPlan>& plans) {
  count_ = static_cast<int>(std::min(plans.size(), columns_.size()));
  for (int i = 0; i < std::ssize(columns_); ++i) {
    columns_[ix(i)].whole->setVisible(i < count_);
    if (i < count_) show_column(i, plans[ix(i)], plans.front());
  }
  share_scale();
  QTimer::singleShot(0, this, &SideBySide::share_scale);  // once the words have their room
}

void SideBySide::show_column(int at, const ComparedPlan& compared, const ComparedPlan& first) {
  Column& column = columns_[ix(at)];
  column.name->setText(compared.name);
  const auto figures = figures_of(*compared.job, *compared.plan);
  const auto differ = differences(*compared.job, *compared.plan, *first.plan);
  const QString words[] = {tr("%n panel(s)", nullptr, figures[Figures::panels].toInt()), tr("%1 used").arg(figures[Figures::use]),
                           tr("%1 waste").arg(figures[Figures::waste]), figures[Figures::minutes]};
  QStringList lines;
  for (std::size_t i = 0; i < figures.size(); ++i)
    lines << in_own_order(words[i] + (at == 0 ? QString() : QStringLiteral(" (%1)").arg(differ[i])));
  column.figures->setText(lines.join(QStringLiteral("  ·  ")) + QLatin1Char('\n') + proof_words(*compared.plan));
  column.cloth->setAccessibleName(compared.name);
  column.cloth->setAccessibleDescription(column.figures->text());
  column.cloth->show_cloth(compared.plan->patterns.empty() ? nullptr : lay_cloth(compared.job, compared.plan, 0));
}

// Flat and folded beside or above each other, whichever lets all be larger.
void SideBySide::share_scale() {
  if (count_ == 0) return;
  const auto least = [&](bool stacked) {
    double scale = 1e9;
    for (int i = 0; i < count_; ++i) scale = std::min(scale, columns_[ix(i)].cloth->best_scale(stacked));
    return scale;
  };
  const bool stacked = least(true) > least(false);
  const double scale = least(stacked);
  for (int i = 0; i < count_; ++i) columns_[ix(i)].cloth->set_scale(scale, stacked);
}

void SideBySide::set_dark(bool dark) {
  for (Column& column : columns_) column.cloth->set_dark(dark);
}

void SideBySide::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  layout()->activate();
  share_scale();
  QTimer::singleShot(0, this, &SideBySide::share_scale);
}

void SideBySide::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  layout()->activate();
  share_scale();
  QTimer::singleShot(0, this, &SideBySide::share_scale);
}

void SideBySide::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) return emit left();
  QWidget::keyPressEvent(event);
}

}  // namespace foldyard
