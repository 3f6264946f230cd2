#include "shelf/colour_choice.h"

#include <QColorDialog>
#include <QGridLayout>
#include <QPainter>

#include "measure/index.h"
#include "shelf/cloth_colours.h"
#include "shelf/swatch.h"

namespace foldyard {
namespace {

constexpr int kSide = 28;
constexpr int kInRow = 7;

// A piece of cloth to press; the chosen one, and the one with the focus, is framed.
class Swatch : public QToolButton {
 public:
  Swatch(const QString& name, const QString& value, QWidget* parent) : QToolButton(parent), value_(value) {
    setAccessibleName(name);
    setToolTip(name);
    setCheckable(true);
    setFixedSize(kSide + 6, kSide + 6);
    setFocusPolicy(Qt::StrongFocus);
  }
  const QString& value() const { return value_; }

 protected:
  void paintEvent(QPaintEvent*) override {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QColor ink = palette().color(QPalette::Text), chalk = palette().color(QPalette::Highlight);
    if (isChecked() || hasFocus()) {
      painter.setPen(QPen(isChecked() ? chalk : ink, isChecked() ? 3 : 1, hasFocus() ? Qt::DashLine : Qt::SolidLine));
      painter.drawRoundedRect(QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5), 3, 3);
    }
    paint_swatch(painter, QRectF(rect()).adjusted(5, 5, -5, -5), value_.toStdString(), ink);
  }

 private:
  QString value_;
};

}  // namespace

ColourChoice::ColourChoice(QWidget* parent)
    : QWidget(parent), asker_([this](const QString& now) -> std::optional<QString> {
        const QColor colour = QColorDialog::getColor(QColor(now), this, tr("Colour of the cloth"), QColorDialog::DontUseNativeDialog);
        return colour.isValid() ? std::optional<QString>(colour.name()) : std::nullopt;
      }),
      other_(new QPushButton(tr("Ot&her…"), this)) {
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setSpacing(2);
  for (const ClothColour& colour : cloth_colours()) add_swatch(colour.name, colour.value);
  for (int i = 0; i < static_cast<int>(swatches_.size()); ++i) grid->addWidget(swatches_[ix(i)], i / kInRow, i % kInRow);
  other_->setToolTip(tr("Any other colour; it is for pictures only"));
  grid->addWidget(other_, 0, kInRow, 2, 1, Qt::AlignVCenter);
  grid->setColumnStretch(kInRow + 1, 1);
  connect(other_, &QPushButton::clicked, this, &ColourChoice::ask);
}

void ColourChoice::add_swatch(const QString& name, const QString& value) {
  auto* swatch = new Swatch(name, value, this);
  swatches_.push_back(swatch);
  connect(swatch, &QToolButton::clicked, this, [this, value] { take(value); });
}

void ColourChoice::show_colour(const QString& colour) {
  colour_ = colour;
  bool is_ready = false;
  for (auto* button : swatches_) {
    const bool is_this = static_cast<Swatch*>(button)->value().compare(colour, Qt::CaseInsensitive) == 0;
    button->setChecked(is_this);
    is_ready = is_ready || is_this;
  }
  other_->setText(is_ready ? tr("Ot&her…") : tr("Ot&her: %1…").arg(colour));
}

void ColourChoice::take(const QString& colour) {
  show_colour(colour);
  emit chosen(colour);
}

void ColourChoice::ask() {
  if (const auto colour = asker_(colour_)) take(*colour);
}

}  // namespace foldyard
