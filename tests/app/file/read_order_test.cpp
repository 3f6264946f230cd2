#include "file/read_order.h"

#include <gtest/gtest.h>

#include "file/read_job.h"
#include "file/write_job.h"

namespace foldyard {
namespace {

const char* const kBatch = R"({
  "foldyard_job": 2,
  "rolls": [{"name": "Moss 1", "length": "20 m", "cloth": "moss", "marks": ["plain", "heavy"], "price_per_metre": "7.5", "squared": "free-end"},
            {"name": "Fern", "length": "9 m", "marks": ["printed"], "in_batch": "must"},
            {"name": "Old", "length": "9 m", "in_batch": "never"}],
  "panels": [{"name": "body", "across": "45 cm", "along": "90 cm"},
             {"name": "pocket", "across": "20 cm", "along": "20 cm"}],
  "webbing": [{"name": "cotton 30", "roll": "50 m", "price": "18", "ends": ["3.2 m", "80 cm"], "loss": "5 mm"}],
  "products": [{"name": "carrier", "worth": "24",
                "panels": [{"panel": "body"}, {"panel": "pocket", "count": 2, "from": ["plain"]}],
                "webbing": [{"webbing": "cotton 30", "length": "55 cm", "count": 2}],
                "price": "28", "prices": [{"of": "printed", "price": "31.5"}], "seam": "3.1 m", "labels": 1,
                "sewing": [{"name": "edges first", "steps": [{"name": "edges", "seconds": 70, "timed": [64.5, 71]},
                                                             {"name": "side seams", "seconds": 45}]},
                           {"name": "side seams first", "steps": []}]}],
  "notions": {"thread_factor": 3, "reel": "1000 m", "reel_price": "7.9", "label_price": "0.15"},
  "sitting": 7200,
  "on_hand": [{"panel": "pocket", "cloth": "felt", "marks": ["grey"], "count": 3}],
  "history": [{"when": "4 May", "lays": 2, "panels": [{"panel": "body", "cloth": "moss", "marks": ["plain", "heavy"], "count": 8}],
    "spoilt": [{"panel": "pocket", "cloth": "moss", "marks": ["plain", "heavy"], "count": 2}],
    "rolls": [{"roll": "moss 1", "cut": "2.5 m", "left": "0 cm"}]}],
  "order": {"lines": [{"product": "carrier", "must": 40, "may": 2, "from": ["moss", "printed"], "each_at_least": 6,
                       "rules": [{"of": "printed", "at_most": 12}, {"of": "heavy", "at_least": 1}]},
                      {"product": "carrier", "must": 1, "roll": "Moss 1"}],
            "aims": ["cloth", "minutes"],
            "kept": [{"roll": "Fern", "count": 2, "length": "96 cm", "way": "selvedge-to-selvedge", "lines": ["70 cm"],
                      "cuts": [{"cut": "along", "at": "45 cm"}, {"take": "body", "turned": true},
                               {"cut": "across", "at": "20 cm"}, {"take": "pocket"}, {"leave": true}]}]},
  "cloth_price_per_square_metre": "8.25"
})";

TEST(ReadOrder, ReadsEveryField) {
  const Result<Job> job = read_job(kBatch);
  ASSERT_TRUE(job) << job.problem().sentence();
  EXPECT_EQ(job->rolls[0].cloth, "moss");
  EXPECT_EQ(job->rolls[0].marks, (std::vector<std::string>{"plain", "heavy"}));
  EXPECT_EQ(job->rolls[0].price, Worth::parts(75'000));
  EXPECT_EQ(job->rolls[0].squared, Squared::free_end);
  EXPECT_EQ(job->rolls[1].price, std::nullopt);
  EXPECT_EQ(job->webbings, (std::vector<Webbing>{{"cotton 30", Length::mm(50'000), Worth::whole(18),
                                                  {Length::mm(3'200), Length::mm(800)}, Length::mm(5)}}));
  EXPECT_EQ(job->products, (std::vector<Product>{{"carrier", {{0, 1}, {1, 2, {"plain"}}},
                                                  {{0, Length::mm(550), 2}}, Worth::whole(24), Worth::whole(28),
                                                  {{"printed", Worth::parts(315'000)}}, Length::mm(3'100), 1,
                                                  {{"edges first",
                                                    {{"edges", Duration::seconds(70),
                                                      {Duration::ms(64'500), Duration::seconds(71)}},
                                                     {"side seams", Duration::seconds(45)}}},
                                                   {"side seams first", {}}}}}));
  EXPECT_EQ(job->notions, (Notions{30, Length::mm(1'000'000), Worth::parts(79'000), Worth::parts(1'500)}));
  EXPECT_EQ(job->sitting, Duration::seconds(7'200));
  EXPECT_EQ(job->on_hand, (std::vector<CutPanels>{{1, "felt", {"grey"}, 3}}));
  EXPECT_EQ(job->history, (std::vector<CutRecord>{{"4 May", 2, {{0, "moss", {"plain", "heavy"}, 8}},
                                                    {{1, "moss", {"plain", "heavy"}, 2}}, {{"moss 1", Length::mm(2'500), Length()}}}}));
  const OrderLine line{0, 40, 2, {"moss", "printed"}, 6, {{"printed", 0, 12}, {"heavy", 1}}};
  const OrderLine kept_on_roll{0, 1, 0, {}, 0, {}, "Moss 1"};
  const KeptLength kept{"Fern", 2, Length::mm(960), {FoldKind::selvedge_to_selvedge, 2, false, true}, {Length::mm(700)},
                        {{NodeKind::cut, Direction::along, Length::mm(450)}, {NodeKind::take, Direction::along, {}, 0, true},
                         {NodeKind::cut, Direction::across, Length::mm(200)}, {NodeKind::take, Direction::along, {}, 1}, {}}};
  EXPECT_EQ(job->order, (Order{{line, kept_on_roll}, {BatchAim::cloth, BatchAim::minutes}, {kept}}));
  EXPECT_EQ(job->rolls[0].in_batch, InBatch::may);
  EXPECT_EQ(job->rolls[1].in_batch, InBatch::must);
  EXPECT_EQ(job->rolls[2].in_batch, InBatch::never);
  EXPECT_EQ(job->cloth_price, Worth::parts(82'500));
}

TEST(ReadOrder, IsWrittenSoThatItReadsTheSame) {
  const Result<Job> job = read_job(kBatch);
  ASSERT_TRUE(job);
  const Result<Job> again = read_job(write_job(*job));
  ASSERT_TRUE(again) << again.problem().sentence();
  EXPECT_EQ(*again, *job);
}

TEST(ReadOrder, LeavesAJobWithoutOneAsItWas) {
  const Result<Job> job = read_job(R"({"foldyard_job": 2, "rolls": [{"name": "Fern", "length": "9 m"}],
    "panels": [{"name": "body", "across": "45 cm", "along": "90 cm"}]})");
  ASSERT_TRUE(job);
  EXPECT_EQ(job->order, Order());
  for (const char* key : {"products", "webbing", "order", "cloth", "marks"}) {
    EXPECT_FALSE(write_job(*job).contains('"' + QByteArray(key) + '"')) << key;
  }
}

std::string fault_with(const char* field, const char* other) {
  QByteArray file = kBatch;
  EXPECT_TRUE(file.contains(field)) << field;
  const Result<Job> job = read_job(file.replace(field, other));
  return job ? "" : job.problem().sentence();
}

TEST(ReadOrder, RefusesNamesThatNothingHas) {
  EXPECT_EQ(fault_with(R"({"panel": "body"})", R"({"panel": "bodice"})"),
            "products[0].panels[0].panel: there is no panel \"bodice\"; write the name of a panel of this job.");
  EXPECT_EQ(fault_with(R"("product": "carrier")", R"("product": "bag")"),
            "order.lines[0].product: there is no product \"bag\"; write the name of a product of this job.");
  EXPECT_EQ(fault_with(R"("webbing": "cotton 30")", R"("webbing": "jute")"),
            "products[0].webbing[0].webbing: there is no webbing \"jute\"; write the name of a webbing of this job.");
  EXPECT_EQ(fault_with(R"("of": "heavy")", R"("of": "light")"),
            "order.lines[0].rules[1].of: no roll is of the cloth \"light\" or has it as a mark; write the cloth or a "
            "mark of a roll.");
}

TEST(ReadOrder, RefusesWhatIsOfAnotherKind) {
  EXPECT_EQ(fault_with(R"("marks": ["printed"])", R"("marks": "printed")"),
            "rolls[1].marks: a text is not a list; write it between [ and ].");
  EXPECT_EQ(fault_with(R"("marks": ["printed"])", R"("marks": [7])"),
            "rolls[1].marks[0]: a number is not a text; write it between quotes.");
  EXPECT_EQ(fault_with(R"(["3.2 m", "80 cm"])", R"(["3.2 m", "80"])").substr(0, 19), "webbing[0].ends[1]:");
  EXPECT_EQ(fault_with(R"("minutes")", R"("speed")"),
            "order.aims[1]: this is no aim that is known here; write one of cloth, lifts, minutes, remnants.");
  EXPECT_EQ(fault_with(R"("may": 2)", R"("many": 2)").substr(0, 21), "order.lines[0].many: ");
  EXPECT_EQ(fault_with(R"("must": 40)", R"("must": 4.5)").substr(0, 20), "order.lines[0].must:");
}

TEST(ReadOrder, IsNotKnownInAFileOfVersion1) {
  EXPECT_EQ(fault_with(R"("foldyard_job": 2)", R"("foldyard_job": 1)").substr(0, 15), "rolls[0].cloth:");
}

}  // namespace
}  // namespace foldyard
