#pragma once

// TreeBuilder: writes the choices of cut tables out as a CutTree.
//
// Rectangles are given where they lie on the folded cloth. In a table with a
// joint across the fold edge is the rectangle's left rim; `flip` builds the
// mirror image instead (fold edge on the right). REQUIRES the rectangle to be
// exactly of the size of the table's place.

#include "cutting/cut_table.h"
#include "cutting/cut_tree.h"

namespace foldyard {

class TreeBuilder {
 public:
  // shapes: those of the tables that fill is called with; none if it is not.
  explicit TreeBuilder(const std::vector<Shape>* shapes = nullptr) : shapes_(shapes) {}

  // Adds a node for rect, left for the caller to fill, and gives its index.
  int add(Rect rect);
  // Makes `node` a cut; gives the indices of the lower and the upper part.
  std::pair<int, int> cut(int node, Direction direction, Length at);
  void take(int node, int panel, bool turned);
  const Rect& rect(int node) const { return tree_.nodes[node].rect; }
  // Fills `node` with the best cutting of place (x, y) of the table.
  void fill(int node, const CutTable& table, int x, int y, bool flip);
  CutTree take_tree() { return std::move(tree_); }

 private:
  int cut_keeping(int node, Direction direction, Length keep, bool flip, int* other);
  void fill_remainder(int node, const CutTable& table, const Remainder& rest, bool flip);
  void part(int node, const CutTable& table, const Choice& choice, int x, int y, bool flip);
  void trim(int node, const CutTable& table, Move move, int x, int y, bool flip);

  const std::vector<Shape>* shapes_;
  CutTree tree_;
};

}  // namespace foldyard
