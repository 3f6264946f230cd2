#pragma once

// A product: what is sewn and sold, piece by piece, and what one piece takes.
//
// panels: so many of a panel (index into Job::panels) go into one piece. All of
// them are of the piece's own cloth, but those that name cloths of their own
// (a lining): they are of any of these, and pieces of one product may differ in
// it. webbing: lengths of webbing, tape, cord or zip that go into one piece
// (index into Job::webbings).
// worth: what a piece is worth to the maker, more than zero. price: what one is sold
// for, if not for its worth; prices: of some cloths, the first that answers counts.
// seam: of all its seams together, for the thread. sewing: orders of operations, of
// which the first is used.
//
// Invariants, held by the reader: at least one panel, each named once; counts
// from 1; every cloth that is named is the cloth or a mark of some roll.
//
// Example: a carrier takes one body, two pockets and two handles of 55 cm:
//   panels {{0, 1}, {1, 2}}, webbing {{0, 55 cm, 2}}.

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "goods/sewing.h"
#include "measure/length.h"
#include "measure/worth.h"

namespace foldyard {

struct PanelCount {
  int panel = 0;
  std::int64_t count = 1;
  std::vector<std::string> from = {};  // cloths or marks; empty: the piece's own cloth
  bool operator==(const PanelCount&) const = default;
};

struct WebbingCut {
  int webbing = 0;
  Length length;
  std::int64_t count = 1;
  bool operator==(const WebbingCut&) const = default;
};

struct SalePrice {
  std::string of;  // a cloth or a mark
  Worth price;
  bool operator==(const SalePrice&) const = default;
};

struct Product {
  std::string name;
  std::vector<PanelCount> panels;
  std::vector<WebbingCut> webbing = {};
  Worth worth;
  std::optional<Worth> price = {};
  std::vector<SalePrice> prices = {};
  Length seam = {};
  std::int64_t labels = 0;
  std::vector<SewingOrder> sewing = {};
  bool operator==(const Product&) const = default;
};

}  // namespace foldyard
