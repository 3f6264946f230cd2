#include "drawing/cut_list.h"

#include <algorithm>
#include <map>
#include <tuple>

#include "drawing/flaw_words.h"
#include "drawing/goods_list.h"
#include "drawing/words.h"
#include "job/cautions.h"
#include "language/local_numbers.h"
#include "language/spoken.h"
#include "language/tr.h"
#include "measure/index.h"

namespace foldyard {

namespace {

const std::vector<double> kCutShares = {0.055, 0.115, 0.365, 0.34, 0.125};
const std::vector<double> kCountShares = {0.24, 0.76};
const std::vector<double> kRestShares = {0.24, 0.76};

ListLine cut_line(const Cut& cut, std::size_t order, Unit unit) {
  const bool along = cut.direction == Direction::along;
  return {LineKind::row,
          {QString::number(order), along ? tr("along") : tr("across"),
           (along ? tr("%1 from left") : tr("%1 from near end")).arg(number_words(cut.at, unit)),
           number_words(cut.over.from, unit) + QStringLiteral(" – ") + number_words(cut.over.to, unit),
           number_words(cut.over.size(), unit)},
          kCutShares,
          -1};
}

void append(std::vector<ListLine>& lines, std::vector<ListLine> more) {
  if (more.empty()) return;
  if (!lines.empty()) lines.push_back(gap_line());
  for (ListLine& line : more) lines.push_back(std::move(line));
}

// Panels of one kind in the length that lie the same way.
std::int64_t placed_so(const PatternData& data, int panel, bool turned) {
  return std::count_if(data.pattern.panels.begin(), data.pattern.panels.end(),
                       [&](const PlacedPanel& p) { return p.panel == panel && p.turned == turned; });
}

QString count_detail(const PatternData& data, int panel, std::int64_t in_length) {
  const Panel& kind = data.job.panels[ix(panel)];
  const std::int64_t all = in_length * lengths_of(data.plan, data.index);
  QStringList words{QString::fromStdString(kind.name)};
  if (!data.fabric.shrinkage.is_any()) {
    words << size_words(kind.across, kind.along, data.job.unit);
  } else {
    for (bool turned : {false, true})
      if (placed_so(data, panel, turned) > 0)
        words << (turned ? tr("%1 turned", "a size") : QStringLiteral("%1"))
                     .arg(panel_size_words(data.job, data.fabric, panel, turned));
  }
  return tr("%1: %2 in all").arg(words.join(QStringLiteral(", ")), QString::number(all));
}

}  // namespace

std::vector<ListLine> cut_lines(const PatternData& data) {
  const Unit unit = data.job.unit;
  std::vector<ListLine> lines{heading_line(tr("Cuts, in this order"))};
  if (data.pattern.cuts.empty()) {
    lines.push_back(paragraph_line(tr("None: the length is used as it is.")));
    return lines;
  }
  lines.push_back(paragraph_line(
      tr("In %1, measured on the folded cloth from its left edge (%2) and its near end "
                     "(%3). Each cut goes through all plies. The blade travels %4 through one lay.")
          .arg(unit_words(unit), left_edge_name(data.map),
               near_end_name(data.map), length_words(data.pattern.travel, unit))));
  lines.push_back({LineKind::head_row,
                   {tr("no.", "column"), tr("runs", "column"), tr("where", "column"),
                    tr("from – to", "column"), tr("length", "column")},
                   kCutShares,
                   -1});
  for (std::size_t i = 0; i < data.pattern.cuts.size(); ++i)
    lines.push_back(cut_line(data.pattern.cuts[i], i + 1, unit));
  return lines;
}

std::vector<ListLine> count_lines(const PatternData& data) {
  std::vector<ListLine> lines{heading_line(tr("Panels from one length"))};
  const std::vector<std::int64_t> yield = pattern_yield(data.job, data.pattern);
  for (std::size_t i = 0; i < yield.size(); ++i) {
    if (yield[i] == 0) continue;
    const int panel = static_cast<int>(i);
    lines.push_back({LineKind::row,
                     {QString::number(yield[i]) + QStringLiteral(" × ") + panel_code(panel),
                      count_detail(data, panel, yield[i])},
                     kCountShares,
                     panel});
  }
  return lines;
}

std::vector<ListLine> rest_lines(const PatternData& data) {
  std::map<std::tuple<bool, Length, Length>, int> counts;
  for (const Rest& rest : data.pattern.rests)
    if (rest.kind != RestKind::selvedge)
      ++counts[{rest.kind == RestKind::offcut, rest.flat.across.size(), rest.flat.along.size()}];
  std::vector<ListLine> lines;
  if (counts.empty()) return lines;
  lines.push_back(heading_line(tr("Left over from one length")));
  for (const auto& [rest, count] : counts) {
    const auto& [is_offcut, across, along] = rest;
    lines.push_back({LineKind::row,
                     {QString::number(count) + QStringLiteral(" × ") +
                          (is_offcut ? tr("offcut") : tr("remnant")),
                      size_words(across, along, data.job.unit)},
                     kRestShares,
                     -1});
  }
  return lines;
}

std::vector<ListLine> flaw_list_lines(const PatternData& data) {
  std::vector<ListLine> lines;
  const QStringList flaws = flaw_lines_of(data.job, data.plan, data.index);
  if (flaws.isEmpty()) return lines;
  lines.push_back(heading_line(tr("Lengths with flaws, measured from each near end")));
  for (QString words : flaws) {
    words[0] = words[0].toUpper();
    lines.push_back({LineKind::row, {QStringLiteral("·"), words}, {0.04, 0.96}, -1});
  }
  return lines;
}

std::vector<ListLine> caution_lines(const PatternData& data) {
  std::vector<ListLine> lines{heading_line(tr("Cautions for the cutter"))};
  const std::vector<double> shares{0.04, 0.96};
  const auto add = [&](const QString& words) {
    lines.push_back({LineKind::row, {QStringLiteral("·"), words}, shares, -1});
  };
  for (std::string_view words : cautions()) add(spoken(words));
  add(spoken(height_caution(data.job)));
  return lines;
}

std::vector<ListLine> pattern_lines(const PatternData& data) {
  std::vector<ListLine> lines = cut_lines(data);
  append(lines, flaw_list_lines(data));
  append(lines, count_lines(data));
  append(lines, rest_lines(data));
  const bool is_last = data.index + 1 == static_cast<int>(data.plan.patterns.size());
  if (is_last) append(lines, goods_lines(data.job, data.plan));
  append(lines, caution_lines(data));
  return lines;
}

}  // namespace foldyard
