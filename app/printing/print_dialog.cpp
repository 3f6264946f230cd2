#include "printing/print_dialog.h"

#include <algorithm>

#include <QFileDialog>
#include <QFileInfo>
#include <QGridLayout>
#include <QPrintDialog>
#include <QPrinterInfo>
#include <QScreen>
#include <QScrollArea>
#include <QStyle>

#include "language/spoken.h"
#include "printing/clipboard.h"
#include "printing/print_sheet.h"
#include "printing/sheet_file.h"

namespace foldyard {
namespace {

const QSize kUsualSize(1000, 760);
constexpr int kOptionsWidth = 300;      // or more, where words are long
constexpr int kMostOptionsWidth = 460;

bool has_printer() { return !QPrinterInfo::availablePrinterNames().isEmpty(); }

QString with_ending(const QString& path, const QString& ending) {
  return QFileInfo(path).suffix().isEmpty() ? path + ending : path;
}

QLabel* words_below() {
  auto* label = new QLabel;
  label->setWordWrap(true);
  return label;
}

}  // namespace

PrintDialog::PrintDialog(PrintSource source, Paper paper, QWidget* parent)
    : QDialog(parent), source_(std::move(source)), pages_(new PageColumn), form_(new PrintForm(source_, paper)),
      advice_(words_below()), news_(words_below()), print_(new QPushButton(tr("&Print…"))), pdf_(new QPushButton(tr("P&DF…"))),
      svg_(new QPushButton(tr("S&VG…"))), png_(new QPushButton(tr("P&NG…"))), copy_(new QPushButton(tr("Cop&y the page"))),
      close_(new QPushButton(tr("Clo&se"))) {
  setWindowTitle(tr("Print the diagram"));
  arrange();
  connect_all();
  set_tab_order();
  lay_out();
  resize(kUsualSize.boundedTo(screen()->availableSize() - QSize(20, 60)));
  (has_printer() ? print_ : pdf_)->setDefault(true);
  pages_->setFocus();
}

void PrintDialog::arrange() {
  auto* row = new QHBoxLayout(this);
  row->addWidget(pages_, 1);
  row->addWidget(options_side());
}

QWidget* PrintDialog::options_side() {
  auto* side = new QWidget;
  const int needed = form_->minimumSizeHint().width() + style()->pixelMetric(QStyle::PM_ScrollBarExtent) + 4;
  side->setFixedWidth(std::clamp(needed, kOptionsWidth, kMostOptionsWidth));
  auto* column = new QVBoxLayout(side);
  column->setContentsMargins(0, 0, 0, 0);
  auto* scroller = new QScrollArea;
  scroller->setWidget(form_);
  scroller->setWidgetResizable(true);
  scroller->setFocusPolicy(Qt::NoFocus);
  scroller->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroller->viewport()->setAutoFillBackground(false);
  form_->setAutoFillBackground(false);
  advice_->setText(tr("Print at 100 % (actual size), then check that the square on the first page measures 100 mm."));
  if (!has_printer()) {
    advice_->setText(advice_->text() + QLatin1Char(' ') +
                     tr("No printer is set up here: write a PDF and print that."));
    print_->setEnabled(false);
  }
  column->addWidget(scroller, 1);
  column->addWidget(advice_);
  column->addWidget(news_);
  column->addWidget(buttons());
  return side;
}

QWidget* PrintDialog::buttons() {
  auto* block = new QWidget;
  auto* grid = new QGridLayout(block);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->addWidget(print_, 0, 0, 1, 2);
  grid->addWidget(pdf_, 0, 2);
  grid->addWidget(svg_, 1, 0);
  grid->addWidget(png_, 1, 1);
  grid->addWidget(close_, 1, 2);
  grid->addWidget(copy_, 2, 0, 1, 3);
  for (QPushButton* button : {pdf_, svg_, png_, copy_, close_}) button->setAutoDefault(false);
  return block;
}

void PrintDialog::connect_all() {
  connect(form_, &PrintForm::options_changed, this, &PrintDialog::lay_out);
  connect(form_, &PrintForm::range_changed, this, &PrintDialog::show_range);
  connect(print_, &QPushButton::clicked, this, &PrintDialog::choose_and_print);
  connect(pdf_, &QPushButton::clicked, this, [this] { choose_and_write(QStringLiteral(".pdf")); });
  connect(svg_, &QPushButton::clicked, this, [this] { choose_and_write(QStringLiteral(".svg")); });
  connect(png_, &QPushButton::clicked, this, [this] { choose_and_write(QStringLiteral(".png")); });
  connect(copy_, &QPushButton::clicked, this, &PrintDialog::copy_page);
  connect(close_, &QPushButton::clicked, this, &QDialog::reject);
}

void PrintDialog::set_tab_order() {
  std::vector<QWidget*> order = {pages_};
  for (QWidget* field : form_->fields()) order.push_back(field);
  for (QWidget* button : {print_, pdf_, svg_, png_, close_, copy_}) order.push_back(button);
  for (std::size_t i = 1; i < order.size(); ++i) setTabOrder(order[i - 1], order[i]);
}

void PrintDialog::lay_out() {
  sheet_ = std::make_shared<const Sheet>(source_.job, source_.comparison, source_.way, form_->options());
  const int pages = sheet_->pages();
  form_->set_pages(pages);
  const auto problem = form_->problem();
  tell(problem ? spoken(*problem) : QString(), problem.has_value());
  for (QPushButton* button : {pdf_, svg_, png_, copy_}) button->setEnabled(pages > 0);
  print_->setEnabled(pages > 0 && has_printer());
  show_range();
}

void PrintDialog::show_range() { pages_->show_pages(sheet_, form_->range()); }

bool PrintDialog::write_to(const QString& path) {
  const auto problem = write_sheet(*sheet_, path, form_->range());
  tell(problem ? spoken(*problem)
               : tr("Written to %1.").arg(QFileInfo(path).fileName()),
       problem.has_value());
  if (!problem) emit printed();
  return !problem;
}

bool PrintDialog::print_on(QPrinter& printer) {
  PageRange range = form_->range();
  if (printer.printRange() == QPrinter::PageRange && printer.fromPage() > 0)
    range = {printer.fromPage() - 1, printer.toPage() - 1};
  const bool done = print_sheet(printer, *sheet_, range);
  tell(done ? tr("Sent to the printer.")
            : tr("The printer did not take the pages; see whether it is on, or write a PDF."),
       !done);
  if (done) emit printed();
  return done;
}

void PrintDialog::copy_page() {
  const int page = pages_->page_in_view();
  const bool done = page >= 0 && put_on_clipboard(page_data(*sheet_, page));
  tell(done ? tr("Page %1 is on the clipboard.").arg(page + 1)
            : tr("The page could not be copied; write it as PNG."),
       !done);
}

void PrintDialog::choose_and_write(const QString& ending) {
  const auto path = QFileDialog::getSaveFileName(this, tr("Write the pages"), QString(), tr("Pages (*%1)").arg(ending));
  if (!path.isEmpty()) write_to(with_ending(path, ending));
}

void PrintDialog::choose_and_print() {
  QPrinter printer(QPrinter::HighResolution);
  set_up_printer(printer, *sheet_);
  QPrintDialog dialog(&printer, this);
  dialog.setOption(QAbstractPrintDialog::PrintPageRange);
  dialog.setMinMax(1, std::max(1, sheet_->pages()));
  if (dialog.exec() == QDialog::Accepted) print_on(printer);
}

// The fault's colour is the style sheet's.
void PrintDialog::tell(const QString& words, bool is_fault) {
  news_->setText(words);
  news_->setProperty("fault", is_fault);
  news_->style()->unpolish(news_);
  news_->style()->polish(news_);
}

}  // namespace foldyard
