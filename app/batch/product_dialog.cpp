#include "batch/product_dialog.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

#include "batch/fill_in_view.h"
#include "batch/order_edits.h"
#include "batch/order_words.h"
#include "drawing/words.h"
#include "fields/field_text.h"
#include "job/check_job.h"

namespace foldyard {
namespace {

QString text(const std::string& utf8) { return QString::fromStdString(utf8); }

QString key_of(std::size_t panel) { return QString::number(panel); }

const PanelCount* count_in(const Product& product, int panel) {
  const auto found = std::find_if(product.panels.begin(), product.panels.end(),
                                  [&](const PanelCount& each) { return each.panel == panel; });
  return found == product.panels.end() ? nullptr : &*found;
}

std::vector<FillInModel::Row> panel_rows(const Job& job, const Product& product) {
  std::vector<FillInModel::Row> rows;
  for (std::size_t i = 0; i < job.panels.size(); ++i) {
    const Panel& panel = job.panels[i];
    const PanelCount* count = count_in(product, static_cast<int>(i));
    const QString from = count && !count->from.empty() ? words_text(count->from) : ProductDialog::tr("the piece's own");
    rows.push_back({key_of(i), {text(panel.name), size_words(panel.across, panel.along, job.unit), from}});
  }
  return rows;
}

std::map<QString, QString> panel_entries(const Product& product) {
  std::map<QString, QString> entries;
  for (const PanelCount& each : product.panels)
    entries[key_of(static_cast<std::size_t>(each.panel))] = QString::number(each.count);
  return entries;
}

}  // namespace

ProductDialog::ProductDialog(const Job& job, QWidget* parent)
    : QDialog(parent), job_(job), list_(new QListWidget), add_(new QPushButton(tr("&Add a product"))),
      take_(new QPushButton(tr("Ta&ke away"))), fields_(nullptr), name_(new QLineEdit), worth_(new QLineEdit),
      price_(new QLineEdit), panels_(new FillInModel({tr("Panel"), tr("Size"), tr("Cloth"), tr("In a piece")}, this)),
      panels_view_(fill_in_view(panels_, tr("Panels of a piece"))), reason_(new QLabel),
      confirmer_(new QPushButton(tr("Take over"))) {
  setWindowTitle(tr("Products"));
  arrange();
  connect(add_, &QPushButton::clicked, this, &ProductDialog::add);
  connect(take_, &QPushButton::clicked, this, &ProductDialog::take_away);
  connect(list_, &QListWidget::currentRowChanged, this, &ProductDialog::show_product);
  for (QLineEdit* line : {name_, worth_, price_}) connect(line, &QLineEdit::textEdited, this, &ProductDialog::look);
  connect(panels_, &FillInModel::filled_in, this, &ProductDialog::look);
  show_list(0);
  resize(720, 460);
}

void ProductDialog::arrange() {
  list_->setAccessibleName(tr("Products"));
  reason_->setWordWrap(true);
  reason_->setProperty("fault", true);
  fields_ = fields();
  auto* buttons = new QDialogButtonBox;
  buttons->addButton(tr("Cancel"), QDialogButtonBox::RejectRole);
  buttons->addButton(confirmer_, QDialogButtonBox::AcceptRole);
  confirmer_->setDefault(true);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  auto* sides = new QHBoxLayout;
  sides->addWidget(left_side(), 1);
  sides->addWidget(fields_, 2);
  auto* column = new QVBoxLayout(this);
  column->addLayout(sides, 1);
  column->addWidget(reason_);
  column->addWidget(buttons);
}

QWidget* ProductDialog::left_side() {
  auto* side = new QWidget;
  auto* column = new QVBoxLayout(side);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(list_, 1);
  auto* row = new QHBoxLayout;
  row->addWidget(add_);
  row->addWidget(take_);
  column->addLayout(row);
  return side;
}

QWidget* ProductDialog::fields() {
  auto* side = new QWidget;
  auto* form = new QFormLayout;
  const auto add_row = [&](const QString& words, QLineEdit* line) {
    auto* label = new QLabel(words);
    label->setBuddy(line);
    form->addRow(label, line);
  };
  add_row(tr("&Name"), name_);
  add_row(tr("&Worth of a piece"), worth_);
  add_row(tr("&Price it is sold for"), price_);
  price_->setPlaceholderText(tr("its worth"));
  auto* column = new QVBoxLayout(side);
  column->setContentsMargins(0, 0, 0, 0);
  column->addLayout(form);
  column->addWidget(panels_view_, 1);
  return side;
}

void ProductDialog::add() {
  job_ = with_product(job_);
  show_list(static_cast<int>(job_.products.size()) - 1);
  name_->setFocus();
  name_->selectAll();
}

void ProductDialog::take_away() {
  const int at = row();
  if (at < 0) return;
  job_ = without_product(job_, at);
  show_list(std::min(at, static_cast<int>(job_.products.size()) - 1));
}

void ProductDialog::show_list(int row) {
  {
    const QSignalBlocker quiet(list_);
    list_->clear();
    for (const Product& product : job_.products) list_->addItem(text(product.name));
    list_->setCurrentRow(row);
  }
  show_product();
}

void ProductDialog::show_product() {
  const bool is_any = row() >= 0;
  fields_->setEnabled(is_any);
  const Product product = is_any ? job_.products[static_cast<std::size_t>(row())] : Product{};
  name_->setText(text(product.name));
  worth_->setText(is_any ? worth_text(product.worth) : QString());
  price_->setText(product.price ? worth_text(*product.price) : QString());
  panels_->show(is_any ? panel_rows(job_, product) : std::vector<FillInModel::Row>());
  panels_->set_entries(panel_entries(product));
  look();
}

// Another product can be chosen once this one means something.
void ProductDialog::look() {
  QString reason;
  if (row() >= 0) {
    Product& product = job_.products[static_cast<std::size_t>(row())];
    reason = read_into(product);
    list_->currentItem()->setText(name_->text().trimmed());
  }
  const bool is_read = reason.isEmpty();
  if (is_read) {
    const auto problem = check_job(job_);
    if (problem) reason = order_problem_text(*problem, job_);
  }
  reason_->setText(reason);
  confirmer_->setEnabled(reason.isEmpty());
  list_->setEnabled(is_read);
  add_->setEnabled(is_read && !job_.panels.empty());
  take_->setEnabled(row() >= 0);
}

// What is refused leaves the product's value as it was.
QString ProductDialog::read_into(Product& product) {
  product.name = name_->text().trimmed().toStdString();
  const auto worth = typed_worth(worth_->text());
  if (!worth) return order_problem_text(worth.problem(), job_);
  product.worth = *worth;
  product.price.reset();
  if (!price_->text().trimmed().isEmpty()) {
    const auto price = typed_worth(price_->text());
    if (!price) return order_problem_text(price.problem(), job_);
    product.price = *price;
  }
  return read_panels(product);
}

QString ProductDialog::read_panels(Product& product) {
  std::vector<PanelCount> counts;
  std::map<QString, QString> reasons;
  for (std::size_t i = 0; i < job_.panels.size(); ++i) {
    const QString entry = panels_->entry(key_of(i));
    if (entry.isEmpty()) continue;
    const auto count = typed_count(entry);
    if (!count) reasons[key_of(i)] = order_problem_text(count.problem(), job_);
    if (!count || *count == 0) continue;
    const PanelCount* before = count_in(product, static_cast<int>(i));
    counts.push_back({static_cast<int>(i), *count, before ? before->from : std::vector<std::string>()});
  }
  panels_->set_reasons(reasons);
  if (!reasons.empty()) return reasons.begin()->second;
  product.panels = counts;
  return counts.empty() ? tr("“%1” takes no panel; say how many of one go into a piece.").arg(text(product.name)) : QString();
}

}  // namespace foldyard
