#include "document/places.h"

#include <QStandardPaths>

namespace foldyard {

Places usual_places() {
  const auto in = [](QStandardPaths::StandardLocation kind, const char* name) {
    const QString folder = QStandardPaths::writableLocation(kind);
    return folder.isEmpty() ? QString() : folder + QLatin1String(name);
  };
  return {in(QStandardPaths::GenericConfigLocation, "/foldyard/settings.json"),
          in(QStandardPaths::GenericDataLocation, "/foldyard/recovery")};
}

}  // namespace foldyard
