#include "batch/line_model.h"

#include "batch/order_words.h"

namespace foldyard {
namespace {

const char* const kHeads[LineModel::columns] = {
    QT_TRANSLATE_NOOP("foldyard::LineModel", "Product"), QT_TRANSLATE_NOOP("foldyard::LineModel", "Must"),
    QT_TRANSLATE_NOOP("foldyard::LineModel", "May"), QT_TRANSLATE_NOOP("foldyard::LineModel", "From"),
    QT_TRANSLATE_NOOP("foldyard::LineModel", "Of each")};

const char* const kHelp[LineModel::columns] = {
    QT_TRANSLATE_NOOP("foldyard::LineModel", "What is to be made"),
    QT_TRANSLATE_NOOP("foldyard::LineModel", "How many pieces are to be made"),
    QT_TRANSLATE_NOOP("foldyard::LineModel", "How many more may be made, where they are worth more than their cloth"),
    QT_TRANSLATE_NOOP("foldyard::LineModel", "Cloths or marks that may serve, set apart by semicolons; empty: any cloth"),
    QT_TRANSLATE_NOOP("foldyard::LineModel", "At least so many pieces of every cloth that may serve")};

const char* const kKeys[LineModel::columns] = {"product", "must", "may", "from", "each_at_least"};

bool is_word(int column) { return column == LineModel::product || column == LineModel::from; }

std::int64_t& count_of(OrderLine& line, int column) {
  if (column == LineModel::must) return line.must;
  return column == LineModel::may ? line.may : line.each_at_least;
}

QStringList product_names(const Job& job) {
  QStringList names;
  for (const Product& product : job.products) names << QString::fromStdString(product.name);
  return names;
}

QString rule_words(const ClothRule& rule) {
  const QString of = QString::fromStdString(rule.of);
  QStringList words;
  if (rule.at_least > 0) words << LineModel::tr("at least %1 of %2").arg(rule.at_least).arg(of);
  if (rule.at_most) words << LineModel::tr("at most %1 of %2").arg(*rule.at_most).arg(of);
  return words.join(LineModel::tr(" and "));
}

}  // namespace

LineModel::LineModel(Document& document, QObject* parent)
    : QAbstractTableModel(parent), document_(document), rows_(static_cast<int>(document.job().order.lines.size())) {
  connect(&document_, &Document::changed, this, &LineModel::show_job);
}

int LineModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : rows_; }
int LineModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : columns; }

const OrderLine& LineModel::line(int row) const { return document_.job().order.lines[static_cast<std::size_t>(row)]; }

QVariant LineModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const auto* refused = draft(index);
  const QString text = refused ? refused->text : cell_text(line(index.row()), index.column());
  switch (role) {
    case Qt::DisplayRole: return text.isEmpty() && index.column() == from ? tr("any") : text;
    case Qt::EditRole: return text;
    case Qt::AccessibleTextRole: return tr(kHeads[index.column()]) + QLatin1Char(' ') + text;
    case Qt::ToolTipRole:
    case Qt::AccessibleDescriptionRole: return refused ? refused->reason : help_text(line(index.row()), index.column());
    case kReasonRole: return refused ? refused->reason : QString();
    case kProductsRole: return index.column() == product ? QVariant(product_names(document_.job())) : QVariant();
    case Qt::TextAlignmentRole:
      return QVariant(Qt::AlignVCenter | (is_word(index.column()) ? Qt::AlignLeft : Qt::AlignRight));
    default: return {};
  }
}

QVariant LineModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || section < 0 || section >= columns) return {};
  if (role == Qt::DisplayRole) return tr(kHeads[section]);
  if (role == Qt::ToolTipRole) return tr(kHelp[section]);
  if (role == Qt::TextAlignmentRole)
    return QVariant(Qt::AlignVCenter | (is_word(section) ? Qt::AlignLeft : Qt::AlignRight));
  return {};
}

Qt::ItemFlags LineModel::flags(const QModelIndex& index) const {
  return index.isValid() ? Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsEditable : Qt::NoItemFlags;
}

bool LineModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (!index.isValid() || role != Qt::EditRole) return false;
  Job next = document_.job();
  const QString text = value.toString();
  auto reason = put(next, index, text);
  if (!reason) {
    const auto words = tr("change “%1” of “%2”").arg(tr(kHeads[index.column()]).toLower(), product_name(next, line(index.row())));
    const auto key = QStringLiteral("order.lines[%1].%2").arg(index.row()).arg(QLatin1String(kKeys[index.column()]));
    if (const auto problem = document_.edit(next, words, key)) reason = order_problem_text(*problem, next);
  }
  if (reason) {
    refuse(index, text, *reason);
    return false;
  }
  if (drafts_.erase({index.row(), index.column()}) > 0) emit dataChanged(this->index(index.row(), 0), index);
  return true;
}

QString LineModel::first_reason() const { return drafts_.empty() ? QString() : drafts_.begin()->second.reason; }

void LineModel::show_job() {
  const int rows = static_cast<int>(document_.job().order.lines.size());
  if (rows != rows_) {
    beginResetModel();
    drafts_.clear();
    rows_ = rows;
    endResetModel();
  } else if (rows > 0) {
    emit dataChanged(index(0, 0), index(rows - 1, columns - 1));
  }
}

QString LineModel::cell_text(const OrderLine& line, int column) const {
  switch (column) {
    case product: return product_name(document_.job(), line);
    case must: return QString::number(line.must);
    case may: return QString::number(line.may);
    case from: return words_text(line.from);
    default: return QString::number(line.each_at_least);
  }
}

QString LineModel::help_text(const OrderLine& line, int column) const {
  QStringList words{tr(kHelp[column])};
  for (const ClothRule& rule : line.rules) words << tr("Rule: %1").arg(rule_words(rule));
  return words.join(QLatin1Char('\n'));
}

// Puts the text into the job; gives the reason where it means nothing.
std::optional<QString> LineModel::put(Job& job, const QModelIndex& index, const QString& text) const {
  auto& line = job.order.lines[static_cast<std::size_t>(index.row())];
  if (index.column() == product) return put_product(line, text);
  if (index.column() == from) {
    line.from = typed_words(text, job);
    return std::nullopt;
  }
  const auto count = typed_count(text);
  if (!count) return order_problem_text(count.problem(), job);
  count_of(line, index.column()) = *count;
  return std::nullopt;
}

std::optional<QString> LineModel::put_product(OrderLine& line, const QString& text) const {
  const QStringList names = product_names(document_.job());
  const auto at = names.indexOf(text.trimmed());
  if (at < 0) return tr("There is no product “%1”; choose one of: %2.").arg(text.trimmed(), names.join(QLatin1String("; ")));
  line.product = static_cast<int>(at);
  return std::nullopt;
}

void LineModel::refuse(const QModelIndex& index, const QString& text, const QString& reason) {
  drafts_[{index.row(), index.column()}] = {text, reason};
  emit dataChanged(index, index);
}

const LineModel::Draft* LineModel::draft(const QModelIndex& index) const {
  const auto found = drafts_.find({index.row(), index.column()});
  return found == drafts_.end() ? nullptr : &found->second;
}

}  // namespace foldyard
