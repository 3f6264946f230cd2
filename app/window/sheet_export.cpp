#include "window/sheet_export.h"

#include "printing/sheet_file.h"

namespace foldyard {

std::optional<Problem> export_sheet(const Answer& answer, int way, const QString& path) {
  return write_sheet(Sheet(answer.job, answer.comparison, way, SheetOptions{usual_paper()}), path);
}

}  // namespace foldyard
