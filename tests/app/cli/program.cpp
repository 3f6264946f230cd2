#include "program.h"

#include <gtest/gtest.h>

#include <QProcess>
#include <QProcessEnvironment>

namespace foldyard::test {
namespace {

constexpr int kMostMs = 120'000;

QProcessEnvironment environment(const char* locale) {
  QProcessEnvironment all = QProcessEnvironment::systemEnvironment();
  for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM", "LANGUAGE"})
    all.remove(QLatin1String(name));
  all.insert(QStringLiteral("LC_ALL"), QLatin1String(locale));
  return all;
}

}  // namespace

Reply run_foldyard(const QStringList& words, const QString& folder, const char* locale, const QString& output) {
  QProcess process;
  if (!output.isEmpty()) process.setStandardOutputFile(output);
  process.setProcessEnvironment(environment(locale));
  process.setWorkingDirectory(folder);
  process.start(QStringLiteral(FOLDYARD_BINARY_DIR "/app/foldyard"), words);
  EXPECT_TRUE(process.waitForFinished(kMostMs)) << words.join(' ').toStdString();
  return {process.exitStatus() == QProcess::NormalExit ? process.exitCode() : -1, process.readAllStandardOutput(),
          process.readAllStandardError()};
}

}  // namespace foldyard::test
