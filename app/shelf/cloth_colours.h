#pragma once

// The colours of cloth that the shelf offers, each by its name, and the only
// place in this room that names any. They are for pictures only.

#include <QString>

#include <vector>

namespace foldyard {

struct ClothColour {
  QString name;
  QString value;  // "#6f7d4e", as a job has it
};

const std::vector<ClothColour>& cloth_colours();

}  // namespace foldyard
