#pragma once

// Job: all input of a plan as one value. An edit makes a new Job.
//
// Losses: squaring is cut off each end of a roll; allowance is cut off with
// each length (both its ends together). fold_trim: a cut along a fold edge
// keeps at least this from it. keep: a rest at least this size both ways is a
// remnant, a smaller one an offcut.
//
// What stands here for a batch is what core/job/defaults.h says. products,
// webbings, order: what a batch is planned for; a job without them is
// one of rolls and panels alone.
//
// Invariants, held by the reader (see docs/job-file.md for the limits): at
// least one roll and one panel; names unique and not empty; all sizes > 0 but
// selvedge, squaring, allowance ≥ 0; worths > 0.

#include <string>
#include <vector>

#include "cloth/roll.h"
#include "costing/pace.h"
#include "goods/notions.h"
#include "goods/panel.h"
#include "goods/product.h"
#include "goods/webbing.h"
#include "job/order.h"
#include "lay/cutter.h"
#include "measure/write_length.h"

namespace foldyard {

struct Losses {
  Length squaring;
  Length allowance;
  Length fold_trim;
  Length keep_across;
  Length keep_along;
  bool operator==(const Losses&) const = default;
};

struct Job {
  std::string name;
  Unit unit = Unit::cm;  // for text and pictures only
  std::vector<Roll> rolls;
  std::vector<Panel> panels;
  Table table;
  Cutter cutter;
  Losses losses;
  Pace pace;
  int longest_fan = 6;
  std::vector<Product> products = {};
  std::vector<Webbing> webbings = {};
  Order order = {};
  std::vector<CutPanels> on_hand = {};
  std::vector<CutRecord> history = {};
  Notions notions = {28, Length::mm(500'000), Worth::whole(4), Worth::parts(2'000)};
  Duration sitting = Duration::seconds(10'800);  // how long one sews in one go
  Worth cloth_price = Worth::whole(10);  // of a square metre, where a roll has none
  bool operator==(const Job&) const = default;
};

}  // namespace foldyard
