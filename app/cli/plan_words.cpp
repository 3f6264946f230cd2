#include "cli/plan_words.h"

#include <algorithm>
#include <map>
#include <tuple>

#include "cli/goods_lines.h"
#include "cli/plain_text.h"
#include "cli/text_table.h"
#include "cli/wrapped.h"
#include "drawing/flaw_words.h"
#include "drawing/range_words.h"
#include "drawing/repeat_words.h"
#include "drawing/words.h"
#include "job/cautions.h"
#include "job/roll_of.h"
#include "language/spoken.h"
#include "language/tr.h"
#include "measure/index.h"

namespace foldyard {
namespace {

std::vector<Length> cross_cut_places(const Job& job, const Plan& plan) {
  std::vector<Length> places;
  for (const LengthOnRoll& length : plan.lengths) {
    places.push_back(length.on_roll.from);
    places.push_back(length.on_roll.to);
  }
  std::sort(places.begin(), places.end());
  places.erase(std::unique(places.begin(), places.end()), places.end());
  std::erase_if(places, [&](Length place) {
    return place.is_zero() || place == roll_of(job, plan).length;
  });
  return places;
}

QString cross_cut_words(const Job& job, const Plan& plan) {
  QStringList places;
  for (Length place : cross_cut_places(job, plan)) places << length_words(place, job.unit);
  if (places.isEmpty()) return tr("The roll is not cut across.\n");
  return wrapped(tr("Cut the roll across, measured from its free end, at %1.").arg(places.join(QStringLiteral(", "))),
                 QStringLiteral("  "));
}

// What flaws cost, where each lies and what becomes of it; nothing without any.
QString flaws_text(const Job& job, const Plan& plan) {
  const QString head = flaws_words(job, plan);
  if (head.isEmpty()) return {};
  QString text = wrapped(tr("%1 As bought the roll has %2.").arg(head, grade_words(job, roll_of(job, plan))),
                         QStringLiteral("  "));
  for (const QString& line : flaw_lines(job, plan))
    text += wrapped(line, QStringLiteral("    "), QStringLiteral("  -"));
  for (const Span out : plan.cut_out)
    text += wrapped(tr("Cut out and set aside what lies from %1 to %2.")
                        .arg(length_words(out.from, job.unit), length_words(out.to, job.unit)),
                    QStringLiteral("  "));
  return text + QLatin1Char('\n');
}

QString allowance_words(const Job& job) {
  if (job.losses.allowance.is_zero()) return {};
  return wrapped(tr("Each length has %1 more than its pattern: trim half of it off "
                                "each end as you lay it.")
                     .arg(length_words(job.losses.allowance, job.unit)),
                 QStringLiteral("  "));
}

QStringList cut_row(int number, const Cut& cut, Unit unit) {
  const bool is_along = cut.direction == Direction::along;
  const QString edge = is_along ? tr("from the left edge")
                                : tr("from the near end");
  return {QStringLiteral("  %1.  %2").arg(number, 3).arg(
              is_along ? tr("along the roll at") : tr("across it at")),
          length_words(cut.at, unit), edge, tr("over"),
          length_words(cut.over.from, unit), tr("to"),
          length_words(cut.over.to, unit)};
}

QString cuts_words(const Pattern& pattern, Unit unit) {
  if (pattern.cuts.empty()) return tr("  No cut.\n");
  std::vector<QStringList> rows;
  for (std::size_t i = 0; i < pattern.cuts.size(); ++i) {
    rows.push_back(cut_row(static_cast<int>(i) + 1, pattern.cuts[i], unit));
  }
  return tr("  Cuts, in this order, through all plies, measured on the folded cloth:\n") +
         text_table(rows);
}

// "45 × 97 cm"; on cloth that shrinks the cut size as well, once for each way
// the panels lie.
QString sizes_words(const Job& job, const Fabric& fabric, int panel, int upright, int turned) {
  if (!fabric.shrinkage.is_any()) {
    const Panel& kind = job.panels[ix(panel)];
    return size_words(kind.across, kind.along, job.unit);
  }
  QStringList words;
  if (upright > 0) words << panel_size_words(job, fabric, panel, false);
  if (turned > 0)
    words << tr("%1 as they lie turned").arg(panel_size_words(job, fabric, panel, true));
  return words.join(QStringLiteral("; "));
}

QString panel_words(const Job& job, const Fabric& fabric, const Pattern& pattern,
                    std::size_t panel) {
  int count = 0, turned = 0, on_fold = 0;
  for (const PlacedPanel& placed : pattern.panels) {
    if (placed.panel != static_cast<int>(panel)) continue;
    ++count;
    turned += placed.turned;
    on_fold += placed.on_fold;
  }
  if (count == 0) return {};
  const Panel& kind = job.panels[panel];
  QString words = QStringLiteral("    %1 × %2, %3")
                      .arg(QString::number(count), QString::fromStdString(kind.name),
                           sizes_words(job, fabric, static_cast<int>(panel), count - turned,
                                       turned));
  if (on_fold > 0) words += tr(", %1 on the fold").arg(on_fold);
  if (turned > 0) words += tr(", %1 turned").arg(turned);
  return words + QLatin1Char('\n');
}

QString panels_words(const Job& job, const Fabric& fabric, const Pattern& pattern) {
  QString text = tr("  Panels from each length:\n");
  for (std::size_t i = 0; i < job.panels.size(); ++i)
    text += panel_words(job, fabric, pattern, i);
  return text;
}

// The plies of one-way cloth, from the table up: "1 face up, nap away from you".
QString stack_words(const Pattern& pattern, const Fabric& fabric) {
  if (fabric.nap == Nap::none) return {};
  QStringList words;
  for (const Ply& ply : plies_of(fold_map(pattern.fold, fabric.width, pattern.length)))
    words << (ply.is_face_up() ? tr("%1 face up, %2") : tr("%1 face down, %2"))
                 .arg(QString::number(ply.level + 1), nap_words(ply, fabric));
  return wrapped(tr("Plies from the table up: %1.").arg(words.join(QStringLiteral("; "))),
                 QStringLiteral("    "), QStringLiteral("  "));
}

QString rest_name(RestKind kind) {
  switch (kind) {
    case RestKind::selvedge: return tr("selvedge");
    case RestKind::remnant: return tr("remnant to keep");
    default: return tr("offcut");
  }
}

QString rests_words(const Pattern& pattern, Unit unit) {
  std::map<std::tuple<RestKind, Length, Length>, int> counts;
  for (const Rest& rest : pattern.rests) {
    ++counts[{rest.kind, rest.flat.across.size(), rest.flat.along.size()}];
  }
  if (counts.empty()) return {};
  QString text = tr("  What is left of each length:\n");
  for (const auto& [rest, count] : counts) {
    const auto& [kind, across, along] = rest;
    text += QStringLiteral("    %1 × %2, %3\n")
                .arg(QString::number(count), rest_name(kind), size_words(across, along, unit));
  }
  return text;
}

QString pattern_head(const Job& job, const Plan& plan, int index) {
  const Pattern& pattern = plan.patterns[ix(index)];
  return tr("Pattern %1: %n length(s) of %2, in %3, %4\n", nullptr, static_cast<int>(lengths_of(plan, index)))
      .arg(pattern_letter(index), length_words(pattern.length, job.unit), lays_words(plan, index),
           pattern.plies == 1 ? tr("1 ply") : tr("up to %1 plies each").arg(pattern.plies));
}

QString pattern_flaws(const Job& job, const Plan& plan, int index) {
  const QStringList lines = flaw_lines_of(job, plan, index);
  if (lines.isEmpty()) return {};
  QString text = tr("  Lengths with flaws, measured from each near end:\n");
  for (const QString& line : lines)
    text += wrapped(line, QStringLiteral("      "), QStringLiteral("   "));
  return text;
}

QString pattern_words(const Job& job, const Plan& plan, int index) {
  const Pattern& pattern = plan.patterns[ix(index)];
  const Fabric& fabric = roll_of(job, plan).fabric;
  QString text = pattern_head(job, plan, index);
  text += wrapped(folding_words(pattern), QStringLiteral("  "), QStringLiteral("  "));
  for (const QString& line :
       fold_line_words(pattern, fabric.width, job.unit)) {
    text += QStringLiteral("    ") + line + QLatin1Char('\n');
  }
  text += tr("  Folded it measures %1.\n")
              .arg(size_words(pattern.folded_across, pattern.folded_along, job.unit));
  text += stack_words(pattern, fabric);
  const QString phase = phase_words(pattern_data(job, plan, index));
  if (!phase.isEmpty()) text += wrapped(phase, QStringLiteral("    "), QStringLiteral("  "));
  return text + cuts_words(pattern, job.unit) + pattern_flaws(job, plan, index) +
         panels_words(job, fabric, pattern) + rests_words(pattern, job.unit);
}

}  // namespace

QString plan_words(const Job& job, const Plan& plan) {
  const QString indent = QStringLiteral("  ");
  QString text = wrapped(roll_words(job, plan) + QLatin1Char('.'), indent);
  if (is_estimated(roll_of(job, plan))) {
    text += wrapped(estimated_words(job, roll_of(job, plan)), indent);
  }
  text += wrapped(answer_words(job, plan), indent);
  text += wrapped(proof_words(plan), indent);
  for (const QString& words : {repeat_words(job, plan), matching_words(job, plan)})
    if (!words.isEmpty()) text += wrapped(words, indent);
  text += tr("Worth %1; %2 after your time.\n\n")
              .arg(worth_words(plan.worth), worth_words(plan.net));
  text += flaws_text(job, plan);
  text += cross_cut_words(job, plan) + allowance_words(job);
  for (int i = 0; i < static_cast<int>(plan.patterns.size()); ++i) {
    text += QLatin1Char('\n') + pattern_words(job, plan, i);
  }
  return plain_text(text + plan_goods_words(job, plan));
}

QString caution_words(const Job& job) {
  QString text = tr("Cautions for the cutter") + QLatin1Char('\n');
  for (std::string_view line : cautions()) {
    text += wrapped(QStringLiteral("- ") + spoken(line), QStringLiteral("  "));
  }
  return text + wrapped(QStringLiteral("- ") + spoken(height_caution(job)),
                        QStringLiteral("  "));
}

}  // namespace foldyard
