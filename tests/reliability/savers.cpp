#include "reliability/savers.h"

#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <QTemporaryDir>

#include "app/drawing/sample_plans.h"
#include "document/job_file.h"
#include "document/recovery.h"
#include "document/settings.h"
#include "file/safe_write.h"
#include "file/shelf_csv.h"
#include "printing/sheet_file.h"
#include "support/job_sample.h"

namespace foldyard::reliability {
namespace {

Said said(const std::optional<Problem>& problem) {
  if (!problem) return Said::done;
  return is_in_place(*problem) ? Said::in_place : Said::failed;
}

Job job(int version) {
  Job job = sample::job();
  job.name = job.rolls[0].name = version == 0 ? "Before" : "After, and with a longer name";
  return job;
}

QByteArray bytes_of(const QString& path) {
  QFile file(path);
  return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("(none)");
}

// The time a PDF was made does not count.
QByteArray without_time(const QByteArray& bytes) {
  static const QRegularExpression time(QStringLiteral("D:\\d{14}[^)]*"));
  return QString::fromLatin1(bytes).remove(time).toLatin1();
}

using Save = std::function<Said(const QString& folder, int version)>;

// Told by the bytes that each version has on a disk without faults.
Saver by_bytes(std::string name, const QString& file, Save save) {
  std::vector<QByteArray> whole;
  for (int version : {0, 1}) {
    const QTemporaryDir folder;
    save(folder.path(), version);
    whole.push_back(without_time(bytes_of(folder.filePath(file))));
  }
  return {std::move(name), std::move(save), [file, whole](const QString& folder) {
            if (!QFile::exists(folder + "/" + file)) return kNone;
            const auto there = without_time(bytes_of(folder + "/" + file));
            return there == whole[1] ? 1 : there == whole[0] ? 0 : kBroken;
          }};
}

Saver raw(int size) {
  return by_bytes("a file of " + std::to_string(size) + " bytes", "raw", [size](const QString& folder, int version) {
    return said(safe_write(folder + "/raw", QByteArray(size + version, version == 0 ? 'o' : 'n')));
  });
}

// A document whose saving failed must not take itself for saved.
Said save_document(const QString& folder, int version) {
  Document document;
  document.open(job(version), {}, {});
  const Said answer = said(save_job_file(document, folder + "/job.json"));
  return answer != Said::done && !document.path().isEmpty() ? Said::lied : answer;
}

QStringList sides_in(const QString& folder) { return QDir(folder).entryList({"*.side"}, QDir::Files); }

Said keep_side_file(const QString& folder, int version) {
  Recovery recovery(folder);
  const auto sides = sides_in(folder);
  if (!sides.isEmpty() && !recovery.take(sides[0].chopped(5))) return Said::failed;
  return said(recovery.keep({job(version), {}, {}, QDateTime::fromSecsSinceEpoch(1'700'000'000), 0}));
}

int side_version(const QString& folder) {
  const auto sides = sides_in(folder);
  if (sides.isEmpty()) return kNone;
  const auto side = read_side_file(bytes_of(folder + "/" + sides[0]));
  if (sides.size() > 1 || !side) return kBroken;
  return side->job == job(1) ? 1 : side->job == job(0) ? 0 : kBroken;
}

Said save_settings(const QString& folder, int version) {
  Settings settings(folder + "/settings.json");
  settings.set_dark(version == 1);
  return settings.is_written() ? Said::done : Said::failed;
}

Saver sheet(const char* ending) {
  const QString name = QStringLiteral("sheet.") + QLatin1String(ending);
  return by_bytes(std::string("a sheet as ") + ending, name, [name](const QString& folder, int version) {
    const auto sample = version == 0 ? samples::carriers() : samples::both_edges_in();
    return said(write_sheet(sample.sheet(Paper::a4), folder + "/" + name, {1, 1}));
  });
}

Said save_table(const QString& folder, int version) {
  return said(safe_write(folder + "/shelf.csv", shelf_csv(job(version))));
}

}  // namespace

std::vector<Saver> savers() {
  std::vector<Saver> all;
  for (int size : {0, 1, 9000, 16'383, 16'384, 60'000, 2'000'000}) all.push_back(raw(size));
  all.push_back(by_bytes("a job", "job.json", save_document));
  all.push_back({"a side file", keep_side_file, side_version});
  all.push_back(by_bytes("settings", "settings.json", save_settings));
  for (const char* ending : {"pdf", "svg", "png"}) all.push_back(sheet(ending));
  all.push_back(by_bytes("a table of the shelf", "shelf.csv", save_table));
  return all;
}

}  // namespace foldyard::reliability
