// Every call to the disk of every save fails once, in every way: what was there
// before or the new file is there afterwards, whole, and what was said is true.

#include <gtest/gtest.h>

#include <QDir>
#include <QTemporaryDir>
#include <sys/wait.h>
#include <unistd.h>

#include <iostream>

#include "reliability/faulty_disk.h"
#include "reliability/savers.h"

namespace foldyard::reliability {
namespace {

using faulty::Fault;

constexpr int kKilled = 100;
constexpr int kRanThrough = 50;  // the fault lies behind the last call

// What the child says by its exit code: a Said, or that the fault was not met.
int save_on_faulty_disk(const Saver& saver, const QString& folder, Fault fault, int call) {
  const pid_t child = fork();
  if (child == 0) {
    faulty::arm(folder.toStdString(), fault, call);
    const Said answer = saver.save(folder, 1);
    _exit(static_cast<int>(answer) + (faulty::has_struck() ? 0 : kRanThrough));
  }
  int status = 0;
  EXPECT_EQ(waitpid(child, &status, 0), child);
  if (WIFSIGNALED(status)) return WTERMSIG(status) == SIGKILL ? kKilled : -WTERMSIG(status);
  return WEXITSTATUS(status);
}

qsizetype litter_in(const QString& folder) {
  return QDir(folder).entryList({".foldyard-*", "*.??????"}, QDir::Files | QDir::Hidden).size();
}

struct FaultRun {
  int code = 0;     // as save_on_faulty_disk
  int before = 0;   // versions in the folder
  int after = 0;
  qsizetype litter = 0;

  bool met_fault() const { return code < kRanThrough || code == kKilled; }
  // Neither the old file nor the new one is there.
  bool is_lost() const { return after != 1 && after != before; }
  // Said saved and is not, or the other way round.
  bool is_lie() const {
    switch (code) {
      case static_cast<int>(Said::done):
      case static_cast<int>(Said::in_place):
      case kRanThrough: return after != 1;
      case static_cast<int>(Said::failed): return after != before;
      case kKilled: return false;
      default: return true;
    }
  }
};

FaultRun try_call(const Saver& saver, Fault fault, int call, const QDir& begin) {
  const QTemporaryDir folder;
  for (const QString& name : begin.entryList(QDir::Files | QDir::Hidden))
    EXPECT_TRUE(QFile::copy(begin.filePath(name), folder.filePath(name)));
  FaultRun run;
  run.before = saver.version_in(folder.path());
  run.code = save_on_faulty_disk(saver, folder.path(), fault, call);
  run.after = saver.version_in(folder.path());
  run.litter = litter_in(folder.path());
  return run;
}

struct Tally {
  int runs = 0;
  int lost = 0;
  int lies = 0;
};

// Call after call, until one run goes through without meeting the fault.
void try_calls(const Saver& saver, Fault fault, const QDir& begin, Tally& tally) {
  for (int call = 1; call < 200; ++call) {
    const FaultRun found = try_call(saver, fault, call, begin);
    SCOPED_TRACE(saver.name + ", " + faulty::name_of(fault) + " at call " + std::to_string(call) + ", version " +
                 std::to_string(found.before) + " became " + std::to_string(found.after) + ", answer " +
                 std::to_string(found.code));
    EXPECT_FALSE(found.is_lost());
    EXPECT_FALSE(found.is_lie());
    EXPECT_LE(found.litter, 1);
    tally.lost += found.is_lost();
    tally.lies += found.is_lie();
    if (!found.met_fault()) return;
    ++tally.runs;
  }
  ADD_FAILURE() << saver.name << " never runs through";
}

TEST(SaveFaults, LoseNothingAndTellNoLie) {
  Tally tally;
  for (const Saver& saver : savers()) {
    const QTemporaryDir nothing;
    const QTemporaryDir old;
    ASSERT_EQ(saver.save(old.path(), 0), Said::done);
    for (const Fault fault : faulty::kFaults)
      for (const QString& begin : {nothing.path(), old.path()}) try_calls(saver, fault, QDir(begin), tally);
  }
  std::cout << tally.runs << " fault runs, " << tally.lost << " lost, " << tally.lies << " lies\n";
  EXPECT_GE(tally.runs, 1000);
}

// What writes over the old file is caught, and so is who does not look.
TEST(SaveFaults, ACarelessSaveIsFoundOut) {
  const Saver careless{"careless",
                       [](const QString& where, int version) {
                         QFile file(where + "/plain");
                         if (!file.open(QIODevice::WriteOnly | QIODevice::Unbuffered)) return Said::failed;
                         file.write(version == 0 ? "old" : "new");
                         return Said::done;
                       },
                       [](const QString& where) {
                         QFile file(where + "/plain");
                         if (!file.open(QIODevice::ReadOnly)) return kNone;
                         const auto bytes = file.readAll();
                         return bytes == "new" ? 1 : bytes == "old" ? 0 : kBroken;
                       }};
  const QTemporaryDir old;
  ASSERT_EQ(careless.save(old.path(), 0), Said::done);
  const FaultRun full = try_call(careless, Fault::full_once, 2, QDir(old.path()));
  EXPECT_TRUE(full.is_lost() && full.is_lie());
  const FaultRun killed = try_call(careless, Fault::kill, 2, QDir(old.path()));
  EXPECT_TRUE(killed.is_lost() && !killed.is_lie());
}

// The disk that fails does fail: an ordinary write through it is told so.
TEST(SaveFaults, ThatTheyReallyHappenIsSeenOnAPlainWrite) {
  const QTemporaryDir folder;
  const Saver careless{"careless",
                       [](const QString& where, int) {
                         QFile file(where + "/plain");
                         const bool opened = file.open(QIODevice::WriteOnly | QIODevice::Unbuffered);
                         return opened && file.write("new") == 3 ? Said::done : Said::failed;
                       },
                       [](const QString&) { return kNone; }};
  EXPECT_EQ(save_on_faulty_disk(careless, folder.path(), Fault::full_once, 1), static_cast<int>(Said::failed));
  EXPECT_EQ(save_on_faulty_disk(careless, folder.path(), Fault::full_once, 2), static_cast<int>(Said::failed));
  EXPECT_EQ(save_on_faulty_disk(careless, folder.path(), Fault::short_write, 1), static_cast<int>(Said::failed));
  EXPECT_EQ(save_on_faulty_disk(careless, folder.path(), Fault::kill, 2), kKilled);
  EXPECT_EQ(save_on_faulty_disk(careless, folder.path(), Fault::kill, 50), kRanThrough);
}

}  // namespace
}  // namespace foldyard::reliability
