#pragma once

// How a product is sewn: its orders of operations, the steps of the chosen one with a
// stopwatch, and all orders beside each other.
//
// A lap is kept as a time of the chosen step, one step of the history each, and the next
// step is chosen, after the last one the first: the next piece.

#include <QComboBox>
#include <QLabel>

#include "batch/job_list_edit.h"
#include "batch/sewing_lists.h"
#include "batch/watch_row.h"
#include "batch/words_model.h"

namespace foldyard {

class SewingPage : public QWidget {
  Q_OBJECT

 public:
  explicit SewingPage(Document& document, Stopwatch::Clock clock = {}, QWidget* parent = nullptr);

  // Of the batch, by product.
  void set_pieces(std::vector<std::int64_t> pieces);
  void choose_product(int product);

  QComboBox* product() const { return product_; }
  JobListEdit* orders() const { return orders_; }
  QPushButton* user() const { return use_; }
  JobListEdit* steps() const { return steps_; }
  WatchRow* watch() const { return watch_; }
  WordsModel* side_by_side() const { return side_by_side_; }
  std::vector<QWidget*> tab_order() const;

 private:
  SewingPlace place();
  void arrange();
  void connect_all();
  void follow_job();
  void show_order();
  void name_timed();
  void show_side_by_side();
  void use_order();
  void keep_lap(Duration time);
  int chosen_order() const;

  Document& document_;
  std::vector<std::int64_t> pieces_;
  QComboBox* product_;
  JobListEdit* orders_ = nullptr;
  QPushButton* use_;
  QLabel* steps_of_;
  JobListEdit* steps_;
  WatchRow* watch_;
  WordsModel* side_by_side_;
  QTableView* compared_;
};

}  // namespace foldyard
