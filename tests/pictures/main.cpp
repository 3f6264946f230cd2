// Makes the pictures of docs/pictures. Built by name only, run by docs/pictures/make.
//
//   foldyard_pictures FOLDER           every picture, and a list of their names
//   foldyard_pictures FOLDER NAME …    these

#include <QApplication>
#include <QTest>

#include <iostream>

#include "language/language.h"
#include "pictures/studio.h"
#include "window/cloth_style.h"

namespace {

using namespace foldyard::pictures;

bool take(const Scene& scene, const QString& folder) {
  QApplication::setPalette(foldyard::window_palette(foldyard::Shade::light));
  Studio studio;
  const auto widget = scene.make(studio);
  QTest::qWait(50);
  const bool done = widget->grab().save(folder + QLatin1Char('/') + QLatin1String(scene.name) + QLatin1String(".png"));
  QApplication::setLayoutDirection(Qt::LeftToRight);
  std::cout << scene.name << (done ? "" : " could not be written") << std::endl;
  return done;
}

}  // namespace

int main(int count, char** words) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication app(count, words);
  foldyard::speak(QStringLiteral("en"), QLocale::c());
  QApplication::setStyle(new foldyard::ClothStyle);
  const QStringList call = QApplication::arguments().mid(1);
  if (call.isEmpty()) {
    std::cerr << "foldyard_pictures FOLDER [NAME …]\n";
    return 2;
  }
  std::vector<Scene> scenes = window_scenes();
  for (Scene& scene : dialog_scenes()) scenes.push_back(std::move(scene));
  bool all = true;
  for (const Scene& scene : scenes)
    if (call.size() == 1 || call.mid(1).contains(QLatin1String(scene.name))) all = take(scene, call[0]) && all;
  return all ? 0 : 1;
}
