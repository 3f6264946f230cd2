#include "drawing/batch_sheet.h"

#include <QPainter>
#include <algorithm>

#include "drawing/front_page.h"
#include "drawing/pattern_page.h"
#include "drawing/pdf_pages.h"
#include "drawing/text.h"
#include "drawing/words.h"
#include "job/cautions.h"
#include "language/spoken.h"
#include "language/tr.h"
#include "measure/index.h"

namespace foldyard {
namespace {

constexpr double kHeadHeight = 12;
constexpr double kLaysHeight = 5;  // above a pattern's page
constexpr int kLabelsAcross = 3;
constexpr int kLabelsDown = 8;
const TextStyle kTitle{13, true, true, palette::ink()};
const TextStyle kLays{8, true, false, palette::ink()};
const TextStyle kLabelName{11, true, false, palette::ink()};
const TextStyle kLabelText{9, false, false, palette::ink()};

// Shares of a table's columns: by its longest cells, the last as long as it needs.
std::vector<double> shares_of(const BatchTable& table) {
  std::vector<double> widths;
  double sum = 0;
  for (qsizetype c = 0; c < table.head.size(); ++c) {
    qsizetype longest = table.head[c].size();
    for (const QStringList& row : table.rows) longest = std::max(longest, row[c].size());
    widths.push_back(static_cast<double>(std::clamp<qsizetype>(longest, 5, 34)) + 3);
    sum += widths.back();
  }
  for (double& width : widths) width /= sum;
  return widths;
}

void add_table(std::vector<ListLine>& lines, const BatchTable& table) {
  const std::vector<double> shares = shares_of(table);
  lines.push_back(heading_line(table.heading));
  lines.push_back({LineKind::head_row, table.head, shares, -1, true});
  for (const QStringList& row : table.rows) lines.push_back({LineKind::row, row, shares, -1, true});
  if (!table.note.isEmpty()) lines.push_back(paragraph_line(table.note));
  lines.push_back(gap_line());
}

std::vector<ListLine> ticket_lines(const BatchAnswer& answer) {
  std::vector<ListLine> lines{paragraph_line(batch_words(answer)), gap_line()};
  for (const BatchTable& table : batch_tables(answer)) add_table(lines, table);
  lines.push_back(heading_line(tr("Before you cut")));
  for (const std::string_view caution : cautions())
    lines.push_back(paragraph_line(spoken(caution)));
  lines.push_back(paragraph_line(spoken(height_caution(answer.job))));
  return lines;
}

QRectF list_area(const QSizeF& page) { return text_area(page).adjusted(0, kHeadHeight, 0, 0); }

// The roll's plan with the lays of the batch that are cut by the pattern.
Plan with_lays(Plan plan, int pattern, const std::vector<int>& stacks) {
  plan.lays.erase(std::remove_if(plan.lays.begin(), plan.lays.end(), [&](const Lay& lay) { return lay.pattern == pattern; }),
                  plan.lays.end());
  for (const int stack : stacks) plan.lays.push_back({pattern, stack});
  plan.way = plan.patterns[ix(pattern)].fold.way;
  return plan;
}

Sheet sheet_of(const Job& job, Plan plan, Paper paper) {
  Comparison comparison{plan.roll, plan.aim, {}, {0}, {0}};
  const FoldWay way = plan.way;
  comparison.ways.push_back({way, std::move(plan), {}});
  SheetOptions options;
  options.paper = paper;
  return Sheet(job, std::move(comparison), 0, options);
}

bool are_cut_alike(const Pattern& a, const Pattern& b) { return a.fold == b.fold && a.tree == b.tree && a.length == b.length; }

QString lay_title(int number, const QString& stack) { return tr("Lay %1: %2").arg(QString::number(number), stack); }

QString title_of(const QString& job) { return job.isEmpty() ? tr("Batch") : tr("Batch: %1").arg(job); }

std::vector<QStringList> label_texts(const BatchAnswer& answer) {
  std::vector<QStringList> labels;
  for (const BatchTable& table : batch_tables(answer)) {
    if (table.kind != BatchTableKind::remnants) continue;
    for (const QStringList& row : table.rows) {
      for (int n = row[2].toInt(); n > 0; --n) labels.push_back({row[0], row[1], tr("from %1", "a remnant from a roll").arg(row[3])});
    }
  }
  return labels;
}

}  // namespace

BatchSheet::BatchSheet(BatchAnswer answer, Paper paper)
    : answer_(std::move(answer)), paper_(paper), tickets_(list_pages(ticket_lines(answer_), list_area(page_size_mm()).size())),
      labels_(label_texts(answer_)) {
  add_patterns();
}

QSizeF BatchSheet::page_size_mm() const { return paper_size_mm(paper_, false); }

void BatchSheet::add_patterns() {
  struct Group {
    StackedLength first;
    std::vector<int> stacks;
    QStringList lays;
  };
  std::vector<Group> groups;
  int number = 0;
  for (const BatchLay& lay : answer_.plan.lays) {
    const auto same = std::find_if(groups.begin(), groups.end(), [&](const Group& group) {
      return are_cut_alike(pattern_of(answer_.plan, group.first), pattern_of(answer_.plan, lay));
    });
    const int size = static_cast<int>(lay.lengths.size());
    const QString words = lay_title(++number, stack_words(answer_, lay));
    if (same != groups.end()) {
      same->stacks.push_back(size);
      same->lays << words;
    } else {
      groups.push_back({lay.lengths[0], {size}, {words}});
    }
  }
  for (const Group& group : groups) {
    const Plan& plan = answer_.plan.rolls[ix(group.first.roll)];
    const LengthOnRoll& length = plan.lengths[ix(group.first.length)];
    const int pattern = plan.lays[ix(length.lay)].pattern;
    Sheet sheet = sheet_of(answer_.job, with_lays(plan, pattern, group.stacks), paper_);
    const int pages = pattern_pages(sheet, pattern);
    patterns_.push_back({std::move(sheet), pattern, pages, group.lays.join(QStringLiteral(" · "))});
  }
}

int BatchSheet::label_pages() const {
  const int each = kLabelsAcross * kLabelsDown;
  return (static_cast<int>(labels_.size()) + each - 1) / each;
}

int BatchSheet::pages() const {
  int pages = static_cast<int>(tickets_.size()) + label_pages();
  for (const PatternPages& each : patterns_) pages += each.pages;
  return pages;
}

void BatchSheet::paint(QPainter& painter, int page) const {
  const int tickets = static_cast<int>(tickets_.size());
  if (page < tickets) return paint_tickets(painter, page);
  int at = page - tickets;
  for (const PatternPages& each : patterns_) {
    if (at < each.pages) {
      draw_foot(painter, each.sheet, page, pages());
      const QRectF area = text_area(page_size_mm());
      draw_text(painter, QRectF(area.left(), area.top() - kLaysHeight, area.width(), kLaysHeight), each.lays, kLays);
      return draw_pattern_page(painter, each.sheet, each.pattern, at);
    }
    at -= each.pages;
  }
  paint_labels(painter, at);
}

void BatchSheet::paint_tickets(QPainter& painter, int page) const {
  const QRectF area = text_area(page_size_mm());
  const QString name = QString::fromStdString(answer_.job.name);
  draw_text(painter, QRectF(area.left(), area.top(), area.width(), 7),
            title_of(name), kTitle);
  if (!patterns_.empty()) draw_foot(painter, patterns_.front().sheet, page, pages());
  draw_list(painter, list_area(page_size_mm()), 1, 0, tickets_[ix(page)], 0);
}

void BatchSheet::paint_labels(QPainter& painter, int page) const {
  const QRectF area = text_area(page_size_mm());
  const double width = area.width() / kLabelsAcross, height = area.height() / kLabelsDown;
  const std::size_t each = kLabelsAcross * kLabelsDown;
  const std::size_t first = static_cast<std::size_t>(page) * each;
  for (std::size_t i = 0; i < each && first + i < labels_.size(); ++i) {
    const QRectF box(area.left() + width * static_cast<double>(i % kLabelsAcross),
                     area.top() + height * static_cast<double>(i / kLabelsAcross), width, height);
    painter.setPen(QPen(palette::ink(), 0.15, Qt::DashLine));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(box);
    const QRectF inner = box.adjusted(4, 4, -4, -4);
    const QStringList& text = labels_[first + i];
    for (int line = 0; line < 3; ++line)
      draw_text(painter, QRectF(inner.left(), inner.top() + line * inner.height() / 3, inner.width(), inner.height() / 3),
                text[line], line == 0 ? kLabelName : kLabelText);
  }
}

QByteArray batch_pdf(const BatchSheet& sheet) {
  return pdf_pages(sheet.paper(), false, QString::fromStdString(sheet.answer().job.name), sheet.pages(),
                   [&](QPainter& painter, int page) { sheet.paint(painter, page); });
}

}  // namespace foldyard
