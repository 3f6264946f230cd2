#include "job/shortfalls.h"

#include <gtest/gtest.h>

#include "core/support/order_job.h"
#include "job/length_pricer.h"

namespace foldyard {
namespace {

// 12 carriers are lacking: 12 bodies are four lengths of 900 (three each; two of 1800
// are shorter by two allowances), 24 pockets by the best length of them alone. Moss
// is cheaper than sand.
TEST(Shortfalls, NameTheClothAndAboutHowMuch) {
  Job job = test::order_job();
  job.order.lines[1].from = {};
  job.order.lines[1].rules = {{"printed", 3, {}}};
  const Result<BatchCase> c = batch_case(job);
  BatchLengths lengths(job, *c);
  for (int p = 0; p < 3; ++p) {
    std::vector<std::int64_t> prices(3, 0);
    prices[static_cast<std::size_t>(p)] = 1;
    LengthPricer pricer(job, c->kinds[0].cloth, prices, 40'000'000);
    const std::vector<FoldWay> ways(c->kinds[0].ways.begin(), c->kinds[0].ways.begin() + c->kinds[0].priced);
    const auto priced = pricer.lengths(ways);
    lengths.add(0, 0, pricer.pattern(p == 0 ? priced.back() : priced.front(), c->kinds[0].ways));
  }
  OrderState state = empty_state(c->order);
  state.pieces[1] = {7, 1};
  const auto list = shortfalls_of(*c, lengths, state);
  ASSERT_EQ(list.size(), 2u);
  EXPECT_EQ(list[0].line, 0);
  EXPECT_EQ(list[0].pieces, 12);
  EXPECT_EQ(list[0].cloth, "moss");
  EXPECT_GE(list[0].needed, Length::mm(2 * 1'840));
  EXPECT_LE(list[0].needed, Length::mm(2 * 1'840 + 24 * 240));
  EXPECT_EQ(list[1].line, 1);  // all are made, but of sand two too few
  EXPECT_EQ(list[1].pieces, 2);
  EXPECT_EQ(list[1].cloth, "sand");
  state.pieces[0] = {12, 0};
  state.pieces[1] = {5, 3};
  EXPECT_TRUE(shortfalls_of(*c, lengths, state).empty());
}

struct Lacking {
  Result<BatchCase> c;
  BatchLengths lengths;

  explicit Lacking(const Job& job) : c(batch_case(job)), lengths(job, *c) {}
  // Open, of the best length of this panel alone from this kind.
  void add_best(const Job& job, int kind, std::size_t panel) {
    std::vector<std::int64_t> prices(job.panels.size(), 0);
    prices[panel] = 1;
    const BatchKind& of = c->kinds[static_cast<std::size_t>(kind)];
    LengthPricer pricer(job, of.cloth, prices, 40'000'000);
    lengths.add(kind, 0, pricer.pattern(pricer.lengths({of.ways[0]}).front(), of.ways));
  }
  Shortfall first() const { return shortfalls_of(*c, lengths, empty_state(c->order)).front(); }
};

// Pockets may be cut from printed cloth only: carriers of the plain cloth lack bodies of it.
TEST(Shortfalls, CountNoPanelsThatNameTheirCloth) {
  Job job = test::order_job();
  job.order.lines = {{0, 12, 0, {"moss"}, 0, {}}};
  const auto needed = [](const Job& of) {
    Lacking lacking(of);
    for (const std::size_t panel : {0, 1}) lacking.add_best(of, 0, panel);
    return lacking.first().needed;
  };
  const Length both = needed(job);
  job.products[0].panels[1].from = {"printed"};
  EXPECT_EQ(needed(job), Length::mm(4 * 940));
  EXPECT_GT(both, Length::mm(4 * 940));
}

// Sand is wider and another kind. Without a length of its kind nothing says how much of it is
// needed, so that the cloth named is moss, though dearer.
TEST(Shortfalls, MeasureEachClothByLengthsOfItsKind) {
  Job job = test::order_job();
  job.rolls[2].fabric.width = Length::mm(1'900);
  job.rolls[2].price = Worth::whole(1);
  job.order.lines = {{0, 12, 0, {}, 0, {}}};
  Lacking lacking(job);
  ASSERT_EQ(lacking.c->kinds.size(), 2u);
  lacking.add_best(job, 0, 0);
  EXPECT_EQ(lacking.first().cloth, "moss");
  EXPECT_EQ(lacking.first().needed, Length::mm(4 * 940));
  lacking.add_best(job, 1, 0);
  EXPECT_EQ(lacking.first().cloth, "sand");
  EXPECT_EQ(lacking.first().needed, Length::mm(3 * 940));
}

}  // namespace
}  // namespace foldyard
