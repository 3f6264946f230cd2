#include "batch/order_edits.h"

#include <gtest/gtest.h>

#include "core/support/order_job.h"
#include "job/check_job.h"

namespace foldyard {
namespace {

TEST(OrderEdits, MakesAnOrderFromThePanels) {
  Job job = test::order_job();
  job.products.clear();
  job.order.lines.clear();
  job = with_order_of_all(job);
  ASSERT_EQ(job.products.size(), 3u);
  EXPECT_EQ(job.products[1].name, "pocket");
  EXPECT_EQ(job.products[1].panels, (std::vector<PanelCount>{{1, 1, {}}}));
  EXPECT_EQ(job.products[1].worth, Worth::whole(1));
  ASSERT_EQ(job.order.lines.size(), 3u);
  EXPECT_EQ(job.order.lines[2].product, 2);
  EXPECT_EQ(job.order.lines[2].must, 1);
  EXPECT_FALSE(check_job(job));
}

TEST(OrderEdits, MakesAnOrderFromTheProductsThereAre) {
  Job job = test::order_job();
  job.order.lines.clear();
  job = with_order_of_all(job);
  EXPECT_EQ(job.products, test::order_job().products);
  EXPECT_EQ(job.order.lines.size(), 2u);
}

TEST(OrderEdits, AddsALineOfWhatIsNotAskedForYet) {
  Job job = without_line(test::order_job(), 0);
  job = with_line(job);
  EXPECT_EQ(job.order.lines.back().product, 0);
  EXPECT_EQ(with_line(job).order.lines.back().product, 0);  // all are asked for
  EXPECT_FALSE(check_job(job));
}

TEST(OrderEdits, TakesAProductAwayWithItsLines) {
  const Job job = without_product(test::order_job(), 0);
  ASSERT_EQ(job.products.size(), 1u);
  ASSERT_EQ(job.order.lines.size(), 1u);
  EXPECT_EQ(job.order.lines[0].product, 0);
  EXPECT_EQ(job.order.lines[0].from, std::vector<std::string>{"printed"});
  EXPECT_FALSE(check_job(job));
}

TEST(OrderEdits, GivesANewProductANameOfItsOwn) {
  Job job = test::order_job();
  job.products[0].name = "Product 3";
  job = with_product(job);
  EXPECT_EQ(job.products.back().name, "Product 4");
  EXPECT_FALSE(check_job(job));
}

}  // namespace
}  // namespace foldyard
