#include "batch/order_edits.h"

#include <QCoreApplication>

#include <algorithm>

#include "batch/free_name.h"
#include "measure/index.h"

namespace foldyard {
namespace {

bool is_asked_for(const Job& job, int product) {
  return std::any_of(job.order.lines.begin(), job.order.lines.end(),
                     [&](const OrderLine& line) { return line.product == product; });
}

OrderLine line_of(int product) {
  OrderLine line;
  line.product = product;
  line.must = 1;
  return line;
}

Product product_of(const Panel& panel, int at, const std::string& name) {
  Product product;
  product.name = name;
  product.panels = {{at, 1, {}}};
  product.worth = panel.worth;
  return product;
}

}  // namespace

Job with_order_of_all(Job job) {
  if (job.products.empty()) {
    for (int i = 0; i < std::ssize(job.panels); ++i) {
      const Panel& panel = job.panels[ix(i)];
      job.products.push_back(product_of(panel, i, panel.name));
    }
  }
  for (int i = 0; i < std::ssize(job.products); ++i)
    if (!is_asked_for(job, i)) job.order.lines.push_back(line_of(i));
  return job;
}

Job with_line(Job job) {
  int product = 0;
  while (product < std::ssize(job.products) && is_asked_for(job, product)) ++product;
  job.order.lines.push_back(line_of(product < std::ssize(job.products) ? product : 0));
  return job;
}

Job without_line(Job job, int line) {
  job.order.lines.erase(job.order.lines.begin() + line);
  return job;
}

Job with_product(Job job) {
  job.products.push_back(product_of(job.panels.front(), 0, free_name(job.products, "OrderEdits", QT_TRANSLATE_NOOP("OrderEdits", "Product %1"))));
  return job;
}

Job without_product(Job job, int product) {
  job.products.erase(job.products.begin() + product);
  std::erase_if(job.order.lines, [&](const OrderLine& line) { return line.product == product; });
  for (OrderLine& line : job.order.lines)
    if (line.product > product) --line.product;
  return job;
}

Job with_webbing(Job job) {
  Webbing webbing;
  webbing.name = free_name(job.webbings, "OrderEdits", QT_TRANSLATE_NOOP("OrderEdits", "Webbing %1"));
  webbing.roll = Length::mm(50'000);
  job.webbings.push_back(std::move(webbing));
  return job;
}

Job without_webbing(Job job, int webbing) {
  job.webbings.erase(job.webbings.begin() + webbing);
  for (Product& product : job.products) {
    std::erase_if(product.webbing, [&](const WebbingCut& cut) { return cut.webbing == webbing; });
    for (WebbingCut& cut : product.webbing)
      if (cut.webbing > webbing) --cut.webbing;
  }
  return job;
}

}  // namespace foldyard
