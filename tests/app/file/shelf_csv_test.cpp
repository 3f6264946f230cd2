#include "file/shelf_csv.h"

#include <gtest/gtest.h>

#include "file/read_job.h"

namespace foldyard {
namespace {

Job workshop() {
  const Result<Job> job = read_job(R"({"foldyard_job": 2, "unit": "cm",
    "rolls": [{"name": "Moss 1", "length": "20 m", "cloth": "moss, dark", "marks": ["plain", "heavy"],
               "price_per_metre": "7.5", "flaws": [{"from": "3.2 m", "to": "3.26 m"}]},
              {"name": "Fern", "nap": "one-way", "measured": {"by": "turns", "turns": 60, "turns_give": 1,
               "outer": "31 cm", "outer_give": "2 mm", "tube": "5 cm", "tube_give": "1 mm"}}],
    "panels": [{"name": "body", "across": "45 cm", "along": "90 cm"}]})");
  EXPECT_TRUE(job) << job.problem().sentence();
  return *job;
}

TEST(ShelfCsv, HasARowForEachRoll) {
  const QList<QByteArray> lines = shelf_csv(workshop()).split('\n');
  EXPECT_EQ(lines[0], "name,cloth,marks,width,selvedge,thickness,length,nap,colour,price_per_metre,squared\r");
  EXPECT_EQ(lines[1], "Moss 1,\"moss, dark\",plain; heavy,140 cm,1.5 cm,0.1 cm,2000 cm,none,#c9b79c,7.5,none\r");
}

TEST(ShelfCsv, ReadsBackWhatItWrites) {
  Job job = workshop();
  const Result<Job> again = with_shelf(job, shelf_csv(job));
  ASSERT_TRUE(again) << again.problem().sentence();
  // The length of a roll that is only measured is written as what plans count on,
  // and taken for known when it comes back.
  job.rolls[1].measured.reset();
  EXPECT_EQ(*again, job);
}

TEST(ShelfCsv, ChangesWhatTheTableSaysAndNothingElse) {
  const Result<Job> job = with_shelf(workshop(), "length;name\n12,4 m;Moss 1\n8 m;New one\n");
  ASSERT_TRUE(job) << job.problem().sentence();
  ASSERT_EQ(job->rolls.size(), 2u);
  EXPECT_EQ(job->rolls[0].length, Length::mm(12'400));
  EXPECT_EQ(job->rolls[0].marks.size(), 2u);
  EXPECT_EQ(job->rolls[0].flaws.size(), 1u);
  EXPECT_EQ(job->rolls[1].name, "New one");
}

std::string fault_of(const char* csv) {
  const Result<Job> job = with_shelf(workshop(), csv);
  return job ? "" : job.problem().sentence();
}

TEST(ShelfCsv, SaysWhatIsWrongAndWhere) {
  EXPECT_EQ(fault_of("name\n"), "the table holds no roll; give a row for each roll below the columns.");
  EXPECT_EQ(fault_of("length\n3 m\n"), "line 1: no column holds the names of the rolls; call it name.");
  EXPECT_EQ(fault_of("name,size\nFern,3\n").substr(0, 39), "line 1: no column \"size\" is known; use ");
  EXPECT_EQ(fault_of("name,length\nFern,3\n").substr(0, 15), "line 2: length:");
  EXPECT_EQ(fault_of("name,width\nNew,1 m\n").substr(0, 15), "line 2: length:");
  EXPECT_EQ(fault_of("name,nap\nFern,up\n").substr(0, 12), "line 2: nap:");
  EXPECT_EQ(fault_of("name\nFern\nFern\n").substr(0, 14), "rolls[1].name:");
}

TEST(ShelfCsv, ARefusalIsOneLineWhateverItQuotes) {
  for (const char* table : {"name,\"a\nb\"\r\nMoss,1\r\n", "name,length,nap\r\nNew,3 m,\"one\nway\"\r\n"}) {
    const auto refused = with_shelf(workshop(), table);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.problem().sentence().find('\n'), std::string::npos) << refused.problem().sentence();
  }
}

}  // namespace
}  // namespace foldyard
