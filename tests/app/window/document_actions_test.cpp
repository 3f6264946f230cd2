#include "window/document_actions.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QFile>
#include <QMenu>
#include <QMessageBox>
#include <QTemporaryDir>
#include <QTest>

#include <memory>

#include "document/new_job.h"
#include "file/read_job.h"
#include "file/write_job.h"
#include "sample.h"
#include "window/own_roll_dialog.h"

namespace foldyard {
namespace {

Job named(const QString& name) {
  Job job = sample::job();
  job.name = name.toStdString();
  return job;
}

// A window without its views; one that is reset without end() crashed.
struct Bench {
  explicit Bench(const QString& folder)
      : actions(&window, document, {folder + "/foldyard.ini", folder + "/recovery"}) {
    actions.add_entries(&menu);
    QObject::connect(&actions, &DocumentActions::told, [this](const QString& sentence) { told = sentence; });
  }
  Document document;
  QWidget window;
  DocumentActions actions;
  QMenu menu;
  QString told;
};

class DocumentActionsTest : public testing::Test {
 protected:
  DocumentActionsTest() { start(); }

  void start() {
    bench.reset();
    bench = std::make_unique<Bench>(folder.path());
  }
  DocumentActions& actions() { return bench->actions; }
  Document& document() { return bench->document; }
  QString sentence() { return actions().strip()->sentence(); }

  QString file(const QString& name, const QString& job) {
    QFile made(folder.filePath(name));
    EXPECT_TRUE(made.open(QIODevice::WriteOnly));
    made.write(write_job(named(job)));
    return made.fileName();
  }
  void edit(const QString& name) { ASSERT_FALSE(document().edit(named(name), "rename")); }
  void edit_and_crash(const QString& name) {
    for (int i = 0; i <= Autosave::kEdits; ++i) edit(QStringLiteral("%1 %2").arg(name).arg(i));
    edit(name);
    for (int i = 0; i < Autosave::kEdits; ++i) {
      document().history().undo();
      document().history().redo();
    }
    start();
  }
  // Presses the button of the strip that begins so.
  void choose(const QString& words) {
    for (auto* button : actions().strip()->buttons())
      if (button->text().startsWith(words)) return QTest::keyClick(button, Qt::Key_Space);
    FAIL() << words.toStdString() << " is no choice of: " << sentence().toStdString();
  }
  QAction* entry(QMenu* menu, const QString& words) {
    for (auto* action : menu->actions())
      if (action->text().remove('&').contains(words)) return action;
    return nullptr;
  }
  QMenu* recent() {
    auto* menu = entry(&bench->menu, "Open recent")->menu();
    emit menu->aboutToShow();
    return menu;
  }
  // Answers the question about unsaved changes, once.
  void answer(const QString& words) {
    QTimer::singleShot(0, [words] {
      auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
      ASSERT_NE(box, nullptr);
      for (auto* button : box->buttons())
        if (button->text().remove('&').startsWith(words)) button->click();
    });
  }

  QTemporaryDir folder;
  std::unique_ptr<Bench> bench;
};

TEST_F(DocumentActionsTest, NewIsASmallJobThatNeedsNoSaving) {
  entry(&bench->menu, "New")->trigger();
  EXPECT_EQ(document().job(), new_job(unit_of(QLocale())));
  EXPECT_TRUE(document().path().isEmpty());
  EXPECT_FALSE(document().is_changed());
}

TEST_F(DocumentActionsTest, AsksBeforeUnsavedChangesAreLeft) {
  document().open(named("Mine"), file("mine.json", "Mine"));
  edit("Edited");
  answer("Go on");
  entry(&bench->menu, "New")->trigger();
  EXPECT_EQ(document().job().name, "Edited");
  answer("Save");
  entry(&bench->menu, "New")->trigger();
  EXPECT_NE(document().job().name, "Edited");
  EXPECT_EQ(load_job(folder.filePath("mine.json"))->name, "Edited");
}

TEST_F(DocumentActionsTest, RecentFilesCanBeOpenedAgain) {
  ASSERT_TRUE(actions().open_file(file("a.json", "A")));
  ASSERT_TRUE(actions().open_file(file("b & c.json", "B")));
  ASSERT_GE(recent()->actions().size(), 2);
  EXPECT_TRUE(recent()->actions()[0]->text().contains("b && c.json"));
  recent()->actions()[1]->trigger();
  EXPECT_EQ(document().job().name, "A");
}

TEST_F(DocumentActionsTest, AMissingRecentFileIsMarkedAndTakenOff) {
  ASSERT_TRUE(actions().open_file(file("a.json", "A")));
  QFile::remove(folder.filePath("a.json"));
  auto* missing = entry(recent(), "Missing");
  ASSERT_NE(missing, nullptr);
  missing->trigger();
  EXPECT_TRUE(actions().settings().recent().isEmpty());
  EXPECT_FALSE(recent()->actions()[0]->isEnabled());
}

TEST_F(DocumentActionsTest, TheListOfRecentFilesIsCleared) {
  ASSERT_TRUE(actions().open_file(file("a.json", "A")));
  entry(recent(), "Clear")->trigger();
  EXPECT_TRUE(actions().settings().recent().isEmpty());
}

TEST_F(DocumentActionsTest, AnOwnJobIsUnsavedFromTheStart) {
  int begun = 0;
  QObject::connect(&actions(), &DocumentActions::begun, [&] { ++begun; });
  QTimer::singleShot(0, [] {
    auto* dialog = qobject_cast<OwnRollDialog*>(QApplication::activeModalWidget());
    ASSERT_NE(dialog, nullptr);
    dialog->confirmer()->click();
  });
  actions().begin_with_own_roll();
  EXPECT_EQ(begun, 1);
  EXPECT_TRUE(document().is_changed());
  EXPECT_EQ(document().job().rolls.size(), 1u);
  EXPECT_FALSE(document().history().canUndo());
}

TEST_F(DocumentActionsTest, OneCrashIsRestoredByItself) {
  const QString path = file("a.json", "Saved");
  ASSERT_TRUE(actions().open_file(path));
  edit_and_crash("Unsaved");
  EXPECT_TRUE(actions().restore({}));
  EXPECT_EQ(document().job().name, "Unsaved");
  EXPECT_EQ(document().path(), path);
  EXPECT_TRUE(document().is_changed());
  EXPECT_FALSE(document().history().canUndo());
  EXPECT_TRUE(sentence().contains("a.json")) << sentence().toStdString();
  EXPECT_EQ(load_job(path)->name, "Saved");
  choose("Close");
  EXPECT_TRUE(sentence().isEmpty());
}

TEST_F(DocumentActionsTest, ASecondCrashInARowAsks) {
  ASSERT_TRUE(actions().open_file(file("a.json", "Saved")));
  edit_and_crash("Unsaved");
  EXPECT_TRUE(actions().restore({}));
  start();
  EXPECT_FALSE(actions().restore({}));
  EXPECT_NE(document().job().name, "Unsaved");
  EXPECT_EQ(actions().strip()->buttons().size(), 3u);
  choose("Restore");
  EXPECT_EQ(document().job().name, "Unsaved");
  EXPECT_TRUE(document().is_changed());
}

TEST_F(DocumentActionsTest, TheSavedFileIsOpenedInsteadAndTheOtherKeptAside) {
  ASSERT_TRUE(actions().open_file(file("a.json", "Saved")));
  edit_and_crash("Unsaved");
  EXPECT_TRUE(actions().restore({}));
  start();
  EXPECT_FALSE(actions().restore({}));
  choose("Open the saved file");
  EXPECT_EQ(document().job().name, "Saved");
  const auto recent = actions().settings().recent();
  ASSERT_EQ(recent.size(), 2);
  EXPECT_EQ(load_job(recent[1])->name, "Unsaved");
  start();
  EXPECT_FALSE(actions().restore({}));
  EXPECT_TRUE(sentence().isEmpty());
}

TEST_F(DocumentActionsTest, WhatIsKeptAsideCanBeOpened) {
  document().open(named("No file"), {});
  edit_and_crash("Unsaved");
  EXPECT_TRUE(actions().restore({}));
  start();
  EXPECT_FALSE(actions().restore({}));
  EXPECT_EQ(actions().strip()->buttons().size(), 2u);  // there is no saved file
  choose("Keep it aside");
  EXPECT_EQ(load_job(actions().settings().recent().value(0))->name, "Unsaved");
  EXPECT_TRUE(sentence().contains(actions().settings().recent().value(0)));
}

TEST_F(DocumentActionsTest, NothingComesBackAfterAGoodEnd) {
  document().open(named("Mine"), {});
  for (int i = 0; i < 30; ++i) edit(QString::number(i));
  actions().end();
  start();
  EXPECT_FALSE(actions().restore({}));
  EXPECT_TRUE(sentence().isEmpty());
}

TEST_F(DocumentActionsTest, AFileNamedAtTheStartGetsOnlyItsOwnUnsavedJob) {
  const QString path = file("a.json", "Saved");
  ASSERT_TRUE(actions().open_file(path));
  edit_and_crash("Unsaved");
  EXPECT_FALSE(actions().restore(file("b.json", "Other")));
  emit bench->menu.aboutToShow();
  EXPECT_TRUE(entry(&bench->menu, "Restore another")->isVisible());
  EXPECT_TRUE(actions().restore(path));
  emit bench->menu.aboutToShow();
  EXPECT_FALSE(entry(&bench->menu, "Restore another")->isVisible());
}

TEST_F(DocumentActionsTest, ADamagedSideFileIsToldAndHindersNothing) {
  ASSERT_TRUE(QDir().mkpath(folder.filePath("recovery")));
  QFile damaged(folder.filePath("recovery/x.side"));
  ASSERT_TRUE(damaged.open(QIODevice::WriteOnly));
  damaged.write("half");
  damaged.close();
  EXPECT_FALSE(actions().restore({}));
  EXPECT_TRUE(sentence().contains("x.damaged")) << sentence().toStdString();
  EXPECT_TRUE(actions().open_file(file("a.json", "A")));
}

TEST_F(DocumentActionsTest, AChangeByAnotherProgramIsNeverOverwrittenInSilence) {
  const QString path = file("a.json", "Saved");
  ASSERT_TRUE(actions().open_file(path));
  edit("Mine");
  file("a.json", "By another");
  entry(&bench->menu, "Save")->trigger();
  EXPECT_EQ(load_job(path)->name, "By another");
  EXPECT_TRUE(document().is_changed());
  EXPECT_TRUE(sentence().contains("a.json"));
  choose("Save mine");
  EXPECT_EQ(load_job(path)->name, "Mine");
  EXPECT_FALSE(document().is_changed());
  EXPECT_TRUE(sentence().isEmpty());
}

TEST_F(DocumentActionsTest, TheChangedFileIsReadAgainAndThatCanBeUndone) {
  ASSERT_TRUE(actions().open_file(file("a.json", "Saved")));
  edit("Mine");
  file("a.json", "By another");
  actions().look_at_file();
  actions().look_at_file();
  choose("Read it again");
  EXPECT_EQ(document().job().name, "By another");
  EXPECT_TRUE(sentence().isEmpty());
  document().history().undo();
  EXPECT_EQ(document().job().name, "Mine");
}

TEST_F(DocumentActionsTest, KeepingMineCountsAsUnsavedAndIsAskedOnce) {
  ASSERT_TRUE(actions().open_file(file("a.json", "Saved")));
  file("a.json", "By another");
  QEvent activated(QEvent::WindowActivate);
  QCoreApplication::sendEvent(&bench->window, &activated);
  choose("Keep mine");
  EXPECT_TRUE(document().is_changed());
  actions().look_at_file();
  EXPECT_TRUE(sentence().isEmpty());
}

TEST_F(DocumentActionsTest, ARemovedFileIsTold) {
  const QString path = file("a.json", "Saved");
  ASSERT_TRUE(actions().open_file(path));
  QFile::remove(path);
  actions().look_at_file();
  EXPECT_TRUE(sentence().contains("no longer there")) << sentence().toStdString();
  choose("Keep mine");
  EXPECT_TRUE(document().is_changed());
  entry(&bench->menu, "Save")->trigger();
  EXPECT_EQ(load_job(path)->name, "Saved");
}

TEST_F(DocumentActionsTest, ASecondWindowWithTheSameFileIsTold) {
  const QString path = file("a.json", "Saved");
  ASSERT_TRUE(actions().open_file(path));
  Bench other(folder.path());
  ASSERT_TRUE(other.actions.open_file(path));
  EXPECT_TRUE(sentence().isEmpty());
  EXPECT_TRUE(other.actions.strip()->sentence().contains("another window"));
  document().open(named("Else"), {});
  other.actions.look_at_file();
  EXPECT_TRUE(other.actions.strip()->sentence().isEmpty());
}

TEST_F(DocumentActionsTest, TwoWindowsKeepTheirOwnJobs) {
  document().open(named("One"), {});
  Bench other(folder.path());
  other.document.open(named("Other"), {});
  for (int i = 0; i < 25; ++i) {
    edit(QStringLiteral("One %1").arg(i));
    other.document.edit(named(QStringLiteral("Other %1").arg(i)), "rename");
  }
  EXPECT_FALSE(other.actions.restore({}));
  actions().end();
  start();
  EXPECT_FALSE(actions().restore({}));  // the other window lives
}

}  // namespace
}  // namespace foldyard
