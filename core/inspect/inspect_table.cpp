#include "inspect/checks.h"

namespace foldyard::inspection {

void inspect_table(const Subject& s, Findings& findings) {
  const Table& table = s.job.table;
  const Length across = s.pattern.folded_across;
  findings.require(s.pattern.folded_along <= table.length, s.name, "folded it is ",
                   s.pattern.folded_along, " long, longer than the table");
  findings.require(across <= table.depth, s.name, "folded it is ", across,
                   " deep, deeper than the table");
  findings.require(across <= table.reach * (table.both_sides ? 2 : 1), s.name, "folded it is ",
                   across, " deep, deeper than the cutter reaches");
}

void inspect_lay(const Subject& s, const Lay& lay, const std::string& name, Findings& findings) {
  const std::int64_t plies = std::int64_t{s.pattern.plies} * lay.lengths;
  findings.require(s.fabric.thickness * plies <= s.job.cutter.height, name, "its ", plies,
                   " plies are thicker than the cutter's height");
  findings.require(plies <= s.job.cutter.most_plies, name, "its ", plies,
                   " plies are more than the cutter may take");
}

}  // namespace foldyard::inspection
