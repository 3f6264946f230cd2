#include "job/resize_goods.h"

#include <algorithm>

#include "goods/cut_size.h"
#include "job/goods_made.h"
#include "measure/index.h"

namespace foldyard {
namespace {

CutSize turned_if(bool turned, CutSize size) {
  if (turned) std::swap(size.across, size.along);
  return size;
}

// The panel with its goods and the size that follows from them. REQUIRES goods that a body
// can have; then its other pieces can.
void follow(Panel& panel, const Goods& goods) {
  const bool turned = lies_turned(panel);
  panel.sewn->goods = goods;
  const CutSize lying = turned_if(turned, cut_size(*panel.sewn).value());
  panel.across = lying.across;
  panel.along = lying.along;
}

Problem in_panel(int panel, Problem problem) {
  problem.where = "panels[" + std::to_string(panel) + "]." + problem.where;
  return problem;
}

}  // namespace

bool lies_turned(const Panel& panel) {
  const Result<CutSize> size = cut_size(*panel.sewn);
  return size && *size != CutSize{panel.across, panel.along};
}

Result<Job> resize_goods(const Job& job, int panel, Length across, Length along) {
  const Panel& body = job.panels[ix(panel)];
  if (body.sewn->piece != Piece::body || body.sewn->lining) {
    return in_panel(panel, {across != body.across ? "across" : "along",
                            say("this size follows from the goods it is sewn into"),
                            say("change that of their body, which is not a lining, back or strip")});
  }
  const auto goods = finished_of(body.sewn->goods, turned_if(lies_turned(body), {across, along}));
  if (!goods) return in_panel(panel, goods.problem());
  Job next = job;
  for (const GoodsMade& made : goods_of(job)) {
    if (std::find(made.panels.begin(), made.panels.end(), panel) == made.panels.end()) continue;
    for (int index : made.panels) follow(next.panels[ix(index)], *goods);
  }
  return next;
}

}  // namespace foldyard
