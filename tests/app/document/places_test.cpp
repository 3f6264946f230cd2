#include "document/places.h"

#include <gtest/gtest.h>

#include <QStandardPaths>

namespace foldyard {
namespace {

// XDG Base Directory Specification 0.8: $XDG_CONFIG_HOME and $XDG_DATA_HOME.
TEST(PlacesTest, FollowTheBaseDirectories) {
  const auto config = qgetenv("XDG_CONFIG_HOME");
  const auto data = qgetenv("XDG_DATA_HOME");
  qputenv("XDG_CONFIG_HOME", "/somewhere/config");
  qputenv("XDG_DATA_HOME", "/somewhere/data");
  const Places places = usual_places();
  config.isNull() ? qunsetenv("XDG_CONFIG_HOME") : qputenv("XDG_CONFIG_HOME", config);
  data.isNull() ? qunsetenv("XDG_DATA_HOME") : qputenv("XDG_DATA_HOME", data);
  EXPECT_EQ(places.settings, "/somewhere/config/foldyard/settings.json");
  EXPECT_EQ(places.recovery, "/somewhere/data/foldyard/recovery");
}

}  // namespace
}  // namespace foldyard
