#include "batch/product_lists.h"

#include <algorithm>

#include "batch/inner_list.h"
#include "batch/order_edits.h"
#include "batch/order_lists.h"
#include "batch/order_words.h"
#include "fields/field_text.h"
#include "language/tr.h"
#include "language/utf8.h"
#include "measure/index.h"

namespace foldyard {
namespace {

Product& product_at(Job& job, int at) { return job.products[ix(at)]; }
const Product& product_at(const Job& job, int at) { return job.products[ix(at)]; }
std::vector<Product>* products_of(Job& job) { return &job.products; }

template <typename List>
QStringList names_of(const List& list) {
  QStringList names;
  for (const auto& each : list) names << text(each.name);
  return names;
}

JobColumn product_name_column() {
  JobColumn column{tr("Product"), tr("What is sewn and sold, piece by piece"), "name",
                   [](const Job& job, int row) { return text(product_at(job, row).name); }};
  column.put = [](Job& job, int row, const QString& typed) -> std::optional<QString> {
    product_at(job, row).name = typed.trimmed().toStdString();
    return std::nullopt;
  };
  column.is_word = true;
  return column;
}

JobColumn worth_column() {
  JobColumn column{tr("Worth"), tr("What a piece is worth to you"), "worth",
                   [](const Job& job, int row) { return worth_text(product_at(job, row).worth); }};
  column.put = [](Job& job, int row, const QString& typed) { return put_worth(product_at(job, row).worth, typed, job); };
  return column;
}

std::optional<QString> put_price(std::optional<Worth>& price, const QString& typed, const Job& job) {
  price.reset();
  if (typed.trimmed().isEmpty()) return std::nullopt;
  Worth worth;
  const auto refused = put_worth(worth, typed, job);
  if (!refused) price = worth;
  return refused;
}

JobColumn product_price_column() {
  JobColumn column{tr("Price"), tr("What a piece is sold for; empty: its worth"), "price", [](const Job& job, int row) {
                     const auto& price = product_at(job, row).price;
                     return price ? worth_text(*price) : QString();
                   }};
  column.put = [](Job& job, int row, const QString& typed) { return put_price(product_at(job, row).price, typed, job); };
  column.empty = tr("worth");
  return column;
}

JobColumn seam_column() {
  JobColumn column{tr("Seams"), tr("The length of all seams of a piece together, for the thread"), "seam",
                   [](const Job& job, int row) { return length_text(product_at(job, row).seam, job.unit); }};
  column.put = [](Job& job, int row, const QString& typed) { return put_length(product_at(job, row).seam, typed, job); };
  return column;
}

JobColumn labels_column() {
  JobColumn column{tr("Labels"), tr("How many labels go into a piece"), "labels",
                   [](const Job& job, int row) { return QString::number(product_at(job, row).labels); }};
  column.put = [](Job& job, int row, const QString& typed) { return put_count(product_at(job, row).labels, typed, job); };
  return column;
}

using Pieces = InnerList<Product, PanelCount>;
using Cuts = InnerList<Product, WebbingCut>;
using Prices = InnerList<Product, SalePrice>;

// The first panel that the product does not take yet.
PanelCount next_piece(const Job& job, const std::vector<PanelCount>& taken) {
  PanelCount next;
  const auto is_taken = [&] {
    return std::any_of(taken.begin(), taken.end(), [&](const PanelCount& each) { return each.panel == next.panel; });
  };
  while (next.panel + 1 < std::ssize(job.panels) && is_taken()) ++next.panel;
  return next;
}

JobColumn piece_panel_column(const Pieces& pieces) {
  JobColumn column{tr("Panel"), tr("A panel that goes into a piece"), "panel", [pieces](const Job& job, int row) {
                     return text(job.panels[ix(pieces.at(job, row).panel)].name);
                   }};
  column.put = [pieces](Job& job, int row, const QString& typed) {
    return put_named(pieces.at(job, row).panel, names_of(job.panels), typed);
  };
  column.choices = [](const Job& job) { return names_of(job.panels); };
  column.is_word = true;
  return column;
}

JobColumn piece_from_column(const Pieces& pieces) {
  JobColumn column{tr("Cloth"), tr("Cloths or marks it is cut from, set apart by semicolons, such as a lining's; empty: the piece's own"), "from",
                   [pieces](const Job& job, int row) { return words_text(pieces.at(job, row).from); }};
  column.put = [pieces](Job& job, int row, const QString& typed) -> std::optional<QString> {
    pieces.at(job, row).from = typed_words(typed, job);
    return std::nullopt;
  };
  column.is_word = true;
  column.empty = tr("the piece's own");
  return column;
}

template <typename List>
JobColumn in_a_piece_column(const List& list) {
  JobColumn column{tr("In a piece"), tr("How many of it go into one piece"), "count",
                   [list](const Job& job, int row) { return QString::number(list.at(job, row).count); }};
  column.put = [list](Job& job, int row, const QString& typed) { return put_count(list.at(job, row).count, typed, job); };
  return column;
}

JobColumn cut_webbing_column(const Cuts& cuts) {
  JobColumn column{tr("Webbing"), tr("What is cut to length for a piece"), "webbing", [cuts](const Job& job, int row) {
                     return text(job.webbings[ix(cuts.at(job, row).webbing)].name);
                   }};
  column.put = [cuts](Job& job, int row, const QString& typed) {
    return put_named(cuts.at(job, row).webbing, names_of(job.webbings), typed);
  };
  column.choices = [](const Job& job) { return names_of(job.webbings); };
  column.is_word = true;
  return column;
}

JobColumn cut_length_column(const Cuts& cuts) {
  JobColumn column{tr("Length"), tr("How long each is cut"), "length",
                   [cuts](const Job& job, int row) { return length_text(cuts.at(job, row).length, job.unit); }};
  column.put = [cuts](Job& job, int row, const QString& typed) { return put_length(cuts.at(job, row).length, typed, job); };
  return column;
}

JobColumn price_of_column(const Prices& prices) {
  JobColumn column{tr("Of"), tr("A cloth, or a mark that rolls have; the first row that answers counts"), "of",
                   [prices](const Job& job, int row) { return text(prices.at(job, row).of); }};
  column.put = [prices](Job& job, int row, const QString& typed) -> std::optional<QString> {
    prices.at(job, row).of = typed.trimmed().toStdString();
    return std::nullopt;
  };
  column.choices = cloths_and_marks;
  column.is_word = true;
  return column;
}

JobColumn sale_column(const Prices& prices) {
  JobColumn column{tr("Price"), tr("What a piece of that cloth is sold for"), "price",
                   [prices](const Job& job, int row) { return worth_text(prices.at(job, row).price); }};
  column.put = [prices](Job& job, int row, const QString& typed) { return put_worth(prices.at(job, row).price, typed, job); };
  return column;
}

}  // namespace

JobList product_list() {
  JobRows rows;
  rows.count = [](const Job& job) { return static_cast<int>(job.products.size()); };
  rows.where = [](int row) { return QStringLiteral("products[%1]").arg(row); };
  rows.called = [](const Job& job, int row) { return tr("“%1”").arg(text(product_at(job, row).name)); };
  rows.add = with_product;
  rows.take = without_product;
  rows.add_words = tr("add a product");
  rows.take_words = tr("take the product %1 away");
  return {rows, {product_name_column(), worth_column(), product_price_column(), seam_column(), labels_column()}};
}

JobList piece_list(std::function<int()> product) {
  const Pieces pieces{products_of, &Product::panels, std::move(product)};
  JobRows rows = inner_rows(pieces, QStringLiteral("products[%1].panels[%2]"));
  rows.called = [pieces](const Job& job, int row) {
    return tr("the panel “%1”").arg(text(job.panels[ix(pieces.at(job, row).panel)].name));
  };
  rows.add = [pieces](Job job) {
    const PanelCount next = next_piece(job, pieces.of(job));
    return pieces.with(std::move(job), next);
  };
  rows.add_words = tr("add a panel to a product");
  rows.take_words = tr("take %1 out of a product");
  return {rows, {piece_panel_column(pieces), in_a_piece_column(pieces), piece_from_column(pieces)}};
}

JobList webbing_cut_list(std::function<int()> product) {
  const Cuts cuts{products_of, &Product::webbing, std::move(product)};
  JobRows rows = inner_rows(cuts, QStringLiteral("products[%1].webbing[%2]"));
  rows.called = [cuts](const Job& job, int row) {
    return tr("the webbing “%1”").arg(text(job.webbings[ix(cuts.at(job, row).webbing)].name));
  };
  rows.add = [cuts](Job job) { return cuts.with(std::move(job), {0, Length::mm(500), 1}); };
  rows.add_words = tr("add webbing to a product");
  rows.take_words = tr("take %1 out of a product");
  return {rows, {cut_webbing_column(cuts), cut_length_column(cuts), in_a_piece_column(cuts)}};
}

JobList price_list(std::function<int()> product) {
  const Prices prices{products_of, &Product::prices, std::move(product)};
  JobRows rows = inner_rows(prices, QStringLiteral("products[%1].prices[%2]"));
  rows.called = [prices](const Job& job, int row) { return tr("the price of “%1”").arg(text(prices.at(job, row).of)); };
  rows.add = [prices](Job job) {
    const Product& sold = product_at(job, prices.chosen());
    const SalePrice next{cloths_and_marks(job).value(0).toStdString(), sold.price.value_or(sold.worth)};
    return prices.with(std::move(job), next);
  };
  rows.add_words = tr("add a price");
  rows.take_words = tr("take away %1");
  return {rows, {price_of_column(prices), sale_column(prices)}};
}

}  // namespace foldyard
