#include <cstdlib>

#include "inspect/checks.h"

namespace foldyard::inspection {

namespace {

// Walks the tree in the order of the cuts and notes them. It stops where the
// tree does not divide its cloth, so that it ends on any tree.
class Walk {
 public:
  Walk(const Subject& subject, Findings& findings)
      : s_(subject), findings_(findings), seen_(subject.pattern.tree.nodes.size(), false) {}

  bool run(const Rect& whole) {
    ahead_.push_back({0, whole});
    while (sound_ && !ahead_.empty()) step();
    if (sound_) inspect_unseen();
    return sound_;
  }

  const std::vector<Cut>& cuts() const { return cuts_; }

 private:
  struct Visit {
    int node;
    Rect rect;  // what the cut above leaves to it
  };

  void require(bool holds, int node, const char* what) {
    sound_ &= findings_.require(holds, s_.name, "node ", node, " of the cuts ", what);
  }

  void step() {
    const Visit visit = ahead_.back();
    ahead_.pop_back();
    const bool exists = 0 <= visit.node && visit.node < static_cast<int>(seen_.size());
    require(exists, visit.node, "does not exist");
    if (exists) enter(visit);
  }

  void enter(const Visit& visit) {
    const auto index = static_cast<std::size_t>(visit.node);
    const CutNode& node = s_.pattern.tree.nodes[index];
    require(!seen_[index], visit.node, "is reached twice");
    seen_[index] = true;
    require(node.rect == visit.rect, visit.node, "is not the rectangle that its cuts leave");
    if (sound_ && node.kind == NodeKind::cut) divide(node, visit.node);
  }

  void divide(const CutNode& node, int number) {
    const bool along = node.direction == Direction::along;
    const Span divided = along ? node.rect.across : node.rect.along;
    require(divided.from < node.at && node.at < divided.to, number, "is not cut inside");
    cuts_.push_back({node.direction, node.at, along ? node.rect.along : node.rect.across});
    Rect below = node.rect;
    Rect above = node.rect;
    (along ? below.across : below.along).to = node.at;
    (along ? above.across : above.along).from = node.at;
    ahead_.push_back({node.second, above});
    ahead_.push_back({node.first, below});
  }

  void inspect_unseen() {
    for (std::size_t i = 0; i < seen_.size(); ++i) {
      require(seen_[i], static_cast<int>(i), "is reached by no cut");
    }
  }

  const Subject& s_;
  Findings& findings_;
  std::vector<bool> seen_;
  std::vector<Visit> ahead_;
  std::vector<Cut> cuts_;
  bool sound_ = true;
};

void inspect_cut_list(const Subject& s, const std::vector<Cut>& found, Findings& findings) {
  const std::vector<Cut>& given = s.pattern.cuts;
  if (!findings.agree(given.size(), found.size(), s.name, "the number of cuts")) return;
  for (std::size_t i = 0; i < found.size(); ++i) {
    findings.require(given[i] == found[i], s.name, "cut ", i + 1,
                     " is not the one that comes then");
  }
}

void inspect_travel(const Subject& s, const std::vector<Cut>& cuts, Findings& findings) {
  Length travel;
  for (const Cut& cut : cuts) travel += cut.over.size();
  findings.agree(s.pattern.travel, travel, s.name, "the travel of the cutter");
}

// Whether the cloth that a crease joins lies in the span being divided.
bool holds_joined_cloth(Span divided, const Crease& crease) {
  return crease.cloth_after ? divided.from <= crease.at && crease.at < divided.to
                            : divided.from < crease.at && crease.at <= divided.to;
}

bool is_too_near(const CutNode& node, Span divided, const Crease& crease, Length trim) {
  const std::int64_t gap = std::abs((node.at - crease.at).units());
  return holds_joined_cloth(divided, crease) && 0 < gap && gap < trim.units();
}

// A selvedge is slit where it is, however near a crease that may be.
bool slits_selvedge(const Subject& s, const FoldedAxis& axis, Length at) {
  const Span usable = s.fabric.usable();
  return at == fold_place(axis, usable.from) || at == fold_place(axis, usable.to);
}

bool keeps_clear(const Subject& s, const FoldedCloth& cloth, const CutNode& node) {
  const bool along = node.direction == Direction::along;
  const FoldedAxis& axis = along ? cloth.across : cloth.along;
  if (along && slits_selvedge(s, axis, node.at)) return true;
  const Span divided = along ? node.rect.across : node.rect.along;
  for (const Crease& crease : axis.creases) {
    if (is_too_near(node, divided, crease, s.job.losses.fold_trim)) return false;
  }
  return true;
}

void inspect_clearance(const Subject& s, const FoldedCloth& cloth, Findings& findings) {
  for (const CutNode& node : s.pattern.tree.nodes) {
    if (node.kind != NodeKind::cut) continue;
    const char* way = node.direction == Direction::along ? "along" : "across";
    findings.require(keeps_clear(s, cloth, node), s.name, "the cut ", way, " at ", node.at,
                     " runs too near a fold edge");
  }
}

}  // namespace

bool inspect_tree(const Subject& s, const FoldedCloth& cloth, Findings& findings) {
  Walk walk(s, findings);
  if (!walk.run({{Length(), cloth.across.size}, {Length(), cloth.along.size}})) return false;
  inspect_cut_list(s, walk.cuts(), findings);
  inspect_travel(s, walk.cuts(), findings);
  inspect_clearance(s, cloth, findings);
  return true;
}

}  // namespace foldyard::inspection
