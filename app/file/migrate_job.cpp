#include "file/migrate_job.h"

#include <QJsonArray>
#include <QStringList>

namespace foldyard {
namespace {

const QString kVersion = QStringLiteral("foldyard_job");

Problem too_new(const std::string& field) {
  return {field, say("no such field is known in a file of version 1"),
          say("write \"foldyard_job\": 2 at the head of the file, or leave the field out")};
}

// The first field of the list's entries that a later version brought.
std::optional<Problem> newer_field(const QJsonObject& file, const char* list,
                                   const QStringList& newer) {
  const QJsonArray entries = file.value(QLatin1String(list)).toArray();
  for (qsizetype i = 0; i < entries.size(); ++i) {
    for (const QString& key : entries[i].toObject().keys()) {
      if (!newer.contains(key)) continue;
      return too_new(std::string(list) + "[" + std::to_string(i) + "]." + key.toStdString());
    }
  }
  return {};
}

Result<QJsonObject> to_version_2(QJsonObject file) {
  auto fault = newer_field(file, "rolls",
                           {"measured", "cut_since", "railroaded", "repeat", "shrinkage", "flaws", "cloth", "marks", "price_per_metre", "squared",
                            "in_batch"});
  if (!fault) fault = newer_field(file, "panels", {"at_most", "grain", "match", "sewn"});
  for (const char* key : {"products", "webbing", "order", "on_hand", "history", "notions", "sitting", "cloth_price_per_square_metre"}) {
    if (!fault && file.contains(QLatin1String(key))) fault = too_new(key);
  }
  if (fault) return *fault;
  file.insert(kVersion, 2);
  return file;
}

}  // namespace

Result<QJsonObject> migrate_job(QJsonObject fields, int version) {
  if (version == 1) return to_version_2(std::move(fields));
  return fields;
}

}  // namespace foldyard
