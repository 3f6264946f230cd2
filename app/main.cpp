#include <QFileInfo>

#include "cli/run_cli.h"
#include "window/run_window.h"

namespace {

bool has_display() {
  return !qEnvironmentVariableIsEmpty("DISPLAY") || !qEnvironmentVariableIsEmpty("WAYLAND_DISPLAY") ||
         !qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM");
}

// The window opens without arguments, or with a job file as the only one.
bool wants_window(int argc, char** argv) {
  return has_display() && (argc == 1 || (argc == 2 && QFileInfo(QString::fromLocal8Bit(argv[1])).isFile()));
}

}  // namespace

int main(int argc, char** argv) {
  return wants_window(argc, argv) ? foldyard::run_window(argc, argv) : foldyard::run_cli(argc, argv);
}
