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

  std::string first() const {
    for (const auto reason : {&Reasons::number, &Reasons::order, &Reasons::one_place, &Reasons::flaps,
                              &Reasons::legs, &Reasons::too_deep})
      if (std::string why = (this->*reason)(); !why.empty()) return why;
    return {};
  }

 private:
  std::string text(Length length) const { return write_length(length, unit_); }
  std::string in_words(const std::vector<Length>& lines) const {
    std::string words;
    for (const Length line : lines) words += (words.empty() ? "" : ", ") + text(line);
    return words;
  }

  std::string number() const {
    const std::size_t wanted = static_cast<std::size_t>(fold_.way.legs) - 1;
    if (fold_.lines.size() == wanted) return {};
    return std::to_string(wanted) + (wanted == 1 ? " fold line is" : " fold lines are") + " needed, and " +
           std::to_string(fold_.lines.size()) + " given";
  }

  std::string order() const {
    Length before;
    for (const Length line : fold_.lines) {
      if (line <= before || line >= fabric_.width)
        return "the fold line at " + text(line) + " does not lie between " + text(before) + " and " +
               text(fabric_.width);
      before = line;
    }
    return {};
  }

  std::string one_place() const {
    const bool is_plain = fold_.way.plain || fold_.way.kind == FoldKind::selvedge_to_selvedge;
    if (!is_plain || fold_.lines.empty()) return {};
    const auto layouts = layouts_of(fold_.way, fabric_, {Length::units(1), Length::units(1), depth_});
    const std::vector<Length> lines = layouts.front()->lines({}, {});
    return lines == fold_.lines ? "" : "it has one place, with the folds at " + in_words(lines);
  }

  std::string flaps() const {
    if (fold_.way.kind != FoldKind::both_edges_in) return {};
    const Length left = fold_.lines[0], right = fabric_.width - fold_.lines[1];
    const Length base = fold_.lines[1] - fold_.lines[0];
    if (left + right <= base) return {};
    return "the flaps of " + text(left) + " and " + text(right) + " overlap on the " + text(base) +
           " between the folds";
  }

  std::string legs() const {
    if (fold_.way.kind != FoldKind::fan && fold_.way.kind != FoldKind::quarters) return {};
    const AxisMap map(fabric_.width, fold_.lines, levels_of(fold_.way));
    const Length inner = map.legs()[1].flat.size();
    for (std::size_t i = 0; i < map.legs().size(); ++i) {
      const Length size = map.legs()[i].flat.size();
      const bool is_end = i == 0 || i + 1 == map.legs().size();
      if (is_end && size > inner)
        return "an end leg of " + text(size) + " is longer than the inner legs of " + text(inner);
      if (!is_end && size != inner)
        return "the inner legs differ: " + text(inner) + " and " + text(size);
    }
    return {};
  }

  std::string too_deep() const {
    const Length size = AxisMap(fabric_.width, fold_.lines, levels_of(fold_.way)).folded_size();
    if (size <= depth_) return {};
    return "folded so it is " + text(size) + " deep, and " + text(depth_) +
           " fit the table and can be reached";
  }

  const FoldPlan& fold_;
  const Fabric& fabric_;
  Length depth_;
  Unit unit_;
};

}  // namespace

std::string why_no_such_fold(const FoldPlan& fold, const Fabric& fabric, Length depth, Unit unit) {
  return Reasons(fold, fabric, depth, unit).first();
}

}  // namespace foldyard
