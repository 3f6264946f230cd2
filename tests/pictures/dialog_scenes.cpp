#include "batch/cut_dialog.h"
#include "pictures/studio.h"
#include "printing/print_dialog.h"
#include "shelf/measure_dialog.h"
#include "shelf/roll_dialog.h"
#include "window/own_roll_dialog.h"
#include "window/workshop_dialog.h"

namespace foldyard::pictures {
namespace {

template <class Dialog>
std::unique_ptr<QWidget> shown(std::unique_ptr<Dialog> dialog, QSize size = {}) {
  if (size.isValid()) dialog->resize(size);
  dialog->show();
  return dialog;
}

Job demo(Studio& studio) { return studio.window()->document().job(); }

std::unique_ptr<PrintDialog> print_dialog(Studio& studio) {
  auto window = studio.window();
  waited_for_plan(*window);
  const AnswerPtr answer = window->by_hand()->shown_answer();
  const int way = window->way_table()->ways()->way_index(window->way_table()->row());
  return std::make_unique<PrintDialog>(PrintSource{answer->job, answer->comparison, way}, Paper::a4);
}

std::unique_ptr<QWidget> template_pages(Studio& studio) {
  auto dialog = print_dialog(studio);
  dialog->form()->templates()->item(0)->setCheckState(Qt::Checked);
  return shown(std::move(dialog));
}

std::unique_ptr<QWidget> cut_dialog(Studio& studio) {
  auto window = studio.window();
  waited_for_plan(*window);
  window->show_batch(true);
  waited_for([&] { return window->batch_page()->view()->answer() && !window->batch_page()->planner().is_busy(); });
  return shown(std::make_unique<CutDialog>(window->batch_page()->view()->answer()));
}

}  // namespace

std::vector<Scene> dialog_scenes() {
  return {{"own-roll", [](Studio&) { return shown(std::make_unique<OwnRollDialog>(Unit::cm)); }},
          {"roll-dialog", [](Studio& studio) { return shown(std::make_unique<RollDialog>(demo(studio), 3)); }},
          {"measured", [](Studio& studio) { return shown(std::make_unique<MeasureDialog>(demo(studio), 4)); }},
          {"workshop", [](Studio& studio) { return shown(std::make_unique<WorkshopDialog>(demo(studio))); }},
          {"cut-dialog", cut_dialog},
          {"print-preview", [](Studio& studio) { return shown(print_dialog(studio)); }},
          {"print-templates", template_pages}};
}

}  // namespace foldyard::pictures
