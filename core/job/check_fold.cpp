#include "job/check_fold.h"

#include <algorithm>

#include "cutting/fold_layout.h"
#include "fold/fold_map.h"

namespace foldyard {

namespace {

class Reasons {
 public:
  Reasons(const FoldPlan& fold, const Fabric& fabric, Length depth, Unit unit)
      : fold_(fold), fabric_(fabric), depth_(depth), unit_(unit) {}

  Words first() const {
    for (const auto reason : {&Reasons::number, &Reasons::order, &Reasons::one_place, &Reasons::flaps,
                              &Reasons::legs, &Reasons::too_deep})
      if (Words why = (this->*reason)(); !why.empty()) return why;
    return {};
  }

 private:
  Words text(Length length) const { return Words::number(write_length(length, unit_)); }
  Words in_words(const std::vector<Length>& lines) const {
    Words words;
    for (const Length line : lines) words = words.empty() ? text(line) : say("%1, %2", words, text(line));
    return words;
  }

  Words number() const {
    const std::size_t wanted = static_cast<std::size_t>(fold_.way.legs) - 1;
    if (fold_.lines.size() == wanted) return {};
    return wanted == 1 ? say("1 fold line is needed, and %1 given", fold_.lines.size())
                       : say("%1 fold lines are needed, and %2 given", wanted, fold_.lines.size());
  }

  Words order() const {
    Length before;
    for (const Length line : fold_.lines) {
      if (line <= before || line >= fabric_.width)
        return say("the fold line at %1 does not lie between %2 and %3", text(line), text(before),
                   text(fabric_.width));
      before = line;
    }
    return {};
  }

  Words one_place() const {
    const bool is_plain = fold_.way.plain || fold_.way.kind == FoldKind::selvedge_to_selvedge;
    if (!is_plain || fold_.lines.empty()) return {};
    const auto layouts = layouts_of(fold_.way, fabric_, {Length::units(1), Length::units(1), depth_});
    const std::vector<Length> lines = layouts.front()->lines({}, {});
    return lines == fold_.lines ? Words() : say("it has one place, with the folds at %1", in_words(lines));
  }

  Words flaps() const {
    if (fold_.way.kind != FoldKind::both_edges_in) return {};
    const Length left = fold_.lines[0], right = fabric_.width - fold_.lines[1];
    const Length base = fold_.lines[1] - fold_.lines[0];
    if (left + right <= base) return {};
    return say("the flaps of %1 and %2 overlap on the %3 between the folds", text(left), text(right), text(base));
  }

  Words legs() const {
    if (fold_.way.kind != FoldKind::fan && fold_.way.kind != FoldKind::quarters) return {};
    const AxisMap map(fabric_.width, fold_.lines, levels_of(fold_.way));
    const Length inner = map.legs()[1].flat.size();
    for (std::size_t i = 0; i < map.legs().size(); ++i) {
      const Length size = map.legs()[i].flat.size();
      const bool is_end = i == 0 || i + 1 == map.legs().size();
      if (is_end && size > inner)
        return say("an end leg of %1 is longer than the inner legs of %2", text(size), text(inner));
      if (!is_end && size != inner)
        return say("the inner legs differ: %1 and %2", text(inner), text(size));
    }
    return {};
  }

  Words too_deep() const {
    const Length size = AxisMap(fabric_.width, fold_.lines, levels_of(fold_.way)).folded_size();
    if (size <= depth_) return {};
    return say("folded so it is %1 deep, and %2 fit the table and can be reached", text(size), text(depth_));
  }

  const FoldPlan& fold_;
  const Fabric& fabric_;
  Length depth_;
  Unit unit_;
};

}  // namespace

Words why_no_such_fold(const FoldPlan& fold, const Fabric& fabric, Length depth, Unit unit) {
  return Reasons(fold, fabric, depth, unit).first();
}

}  // namespace foldyard
