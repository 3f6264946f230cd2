#include "drawing/repeat_words.h"

#include <optional>

#include "cutting/phase_axis.h"
#include "drawing/words.h"
#include "job/roll_of.h"
#include "language/tr.h"
#include "measure/index.h"

namespace foldyard {

namespace {

const Repeat& repeat_of(const Job& job, const Plan& plan) {
  return roll_of(job, plan).fabric.repeat;
}

std::vector<Length> places_from(Length first, Length repeat, Length end) {
  std::vector<Length> places;
  for (Length at = first; at < end; at += repeat) places.push_back(at);
  return places;
}

// From the near end to the first repeat; nothing where lengths differ.
std::optional<Length> first_along(const PatternData& data) {
  const Repeat& repeat = data.fabric.repeat;
  std::optional<Length> first;
  for (const LengthOnRoll& length : data.plan.lengths) {
    if (data.plan.lays[ix(length.lay)].pattern != data.index) continue;
    const Length start = length.pattern_start(data.job.losses.allowance);
    const Length here = phase_at(repeat.start_along, start, repeat.along);
    if (first && *first != here) return std::nullopt;
    first = here;
  }
  return first;
}

}  // namespace

QString repeat_words(const Job& job, const Plan& plan) {
  const Repeat& repeat = repeat_of(job, plan);
  if (!repeat.is_any()) return {};
  QStringList ways;
  if (repeat.along > Length())
    ways << tr("every %1 along the roll, one begins %2 from its free end")
                .arg(length_words(repeat.along, job.unit), length_words(repeat.start_along, job.unit));
  if (repeat.across > Length())
    ways << tr("every %1 across, one begins %2 from the left edge")
                .arg(length_words(repeat.across, job.unit), length_words(repeat.start_across, job.unit));
  return tr("The pattern repeats %1.").arg(ways.join(QStringLiteral("; ")));
}

QString matching_words(const Job& job, const Plan& plan) {
  if (!plan.unmatched) return {};
  const Worth cost = plan.unmatched->worth - plan.worth;
  QString words =
      cost > Worth() ? tr("Matching the pattern costs %1: where nothing need match, this "
                                      "way gives %2.")
                           .arg(worth_words(cost), worth_words(plan.unmatched->worth))
                     : tr("Matching the pattern costs no worth.");
  const auto share = [&](Area used) { return use_words(used, plan.cloth); };
  words += tr(" %1 of the cloth ends in panels, %2 where nothing need match.")
               .arg(share(plan.used), share(plan.unmatched->used));
  Length skipped;
  for (const Span& out : plan.cut_out) skipped += out.size();
  if (skipped > Length())
    words += tr(" %1 of the roll, in %n place(s), are skipped so that lengths begin where the pattern lets them.",
                nullptr, static_cast<int>(plan.cut_out.size()))
                 .arg(length_words(skipped, job.unit));
  return words;
}

QString phase_words(const PatternData& data) {
  if (data.fabric.repeat.along <= Length()) return {};
  const std::optional<Length> first = first_along(data);
  if (!first) return tr("Repeats begin elsewhere on each length: no panel here must match.");
  if (first->is_zero()) return tr("Each length begins with a repeat of the pattern.");
  return tr("On each length the first repeat of the pattern begins %1 from the near end.")
      .arg(length_words(*first, data.job.unit));
}

std::vector<Length> repeats_across(const PatternData& data) {
  const Repeat& repeat = data.fabric.repeat;
  if (repeat.across <= Length()) return {};
  return places_from(repeat.start_across, repeat.across, data.fabric.width);
}

std::vector<Length> repeats_along(const PatternData& data) {
  const Repeat& repeat = data.fabric.repeat;
  if (repeat.along <= Length()) return {};
  const std::optional<Length> first = first_along(data);
  return first ? places_from(*first, repeat.along, data.pattern.length) : std::vector<Length>{};
}

}  // namespace foldyard
