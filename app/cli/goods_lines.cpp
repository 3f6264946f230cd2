#include "cli/goods_lines.h"

#include "cli/plain_text.h"
#include "drawing/goods_words.h"
#include "drawing/words.h"
#include "goods/goods_facts.h"
#include "language/tr.h"

namespace foldyard {
namespace {

QString details(const Job& job, const GoodsMade& made) {
  QStringList lines = making_words(made.goods, job.unit);
  if (made.panels.size() > 1) lines.prepend(needed_words(job, made) + QLatin1Char('.'));
  QString text;
  for (const QString& line : lines) text += QStringLiteral("      ") + line + QLatin1Char('\n');
  return text;
}

// Webbing of many goods may be longer than a length that is written.
QString all_webbing(const GoodsMade& made, Unit unit) {
  const Length all = webbing(made.goods) * made.pieces;
  if (all.is_zero()) return {};
  return tr("; %1 of webbing for all").arg(length_words(all, unit));
}

}  // namespace

QString goods_legend(const Job& job) {
  QString text;
  for (const GoodsMade& made : goods_of(job)) {
    text += QStringLiteral("    %1: %2\n").arg(QString::fromStdString(made.name),
                                               goods_words(made.goods, job.unit)) +
            details(job, made);
  }
  return text.isEmpty() ? text : plain_text(tr("Goods\n") + text);
}

QString plan_goods_words(const Job& job, const Plan& plan) {
  QString text;
  for (const GoodsMade& made : goods_made(job, plan.yield)) {
    text += QStringLiteral("    %1 × %2: %3%4\n")
                .arg(QString::number(made.pieces), QString::fromStdString(made.name),
                     goods_words(made.goods, job.unit), all_webbing(made, job.unit)) +
            details(job, made);
  }
  return text.isEmpty() ? text : plain_text(tr("\nGoods these panels are enough for\n") + text);
}

}  // namespace foldyard
