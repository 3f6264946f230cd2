// Measures how long the cutting table takes to paint a frame, and how long the
// window does not answer while it works; prints the figures as Markdown. Built by name only, run by hand (docs/benchmarks.md).
//
//   foldyard_frames                with 100, 1024 and 10 000 panels on one length
//   foldyard_frames --write FILE   puts it between the marks of FILE, too

#include <QApplication>

#include <iostream>

#include "frames/sections.h"
#include "language/language.h"

int main(int count, char** words) {
  using namespace foldyard::frames;
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication app(count, words);
  foldyard::speak(QStringLiteral("en"), QLocale::c());
  QApplication::setStyle(QStringLiteral("Fusion"));
  const QStringList call = QApplication::arguments().mid(1);
  const bool writes = call.size() == 2 && call[0] == QLatin1String("--write");
  if (!call.isEmpty() && !writes) {
    std::cerr << "foldyard_frames [--write FILE]\n";
    return 2;
  }
  const std::string text = frames_section() + blocks_section();
  std::cout << text;
  if (!writes || foldyard::bench::write_between_marks(call[1].toStdString(), text, kBegin, kEnd)) return 0;
  std::cerr << "No marks to write between in " << call[1].toStdString() << "\n";
  return 1;
}
