// Runs tests that need widgets, without a display.

#include <gtest/gtest.h>

#include <QApplication>

#include "language/language.h"

int main(int argc, char** argv) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  testing::InitGoogleTest(&argc, argv);
  QApplication app(argc, argv);
  QApplication::setStyle(QStringLiteral("Fusion"));
  foldyard::speak(QStringLiteral("en"), QLocale::c());
  return RUN_ALL_TESTS();
}
