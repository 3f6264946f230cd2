#include "window/range_line.h"

#include "drawing/range_words.h"
#include "measure/index.h"

namespace foldyard {
namespace {

QString order_of_work(const Job& job, const YieldRange& range) {
  QStringList lines = {order_words(job, range)};
  for (const RangeRow& row : further_rows(job, range)) lines << QStringLiteral("%1: %2 (%3)").arg(row.from, row.what, row.worth);
  lines << further_note(range);
  lines.removeAll(QString());
  return lines.join(QLatin1Char('\n'));
}

}  // namespace

QString range_line_words(const Job& job, const YieldRange& range) {
  const auto first = static_cast<int>(range.first.lengths.size());
  const QString cut = RangeLine::tr("Cut the %n length(s) of the plan first: even the shortest roll has them.", nullptr, first);
  return range_words(job, range) + QLatin1Char(' ') + cut;
}

RangeLine::RangeLine(FindRange find, QWidget* parent) : QLabel(parent), teller_(std::move(find)) {
  setWordWrap(true);
  setProperty("soft", true);
  setTextInteractionFlags(Qt::TextSelectableByMouse);
  setAccessibleName(tr("Yield by the length of the roll"));
  hide();
  connect(&teller_, &RangeTeller::told, this, [this](const std::shared_ptr<const RangeAnswer>& answer) { show_range(*answer); });
  connect(&teller_, &RangeTeller::refused, this, [this](const QString& reason) { setText(reason); });
}

void RangeLine::show_way(const AnswerPtr& answer, int way) {
  const bool is_any = answer && way >= 0;
  const auto roll = is_any ? static_cast<std::size_t>(answer->comparison.roll) : 0;
  if (!is_any || roll >= answer->job.rolls.size() || !is_estimated(answer->job.rolls[roll]) ||
      !answer->comparison.ways[ix(way)].plan) {
    teller_.forget();
    shown_.reset();
    return hide();
  }
  const RangeQuestion question{answer->job, answer->comparison.roll, answer->comparison.ways[ix(way)].way,
                               answer->comparison.aim};
  if (shown_ == question) return;
  shown_ = question;
  setText(tr("The length of this roll is estimated; what it may yield is being worked out…"));
  setToolTip({});
  show();
  teller_.ask(question);
}

void RangeLine::show_range(const RangeAnswer& answer) {
  setText(range_line_words(answer.question.job, answer.range));
  setToolTip(order_of_work(answer.question.job, answer.range));
}

}  // namespace foldyard
