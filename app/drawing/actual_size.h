#pragma once

// Asks PDF viewers to print at actual size: the catalog of the document gets
// /ViewerPreferences << /PrintScaling /None >>, and the cross-reference table
// its new places.
//
// Only a plain document is changed: one table of one section, in which every
// used entry leads to its object, and a catalog without preferences. Any other
// bytes come back as they are, so nothing is lost by trying.
//
// Source: ISO 32000-1 (PDF 1.7), 7.5.4 Cross-Reference Table, 12.2 Viewer
// Preferences (from memory); checked in the tests by poppler.

#include <QByteArray>

namespace foldyard {

QByteArray at_actual_size(const QByteArray& pdf);

}  // namespace foldyard
