#include "batch/cut_page.h"

#include <QVBoxLayout>

#include "batch/cut_history.h"
#include "batch/fill_in_view.h"
#include "batch/hand_lists.h"

namespace foldyard {

CutPage::CutPage(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), history_(new WordsModel(this)), view_(words_view(history_, tr("What was cut"))),
      words_(new QLabel), on_hand_(new JobListEdit(document, on_hand_list(), tr("Panels on hand"), {}, tr("Take away"))) {
  words_->setWordWrap(true);
  auto* heading = new QLabel(tr("Panels on hand, cut and not yet sewn"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(words_);
  layout->addWidget(view_, 3);
  layout->addWidget(heading);
  layout->addWidget(on_hand_, 2);
  connect(&document_, &Document::changed, this, &CutPage::show_job);
  show_job();
}

std::vector<QWidget*> CutPage::tab_order() const {
  std::vector<QWidget*> order{view_};
  for (QWidget* widget : on_hand_->tab_order()) order.push_back(widget);
  return order;
}

void CutPage::show_job() {
  const Job& job = document_.job();
  words_->setText(job.history.empty() ? tr("Nothing was cut yet. Mark lays of the plan as cut, and they stand here.")
                                      : tr("What was cut, the last time first. Undo takes back what was marked last."));
  history_->show(history_head(), history_rows(job));
}

}  // namespace foldyard
