#include "shelf/roll_words.h"

#include <QStringList>

#include <algorithm>

#include "cloth/roll_estimate.h"
#include "drawing/words.h"
#include "job/decimal.h"
#include "job/yield_range.h"
#include "language/local_numbers.h"
#include "language/tr.h"

namespace foldyard {
namespace {

Length coarse(Unit unit) { return is_imperial(unit) ? Length::units(Length::kUnitsPerYard / 4) : Length::mm(100); }
Length down(Length length, Length step) { return length / step * step; }
Length up(Length length, Length step) { return down(length + step - Length::units(1), step); }
Length nearest(Length length, Length step) { return down(length + step / 2, step); }

QString percent(std::int64_t hundredths) {
  return tr("%1 %").arg(local_numbers(QString::fromStdString(write_decimal(hundredths, 2))));
}

// "32 cm along and 16 cm across", leaving out what is none.
QString both_ways(const QString& along, const QString& across) {
  if (across.isEmpty()) return tr("%1 along").arg(along);
  if (along.isEmpty()) return tr("%1 across").arg(across);
  return tr("%1 along and %2 across").arg(along, across);
}

QString repeat_text(const Repeat& repeat, Unit unit) {
  const auto one = [&](Length length) { return length.is_zero() ? QString() : length_words(length, unit); };
  const auto words = tr("repeats every %1").arg(both_ways(one(repeat.along), one(repeat.across)));
  return repeat.symmetric ? tr("%1, symmetric").arg(words) : words;
}

QString shrinkage_text(const Shrinkage& shrinkage) {
  const auto one = [](std::int64_t share) { return share == 0 ? QString() : percent(share); };
  return tr("shrinks %1").arg(both_ways(one(shrinkage.along), one(shrinkage.across)));
}

QString how_known(const Roll& roll) {
  if (!roll.measured) return {};
  return roll.is_found ? tr("length found when unrolled") : tr("length estimated");
}

}  // namespace

Unit roll_unit(Unit unit) { return is_imperial(unit) ? Unit::yard : Unit::m; }

Length shown_length(const Roll& roll, Unit unit) {
  const Length step = is_imperial(unit) ? Length::units(Length::kUnitsPerInch) : Length::mm(10);
  return is_estimated(roll) && roll.length >= step ? down(roll.length, step) : roll.length;
}

QString roll_length_words(const Roll& roll, Unit unit) {
  const Unit long_unit = roll_unit(unit);
  if (!is_estimated(roll)) return length_words(roll.length, long_unit);
  const Result<LengthEstimate> range = estimate_of(roll);
  if (!range) return length_words(roll.length, long_unit);
  const Length step = coarse(unit), least = down(range->least, step);
  const QString from = is_imperial(unit) ? length_words(least, long_unit) : local_numbers(QString::fromStdString(write_number(least, long_unit)));
  return tr("about %1 (%2 to %3)")
      .arg(length_words(nearest(range->likely, step), long_unit), from, length_words(up(range->most, step), long_unit));
}

QString roll_size_words(const Roll& roll, Unit unit) {
  return QStringLiteral("%1 × %2").arg(length_words(roll.fabric.width, unit), roll_length_words(roll, unit));
}

std::vector<RollMark> roll_marks(const Roll& roll) {
  std::vector<RollMark> marks;
  if (roll.fabric.nap == Nap::one_way) marks.push_back(RollMark::nap);
  if (roll.fabric.railroaded) marks.push_back(RollMark::railroaded);
  if (roll.fabric.repeat.is_any()) marks.push_back(RollMark::repeat);
  if (roll.fabric.shrinkage.is_any()) marks.push_back(RollMark::shrinkage);
  if (!roll.flaws.empty()) marks.push_back(RollMark::flaws);
  return marks;
}

QString mark_words(const Roll& roll, RollMark mark, Unit unit) {
  switch (mark) {
    case RollMark::nap: return tr("one-way nap");
    case RollMark::railroaded: return tr("railroaded");
    case RollMark::repeat: return repeat_text(roll.fabric.repeat, unit);
    case RollMark::shrinkage: return shrinkage_text(roll.fabric.shrinkage);
    case RollMark::flaws: break;
  }
  return tr("%n flaw(s)", nullptr, static_cast<int>(roll.flaws.size()));
}

QString roll_text(const Roll& roll, Unit unit, bool on_table) {
  QStringList words = {tr("%1: %2 wide, %3 long")
                           .arg(QString::fromStdString(roll.name), length_words(roll.fabric.width, unit),
                                roll_length_words(roll, unit))};
  if (on_table) words << tr("on the table");
  if (const auto known = how_known(roll); !known.isEmpty()) words << known;
  for (const RollMark mark : roll_marks(roll)) words << mark_words(roll, mark, unit);
  return words.join(QStringLiteral("; ")) + QLatin1Char('.');
}

bool has_words(const QString& text, const QString& typed) {
  const auto words = typed.split(QLatin1Char(' '), Qt::SkipEmptyParts);
  return std::all_of(words.begin(), words.end(),
                     [&](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
}

}  // namespace foldyard
