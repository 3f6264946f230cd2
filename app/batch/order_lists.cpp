#include "batch/order_lists.h"

#include "batch/inner_list.h"
#include "batch/order_edits.h"
#include "batch/order_words.h"
#include "cloth/cloth_of.h"
#include "fields/field_text.h"
#include "language/tr.h"
#include "measure/index.h"

namespace foldyard {
namespace {

OrderLine& line_at(Job& job, int at) { return job.order.lines[ix(at)]; }
const OrderLine& line_at(const Job& job, int at) { return job.order.lines[ix(at)]; }

QStringList product_names(const Job& job) {
  QStringList names;
  for (const Product& product : job.products) names << QString::fromStdString(product.name);
  return names;
}

JobColumn count_column(const QString& head, const QString& help, const char* key, std::int64_t OrderLine::*count) {
  JobColumn column{head, help, key, [count](const Job& job, int row) { return QString::number(line_at(job, row).*count); }};
  column.put = [count](Job& job, int row, const QString& text) { return put_count(line_at(job, row).*count, text, job); };
  return column;
}

JobColumn product_column() {
  JobColumn column{tr("Product"), tr("What is to be made"), "product",
                   [](const Job& job, int row) { return product_name(job, line_at(job, row)); }};
  column.put = [](Job& job, int row, const QString& text) { return put_named(line_at(job, row).product, product_names(job), text); };
  column.choices = product_names;
  column.is_word = true;
  return column;
}

JobColumn from_column() {
  JobColumn column{tr("From"), tr("Cloths or marks that may serve, set apart by semicolons; empty: any cloth"), "from",
                   [](const Job& job, int row) { return words_text(line_at(job, row).from); }};
  column.put = [](Job& job, int row, const QString& text) -> std::optional<QString> {
    line_at(job, row).from = typed_words(text, job);
    return std::nullopt;
  };
  column.is_word = true;
  column.empty = tr("any");
  return column;
}

QStringList roll_choices(const Job& job) {
  QStringList names{tr("any")};
  for (const Roll& roll : job.rolls) names << QString::fromStdString(roll.name);
  return names;
}

JobColumn roll_column() {
  JobColumn column{tr("Roll"), tr("All pieces of the line come from this roll"), "roll",
                   [](const Job& job, int row) { return QString::fromStdString(line_at(job, row).roll); }};
  column.put = [](Job& job, int row, const QString& text) -> std::optional<QString> {
    const QString name = text.trimmed();
    line_at(job, row).roll = name == tr("any") ? std::string() : name.toStdString();
    return std::nullopt;
  };
  column.choices = roll_choices;
  column.is_word = true;
  column.empty = tr("any");
  return column;
}

QString rules_words(const OrderLine& line) {
  QStringList words;
  for (const ClothRule& rule : line.rules) words << rule_words(rule);
  return words.join(QLatin1String("; "));
}

JobColumn rules_column() {
  JobColumn column{tr("Rules"), tr("How many of a cloth or mark there are to be; they stand in the table below"), "rules",
                   [](const Job& job, int row) { return rules_words(line_at(job, row)); }};
  column.is_word = true;
  column.empty = tr("none");
  column.more = column.text;
  return column;
}

QString line_called(const Job& job, int row) { return tr("“%1”").arg(product_name(job, line_at(job, row))); }

using Rules = InnerList<OrderLine, ClothRule>;

JobRows rule_rows(const Rules& rules) {
  JobRows rows = inner_rows(rules, QStringLiteral("order.lines[%1].rules[%2]"));
  rows.called = [rules](const Job& job, int row) { return tr("the rule for “%1”").arg(QString::fromStdString(rules.at(job, row).of)); };
  rows.add = [rules](Job job) {
    const ClothRule rule{cloths_and_marks(job).value(0).toStdString(), 1, {}};
    return rules.with(std::move(job), rule);
  };
  rows.add_words = tr("add a rule");
  rows.take_words = tr("take away %1");
  return rows;
}

JobColumn rule_of_column(const Rules& rules) {
  JobColumn column{tr("Of"), tr("A cloth, or a mark that rolls have"), "of",
                   [rules](const Job& job, int row) { return QString::fromStdString(rules.at(job, row).of); }};
  column.put = [rules](Job& job, int row, const QString& text) -> std::optional<QString> {
    rules.at(job, row).of = text.trimmed().toStdString();
    return std::nullopt;
  };
  column.choices = cloths_and_marks;
  column.is_word = true;
  return column;
}

JobColumn at_least_column(const Rules& rules) {
  JobColumn column{tr("At least"), tr("So many pieces of it at least"), "at_least",
                   [rules](const Job& job, int row) { return QString::number(rules.at(job, row).at_least); }};
  column.put = [rules](Job& job, int row, const QString& text) { return put_count(rules.at(job, row).at_least, text, job); };
  return column;
}

JobColumn at_most_column(const Rules& rules) {
  JobColumn column{tr("At most"), tr("So many pieces of it at most; empty: as many as there are"), "at_most",
                   [rules](const Job& job, int row) {
                     const auto most = rules.at(job, row).at_most;
                     return most ? QString::number(*most) : QString();
                   }};
  column.put = [rules](Job& job, int row, const QString& text) -> std::optional<QString> {
    const auto limit = typed_limit(text);
    if (!limit) return order_problem_text(limit.problem(), job);
    rules.at(job, row).at_most = *limit;
    return std::nullopt;
  };
  column.empty = tr("any");
  return column;
}

}  // namespace

JobList line_list() {
  JobRows rows;
  rows.count = [](const Job& job) { return static_cast<int>(job.order.lines.size()); };
  rows.where = [](int row) { return QStringLiteral("order.lines[%1]").arg(row); };
  rows.called = line_called;
  rows.add = with_line;
  rows.take = without_line;
  rows.add_words = tr("add a line to the order");
  rows.take_words = tr("take %1 out of the order");
  return {rows,
          {product_column(), count_column(tr("Must"), tr("How many pieces are to be made"), "must", &OrderLine::must),
           count_column(tr("May"), tr("How many more may be made, where they are worth more than their cloth"), "may", &OrderLine::may),
           from_column(),
           count_column(tr("Of each"), tr("At least so many pieces of every cloth that may serve"), "each_at_least", &OrderLine::each_at_least),
           roll_column(), rules_column()}};
}

JobList rule_list(std::function<int()> line) {
  const Rules rules{[](Job& job) { return &job.order.lines; }, &OrderLine::rules, std::move(line)};
  return {rule_rows(rules), {rule_of_column(rules), at_least_column(rules), at_most_column(rules)}};
}

QString rule_words(const ClothRule& rule) {
  const QString of = QString::fromStdString(rule.of);
  if (rule.at_least > 0 && rule.at_most)
    return tr("at least %1 of %3 and at most %2 of %3").arg(rule.at_least).arg(*rule.at_most).arg(of);
  if (rule.at_most) return tr("at most %1 of %2").arg(*rule.at_most).arg(of);
  return rule.at_least > 0 ? tr("at least %1 of %2").arg(rule.at_least).arg(of) : QString();
}

QStringList cloths_and_marks(const Job& job) {
  QStringList cloths, marks;
  const auto add = [&](const std::string& cloth, const std::vector<std::string>& more) {
    cloths << QString::fromStdString(cloth);
    for (const std::string& mark : more) marks << QString::fromStdString(mark);
  };
  for (const Roll& roll : job.rolls) add(cloth_of(roll), roll.marks);
  for (const CutPanels& cut : job.on_hand) add(cut.cloth, cut.marks);
  QStringList all = cloths + marks;
  all.removeDuplicates();
  return all;
}

}  // namespace foldyard
