#include "batch/hand_page.h"

#include <QLabel>
#include <QVBoxLayout>

#include "batch/hand_lists.h"

namespace foldyard {

HandPage::HandPage(Document& document, QWidget* parent)
    : QWidget(parent), kept_(new JobListEdit(document, kept_list(), tr("Lengths that are kept"), {}, tr("Let go"))),
      aims_(new JobListEdit(document, aim_list(), tr("What counts first"), {}, {})) {
  auto* words = new QLabel(tr("Lengths that are cut as they are, whatever else is planned. Choose a lay of the plan and keep it, and it stands here."));
  words->setWordWrap(true);
  kept_->table()->set_least_rows(3);
  aims_->table()->set_least_rows(4);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(words);
  layout->addWidget(kept_, 3);
  layout->addWidget(aims_, 2);
}

std::vector<QWidget*> HandPage::tab_order() const {
  std::vector<QWidget*> order = kept_->tab_order();
  for (QWidget* widget : aims_->tab_order()) order.push_back(widget);
  return order;
}

}  // namespace foldyard
