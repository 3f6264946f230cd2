// The program itself, killed while a job is restored in it.

#include <gtest/gtest.h>

#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QThread>

#include "document/recovery.h"
#include "support/job_sample.h"

namespace foldyard {
namespace {

class KilledProgramTest : public testing::Test {
 protected:
  void start(QProcess& program) {
    auto environment = QProcessEnvironment::systemEnvironment();
    environment.insert("QT_QPA_PLATFORM", "offscreen");
    for (const char* name : {"XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_RUNTIME_DIR", "HOME"})
      environment.insert(name, folder.path());
    program.setProcessEnvironment(environment);
    program.setStandardErrorFile(QProcess::nullDevice());
    program.start(QStringLiteral(FOLDYARD_BINARY_DIR "/app/foldyard"), {});
    ASSERT_TRUE(program.waitForStarted());
  }
  // −1 while there is none that is whole.
  int crashes() {
    const auto names = QDir(side_folder).entryList({"*.side"});
    QFile file(QDir(side_folder).filePath(names.value(0)));
    if (names.size() != 1 || !file.open(QIODevice::ReadOnly)) return -1;
    const auto side = read_side_file(file.readAll());
    return side ? side->crashes : -1;
  }
  bool waited_for_crashes(int wanted) {
    QElapsedTimer clock;
    for (clock.start(); clock.elapsed() < 60'000; QThread::msleep(20))
      if (crashes() == wanted) return true;
    return false;
  }

  QTemporaryDir folder;
  QString side_folder = folder.filePath("foldyard/recovery");
};

TEST_F(KilledProgramTest, TheUnsavedJobIsHeldWhileItRunsAndThereAfterAKill) {
  ASSERT_FALSE(Recovery(side_folder).keep({sample::job(), "/jobs/gone.json", {}, QDateTime::currentDateTime(), 0}));
  QProcess program;
  start(program);
  ASSERT_TRUE(waited_for_crashes(1));
  EXPECT_TRUE(Recovery(side_folder).left().empty());
  program.kill();
  ASSERT_TRUE(program.waitForFinished());
  const auto left = Recovery(side_folder).left();
  ASSERT_EQ(left.size(), 1u);
  EXPECT_EQ(left[0].side.job, sample::job());
  EXPECT_EQ(left[0].side.path, "/jobs/gone.json");
  EXPECT_EQ(left[0].side.crashes, 1);
}

}  // namespace
}  // namespace foldyard
