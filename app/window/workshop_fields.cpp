#include "window/workshop_fields.h"

#include <QCoreApplication>

#include "job/defaults.h"

namespace foldyard {
namespace {

using G = WorkshopGroup;

#define FOLDYARD_WORDS(text) QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", text)

const std::vector<WorkshopLength> kLengths = {
    {G::table, "table.length", FOLDYARD_WORDS("Table, along the roll"), FOLDYARD_WORDS("No length is cut longer than this"),
     [](Job& job) -> Length& { return job.table.length; }, false},
    {G::table, "table.depth", FOLDYARD_WORDS("Table, depth"), FOLDYARD_WORDS("From the near edge to the far edge"),
     [](Job& job) -> Length& { return job.table.depth; }, false},
    {G::table, "table.reach", FOLDYARD_WORDS("Reach of the cutter"), FOLDYARD_WORDS("How far from an edge the cutter can be led"),
     [](Job& job) -> Length& { return job.table.reach; }, false},
    {G::table, "cutter.height", FOLDYARD_WORDS("Cutter's rated height"), FOLDYARD_WORDS("The thickest stack the cutter is rated for"),
     [](Job& job) -> Length& { return job.cutter.height; }, true},
    {G::losses, "losses.squaring", FOLDYARD_WORDS("Squaring, each end"), FOLDYARD_WORDS("Cut off each end of a roll"),
     [](Job& job) -> Length& { return job.losses.squaring; }, false},
    {G::losses, "losses.allowance", FOLDYARD_WORDS("Allowance, each length"), FOLDYARD_WORDS("Cut off with each length, both its ends together"),
     [](Job& job) -> Length& { return job.losses.allowance; }, false},
    {G::losses, "losses.fold_trim", FOLDYARD_WORDS("Trim at a fold edge"), FOLDYARD_WORDS("A cut along a fold edge keeps at least this from it"),
     [](Job& job) -> Length& { return job.losses.fold_trim; }, true},
    {G::losses, "losses.keep_across", FOLDYARD_WORDS("Remnant kept from, across"), FOLDYARD_WORDS("A rest at least so wide, and so long, is a remnant"),
     [](Job& job) -> Length& { return job.losses.keep_across; }, false},
    {G::losses, "losses.keep_along", FOLDYARD_WORDS("Remnant kept from, along"), FOLDYARD_WORDS("A rest at least so long, and so wide, is a remnant"),
     [](Job& job) -> Length& { return job.losses.keep_along; }, false},
};

constexpr NumberLimit kStep = limits::kStepMs;

const std::vector<WorkshopNumber> kNumbers = {
    {G::job, "longest_fan", FOLDYARD_WORDS("Longest fan, plies"), FOLDYARD_WORDS("Fans of more plies are not tried"), "", 0,
     limits::kLongestFan, [](const Job& job) -> std::int64_t { return job.longest_fan; },
     [](Job& job, std::int64_t n) { job.longest_fan = static_cast<int>(n); }},
    {G::job, "cloth_price_per_square_metre", FOLDYARD_WORDS("Cloth, worth of a m²"), FOLDYARD_WORDS("Of rolls that have no price of their own"), "", 4,
     limits::kClothPrice, [](const Job& job) { return job.cloth_price.parts(); },
     [](Job& job, std::int64_t n) { job.cloth_price = Worth::parts(n); }},
    {G::table, "cutter.most_plies", FOLDYARD_WORDS("Plies at most"), FOLDYARD_WORDS("However thin the cloth"), "", 0,
     limits::kMostPlies, [](const Job& job) -> std::int64_t { return job.cutter.most_plies; },
     [](Job& job, std::int64_t n) { job.cutter.most_plies = static_cast<int>(n); }},
    {G::pace, "pace.unroll", FOLDYARD_WORDS("Unroll, once a roll"), FOLDYARD_WORDS("Fetch the roll and lay it up"), FOLDYARD_WORDS(" s"), 3,
     kStep, [](const Job& job) { return job.pace.unroll.ticks() / Duration::kTicksPerMs; },
     [](Job& job, std::int64_t n) { job.pace.unroll = Duration::ms(n); }},
    {G::pace, "pace.cross_cut", FOLDYARD_WORDS("Cross-cut a length"), FOLDYARD_WORDS("Measure and mark it; the cutter's travel comes on top"), FOLDYARD_WORDS(" s"), 3,
     kStep, [](const Job& job) { return job.pace.cross_cut.ticks() / Duration::kTicksPerMs; },
     [](Job& job, std::int64_t n) { job.pace.cross_cut = Duration::ms(n); }},
    {G::pace, "pace.fold", FOLDYARD_WORDS("Make a fold"), FOLDYARD_WORDS("One fold of one length"), FOLDYARD_WORDS(" s"), 3,
     kStep, [](const Job& job) { return job.pace.fold.ticks() / Duration::kTicksPerMs; },
     [](Job& job, std::int64_t n) { job.pace.fold = Duration::ms(n); }},
    {G::pace, "pace.lift", FOLDYARD_WORDS("Lift a lay"), FOLDYARD_WORDS("Bring one lay under the cutter"), FOLDYARD_WORDS(" s"), 3,
     kStep, [](const Job& job) { return job.pace.lift.ticks() / Duration::kTicksPerMs; },
     [](Job& job, std::int64_t n) { job.pace.lift = Duration::ms(n); }},
    {G::pace, "pace.mark", FOLDYARD_WORDS("Mark a cut"), FOLDYARD_WORDS("One cut through a lay"), FOLDYARD_WORDS(" s"), 3,
     kStep, [](const Job& job) { return job.pace.mark.ticks() / Duration::kTicksPerMs; },
     [](Job& job, std::int64_t n) { job.pace.mark = Duration::ms(n); }},
    {G::pace, "pace.seconds_per_metre", FOLDYARD_WORDS("Cut a metre"), FOLDYARD_WORDS("Travel of the cutter"), FOLDYARD_WORDS(" s"), 3,
     limits::kMsPerMetre, [](const Job& job) { return job.pace.ms_per_metre; },
     [](Job& job, std::int64_t n) { job.pace.ms_per_metre = n; }},
    {G::pace, "pace.handle", FOLDYARD_WORDS("Handle a panel"), FOLDYARD_WORDS("Take it off and stack it"), FOLDYARD_WORDS(" s"), 3,
     kStep, [](const Job& job) { return job.pace.handle.ticks() / Duration::kTicksPerMs; },
     [](Job& job, std::int64_t n) { job.pace.handle = Duration::ms(n); }},
    {G::pace, "pace.allowance_percent", FOLDYARD_WORDS("Rest and delays"), FOLDYARD_WORDS("Put on all other time"), FOLDYARD_WORDS(" %"), 0,
     limits::kAllowancePercent, [](const Job& job) -> std::int64_t { return job.pace.allowance_percent; },
     [](Job& job, std::int64_t n) { job.pace.allowance_percent = static_cast<int>(n); }},
    {G::pace, "pace.rate", FOLDYARD_WORDS("Worth of an hour"), FOLDYARD_WORDS("What an hour of the maker is worth"), "", 4,
     limits::kRate, [](const Job& job) { return job.pace.rate.parts(); },
     [](Job& job, std::int64_t n) { job.pace.rate = Worth::parts(n); }},
};

#undef FOLDYARD_WORDS

constexpr std::string_view kAssumption = "assumption: ";

QString text(std::string_view utf8) { return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size())); }

bool is_default(const Job& job, const QString& key) {
  Job mine = job, usual = default_job();
  for (const auto& each : kLengths)
    if (key == QLatin1String(each.key)) return each.of(mine) == each.of(usual);
  for (const auto& each : kNumbers)
    if (key == QLatin1String(each.key)) return each.get(mine) == each.get(usual);
  return mine.table.both_sides == usual.table.both_sides;
}

}  // namespace

const std::vector<WorkshopLength>& workshop_lengths() { return kLengths; }
const std::vector<WorkshopNumber>& workshop_numbers() { return kNumbers; }

QString basis_of(const QString& key) {
  std::string_view basis = default_of(key.toStdString()).basis;
  if (basis.substr(0, kAssumption.size()) == kAssumption) basis.remove_prefix(kAssumption.size());
  return text(basis);
}

QString assumption_note(const Job& job, const QString& key) {
  if (!default_of(key.toStdString()).is_assumption || !is_default(job, key)) return {};
  return QCoreApplication::translate("foldyard::WorkshopDialog", "Assumed: %1").arg(basis_of(key));
}

}  // namespace foldyard
