#pragma once

// SectionStrip: the cloth on the table cut through across, at the place along
// where the pointer is: each ply as a ribbon that turns at the folds, with what
// is cut from it there. Plies are drawn thicker than they are.

#include <QWidget>

#include "table/laid_cloth.h"

namespace foldyard {

class SectionStrip : public QWidget {
  Q_OBJECT

 public:
  explicit SectionStrip(QWidget* parent = nullptr);

  void show_cloth(const LaidClothPtr& cloth);
  // along: where the section is, on the folded cloth; lit: the patch pointed at.
  void show_place(Length along, int lit);
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void paint_ply(QPainter& painter, const Leg& leg, int level, double scale) const;

  LaidClothPtr cloth_;
  Length along_;
  int lit_ = -1;
};

}  // namespace foldyard
