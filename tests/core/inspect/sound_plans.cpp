#include "core/inspect/sound_plans.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "core/support/fold_ways.h"
#include "core/support/lengths.h"
#include "inspect/inspect_plan.h"

namespace foldyard {
namespace {

using test::kFlaps;
using test::kHalf;
using test::kOffCentre;
using test::kOpen;
using test::kOpenEndToEnd;
using test::kPlainFanOf5;
using test::kPlainQuarters;
using test::kPlainThirds;
using test::mm_rect;

Panel panel(const char* name, int across, int along, bool free, int worth) {
  return {name, Length::mm(across), Length::mm(along), free, free, Worth::whole(worth)};
}

Pace pace() {
  Pace pace;
  pace.unroll = Duration::seconds(60);
  pace.cross_cut = Duration::seconds(20);
  pace.fold = Duration::seconds(30);
  pace.lift = Duration::seconds(40);
  pace.mark = Duration::seconds(10);
  pace.ms_per_metre = 20'000;
  pace.handle = Duration::seconds(5);
  pace.allowance_percent = 10;
  pace.rate = Worth::whole(36);  // a hundredth a second
  return pace;
}

Job job() {
  Job job;
  job.unit = Unit::mm;
  job.rolls = {
      {"blue", {Length::mm(1500), Length::mm(10), Length::mm(1), Nap::none, ""}, Length()}};
  job.panels = {panel("carrier", 450, 900, true, 3), panel("pouch", 200, 300, false, 1)};
  job.table = {Length::mm(3000), Length::mm(1600), Length::mm(800), true};
  job.cutter = {Length::mm(25), 20};
  job.losses = {Length::mm(20), Length::mm(10), Length::mm(5), Length::mm(800), Length::mm(300)};
  job.pace = pace();
  return job;
}

void divide(Sound& sound, int node, Direction direction, Length at) {
  std::vector<CutNode>& nodes = sound.pattern().tree.nodes;
  CutNode below, above;
  below.rect = above.rect = nodes[static_cast<std::size_t>(node)].rect;
  (direction == Direction::along ? below.rect.across : below.rect.along).to = at;
  (direction == Direction::along ? above.rect.across : above.rect.along).from = at;
  CutNode& parent = nodes[static_cast<std::size_t>(node)];
  parent.kind = NodeKind::cut;
  parent.direction = direction;
  parent.at = at;
  parent.first = static_cast<int>(nodes.size());
  parent.second = parent.first + 1;
  nodes.push_back(below);
  nodes.push_back(above);
}

void list_cuts_from(Pattern& pattern, int index) {
  const CutNode node = pattern.tree.nodes[static_cast<std::size_t>(index)];
  if (node.kind != NodeKind::cut) return;
  const Span over = node.direction == Direction::along ? node.rect.along : node.rect.across;
  pattern.cuts.push_back({node.direction, node.at, over});
  pattern.travel += over.size();
  list_cuts_from(pattern, node.first);
  list_cuts_from(pattern, node.second);
}

bool is_in_a_panel(const Pattern& pattern, const Rect& cell) {
  return std::any_of(pattern.panels.begin(), pattern.panels.end(),
                     [&](const PlacedPanel& placed) { return placed.flat.overlaps(cell); });
}

RestKind kind_of(const Sound& sound, const Rect& cell) {
  const Fabric& fabric = sound.job.rolls[0].fabric;
  const Losses& losses = sound.job.losses;
  if (!fabric.usable().covers(cell.across)) return RestKind::selvedge;
  const bool kept =
      cell.across.size() >= losses.keep_across && cell.along.size() >= losses.keep_along;
  return kept ? RestKind::remnant : RestKind::offcut;
}

void lay_on_roll(Sound& sound) {
  Plan& plan = sound.plan;
  Length at = sound.job.losses.squaring;
  for (LengthOnRoll& length : plan.lengths) {
    length.on_roll = {at, at + sound.pattern().length + sound.job.losses.allowance};
    at = length.on_roll.to;
  }
  plan.remnant = {at, sound.roll().length - sound.job.losses.squaring};
  const Losses& losses = sound.job.losses;
  plan.remnant_kept =
      plan.remnant.size() >= losses.keep_along && sound.roll().fabric.width >= losses.keep_across;
}

void count_panels(Sound& sound) {
  Plan& plan = sound.plan;
  plan.yield.assign(sound.job.panels.size(), 0);
  plan.worth = sound.pattern().worth = Worth();
  plan.used = Area();
  for (const PlacedPanel& placed : sound.pattern().panels) {
    const Panel& goods = sound.job.panels[static_cast<std::size_t>(placed.panel)];
    sound.pattern().worth += goods.worth;
    plan.yield[static_cast<std::size_t>(placed.panel)] += plan.lays[0].lengths;
    plan.worth += goods.worth * plan.lays[0].lengths;
    plan.used += placed.flat.area() * plan.lays[0].lengths;
  }
}

// Seconds by the pace above, worked as a person would: 0.1 mm of travel takes
// 2 ms, so all is whole in ms; a hundredth of worth for each second.
void time_it(Sound& sound) {
  Plan& plan = sound.plan;
  const std::int64_t lengths = plan.lays[0].lengths;
  const std::int64_t crossed = static_cast<std::int64_t>(plan.lengths.size());
  const int legs_turned = sound.pattern().fold.way.legs - 1;
  const bool quarters = sound.pattern().fold.way.kind == FoldKind::quarters;
  const int folds = (quarters ? 2 : legs_turned) + (sound.pattern().fold.way.end_to_end ? 1 : 0);
  std::int64_t panels = 0;
  for (const std::int64_t count : plan.yield) panels += count;
  const Length travel = plan.travel + sound.roll().fabric.width * crossed;
  const std::int64_t lays = static_cast<std::int64_t>(plan.lays.size());
  const std::int64_t ms =
      1000 * (60 + 20 * crossed + 30 * folds * lengths + 40 * lays + 10 * plan.cuts + 5 * panels);
  const std::int64_t ticks = Duration::ms(ms).ticks() + travel.units() * 20'000;
  plan.time = Duration::ticks(ticks + ticks / 10);
  plan.net = plan.worth - Worth::parts(plan.time.ticks() / Duration::ms(10).ticks());
}

Sound strips(const Bare& fold, const std::vector<int>& cuts) {
  Sound sound = bare(fold);
  int node = 0;
  for (const int at : cuts) {
    cut_along(sound, node, at);
    node = sound.node(static_cast<std::size_t>(node)).second;
  }
  return sound;
}

Sound finished(Sound sound) {
  list_cuts(sound);
  fill_rests(sound);
  settle(sound);
  return sound;
}

}  // namespace

Sound bare(const Bare& fold) {
  Sound sound{job(), {}};
  sound.roll().length = Length::mm(2 * 20 + 2 * 10 + 2 * fold.length + 500);
  Pattern pattern;
  pattern.length = Length::mm(fold.length);
  pattern.fold.way = sound.plan.way = fold.way;
  for (const int line : fold.lines) pattern.fold.lines.push_back(Length::mm(line));
  pattern.fold.levels = fold.levels;
  pattern.folded_across = Length::mm(fold.folded_across);
  pattern.folded_along = fold.way.end_to_end ? pattern.length / 2 : pattern.length;
  pattern.plies = fold.plies;
  CutNode root;
  root.rect = {{Length(), pattern.folded_across}, {Length(), pattern.folded_along}};
  pattern.tree.nodes = {root};
  sound.plan.patterns = {pattern};
  sound.plan.lays = {{0, 2}};
  sound.plan.lengths = {{0, {}}, {0, {}}};
  sound.plan.proof = {Worth::whole(1'000'000), false, ""};
  return finished(sound);
}

void cut_along(Sound& sound, int node, int at) {
  divide(sound, node, Direction::along, Length::mm(at));
}

void cut_across(Sound& sound, int node, int at) {
  divide(sound, node, Direction::across, Length::mm(at));
}

void take(Sound& sound, int node, int panel, bool turned, const std::vector<Place>& places) {
  CutNode& leaf = sound.node(static_cast<std::size_t>(node));
  leaf.kind = NodeKind::take;
  leaf.panel = panel;
  leaf.turned = turned;
  for (const Place& place : places) {
    sound.pattern().panels.push_back({panel, turned, place.on_fold, place.flat, leaf.rect});
  }
}

void list_cuts(Sound& sound) {
  sound.pattern().cuts.clear();
  sound.pattern().travel = Length();
  list_cuts_from(sound.pattern(), 0);
}

void fill_rests(Sound& sound) {
  Pattern& pattern = sound.pattern();
  const Fabric& fabric = sound.roll().fabric;
  std::set<Length> xs{Length(), fabric.usable().from, fabric.usable().to, fabric.width};
  std::set<Length> ys{Length(), pattern.length};
  for (const PlacedPanel& placed : pattern.panels) {
    xs.insert({placed.flat.across.from, placed.flat.across.to});
    ys.insert({placed.flat.along.from, placed.flat.along.to});
  }
  pattern.rests.clear();
  for (auto y = ys.begin(); std::next(y) != ys.end(); ++y) {
    for (auto x = xs.begin(); std::next(x) != xs.end(); ++x) {
      const Rect cell{{*x, *std::next(x)}, {*y, *std::next(y)}};
      if (!is_in_a_panel(pattern, cell)) pattern.rests.push_back({kind_of(sound, cell), cell});
    }
  }
}

void settle(Sound& sound) {
  lay_on_roll(sound);
  count_panels(sound);
  Plan& plan = sound.plan;
  plan.cloth = sound.roll().fabric.width * sound.roll().length;
  plan.cuts = static_cast<std::int64_t>(sound.pattern().cuts.size() * plan.lays.size());
  plan.cross_cuts = static_cast<std::int64_t>(plan.lengths.size());
  plan.travel = sound.pattern().travel * static_cast<std::int64_t>(plan.lays.size());
  time_it(sound);
}

Sound selvedge_to_selvedge() {
  Sound sound = strips({kHalf, {750}, {1, 0}, 750, 2}, {225, 675});
  take(sound, 1, 0, false, {{mm_rect(525, 975, 0, 900), true}});
  take(sound, 3, 0, false, {{mm_rect(75, 525, 0, 900)}, {mm_rect(975, 1425, 0, 900)}});
  return finished(sound);
}

Sound open() {
  Sound sound = strips({kOpen, {}, {0}, 1500, 1}, {10, 460, 910, 1360});
  take(sound, 3, 0, false, {{mm_rect(10, 460, 0, 900)}});
  take(sound, 5, 0, false, {{mm_rect(460, 910, 0, 900)}});
  take(sound, 7, 0, false, {{mm_rect(910, 1360, 0, 900)}});
  return finished(sound);
}

// One carrier across the roll, pouches left out.
Sound open_turned() {
  Sound sound = strips({kOpen, {}, {0}, 1500, 1, 450}, {10, 910});
  take(sound, 3, 0, true, {{mm_rect(10, 910, 0, 450)}});
  return finished(sound);
}

// Leg 0 lies on [0, 600] reversed, leg 1 on [0, 900]; usable cloth ends at 590
// and 890. [225, 675] is whole in leg 1 only.
Sound off_centre() {
  Sound sound = strips({kOffCentre, {600}, {1, 0}, 900, 2}, {225, 675});
  take(sound, 1, 0, false, {{mm_rect(375, 825, 0, 900), true}});
  take(sound, 3, 0, false, {{mm_rect(825, 1275, 0, 900)}});
  return finished(sound);
}

// The base lies on [0, 800], the flaps on [0, 300] and [400, 800].
Sound both_edges_in() {
  Sound sound = strips({kFlaps, {300, 1100}, {1, 0, 2}, 800, 2}, {225, 575});
  take(sound, 1, 0, false, {{mm_rect(75, 525, 0, 900), true}});
  take(sound, 4, 0, false, {{mm_rect(875, 1325, 0, 900), true}});
  return finished(sound);
}

// Legs 0 and 1 are joined at 500, legs 1 and 2 at 0.
Sound thirds() {
  Sound sound = strips({kPlainThirds, {500, 1000}, {0, 1, 2}, 500, 3}, {225, 275});
  take(sound, 1, 0, false, {{mm_rect(775, 1225, 0, 900), true}});
  take(sound, 4, 0, false, {{mm_rect(275, 725, 0, 900), true}});
  return finished(sound);
}

// Folded double at 750 and again: legs 1 and 2 are joined at 0, the outer pairs
// at 375, one around the other.
Sound quarters() {
  Sound sound = strips({kPlainQuarters, {375, 750, 1125}, {2, 1, 0, 3}, 375, 4}, {225});
  take(sound, 1, 0, false, {{mm_rect(525, 975, 0, 900), true}});
  return finished(sound);
}

// Joined at 0: legs 1 and 2 (line 600), legs 3 and 4 (line 1200).
Sound fan_of_five() {
  Sound sound = strips({kPlainFanOf5, {300, 600, 900, 1200}, {0, 1, 2, 3, 4}, 300, 5}, {225});
  take(sound, 1, 0, false, {{mm_rect(375, 825, 0, 900), true}, {mm_rect(975, 1425, 0, 900), true}});
  return finished(sound);
}

// Length 2720, folded at 1360: v = |y − 1360|. Below 450 panels run over the
// end fold (y 910 … 1810), above it they come from both halves.
Sound end_to_end() {
  Sound sound =
      bare({{FoldKind::selvedge_to_selvedge, 2, true, true}, {750}, {1, 0}, 750, 4, 2720});
  cut_across(sound, 0, 450);
  cut_along(sound, 1, 225);
  cut_along(sound, 4, 675);
  cut_across(sound, 2, 1350);
  cut_along(sound, 7, 225);
  cut_along(sound, 10, 675);
  take(sound, 3, 0, false, {{mm_rect(525, 975, 910, 1810), true}});
  take(sound, 5, 0, false,
       {{mm_rect(75, 525, 910, 1810), true}, {mm_rect(975, 1425, 910, 1810), true}});
  take(sound, 9, 0, false,
       {{mm_rect(525, 975, 10, 910), true}, {mm_rect(525, 975, 1810, 2710), true}});
  take(sound, 11, 0, false,
       {{mm_rect(75, 525, 10, 910)},
        {mm_rect(975, 1425, 10, 910)},
        {mm_rect(75, 525, 1810, 2710)},
        {mm_rect(975, 1425, 1810, 2710)}});
  return finished(sound);
}

Sound open_end_to_end() {
  Sound sound = bare({kOpenEndToEnd, {}, {0}, 1500, 2, 2720});
  cut_across(sound, 0, 450);
  cut_along(sound, 1, 10);
  cut_along(sound, 4, 460);
  take(sound, 5, 0, false, {{mm_rect(10, 460, 910, 1810), true}});
  return finished(sound);
}

Sound selvedge_slit() {
  Sound sound = strips({kOffCentre, {12}, {1, 0}, 1488, 2}, {2});
  sound.job.losses.keep_across = Length::mm(1600);
  return finished(sound);
}

void expect_found(const std::vector<Broken>& rows) {
  for (const Broken& row : rows) {
    SCOPED_TRACE(row.name);
    Sound sound = row.make();
    EXPECT_EQ(inspect_plan(sound.job, sound.plan), std::vector<std::string>()) << "before";
    row.damage(sound);
    EXPECT_EQ(inspect_plan(sound.job, sound.plan), row.expected);
  }
}

}  // namespace foldyard
