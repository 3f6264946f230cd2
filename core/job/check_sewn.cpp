#include "job/check_sewn.h"

#include <algorithm>

#include "goods/cut_size.h"
#include "job/limits.h"

namespace foldyard {
namespace {

Words text_of(Length length, Unit unit) {
  const std::string exact = write_exact(length, unit);
  return Words::number(exact.empty() ? write_length(length, unit) : exact);
}

Words size_text(const CutSize& size, Unit unit) {
  return say("%1 × %2", text_of(size.across, unit), text_of(size.along, unit));
}

std::optional<Problem> limit_problem(const Goods& goods, Unit unit) {
  const struct {
    const char* field;
    Length size;
    Length most;
    const char* in_words;
  } fields[] = {
      {"width", goods.width, limits::kMostFinished, "10 m"},
      {"height", goods.height, limits::kMostFinished, "10 m"},
      {"depth", goods.depth, limits::kMostFinished, "10 m"},
      {"seam", goods.seam, limits::kMostTurning, "50 cm"},
      {"hem", goods.hem, limits::kMostTurning, "50 cm"},
      {"overlap", goods.overlap, limits::kMostFinished, "10 m"},
      {"handle", goods.handle, limits::kMostFinished, "10 m"},
  };
  for (const auto& each : fields) {
    if (each.size <= each.most) continue;
    return Problem{each.field, say("%1 is too large", text_of(each.size, unit)), say("give at most %1", each.in_words)};
  }
  if (goods.handles <= limits::kMostHandles) return {};
  return Problem{"handles", say("%1 is too large", goods.handles), say("give at most %1", limits::kMostHandles)};
}

std::optional<Problem> in_sewn(std::optional<Problem> problem) {
  if (problem) problem->where = "sewn." + problem->where;
  return problem;
}

}  // namespace

std::optional<Problem> check_sewn(const Panel& panel, Unit unit) {
  if (auto problem = in_sewn(limit_problem(panel.sewn->goods, unit))) return problem;
  if (auto problem = in_sewn(goods_problem(*panel.sewn))) return problem;
  const CutSize size = cut_size(*panel.sewn).value();
  const CutSize given{panel.across, panel.along};
  if (given == size || given == CutSize{size.along, size.across}) return {};
  return Problem{"across",
                 say("%1 is not the %2 that the %3 needs", size_text(given, unit), size_text(size, unit),
                     kind_name(panel.sewn->goods.kind)),
                 say("leave across and along out, or correct them or sewn")};
}

}  // namespace foldyard
