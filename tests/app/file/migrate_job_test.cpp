// Job files of every version that was ever written, as they were then, are kept
// in tests/app/file/versions; beside each older one stands what it is as a file
// of version 2.

#include "file/migrate_job.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QJsonDocument>

#include "file/read_job.h"
#include "file/write_job.h"
#include "job/defaults.h"

namespace foldyard {
namespace {

QString path(const QString& name) {
  return QStringLiteral(FOLDYARD_SOURCE_DIR "/tests/app/file/versions/") + name;
}

QByteArray kept(const QString& name) {
  QFile file(path(name));
  EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << name.toStdString();
  return file.readAll();
}

QStringList kept_names(const char* pattern) {
  return QDir(path({})).entryList({QLatin1String(pattern)}, QDir::Files, QDir::Name);
}

TEST(KeptFiles, OfVersion1AreReadAndSavedAsVersion2) {
  const QStringList names = kept_names("1-*.json");
  EXPECT_EQ(names.size(), 3);
  for (const QString& name : names) {
    SCOPED_TRACE(name.toStdString());
    ASSERT_TRUE(kept(name).contains("\"foldyard_job\": 1"));
    const Result<Job> job = read_job(kept(name));
    ASSERT_TRUE(job) << job.problem().sentence();
    const QByteArray saved = kept(QStringLiteral("saved-as-2-") + name);
    EXPECT_EQ(write_job(*job).toStdString(), saved.toStdString());
    EXPECT_EQ(*read_job(saved), *job);
  }
}

TEST(KeptFiles, OfVersion2AreSavedWithTheirOwnBytes) {
  const QStringList names = kept_names("2-*.json");
  EXPECT_EQ(names.size(), 1);
  for (const QString& name : names) {
    const Result<Job> job = read_job(kept(name));
    ASSERT_TRUE(job) << job.problem().sentence();
    EXPECT_EQ(write_job(*job).toStdString(), kept(name).toStdString());
  }
}

// The figures of 1-whole.json, written out: it must go on meaning this.
TEST(KeptFiles, OfVersion1GoOnMeaningTheSame) {
  const Result<Job> read = read_job(kept(QStringLiteral("1-whole.json")));
  ASSERT_TRUE(read) << read.problem().sentence();
  Job job = default_job();
  job.name = "Benches";
  const Fabric slate{Length::mm(1370), Length::units(4800), Length::mm(1), Nap::none, "#6b7480"};
  job.rolls = {{"Slate", slate, Length::mm(23'400)}};
  job.panels = {
      {"Seat", Length::mm(475), Length::mm(1180), false, false, Worth::whole(14)},
      {"Pouch", Length::mm(240), Length::mm(315), true, true, Worth::parts(16'000)}};
  job.table = {Length::mm(2600), Length::mm(1700), Length::mm(850), true};
  EXPECT_EQ(*read, job);
}

QJsonObject object(const char* text) { return QJsonDocument::fromJson(text).object(); }

TEST(MigrateJob, TakesVersion1AsItIs) {
  const auto fields = migrate_job(object(R"({"foldyard_job": 1, "rolls": [{"name": "Oak"}]})"), 1);
  ASSERT_TRUE(fields);
  EXPECT_EQ(*fields, object(R"({"foldyard_job": 2, "rolls": [{"name": "Oak"}]})"));
}

TEST(MigrateJob, LeavesVersion2AsItIs) {
  const QJsonObject file = object(R"({"foldyard_job": 2, "rolls": [{"flaws": 7}]})");
  EXPECT_EQ(*migrate_job(file, 2), file);
}

// A roll or a panel of version 1 had none of these fields.
TEST(MigrateJob, RefusesFieldsThatVersion1HadNot) {
  for (const char* key : {"measured", "cut_since", "railroaded", "repeat", "shrinkage", "flaws"}) {
    const QByteArray text = QByteArray(R"({"foldyard_job": 1, "rolls": [{}, {")") + key +
                            R"(": 1}], "panels": [{"match": 1}]})";
    const auto fields = migrate_job(object(text), 1);
    ASSERT_FALSE(fields) << key;
    EXPECT_EQ(fields.problem().where, std::string("rolls[1].") + key);
    EXPECT_NE(fields.problem().next.find("\"foldyard_job\": 2"), std::string::npos);
  }
  for (const char* key : {"at_most", "grain", "match"}) {
    const QByteArray text =
        QByteArray(R"({"foldyard_job": 1, "panels": [{")") + key + R"(": 1}]})";
    const auto fields = migrate_job(object(text), 1);
    ASSERT_FALSE(fields) << key;
    EXPECT_EQ(fields.problem().where, std::string("panels[0].") + key);
  }
}

}  // namespace
}  // namespace foldyard
