#include "window/panel_model.h"

#include <algorithm>

#include "drawing/goods_words.h"
#include "job/panel_away.h"
#include "job/resize_goods.h"
#include "job/start_job.h"
#include "fields/field_text.h"
#include "fields/reading_order.h"
#include "language/heading_words.h"
#include "language/spoken.h"
#include "measure/index.h"
#include "window/window_colours.h"

#include <QGuiApplication>

namespace foldyard {
namespace {

const char* const kPanelHeads[PanelModel::columns] = {
    QT_TRANSLATE_NOOP("foldyard::PanelModel", "Panel"), QT_TRANSLATE_NOOP("foldyard::PanelModel", "Across"),
    QT_TRANSLATE_NOOP("foldyard::PanelModel", "Along"), QT_TRANSLATE_NOOP("foldyard::PanelModel", "Worth"),
    QT_TRANSLATE_NOOP("foldyard::PanelModel", "Turn"),  QT_TRANSLATE_NOOP("foldyard::PanelModel", "On fold"),
    QT_TRANSLATE_NOOP("foldyard::PanelModel", "At most"), QT_TRANSLATE_NOOP("foldyard::PanelModel", "Match"),
    QT_TRANSLATE_NOOP("foldyard::PanelModel", "Grain")};

const char* const kPanelHelp[PanelModel::columns] = {
    QT_TRANSLATE_NOOP("foldyard::PanelModel", "The name of the panel"),
    QT_TRANSLATE_NOOP("foldyard::PanelModel", "Its size from selvedge to selvedge, seams and hems included"),
    QT_TRANSLATE_NOOP("foldyard::PanelModel", "Its size in the roll's direction, seams and hems included"),
    QT_TRANSLATE_NOOP("foldyard::PanelModel", "What one is worth to the maker"),
    QT_TRANSLATE_NOOP("foldyard::PanelModel", "It may also lie turned by a quarter"),
    QT_TRANSLATE_NOOP("foldyard::PanelModel", "It may be cut double across a fold edge, with a crease in its middle"),
    QT_TRANSLATE_NOOP("foldyard::PanelModel", "No plan cuts more of them; empty: as many as are worth it"),
    QT_TRANSLATE_NOOP("foldyard::PanelModel", "On cloth with a repeat: it begins at the start of a repeat, or with the motif centred in it"),
    QT_TRANSLATE_NOOP("foldyard::PanelModel", "On railroaded cloth: its along size runs with the pattern or with the warp")};

const char* const kKeys[PanelModel::columns] = {"name", "across", "along", "worth", "may_turn", "on_fold", "at_most", "match", "grain"};

// In the order of Match and Grain.
const char* const kMatches[] = {QT_TRANSLATE_NOOP("foldyard::PanelModel", "none"),
                                QT_TRANSLATE_NOOP("foldyard::PanelModel", "start"),
                                QT_TRANSLATE_NOOP("foldyard::PanelModel", "centred")};
const char* const kGrains[] = {QT_TRANSLATE_NOOP("foldyard::PanelModel", "pattern"),
                               QT_TRANSLATE_NOOP("foldyard::PanelModel", "warp")};

// Empty where the column is no choice.
QStringList choices_of(int column) {
  QStringList words;
  if (column == PanelModel::match)
    for (const char* each : kMatches) words << PanelModel::tr(each);
  if (column == PanelModel::grain)
    for (const char* each : kGrains) words << PanelModel::tr(each);
  return words;
}

bool is_usual(const Panel& panel, int column) {
  switch (column) {
    case PanelModel::at_most: return !panel.at_most;
    case PanelModel::match: return panel.match == Match::none;
    case PanelModel::grain: return panel.grain == Grain::pattern;
    default: return true;
  }
}

bool is_flag(int column) { return column == PanelModel::may_turn || column == PanelModel::on_fold; }

bool& flag_of(Panel& panel, int column) {
  return column == PanelModel::may_turn ? panel.may_turn : panel.on_fold;
}

QString shown_text(const QString& text, int column, int role) {
  if (role != Qt::DisplayRole) return text;
  return column == PanelModel::name ? breakable(text) : in_own_order(breakable(text));
}

QString field_key(const QModelIndex& index) {
  return QStringLiteral("panels[%1].%2").arg(index.row()).arg(QLatin1String(kKeys[index.column()]));
}

QString free_name(const Job& job) {
  for (std::size_t n = job.panels.size() + 1;; ++n) {
    const auto name = PanelModel::tr("Panel %1").arg(n);
    const bool taken = std::any_of(job.panels.begin(), job.panels.end(),
                                   [&](const Panel& panel) { return panel.name == name.toStdString(); });
    if (!taken) return name;
  }
}

}  // namespace

PanelModel::PanelModel(Document& document, QObject* parent)
    : QAbstractTableModel(parent), document_(document), rows_(static_cast<int>(document.job().panels.size())) {
  connect(&document_, &Document::changed, this, &PanelModel::show_job);
}

int PanelModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : rows_; }
int PanelModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : columns; }

QVariant PanelModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const auto& panel = document_.job().panels[ix(index.row())];
  const auto* refused = draft(index);
  switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole:
      if (is_flag(index.column())) return {};
      return shown_text(refused ? refused->text : cell_text(panel, index.column()), index.column(), role);
    case Qt::CheckStateRole:
      if (!is_flag(index.column())) return {};
      return (index.column() == may_turn ? panel.may_turn : panel.on_fold) ? Qt::Checked : Qt::Unchecked;
    case Qt::ToolTipRole:
      return refused ? refused->reason : help_text(panel, index.column());
    case Qt::AccessibleTextRole:
      return tr(kPanelHeads[index.column()]) + QLatin1Char(' ') +
             (refused ? refused->text : spoken_text(panel, index.column()));
    case Qt::AccessibleDescriptionRole:
      return refused ? refused->reason : help_text(panel, index.column());
    case kChoicesRole:
      return choices_of(index.column());
    case ReasonRole:
      return refused ? refused->reason : QString();
    case Qt::TextAlignmentRole:
      return QVariant(Qt::AlignVCenter | (index.column() == name || index.column() > at_most ? Qt::AlignLeft : Qt::AlignRight));
    case Qt::ForegroundRole:
      return refused ? QVariant(window_colours(shade_of(QGuiApplication::palette())).fault) : QVariant();
    default:
      return {};
  }
}

QVariant PanelModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || section < 0 || section >= columns) return {};
  if (role == Qt::DisplayRole) return tr(kPanelHeads[section]);
  if (role == Qt::ToolTipRole) return tr(kPanelHelp[section]);
  if (role == Qt::TextAlignmentRole)
    return QVariant(Qt::AlignVCenter | (section == name || is_flag(section) || section > at_most ? Qt::AlignLeft : Qt::AlignRight));
  return {};
}

Qt::ItemFlags PanelModel::flags(const QModelIndex& index) const {
  if (!index.isValid()) return Qt::NoItemFlags;
  return Qt::ItemIsEnabled | Qt::ItemIsSelectable |
         (is_flag(index.column()) ? Qt::ItemIsUserCheckable : Qt::ItemIsEditable);
}

bool PanelModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (!index.isValid()) return false;
  if (role == Qt::CheckStateRole && is_flag(index.column())) return set_flag(index, value.toInt() == Qt::Checked);
  if (role != Qt::EditRole || is_flag(index.column())) return false;
  return set_text(index, value.toString());
}

std::optional<Problem> PanelModel::add_panel() {
  Job next = document_.job();
  Panel panel = next.panels.back();
  panel.name = free_name(next).toStdString();
  next.panels.push_back(panel);
  return document_.edit(next, tr("add “%1”").arg(QString::fromStdString(panel.name)));
}

std::optional<Problem> PanelModel::add_ready(const ReadyGoods& ready) {
  Job next = document_.job();
  const QString whose = spoken(ready.name);
  if (auto problem = add_goods(next, whose.toStdString(), ready.goods, ready.is_lined, foldyard::spoken_text)) return problem;
  return document_.edit(next, tr("add “%1”").arg(whose));
}

std::optional<Problem> PanelModel::take_away(int row) {
  const Job& job = document_.job();
  const auto next = without_panel(job, row);
  if (!next) return next.problem();
  const auto whose = QString::fromStdString(job.panels[ix(row)].name);
  return document_.edit(*next, tr("take away “%1”").arg(whose));
}

bool PanelModel::is_used(int column) const {
  const auto& panels = document_.job().panels;
  return std::any_of(panels.begin(), panels.end(), [&](const Panel& panel) { return !is_usual(panel, column); });
}

QString PanelModel::reason(const QModelIndex& index) const {
  const auto* refused = draft(index);
  return refused ? refused->reason : QString();
}

QString PanelModel::first_reason() const {
  return drafts_.empty() ? QString() : drafts_.begin()->second.reason;
}

void PanelModel::drop_draft(const QModelIndex& index) {
  if (drafts_.erase({index.row(), index.column()}) > 0) emit dataChanged(index, index);
}

void PanelModel::show_job() {
  const int rows = static_cast<int>(document_.job().panels.size());
  if (rows != rows_) {
    beginResetModel();
    drafts_.clear();
    rows_ = rows;
    endResetModel();
  } else if (rows > 0) {
    emit dataChanged(index(0, 0), index(rows - 1, columns - 1));
  }
}

bool PanelModel::set_flag(const QModelIndex& index, bool on) {
  Job next = document_.job();
  flag_of(next.panels[ix(index.row())], index.column()) = on;
  return apply(next, index, {});
}

bool PanelModel::set_text(const QModelIndex& index, const QString& text) {
  Job next = document_.job();
  if (const auto reason = put(next, index, text)) {
    refuse(index, text, *reason);
    return false;
  }
  return apply(next, index, text);
}

// Puts the text into the job; gives the reason where it means nothing.
std::optional<QString> PanelModel::put(Job& job, const QModelIndex& index, const QString& text) const {
  auto& panel = job.panels[ix(index.row())];
  if (index.column() == name) {
    panel.name = text.trimmed().toStdString();
    return std::nullopt;
  }
  if (index.column() == worth) {
    const auto read = typed_worth(text);
    if (!read) return problem_text(read.problem(), job);
    panel.worth = *read;
    return std::nullopt;
  }
  if (index.column() == at_most) {
    const auto read = typed_limit(text);
    if (!read) return problem_text(read.problem(), job);
    panel.at_most = *read;
    return std::nullopt;
  }
  if (index.column() > at_most) return put_choice(panel, index.column(), text);
  const auto read = typed_length(text, job.unit);
  if (!read) return problem_text(read.problem(), job);
  return put_size(job, index, *read);
}

std::optional<QString> PanelModel::put_choice(Panel& panel, int column, const QString& text) const {
  const auto choices = choices_of(column);
  const int chosen = static_cast<int>(choices.indexOf(text.trimmed()));
  if (chosen < 0) return tr("“%1” is none of these: %2.").arg(text.trimmed(), choices.join(QStringLiteral(", ")));
  if (column == match) panel.match = static_cast<Match>(chosen);
  else panel.grain = static_cast<Grain>(chosen);
  return std::nullopt;
}

std::optional<QString> PanelModel::put_size(Job& job, const QModelIndex& index, Length size) const {
  auto& panel = job.panels[ix(index.row())];
  const bool is_across = index.column() == across;
  if (!panel.sewn) {
    (is_across ? panel.across : panel.along) = size;
    return std::nullopt;
  }
  auto next = resize_goods(job, index.row(), is_across ? size : panel.across, is_across ? panel.along : size);
  if (!next) return problem_text(next.problem(), job);
  job = *next;
  return std::nullopt;
}

bool PanelModel::apply(const Job& next, const QModelIndex& index, const QString& text) {
  const auto whose = QString::fromStdString(document_.job().panels[ix(index.row())].name);
  const auto head = heading_words(tr(kPanelHeads[index.column()]));
  const auto words = index.column() == name ? tr("rename “%1”").arg(whose)
                                            : tr("change “%1” of “%2”").arg(head, whose);
  if (const auto problem = document_.edit(next, words, is_flag(index.column()) ? QString() : field_key(index))) {
    refuse(index, text, problem_text(*problem, next));
    return false;
  }
  drop_draft(index);
  return true;
}

void PanelModel::refuse(const QModelIndex& index, const QString& text, const QString& reason) {
  drafts_[{index.row(), index.column()}] = {text, reason};
  emit dataChanged(index, index);
}

QString PanelModel::help_text(const Panel& panel, int column) const {
  if (!panel.sewn || column > along) return tr(kPanelHelp[column]);
  const auto& [goods, piece, lining] = *panel.sewn;
  const auto what = spoken(piece_name(goods.kind, piece, lining));
  const auto finished = goods_words(goods, document_.job().unit);
  const auto into = what.isEmpty() ? tr("Sewn into: %1").arg(finished) : tr("Sewn as %1 into: %2").arg(what, finished);
  return tr(kPanelHelp[column]) + QLatin1Char('\n') + into;
}

QString PanelModel::cell_text(const Panel& panel, int column) const {
  const auto unit = document_.job().unit;
  switch (column) {
    case name: return QString::fromStdString(panel.name);
    case across: return length_text(panel.across, unit);
    case along: return length_text(panel.along, unit);
    case worth: return worth_text(panel.worth);
    case at_most: return panel.at_most ? QString::number(*panel.at_most) : QString();
    case match: return choices_of(match)[static_cast<int>(panel.match)];
    case grain: return choices_of(grain)[static_cast<int>(panel.grain)];
    case may_turn: return panel.may_turn ? tr("yes") : tr("no");
    default: return panel.on_fold ? tr("yes") : tr("no");
  }
}

QString PanelModel::spoken_text(const Panel& panel, int column) const {
  return column == at_most && !panel.at_most ? tr("no limit") : cell_text(panel, column);
}

const PanelModel::Draft* PanelModel::draft(const QModelIndex& index) const {
  const auto found = drafts_.find({index.row(), index.column()});
  return found == drafts_.end() ? nullptr : &found->second;
}

}  // namespace foldyard
