#include "bench/workshop_order.h"

#include "bench/workshop_job.h"
#include "job/defaults.h"

namespace foldyard::bench {

namespace {

constexpr int kCloths = 8;

// Lengths from 2.5 to 17 m; every fourth roll is a remnant.
Roll roll_of(int i) {
  Roll roll;
  const int cloth = i % kCloths;
  roll.name = "roll " + std::to_string(i + 1);
  roll.fabric = default_fabric();
  roll.fabric.width = Length::mm(cloth < 5 ? 1400 : 1500);
  roll.fabric.selvedge = Length::mm(15);
  roll.length = Length::mm(i % 4 == 3 ? 2500 + 130 * (i % 7) : 6000 + 1370 * (i % 9));
  roll.cloth = "cloth " + std::to_string(cloth + 1);
  if (cloth % 2 == 0) roll.marks = {"plain"};
  if (cloth % 3 == 0) roll.marks.push_back("printed");
  roll.price = Worth::parts(Worth::kPartsPerWhole * (9 + cloth % 3));
  return roll;
}

Product product_of(const Job& job, int i) {
  Product product;
  product.name = job.panels[static_cast<std::size_t>(i)].name;
  product.panels = {{i, 1}};
  if (i % 4 == 0) product.panels.push_back({(i + 3) % static_cast<int>(job.panels.size()), 2});
  product.worth = Worth::whole(15 + 3 * (i % 5));
  return product;
}

// Every third line asks for marked cloth, every fourth for some of each cloth.
OrderLine line_of(int i, int pieces) {
  OrderLine line;
  line.product = i;
  line.must = pieces;
  if (i % 3 == 1) line.from = {i % 2 ? "plain" : "printed"};
  if (i % 4 == 2) line.each_at_least = pieces / 16;
  if (i % 6 == 0) line.rules = {{"printed", 0, pieces / 3}};
  return line;
}

}  // namespace

Job workshop_order(int rolls, int goods, int pieces) {
  Job job = workshop_job(goods);
  job.rolls.clear();
  for (int i = 0; i < rolls; ++i) job.rolls.push_back(roll_of(i));
  for (int i = 0; i < goods; ++i) {
    job.products.push_back(product_of(job, i));
    job.order.lines.push_back(line_of(i, pieces / goods + (i < pieces % goods)));
  }
  return job;
}

}  // namespace foldyard::bench
