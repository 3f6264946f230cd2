#include "inspect/batch_checks.h"
#include "measure/index.h"

namespace foldyard::inspection {

namespace {

// One panel's copies of every cloth against the pieces that need them.
class Supply {
 public:
  explicit Supply(std::vector<std::int64_t> copies) : copies_(std::move(copies)) {}

  void take(std::size_t cloth, std::int64_t count) { copies_[cloth] -= count; }
  std::int64_t left(std::size_t cloth) const { return copies_[cloth]; }

  // Serves `count` copies from any of the cloths, moving what earlier wishes took
  // where that makes room: a flow from wishes to cloths. Gives what cannot be had.
  std::int64_t wish(const std::vector<bool>& allowed, std::int64_t count) {
    wishes_.push_back({allowed, std::vector<std::int64_t>(copies_.size())});
    while (count > 0) {
      std::vector<bool> seen(wishes_.size());
      const std::int64_t moved = push(wishes_.size() - 1, count, seen);
      if (moved == 0) break;
      count -= moved;
    }
    return count;
  }

 private:
  struct Wish {
    std::vector<bool> allowed;
    std::vector<std::int64_t> taken;  // by cloth
  };

  // Lets the wish take up to `count` copies more; gives how many.
  std::int64_t push(std::size_t wish, std::int64_t count, std::vector<bool>& seen) {
    seen[wish] = true;
    for (std::size_t cloth = 0; cloth < copies_.size(); ++cloth) {
      if (!wishes_[wish].allowed[cloth]) continue;
      std::int64_t got = std::min(count, std::max<std::int64_t>(copies_[cloth], 0));
      copies_[cloth] -= got;
      if (got == 0) got = make_room(cloth, count, seen);
      wishes_[wish].taken[cloth] += got;
      if (got > 0) return got;
    }
    return 0;
  }

  // Another wish gives up copies of the cloth for copies of another one.
  std::int64_t make_room(std::size_t cloth, std::int64_t count, std::vector<bool>& seen) {
    for (std::size_t other = 0; other < wishes_.size(); ++other) {
      if (seen[other] || wishes_[other].taken[cloth] == 0) continue;
      const std::int64_t moved = push(other, std::min(count, wishes_[other].taken[cloth]), seen);
      wishes_[other].taken[cloth] -= moved;
      if (moved > 0) return moved;
    }
    return 0;
  }

  std::vector<std::int64_t> copies_;
  std::vector<Wish> wishes_;
};

class ServedCheck {
 public:
  ServedCheck(const Job& job, const BatchPlan& plan, Findings& findings)
      : job_(job), plan_(plan), findings_(findings), cloths_(cloths_of(job)) {}

  void check(int panel) {
    Supply supply(yield_of(panel));
    each_use(panel, [&](const PanelCount& use, const Made& made) {
      if (use.from.empty()) supply.take(place_of(made.cloth), use.count * made.pieces);
    });
    const std::string& name = job_.panels[ix(panel)].name;
    for (std::size_t i = 0; i < cloths_.size(); ++i) {
      findings_.require(supply.left(i) >= 0, "Of ", cloths_[i].name, ", ", -supply.left(i), " of ", name,
                        " are missing for the pieces made of it");
    }
    std::int64_t missing = 0;
    each_use(panel, [&](const PanelCount& use, const Made& made) {
      if (use.from.empty()) return;
      std::vector<bool> allowed;
      for (const Cloth& cloth : cloths_) allowed.push_back(cloth.serves(use.from));
      missing += supply.wish(allowed, use.count * made.pieces);
    });
    findings_.require(missing == 0, missing, " of ", name, " are missing for pieces that take them from other cloth");
  }

 private:
  std::size_t place_of(const std::string& cloth) const {
    std::size_t i = 0;
    while (cloths_[i].name != cloth) ++i;
    return i;
  }

  std::vector<std::int64_t> yield_of(int panel) const {
    std::vector<std::int64_t> copies(cloths_.size());
    for (const CutPanels& cut : job_.on_hand) {
      if (cut.panel == panel) copies[place_of(cut.cloth)] += cut.count;
    }
    for (const Plan& roll : plan_.rolls) {
      const Roll& cloth = job_.rolls[ix(roll.roll)];
      copies[place_of(cloth_name(cloth))] += roll.yield[ix(panel)];
    }
    return copies;
  }

  template <class Act>
  void each_use(int panel, Act act) const {
    for (const Made& made : plan_.made) {
      const OrderLine& line = job_.order.lines[ix(made.line)];
      for (const PanelCount& use : job_.products[ix(line.product)].panels) {
        if (use.panel == panel) act(use, made);
      }
    }
  }

  const Job& job_;
  const BatchPlan& plan_;
  Findings& findings_;
  std::vector<Cloth> cloths_;
};

}  // namespace

void inspect_served(const Job& job, const BatchPlan& plan, Findings& findings) {
  ServedCheck check(job, plan, findings);
  for (int panel = 0; panel < std::ssize(job.panels); ++panel) check.check(panel);
}

}  // namespace foldyard::inspection
