#include "document/new_job.h"

#include "job/defaults.h"
#include "job/start_job.h"
#include "language/spoken.h"
#include "language/tr.h"
#include "measure/write_length.h"

namespace foldyard {
namespace {

Job empty_job(Unit unit) {
  Job job = default_job();
  job.unit = unit;
  return job;
}

void add_canvas(Job& job, Length length) {
  const ClothKind& canvas = *cloth_kind("canvas");
  add_roll(job, canvas, length, spoken(canvas.name).toStdString());
}

}  // namespace

Unit unit_of(const QLocale& locale) {
  return locale.measurementSystem() == QLocale::ImperialUSSystem ? Unit::inch : Unit::cm;
}

Job new_job(Unit unit) {
  Job job = empty_job(unit);
  add_canvas(job, is_imperial(unit) ? Length::inches64(10 * 36 * 64) : Length::mm(10'000));
  const Length side = is_imperial(unit) ? Length::inches64(18 * 64) : Length::mm(450);
  Panel panel;
  panel.name = tr("Panel").toStdString();
  panel.across = side;
  panel.along = side;
  panel.worth = default_worth(panel.area());
  job.panels.push_back(panel);
  return job;
}

Job own_job(Unit unit, Length width, Length length, const ReadyGoods& goods) {
  Job job = empty_job(unit);
  add_canvas(job, length);
  job.rolls[0].name = tr("My roll").toStdString();
  job.rolls[0].fabric.width = width;
  add_goods(job, spoken(goods.name).toStdString(), goods.goods, goods.is_lined, spoken_text);
  return job;
}

}  // namespace foldyard
