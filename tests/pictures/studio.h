#pragma once

// Makes the states of the window that have a picture (docs/pictures), with the demo
// and settings of its own.

#include <QTemporaryDir>
#include <QWidget>

#include <functional>
#include <memory>
#include <vector>

#include "window/main_window.h"

namespace foldyard::pictures {

inline constexpr QSize kUsual(1480, 900);
inline constexpr QSize kSmall(1024, 740);  // of 1024 × 768, less a title bar

class Studio {
 public:
  Studio() = default;

  // The demo with its first roll planned and the first steps closed.
  std::unique_ptr<MainWindow> window(QSize size = kUsual, Compare compare = foldyard::compare);
  // As it is at the first start of all.
  std::unique_ptr<MainWindow> first_start();
  // As it is after two crashes in a row.
  std::unique_ptr<MainWindow> after_crashes();

 private:
  Places places();

  QTemporaryDir folder_;
  int number_ = 0;
};

// A state by its name, which is the name of its picture.
struct Scene {
  const char* name;
  std::function<std::unique_ptr<QWidget>(Studio&)> make;
};
std::vector<Scene> window_scenes();
std::vector<Scene> dialog_scenes();

// False after a minute.
bool waited_for(const std::function<bool()>& is_there);
bool waited_for_plan(MainWindow& window);
// Chooses a fold way by its key (fold/fold_plan.h).
void choose_way(MainWindow& window, const char* key);

}  // namespace foldyard::pictures
