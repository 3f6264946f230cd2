#pragma once

// The first steps: leads a newcomer from the start to a printed diagram.
//
// Shown until it is closed, then only from the menu. A step is ticked when it
// has been done: a plan lies on the table; the panels are not those that were
// opened, or the job is one of the maker's own; a diagram was written.

#include <QMenu>
#include <QObject>

#include <vector>

#include "goods/panel.h"
#include "window/guide_strip.h"

namespace foldyard {

class MainWindow;

class FirstSteps : public QObject {
  Q_OBJECT

 public:
  explicit FirstSteps(MainWindow& window);

  GuideStrip* strip() const { return strip_; }
  void add_entries(QMenu* help);
  // At the start: shows the steps unless they were closed once.
  void begin();

 public slots:
  void show();
  void close();
  void tick_printed() { strip_->tick(GuideStrip::printed); }

 private:
  void lead_to(int step);
  void look();
  void begin_job();

  MainWindow& window_;
  GuideStrip* strip_;
  std::vector<Panel> panels_;  // as they were opened
};

}  // namespace foldyard
