#include "cutting/strips.h"

namespace foldyard {

StripsAt::StripsAt(const FoldLayout& l, const SizedStrip& left_strip, const SizedStrip& right_strip)
    : left(left_strip), right(right_strip), whole(l.folded(left.size, right.size)),
      start(l.middle_start(left.size, right.size)), middle(l.middle(left.size, right.size)) {
  if (l.goes_under_left()) {
    start = left.slit_at;
    middle += left.size - left.slit_at;
  }
  if (l.goes_under_right()) middle += right.size - right.slit_at;
}

int StripsAt::slits(StripUse middle_use) const {
  const bool left_is_exact = left.use == StripUse::exact, right_is_exact = right.use == StripUse::exact;
  const bool meet = left_is_exact && right_is_exact && left.slit_at + right.slit_at == whole;
  int count = 0;
  if (left.use != StripUse::none && !(left_is_exact && left.slit_at == whole)) ++count;
  if (right.use != StripUse::none && !meet) ++count;
  if (middle_use == StripUse::none) return count;
  const Length end = start + middle - Length::units(middle_use == StripUse::exact ? 0 : 1);
  if (start > Length() && !(left_is_exact && start == left.slit_at)) ++count;
  if (end < whole && !(right_is_exact && end == whole - right.slit_at)) ++count;
  return count;
}

}  // namespace foldyard
