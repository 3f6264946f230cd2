#include "job/batch_market.h"

#include <gtest/gtest.h>

#include "core/support/order_job.h"
#include "job/cut_back.h"

namespace foldyard {
namespace {

struct MarketSetting {
  Job job = test::order_job();
  Result<BatchCase> c = batch_case(job);
  OrderPrices prices;

  MarketSetting() {
    prices.panel = {{500, 60, 0}, {0, 0, 90}};
    prices.rules = {{}, {}};
    prices.all_must = true;
    prices.cloth = prices.may = 1;
  }
  std::vector<Offer> offers(bool for_bound, std::int64_t most_panels = 1'000'000,
                            const std::atomic<bool>* cancelled = nullptr) const {
    const Asking asking{job, *c, prices, std::vector<double>(c->order.sources.size(), 0), true, for_bound, 40'000'000, cancelled, most_panels};
    return offers_of(markets_of(c->order), asking);
  }
};

TEST(BatchMarket, IsAClothInOneOfItsKinds) {
  Job job = test::order_job();
  job.rolls[1].fabric.width = Length::mm(1500);
  const Result<BatchCase> c = batch_case(job);
  const auto markets = markets_of(c->order);
  ASSERT_EQ(markets.size(), 3u);
  EXPECT_EQ(markets[0].cloth, markets[1].cloth);
  EXPECT_NE(markets[0].kind, markets[1].kind);
}

TEST(BatchMarket, OffersWhatSellsInEachCloth) {
  const MarketSetting s;
  const auto offers = s.offers(true);
  ASSERT_EQ(offers.size(), 2u);
  for (const auto& [way, pattern] : offers[0].lengths) EXPECT_EQ(copies_in(pattern, 3)[2], 0);
  for (const auto& [way, pattern] : offers[1].lengths) EXPECT_EQ(copies_in(pattern, 3)[0], 0);
  EXPECT_GE(offers[0].lengths.size(), 2u);
  EXPECT_GT(offers[0].sold.size(), offers[0].lengths.size());
  EXPECT_TRUE(s.offers(false)[0].sold.empty());
}

TEST(BatchMarket, BoundsByAreaWhereNotAllIsKnown) {
  const MarketSetting s;
  const auto markets = markets_of(s.c->order);
  auto offers = s.offers(true);
  const auto exact = least_of_all(s.c->order, markets, offers, s.prices, 1'000'000, nullptr);
  for (Offer& offer : offers) offer.is_whole = false;
  const auto by_area = least_of_all(s.c->order, markets, offers, s.prices, 1'000'000, nullptr);
  ASSERT_TRUE(exact && by_area);
  EXPECT_LE(*by_area, *exact);
}

TEST(BatchMarket, RoundsThePricesOfAModel) {
  const MarketSetting s;
  OrderModel model(s.c->order, {1, 100, 1, 10});
  const LengthPool pool = {{0, 0, Length::mm(940), {3, 0, 0}, 1, {}, {}}, {0, 0, Length::mm(240), {0, 6, 0}, 1, {}, {}},
                           {0, 0, Length::mm(440), {0, 0, 4}, 1, {}, {}}};
  for (int source = 0; source < std::ssize(s.c->order.sources); ++source)
    for (int l = 0; l < 3; ++l) model.allow(source, l, pool);
  ASSERT_TRUE(model.solve());
  const OrderPrices prices = whole_prices(s.c->order, model);
  EXPECT_GT(prices.scale, 1);
  EXPECT_EQ(prices.cloth, prices.scale);
  EXPECT_NEAR(static_cast<double>(prices.panel[1][2]), model.panel_price(1, 2) * 1e4 * static_cast<double>(prices.scale), 0.51);
}

std::int64_t panels_on(const Offer& offer) {
  std::int64_t panels = 0;
  for (const auto& [way, pattern] : offer.lengths) panels += std::ssize(pattern.panels);
  return panels;
}

// The first length is offered whatever it holds; the next only where there is room.
TEST(BatchMarket, OffersOneLengthAtLeastAndNoMorePanelsThanItMay) {
  const MarketSetting s;
  const Offer all = s.offers(false)[0], one = s.offers(false, 0)[0];
  ASSERT_GT(all.lengths.size(), 1u);
  ASSERT_EQ(one.lengths.size(), 1u);
  EXPECT_EQ(one.lengths[0].second, all.lengths[0].second);
  const std::int64_t most = panels_on(all) - 1;
  const Offer some = s.offers(false, most)[0];
  EXPECT_LE(panels_on(some), most);
  EXPECT_GT(some.lengths.size(), 1u);
}

TEST(BatchMarket, OffersNothingOnceItIsStopped) {
  const MarketSetting s;
  const std::atomic<bool> stopped = true;
  for (const Offer& offer : s.offers(true, 1'000'000, &stopped)) {
    EXPECT_TRUE(offer.lengths.empty());
    EXPECT_TRUE(offer.sold.empty());
  }
}

TEST(BatchMarket, BoundsNothingOnceItIsStopped) {
  const MarketSetting s;
  const std::atomic<bool> stopped = true;
  EXPECT_FALSE(least_of_all(s.c->order, markets_of(s.c->order), s.offers(true), s.prices, 1'000'000, &stopped));
}

// Thousands of labels lie on a long length: without room the one that is offered all the same
// is one of few.
TEST(BatchMarket, OffersALengthOfFewPanelsWhereThereIsNoRoom) {
  MarketSetting s;
  s.job.panels[1].across = s.job.panels[1].along = Length::mm(40);
  s.c = batch_case(s.job);
  s.prices.panel = {{0, 60, 0}, {0, 60, 0}};
  const Offer all = s.offers(false)[0], one = s.offers(false, 0)[0];
  EXPECT_GT(panels_on(all), 1'000);
  EXPECT_EQ(one.lengths.size(), 1u);
  EXPECT_LE(panels_on(one), 1'000);
}

}  // namespace
}  // namespace foldyard
