#pragma once

// Jobs to begin with: small, but whole, so that there is a plan at once.
//
// new_job: one roll of canvas, 10 m or 10 yd long, and one panel of 45 × 45 cm
// or 18 × 18 in. own_job: one roll of the given size and the panels of ready
// goods; its selvedge, thickness and shrinkage are canvas's until the maker
// puts their own. It is not checked: whoever takes it asks check_job.
//
// Example: own_job(Unit::cm, 1400 mm, 8 m, *goods_by_key("cushion")): one roll
// 140 cm wide and three panels.

#include <QLocale>

#include "goods/ready_goods.h"
#include "job/job.h"

namespace foldyard {

// Inches where the country measures so, else centimetres; Britain too sells
// cloth by the metre (common practice, no source).
Unit unit_of(const QLocale& locale);

Job new_job(Unit unit);
Job own_job(Unit unit, Length width, Length length, const ReadyGoods& goods);

}  // namespace foldyard
