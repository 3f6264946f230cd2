#include "window/job_drop.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QDragEnterEvent>
#include <QFile>
#include <QGraphicsView>
#include <QLineEdit>
#include <QTemporaryDir>
#include <QUrl>
#include <QVBoxLayout>

namespace foldyard {
namespace {

class JobDropTest : public testing::Test {
 protected:
  JobDropTest() {
    auto* column = new QVBoxLayout(&window);
    column->addWidget(line = new QLineEdit);
    column->addWidget(view = new QGraphicsView);
    QObject::connect(&drop, &JobDrop::dropped, [this](const QString& path) { dropped.append(path); });
  }

  QString file(const char* name) {
    QFile made(folder.filePath(QString::fromLatin1(name)));
    EXPECT_TRUE(made.open(QIODevice::WriteOnly));
    return made.fileName();
  }
  // Whether it was taken: enter, move and drop as a window system sends them.
  bool drop_on(QWidget* target, const QMimeData& data) {
    QDragEnterEvent enter(QPoint(3, 3), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(target, &enter);
    if (!enter.isAccepted()) return false;
    QDragMoveEvent move(QPoint(3, 3), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(target, &move);
    if (!move.isAccepted()) return false;
    QDropEvent end(QPointF(3, 3), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(target, &end);
    return end.isAccepted();
  }
  bool drop_files(QWidget* target, const QStringList& paths) {
    QMimeData data;
    QList<QUrl> urls;
    for (const QString& path : paths) urls.append(QUrl::fromLocalFile(path));
    data.setUrls(urls);
    data.setText(paths.join(' '));  // file managers send the names as text too
    return drop_on(target, data);
  }

  QTemporaryDir folder;
  QWidget window;
  JobDrop drop{&window};
  QLineEdit* line;
  QGraphicsView* view;
  QStringList dropped;
};

TEST_F(JobDropTest, TakesAJobFileAnywhere) {
  const QString job = file("a b.json");
  for (QWidget* target : {&window, static_cast<QWidget*>(line), view->viewport()}) EXPECT_TRUE(drop_files(target, {job}));
  EXPECT_EQ(dropped, (QStringList{job, job, job}));
  EXPECT_TRUE(line->text().isEmpty());
}

TEST_F(JobDropTest, RefusesAllOtherFilesEvenInFields) {
  for (const QStringList& paths : {QStringList{file("a.pdf")}, QStringList{folder.path()}, QStringList{folder.filePath("none.json")},
                                   QStringList{file("a.json"), file("b.json")}})
    for (QWidget* target : {&window, static_cast<QWidget*>(line), view->viewport()}) EXPECT_FALSE(drop_files(target, paths));
  QMimeData web;
  web.setUrls({QUrl("https://example.org/a.json")});
  EXPECT_FALSE(drop_on(&window, web));
  EXPECT_TRUE(dropped.isEmpty());
  EXPECT_TRUE(line->text().isEmpty());
}

TEST_F(JobDropTest, LeavesAloneWhatCarriesNoFiles) {
  QMimeData text;
  text.setText("45 cm");
  EXPECT_TRUE(drop_on(line, text));
  EXPECT_EQ(line->text(), "45 cm");
  EXPECT_FALSE(drop_on(&window, text));
}

TEST_F(JobDropTest, LeavesOtherWindowsAlone) {
  QLineEdit other;
  EXPECT_TRUE(drop_files(&other, {file("a.json")}));  // as text, by the field itself
  EXPECT_TRUE(dropped.isEmpty());
}

}  // namespace
}  // namespace foldyard
