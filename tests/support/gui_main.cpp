// Runs tests that draw: a GUI application without a display must exist before
// the first font is asked for.

#include <gtest/gtest.h>

#include <QGuiApplication>

#include "language/language.h"

int main(int argc, char** argv) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  testing::InitGoogleTest(&argc, argv);
  const QGuiApplication app(argc, argv);
  foldyard::speak(QStringLiteral("en"), QLocale::c());
  return RUN_ALL_TESTS();
}
