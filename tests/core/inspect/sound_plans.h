#pragma once

// Sound plans, built by hand for the inspector to pass, and then to be broken
// one rule at a time. All sizes here are whole millimetres.
//
// The job: cloth of 1500 mm with selvedges of 10, ends squared by 20, 10 lost
// with each length, 5 to keep from a fold edge, rests kept from 800 × 300 on;
// carriers of 450 × 900 that may turn and be cut on the fold, worth 3, and
// pouches of 200 × 300 that may not, worth 1.

#include <string>
#include <vector>

#include "job/job.h"
#include "job/plan.h"

namespace foldyard {

struct Sound {
  Job job;
  Plan plan;

  Roll& roll() { return job.rolls[0]; }
  Pattern& pattern() { return plan.patterns[0]; }
  CutNode& node(std::size_t i) { return pattern().tree.nodes[i]; }
};

// A plan of one length with no cut and no panel; folded sizes as given.
struct Bare {
  FoldWay way;
  std::vector<int> lines;  // mm
  std::vector<int> levels;
  int folded_across = 0;
  int plies = 1;
  int length = 900;
};
Sound bare(const Bare& fold);

// Divides a leaf; gives the two new nodes' indices in first and second.
void cut_along(Sound& sound, int node, int at);
void cut_across(Sound& sound, int node, int at);
// Takes a leaf as panels, one for each flat rectangle, on the fold where it
// says so.
struct Place {
  Rect flat;
  bool on_fold = false;
};
void take(Sound& sound, int node, int panel, bool turned, const std::vector<Place>& places);

// Derives from the tree and the panels what hangs on them, by ways of its own:
// cuts and travel; rests (all cloth between panels and selvedges, in a grid).
void list_cuts(Sound& sound);
void fill_rests(Sound& sound);
// Lays the lengths along the roll again and adds everything up again.
void settle(Sound& sound);

// Two lengths of 900 in one lay, selvedge to selvedge: the example worked out
// in inspect_plan_test.cpp. Nodes: 0 cut at 225, 1 taken on the fold, 2 cut at
// 675, 3 taken through both plies, 4 left.
Sound selvedge_to_selvedge();
Sound open();
Sound open_turned();
Sound off_centre();
Sound both_edges_in();
Sound thirds();
Sound quarters();
Sound fan_of_five();
Sound end_to_end();
Sound open_end_to_end();
// A selvedge of 10 turned in at 12 and slit at its own line, 2 from the fold; no
// rest is wide enough to keep.
Sound selvedge_slit();

// A row: what is done to which sound plan, and all that must be found.
struct Broken {
  const char* name;
  Sound (*make)();
  void (*damage)(Sound&);
  std::vector<std::string> expected;
};
void expect_found(const std::vector<Broken>& rows);

}  // namespace foldyard
