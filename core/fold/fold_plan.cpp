#include "fold/fold_plan.h"

#include <charconv>
#include <string_view>

namespace foldyard {
namespace {

constexpr std::string_view kEndToEnd = "+end-to-end";
constexpr std::string_view kPlain = "-plain";
constexpr std::string_view kFan = "fan-";

bool has_two_positions(FoldKind kind) {
  return kind == FoldKind::both_edges_in || kind == FoldKind::fan || kind == FoldKind::quarters;
}

Words kind_name(const FoldWay& way) {
  switch (way.kind) {
    case FoldKind::open: return say("open");
    case FoldKind::selvedge_to_selvedge: return say("selvedge to selvedge");
    case FoldKind::off_centre: return say("off-centre");
    case FoldKind::both_edges_in: return say("both edges in");
    case FoldKind::fan: return way.legs == 3 ? say("in thirds") : say("fan of %1", way.legs);
    case FoldKind::quarters: return say("in quarters");
  }
  return {};
}

std::string kind_key(const FoldWay& way) {
  switch (way.kind) {
    case FoldKind::open: return "open";
    case FoldKind::selvedge_to_selvedge: return "selvedge-to-selvedge";
    case FoldKind::off_centre: return "off-centre";
    case FoldKind::both_edges_in: return "both-edges-in";
    case FoldKind::fan: return way.legs == 3 ? "thirds" : "fan-" + std::to_string(way.legs);
    case FoldKind::quarters: return "quarters";
  }
  return {};
}

bool take_suffix(std::string_view& text, std::string_view suffix) {
  if (!text.ends_with(suffix)) return false;
  text.remove_suffix(suffix.size());
  return true;
}

// The kinds that are not named by a number of legs of their own.
constexpr FoldWay kNamedKinds[] = {
    {FoldKind::open, 1, false, true},          {FoldKind::selvedge_to_selvedge, 2, false, true},
    {FoldKind::off_centre, 2, false, false},   {FoldKind::both_edges_in, 3, false, false},
    {FoldKind::fan, 3, false, false},          {FoldKind::quarters, 4, false, false},
};

bool fan_from_key(std::string_view key, FoldWay& way) {
  if (!key.starts_with(kFan)) return false;
  key.remove_prefix(kFan.size());
  way = {FoldKind::fan, 0, false, false};
  const auto [end, error] = std::from_chars(key.data(), key.data() + key.size(), way.legs);
  return error == std::errc() && end == key.data() + key.size() && way.legs > 4 &&
         way.legs <= kLongestFan;
}

bool kind_from_key(std::string_view key, FoldWay& way) {
  for (const FoldWay& named : kNamedKinds) {
    if (kind_key(named) == key) return way = named, true;
  }
  return fan_from_key(key, way);
}

void add_both_positions(std::vector<FoldWay>& ways, FoldWay way) {
  way.plain = true;
  ways.push_back(way);
  way.plain = false;
  ways.push_back(way);
}

}  // namespace

Words way_name(const FoldWay& way) {
  Words name = kind_name(way);
  if (way.plain && way.kind == FoldKind::both_edges_in) name = say("%1, edges meeting", name);
  else if (way.plain && has_two_positions(way.kind)) name = say("%1, equal legs", name);
  return way.end_to_end ? say("%1, end to end", name) : name;
}

std::string way_key(const FoldWay& way) {
  std::string key = kind_key(way);
  if (way.plain && has_two_positions(way.kind)) key += kPlain;
  if (way.end_to_end) key += kEndToEnd;
  return key;
}

bool way_from_key(const std::string& key, FoldWay& way) {
  std::string_view rest = key;
  const bool end_to_end = take_suffix(rest, kEndToEnd);
  const bool plain = take_suffix(rest, kPlain);
  FoldWay found;
  if (!kind_from_key(rest, found)) return false;
  found.end_to_end = end_to_end;
  found.plain = found.plain || plain;
  if (way_key(found) != key) return false;
  way = found;
  return true;
}

int folds_made(const FoldWay& way) {
  const int across = way.kind == FoldKind::quarters ? 2 : way.legs - 1;
  return across + (way.end_to_end ? 1 : 0);
}

int most_plies(const FoldWay& way) {
  const int across = way.kind == FoldKind::both_edges_in ? 2 : way.legs;
  return way.end_to_end ? across * 2 : across;
}

std::vector<FoldWay> all_ways(int longest_fan) {
  std::vector<FoldWay> ways(kNamedKinds, kNamedKinds + 3);
  add_both_positions(ways, {FoldKind::both_edges_in, 3});
  if (longest_fan >= 3) add_both_positions(ways, {FoldKind::fan, 3});
  add_both_positions(ways, {FoldKind::quarters, 4});
  for (int legs = 5; legs <= longest_fan; ++legs) add_both_positions(ways, {FoldKind::fan, legs});
  const std::vector<FoldWay> once = ways;
  for (FoldWay way : once) {
    way.end_to_end = true;
    ways.push_back(way);
  }
  return ways;
}

}  // namespace foldyard
