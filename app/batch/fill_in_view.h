#pragma once

// The view of a table that is filled in, and that of one that is read.

#include <QString>
#include <QTableView>

#include "batch/fill_in_model.h"
#include "batch/words_model.h"

namespace foldyard {

// name: what a screen reader says.
QTableView* fill_in_view(FillInModel* model, const QString& name);
QTableView* words_view(WordsModel* model, const QString& name);

}  // namespace foldyard
