#include "drawing/facts.h"

#include "cloth/roll_estimate.h"
#include "drawing/range_words.h"
#include "drawing/words.h"
#include "job/decimal.h"
#include "language/local_numbers.h"
#include "language/tr.h"

namespace foldyard {
namespace {

QString measure_name(std::size_t index) {
  switch (index) {
    case 0: return tr("diameters", "by its diameters");
    case 1: return tr("turns", "by its turns");
    default: return tr("weight", "by its weight");
  }
}

QString percent_words(std::int64_t hundredths) {
  return local_numbers(QString::fromStdString(write_decimal(hundredths, 2))) + QStringLiteral(" %");
}

// side: "64 cm along".
QString with_start(const QString& side, Length start, Unit unit) {
  return start > Length() ? tr("%1 (the first from %2)").arg(side, length_words(start, unit)) : side;
}

QString repeat_words(const Repeat& repeat, Unit unit) {
  QStringList sides;
  if (repeat.along > Length()) {
    sides << with_start(tr("%1 along").arg(length_words(repeat.along, unit)), repeat.start_along, unit);
  }
  if (repeat.across > Length()) {
    sides << with_start(tr("%1 across").arg(length_words(repeat.across, unit)), repeat.start_across, unit);
  }
  return (repeat.symmetric ? tr("a repeat of %1, the same mirrored") : tr("a repeat of %1")).arg(and_joined(sides));
}

QString shrinkage_words(const Shrinkage& shrinkage) {
  QStringList sides;
  if (shrinkage.along > 0) sides << tr("%1 along").arg(percent_words(shrinkage.along));
  if (shrinkage.across > 0) sides << tr("%1 across").arg(percent_words(shrinkage.across));
  return tr("shrinks %1").arg(and_joined(sides));
}

}  // namespace

QString measured_words(const Roll& roll, Unit unit) {
  if (!roll.measured) return {};
  const Result<LengthEstimate> length = estimate_of(roll);
  if (!length) return {};
  return (roll.is_found ? tr("%1, by its %2; found %3 long") : tr("%1, by its %2; plans count on %3"))
      .arg(estimate_words(*length, unit), measure_name(roll.measured->index()), length_words(roll.length, unit));
}

QString flaw_words(const Flaw& flaw, const Fabric& fabric, Unit unit) {
  const QString kind = flaw.kind.empty() ? tr("flaw") : QString::fromStdString(flaw.kind);
  const QString from = length_words(flaw.along.from, unit), to = length_words(flaw.along.to, unit);
  if (flaw.across == Span{Length(), fabric.width}) return tr("%1 from %2 to %3, the whole width").arg(kind, from, to);
  return tr("%1 from %2 to %3, %4 to %5 from the left edge")
      .arg(kind, from, to, length_words(flaw.across.from, unit), length_words(flaw.across.to, unit));
}

QStringList roll_facts(const Roll& roll, Unit unit) {
  const Fabric& fabric = roll.fabric;
  QStringList facts;
  if (roll.measured) facts << measured_words(roll, unit);
  if (fabric.nap == Nap::one_way) facts << tr("one-way");
  if (fabric.railroaded) facts << tr("railroaded");
  if (fabric.repeat.is_any()) facts << repeat_words(fabric.repeat, unit);
  if (fabric.shrinkage.is_any()) facts << shrinkage_words(fabric.shrinkage);
  for (const Flaw& flaw : roll.flaws) facts << flaw_words(flaw, fabric, unit);
  return facts;
}

QStringList panel_facts(const Panel& panel) {
  QStringList facts;
  if (panel.at_most) facts << tr("at most %1").arg(*panel.at_most);
  if (panel.grain == Grain::warp) facts << tr("keeps to the warp");
  if (panel.match == Match::start) facts << tr("begins with a repeat");
  if (panel.match == Match::centred) facts << tr("has the motif in its middle");
  return facts;
}

}  // namespace foldyard
