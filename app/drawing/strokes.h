#pragma once

// The strokes and small signs all pictures share, in millimetres of paper.
//
//   outline     ink        the edge of a panel or of the cloth
//   fold line   chalk      long dashes: where the flat cloth is folded
//   fold edge   chalk      two lines closed by round ends: a turned edge
//   cut         blade      a full line with its number on a disc
//   repeat      ink        thin dots and dashes: a repeat of the pattern begins
//   selvedge    ink        a woven band of short stitches
//   stitches    thread     a running stitch, to set one thing off from another

#include <QLineF>
#include <QPen>
#include <QPointF>
#include <QRectF>
#include <QString>

class QPainter;

namespace foldyard {

QPen outline_pen(double width = 0.25);
QPen cut_pen();

inline constexpr double kDiscRadius = 1.9;

void draw_fold_line(QPainter& painter, const QLineF& line);
// Where a repeat of the pattern begins: thin dots and dashes.
void draw_repeat_line(QPainter& painter, const QLineF& line);
void draw_fold_edge(QPainter& painter, const QLineF& line);
void draw_stitches(QPainter& painter, const QLineF& line);
// The band lies on the left-hand side of the line, seen from its first point
// with y downwards; negative `depth` puts it on the other side.
void draw_selvedge(QPainter& painter, const QLineF& line, double depth);
// How wide a disc is with this number in it; its height is 2 × kDiscRadius.
double disc_width(const QString& number);
void draw_disc(QPainter& painter, const QPointF& centre, const QString& number);
// An arrow along the line, with a head at its end.
void draw_arrow(QPainter& painter, const QLineF& line, const QColor& colour, double width = 0.35);
// Which way the nap runs: an arrow from its foot upwards, no longer than `most`,
// or to the right, with its name.
void draw_nap_away(QPainter& painter, const QPointF& foot, double most);
void draw_nap_right(QPainter& painter, const QPointF& foot);
// A small blade: a triangle that stands on its point at `tip`.
void draw_blade(QPainter& painter, const QPointF& tip);

}  // namespace foldyard
