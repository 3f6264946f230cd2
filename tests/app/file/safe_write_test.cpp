#include "file/safe_write.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>
#include <sys/resource.h>
#include <csignal>
#include <sys/stat.h>
#include <unistd.h>

namespace foldyard {
namespace {

class SafeWrite : public testing::Test {
 protected:
  QString path(const QString& name) const { return folder_.filePath(name); }
  QByteArray bytes_of(const QString& name) const {
    QFile file(path(name));
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("(unreadable)");
  }
  std::string refusal(const QString& name, const QByteArray& bytes = "new") const {
    const auto problem = safe_write(path(name), bytes);
    return problem ? problem->what : "";
  }
  QStringList names() const {
    return QDir(folder_.path())
        .entryList(QDir::AllEntries | QDir::System | QDir::Hidden | QDir::NoDotAndDotDot);
  }
  QTemporaryDir folder_;
};

TEST_F(SafeWrite, WritesAllSizesAndLeavesNothingElse) {
  for (int size : {0, 1, 9000, 16'383, 16'384, 16'385, 60'000, 2'000'000}) {
    const QByteArray bytes(size, 'x');
    ASSERT_EQ(refusal("job.json", bytes), "");
    EXPECT_EQ(bytes_of("job.json"), bytes);
    EXPECT_EQ(names(), QStringList{"job.json"});
  }
}

TEST_F(SafeWrite, KeepsThePermissionsOfTheOldFile) {
  ASSERT_EQ(refusal("job.json"), "");
  const std::string file = path("job.json").toStdString();
  ASSERT_EQ(chmod(file.c_str(), 0640), 0);
  ASSERT_EQ(refusal("job.json", "newer"), "");
  struct stat found;
  ASSERT_EQ(stat(file.c_str(), &found), 0);
  EXPECT_EQ(found.st_mode & 07777, 0640u);
}

TEST_F(SafeWrite, FollowsALinkToItsFile) {
  ASSERT_EQ(refusal("job.json", "old"), "");
  ASSERT_TRUE(QFile::link(path("job.json"), path("link.json")));
  ASSERT_EQ(refusal("link.json", "new"), "");
  EXPECT_EQ(bytes_of("job.json"), "new");
  EXPECT_TRUE(QFileInfo(path("link.json")).isSymLink());
}

TEST_F(SafeWrite, RefusesWhatIsNoFile) {
  ASSERT_TRUE(QDir(folder_.path()).mkdir("folder"));
  EXPECT_EQ(refusal("folder"), "this is a folder or a device, not a file");
  ASSERT_EQ(mkfifo(path("pipe").toUtf8().constData(), 0600), 0);
  EXPECT_EQ(refusal("pipe"), "this is a folder or a device, not a file");
  EXPECT_EQ(safe_write("/dev/null", "x")->what, "this is a folder or a device, not a file");
  ASSERT_TRUE(QFile::link(path("nothing"), path("dangling")));
  EXPECT_EQ(refusal("dangling"), "this is a link to nothing");
  EXPECT_EQ(refusal("missing/job.json"), "the folder does not exist");
  EXPECT_EQ(refusal(QString(300, 'n')), "the file name is too long");
  EXPECT_EQ(names(), (QStringList{"dangling", "folder", "pipe"}));
}

TEST_F(SafeWrite, KeepsTheOldFileWhereTheDiskTakesNoMore) {
  ASSERT_EQ(refusal("job.json", QByteArray(9000, 'o')), "");
  rlimit before;
  ASSERT_EQ(getrlimit(RLIMIT_FSIZE, &before), 0);
  std::signal(SIGXFSZ, SIG_IGN);
  const rlimit small{4096, before.rlim_max};  // a write beyond 4096 bytes fails
  ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &small), 0);
  const std::string refused = refusal("job.json", QByteArray(20'000, 'n'));
  ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &before), 0);
  EXPECT_EQ(refused, "the disk is full");
  EXPECT_EQ(bytes_of("job.json"), QByteArray(9000, 'o'));
  EXPECT_EQ(names(), QStringList{"job.json"});
}

// Root may write everywhere, so the test steps down to a user who may not.
class SteppedDown {
 public:
  SteppedDown() : was_root_(geteuid() == 0) {
    if (was_root_) set_user(65534);
  }
  ~SteppedDown() {
    if (was_root_) set_user(0);
  }

 private:
  static void set_user(uid_t user) { EXPECT_EQ(seteuid(user), 0); }
  bool was_root_;
};

TEST_F(SafeWrite, RefusesAProtectedFile) {
  ASSERT_EQ(refusal("job.json", "old"), "");
  ASSERT_EQ(chmod(path("job.json").toUtf8().constData(), 0444), 0);
  ASSERT_EQ(chmod(path("").toUtf8().constData(), 0777), 0);
  {
    const SteppedDown nobody;
    EXPECT_EQ(refusal("job.json"), "the file is write-protected");
  }
  EXPECT_EQ(bytes_of("job.json"), "old");
}

TEST_F(SafeWrite, RefusesAProtectedFolder) {
  ASSERT_EQ(chmod(path("").toUtf8().constData(), 0555), 0);
  {
    const SteppedDown nobody;
    EXPECT_EQ(refusal("job.json"), "writing is not allowed there");
  }
  ASSERT_EQ(chmod(path("").toUtf8().constData(), 0700), 0);
  EXPECT_TRUE(names().isEmpty());
}

}  // namespace
}  // namespace foldyard
