#pragma once

// What a person chooses about a sheet before it is printed: paper and its turn,
// the unit of the words, the comparison, which patterns, which templates, and
// which pages of all that.
//
// A template that would take too many pages stays chosen but is left out, and
// problem() says so in one sentence.

#include <QCheckBox>
#include <QComboBox>
#include <QListWidget>
#include <QSpinBox>
#include <QWidget>
#include <optional>

#include "drawing/sheet.h"
#include "measure/index.h"
#include "measure/result.h"

namespace foldyard {

// The plan that is printed. REQUIRES a plan at the way.
struct PrintSource {
  Job job;
  Comparison comparison;
  int way = 0;

  const Plan& plan() const { return *comparison.ways[ix(way)].plan; }
  const Fabric& fabric() const { return job.rolls[ix(plan().roll)].fabric; }
};

class PrintForm : public QWidget {
  Q_OBJECT

 public:
  // REQUIRES that the source outlives the form.
  PrintForm(const PrintSource& source, Paper paper, QWidget* parent = nullptr);

  SheetOptions options() const;
  std::optional<Problem> problem() const;
  PageRange range() const;
  // How many pages there are; a range that went to the last one still does.
  void set_pages(int pages);

  QComboBox* paper() const { return paper_; }
  QComboBox* turn() const { return turn_; }
  QComboBox* unit() const { return unit_; }
  QCheckBox* diagram() const { return diagram_; }
  QCheckBox* comparison() const { return comparison_; }
  QListWidget* patterns() const { return patterns_; }
  QListWidget* templates() const { return templates_; }
  QSpinBox* first() const { return first_; }
  QSpinBox* last() const { return last_; }
  // All that takes the focus, from the top.
  std::vector<QWidget*> fields() const;

 signals:
  void options_changed();
  void range_changed();

 private:
  void fill(Paper paper);
  void arrange();
  void connect_all();
  void show_template_pages();
  std::vector<int> checked(const QListWidget& list) const;

  const PrintSource& source_;
  QComboBox* paper_;
  QComboBox* turn_;
  QComboBox* unit_;
  QCheckBox* diagram_;
  QCheckBox* comparison_;
  QListWidget* patterns_;
  QListWidget* templates_;
  QSpinBox* first_;
  QSpinBox* last_;
};

}  // namespace foldyard
