#include "drawing/goods_words.h"

#include "drawing/words.h"
#include "goods/goods_facts.h"
#include "job/decimal.h"
#include "language/local_numbers.h"
#include "language/spoken.h"
#include "language/tr.h"

namespace foldyard {
namespace {

QString handle_words(const Goods& goods, Unit unit) {
  QStringList marks;
  for (Length mark : handle_marks(goods)) marks << length_words(mark, unit);
  const QString last = marks.takeLast();
  return tr("Handles: %1 × %2, %3 of webbing for one; their middles at %4 and %5 from "
                        "the left edge of the panel.")
      .arg(QString::number(goods.handles), length_words(goods.handle, unit),
           length_words(webbing(goods), unit), marks.join(QStringLiteral(", ")), last);
}

}  // namespace

QString finished_words(const Goods& goods, Unit unit) {
  const QString flat = size_words(goods.width, goods.height, unit);
  if (goods.depth.is_zero()) return flat;
  return tr("%1, %2 deep").arg(flat, length_words(goods.depth, unit));
}

QString litres_words(const Goods& goods) {
  if (goods.depth.is_zero()) return {};
  return tr("%1 litres").arg(local_numbers(QString::fromStdString(write_decimal(centilitres(goods), 2))));
}

QString goods_words(const Goods& goods, Unit unit) {
  const QString words = spoken(kind_name(goods.kind)) + QStringLiteral(", ") +
                        finished_words(goods, unit);
  return goods.depth.is_zero() ? words : words + QStringLiteral(", ") + litres_words(goods);
}

QStringList making_words(const Goods& goods, Unit unit) {
  QStringList words;
  if (const Length line = corner_line(goods); !line.is_zero()) {
    words << tr("Bottom corners: stitch across %1 from the tip, or cut out squares of %2.")
                 .arg(length_words(line, unit), length_words(corner_square(goods), unit));
  }
  if (goods.handles > 0) words << handle_words(goods, unit);
  return words;
}

QString needed_words(const Job& job, const GoodsMade& made) {
  std::vector<std::int64_t> counts(job.panels.size(), 0);
  for (int index : made.panels) {
    const auto at = static_cast<std::size_t>(index);
    counts[at] = needed(*job.panels[at].sewn);
  }
  return tr("for one: %1").arg(yield_words(job, counts));
}

}  // namespace foldyard
