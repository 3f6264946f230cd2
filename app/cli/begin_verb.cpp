#include "cli/begin_verb.h"

#include <QFileInfo>

#include "cli/goods_lines.h"
#include "cli/plain_text.h"
#include "cli/text_table.h"
#include "drawing/goods_words.h"
#include "drawing/words.h"
#include "file/safe_write.h"
#include "file/write_job.h"
#include "job/check_job.h"
#include "job/decimal.h"
#include "job/defaults.h"
#include "job/start_job.h"
#include "language/local_numbers.h"
#include "language/spoken.h"
#include "language/tr.h"
#include "language/utf8.h"
#include "measure/read_length.h"

namespace foldyard {
namespace {

Problem unknown(const char* option, const QString& key) {
  return {"", say("%1 cannot be \"%2\"", option, key.toStdString()), say("take a key that foldyard kinds shows")};
}

std::optional<Problem> add_rolls(Job& job, const Call& call) {
  const Result<Length> length = read_length(call.length.toStdString());
  if (!length) {
    return Problem{"--length", length.problem().what, say("write it like --length \"23.4 m\"")};
  }
  for (const QString& key : call.cloth) {
    const ClothKind* kind = cloth_kind(key.toStdString());
    if (!kind) return unknown("--cloth", key);
    add_roll(job, *kind, *length, spoken(kind->name).toStdString());
  }
  return {};
}

std::optional<Problem> add_all_goods(Job& job, const Call& call) {
  for (const QString& key : call.goods) {
    const ReadyGoods* ready = goods_by_key(key.toStdString());
    if (!ready) return unknown("--goods", key);
    if (auto problem = add_goods(job, spoken(ready->name).toStdString(), ready->goods, ready->is_lined, spoken_text))
      return problem;
  }
  return {};
}

Result<Job> first_job(const Call& call) {
  Job job = default_job();
  job.name = QFileInfo(call.job).completeBaseName().left(80).toStdString();
  job.unit = call.unit;
  if (auto problem = add_rolls(job, call)) return *problem;
  if (auto problem = add_all_goods(job, call)) return *problem;
  if (auto problem = check_job(job)) return *problem;
  return job;
}

QString cloth_table() {
  std::vector<QStringList> rows = {{"  --cloth", "", tr("width", "column"), tr("selvedge"), tr("thickness", "column"),
                                    tr("nap"), tr("shrinks", "column"), "g/m²"}};
  for (const ClothKind& kind : cloth_kinds()) {
    const Fabric& fabric = kind.fabric;
    rows.push_back({QStringLiteral("  ") + text(kind.key), spoken(kind.name),
                    length_words(fabric.width, Unit::cm), length_words(fabric.selvedge, Unit::cm),
                    length_words(fabric.thickness, Unit::mm),
                    fabric.nap == Nap::one_way ? tr("one-way") : spoken(say("none")),
                    local_numbers(text(write_decimal(fabric.shrinkage.along, 2))) + QStringLiteral(" %"),
                    local_numbers(text(write_decimal(kind.grams, 1)))});
  }
  return tr("Cloth: starting values, to be measured on your own\n") + text_table(rows);
}

QString basis_words() {
  QString words = tr("\nWhat they rest on\n");
  for (const ClothKind& kind : cloth_kinds()) {
    words += QStringLiteral("  %1: %2\n").arg(text(kind.key), spoken(kind.basis));
  }
  return words;
}

QString goods_table() {
  std::vector<QStringList> rows = {{"  --goods", "", tr("kind and finished size", "column"), tr("handles", "column")}};
  for (const ReadyGoods& each : ready_goods()) {
    const Goods& goods = each.goods;
    rows.push_back({QStringLiteral("  ") + text(each.key), spoken(each.name),
                    goods_words(goods, Unit::cm),
                    goods.handles == 0 ? QString()
                                       : QStringLiteral("%1 × %2").arg(
                                             QString::number(goods.handles),
                                             length_words(goods.handle, Unit::cm))});
  }
  return tr("\nGoods\n") + text_table(rows);
}

}  // namespace

Outcome begin_verb(const Call& call) {
  if (QFileInfo::exists(call.job)) {
    return refusal(Exit::wrong_call, {call.job.toStdString(), say("the file is there already"),
                                      say("name another; it was left as it is")});
  }
  const Result<Job> job = first_job(call);
  if (!job) return refusal(Exit::wrong_call, job.problem());
  if (const auto problem = safe_write(call.job, write_job(*job))) {
    return refusal(Exit::wrong_call, *problem);
  }
  return {Exit::done,
          tr("%1 begun with %2 rolls and %3 panels. Measure your cloth and put your own "
                         "figures in (docs/job-file.md), then: foldyard plan %1\n")
                  .arg(call.job, QString::number(job->rolls.size()),
                       QString::number(job->panels.size())) +
              goods_legend(*job),
          {}};
}

Outcome kinds_verb() {
  return {Exit::done, plain_text(cloth_table() + basis_words() + goods_table()), {}};
}

}  // namespace foldyard
