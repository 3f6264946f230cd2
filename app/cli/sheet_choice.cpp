#include "cli/sheet_choice.h"

#include <algorithm>

#include "drawing/template_data.h"
#include "drawing/words.h"
#include "job/roll_of.h"
#include "measure/index.h"

namespace foldyard {
namespace {

Result<std::vector<int>> patterns_of(const QStringList& letters, const Plan& plan) {
  const int count = static_cast<int>(plan.patterns.size());
  std::vector<int> patterns;
  for (const QString& letter : letters) {
    int at = 0;
    while (at < count && pattern_letter(at) != letter.trimmed().toUpper()) ++at;
    if (at == count)
      return Problem{"", say("the plan has no pattern \"%1\"", letter.toStdString()),
                     count == 1 ? say("its only one is A")
                                : say("it has A to %1", pattern_letter(count - 1).toStdString())};
    patterns.push_back(at);
  }
  std::sort(patterns.begin(), patterns.end());
  return patterns;
}

Result<std::vector<int>> panels_of(const Call& call, const Job& job, const Plan& plan) {
  std::vector<int> panels;
  for (std::size_t i = 0; i < job.panels.size(); ++i) {
    const bool wanted = call.panel ? QString::fromStdString(job.panels[i].name) == *call.panel
                                   : plan.yield[i] > 0;
    if (wanted) panels.push_back(static_cast<int>(i));
  }
  if (!panels.empty()) return panels;
  if (call.panel)
    return Problem{"", say("the job has no panel \"%1\"", call.panel->toStdString()),
                   say("name one as it stands in the job")};
  return Problem{"", say("the plan has no panels to make templates of"), say("name one with --panel")};
}

}  // namespace

Result<SheetOptions> sheet_options(const Call& call, const Job& job, const Plan& plan) {
  SheetOptions options;
  options.paper = call.paper;
  options.landscape = call.landscape;
  options.comparison = call.comparison;
  options.unit = call.words_in;
  options.diagram = !call.templates;
  if (!call.patterns.isEmpty()) {
    const auto patterns = patterns_of(call.patterns, plan);
    if (!patterns) return patterns.problem();
    options.patterns = *patterns;
  }
  if (!call.templates) return options;
  const auto panels = panels_of(call, job, plan);
  if (!panels) return panels.problem();
  options.templates = *panels;
  const Fabric& fabric = roll_of(job, plan).fabric;
  for (int panel : options.templates)
    if (const auto problem = template_problem(job, fabric, panel, options)) return *problem;
  return options;
}

std::optional<Problem> wrong_pages(const Call& call, const Sheet& sheet) {
  if (!pages_in(sheet, call.pages).empty()) return {};
  return Problem{"", say("the sheet has no page %1", call.pages.first + 1), say("it has %1", sheet.pages())};
}

}  // namespace foldyard
