#include "window/way_cards.h"

#include <QApplication>
#include <QCoreApplication>
#include <QMouseEvent>
#include <QPainter>
#include <QStyledItemDelegate>

#include <algorithm>

#include "drawing/words.h"
#include "fields/reading_order.h"
#include "measure/index.h"
#include "table/small_cloth.h"
#include "window/cloth_style.h"
#include "window/window_colours.h"

namespace foldyard {
namespace {

constexpr int kPicture = 84;   // pixels kept for the cloth
constexpr int kTallest = 128;  // of the cloth
constexpr int kGap = 8;
constexpr int kNameLines = 4;
constexpr int kFigureLines = 4;
constexpr int kPin = 26;       // the corner that takes a press

int least_height(const QFontMetrics& metrics) {
  return std::max(kTallest, (kNameLines + kFigureLines) * (metrics.height() + 1) + 3);
}

QRect pin_corner(const QRect& card) { return {card.right() - kPin - 3, card.top() + 3, kPin, kPin}; }

QString text_of(const WayModel& ways, int row, int column) { return ways.index(row, column).data().toString(); }

// "−4.50": what this way gives up against the best one.
QString given_up(const WayModel& ways, int row) {
  const Plan &plan = *ways.plan(row), &best = *ways.plan(0);
  const bool by_worth = plan.aim == Aim::most_worth;
  const std::int64_t less = (by_worth ? best.worth.parts() - plan.worth.parts() : best.net.parts() - plan.net.parts());
  return less > 0 ? QStringLiteral("−") + worth_words(Worth::parts(less)) : WayCards::tr("best");
}

class CardDelegate : public QStyledItemDelegate {
  Q_DECLARE_TR_FUNCTIONS(foldyard::CardDelegate)

 public:
  explicit CardDelegate(WayCards* cards) : QStyledItemDelegate(cards), cards_(cards) {}

  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const override {
    return {kPicture + 12 * option.fontMetrics.averageCharWidth() + 3 * kGap + 30, least_height(option.fontMetrics) + 2 * kGap};
  }

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const bool chosen = option.state & QStyle::State_Selected;
    const QRectF card = QRectF(option.rect).adjusted(3, 2, -3, -2);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    const auto& colours = window_colours(shade_of(QApplication::palette()));
    painter->setPen(QPen(chosen ? colours.chalk : colours.soft_ink, chosen ? 3 : 1));
    painter->setBrush(colours.field);
    painter->drawRoundedRect(card, 5, 5);
    const QRectF inside = card.adjusted(kGap, kGap, -kGap, -kGap);
    if (cards_->cloth(index.row())) {
      paint_plan(*painter, option, inside, index.row());
      if (cards_->has_pins()) paint_pin(*painter, pin_corner(option.rect), cards_->is_pinned(index.row()));
    } else paint_refused(*painter, option, inside, index.row());
    painter->restore();
  }

 private:
  void paint_plan(QPainter& painter, const QStyleOptionViewItem& option, const QRectF& inside, int row) const {
    const WayModel& ways = *cards_->ways();
    QRectF picture = inside;
    picture.setWidth(kPicture);
    painter.setRenderHint(QPainter::Antialiasing, false);
    paint_small_cloth(painter, picture, *cards_->cloth(row), cards_->pixels_per_mm());
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF words = inside.adjusted(kPicture + kGap, 0, 0, 0);
    const double used = paint_name(painter, option, words.adjusted(0, 0, cards_->has_pins() ? kGap - kPin : 0, 0), row);
    const auto& colours = window_colours(shade_of(QApplication::palette()));
    const QStringList lines = {tr("%n panel(s)", nullptr, text_of(ways, row, WayModel::panels).toInt()), text_of(ways, row, WayModel::use),
                               text_of(ways, row, WayModel::time), given_up(ways, row)};
    double y = words.top() + used + 3;
    for (int i = 0; i < lines.size(); ++i) {
      painter.setPen(i < 3 ? colours.ink : colours.soft_ink);
      painter.drawText(QRectF(words.left(), y, words.width(), option.fontMetrics.height()), Qt::AlignLeft, in_own_order(lines[i]));
      y += option.fontMetrics.height() + 1;
    }
    if (ways.on_frontier(row))
      draw_chalk_mark(painter, QPointF(words.right() - 5, words.bottom() - 7), colours.chalk);
  }

  // A drawing pin seen from above: pinned, its head is full and has a shaft.
  static void paint_pin(QPainter& painter, const QRectF& box, bool pinned) {
    const auto& colours = window_colours(shade_of(QApplication::palette()));
    const QPointF head = box.center() - QPointF(0, 3);
    painter.setPen(QPen(pinned ? colours.chalk : colours.soft_ink, 1.6));
    painter.drawLine(head + QPointF(0, 5), head + QPointF(0, pinned ? 12 : 9));
    painter.setBrush(pinned ? QBrush(colours.chalk) : QBrush(Qt::NoBrush));
    painter.drawEllipse(head, 5, 5);
    if (pinned) painter.drawLine(head + QPointF(-6, 8), head + QPointF(6, 8));
  }

  // Drawn closer where a word is too long for its line.
  static QFont fitting(QFont font, const QString& name, double width) {
    double widest = 1;
    for (const QString& word : name.split(QLatin1Char(' '))) widest = std::max(widest, QFontMetricsF(font).horizontalAdvance(word));
    if (widest > width) font.setStretch(std::max(60, static_cast<int>(100 * width / widest)));
    return font;
  }

  double paint_name(QPainter& painter, const QStyleOptionViewItem& option, const QRectF& words, int row) const {
    QFont bold = option.font;
    bold.setBold(true);
    const QString name = text_of(*cards_->ways(), row, WayModel::way);
    bold = fitting(bold, name, words.width());
    painter.setFont(bold);
    const QFontMetrics metrics(bold);
    const QRectF room(words.left(), words.top(), words.width(), kNameLines * metrics.height());
    painter.setPen(window_colours(shade_of(QApplication::palette())).ink);
    QRectF used;
    painter.drawText(room, Qt::AlignLeft | Qt::TextWordWrap, name, &used);
    painter.setFont(option.font);
    return std::min(used.height(), room.height());
  }

  void paint_refused(QPainter& painter, const QStyleOptionViewItem& option, const QRectF& inside, int row) const {
    const double used = paint_name(painter, option, inside, row);
    painter.setPen(window_colours(shade_of(QApplication::palette())).soft_ink);
    painter.drawText(inside.adjusted(0, used + 3, 0, 0), Qt::AlignLeft | Qt::TextWordWrap, cards_->ways()->refused(row));
  }

  WayCards* cards_;
};

}  // namespace

WayCards::WayCards(WayTable* table, QWidget* parent) : QListView(parent), ways_(table->ways()) {
  setAccessibleName(tr("Fold ways side by side"));
  setFlow(LeftToRight);
  setWrapping(false);
  setUniformItemSizes(true);
  setHorizontalScrollMode(ScrollPerPixel);
  setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setEditTriggers(NoEditTriggers);
  setModel(ways_);
  setSelectionModel(table->selectionModel());
  setItemDelegate(new CardDelegate(this));
  connect(ways_, &QAbstractItemModel::modelAboutToBeReset, this, [this] { cloths_.clear(); });
  setFixedHeight(sizeHint().height());
}

void WayCards::set_pinned(const PinnedWays* pinned) {
  pinned_ = pinned;
  connect(pinned, &PinnedWays::changed, this, [this] { viewport()->update(); });
}

QRect WayCards::pin_box(int row) const { return pin_corner(visualRect(ways_->index(row, 0))); }

void WayCards::mousePressEvent(QMouseEvent* event) {
  const QModelIndex index = indexAt(event->pos());
  const bool on_pin = index.isValid() && pinned_ && cloth(index.row()) && pin_box(index.row()).contains(event->pos());
  if (on_pin && event->button() == Qt::LeftButton) return emit pin_pressed(index.row());
  QListView::mousePressEvent(event);
}

QSize WayCards::sizeHint() const { return {600, least_height(fontMetrics()) + 2 * kGap + 2 * frameWidth() + 20}; }

void WayCards::show_answer(const AnswerPtr& answer) {
  cloths_.assign(static_cast<std::size_t>(ways_->rowCount()), nullptr);
  double longest = 1, widest = 1;
  const std::shared_ptr<const Job> job(answer, &answer->job);
  for (int row = 0; row < ways_->rowCount(); ++row) {
    const Plan* plan = ways_->plan(row);
    if (!plan || plan->patterns.empty()) continue;
    const auto cloth = lay_cloth(job, std::shared_ptr<const Plan>(answer, plan), 0);
    longest = std::max(longest, cloth->folded().along.to.in_mm());
    widest = std::max(widest, cloth->folded().across.to.in_mm());
    cloths_[ix(row)] = cloth;
  }
  pixels_per_mm_ = std::min(kTallest / longest, kPicture / widest);
  viewport()->update();
}

}  // namespace foldyard
