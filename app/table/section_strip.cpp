#include "table/section_strip.h"

#include <QPainter>

#include <algorithm>

#include "drawing/palette.h"
#include "drawing/ribbon.h"
#include "drawing/words.h"
#include "table/board_colours.h"

namespace foldyard {
namespace {

constexpr double kRim = 14;    // pixels at the sides, besides the bends
constexpr double kWords = 20;  // for the line above

// Thinner ribbons where many plies lie.
RibbonShape shape_for(int levels, double height) {
  const double pitch = std::clamp(height / (levels + 1.0), 4.0, 22.0);
  return {pitch, pitch * 0.62};
}

QPolygonF closed(const Ribbon& ribbon) {
  QPolygonF body = ribbon.face;
  for (auto point = ribbon.back.rbegin(); point != ribbon.back.rend(); ++point) body << *point;
  return body;
}

}  // namespace

SectionStrip::SectionStrip(QWidget* parent) : QWidget(parent) {
  setAccessibleName(tr("Section through the plies"));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void SectionStrip::show_cloth(const LaidClothPtr& cloth) {
  const bool is_first = !cloth_;
  cloth_ = cloth;
  lit_ = -1;
  if (cloth_) along_ = is_first ? cloth_->folded().along.to / 2 : std::min(along_, cloth_->folded().along.to);
  updateGeometry();
  update();
}

void SectionStrip::show_place(Length along, int lit) {
  along_ = along;
  lit_ = lit;
  update();
}

// As high as its plies need, up to about six.
QSize SectionStrip::sizeHint() const {
  const int plies = cloth_ ? highest_level(cloth_->map.across) + 1 : 1;
  return {400, static_cast<int>(kWords) + 14 + std::clamp(22 * plies, 22, 88)};
}

QSize SectionStrip::minimumSizeHint() const { return {160, sizeHint().height()}; }

void SectionStrip::paintEvent(QPaintEvent*) {
  if (!cloth_) return;
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const AxisMap& axis = cloth_->map.across;
  const int highest = highest_level(axis);
  const RibbonShape shape = shape_for(highest, height() - kWords - 10);
  const double rim = kRim + ribbon_bulge(axis, shape);
  const double scale = axis.folded_size().in_mm() / std::max(1.0, width() - 2 * rim);
  painter.setPen(palette().color(QPalette::WindowText));
  painter.drawText(QRectF(6, 0, width() - 12, kWords), Qt::AlignLeft | Qt::AlignVCenter,
                   painter.fontMetrics().elidedText(
                       tr("Section at %1, seen from the near end; plies drawn thicker than they are")
                           .arg(length_words(along_, cloth_->job->unit)),
                       Qt::ElideRight, width() - 12));
  painter.translate(rim, height() - 8);
  painter.setPen(QPen(palette().color(QPalette::WindowText), 2));
  painter.drawLine(QLineF(-rim + 4, 2, width() - rim - 4, 2));
  const QColor cloth = cloth_colour(cloth_->fabric().colour);
  painter.setPen(QPen(palette().color(QPalette::WindowText), 1));
  painter.setBrush(cloth);
  const Ribbon ribbon = ribbon_of(axis, Scale{scale}, shape);
  painter.drawPolygon(closed(ribbon));
  const std::vector<int> levels = settled_levels(axis);
  for (std::size_t i = 0; i < levels.size(); ++i) {
    painter.save();
    painter.translate(0, -level_height(shape, levels[i]));
    paint_ply(painter, axis.legs()[i], static_cast<int>(shape.thickness), scale);
    painter.restore();
  }
  painter.setPen(QPen(palette().color(QPalette::WindowText), 2));
  painter.setBrush(Qt::NoBrush);
  painter.drawPolyline(ribbon.face);
}

// Every flat place of a patch at this height of the folded cloth, where it lies
// on the leg.
void SectionStrip::paint_ply(QPainter& painter, const Leg& leg, int thickness, double scale) const {
  const double half = thickness / 2.0;
  for (std::size_t i = 0; i < cloth_->patches.size(); ++i) {
    const Patch& patch = cloth_->patches[i];
    if (patch.is_rest() || along_ < patch.folded.along.from || along_ >= patch.folded.along.to) continue;
    for (const Rect& flat : patch.flats) {
      const Span on_leg = intersection(flat.across, leg.flat);
      if (on_leg.is_empty()) continue;
      const Length a = cloth_->map.across.fold(on_leg.from), b = cloth_->map.across.fold(on_leg.to);
      const double left = std::min(a, b).in_mm() / scale, right = std::max(a, b).in_mm() / scale;
      const QRectF box(left + 1, -half + 1, right - left - 2, thickness - 2);
      painter.setPen(QPen(QColor(Qt::black), 1));
      painter.setBrush(panel_look(patch.panel).fill);
      if (static_cast<int>(i) == lit_) painter.setPen(QPen(palette().color(QPalette::Highlight), 3));
      painter.drawRect(box);
    }
  }
}

}  // namespace foldyard
