#pragma once

// Everything the program writes to a disk, each behind the same two calls, for
// tests that let the disk fail.

#include <QByteArray>
#include <QString>

#include <functional>
#include <string>
#include <vector>

namespace foldyard::reliability {

enum class Said {
  done,      // the file is said to be there
  in_place,  // there, but a power cut could take it
  failed,    // said not to be saved
  lied,      // contradicts itself
};

struct Saver {
  std::string name;
  // Version 0 or 1 of what is saved, into a folder that is there.
  std::function<Said(const QString& folder, int version)> save;
  // Which version the folder holds whole: 0 or 1; kNone without a file, kBroken
  // with anything else.
  std::function<int(const QString& folder)> version_in;
};
inline constexpr int kNone = -1;
inline constexpr int kBroken = -2;

std::vector<Saver> savers();

}  // namespace foldyard::reliability
