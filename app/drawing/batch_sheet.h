#pragma once

// The papers of a batch: the tickets that go to the table and the list to buy by,
// a page for every pattern that is cut, and labels to stick on remnants.
//
// Tickets: the answer, then every table of batch_tables.h, flowing over as many
// pages as they need, the cautions for the cutter at their end. Pattern pages are
// those of a roll's own sheet (pattern_page.h), one for each pattern that lays are
// cut by; its lays are those of the batch. Labels: three across, eight down.
//
// The painter's unit is 1 mm of paper, origin at the page's top left corner.

#include <QByteArray>
#include <vector>

#include "drawing/batch_tables.h"
#include "drawing/list_flow.h"
#include "drawing/sheet.h"

class QPainter;

namespace foldyard {

class BatchSheet {
 public:
  BatchSheet(BatchAnswer answer, Paper paper);

  int pages() const;
  QSizeF page_size_mm() const;
  void paint(QPainter& painter, int page) const;
  const BatchAnswer& answer() const { return answer_; }
  Paper paper() const { return paper_; }
  // What is written on the labels, one entry a label.
  const std::vector<QStringList>& labels() const { return labels_; }

 private:
  void add_patterns();
  void paint_tickets(QPainter& painter, int page) const;
  void paint_labels(QPainter& painter, int page) const;
  int label_pages() const;

  BatchAnswer answer_;
  Paper paper_;
  std::vector<std::vector<ListLine>> tickets_;  // page by page
  struct PatternPages {
    Sheet sheet;
    int pattern = 0;
    int pages = 0;
    QString lays;  // which are cut so: "Lay 2: 3 × Moss 1"
  };
  std::vector<PatternPages> patterns_;
  std::vector<QStringList> labels_;
};

QByteArray batch_pdf(const BatchSheet& sheet);

}  // namespace foldyard
