#include "fields/length_field.h"

#include <QKeyEvent>
#include <QStyle>
#include <QVBoxLayout>

#include "fields/field_text.h"
#include "language/spoken.h"

namespace foldyard {
namespace {

// Long enough to type the unit after a number before its absence is told.
constexpr int kCalmMs = 500;

}  // namespace

LengthField::LengthField(const QString& name, QWidget* parent)
    : QWidget(parent), line_(new QLineEdit(this)), reason_(new QLabel(this)) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(2);
  layout->addWidget(line_);
  layout->addWidget(reason_);
  line_->setAccessibleName(name);
  line_->installEventFilter(this);
  reason_->setWordWrap(true);
  reason_->setProperty("fault", true);
  reason_->hide();
  calm_.setSingleShot(true);
  calm_.setInterval(kCalmMs);
  connect(&calm_, &QTimer::timeout, this, &LengthField::show_reason);
  connect(line_, &QLineEdit::textEdited, this, &LengthField::read);
  connect(line_, &QLineEdit::editingFinished, this, &LengthField::leave);
}

// The line loses the focus as it goes, and there is nobody left to be told.
LengthField::~LengthField() { line_->disconnect(this); }

void LengthField::show_length(Length length, Unit unit) {
  const bool is_news = length != length_ || unit != unit_;
  length_ = length;
  unit_ = unit;
  const auto shown = typed_length(line_->text(), unit);
  const bool same = shown && *shown == length;
  if (same) set_reason({});
  if (same && line_->isModified()) return;
  if (is_news || reason_text_.isEmpty() || line_->text().isEmpty()) take_back();
}

void LengthField::refuse(const QString& reason) { set_reason(reason); }

void LengthField::read() {
  const auto read = typed_length(line_->text(), unit_);
  if (!read) return set_reason(spoken(read.problem()));
  set_reason({});
  emit typed(*read);
}

void LengthField::leave() {
  show_reason();
  if (reason_text_.isEmpty()) line_->setText(length_text(length_, unit_));
  emit left();
}

void LengthField::take_back() {
  line_->setText(length_text(length_, unit_));
  set_reason({});
}

void LengthField::set_reason(const QString& reason) {
  reason_text_ = reason;
  line_->setAccessibleDescription(reason);
  if (reason.isEmpty() || reason_->isVisible()) return show_reason();
  calm_.start();
}

void LengthField::show_reason() {
  calm_.stop();
  reason_->setText(reason_text_);
  reason_->setVisible(!reason_text_.isEmpty());
  line_->setProperty("refused", !reason_text_.isEmpty());
  line_->style()->unpolish(line_);
  line_->style()->polish(line_);
}

void LengthField::escape() {
  length_ = entered_;
  take_back();
  emit typed(entered_);
}

bool LengthField::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::FocusIn) entered_ = length_;
  if (event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
  if (static_cast<QKeyEvent*>(event)->key() != Qt::Key_Escape) return false;
  escape();
  return true;
}

}  // namespace foldyard
