#pragma once

// The sheet as it will be printed, and what to do with it: print, write it as
// PDF, SVG or PNG, copy a page.
//
// It shows the plan it was opened with. Where no printer is set up, printing is
// not offered and one sentence leads to the PDF. What was written, or why it was
// not, stands in the dialog.

#include <QDialog>
#include <QLabel>
#include <QPrinter>
#include <QPushButton>
#include <memory>

#include "printing/page_column.h"
#include "printing/print_form.h"

namespace foldyard {

class PrintDialog : public QDialog {
  Q_OBJECT

 public:
  PrintDialog(PrintSource source, Paper paper, QWidget* parent = nullptr);

  const Sheet& sheet() const { return *sheet_; }
  PrintForm* form() const { return form_; }
  PageColumn* pages() const { return pages_; }
  QLabel* advice() const { return advice_; }
  QLabel* news() const { return news_; }
  QPushButton* print_button() const { return print_; }
  QPushButton* pdf_button() const { return pdf_; }

 public slots:
  // The ending names the kind of file. False, with the reason told, where it fails.
  bool write_to(const QString& path);
  bool print_on(QPrinter& printer);
  void copy_page();

 signals:
  // The pages went to a printer or into a file.
  void printed();

 private:
  void arrange();
  QWidget* options_side();
  QWidget* buttons();
  void connect_all();
  void set_tab_order();
  void lay_out();
  void show_range();
  void choose_and_write(const QString& ending);
  void choose_and_print();
  void tell(const QString& words, bool is_fault);

  PrintSource source_;
  std::shared_ptr<const Sheet> sheet_;
  PageColumn* pages_;
  PrintForm* form_;
  QLabel* advice_;
  QLabel* news_;
  QPushButton* print_;
  QPushButton* pdf_;
  QPushButton* svg_;
  QPushButton* png_;
  QPushButton* copy_;
  QPushButton* close_;
};

}  // namespace foldyard
