// The values of the cutting room are told apart by each member.
#include <gtest/gtest.h>

#include "core/support/told_apart.h"
#include "cutting/shape.h"

namespace foldyard {
namespace {

TEST(ValuesOfACutTree, AreToldApartByEachMember) {
  expect_told_apart(CutNode(), &CutNode::rect, &CutNode::kind, &CutNode::direction, &CutNode::at, &CutNode::first,
                    &CutNode::second, &CutNode::panel, &CutNode::turned);
  expect_told_apart(CutTree(), &CutTree::nodes);
  expect_told_apart(SizeOnCloth(), &SizeOnCloth::across, &SizeOnCloth::along);
}

}  // namespace
}  // namespace foldyard
