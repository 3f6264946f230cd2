#include "job/batch_case.h"

#include <algorithm>
#include <map>

#include "cloth/cloth_of.h"
#include "job/as_roll.h"
#include "job/batch_kept.h"
#include "job/cloth_to_cut.h"
#include "job/length_pricer.h"
#include "job/lost_panels.h"
#include "job/matched_planner.h"
#include "measure/index.h"

namespace foldyard {

namespace {

// Equal for cloth that can be cut by the same patterns.
Fabric pattern_key(Fabric fabric) {
  fabric.colour.clear();
  fabric.thickness = Length();
  return fabric;
}

ClothPrice price_of(const Job& job, const Roll& roll) {
  constexpr std::int64_t kUnitsPerMetre = 320'000;
  if (roll.price) return {roll.price->parts(), kUnitsPerMetre};
  return {job.cloth_price.parts() * roll.fabric.width.units(), kUnitsPerMetre * kUnitsPerMetre};
}

std::vector<Span> stretches_of(const Roll& roll, Span cloth) {
  std::vector<Span> stretches;
  Length from = cloth.from;
  for (const Flaw& flaw : flaws_that_matter(roll, cloth)) {
    if (flaw.along.from > from) stretches.push_back({from, flaw.along.from});
    from = std::max(from, flaw.along.to);
  }
  if (from < cloth.to) stretches.push_back({from, cloth.to});
  return stretches;
}

CaseAim case_aim(BatchAim aim) {
  switch (aim) {
    case BatchAim::cloth: return CaseAim::cost;
    case BatchAim::lifts: return CaseAim::lifts;
    case BatchAim::minutes: return CaseAim::minutes;
    case BatchAim::remnants: return CaseAim::remnants;
  }
  return CaseAim::cost;
}

constexpr std::int64_t kSteps = 40'000'000;  // of a table; none is made

class CaseWriter {
 public:
  explicit CaseWriter(const Job& job) : job_(job) {}

  Result<BatchCase> write() {
    case_.order.panels = static_cast<int>(job_.panels.size());
    case_.order.cutter = job_.cutter;
    case_.order.unroll = job_.pace.unroll;
    case_.order.aims.clear();
    for (const BatchAim aim : job_.order.aims) case_.order.aims.push_back(case_aim(aim));
    for (int r = 0; r < std::ssize(job_.rolls); ++r) add_roll(r);
    if (std::optional<Problem> problem = against_must()) return *std::move(problem);
    if (job_.order.lines.empty()) return Problem{"order", say("nothing is asked for"), say("add a line to the order")};
    add_on_hand();
    for (int l = 0; l < std::ssize(job_.order.lines); ++l)
      if (std::optional<Problem> problem = add_line(l)) return *std::move(problem);
    note_unmatched();
    case_.order.kinds = static_cast<int>(case_.kinds.size());
    find_ways();
    if (std::optional<Problem> problem = add_kept(job_, case_)) return *std::move(problem);
    add_sources();
    return std::move(case_);
  }

 private:
  void add_roll(int r) {
    const Roll& roll = job_.rolls[ix(r)];
    const Span along = cloth_to_cut(roll, job_.losses);
    const Length room = along.size();
    const int whole = cloth_index(cloth_of(roll));
    if (roll.in_batch == InBatch::never) return;
    const int cloth = is_set_apart(roll) ? set_apart(roll, whole) : whole;
    if (room <= job_.losses.allowance) return;
    CaseRoll added{cloth, kind_of(roll), price_of(job_, roll), along.from, room, {}, {}, {}};
    added.stretches = stretches_of(roll, along);
    added.thickness = roll.fabric.thickness;
    added.keep = roll.fabric.width >= job_.losses.keep_across ? std::max(job_.losses.keep_along, Length::units(1)) : kLongest * 2;
    added.must = roll.in_batch == InBatch::must;
    case_.order.rolls.push_back(std::move(added));
    case_.rolls.push_back(r);
  }

  std::optional<Problem> against_must() const {
    for (int r = 0; r < std::ssize(job_.rolls); ++r)
      if (job_.rolls[ix(r)].in_batch == InBatch::must && std::find(case_.rolls.begin(), case_.rolls.end(), r) == case_.rolls.end())
        return Problem{"rolls[" + std::to_string(r) + "].in_batch", say("\"%1\" must be cut, and it is too short to be cut at all", job_.rolls[ix(r)].name),
                       say("let the batch choose")};
    return std::nullopt;
  }

  // Whether a line is kept on it while more of its cloth serves.
  bool is_set_apart(const Roll& roll) const {
    const auto& lines = job_.order.lines;
    const bool is_named = std::any_of(lines.begin(), lines.end(), [&](const OrderLine& line) { return line.roll == roll.name; });
    const auto is_more = [&](const Roll& other) { return &other != &roll && cloth_of(other) == cloth_of(roll); };
    const auto is_cut = [&](const CutPanels& cut) { return cut.cloth == cloth_of(roll); };
    return is_named && (std::any_of(job_.rolls.begin(), job_.rolls.end(), is_more) ||
                        std::any_of(job_.on_hand.begin(), job_.on_hand.end(), is_cut));
  }

  int set_apart(const Roll& roll, int whole) {
    const int apart = static_cast<int>(case_.order.cloths.size());
    case_.order.cloths.push_back(case_.order.cloths[ix(whole)]);
    auto& also = case_.order.also;
    also.resize(std::max(also.size(), ix(whole) + 1));
    also[ix(whole)].push_back(apart);
    apart_[roll.name] = apart;
    return apart;
  }

  // What is set apart has a name that stood before.
  int cloth_index(const std::string& cloth) {
    auto& cloths = case_.order.cloths;
    const auto found = std::find(cloths.begin(), cloths.end(), cloth);
    if (found != cloths.end()) return static_cast<int>(found - cloths.begin());
    cloths.push_back(cloth);
    return static_cast<int>(cloths.size()) - 1;
  }

  bool is_whole(int cloth) const {
    return std::none_of(apart_.begin(), apart_.end(), [&](const auto& apart) { return apart.second == cloth; });
  }

  void add_on_hand() {
    auto& on_hand = case_.order.on_hand;
    for (const CutPanels& cut : job_.on_hand) {
      const auto cloth = ix(cloth_index(cut.cloth));
      if (on_hand.size() <= cloth) on_hand.resize(cloth + 1, std::vector<std::int64_t>(job_.panels.size()));
      on_hand[cloth][ix(cut.panel)] += cut.count;
    }
  }

  int kind_of(const Roll& roll) {
    for (int k = 0; k < std::ssize(case_.kinds); ++k) {
      Roll& known = case_.kinds[ix(k)].cloth;
      if (pattern_key(known.fabric) != pattern_key(roll.fabric)) continue;
      known.length = std::max(known.length, roll.length);
      known.squared = std::max(known.squared, roll.squared);
      known.fabric.thickness = std::max(known.fabric.thickness, roll.fabric.thickness);
      return k;
    }
    case_.kinds.push_back({roll, {}, 0, false});
    case_.kinds.back().cloth.flaws.clear();
    return static_cast<int>(case_.kinds.size()) - 1;
  }

  // Cloths of rolls or panels on hand that are named or marked so; all where nothing is named.
  std::vector<int> cloths_named(const std::vector<std::string>& names) const {
    std::vector<int> cloths;
    for (int c = 0; c < std::ssize(case_.order.cloths); ++c) {
      const bool is_named = std::any_of(job_.rolls.begin(), job_.rolls.end(), [&](const Roll& roll) {
        return cloth_of(roll) == case_.order.cloths[ix(c)] && answers_to_any(roll, names);
      });
      const bool is_on_hand = std::any_of(job_.on_hand.begin(), job_.on_hand.end(), [&](const CutPanels& cut) {
        return cut.cloth == case_.order.cloths[ix(c)] && answers_to_any(as_roll(cut), names);
      });
      if ((is_named || is_on_hand) && is_whole(c)) cloths.push_back(c);
    }
    return cloths;
  }

  // Of a line that is kept on a roll: its cloth, or the roll where it is set apart.
  std::vector<int> cloths_kept(const OrderLine& asked) const {
    const auto apart = apart_.find(asked.roll);
    if (apart != apart_.end()) return {apart->second};
    const auto roll = std::find_if(job_.rolls.begin(), job_.rolls.end(), [&](const Roll& r) { return r.name == asked.roll; });
    if (roll == job_.rolls.end()) return {};
    const auto found = std::find(case_.order.cloths.begin(), case_.order.cloths.end(), cloth_of(*roll));
    return {static_cast<int>(found - case_.order.cloths.begin())};
  }

  // Where a line is kept on a roll that is set apart, it stands for its cloth.
  std::vector<int> cloths_of_rule(const PieceLine& line, const std::string& word) const {
    std::vector<int> cloths = cloths_named({word});
    for (int& cloth : cloths)
      for (const int apart : case_.order.also_for(cloth))
        if (line.cloths == std::vector<int>{apart}) cloth = apart;
    return cloths;
  }

  std::optional<Problem> add_line(int l) {
    const OrderLine& asked = job_.order.lines[ix(l)];
    const Product& product = job_.products[ix(asked.product)];
    PieceLine line{product.worth.parts(), asked.must, asked.may,
                   asked.roll.empty() ? cloths_named(asked.from) : cloths_kept(asked), {}, {}};
    if (line.cloths.empty())
      return Problem{"order.lines[" + std::to_string(l) + "].from", say("no roll is of a cloth that may serve %1", product.name),
                     say("name a cloth or a mark of a roll")};
    for (const PanelCount& panel : product.panels)
      line.needs.push_back({panel.panel, panel.count, panel.from.empty() ? std::vector<int>{} : cloths_named(panel.from)});
    for (const int cloth : line.cloths)
      if (asked.each_at_least > 0) line.rules.push_back({{cloth}, asked.each_at_least, kAnyNumber});
    for (const ClothRule& rule : asked.rules)
      line.rules.push_back({cloths_of_rule(line, rule.of), rule.at_least, rule.at_most.value_or(kAnyNumber)});
    case_.order.lines.push_back(std::move(line));
    return std::nullopt;
  }

  // Panels that are wanted of cloth whose pattern they would have to match.
  void note_unmatched() {
    const auto wanted = panels_wanted(case_.order);
    for (std::size_t i = 0; i < case_.rolls.size(); ++i)
      for (std::size_t p = 0; p < job_.panels.size(); ++p)
        if (needs_matching(job_, case_.rolls[i]) && job_.panels[p].match != Match::none && wanted[ix(case_.order.rolls[i].cloth)][p])
          case_.unmatched.push_back({case_.rolls[i], static_cast<int>(p)});
  }

  void find_ways() {
    for (BatchKind& kind : case_.kinds) {
      LengthPricer pricer(job_, kind.cloth, area_worths(), kSteps);
      kind.may_lie_end_to_end = pricer.refusal({FoldKind::open, 1, true, true}).empty();
      for (FoldWay way : all_ways(job_.longest_fan)) {
        if (way.end_to_end || !pricer.may_cut(way)) continue;
        kind.ways.push_back(way);
        way.end_to_end = true;
        if (pricer.may_cut(way)) kind.ways.push_back(way);
        break;
      }
      kind.priced = static_cast<int>(kind.ways.size());
      const FoldWay half{FoldKind::selvedge_to_selvedge, 2, false, true};
      add_way(kind, half, pricer);
      kind.quick = static_cast<int>(kind.ways.size());
      for (const FoldWay& way : all_ways(job_.longest_fan)) add_way(kind, way, pricer);
    }
  }

  static void add_way(BatchKind& kind, const FoldWay& way, LengthPricer& pricer) {
    const bool is_known = std::find(kind.ways.begin(), kind.ways.end(), way) != kind.ways.end();
    if (!is_known && pricer.may_cut(way)) kind.ways.push_back(way);
  }

  std::vector<std::int64_t> area_worths() const {
    std::vector<std::int64_t> worths;
    for (const Panel& p : job_.panels) worths.push_back(1 + p.area().square_units() / 1'024'000);
    return worths;
  }

  // A roll on which not every length finds room is a source of its own.
  void add_sources() {
    const Length longest = (job_.table.length * 2) + job_.losses.allowance;
    for (int r = 0; r < std::ssize(case_.order.rolls); ++r) {
      const CaseRoll& roll = case_.order.rolls[ix(r)];
      const bool shared = roll.stretches.size() == 1 && roll.room >= longest;
      auto& sources = case_.order.sources;
      const auto found = std::find_if(sources.begin(), sources.end(), [&](const CaseSource& s) {
        const CaseRoll& first = case_.order.rolls[ix(s.rolls.front())];
        return shared && s.cloth == roll.cloth && s.kind == roll.kind && first.price == roll.price &&
               first.stretches.size() == 1 && first.room >= longest;
      });
      if (found == sources.end()) {
        sources.push_back({roll.cloth, roll.kind, {r}, roll.room});
        continue;
      }
      found->rolls.push_back(r);
      found->room = std::max(found->room, roll.room);
    }
  }

  const Job& job_;
  BatchCase case_;
  std::map<std::string, int> apart_;  // cloths set apart, by roll
};

}  // namespace

Result<BatchCase> batch_case(const Job& job) { return CaseWriter(job).write(); }

}  // namespace foldyard
