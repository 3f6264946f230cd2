#include "table/roll_drop.h"

#include <QCoreApplication>
#include <QDropEvent>
#include <QMimeData>
#include <QWidget>

namespace foldyard {
namespace {

const QLatin1String kRoll("application/x-foldyard-roll");

constexpr int kFromTop = 10;  // pixels; below it the pointer and its picture are seen

QByteArray this_program() { return QByteArray::number(QCoreApplication::applicationPid()); }

}  // namespace

std::unique_ptr<QMimeData> roll_to_drag(int roll) {
  auto dragged = std::make_unique<QMimeData>();
  dragged->setData(kRoll, this_program() + ' ' + QByteArray::number(roll));
  return dragged;
}

std::optional<int> dragged_roll(const QMimeData& dragged) {
  const QList<QByteArray> words = dragged.data(kRoll).split(' ');
  if (words.size() != 2 || words[0] != this_program()) return std::nullopt;
  bool is_number = false;
  const int roll = words[1].toInt(&is_number);
  return is_number && roll >= 0 ? std::optional<int>(roll) : std::nullopt;
}

RollDrop::RollDrop(QWidget* place) : QObject(place), place_(place), hint_(new QLabel(tr("Let go to put the roll on the table"), place)) {
  place->setAcceptDrops(true);
  place->installEventFilter(this);
  hint_->setAttribute(Qt::WA_TransparentForMouseEvents);
  hint_->setAlignment(Qt::AlignCenter);
  hint_->setAutoFillBackground(true);
  hint_->setFrameStyle(QFrame::Box | QFrame::Plain);
  hint_->setLineWidth(3);
  hint_->setBackgroundRole(QPalette::Highlight);
  hint_->setForegroundRole(QPalette::HighlightedText);
  hint_->hide();
}

bool RollDrop::eventFilter(QObject* watched, QEvent* event) {
  switch (event->type()) {
    case QEvent::DragEnter:
    case QEvent::DragMove: return take(*static_cast<QDropEvent*>(event), false);
    case QEvent::Drop: return take(*static_cast<QDropEvent*>(event), true);
    case QEvent::DragLeave: hint_->hide(); return false;
    default: return QObject::eventFilter(watched, event);
  }
}

// What is no roll goes on to whoever may take it.
bool RollDrop::take(QDropEvent& event, bool let_go) {
  const auto roll = dragged_roll(*event.mimeData());
  if (!roll) return false;
  event.setDropAction(Qt::CopyAction);
  event.accept();
  const QSize size = hint_->sizeHint() + QSize(30, 20);
  hint_->setGeometry(QRect(QPoint((place_->width() - size.width()) / 2, kFromTop), size));
  hint_->setVisible(!let_go);
  hint_->raise();
  if (let_go) emit dropped(*roll);
  return true;
}

}  // namespace foldyard
