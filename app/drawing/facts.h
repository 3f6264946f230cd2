#pragma once

// What is special of a roll or a panel, in words: all that plain cloth and a
// plain panel have not. Empty where nothing is.
//
// Example: "one-way; repeat 64 cm along, the first from 10 cm; shrinks 3 %
// along; 2 flaws". Each is a sentence without its head and its full stop.

#include <QString>
#include <QStringList>

#include "job/job.h"

namespace foldyard {

// "31.2 to 42.1 m, 36 m most likely, by its diameters; plans count on 31.2 m".
QString measured_words(const Roll& roll, Unit unit);
QStringList roll_facts(const Roll& roll, Unit unit);
// "stain from 320 cm to 326 cm, 40 cm to 55 cm from the left edge".
QString flaw_words(const Flaw& flaw, const Fabric& fabric, Unit unit);
QStringList panel_facts(const Panel& panel);

}  // namespace foldyard
