// Every call of the program that the papers show can be typed as it stands there, and
// every other command they show is known here, with why it is not run.

#include <gtest/gtest.h>

#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include "program.h"

namespace foldyard {
namespace {

const QString kRoot = QStringLiteral(FOLDYARD_SOURCE_DIR "/");

struct NotRun {
  const char* begins;
  const char* why;
};

const NotRun kNotRun[] = {
    {"./app/start", "installs, builds and opens the window"},
    {"app/prepare", "installs packages"},
    {"./tests/run", "is what runs this test"},
    {"./tests/coverage", "builds core for minutes"},
    {"./tests/mutations/run", "builds core for an hour"},
    {"resources/languages/refresh", "writes over the catalogues of words"},
    {"docs/pictures/make", "writes over the pictures"},
    {"cmake -S . -B build-bench", "configures another build"},
    {"cmake --build build-bench", "builds for minutes"},
    {"build-bench/tests/", "measures for minutes, and writes the figures of its page"},
};

QString text_of(const QString& path) {
  QFile file(path);
  EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
  return QString::fromUtf8(file.readAll());
}

QStringList papers() {
  QStringList found{kRoot + "README.md", kRoot + "DEVELOPERS.md", kRoot + "tests/README.md"};
  for (QDirIterator each(kRoot + "docs", {"*.md"}, QDir::Files, QDirIterator::Subdirectories); each.hasNext();)
    found << each.next();
  found.sort();
  return found;
}

// Lines that are set in four spaces or between fences, and begin like a command. What
// stands behind four spaces of the line says what it does.
QStringList commands_in(const QString& paper) {
  static const QRegularExpression command("^(foldyard|cmake|ctest|apt(-get)?|sudo|(\\./)?(app|tests|docs|resources|\\.ci|build[a-z-]*)/\\S+)( |$)");
  QStringList found;
  bool is_fenced = false;
  for (const QString& line : paper.split('\n')) {
    if (line.startsWith("```")) is_fenced = !is_fenced;
    if (!is_fenced && !line.startsWith("    ")) continue;
    const QString words = line.trimmed().section("    ", 0, 0);
    if (command.match(words).hasMatch()) found << words;
  }
  return found;
}

// Of the manual page: the lines under EXAMPLES that call the program.
QStringList examples_in(QString manual) {
  QStringList found;
  manual = manual.replace("\\-", "-").section(".SH EXAMPLES", 1);
  for (const QString& line : manual.split('\n'))
    if (line.startsWith("foldyard ")) found << line;
  return found;
}

// A folder with what a reader of the papers has at hand.
class Documented : public testing::Test {
 protected:
  void SetUp() override {
    ASSERT_TRUE(QDir(folder_.path()).mkdir("resources"));
    ASSERT_TRUE(QFile::copy(kRoot + "resources/demo.json", folder_.filePath("resources/demo.json")));
  }

  void expect_to_run(const QString& command) const {
    QStringList words = QProcess::splitCommand(command);
    words.removeFirst();
    const test::Reply reply = test::run_foldyard(words, folder_.path());
    EXPECT_EQ(reply.code, 0) << command.toStdString() << "\n" << reply.err.toStdString();
    EXPECT_TRUE(reply.err.isEmpty()) << command.toStdString();
    const auto to = words.indexOf("--to");
    if (to >= 0) { EXPECT_GT(QFile(folder_.filePath(words[to + 1])).size(), 0) << command.toStdString(); }
  }

  QTemporaryDir folder_;
};

bool is_known(const QString& command) {
  return std::any_of(std::begin(kNotRun), std::end(kNotRun),
                     [&](const NotRun& each) { return command.startsWith(QLatin1String(each.begins)); });
}

TEST_F(Documented, CallsOfThePapersRunInTheirOrder) {
  int calls = 0;
  for (const QString& paper : papers()) {
    for (const QString& command : commands_in(text_of(paper))) {
      SCOPED_TRACE(paper.toStdString());
      if (command.startsWith("foldyard ")) ++calls, expect_to_run(command);
      else EXPECT_TRUE(is_known(command)) << command.toStdString() << " is neither run here nor listed with a reason";
    }
  }
  EXPECT_GE(calls, 5);
}

TEST_F(Documented, ExamplesOfTheManualRun) {
  const QStringList examples = examples_in(text_of(kRoot + "resources/desktop/foldyard.1"));
  EXPECT_GE(examples.size(), 3);
  for (const QString& command : examples) expect_to_run(command);
}

// Each reason is for a command that some paper still shows.
TEST_F(Documented, NoReasonIsLeftOver) {
  QStringList shown;
  for (const QString& paper : papers()) shown << commands_in(text_of(paper));
  for (const NotRun& each : kNotRun) {
    EXPECT_TRUE(std::any_of(shown.begin(), shown.end(), [&](const QString& c) { return c.startsWith(QLatin1String(each.begins)); }))
        << each.begins << ", which " << each.why;
  }
}

// Verbs named in the middle of a sentence are verbs of the program.
TEST_F(Documented, VerbsInSentencesAreKnown) {
  const QString help = QString::fromUtf8(test::run_foldyard({"--help"}, folder_.path()).out);
  static const QRegularExpression named("`foldyard ([a-z]+)");
  int count = 0;
  for (const QString& paper : papers()) {
    for (auto each = named.globalMatch(text_of(paper)); each.hasNext(); ++count) {
      const QString verb = each.next().captured(1);
      EXPECT_TRUE(help.contains("\n  foldyard " + verb)) << paper.toStdString() << ": " << verb.toStdString();
    }
  }
  EXPECT_GE(count, 8);
}

TEST(DocumentedCommands, AreToldFromOtherLines) {
  const QString paper = "Do:\n\n    foldyard plan a.json        the plan\n    pairs left × F(x)\n\n```\nfoldyard kinds\n```\nfoldyard in a sentence\n";
  EXPECT_EQ(commands_in(paper), (QStringList{"foldyard plan a.json", "foldyard kinds"}));
  EXPECT_FALSE(is_known("tests/else"));
}

}  // namespace
}  // namespace foldyard
