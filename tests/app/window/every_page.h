#pragma once

// Every page and every dialog of the window, and whether their words are whole.

#include <gtest/gtest.h>

#include <QSize>
#include <QWidget>

#include <functional>
#include <memory>
#include <vector>

namespace foldyard::sample {

constexpr QSize kSmallScreen(1024, 740);  // 768 less a title bar

struct PageCase {
  const char* name;
  std::function<std::unique_ptr<QWidget>()> make;
};

std::vector<PageCase> pages();
std::vector<PageCase> dialogs();
// Without its spaces, as a test is named.
std::string name_of(const testing::TestParamInfo<PageCase>& page);

// Shows it as on a small screen; all that is written there has its room, and there is
// something written.
void expect_fits_a_small_screen(QWidget* window);

}  // namespace foldyard::sample
