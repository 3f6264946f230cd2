#pragma once

// A small palette of cloth colours to choose from, and any other colour besides.

#include <QButtonGroup>
#include <QPushButton>
#include <QToolButton>
#include <QWidget>

#include <functional>
#include <optional>
#include <vector>

namespace foldyard {

class ColourChoice : public QWidget {
  Q_OBJECT

 public:
  // Asks for a colour, "#rrggbb"; nothing where the person gives none.
  using Asker = std::function<std::optional<QString>(const QString& now)>;

  explicit ColourChoice(QWidget* parent = nullptr);

  void set_asker(Asker asker) { asker_ = std::move(asker); }
  void show_colour(const QString& colour);
  const QString& colour() const { return colour_; }
  const std::vector<QToolButton*>& swatches() const { return swatches_; }
  QPushButton* other() const { return other_; }

 signals:
  void chosen(const QString& colour);

 private:
  void add_swatch(const QString& name, const QString& value);
  void take(const QString& colour);
  void ask();

  Asker asker_;
  std::vector<QToolButton*> swatches_;
  QPushButton* other_;
  QString colour_;
};

}  // namespace foldyard
