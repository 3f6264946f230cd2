#include "job/check_pins.h"

#include "cloth/cloth_of.h"
#include "job/kept_length.h"
#include "measure/index.h"

namespace foldyard {

namespace {

class PinChecker {
 public:
  PinChecker(FirstFault& faults, const Job& job) : faults_(faults), job_(job) {}

  void run() {
    for (std::size_t i = 0; i < job_.order.lines.size(); ++i) line(at("order.lines", i) + ".", job_.order.lines[i]);
    faults_.no_more("order.kept", job_.order.kept.size(), limits::kMostKept);
    for (std::size_t i = 0; i < job_.order.kept.size(); ++i) kept(at("order.kept", i) + ".", job_.order.kept[i]);
  }

 private:
  void line(const std::string& where, const OrderLine& line) {
    if (line.roll.empty() || !names_roll(where + "roll", line.roll)) return;
    if (answers_to_any(job_.rolls[ix(roll_named(job_, line.roll))], line.from)) return;
    faults_.keep(where + "roll", say("\"%1\" is of a cloth that may not serve this line", line.roll),
                 say("name its cloth in \"from\" too, or another roll"));
  }

  bool names_roll(const std::string& where, const std::string& name) {
    const int roll = roll_named(job_, name);
    if (roll < 0)
      faults_.keep(where, say("no roll is called \"%1\"", name), say("name a roll of the job"));
    else if (job_.rolls[ix(roll)].in_batch == InBatch::never)
      faults_.keep(where, say("\"%1\" is left out of batches", name), say("let it be cut, or name another roll"));
    else
      return true;
    return false;
  }

  void kept(const std::string& where, const KeptLength& kept) {
    names_roll(where + "roll", kept.roll);
    faults_.number(where + "count", kept.count, limits::kKeptCount, 0);
    faults_.length(where + "length", kept.length, limits::kRollLength);
    faults_.count(where + "cuts", kept.steps.size(), limits::kMostKeptSteps);
    if (std::ssize(kept.lines) + 1 != kept.way.legs && !(kept.way.kind == FoldKind::open && kept.lines.empty()))
      faults_.keep(where + "lines", say("the way has another number of folds"), say("give each its place"));
    std::int64_t open = 1;  // parts that no step has told of
    for (std::size_t i = 0; i < kept.steps.size(); ++i) step(at(where + "cuts", i), kept.steps[i], open);
    if (open > 0) faults_.keep(where + "cuts", say("they end before all of the length is told of"), say("say what becomes of each part"));
  }

  void step(const std::string& where, const KeptStep& step, std::int64_t& open) {
    if (open == 0) faults_.keep(where, say("all of the length is told of before"), say("leave it out"));
    open += step.kind == NodeKind::cut ? 1 : -1;
    if (step.kind == NodeKind::cut && step.at <= Length()) faults_.keep(where + ".at", say("the cut lies outside its cloth"), say("say where"));
    if (step.kind == NodeKind::take && (step.panel < 0 || step.panel >= std::ssize(job_.panels)))
      faults_.keep(where + ".take", say("it names no panel of the job"), say("choose a panel"));
  }

  FirstFault& faults_;
  const Job& job_;
};

}  // namespace

void check_pins(FirstFault& faults, const Job& job) { PinChecker(faults, job).run(); }

}  // namespace foldyard
