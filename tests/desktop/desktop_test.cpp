// What a desktop knows the program by: the standards' own validators pass, and all
// of it is installed. A validator that is missing fails its test.

#include <gtest/gtest.h>

#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QImage>
#include <QMimeDatabase>
#include <QProcess>
#include <QRegularExpression>
#include <QSet>
#include <QTemporaryDir>

namespace foldyard {
namespace {

const QString kFolder = QStringLiteral(FOLDYARD_SOURCE_DIR "/resources/desktop/");
const QString kId = QStringLiteral("org.foldyard.foldyard");

struct Ran {
  int code = -1;
  QString words;  // both streams
};

Ran ran(const QString& program, const QStringList& arguments) {
  QProcess process;
  process.setProcessChannelMode(QProcess::MergedChannels);
  process.start(program, arguments);
  if (!process.waitForFinished(60'000)) return {-1, program + ": " + process.errorString()};
  return {process.exitCode(), QString::fromUtf8(process.readAll())};
}

void expect_valid(const QString& program, const QStringList& arguments) {
  const Ran answer = ran(program, arguments);
  EXPECT_EQ(answer.code, 0) << answer.words.toStdString();
}

QString text_of(const QString& path) {
  QFile file(path);
  EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
  return QString::fromUtf8(file.readAll());
}

TEST(Desktop, EntryIsValid) {
  const Ran answer = ran("desktop-file-validate", {kFolder + kId + ".desktop"});
  EXPECT_EQ(answer.code, 0);
  EXPECT_EQ(answer.words.toStdString(), "");
}

TEST(Desktop, MetainfoIsValid) {
  expect_valid("appstreamcli", {"validate", "--no-net", "--pedantic", kFolder + kId + ".metainfo.xml"});
}

TEST(Desktop, XmlIsWellFormed) {
  for (const QString& name : QDir(kFolder).entryList({"*.xml", "*.svg"})) expect_valid("xmllint", {"--noout", kFolder + name});
}

TEST(Desktop, TheProgramNamesTheEntry) {
  EXPECT_TRUE(text_of(FOLDYARD_SOURCE_DIR "/app/window/run_window.cpp").contains("setDesktopFileName(QStringLiteral(\"" + kId + "\"))"));
}

TEST(Desktop, IconsHaveTheSizesOfTheirNames) {
  const auto names = QDir(kFolder).entryList({"*.png"});
  EXPECT_EQ(names.size(), 6);
  for (const QString& name : names) {
    const int size = name.chopped(4).section('-', -1).toInt();
    EXPECT_EQ(QImage(kFolder + name).size(), QSize(size, size)) << name.toStdString();
  }
}

// The manual page tells every verb and option that the help does.
TEST(Desktop, ManualTellsEveryOption) {
  const auto help = ran(FOLDYARD_BINARY_DIR "/app/foldyard", {"--help"}).words;
  const QString page = text_of(kFolder + "foldyard.1").replace("\\-", "-");
  static const QRegularExpression option("--[a-z-]+"), verb("^  foldyard ([a-z]+)", QRegularExpression::MultilineOption);
  QSet<QString> told;
  for (auto each = option.globalMatch(help); each.hasNext();) told.insert(each.next().captured());
  for (auto each = verb.globalMatch(help); each.hasNext();) told.insert(each.next().captured(1));
  EXPECT_GT(told.size(), 25);
  for (const QString& word : told) EXPECT_TRUE(page.contains(word)) << word.toStdString();
}

TEST(Desktop, ManualHasNoFaultOfForm) {
  const Ran answer = ran("man", {"--warnings", "-E", "UTF-8", "-l", "-Tutf8", "-P", "true", kFolder + "foldyard.1"});
  EXPECT_EQ(answer.code, 0);
  EXPECT_FALSE(answer.words.contains("warning")) << answer.words.toStdString();
}

class Installed : public testing::Test {
 protected:
  void SetUp() override {
    expect_valid("cmake", {"--install", FOLDYARD_BINARY_DIR, "--prefix", folder.path()});
  }
  QString path(const QString& name) const { return folder.filePath(name); }
  QTemporaryDir folder;
};

TEST_F(Installed, HoldsAllThatBelongsThereAndNothingElse) {
  QSet<QString> found;
  for (QDirIterator files(folder.path(), QDir::Files, QDirIterator::Subdirectories); files.hasNext();)
    found.insert(QDir(folder.path()).relativeFilePath(files.next()));
  QSet<QString> wanted{"bin/foldyard",
                       "share/applications/" + kId + ".desktop",
                       "share/metainfo/" + kId + ".metainfo.xml",
                       "share/mime/packages/" + kId + ".xml",
                       "share/icons/hicolor/scalable/apps/" + kId + ".svg",
                       "share/icons/hicolor/scalable/mimetypes/" + kId + "-job.svg",
                       "share/man/man1/foldyard.1.gz",
                       "share/doc/foldyard/changelog.gz",
                       "share/doc/foldyard/copyright",
                       "share/doc/foldyard/examples/demo.json"};
  for (const char* size : {"48x48", "128x128", "256x256"}) {
    wanted.insert(QString("share/icons/hicolor/%1/apps/%2.png").arg(size, kId));
    wanted.insert(QString("share/icons/hicolor/%1/mimetypes/%2-job.png").arg(size, kId));
  }
  EXPECT_TRUE((wanted - found).isEmpty()) << (wanted - found).values().join(' ').toStdString();
  EXPECT_TRUE((found - wanted).isEmpty()) << (found - wanted).values().join(' ').toStdString();
}

TEST_F(Installed, RunsWithoutTheSources) {
  const Ran answer = ran(path("bin/foldyard"), {"plan", path("share/doc/foldyard/examples/demo.json")});
  EXPECT_EQ(answer.code, 0) << answer.words.toStdString();
}

// Job files are known by their ending, and by their first bytes under any other
// name; other JSON is not taken for one.
TEST_F(Installed, JobsAreToldFromOtherFiles) {
  qputenv("XDG_DATA_DIRS", (path("share") + ":/usr/share").toUtf8());
  qputenv("XDG_DATA_HOME", path("home").toUtf8());
  const QMimeDatabase types;
  const QString job = "application/x-foldyard-job";
  EXPECT_EQ(types.mimeTypeForFile("mine.foldyard", QMimeDatabase::MatchExtension).name(), job);
  EXPECT_TRUE(types.mimeTypeForName(job).inherits("application/json"));
  EXPECT_EQ(types.mimeTypeForData(QByteArray("{\n  \"foldyard_job\": 2,\n")).name(), job);
  EXPECT_NE(types.mimeTypeForData(QByteArray("{\n  \"other\": 2,\n")).name(), job);
  EXPECT_NE(types.mimeTypeForFile("plain.json", QMimeDatabase::MatchExtension).name(), job);
}

}  // namespace
}  // namespace foldyard
