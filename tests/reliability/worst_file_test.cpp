// The largest job files: what is legal is read and planned within 300 MiB, what is not is
// refused in one sentence. The real program, as a child; the kernel says what it took.

#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>
#include <fcntl.h>
#include <signal.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <iostream>
#include <thread>

#include "file/read_job.h"
#include "file/write_job.h"
#include "job/check_job.h"
#include "job/defaults.h"
#include "job/limits.h"
#include "job/most_abreast.h"

namespace foldyard::reliability {
namespace {

constexpr long kMostKiB = 300 * 1024;

struct Ran {
  int code = -1;
  long most_kib = 0;  // ever resident
  QByteArray complaint;
};

void run_program(const QTemporaryDir& folder, std::vector<const char*> words) {
  const int errors = open(folder.filePath("errors").toLocal8Bit().constData(), O_CREAT | O_TRUNC | O_WRONLY, 0600);
  const int nowhere = open("/dev/null", O_WRONLY);
  if (dup2(nowhere, 1) < 0 || dup2(errors, 2) < 0 || chdir(folder.path().toLocal8Bit().constData()) != 0) _exit(99);
  unsetenv("DISPLAY");
  unsetenv("WAYLAND_DISPLAY");
  words.insert(words.begin(), "foldyard");
  words.push_back(nullptr);
  execv(FOLDYARD_BINARY_DIR "/app/foldyard", const_cast<char**>(words.data()));
  _exit(99);
}

// stop_after: seconds, where one would press Ctrl+C then.
Ran foldyard(const QTemporaryDir& folder, const std::vector<const char*>& words, int stop_after = 0) {
  const pid_t child = fork();
  if (child == 0) run_program(folder, words);
  if (stop_after > 0) {
    std::this_thread::sleep_for(std::chrono::seconds(stop_after));
    kill(child, SIGINT);
  }
  int status = 0;
  rusage used{};
  EXPECT_EQ(wait4(child, &status, 0, &used), child);
  QFile errors(folder.filePath("errors"));
  EXPECT_TRUE(errors.open(QIODevice::ReadOnly));
  return {WIFEXITED(status) ? WEXITSTATUS(status) : -1, used.ru_maxrss, errors.readAll()};
}

void write_bytes(const QTemporaryDir& folder, const QByteArray& bytes) {
  QFile file(folder.filePath("job.json"));
  ASSERT_TRUE(file.open(QIODevice::WriteOnly));
  ASSERT_EQ(file.write(bytes), bytes.size());
}

// The checks of addresses keep a map of all memory.
void expect_modest(const char* what, const Ran& ran) {
  std::cout << what << ": " << ran.most_kib / 1024 << " MiB\n";
#ifndef __SANITIZE_ADDRESS__
  EXPECT_LE(ran.most_kib, kMostKiB) << what;
#endif
}

std::string name(const char* what, std::size_t number) {
  std::string text = what + std::to_string(number) + " ";
  return text + std::string(limits::kLongestName - text.size(), 'x');
}

// The widest, longest and thinnest cloth with as many flaws as may be, each small and
// in the way: 200 over a kilometre.
Roll largest_roll(std::size_t number, std::size_t flaws) {
  Roll roll{name("Roll ", number), default_fabric(), limits::kRollLength.most};
  roll.fabric.width = limits::kRollWidth.most;
  roll.fabric.thickness = limits::kThickness.least;
  for (std::size_t i = 0; i < flaws; ++i) {
    const Length from = Length::mm(4'500) * static_cast<std::int64_t>(i) + Length::mm(100);
    roll.flaws.push_back({{from, from + Length::mm(50)}, {Length::mm(100), Length::mm(150)}, name("stain ", i)});
  }
  return roll;
}

// Sizes that share no measure, the smallest just as large as a roll may hold a million of.
std::vector<Panel> most_panels() {
  std::vector<Panel> panels;
  for (std::size_t i = 0; i < limits::kMostPanels; ++i) {
    const auto n = static_cast<std::int64_t>(i);
    panels.push_back({name("Panel ", i), Length::mm(100 + 7 * n), Length::mm(100 + 11 * n), true, true, Worth::whole(1 + n)});
  }
  return panels;
}

Job largest_job(std::size_t rolls, std::size_t flaws) {
  Job job = default_job();
  job.name = name("Job ", 0);
  for (std::size_t i = 0; i < rolls; ++i) job.rolls.push_back(largest_roll(i, flaws));
  job.panels = most_panels();
  job.table.length = limits::kTableLength.most;
  job.table.depth = limits::kTableDepth.most;
  job.table.reach = limits::kReach.most;
  job.cutter.height = limits::kCutterHeight.most;
  job.cutter.most_plies = limits::kMostPlies.most;
  job.longest_fan = limits::kLongestFan.most;
  return job;
}

// Whatever else fits a file: goods of all panels, lines, webbing with its ends, what lies on
// hand and was cut, and as many flaws as the rest of the file has room for.
Job fullest_job() {
  Job job = largest_job(limits::kMostRolls, 0);
  job.pace = {};  // so that all may be cut in the hours that there may be
  for (std::size_t i = 0; i < limits::kMostWebbings; ++i) {
    job.webbings.push_back({name("Webbing ", i), limits::kWebbingRoll.most});
    job.webbings.back().ends.assign(limits::kMostEnds, limits::kWebbingCut.most);
  }
  for (std::size_t i = 0; i < limits::kMostProducts; ++i) {
    Product product{name("Product ", i), {}, {}, Worth::whole(1)};
    for (std::size_t p = 0; p < limits::kMostPanels; ++p) product.panels.push_back({static_cast<int>(p), limits::kInAPiece.most});
    product.webbing.assign(limits::kMostWords, {0, limits::kWebbingCut.least, limits::kInAPiece.most});
    job.products.push_back(product);
  }
  for (std::size_t i = 0; i < limits::kMostOrderLines; ++i)
    job.order.lines.push_back({static_cast<int>(i % limits::kMostProducts), limits::kPieces.most, limits::kPieces.most});
  job.on_hand.assign(limits::kMostOnHand, {0, job.rolls[0].name, {}, limits::kPieces.most});
  job.history.assign(limits::kMostRecords, {name("Cut ", 0), 1, {}});
  for (Roll& roll : job.rolls)
    if (most_abreast(job) > limits::kMostAbreast) roll.in_batch = InBatch::never;
  return job;
}

QByteArray fullest_file() {
  Job job = fullest_job();
  const QByteArray without = write_job(job);
  const qint64 of_flaws = write_job([&] { Job one = job; one.rolls[0].flaws = largest_roll(0, limits::kMostFlaws).flaws; return one; }()).size() - without.size();
  for (std::size_t i = 0; i < static_cast<std::size_t>((kLargestJobFile - without.size()) / (of_flaws + 100)); ++i)
    job.rolls[i].flaws = largest_roll(i, limits::kMostFlaws).flaws;
  return write_job(job);
}

TEST(WorstFile, TheFullestIsReadWithin300MiB) {
  const QTemporaryDir folder;
  const QByteArray bytes = fullest_file();
  ASSERT_LE(bytes.size(), kLargestJobFile);
  EXPECT_GT(bytes.size(), kLargestJobFile - 100'000);
  write_bytes(folder, bytes);
  const Ran ran = foldyard(folder, {"shelf", "job.json"});
  EXPECT_EQ(ran.code, 0) << ran.complaint.toStdString();
  expect_modest("the fullest file, read", ran);
}

TEST(WorstFile, TheLargestRollIsPlannedWithin300MiB) {
  const QTemporaryDir folder;
  const Job job = largest_job(1, limits::kMostFlaws);
  ASSERT_FALSE(check_job(job));
  write_bytes(folder, write_job(job));
  const Ran ran = foldyard(folder, {"plan", "job.json", "--way", "fan-12"});
  EXPECT_EQ(ran.code, 0) << ran.complaint.toStdString();
  expect_modest("the largest roll, planned by one way", ran);
}

// Rolls of as many kinds, and goods of all panels: it plans for hours.
Job large_order(std::size_t rolls) {
  Job job = largest_job(rolls, 0);
  job.pace = {};
  for (std::size_t i = 0; i < limits::kMostPanels; ++i) {
    const int other = static_cast<int>((i * 7 + 3) % limits::kMostPanels);
    job.products.push_back({name("Product ", i), {{static_cast<int>(i), 1}}, {}, Worth::whole(1)});
    if (other != static_cast<int>(i)) job.products.back().panels.push_back({other, 2});
    job.order.lines.push_back({static_cast<int>(i), 1000, 10});
  }
  for (std::size_t i = 0; i < job.rolls.size(); ++i) {
    job.rolls[i].fabric.width -= Length::mm(13) * static_cast<std::int64_t>(i);
    if (most_abreast(job) > limits::kMostAbreast) job.rolls[job.rolls.size() - 1 - i].in_batch = InBatch::never;
  }
  return job;
}

// Stopped, it gives its plan, or says that it has none yet.
void expect_stopped_modest(const char* what, const Job& order, int seconds) {
  const QTemporaryDir folder;
  ASSERT_FALSE(check_job(order)) << check_job(order)->sentence();
  write_bytes(folder, write_job(order));
  const Ran ran = foldyard(folder, {"batch", "job.json"}, seconds);
  EXPECT_TRUE(ran.code == 0 || ran.complaint.contains("planning was stopped")) << ran.code << ran.complaint.toStdString();
  expect_modest(what, ran);
}

TEST(WorstFile, ALargeOrderIsPlannedWithin300MiB) {
  expect_stopped_modest("a large order, planned for 40 s", large_order(4), 40);
}

TEST(WorstFile, TheLargestOrderIsStoppedWithin300MiB) {
  expect_stopped_modest("the largest order, stopped", large_order(limits::kMostRolls), 5);
}

// One sentence on one line, and nothing was tried before.
void expect_refused(const QTemporaryDir& folder, const char* about) {
  const Ran ran = foldyard(folder, {"plan", "job.json"});
  EXPECT_EQ(ran.code, 2);
  EXPECT_EQ(ran.complaint.count('\n'), 1) << ran.complaint.toStdString();
  EXPECT_TRUE(ran.complaint.contains(about)) << ran.complaint.toStdString();
  expect_modest("what is too large, refused", ran);
}

TEST(WorstFile, ALargerOneIsRefusedInOneSentence) {
  const QTemporaryDir folder;
  write_bytes(folder, QByteArray(kLargestJobFile + 1, ' '));
  expect_refused(folder, "4 MiB");
}

TEST(WorstFile, ARollOfTooManyPanelsIsRefusedInOneSentence) {
  const QTemporaryDir folder;
  Job job = largest_job(1, 0);
  job.panels[0].across -= Length::units(1);
  write_bytes(folder, write_job(job));
  expect_refused(folder, "rolls[0].length");
}

}  // namespace
}  // namespace foldyard::reliability
