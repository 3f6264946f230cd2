#pragma once

// What is measured, each section as Markdown. quick: fewer and shorter runs.

#include <string>

namespace foldyard::bench {

std::string comparison_section(bool quick);  // all fold ways of one roll, piece by piece
std::string moving_section(bool quick);      // a fold line moved by hand on a kept desk
std::string growth_section(bool quick);      // as rolls, goods, widths and plies grow
std::string limited_section(bool quick);     // published instances with limited copies
std::string limited_rolls_section(bool quick);  // a roll with limited copies
std::string unlimited_section(bool quick);   // published instances without limits
std::string batch_section(bool quick);       // an order over many rolls
std::string cancel_section(bool quick);      // how soon a stopped search answers
std::string solver_section(bool quick);      // side by side with a general solver

}  // namespace foldyard::bench
