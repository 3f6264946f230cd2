#include "every_page.h"

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QFile>
#include <QLabel>
#include <QScrollArea>
#include <QTest>

#include "drawing/sheet_options.h"
#include "file/read_job.h"
#include "printing/print_dialog.h"
#include "sample.h"
#include "shelf/measure_dialog.h"
#include "shelf/roll_dialog.h"
#include "window/main_window.h"
#include "window/own_roll_dialog.h"
#include "window/workshop_dialog.h"

namespace foldyard::sample {
namespace {

Job demo() {
  QFile file(QStringLiteral(":/demo.json"));
  EXPECT_TRUE(file.open(QIODevice::ReadOnly));
  return read_job(file.readAll()).value();
}

std::unique_ptr<MainWindow> planned_window() {
  auto window = std::make_unique<MainWindow>();
  window->resize(kSmallScreen);
  window->show();
  window->document().open(job(), {});
  EXPECT_TRUE(waited_for([&] { return !window->planner().is_busy() && window->way_table()->row() >= 0; }, 60000));
  return window;
}

// The part of a widget that its surroundings leave, across; what lies in a scroll
// area that scrolls across is reached by scrolling.
bool is_reached_across(const QWidget* widget, const QWidget* window) {
  for (const QWidget* around = widget->parentWidget(); around && widget != window; around = around->parentWidget()) {
    const QPoint at = widget->mapTo(around, QPoint());
    const auto* scroller = qobject_cast<const QAbstractScrollArea*>(around->parentWidget());
    const bool scrolls = scroller && scroller->viewport() == around && scroller->horizontalScrollBarPolicy() != Qt::ScrollBarAlwaysOff;
    if (scrolls) return true;
    if (at.x() < 0 || at.x() + widget->width() > around->width()) return false;
    if (around == window) break;
  }
  return true;
}

// A tool tip gives whole what is written short on purpose.
template <class Widget>
bool is_whole(const Widget* widget, QSize needed) {
  const bool is_told = widget->toolTip().contains(widget->text());
  return is_told || (needed.width() <= widget->width() && needed.height() <= widget->height());
}

int expect_labels_whole(const QWidget* window) {
  int seen = 0;
  for (const auto* label : window->findChildren<QLabel*>()) {
    if (!label->isVisible() || label->text().isEmpty()) continue;
    ++seen;
    const QSize needed = label->wordWrap() ? QSize(0, label->heightForWidth(label->width())) : label->sizeHint();
    EXPECT_TRUE(is_whole(label, needed)) << label->text().toStdString() << " has " << label->width() << " x " << label->height() << ", needs "
                                         << needed.width() << " x " << needed.height();
    EXPECT_TRUE(is_reached_across(label, window)) << label->text().toStdString();
  }
  return seen;
}

int expect_buttons_whole(const QWidget* window) {
  int seen = 0;
  for (const auto* button : window->findChildren<QAbstractButton*>()) {
    if (!button->isVisible() || button->text().isEmpty()) continue;
    ++seen;
    EXPECT_TRUE(is_whole(button, button->sizeHint())) << button->text().toStdString() << " has " << button->width() << " x "
                                                      << button->height() << ", needs " << button->sizeHint().width() << " x "
                                                      << button->sizeHint().height();
    EXPECT_TRUE(is_reached_across(button, window)) << button->text().toStdString();
  }
  return seen;
}

}  // namespace

std::vector<PageCase> pages() {
  return {
      {"roll page",
       [] {
         auto window = planned_window();
         window->first_steps()->show();
         window->documents()->strip()->ask("a", QStringLiteral("The program ended without saving, twice in a row."),
                                           {{QStringLiteral("Restore the unsaved job"), {}}, {QStringLiteral("Open what was saved"), {}}});
         return window;
       }},
      {"table of ways",
       [] {
         auto window = planned_window();
         window->way_tabs()->setCurrentIndex(1);
         return window;
       }},
      {"graph of ways",
       [] {
         auto window = planned_window();
         window->way_tabs()->setCurrentIndex(2);
         return window;
       }},
      {"compared large",
       [] {
         auto window = planned_window();
         window->compare_large()->toggle(0);
         window->compare_large()->toggle(1);
         EXPECT_TRUE(window->compare_large()->is_shown());
         return window;
       }},
      {"batch page",
       [] {
         auto window = planned_window();
         window->show_batch(true);
         return window;
       }},
      {"products page",
       [] {
         auto window = planned_window();
         window->show_batch(true);
         window->batch_page()->sides()->choose(window->batch_page()->products());
         return window;
       }},
      {"sewing page",
       [] {
         auto window = planned_window();
         window->show_batch(true);
         window->batch_page()->sides()->choose(window->batch_page()->sewing());
         return window;
       }},
  };
}

std::vector<PageCase> dialogs() {
  return {
      {"own roll", [] { return std::make_unique<OwnRollDialog>(Unit::cm); }},
      {"all about a roll", [] { return std::make_unique<RollDialog>(demo(), 0); }},
      {"measured", [] { return std::make_unique<MeasureDialog>(demo(), 0); }},
      {"workshop", [] { return std::make_unique<WorkshopDialog>(demo()); }},
      {"print",
       [] {
         Watch watch;
         const Comparison comparison = compare({job(), 0, Aim::most_worth}, watch);
         return std::make_unique<PrintDialog>(PrintSource{job(), comparison, comparison.ranking.front()}, Paper::a4);
       }},
  };
}

std::string name_of(const testing::TestParamInfo<PageCase>& page) {
  std::string name = page.param.name;
  std::erase(name, ' ');
  return name;
}

void expect_fits_a_small_screen(QWidget* window) {
  if (!window->isVisible()) {
    window->resize(window->sizeHint().boundedTo(kSmallScreen));
    window->show();
  }
  QTest::qWait(20);
  EXPECT_LE(window->minimumSizeHint().width(), kSmallScreen.width());
  EXPECT_LE(window->width(), kSmallScreen.width());
  EXPECT_LE(window->height(), kSmallScreen.height());
  EXPECT_GE(expect_labels_whole(window) + expect_buttons_whole(window), 5);
}

}  // namespace foldyard::sample
