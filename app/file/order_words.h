#pragma once

// The words of a job file for the aims of an order, in the order of BatchAim.

#include <QStringList>

namespace foldyard {

QStringList aim_words();

}  // namespace foldyard
