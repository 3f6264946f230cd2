#include "job/check_order.h"

#include <algorithm>
#include <set>

#include "cloth/cloth_of.h"
#include "goods/sewing_time.h"
#include "job/as_roll.h"
#include "job/check_pins.h"
#include "job/most_abreast.h"
#include "job/most_cutting.h"
#include "measure/index.h"
#include "measure/wide.h"

namespace foldyard {
namespace {

// What is wrong with an index that names nothing, and what to do: patterns.
struct NamesNone {
  const char* what;
  const char* next;
};
constexpr NamesNone kNoPanel{to_say("it names no panel of the job"), to_say("choose a panel")};
constexpr NamesNone kNoProduct{to_say("it names no product of the job"), to_say("choose a product")};
constexpr NamesNone kNoWebbing{to_say("it names no webbing of the job"), to_say("choose a webbing")};

class OrderChecker {
 public:
  OrderChecker(FirstFault& faults, const Job& job) : faults_(faults), job_(job) {}

  void run() {
    faults_.number("cloth_price_per_square_metre", job_.cloth_price.parts(), limits::kClothPrice, 4);
    for (std::size_t i = 0; i < job_.rolls.size(); ++i) roll(at("rolls", i) + ".", job_.rolls[i]);
    for (std::size_t i = 1; i < job_.rolls.size(); ++i) same_marks(i);
    for (std::size_t i = 0; i < job_.on_hand.size(); ++i) on_hand(at("on_hand", i) + ".", job_.on_hand[i]);
    faults_.no_more("on_hand", job_.on_hand.size(), limits::kMostOnHand);
    faults_.no_more("history", job_.history.size(), limits::kMostRecords);
    for (std::size_t i = 0; i < job_.history.size(); ++i) record(at("history", i) + ".", job_.history[i]);
    webbings();
    products();
    notions();
    faults_.no_more("order.lines", job_.order.lines.size(), limits::kMostOrderLines);
    for (std::size_t i = 0; i < job_.order.lines.size(); ++i) line(at("order.lines", i) + ".", job_.order.lines[i]);
    aims();
    if (!faults_.fault()) sewing_fits();
    if (faults_.fault()) return;
    cutting_fits();
    rows_fit();
    check_pins(faults_, job_);
  }

 private:
  void roll(const std::string& where, const Roll& roll) {
    faults_.name(where + "cloth", roll.cloth, false);
    faults_.no_more(where + "marks", roll.marks.size(), limits::kMostWords);
    for (std::size_t i = 0; i < roll.marks.size(); ++i) faults_.name(at(where + "marks", i), roll.marks[i], true);
    if (roll.price) faults_.number(where + "price_per_metre", roll.price->parts(), limits::kClothPrice, 4);
  }

  void on_hand(const std::string& where, const CutPanels& cut) {
    names_one(where + "panel", cut.panel, job_.panels, kNoPanel);
    faults_.name(where + "cloth", cut.cloth, true);
    faults_.number(where + "count", cut.count, {1, limits::kPieces.most}, 0);
    faults_.no_more(where + "marks", cut.marks.size(), limits::kMostWords);
    const auto roll = std::find_if(job_.rolls.begin(), job_.rolls.end(),
                                   [&](const Roll& each) { return cloth_of(each) == cut.cloth; });
    if (roll == job_.rolls.end() || marks_of(*roll) == std::set<std::string>(cut.marks.begin(), cut.marks.end())) return;
    faults_.keep(where + "marks", say("the panels are of the cloth \"%1\" and have other marks than its rolls", cut.cloth),
                 say("give them the same marks"));
  }

  void record(const std::string& where, const CutRecord& record) {
    faults_.no_more(where + "rolls", record.rolls.size(), limits::kMostRolls);
    for (std::size_t i = 0; i < record.rolls.size(); ++i) {
      const std::string here = at(where + "rolls", i) + ".";
      faults_.name(here + "roll", record.rolls[i].roll, true);
      faults_.length(here + "cut", record.rolls[i].cut, limits::kCutOff);
      faults_.length(here + "left", record.rolls[i].left, limits::kCutOff);
    }
  }

  static std::set<std::string> marks_of(const Roll& roll) { return {roll.marks.begin(), roll.marks.end()}; }

  void same_marks(std::size_t i) {
    const Roll& roll = job_.rolls[i];
    const auto first = std::find_if(job_.rolls.begin(), job_.rolls.end(),
                                    [&](const Roll& other) { return cloth_of(other) == cloth_of(roll); });
    if (marks_of(*first) == marks_of(roll)) return;
    faults_.keep(at("rolls", i) + ".marks",
                 say("the roll is of the cloth \"%1\" as \"%2\" is, but has other marks", cloth_of(roll), first->name),
                 say("give rolls of one cloth the same marks"));
  }

  template <class List>
  bool names_one(const std::string& where, int index, const List& list, const NamesNone& none) {
    if (0 <= index && index < std::ssize(list)) return true;
    faults_.keep(where, say(none.what), say(none.next));
    return false;
  }

  template <class List>
  void names(const std::string& where, const List& list) {
    std::set<std::string> seen;
    for (std::size_t i = 0; i < list.size(); ++i) {
      faults_.name(at(where, i) + ".name", list[i].name, true);
      if (!seen.insert(list[i].name).second)
        faults_.keep(at(where, i) + ".name", say("the name \"%1\" stands twice", list[i].name), say("give each its own"));
    }
  }

  void webbings() {
    faults_.no_more("webbing", job_.webbings.size(), limits::kMostWebbings);
    names("webbing", job_.webbings);
    for (std::size_t i = 0; i < job_.webbings.size(); ++i) webbing(at("webbing", i) + ".", job_.webbings[i]);
  }

  void webbing(const std::string& where, const Webbing& webbing) {
    faults_.length(where + "roll", webbing.roll, limits::kWebbingRoll);
    faults_.number(where + "price", webbing.price.parts(), limits::kClothPrice, 4);
    faults_.length(where + "loss", webbing.loss, limits::kWebbingLoss);
    faults_.no_more(where + "ends", webbing.ends.size(), limits::kMostEnds);
    for (std::size_t i = 0; i < webbing.ends.size(); ++i)
      faults_.length(at(where + "ends", i), webbing.ends[i], limits::kWebbingCut);
  }

  void products() {
    faults_.no_more("products", job_.products.size(), limits::kMostProducts);
    names("products", job_.products);
    for (std::size_t i = 0; i < job_.products.size(); ++i) product(at("products", i) + ".", job_.products[i]);
  }

  void product(const std::string& where, const Product& product) {
    faults_.number(where + "worth", product.worth.parts(), limits::kPanelWorth, 4);
    faults_.count(where + "panels", product.panels.size(), limits::kMostPanels);
    std::set<int> seen;
    for (std::size_t i = 0; i < product.panels.size(); ++i) {
      const PanelCount& each = product.panels[i];
      faults_.number(at(where + "panels", i) + ".count", each.count, limits::kInAPiece, 0);
      names_one(at(where + "panels", i) + ".panel", each.panel, job_.panels, kNoPanel);
      words(at(where + "panels", i) + ".from", each.from);
      if (!seen.insert(each.panel).second)
        faults_.keep(at(where + "panels", i) + ".panel", say("the panel stands twice"), say("count both together"));
    }
    faults_.no_more(where + "webbing", product.webbing.size(), limits::kMostWords);
    for (std::size_t i = 0; i < product.webbing.size(); ++i) cut(at(where + "webbing", i) + ".", product.webbing[i]);
    money(where, product);
    faults_.no_more(where + "sewing", product.sewing.size(), limits::kMostSewingOrders);
    names(where + "sewing", product.sewing);
    for (std::size_t i = 0; i < product.sewing.size(); ++i) sewing(at(where + "sewing", i) + ".", product.sewing[i]);
  }

  void money(const std::string& where, const Product& product) {
    if (product.price) faults_.number(where + "price", product.price->parts(), limits::kClothPrice, 4);
    faults_.no_more(where + "prices", product.prices.size(), limits::kMostWords);
    for (std::size_t i = 0; i < product.prices.size(); ++i) {
      word(at(where + "prices", i) + ".of", product.prices[i].of);
      faults_.number(at(where + "prices", i) + ".price", product.prices[i].price.parts(), limits::kClothPrice, 4);
    }
    faults_.length(where + "seam", product.seam, limits::kSeam);
    faults_.number(where + "labels", product.labels, limits::kLabels, 0);
  }

  void duration(const std::string& where, Duration time, NumberLimit limit) {
    faults_.number(where, time.ticks() / Duration::kTicksPerMs, limit, 3);
  }

  void sewing(const std::string& where, const SewingOrder& order) {
    faults_.no_more(where + "steps", order.steps.size(), limits::kMostSteps);
    names(where + "steps", order.steps);
    for (std::size_t i = 0; i < order.steps.size(); ++i) {
      const SewingStep& step = order.steps[i];
      const std::string here = at(where + "steps", i) + ".";
      duration(here + "seconds", step.usual, limits::kSewingMs);
      faults_.no_more(here + "timed", step.timed.size(), limits::kMostTimes);
      for (std::size_t k = 0; k < step.timed.size(); ++k) duration(at(here + "timed", k), step.timed[k], limits::kSewingMs);
    }
  }

  void notions() {
    faults_.number("notions.thread_factor", job_.notions.thread_tenths, limits::kThreadTenths, 1);
    faults_.length("notions.reel", job_.notions.reel, limits::kReel);
    faults_.number("notions.reel_price", job_.notions.reel_price.parts(), limits::kClothPrice, 4);
    faults_.number("notions.label_price", job_.notions.label_price.parts(), limits::kClothPrice, 4);
    duration("sitting", job_.sitting, limits::kSittingMs);
  }

  void cut(const std::string& where, const WebbingCut& cut) {
    faults_.length(where + "length", cut.length, limits::kWebbingCut);
    faults_.number(where + "count", cut.count, limits::kInAPiece, 0);
    if (!names_one(where + "webbing", cut.webbing, job_.webbings, kNoWebbing)) return;
    const Webbing& webbing = job_.webbings[ix(cut.webbing)];
    if (cut.length + webbing.loss <= webbing.roll) return;
    faults_.keep(where + "length", say("%1 is longer than a full roll of \"%2\"", faults_.text_of(cut.length), webbing.name),
                 say("give a longer roll or cut it shorter"));
  }

  bool is_known(const std::string& word) const {
    const auto by_roll = [&](const Roll& roll) { return answers_to(roll, word); };
    const auto by_panels = [&](const CutPanels& cut) { return answers_to(as_roll(cut), word); };
    return std::any_of(job_.rolls.begin(), job_.rolls.end(), by_roll) ||
           std::any_of(job_.on_hand.begin(), job_.on_hand.end(), by_panels);
  }

  void word(const std::string& where, const std::string& word) {
    faults_.name(where, word, true);
    if (is_known(word)) return;
    faults_.keep(where, say("no roll is of the cloth \"%1\" or has it as a mark", word),
                 say("write the cloth or a mark of a roll"));
  }

  void words(const std::string& where, const std::vector<std::string>& list) {
    faults_.no_more(where, list.size(), limits::kMostWords);
    for (std::size_t i = 0; i < list.size(); ++i) word(at(where, i), list[i]);
  }

  void line(const std::string& where, const OrderLine& line) {
    names_one(where + "product", line.product, job_.products, kNoProduct);
    faults_.number(where + "must", line.must, limits::kPieces, 0);
    faults_.number(where + "may", line.may, limits::kPieces, 0);
    faults_.number(where + "each_at_least", line.each_at_least, limits::kPieces, 0);
    if (line.must + line.may == 0) faults_.keep(where + "must", say("the line asks for no piece"), say("say how many"));
    words(where + "from", line.from);
    faults_.no_more(where + "rules", line.rules.size(), limits::kMostRules);
    for (std::size_t i = 0; i < line.rules.size(); ++i) rule(at(where + "rules", i) + ".", line.rules[i], line);
    each_fits(where, line);
  }

  void rule(const std::string& where, const ClothRule& rule, const OrderLine& line) {
    word(where + "of", rule.of);
    faults_.number(where + "at_least", rule.at_least, limits::kPieces, 0);
    if (rule.at_most) faults_.number(where + "at_most", *rule.at_most, limits::kPieces, 0);
    const std::int64_t most = std::min(rule.at_most.value_or(limits::kPieces.most), line.must + line.may);
    if (rule.at_least <= most) return;
    faults_.keep(where + "at_least", say("%1 is more than the %2 that may be made of it", rule.at_least, most),
                 say("ask for fewer, or take more"));
  }

  void each_fits(const std::string& where, const OrderLine& line) {
    std::set<std::string> cloths;
    for (const Roll& roll : job_.rolls) {
      if (!line.roll.empty() && roll.name != line.roll) continue;
      if (answers_to_any(roll, line.from)) cloths.insert(cloth_of(roll));
    }
    for (const CutPanels& cut : job_.on_hand) {
      if (line.roll.empty() && answers_to_any(as_roll(cut), line.from)) cloths.insert(cut.cloth);
    }
    const auto count = static_cast<std::int64_t>(cloths.size());
    if (line.each_at_least * count <= line.must + line.may) return;
    faults_.keep(where + "each_at_least",
                 say("%1 of each of %2 cloths is more than the %3 pieces of the line", line.each_at_least, count,
                     line.must + line.may),
                 say("ask for fewer of each, or for more pieces"));
  }

  // By the slowest order of operations of each product.
  void sewing_fits() {
    Wide ticks = 0;
    for (const OrderLine& line : job_.order.lines) {
      Duration slowest;
      for (const SewingOrder& each : job_.products[ix(line.product)].sewing)
        slowest = std::max(slowest, with_allowance(basic_time(each), job_.pace.allowance_percent));
      ticks += Wide{slowest.ticks()} * (line.must + line.may);
    }
    if (ticks / job_.sitting.ticks() <= limits::kMostSittings) return;
    faults_.keep("order.lines", say("sewing all pieces takes more than %1 sittings", limits::kMostSittings),
                 say("ask for fewer pieces, or correct the seconds of their steps"));
  }

  void cutting_fits() {
    if (job_.order.lines.empty() || most_cutting_hours(job_) <= limits::kMostCuttingHours) return;
    faults_.keep("rolls", say("cutting all rolls may take more than %1 hours", limits::kMostCuttingHours),
                 say("plan fewer rolls or larger panels, or correct the seconds of the steps"));
  }

  void rows_fit() {
    if (job_.order.lines.empty() || most_abreast(job_) <= limits::kMostAbreast) return;
    faults_.keep("rolls", say("side by side across all rolls lie more than %1 panels of all kinds", limits::kMostAbreast),
                 say("plan fewer rolls or fewer kinds of panels at once"));
  }

  void aims() {
    std::set<BatchAim> seen;
    for (std::size_t i = 0; i < job_.order.aims.size(); ++i) {
      if (!seen.insert(job_.order.aims[i]).second)
        faults_.keep(at("order.aims", i), say("the aim stands twice"), say("name each once"));
    }
  }

  FirstFault& faults_;
  const Job& job_;
};

}  // namespace

void check_order_values(FirstFault& faults, const Job& job) { OrderChecker(faults, job).run(); }

}  // namespace foldyard
