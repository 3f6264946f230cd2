// A program that saves without end is killed a thousand times, each time at
// another moment.

#include <gtest/gtest.h>

#include <QDir>
#include <QTemporaryDir>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <iostream>
#include <random>

#include "reliability/savers.h"

namespace foldyard::reliability {
namespace {

constexpr int kKills = 1000;

void save_until_killed(const Saver& saver, const QString& folder) {
  for (int version = 0;; version = 1 - version) saver.save(folder, version);
}

void kill_after(const Saver& saver, const QString& folder, int microseconds) {
  const pid_t child = fork();
  if (child == 0) save_until_killed(saver, folder);
  usleep(static_cast<useconds_t>(microseconds));
  kill(child, SIGKILL);
  int status = 0;
  EXPECT_EQ(waitpid(child, &status, 0), child);
  EXPECT_TRUE(WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL);
}

qsizetype unfinished_in(const QString& folder) {
  return QDir(folder).entryList({".foldyard-*"}, QDir::Files | QDir::Hidden).size();
}

Saver named(const std::string& name) {
  for (Saver& saver : savers())
    if (saver.name == name) return std::move(saver);
  return {};
}

TEST(KilledSave, AThousandKillsLoseNothing) {
  std::mt19937 random(20261125);
  std::uniform_int_distribution<int> moments(0, 3000);
  int bad = 0;
  for (const char* name : {"a job", "a side file", "settings", "a file of 60000 bytes"}) {
    const Saver saver = named(name);
    const QTemporaryDir folder;
    ASSERT_EQ(static_cast<int>(saver.save(folder.path(), 0)), 0);
    for (int kill = 0; kill < kKills / 4; ++kill) {
      const auto litter = unfinished_in(folder.path());
      kill_after(saver, folder.path(), moments(random));
      const int there = saver.version_in(folder.path());
      bad += there < 0;
      ASSERT_GE(there, 0) << name << ", kill " << kill;
      ASSERT_LE(unfinished_in(folder.path()), litter + 1) << name << ", kill " << kill;
    }
  }
  std::cout << kKills << " kills, " << bad << " bad\n";
}

}  // namespace
}  // namespace foldyard::reliability
