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
    to_say("The machine's manual, local rules and trained people come first; these lines replace none."),
    to_say("Guard down to just above the plies before the blade turns."),
    to_say("Free hand away from the line of cut and never in front of the blade."),
    to_say("Cut-resistant or chain-mail glove if the maker's manual calls for one."),
    to_say("Switch off after each cut; never leave the cutter running."),
    to_say("Unplug it or take the battery out before you touch the blade."),
    to_say("Never cut a stack above the rated height."),
    to_say("A firm table, good light, a clear floor."),
};

}  // namespace

const std::vector<std::string_view>& cautions() { return kCautions; }

Words height_caution(const Job& job) {
  // Exact, for a rounded height might be over the rated one.
  const std::string exact = write_exact(job.cutter.height, job.unit);
  return say("The cutter of this job is rated for a stack of %2 and at most %n plies.", job.cutter.most_plies,
             Words::number(exact.empty() ? write_length(job.cutter.height, job.unit) : exact));
}

}  // namespace foldyard
