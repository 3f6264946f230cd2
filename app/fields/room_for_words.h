#pragma once

// Words that wrap take more lines than a window knows of when it is made.

#include <QWidget>

namespace foldyard {

// Makes a window with a layout as high as its words need at its width; never lower.
// To be called after each layout request.
void grow_for_words(QWidget& window);

}  // namespace foldyard
