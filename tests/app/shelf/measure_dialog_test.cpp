#include "shelf/measure_dialog.h"

#include <gtest/gtest.h>

#include <QTest>

#include "cloth/length_estimate.h"
#include "support/job_sample.h"
#include "type_length.h"

namespace foldyard {
namespace {

const ByDiameters& diameters(const Job& job) { return std::get<ByDiameters>(*job.rolls[0].measured); }

TEST(MeasureDialog, SaysWhatTheFiguresMean) {
  MeasureDialog dialog(sample::job(), 0);
  const auto fields = dialog.shown_fields();
  ASSERT_EQ(fields.size(), 6u);
  const char* const texts[] = {"22 cm", "5 mm", "5 cm", "1 mm", "1 mm", "0.1 mm"};
  for (std::size_t i = 0; i < 6; ++i) sample::type(fields[i], QString::fromUtf8(texts[i]));
  // The example of length_estimate.h, outwards to whole centimetres.
  EXPECT_TRUE(dialog.result()->text().startsWith("31.14 to 42.09 m, most likely 36.05 m"))
      << dialog.result()->text().toStdString();
  EXPECT_TRUE(dialog.ok()->isEnabled());
  const Job job = dialog.measured_job();
  EXPECT_EQ(diameters(job).outer, (MeasuredLength{Length::mm(220), Length::mm(5)}));
  EXPECT_EQ(diameters(job).thickness, (MeasuredLength{Length::mm(1), Length::units(32)}));
  EXPECT_FALSE(job.rolls[0].is_found);
  EXPECT_EQ(job.rolls[0].length, estimate(*job.rolls[0].measured, Length::mm(1500)).value().least);
  EXPECT_EQ(job.rolls[1], sample::job().rolls[1]);
}

TEST(MeasureDialog, CannotBeAcceptedWhileTheFiguresSayNothing) {
  MeasureDialog dialog(sample::job(), 0);
  const auto fields = dialog.shown_fields();
  sample::type(fields[2], "25 cm");
  EXPECT_FALSE(dialog.ok()->isEnabled());
  EXPECT_TRUE(dialog.result()->text().contains("tube"));
  sample::type(fields[2], "wide");
  EXPECT_FALSE(dialog.ok()->isEnabled());
  sample::type(fields[2], "5 cm");
  EXPECT_TRUE(dialog.ok()->isEnabled());
}

TEST(MeasureDialog, MeasuresByTurnsAndByWeight) {
  MeasureDialog dialog(sample::job(), 0);
  dialog.ways()->setCurrentIndex(1);
  EXPECT_TRUE(std::holds_alternative<ByTurns>(*dialog.measured_job().rolls[0].measured));
  EXPECT_TRUE(dialog.ok()->isEnabled());
  EXPECT_EQ(dialog.shown_fields().size(), 4u);
  dialog.ways()->setCurrentIndex(2);
  // 20 kg less 0.5 kg over 1.5 × 400 g/m²: 32.5 m.
  EXPECT_TRUE(dialog.result()->text().contains("most likely 32.5 m")) << dialog.result()->text().toStdString();
}

Job found_job() {
  Job job = sample::job();
  job.rolls[0].measured = ByDiameters{{Length::mm(220), Length::mm(5)},
                                      {Length::mm(50), Length::mm(1)},
                                      {Length::mm(1), Length::units(32)}};
  job.rolls[0].is_found = true;
  job.rolls[0].length = Length::mm(33'900);
  return job;
}

// π (220² − 50²) / (4 × 33 900) = 1.0634 mm.
TEST(MeasureDialog, PutsAFigureRightByTheLengthFound) {
  MeasureDialog dialog(found_job(), 0);
  EXPECT_EQ(dialog.measured_job(), found_job());
  dialog.correct()->click();
  const Job job = dialog.measured_job();
  EXPECT_NEAR(diameters(job).thickness.value.in_mm(), 1.0634, 0.0017);
  EXPECT_EQ(job.rolls[0].length, Length::mm(33'900));
  EXPECT_TRUE(dialog.shown_fields()[4]->line()->text().startsWith("1.06"));
}

TEST(MeasureDialog, GoesBackToTheEstimateOfAFoundRoll) {
  MeasureDialog dialog(found_job(), 0);
  dialog.found()->setChecked(false);
  EXPECT_FALSE(dialog.measured_job().rolls[0].is_found);
  EXPECT_LT(dialog.measured_job().rolls[0].length, Length::mm(33'900));
}

}  // namespace
}  // namespace foldyard
