#include "fuzz/targets.h"

#include <QCryptographicHash>

#include <string>
#include <string_view>

#include "document/side_file.h"
#include "file/csv.h"
#include "file/read_job.h"
#include "file/shelf_csv.h"
#include "file/write_job.h"
#include "fuzz/shaped_job.h"
#include "inspect/inspect_plan.h"
#include "job/check_job.h"
#include "job/plan_roll.h"
#include "measure/read_length.h"
#include "measure/write_length.h"

namespace foldyard::fuzz {
namespace {

void expect(bool holds, const char* promise) {
  if (!holds) throw Broken(promise);
}

// One sentence that says something, without a line break.
void expect_words(const Problem& problem) {
  const std::string sentence = problem.sentence();
  expect(sentence.size() > 10 && sentence.find('\n') == std::string::npos, "a refusal is one sentence");
}

QByteArray bytes_of(const std::uint8_t* bytes, std::size_t size) {
  return QByteArray(reinterpret_cast<const char*>(bytes), static_cast<qsizetype>(size));
}

void run_job(const std::uint8_t* bytes, std::size_t size) {
  const auto job = read_job(bytes_of(bytes, size));
  if (!job) return expect_words(job.problem());
  const auto again = read_job(write_job(*job));
  expect(again && *again == *job, "a job comes back equal");
}

void run_table(const std::uint8_t* bytes, std::size_t size) {
  const auto text = bytes_of(bytes, size);
  const auto rows = read_csv(text);
  if (!rows) return expect_words(rows.problem());
  static const Job job = shaped_job(nullptr, 0);
  const auto filled = with_shelf(job, text);
  if (!filled) return expect_words(filled.problem());
  if (const auto problem = check_job(*filled)) throw Broken("a job with a table's rolls does not stand: " + problem->sentence());
  const auto again = with_shelf(*filled, shelf_csv(*filled));
  expect(again && again->rolls == filled->rolls, "a shelf comes back equal");
}

void run_length(const std::uint8_t* bytes, std::size_t size) {
  const auto length = read_length(std::string_view(reinterpret_cast<const char*>(bytes), size));
  if (!length) return expect_words(length.problem());
  expect(*length >= Length{} && *length <= kLongest, "a length is within its limits");
  for (const Unit unit : {Unit::mm, Unit::cm, Unit::m, Unit::inch, Unit::yard}) {
    const std::string exact = write_exact(*length, unit);
    if (exact.empty()) continue;
    const auto again = read_length(exact);
    expect(again && *again == *length, "a length comes back equal");
  }
}

void run_side(const std::uint8_t* bytes, std::size_t size) {
  const auto body = bytes_of(bytes, size);
  expect(!read_side_file(body), "without its head it is refused");
  const auto hash = QCryptographicHash::hash(body, QCryptographicHash::Sha256).toHex();
  const auto side = read_side_file("foldyard-side-file 1 " + hash + '\n' + body);
  if (!side) return expect_words(side.problem());
  const auto again = read_side_file(write_side_file(*side));
  expect(again && again->job == side->job && again->crashes == side->crashes, "a side file comes back equal");
}

void run_shape(const std::uint8_t* bytes, std::size_t size) {
  const Job job = shaped_job(bytes, size);
  if (const auto problem = check_job(job)) throw Broken("a shaped job is not legal: " + problem->sentence());
  SearchBudget small;
  small.steps = 1'000'000;
  const auto ways = all_ways(job.longest_fan);
  const FoldWay way = ways[size % ways.size()];
  const auto plan = plan_roll(job, 0, way, size % 2 == 0 ? Aim::most_worth : Aim::worth_less_time, small);
  if (!plan) return expect_words(plan.problem());
  const auto faults = inspect_plan(job, *plan);
  if (!faults.empty()) throw Broken(faults.front());
}

}  // namespace

const std::vector<Target>& targets() {
  static const std::vector<Target> all{{"job", run_job, 20'000},
                                       {"table", run_table, 20'000},
                                       {"length", run_length, 200'000},
                                       {"side", run_side, 10'000},
                                       {"shape", run_shape, 300}};
  return all;
}

}  // namespace foldyard::fuzz
