#include "drawing/paper.h"

namespace foldyard {

namespace {

QPageSize page_size(Paper paper) {
  switch (paper) {
    case Paper::a4: return QPageSize(QPageSize::A4);
    case Paper::letter: return QPageSize(QPageSize::Letter);
    case Paper::a3: return QPageSize(QPageSize::A3);
    case Paper::legal: return QPageSize(QPageSize::Legal);
    case Paper::tabloid: return QPageSize(QPageSize::Tabloid);
  }
  return {};
}

QSizeF upright_size_mm(Paper paper) {
  switch (paper) {
    case Paper::a4: return {210, 297};
    case Paper::letter: return {215.9, 279.4};
    case Paper::a3: return {297, 420};
    case Paper::legal: return {215.9, 355.6};
    case Paper::tabloid: return {279.4, 431.8};
  }
  return {};
}

}  // namespace

QSizeF paper_size_mm(Paper paper, bool landscape) {
  const QSizeF upright = upright_size_mm(paper);
  return landscape ? upright.transposed() : upright;
}

QString paper_name(Paper paper) {
  switch (paper) {
    case Paper::a4: return QStringLiteral("A4");
    case Paper::letter: return QStringLiteral("Letter");
    case Paper::a3: return QStringLiteral("A3");
    case Paper::legal: return QStringLiteral("Legal");
    case Paper::tabloid: return QStringLiteral("Tabloid");
  }
  return {};
}

QPageLayout full_page(Paper paper, bool landscape) {
  QPageLayout layout(page_size(paper), landscape ? QPageLayout::Landscape : QPageLayout::Portrait,
                     QMarginsF());
  layout.setMode(QPageLayout::FullPageMode);
  return layout;
}

}  // namespace foldyard
