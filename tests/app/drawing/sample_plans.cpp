#include "app/drawing/sample_plans.h"

#include <algorithm>
#include <numeric>

#include "core/support/lengths.h"
#include "fold/fold_map.h"

namespace foldyard::samples {

namespace {

using test::mm;

// Panels one above the other from v = 0, in one strip of the folded cloth.
struct Strip {
  Span across;
  std::vector<int> panels;
};

class PatternBuilder {
 public:
  PatternBuilder(const Job& job, const Fabric& fabric, FoldPlan fold, Length length)
      : job_(job), fabric_(fabric), map_(fold_map(fold, fabric.width, length)) {
    pattern_.length = length;
    pattern_.fold = std::move(fold);
    pattern_.folded_across = map_.across.folded_size();
    pattern_.folded_along = map_.along.folded_size();
    pattern_.plies = most_plies(pattern_.fold.way);
  }

  Pattern build(const std::vector<Strip>& strips) {
    int node = add({{Length(), pattern_.folded_across}, {Length(), pattern_.folded_along}});
    for (const Strip& strip : strips) {
      node = cut(node, Direction::along, strip.across.from, &PatternBuilder::leave, {});
      node = cut(node, Direction::along, strip.across.to, &PatternBuilder::fill, strip.panels);
    }
    if (node >= 0) leave(node, {});
    for (Span edge :
         {Span{Length(), fabric_.selvedge}, Span{fabric_.width - fabric_.selvedge, fabric_.width}})
      pattern_.rests.push_back({RestKind::selvedge, {edge, {Length(), pattern_.length}}});
    for (const Cut& each : pattern_.cuts) pattern_.travel += each.over.size();
    return pattern_;
  }

 private:
  using Then = void (PatternBuilder::*)(int, const std::vector<int>&);

  CutNode& at(int node) { return pattern_.tree.nodes[static_cast<std::size_t>(node)]; }

  int add(const Rect& rect) {
    pattern_.tree.nodes.push_back({rect, NodeKind::leave, Direction::along, {}, -1, -1, -1, false});
    return static_cast<int>(pattern_.tree.nodes.size()) - 1;
  }

  // Cuts a node in two, does `then` to the first and returns the second; a cut
  // on the rim is none: it gives the node back, or, at its end, nothing (−1).
  int cut(int node, Direction direction, Length place, Then then, const std::vector<int>& panels) {
    const Rect whole = at(node).rect;
    const bool along = direction == Direction::along;
    const Span span = along ? whole.across : whole.along;
    if (place == span.from) return node;
    if (place == span.to) {
      (this->*then)(node, panels);
      return -1;
    }
    Rect first = whole, second = whole;
    (along ? first.across : first.along).to = place;
    (along ? second.across : second.along).from = place;
    const int a = add(first), b = add(second);
    at(node).kind = NodeKind::cut;
    at(node).direction = direction;
    at(node).at = place;
    at(node).first = a;
    at(node).second = b;
    pattern_.cuts.push_back({direction, place, along ? whole.along : whole.across});
    (this->*then)(a, panels);
    return b;
  }

  void fill(int node, const std::vector<int>& panels) {
    Length v = at(node).rect.along.from;
    for (int panel : panels) {
      if (node < 0) return;
      const std::int64_t halves =
          map_.along.legs().size() > 1 && v.is_zero() && job_.panels[index(panel)].on_fold ? 2 : 1;
      v += job_.panels[index(panel)].along / halves;
      node = cut(node, Direction::across, v, &PatternBuilder::take, {panel});
    }
    if (node >= 0) leave(node, {});
  }

  void take(int node, const std::vector<int>& panels) {
    at(node).kind = NodeKind::take;
    at(node).panel = panels.front();
    const Panel& panel = job_.panels[index(panels.front())];
    for (const Rect& flat : places(at(node).rect)) {
      const bool whole = flat.across.size() == panel.across && flat.along.size() == panel.along;
      if (!whole) {
        rest(flat);
        continue;
      }
      const bool creased = map_.across.is_creased(flat.across) || map_.along.is_creased(flat.along);
      pattern_.panels.push_back({panels.front(), false, creased, flat, at(node).rect});
      pattern_.worth += panel.worth;
    }
  }

  void leave(int node, const std::vector<int>&) {
    for (const Rect& flat : places(at(node).rect)) rest(flat);
  }

  void rest(Rect flat) {
    flat.across = intersection(flat.across, fabric_.usable());
    if (flat.is_empty()) return;
    const bool kept = flat.across.size() >= job_.losses.keep_across &&
                      flat.along.size() >= job_.losses.keep_along;
    pattern_.rests.push_back({kept ? RestKind::remnant : RestKind::offcut, flat});
  }

  std::vector<Rect> places(const Rect& folded) const {
    std::vector<Rect> rects;
    for (Span across : map_.across.places_of(folded.across))
      for (Span along : map_.along.places_of(folded.along)) rects.push_back({across, along});
    return rects;
  }

  static std::size_t index(int panel) { return static_cast<std::size_t>(panel); }

  const Job& job_;
  const Fabric& fabric_;
  FoldMap map_;
  Pattern pattern_;
};

Job job_named(const std::string& name, Unit unit, Length width, Length length) {
  Job job;
  job.name = name;
  job.unit = unit;
  job.rolls = {{"Linen 7, oat", {width, mm(10), mm(1), Nap::none, "#c9b48a"}, length}};
  job.cutter = {mm(25), 20};
  job.table = {mm(6000), mm(1600), mm(900), true};
  job.losses = {mm(100), mm(40), mm(0), mm(300), mm(600)};
  return job;
}

Panel panel(const std::string& name, Length across, Length along) {
  return {name, across, along, false, true, Worth::whole(3)};
}

// Lengths of each pattern in stacks, laid one after another along the roll.
void lay_out(const Job& job, Plan& plan, const std::vector<Lay>& lays) {
  plan.lays = lays;
  Length at = job.losses.squaring;
  for (std::size_t i = 0; i < lays.size(); ++i)
    for (int k = 0; k < lays[i].lengths; ++k) {
      const Length size =
          plan.patterns[static_cast<std::size_t>(lays[i].pattern)].length + job.losses.allowance;
      plan.lengths.push_back({static_cast<int>(i), {at, at + size}});
      at += size;
    }
  plan.remnant = {at, job.rolls.front().length - job.losses.squaring};
  plan.remnant_kept = plan.remnant.size() >= job.losses.keep_along;
}

void add_up(const Job& job, Plan& plan) {
  plan.yield.assign(job.panels.size(), 0);
  for (const LengthOnRoll& length : plan.lengths) {
    const Lay& lay = plan.lays[static_cast<std::size_t>(length.lay)];
    for (const PlacedPanel& placed : plan.patterns[static_cast<std::size_t>(lay.pattern)].panels) {
      ++plan.yield[static_cast<std::size_t>(placed.panel)];
      plan.used += placed.flat.area();
      plan.worth += job.panels[static_cast<std::size_t>(placed.panel)].worth;
    }
  }
  plan.cloth = job.rolls.front().fabric.width * job.rolls.front().length;
  for (const Lay& lay : plan.lays)
    plan.cuts +=
        static_cast<std::int64_t>(plan.patterns[static_cast<std::size_t>(lay.pattern)].cuts.size());
  plan.cross_cuts = static_cast<std::int64_t>(plan.lengths.size()) + 1;
  plan.time = Duration::seconds(60 * static_cast<std::int64_t>(plan.lays.size() * 6));
  plan.proof = {plan.worth, true,
                "No way of cutting open cloth gives more panels, and this plan gives as many."};
}

Plan plan_of(const Job& job, const FoldWay& way, std::vector<Pattern> patterns,
             const std::vector<Lay>& lays) {
  Plan plan;
  plan.way = way;
  plan.patterns = std::move(patterns);
  lay_out(job, plan, lays);
  add_up(job, plan);
  return plan;
}

// The plan among all ways up to fans of six: some worse by a little, some refused.
Sample sample_of(Job job, Plan plan) {
  Sample sample;
  const FoldWay way = plan.way;
  std::int64_t step = 0;
  for (const FoldWay& each : all_ways(6)) {
    WayResult result{each, plan, {}};
    result.plan->way = each;
    result.plan->used =
        Area::square_units(plan.used.square_units() - plan.used.square_units() / 90 * step++);
    if (each == way)
      result.plan = plan;
    else if (each.end_to_end && !way.end_to_end) {
      result.plan.reset();
      result.refused = "the folded length would be deeper than the table; cut shorter lengths.";
    } else if (each.kind == FoldKind::fan && each.legs == 6) {
      result.plan.reset();
      result.refused = "6 plies of 1 mm in a stack are more than the cutter takes.";
    }
    sample.comparison.ways.push_back(std::move(result));
  }
  for (std::size_t i = 0; i < sample.comparison.ways.size(); ++i) {
    if (!sample.comparison.ways[i].plan) continue;
    sample.comparison.ranking.push_back(static_cast<int>(i));
    if (sample.comparison.ways[i].way == way) sample.chosen = static_cast<int>(i);
  }
  std::stable_partition(sample.comparison.ranking.begin(), sample.comparison.ranking.end(),
                        [&](int i) { return i == sample.chosen; });
  sample.comparison.frontier = {sample.chosen, 0};
  sample.job = std::move(job);
  return sample;
}

std::vector<Lay> lays(int count, int lengths, int pattern = 0) {
  return std::vector<Lay>(static_cast<std::size_t>(count), {pattern, lengths});
}

}  // namespace

Sample carriers() {
  Job job = job_named("Stall awning, spring", Unit::cm, mm(1500), mm(13500));
  job.panels = {panel("Carrier", mm(450), mm(900)), panel("Pouch", mm(70), mm(300))};
  const FoldPlan fold{{FoldKind::selvedge_to_selvedge, 2, false, true}, {mm(750)}, {1, 0}};
  PatternBuilder builder(job, job.rolls[0].fabric, fold, mm(900));
  const Pattern pattern =
      builder.build({{{mm(0), mm(225)}, {0}}, {{mm(225), mm(675)}, {0}}, {{mm(675), mm(740)}, {}}});
  return sample_of(job, plan_of(job, fold.way, {pattern}, lays(7, 2)));
}

Sample both_edges_in() {
  Job job = job_named("Bench cushions for the river house", Unit::mm, mm(1400), mm(31700));
  job.rolls[0].fabric.colour = "#4a6fa5";
  job.panels = {panel("Seat cushion", mm(560), mm(620)), panel("Back cushion", mm(400), mm(620)),
                panel("Tie", mm(140), mm(300)), panel("Piping cover", mm(200), mm(1240))};
  const FoldPlan fold{{FoldKind::both_edges_in, 3, false, false}, {mm(290), mm(1010)}, {1, 0, 2}};
  PatternBuilder long_one(job, job.rolls[0].fabric, fold, mm(1900));
  PatternBuilder short_one(job, job.rolls[0].fabric, fold, mm(640));
  const Pattern a = long_one.build({{{mm(0), mm(280)}, {0, 0, 0}},
                                    {{mm(290), mm(430)}, {2, 2, 2, 2, 2}},
                                    {{mm(520), mm(720)}, {1, 1, 1}}});
  const Pattern b = short_one.build({{{mm(0), mm(70)}, {2, 2}}, {{mm(440), mm(720)}, {0}}});
  std::vector<Lay> all = lays(4, 3);
  all.push_back({0, 2});
  all.push_back({1, 5});
  return sample_of(job, plan_of(job, fold.way, {a, b}, all));
}

Sample fan_of_five() {
  Job job = job_named("Lavender bags", Unit::cm, mm(1500), mm(30000));
  job.rolls[0].fabric.nap = Nap::one_way;
  job.rolls[0].fabric.colour = "#7d5a87";
  job.panels = {panel("Bag", mm(140), mm(290)), panel("Bag with hem", mm(280), mm(290))};
  const FoldPlan fold{
      {FoldKind::fan, 5, false, true}, {mm(300), mm(600), mm(900), mm(1200)}, {0, 1, 2, 3, 4}};
  PatternBuilder builder(job, job.rolls[0].fabric, fold, mm(600));
  const Pattern pattern =
      builder.build({{{mm(10), mm(150)}, {0, 0}}, {{mm(150), mm(290)}, {0, 0}}});
  return sample_of(job, plan_of(job, fold.way, {pattern}, lays(11, 4)));
}

Sample end_to_end() {
  Job job = job_named("Tent skirts", Unit::m, mm(1600), mm(50000));
  job.panels = {panel("Skirt", mm(490), mm(1800)), panel("Skirt short", mm(490), mm(700))};
  const FoldPlan fold{{FoldKind::fan, 3, true, true}, {mm(533), mm(1066)}, {0, 1, 2}};
  PatternBuilder builder(job, job.rolls[0].fabric, fold, mm(3600));
  const Pattern pattern = builder.build({{{mm(20), mm(510)}, {0, 1}}});
  Sample sample = sample_of(job, plan_of(job, fold.way, {pattern}, lays(6, 2)));
  for (WayResult& way : sample.comparison.ways)
    if (way.plan)
      way.plan->proof = {way.plan->worth + Worth::whole(12), false,
                         "The search ended at its budget of steps."};
  return sample;
}

Sample open_long_names() {
  const auto in = [](std::int64_t n) { return Length::inches64(n * 64); };
  Job job = job_named("A & B <\"é\"> armchair, two sofas", Unit::inch, in(54),
                      Length::inches64(42 * 36 * 64));
  const std::vector<std::string> names = {"Inside back",
                                          "Outside arm, left",
                                          "Outside arm, right",
                                          "Seat cushion top with welt allowance",
                                          "Rückenkissenbezug mit Reißverschlussbesatz",
                                          "Armlehnenschutzdeckchenverlängerung",
                                          "Boxing strip",
                                          "Zip band",
                                          "Deck",
                                          "A & B <\"é\">",
                                          "Skirt",
                                          "Pull-through"};
  const std::int64_t sizes[][2] = {{24, 30}, {24, 12}, {24, 12}, {24, 26}, {24, 26}, {14, 24},
                                   {14, 5},  {14, 4},  {14, 28}, {14, 10}, {14, 20}, {14, 3}};
  for (std::size_t i = 0; i < names.size(); ++i)
    job.panels.push_back(panel(names[i], in(sizes[i][0]), in(sizes[i][1])));
  const FoldPlan fold{{FoldKind::open, 1, false, true}, {}, {0}};
  PatternBuilder builder(job, job.rolls[0].fabric, fold, in(108));
  const Length edge = mm(10);
  const Pattern pattern = builder.build({{{edge, edge + in(24)}, {0, 1, 2, 3, 4}},
                                         {{edge + in(24), edge + in(38)}, {5, 6, 7, 8, 9, 10, 11}},
                                         {{edge + in(38), edge + in(52)}, {8, 8, 5, 6, 7, 7, 11}}});
  return sample_of(job, plan_of(job, fold.way, {pattern}, lays(13, 1)));
}

std::vector<Sample> all() {
  return {carriers(), both_edges_in(), fan_of_five(), end_to_end(), open_long_names()};
}

}  // namespace foldyard::samples
