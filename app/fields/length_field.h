#pragma once

// A field for one length, with the reason below it when the text is refused.
//
// While it is typed, each text that is a length is given out at once; one that
// is not is marked and changes nothing. Leaving the field rewrites a good text
// in the job's unit and keeps a refused one with its reason. Escape takes back
// the value that the field had when it was entered.

#include <QLabel>
#include <QLineEdit>
#include <QTimer>
#include <QWidget>

#include "measure/length.h"
#include "measure/write_length.h"

namespace foldyard {

class LengthField : public QWidget {
  Q_OBJECT

 public:
  // name: what a screen reader says.
  explicit LengthField(const QString& name, QWidget* parent = nullptr);
  ~LengthField() override;

  // The job's value. Text that is being typed and means the same stays.
  void show_length(Length length, Unit unit);
  void refuse(const QString& reason);

  QLineEdit* line() const { return line_; }
  QString reason() const { return reason_text_; }

 signals:
  void typed(foldyard::Length length);
  void left();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void read();
  void leave();
  void take_back();
  void escape();
  void set_reason(const QString& reason);
  void show_reason();

  QLineEdit* line_;
  QLabel* reason_;
  QTimer calm_;
  QString reason_text_;
  Length length_;
  Length entered_;
  Unit unit_ = Unit::cm;
};

}  // namespace foldyard
