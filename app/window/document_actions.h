#pragma once

// What a window does with job files: new, open, recent, save, and what keeps a
// job from getting lost: the question before it is left, the side file for a
// crash (document/autosave.h), and the notice when another program or another
// window has the file.
//
// Questions wait in a strip above the work; only leaving unsaved changes stops
// the work with a dialog. A sentence for the foot of the window goes out by
// `told`, an empty one takes it back.

#include <QMenu>
#include <QObject>

#include "document/autosave.h"
#include "document/document.h"
#include "document/job_file.h"
#include "document/places.h"
#include "document/recovery.h"
#include "document/settings.h"
#include "language/spoken.h"
#include "window/ask_strip.h"

namespace foldyard {

class DocumentActions : public QObject {
  Q_OBJECT

 public:
  // window: the one the dialogs belong to.
  DocumentActions(QWidget* window, Document& document, const Places& places);

  // From New to Save as.
  void add_entries(QMenu* file);
  AskStrip* strip() const { return strip_; }
  Settings& settings() { return settings_; }

  // These two ask nobody; false, with the reason told, where it was not done.
  bool open_file(const QString& path);
  bool save_to(const QString& path);
  void open_demo();
  // Counts as changed: it was made here and is in no file.
  void begin(const Job& job);

  // At the start: gives back a job that a crash left, that of `file` or, where
  // it is empty, the last one. After one crash it is restored at once; after a
  // second one in a row the strip asks. True: there is a job in the window.
  bool restore(const QString& file);

  // Asks about unsaved changes; false: stay.
  bool may_leave();
  // The window is closed for good: nothing is left for the next start.
  void end() { autosave_.end(); }

 public slots:
  void open(const QString& path);
  // Whether another program has changed the file, another window has it open.
  void look_at_file();
  void begin_with_own_roll();

 signals:
  void told(const QString& sentence);
  // A job of the maker's own was begun.
  void begun();

 protected:
  // The window is looked at again.
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void choose_and_open();
  bool save();
  bool choose_and_save();
  void begin_new();
  void tell(const std::optional<Problem>& problem) { emit told(problem ? spoken(*problem) : QString()); }
  void fill_recent();
  void add_recent(const QString& path);
  void offer_left();
  void restore_next();

  bool restore_side(const LeftSide& left);
  void ask_again(const LeftSide& left);
  void keep_aside(const LeftSide& left, bool open_saved);
  void ask_about_change(FileChange change, bool is_saving);
  void read_again();
  void claim();

  QWidget* window_;
  Document& document_;
  Settings settings_;
  Recovery recovery_;
  Autosave autosave_;
  FileClaim claim_;
  AskStrip* strip_;
  QString told_elsewhere_;
  QMenu* recent_ = nullptr;
  QAction* restore_next_ = nullptr;
};

}  // namespace foldyard
