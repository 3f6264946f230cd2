#pragma once

// What the drawings and the answers say of finished goods. Lengths are in the
// job's unit.

#include <QString>
#include <QStringList>

#include "job/goods_made.h"
#include "job/job.h"

namespace foldyard {

// "38 × 40 cm, 14 cm deep": width, height, depth; a strap's width and length.
QString finished_words(const Goods& goods, Unit unit);
// "21.28 litres"; empty for goods without depth.
QString litres_words(const Goods& goods);
// "one-piece bag, 38 × 40 cm, 14 cm deep, 21.28 litres".
QString goods_words(const Goods& goods, Unit unit);
// What to mark on the body: sentences on corners, handles and webbing; may be
// empty.
QStringList making_words(const Goods& goods, Unit unit);
// "for one: 1 × Oak, front and 2 × Oak, back".
QString needed_words(const Job& job, const GoodsMade& made);

}  // namespace foldyard
