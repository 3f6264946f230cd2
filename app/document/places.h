#pragma once

// Where the program keeps what is its own, apart from the maker's job files.

#include <QString>

namespace foldyard {

// With an empty name nothing of that kind is kept.
struct Places {
  QString settings;  // a file
  QString recovery;  // a folder
};

// Those of the person who runs the program (XDG base directories):
// ~/.config/foldyard/settings.json and ~/.local/share/foldyard/recovery.
Places usual_places();

}  // namespace foldyard
