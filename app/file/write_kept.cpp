#include "file/write_kept.h"

#include "file/json_line.h"
#include "measure/index.h"

namespace foldyard {
namespace {

std::string kept_step_text(const KeptStep& step, const Job& job) {
  JsonLine line(job.unit);
  switch (step.kind) {
    case NodeKind::cut:
      line.text("cut", step.direction == Direction::along ? "along" : "across").length("at", step.at);
      break;
    case NodeKind::take:
      line.text("take", job.panels[ix(step.panel)].name);
      if (step.turned) line.flag("turned", true);
      break;
    case NodeKind::leave: line.flag("leave", true); break;
  }
  return line.object();
}

}  // namespace

std::string kept_text(const KeptLength& kept, const Job& job) {
  JsonLine line(job.unit);
  line.text("roll", kept.roll).whole("count", kept.count).length("length", kept.length).text("way", way_key(kept.way));
  if (!kept.lines.empty()) line.lengths("lines", kept.lines);
  std::string steps;
  for (const KeptStep& step : kept.steps) steps += (steps.empty() ? "" : ", ") + kept_step_text(step, job);
  return line.raw("cuts", '[' + steps + ']').object();
}

}  // namespace foldyard
