#include "window/workshop_fields.h"

#include <QCoreApplication>

#include "job/defaults.h"
#include "language/spoken.h"

namespace foldyard {
namespace {

using G = WorkshopGroup;

const std::vector<WorkshopLength> kLengths = {
    {G::table, "table.length", QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Table, along the roll"), QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "No length is cut longer than this"),
     [](Job& job) -> Length& { return job.table.length; }, false},
    {G::table, "table.depth", QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Table, depth"), QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "From the near edge to the far edge"),
     [](Job& job) -> Length& { return job.table.depth; }, false},
    {G::table, "table.reach", QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Reach of the cutter"), QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "How far from an edge the cutter can be led"),
     [](Job& job) -> Length& { return job.table.reach; }, false},
    {G::table, "cutter.height", QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Cutter's rated height"), QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "The thickest stack the cutter is rated for"),
     [](Job& job) -> Length& { return job.cutter.height; }, true},
    {G::losses, "losses.squaring", QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Squaring, each end"), QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Cut off each end of a roll"),
     [](Job& job) -> Length& { return job.losses.squaring; }, false},
    {G::losses, "losses.allowance", QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Allowance, each length"), QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Cut off with each length, both its ends together"),
     [](Job& job) -> Length& { return job.losses.allowance; }, false},
    {G::losses, "losses.fold_trim", QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Trim at a fold edge"), QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "A cut along a fold edge keeps at least this from it"),
     [](Job& job) -> Length& { return job.losses.fold_trim; }, true},
    {G::losses, "losses.keep_across", QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Remnant kept from, across"), QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "A rest at least so wide, and so long, is a remnant"),
     [](Job& job) -> Length& { return job.losses.keep_across; }, false},
    {G::losses, "losses.keep_along", QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Remnant kept from, along"), QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "A rest at least so long, and so wide, is a remnant"),
     [](Job& job) -> Length& { return job.losses.keep_along; }, false},
};

constexpr NumberLimit kStepLimit = limits::kStepMs;

const std::vector<WorkshopNumber> kNumbers = {
    {G::job, "longest_fan", QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Longest fan, plies"), QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Fans of more plies are not tried"), "", 0,
     limits::kLongestFan, [](const Job& job) -> std::int64_t { return job.longest_fan; },
     [](Job& job, std::int64_t n) { job.longest_fan = static_cast<int>(n); }},
    {G::job, "cloth_price_per_square_metre", QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Cloth, worth of a m²"), QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Of rolls that have no price of their own"), "", 4,
     limits::kClothPrice, [](const Job& job) { return job.cloth_price.parts(); },
     [](Job& job, std::int64_t n) { job.cloth_price = Worth::parts(n); }},
    {G::table, "cutter.most_plies", QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Plies at most"), QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "However thin the cloth"), "", 0,
     limits::kMostPlies, [](const Job& job) -> std::int64_t { return job.cutter.most_plies; },
     [](Job& job, std::int64_t n) { job.cutter.most_plies = static_cast<int>(n); }},
    {G::pace, "pace.unroll", QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Unroll, once a roll"), QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Fetch the roll and lay it up"), QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", " s"), 3,
     kStepLimit, [](const Job& job) { return job.pace.unroll.ticks() / Duration::kTicksPerMs; },
     [](Job& job, std::int64_t n) { job.pace.unroll = Duration::ms(n); }},
    {G::pace, "pace.cross_cut", QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Cross-cut a length"), QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Measure and mark it; the cutter's travel comes on top"), QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", " s"), 3,
     kStepLimit, [](const Job& job) { return job.pace.cross_cut.ticks() / Duration::kTicksPerMs; },
     [](Job& job, std::int64_t n) { job.pace.cross_cut = Duration::ms(n); }},
    {G::pace, "pace.fold", QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Make a fold"), QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "One fold of one length"), QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", " s"), 3,
     kStepLimit, [](const Job& job) { return job.pace.fold.ticks() / Duration::kTicksPerMs; },
     [](Job& job, std::int64_t n) { job.pace.fold = Duration::ms(n); }},
    {G::pace, "pace.lift", QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Lift a lay"), QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Bring one lay under the cutter"), QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", " s"), 3,
     kStepLimit, [](const Job& job) { return job.pace.lift.ticks() / Duration::kTicksPerMs; },
     [](Job& job, std::int64_t n) { job.pace.lift = Duration::ms(n); }},
    {G::pace, "pace.mark", QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Mark a cut"), QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "One cut through a lay"), QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", " s"), 3,
     kStepLimit, [](const Job& job) { return job.pace.mark.ticks() / Duration::kTicksPerMs; },
     [](Job& job, std::int64_t n) { job.pace.mark = Duration::ms(n); }},
    {G::pace, "pace.seconds_per_metre", QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Cut a metre"), QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Travel of the cutter"), QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", " s"), 3,
     limits::kMsPerMetre, [](const Job& job) { return job.pace.ms_per_metre; },
     [](Job& job, std::int64_t n) { job.pace.ms_per_metre = n; }},
    {G::pace, "pace.handle", QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Handle a panel"), QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Take it off and stack it"), QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", " s"), 3,
     kStepLimit, [](const Job& job) { return job.pace.handle.ticks() / Duration::kTicksPerMs; },
     [](Job& job, std::int64_t n) { job.pace.handle = Duration::ms(n); }},
    {G::pace, "pace.allowance_percent", QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Rest and delays"), QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Put on all other time"), QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", " %"), 0,
     limits::kAllowancePercent, [](const Job& job) -> std::int64_t { return job.pace.allowance_percent; },
     [](Job& job, std::int64_t n) { job.pace.allowance_percent = static_cast<int>(n); }},
    {G::pace, "pace.rate", QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "Worth of an hour"), QT_TRANSLATE_NOOP("foldyard::WorkshopDialog", "What an hour of the maker is worth"), "", 4,
     limits::kRate, [](const Job& job) { return job.pace.rate.parts(); },
     [](Job& job, std::int64_t n) { job.pace.rate = Worth::parts(n); }},
};

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
  const Default& value = default_of(key.toStdString());
  const QString basis = spoken(value.basis);
  return value.is_assumption ? basis.section(QStringLiteral(": "), 1) : basis;
}

QString assumption_note(const Job& job, const QString& key) {
  if (!default_of(key.toStdString()).is_assumption || !is_default(job, key)) return {};
  return QCoreApplication::translate("foldyard::WorkshopDialog", "Assumed: %1").arg(basis_of(key));
}

}  // namespace foldyard
