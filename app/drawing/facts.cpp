#include "drawing/facts.h"

#include "cloth/length_estimate.h"
#include "drawing/range_words.h"
#include "drawing/words.h"
#include "job/decimal.h"

namespace foldyard {
namespace {

const char* const kMeasures[] = {"diameters", "turns", "weight"};  // in the order of RollMeasure

QString percent_words(std::int64_t hundredths) {
  return QString::fromStdString(write_decimal(hundredths, 2)) + QStringLiteral(" %");
}

QString repeat_side_words(Length repeat, Length start, const QString& way, Unit unit) {
  QString words = length_words(repeat, unit) + QLatin1Char(' ') + way;
  if (start > Length()) words += QStringLiteral(" (the first from %1)").arg(length_words(start, unit));
  return words;
}

QString repeat_words(const Repeat& repeat, Unit unit) {
  QStringList sides;
  if (repeat.along > Length()) {
    sides << repeat_side_words(repeat.along, repeat.start_along, QStringLiteral("along"), unit);
  }
  if (repeat.across > Length()) {
    sides << repeat_side_words(repeat.across, repeat.start_across, QStringLiteral("across"), unit);
  }
  const QString symmetric = repeat.symmetric ? QStringLiteral(", the same mirrored") : QString();
  return QStringLiteral("a repeat of ") + sides.join(QStringLiteral(" and ")) + symmetric;
}

QString shrinkage_words(const Shrinkage& shrinkage) {
  QStringList sides;
  if (shrinkage.along > 0) sides << percent_words(shrinkage.along) + QStringLiteral(" along");
  if (shrinkage.across > 0) sides << percent_words(shrinkage.across) + QStringLiteral(" across");
  return QStringLiteral("shrinks ") + sides.join(QStringLiteral(" and "));
}

}  // namespace

QString measured_words(const Roll& roll, Unit unit) {
  if (!roll.measured) return {};
  const Result<LengthEstimate> length = estimate(*roll.measured, roll.fabric.width);
  if (!length) return {};
  const auto words = QStringLiteral("%1, by its %2; ")
                         .arg(estimate_words(*length, unit), QLatin1String(kMeasures[roll.measured->index()]));
  return words + (roll.is_found ? QStringLiteral("found %1 long")
                                : QStringLiteral("plans count on %1"))
                     .arg(length_words(roll.length, unit));
}

QString flaw_words(const Flaw& flaw, const Fabric& fabric, Unit unit) {
  const QString kind = flaw.kind.empty() ? QStringLiteral("flaw") : QString::fromStdString(flaw.kind);
  const auto place = QStringLiteral("%1 from %2 to %3").arg(kind, length_words(flaw.along.from, unit),
                                                             length_words(flaw.along.to, unit));
  if (flaw.across == Span{Length(), fabric.width}) return place + QStringLiteral(", the whole width");
  return place + QStringLiteral(", %1 to %2 from the left edge")
                     .arg(length_words(flaw.across.from, unit), length_words(flaw.across.to, unit));
}

QStringList roll_facts(const Roll& roll, Unit unit) {
  const Fabric& fabric = roll.fabric;
  QStringList facts;
  if (roll.measured) facts << measured_words(roll, unit);
  if (fabric.nap == Nap::one_way) facts << QStringLiteral("one-way");
  if (fabric.railroaded) facts << QStringLiteral("railroaded");
  if (fabric.repeat.is_any()) facts << repeat_words(fabric.repeat, unit);
  if (fabric.shrinkage.is_any()) facts << shrinkage_words(fabric.shrinkage);
  for (const Flaw& flaw : roll.flaws) facts << flaw_words(flaw, fabric, unit);
  return facts;
}

QStringList panel_facts(const Panel& panel) {
  QStringList facts;
  if (panel.at_most) facts << QStringLiteral("at most %1").arg(*panel.at_most);
  if (panel.grain == Grain::warp) facts << QStringLiteral("keeps to the warp");
  if (panel.match == Match::start) facts << QStringLiteral("begins with a repeat");
  if (panel.match == Match::centred) facts << QStringLiteral("has the motif in its middle");
  return facts;
}

}  // namespace foldyard
