#include "inspect/inspect_hand.h"

#include "inspect/checks.h"

namespace foldyard {

namespace inspection {

namespace {

void inspect_lines(const Pattern& pattern, const Hand& hand, const std::string& name, Findings& findings) {
  const std::vector<Length>& lines = pattern.fold.lines;
  for (std::size_t i = 0; i < hand.lines.size(); ++i) {
    if (!hand.lines[i]) continue;
    if (!findings.require(i < lines.size(), name, "fold line ", i + 1, " is pinned, but there is none")) continue;
    findings.require(lines[i] == *hand.lines[i], name, "fold line ", i + 1, " lies at ", lines[i],
                     ", but is pinned at ", *hand.lines[i]);
  }
}

void inspect_length(const Pattern& pattern, const Hand& hand, const std::string& name, Findings& findings) {
  if (hand.length)
    findings.require(pattern.length == *hand.length, name, "the length is ", pattern.length, ", but lengths of ",
                     *hand.length, " are asked for");
}

void inspect_numbers(const Job& job, const Plan& plan, const Hand& hand, Findings& findings) {
  for (std::size_t i = 0; i < job.panels.size(); ++i) {
    const auto asked = hand.at_least.find(job.panels[i].name);
    if (asked == hand.at_least.end()) continue;
    const std::int64_t copies = copies_of(static_cast<int>(i), plan);
    findings.require(copies >= asked->second, "Of ", job.panels[i].name, ", ", copies, " are cut, but at least ",
                     asked->second, " are asked for");
  }
}

}  // namespace

}  // namespace inspection

std::vector<std::string> inspect_hand(const Job& job, const Plan& plan, const Hand& hand) {
  inspection::Findings findings(job.unit);
  for (std::size_t i = 0; i < plan.patterns.size(); ++i) {
    const std::string name = "Pattern " + std::to_string(i + 1) + ": ";
    inspection::inspect_lines(plan.patterns[i], hand, name, findings);
    inspection::inspect_length(plan.patterns[i], hand, name, findings);
  }
  inspection::inspect_numbers(job, plan, hand, findings);
  return std::move(findings).take();
}

}  // namespace foldyard
