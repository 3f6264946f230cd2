#include "batch/sewing_lists.h"

#include <algorithm>

#include "batch/inner_list.h"
#include "batch/order_words.h"
#include "batch/sewing_edits.h"
#include "drawing/words.h"
#include "fields/duration_text.h"
#include "goods/sewing_time.h"
#include "job/batch_money.h"
#include "language/tr.h"
#include "language/utf8.h"
#include "measure/index.h"

namespace foldyard {
namespace {

using Orders = InnerList<Product, SewingOrder>;
using Steps = InnerList<SewingOrder, SewingStep>;


QString rounded_time(Duration time) { return duration_text(Duration::seconds((time + Duration::ms(500)).ticks() / Duration::seconds(1).ticks())); }

std::optional<QString> put_name(std::string& name, const QString& typed) {
  name = typed.trimmed().toStdString();
  return std::nullopt;
}

JobColumn order_name_column(const Orders& orders) {
  JobColumn column{tr("Order of operations"), tr("The first is the one that is used"), "name", [orders](const Job& job, int row) {
                     return text(orders.at(job, row).name);
                   }};
  column.put = [orders](Job& job, int row, const QString& typed) { return put_name(orders.at(job, row).name, typed); };
  column.is_word = true;
  return column;
}

JobColumn a_piece_column(const SewingPlace& place) {
  return {tr("A piece"), tr("Minutes a piece, with the allowance"), "name", [place](const Job& job, int row) {
            return rounded_time(sewing_time(job, job.products[ix(place.product())], static_cast<std::size_t>(row)));
          }};
}

JobColumn batch_column(const SewingPlace& place) {
  return {tr("The batch"), tr("For all pieces of the batch"), "name", [place](const Job& job, int row) {
            const int product = place.product();
            return minutes_words(sewing_time(job, job.products[ix(product)], static_cast<std::size_t>(row)) * place.pieces(product));
          }};
}

JobColumn saves_column(const SewingPlace& place) {
  return {tr("Saves"), tr("What it saves over the batch against the one that is used, at your rate"), "name", [place](const Job& job, int row) {
            const int product = place.product();
            return row == 0 ? tr("used")
                            : worth_words(saved_by_order(job, job.products[ix(product)], place.pieces(product), static_cast<std::size_t>(row)));
          }};
}

JobColumn step_name_column(const Steps& steps) {
  JobColumn column{tr("Step"), tr("What is done"), "name", [steps](const Job& job, int row) { return text(steps.at(job, row).name); }};
  column.put = [steps](Job& job, int row, const QString& typed) { return put_name(steps.at(job, row).name, typed); };
  column.is_word = true;
  return column;
}

JobColumn usual_column(const Steps& steps) {
  JobColumn column{tr("Assumed"), tr("Minutes and seconds a piece, until it is timed"), "seconds",
                   [steps](const Job& job, int row) { return duration_text(steps.at(job, row).usual); }};
  column.put = [steps](Job& job, int row, const QString& typed) { return put_time(steps.at(job, row).usual, typed, job); };
  return column;
}

QString times_text(const std::vector<Duration>& times) {
  QStringList list;
  for (const Duration time : times) list << duration_text(time);
  return list.join(QLatin1String("; "));
}

std::optional<QString> put_times(std::vector<Duration>& times, const QString& typed, const Job& job) {
  std::vector<Duration> read;
  for (const QString& each : typed.split(QLatin1Char(';'), Qt::SkipEmptyParts)) {
    if (each.trimmed().isEmpty()) continue;
    if (const auto refused = put_time(read.emplace_back(), each, job)) return refused;
  }
  times = read;
  return std::nullopt;
}

JobColumn timed_column(const Steps& steps) {
  JobColumn column{tr("Timed"), tr("Times that were taken, set apart by semicolons; their median counts"), "timed",
                   [steps](const Job& job, int row) { return times_text(steps.at(job, row).timed); }};
  column.put = [steps](Job& job, int row, const QString& typed) { return put_times(steps.at(job, row).timed, typed, job); };
  column.empty = tr("never");
  return column;
}

JobColumn counts_column(const Steps& steps) {
  JobColumn column{tr("Counts"), tr("The time that is reckoned with, without the allowance"), "seconds",
                   [steps](const Job& job, int row) { return counts_as(steps.at(job, row)); }};
  column.is_word = true;
  return column;
}

JobColumn tenth_column(const Steps& steps, const SewingPlace& place) {
  return {tr("A tenth less"), tr("What it saves over the batch, at your rate, if this step takes a tenth less"), "seconds",
          [steps, place](const Job& job, int row) {
            const Duration tenth = Duration::ticks(basic_time(steps.at(job, row)).ticks() / 10);
            return worth_words(saved_by_step(job, place.pieces(place.product()), tenth));
          }};
}

QStringList times_row(const QString& what, const Product& product, const std::function<QString(std::size_t)>& of_order) {
  QStringList row{what};
  for (std::size_t i = 0; i < product.sewing.size(); ++i) row << of_order(i);
  return row;
}

}  // namespace

JobList sewing_order_list(const SewingPlace& place) {
  const Orders orders{[](Job& job) { return &job.products; }, &Product::sewing, place.product};
  JobRows rows = inner_rows(orders, QStringLiteral("products[%1].sewing[%2]"));
  rows.called = [orders](const Job& job, int row) { return tr("the order “%1”").arg(text(orders.at(job, row).name)); };
  rows.add = [place](Job job) { return with_sewing_order(std::move(job), place.product()); };
  rows.add_words = tr("add an order of operations");
  rows.take_words = tr("take away %1");
  return {rows, {order_name_column(orders), a_piece_column(place), batch_column(place), saves_column(place)}};
}

JobList step_list(const SewingPlace& place) {
  const auto orders = [place](Job& job) -> std::vector<SewingOrder>* {
    const int product = place.product();
    return product < 0 || product >= std::ssize(job.products) ? nullptr : &job.products[ix(product)].sewing;
  };
  const Steps steps{orders, &SewingOrder::steps, place.order};
  JobRows rows = inner_rows(steps, QString());
  rows.where = [place](int row) {
    return QStringLiteral("products[%1].sewing[%2].steps[%3]").arg(place.product()).arg(place.order()).arg(row);
  };
  rows.called = [steps](const Job& job, int row) { return tr("the step “%1”").arg(text(steps.at(job, row).name)); };
  rows.add = [place](Job job) { return with_step(std::move(job), place.product(), place.order()); };
  rows.move = [steps](Job job, int row, int by) { return steps.moved(std::move(job), row, by); };
  rows.add_words = tr("add a step");
  rows.take_words = tr("take away %1");
  rows.move_words = tr("move %1");
  return {rows, {step_name_column(steps), usual_column(steps), timed_column(steps), counts_column(steps), tenth_column(steps, place)}};
}

QString counts_as(const SewingStep& step) {
  const QString time = duration_text(basic_time(step));
  if (is_assumed(step)) return tr("%1, assumed").arg(time);
  return tr("%1, timed %n time(s)", nullptr, static_cast<int>(step.timed.size())).arg(time);
}

SideBySideSteps steps_side_by_side(const Job& job, int at, std::int64_t pieces) {
  const Product& product = job.products[ix(at)];
  SideBySideSteps table{{tr("Step")}, {}};
  std::size_t most = 0;
  for (const SewingOrder& order : product.sewing) {
    table.head << text(order.name);
    most = std::max(most, order.steps.size());
  }
  for (std::size_t k = 0; k < most; ++k) {
    table.rows.push_back(times_row(QString::number(k + 1), product, [&](std::size_t i) {
      const auto& steps = product.sewing[i].steps;
      return k < steps.size() ? tr("%1 %2").arg(text(steps[k].name), duration_text(basic_time(steps[k]))) : QString();
    }));
  }
  table.rows.push_back(times_row(tr("a piece"), product, [&](std::size_t i) { return rounded_time(basic_time(product.sewing[i])); }));
  table.rows.push_back(times_row(tr("with allowance"), product, [&](std::size_t i) { return rounded_time(sewing_time(job, product, i)); }));
  table.rows.push_back(times_row(tr("%n piece(s)", nullptr, static_cast<int>(pieces)), product, [&](std::size_t i) { return minutes_words(sewing_time(job, product, i) * pieces); }));
  return table;
}

}  // namespace foldyard
