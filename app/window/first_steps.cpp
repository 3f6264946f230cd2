#include "window/first_steps.h"

#include "window/main_window.h"

namespace foldyard {

FirstSteps::FirstSteps(MainWindow& window) : QObject(&window), window_(window), strip_(new GuideStrip) {
  strip_->hide();
  connect(strip_, &GuideStrip::wanted, this, &FirstSteps::lead_to);
  connect(strip_->closer(), &QPushButton::clicked, this, &FirstSteps::close);
  connect(strip_->own_roll(), &QPushButton::clicked, window.documents(), &DocumentActions::begin_with_own_roll);
  connect(&window.document(), &Document::opened, this, &FirstSteps::begin_job);
  connect(&window.document(), &Document::changed, this, &FirstSteps::look);
  connect(window.documents(), &DocumentActions::begun, this, [this] { strip_->tick(GuideStrip::sewn); });
  connect(window.plan_view(), &PlanView::shown, this, &FirstSteps::look);
  connect(&window, &MainWindow::printed, this, &FirstSteps::tick_printed);
}

void FirstSteps::add_entries(QMenu* help) {
  auto* action = help->addAction(tr("Show the &first steps"));
  connect(action, &QAction::triggered, this, &FirstSteps::show);
}

void FirstSteps::begin() {
  if (!window_.documents()->settings().is_guide_closed()) show();
}

void FirstSteps::show() {
  window_.documents()->settings().set_guide_closed(false);
  strip_->show();
  look();
}

void FirstSteps::close() {
  window_.documents()->settings().set_guide_closed(true);
  strip_->hide();
}

// A job that has a file was made by somebody who knows what they sew.
void FirstSteps::begin_job() {
  panels_ = window_.document().job().panels;
  if (!window_.document().path().isEmpty()) strip_->tick(GuideStrip::sewn);
}

void FirstSteps::look() {
  if (window_.plan_view()->plan()) strip_->tick(GuideStrip::roll);
  if (window_.document().job().panels != panels_) strip_->tick(GuideStrip::sewn);
}

void FirstSteps::lead_to(int step) {
  switch (step) {
    case GuideStrip::roll: return window_.put_on_table();
    case GuideStrip::sewn: return window_.panel_table()->view()->setFocus();
    default: return window_.print();
  }
}

}  // namespace foldyard
