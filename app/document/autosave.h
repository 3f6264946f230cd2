#pragma once

// Autosave: keeps a document's side file up to date.
//
// After a change the side file is written when 15 s have gone by or 20 edits
// were made, whichever is first. It goes when the document has nothing unsaved:
// it was saved, everything was undone, or another job was opened.

#include <QObject>
#include <QTimer>

#include "document/document.h"
#include "document/recovery.h"

namespace foldyard {

class Autosave : public QObject {
  Q_OBJECT

 public:
  static constexpr int kMs = 15'000;
  static constexpr int kEdits = 20;

  // Both must live longer than this.
  Autosave(Document& document, Recovery& recovery, QObject* parent = nullptr);

  void keep_now();
  // The job is not wanted any more: nothing is left for the next start.
  void end();
  const QTimer& timer() const { return timer_; }

 signals:
  // The side file could not be written; told once until it can be again.
  void failed(const QString& sentence);

 private:
  void count_edit();
  void follow_file();
  void rest();

  Document& document_;
  Recovery& recovery_;
  QTimer timer_;
  int edits_ = 0;
  bool has_failed_ = false;
};

}  // namespace foldyard
