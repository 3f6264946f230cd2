#include "job/cautions.h"

namespace foldyard {
namespace {

// Sources: guards, chain-mail gloves, safe blade change: HSE, Fabric-cutting
// machinery, hse.gov.uk/textiles/machinery/cutting.htm. The free hand: HSE,
// hse.gov.uk/textiles/hand-knives.htm. Guard just above the plies, never left
// running: Australian TAFE toolbox, Using machinery. Switching off after each cut,
// unplugging before touching the blade, table, light and floor: common practice, no
// source.
const std::vector<std::string_view> kCautions = {
    "The machine's manual, local rules and trained people come first; these lines replace none.",
    "Guard down to just above the plies before the blade turns.",
    "Free hand away from the line of cut and never in front of the blade.",
    "Cut-resistant or chain-mail glove if the maker's manual calls for one.",
    "Switch off after each cut; never leave the cutter running.",
    "Unplug it or take the battery out before you touch the blade.",
    "Never cut a stack above the rated height.",
    "A firm table, good light, a clear floor.",
};

}  // namespace

const std::vector<std::string_view>& cautions() { return kCautions; }

std::string height_caution(const Job& job) {
  // Exact, for a rounded height might be over the rated one.
  const std::string exact = write_exact(job.cutter.height, job.unit);
  return "The cutter of this job is rated for a stack of " +
         (exact.empty() ? write_length(job.cutter.height, job.unit) : exact) + " and at most " +
         std::to_string(job.cutter.most_plies) + " plies.";
}

}  // namespace foldyard
