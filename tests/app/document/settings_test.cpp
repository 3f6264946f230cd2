#include "document/settings.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

namespace foldyard {
namespace {

class SettingsTest : public testing::Test {
 protected:
  QTemporaryDir folder;
  QString path = folder.filePath("foldyard/settings.json");
};

void expect_first_start(const Settings& settings) {
  EXPECT_TRUE(settings.recent().isEmpty());
  EXPECT_TRUE(settings.geometry().isEmpty());
  EXPECT_FALSE(settings.is_dark());
  EXPECT_TRUE(settings.language().isEmpty());
  EXPECT_FALSE(settings.is_guide_closed());
  EXPECT_FALSE(settings.shows_more_columns());
}

TEST_F(SettingsTest, BeginsWithNothingChosen) { expect_first_start(Settings(path)); }

TEST_F(SettingsTest, RemembersUntilTheNextStart) {
  {
    Settings settings(path);
    settings.add_recent("/home/maker/a b, c.json");
    settings.set_geometry("\x01\x00\xff geometry");
    settings.set_dark(true);
    settings.set_language("de");
    settings.set_guide_closed(true);
    settings.set_more_columns(true);
  }
  const Settings settings(path);
  EXPECT_EQ(settings.recent(), QStringList{"/home/maker/a b, c.json"});
  EXPECT_EQ(settings.geometry(), QByteArray("\x01\x00\xff geometry"));
  EXPECT_EQ(settings.is_dark(), true);
  EXPECT_EQ(settings.language(), "de");
  EXPECT_TRUE(settings.is_guide_closed());
  EXPECT_TRUE(settings.shows_more_columns());
}

TEST_F(SettingsTest, KeepsTheTenLastFilesNoneTwice) {
  Settings settings(path);
  for (int i = 1; i <= 12; ++i) settings.add_recent(QStringLiteral("/jobs/%1.json").arg(i));
  settings.add_recent("/jobs/7.json");
  const auto recent = settings.recent();
  ASSERT_EQ(recent.size(), 10);
  EXPECT_EQ(recent[0], "/jobs/7.json");
  EXPECT_EQ(recent[1], "/jobs/12.json");
  EXPECT_EQ(recent[9], "/jobs/3.json");
  EXPECT_EQ(recent.count("/jobs/7.json"), 1);
}

TEST_F(SettingsTest, TakesFilesOffTheList) {
  Settings settings(path);
  settings.add_recent("/jobs/a.json");
  settings.add_recent("/jobs/b.json");
  settings.take_recent("/jobs/b.json");
  EXPECT_EQ(settings.recent(), QStringList{"/jobs/a.json"});
  settings.clear_recent();
  EXPECT_TRUE(settings.recent().isEmpty());
}

TEST_F(SettingsTest, MakesRecentPathsAbsolute) {
  Settings settings(path);
  settings.add_recent("job.json");
  EXPECT_EQ(settings.recent(), QStringList{QDir::current().absoluteFilePath("job.json")});
}

TEST_F(SettingsTest, TwoWindowsSeeEachOthersFiles) {
  Settings one(path);
  Settings other(path);
  one.add_recent("/jobs/a.json");
  other.add_recent("/jobs/b.json");
  EXPECT_EQ(one.recent(), (QStringList{"/jobs/b.json", "/jobs/a.json"}));
}

TEST_F(SettingsTest, ABrokenFileCostsOnlyTheSettings) {
  QDir().mkpath(QFileInfo(path).path());
  for (const QByteArray& broken :
       {QByteArray("{\"recent\": [\x80"), QByteArray("\0\0\0\0", 4), QByteArray("]]]]\n===="), QByteArray("[1, 2]"),
        QByteArray(R"({"recent": "x", "geometry": 7, "colours": 17, "guide": [], "panel_columns": {}})")}) {
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(broken);
    file.close();
    Settings settings(path);
    expect_first_start(settings);
    settings.set_dark(false);
    EXPECT_EQ(Settings(path).is_dark(), false) << broken.toStdString();
  }
}

TEST_F(SettingsTest, RelativePathsInTheFileAreNotShown) {
  QDir().mkpath(QFileInfo(path).path());
  QFile file(path);
  ASSERT_TRUE(file.open(QIODevice::WriteOnly));
  file.write(R"({"recent": ["a.json", "/jobs/b.json"]})");
  file.close();
  EXPECT_EQ(Settings(path).recent(), QStringList{"/jobs/b.json"});
}

TEST_F(SettingsTest, WithoutAFileTheyLastAsLongAsTheProgram) {
  Settings settings;
  settings.add_recent("/jobs/a.json");
  settings.set_dark(true);
  EXPECT_EQ(settings.recent(), QStringList{"/jobs/a.json"});
  EXPECT_EQ(settings.is_dark(), true);
}

TEST_F(SettingsTest, WhatCannotBeWrittenHoldsUntilItCan) {
  QDir().mkpath(path);
  Settings settings(path);
  settings.set_dark(true);
  settings.add_recent("/jobs/a.json");
  EXPECT_TRUE(QDir(path).exists());
  EXPECT_EQ(settings.is_dark(), true);
  ASSERT_TRUE(QDir().rmdir(path));
  settings.set_guide_closed(true);
  const Settings next(path);
  EXPECT_EQ(next.is_dark(), true);
  EXPECT_EQ(next.recent(), QStringList{"/jobs/a.json"});
  EXPECT_TRUE(next.is_guide_closed());
}

}  // namespace
}  // namespace foldyard
