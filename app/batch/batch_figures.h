#pragma once

// The figures that decide a batch, large: pieces of those asked for, what the cloth
// costs and how near that is to the least there can be, lays, minutes.

#include <QLabel>
#include <QWidget>

#include <array>

#include "drawing/batch_tables.h"
#include "measure/index.h"

namespace foldyard {

// "at most 0.3 % too much": of the worth of the cloth that is cut off, as the papers say
// it; "proved"; empty where not all is made that can be, and where the cloth costs nothing.
QString gap_words(const BatchAnswer& answer);

class BatchFigures : public QWidget {
  Q_OBJECT

 public:
  enum Index { pieces, cloth, lays, minutes, count };

  explicit BatchFigures(QWidget* parent = nullptr);

  // Null: no answer, no figures.
  void show_answer(const BatchAnswer* answer);
  QString text(int index) const { return values_[ix(index)]->text(); }
  QString words(int index) const { return words_[ix(index)]->text(); }

 private:
  std::array<QLabel*, count> values_{};
  std::array<QLabel*, count> words_{};
};

}  // namespace foldyard
