#pragma once

// What a batch plan says, as tables of words: one place for the command line, the
// tickets, the window and files for a spreadsheet. Lengths are in the job's unit.
//
// In the order a person needs them: what is made, what lacks, the lays in cutting
// order, the rolls, webbing and the boards it is wound round, what to buy, remnants, time
// and money, sittings. A table without rows is left out.

#include <QString>
#include <QStringList>
#include <vector>

#include "job/batch_money.h"
#include "job/batch_plan.h"
#include "job/batch_schedule.h"
#include "job/plan_webbing.h"

namespace foldyard {

// All that is known of a planned batch.
struct BatchAnswer {
  Job job;
  BatchPlan plan;
  std::vector<WebbingPlan> webbing;
  BatchMoney money;
  std::vector<Sitting> sittings;
};
BatchAnswer batch_answer(Job job, BatchPlan plan);

enum class BatchTableKind { made, lacking, lays, rolls, webbing, winding, to_buy, remnants, money, sittings };

struct BatchTable {
  BatchTableKind kind = BatchTableKind::made;
  QString heading;
  QStringList head;
  std::vector<QStringList> rows;
  QString note;  // below it; may be empty
};

std::vector<BatchTable> batch_tables(const BatchAnswer& answer);

// "40 × Carrier and 12 × Pouch from 9 rolls: 18 lengths in 12 lays, 95 min at the
// table. Cloth worth 143.20 is cut off. No plan can be better by more than 0.50,
// 0.3 % of that cloth."
QString batch_words(const BatchAnswer& answer);
QString batch_proof_words(const BatchAnswer& answer);
// "Moss 1 (2), Fern (1)": what lies in a lay, bottom to top, and how many lengths
// of each follow each other.
QString stack_words(const BatchAnswer& answer, const BatchLay& lay);
const Pattern& pattern_of(const BatchPlan& plan, const BatchLay& lay);

}  // namespace foldyard
