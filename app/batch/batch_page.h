#pragma once

// The batch in the window: the order and, beside or below it, its answer. Without an
// order it says what to do. It plans only while it is seen; an answer stays until
// the next one is there.

#include <QSplitter>
#include <QStackedWidget>
#include <QWidget>

#include <optional>
#include <vector>

#include "batch/batch_planner.h"
#include "batch/batch_view.h"
#include "batch/cut_page.h"
#include "batch/hand_page.h"
#include "batch/order_table.h"
#include "batch/page_tabs.h"
#include "batch/product_page.h"
#include "batch/sewing_page.h"
#include "batch/webbing_page.h"
#include "document/document.h"

namespace foldyard {

class BatchPage : public QWidget {
  Q_OBJECT

 public:
  explicit BatchPage(Document& document, PlanOrder plan = plan_order, QWidget* parent = nullptr);

  OrderTable* order() const { return order_; }
  PageTabs* sides() const { return sides_; }
  ProductPage* products() const { return products_; }
  SewingPage* sewing() const { return sewing_; }
  WebbingPage* webbing() const { return webbing_; }
  BatchView* view() const { return view_; }
  BatchPlanner& planner() { return planner_; }
  QPushButton* order_maker() const { return make_; }
  CutPage* cut() const { return cut_; }
  HandPage* hand() const { return hand_; }
  std::vector<QWidget*> tab_order() const;

  // Writes the tickets of the answer as PDF; false, with the reason shown, where
  // that cannot be done.
  bool write_tickets_to(const QString& path);

 public slots:
  void mark_as_cut();
  void choose_and_write_tickets();
  // Whether a batch cuts from the roll.
  void set_in_batch(int roll, foldyard::InBatch how);
  void keep_lay(int lay);

 protected:
  void showEvent(QShowEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  QWidget* invitation();
  void take_job();
  void ask();
  void add_sides();
  void show_last();
  std::vector<std::int64_t> pieces_of_batch() const;
  void take_answer(const BatchAnswerPtr& answer);
  void edit(const Job& next, const QString& words);

  Document& document_;
  BatchPlanner planner_;
  BatchAnswerPtr answer_;
  std::optional<Job> asked_;
  QSplitter* split_;
  QStackedWidget* pages_;
  PageTabs* sides_;
  OrderTable* order_;
  ProductPage* products_;
  SewingPage* sewing_;
  WebbingPage* webbing_;
  HandPage* hand_;
  CutPage* cut_;
  BatchView* view_;
  QPushButton* make_;
};

}  // namespace foldyard
