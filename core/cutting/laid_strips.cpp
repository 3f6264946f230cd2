#include "cutting/laid_strips.h"

#include <algorithm>
#include <tuple>

namespace foldyard {

void LaidStrips::add(Length from, Length size, bool from_far, Fill fill) {
  strips_.push_back({from_far ? Span{from - size, from} : Span{from, from + size}, from_far, std::move(fill)});
}

void LaidStrips::mirror() {
  for (Strip& s : strips_) {
    s.span = {whole_ - s.span.to, whole_ - s.span.from};
    s.flip = !s.flip;
  }
  std::reverse(strips_.begin(), strips_.end());
}

CutTree LaidStrips::tree(Length height, TreeBuilder builder) const {
  int node = builder.add({{Length(), whole_}, {Length(), height}});
  Length at;
  for (const Strip& s : strips_) {
    if (s.span.from > at) node = builder.cut(node, Direction::along, s.span.from).second;
    int strip = node;
    if (s.span.to < whole_) std::tie(strip, node) = builder.cut(node, Direction::along, s.span.to);
    s.fill(builder, strip, s.flip);
    at = s.span.to;
  }
  return builder.take_tree();
}

}  // namespace foldyard
