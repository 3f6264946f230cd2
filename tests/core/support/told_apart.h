// That a value equals its copy and none that differs in one member: an edit is told by
// comparing jobs, and the same plan on every machine by comparing plans.
#pragma once

#include <gtest/gtest.h>

#include <concepts>
#include <optional>
#include <string>
#include <type_traits>
#include <vector>

#include "job/job.h"
#include "job/yield_range.h"

namespace foldyard {

inline bool another(bool value) { return !value; }
inline std::string another(const std::string& text) { return text + "x"; }
inline Words another(const Words& words) { return words.english() + "x"; }

template <class Whole>
  requires std::integral<Whole>
Whole another(Whole value) {
  return value + 1;
}
template <class Enum>
  requires std::is_enum_v<Enum>
Enum another(Enum value) {
  return static_cast<Enum>(static_cast<int>(value) + 1);
}
template <class Measure>
  requires requires { Measure::units(1); } || requires { Measure::parts(1); } || requires { Measure::ticks(1); } ||
           requires { Measure::square_units(1); }
Measure another(Measure value) {
  if constexpr (requires { Measure::units(1); }) return value + Measure::units(1);
  else if constexpr (requires { Measure::parts(1); }) return value + Measure::parts(1);
  else if constexpr (requires { Measure::ticks(1); }) return value + Measure::ticks(1);
  else return value + Measure::square_units(1);
}
template <class Value>
std::vector<Value> another(std::vector<Value> list) {
  list.emplace_back();
  return list;
}
template <class Value>
std::optional<Value> another(std::optional<Value> value) {
  return value ? std::nullopt : std::optional<Value>(std::in_place);
}

inline Span another(Span span) { return {span.from, another(span.to)}; }
inline Rect another(Rect rect) { return {rect.across, another(rect.along)}; }
inline RollMeasure another(const RollMeasure& measure) {
  return std::holds_alternative<ByTurns>(measure) ? RollMeasure(ByWeight{}) : RollMeasure(ByTurns{});
}

// Of a value in a value: one that differs in its first member.
template <class Value, class Member>
Value with_another(Value value, Member Value::* member) {
  value.*member = another(value.*member);
  return value;
}
inline FoldWay another(const FoldWay& way) { return with_another(way, &FoldWay::legs); }
inline FoldPlan another(const FoldPlan& fold) { return with_another(fold, &FoldPlan::lines); }
inline CutTree another(const CutTree& tree) { return with_another(tree, &CutTree::nodes); }
inline Proof another(const Proof& proof) { return with_another(proof, &Proof::proved); }
inline Plan another(const Plan& plan) { return with_another(plan, &Plan::roll); }
inline Repeat another(const Repeat& repeat) { return with_another(repeat, &Repeat::along); }
inline Shrinkage another(const Shrinkage& shrinkage) { return with_another(shrinkage, &Shrinkage::along); }
inline Fabric another(const Fabric& fabric) { return with_another(fabric, &Fabric::width); }
inline MeasuredLength another(const MeasuredLength& length) { return with_another(length, &MeasuredLength::value); }
inline MeasuredCount another(const MeasuredCount& count) { return with_another(count, &MeasuredCount::value); }
inline LengthEstimate another(const LengthEstimate& length) { return with_another(length, &LengthEstimate::likely); }
inline LengthSteps another(const LengthSteps& steps) { return with_another(steps, &LengthSteps::steps); }
inline Goods another(const Goods& goods) { return with_another(goods, &Goods::width); }
inline Sewn another(const Sewn& sewn) { return with_another(sewn, &Sewn::lining); }
inline Order another(const Order& order) { return with_another(order, &Order::lines); }
inline Table another(const Table& table) { return with_another(table, &Table::length); }
inline Cutter another(const Cutter& cutter) { return with_another(cutter, &Cutter::height); }
inline Losses another(const Losses& losses) { return with_another(losses, &Losses::squaring); }
inline Pace another(const Pace& pace) { return with_another(pace, &Pace::unroll); }
inline Notions another(const Notions& notions) { return with_another(notions, &Notions::reel); }

template <class Value, class... Member>
void expect_told_apart(const Value& value, Member Value::*... members) {
  EXPECT_EQ(value, Value(value));
  const bool are_equal[] = {value == with_another(value, members)...};
  for (std::size_t m = 0; m < std::size(are_equal); ++m) EXPECT_FALSE(are_equal[m]) << "member " << m;
}

}  // namespace foldyard
