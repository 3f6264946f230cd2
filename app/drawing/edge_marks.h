#pragma once

// Marks along an edge: at each place a tick and its words, the words pushed
// apart just so far that none covers another, with a leader back to the tick.
//
// spread: places as close to the wished ones as can be, in order, at least
// `gap` apart, within [low, high] if they fit there at all (else evenly over
// it). REQUIRES wished ascending.
//
// Example: spread({10, 11}, 4, 0, 100) is {8.5, 12.5}.

#include <QLineF>
#include <QString>
#include <vector>

class QPainter;

namespace foldyard {

struct EdgeMark {
  double at = 0;  // paper millimetres along the edge
  QString words;
};

std::vector<double> spread(std::vector<double> wished, double gap, double low, double high);

// Sorted by place, those at one place joined once.
std::vector<EdgeMark> merged(std::vector<EdgeMark> marks);

// Below (or above) a level edge at height y; words stand level where they all
// fit side by side, else they run upwards. depth: the room for ticks and words.
void draw_marks_below(QPainter& painter, const QLineF& edge, double depth,
                      const std::vector<EdgeMark>& marks);
void draw_marks_above(QPainter& painter, const QLineF& edge, double depth,
                      const std::vector<EdgeMark>& marks);
// Left of an upright edge at x; words stand level, right-aligned.
void draw_marks_left(QPainter& painter, const QLineF& edge, double depth,
                     const std::vector<EdgeMark>& marks);

// The room that the words need: standing upwards, or left of an edge.
double marks_depth(const std::vector<EdgeMark>& marks);
// The room above or below an edge of this width, words level where they can.
double marks_height(double width, const std::vector<EdgeMark>& marks);

}  // namespace foldyard
