#pragma once

// A strip above the work with one sentence and buttons for what can be done.
//
// It waits without stopping the work. What is asked has a name: asked again
// under that name, the new sentence takes the place of the old one. One is
// shown at a time, the others wait behind it.

#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

#include <deque>
#include <functional>
#include <vector>

namespace foldyard {

class AskStrip : public QFrame {
  Q_OBJECT

 public:
  struct Choice {
    QString words;
    std::function<void()> act;  // may be empty: then the strip only goes
  };

  explicit AskStrip(QWidget* parent = nullptr);

  void ask(const QString& name, const QString& sentence, std::vector<Choice> choices);
  // A sentence to be read, with a button that sends it away.
  void tell(const QString& name, const QString& sentence);
  void take_back(const QString& name);

  // Of what is shown; empty where nothing is.
  QString sentence() const;
  const std::vector<QPushButton*>& buttons() const { return buttons_; }

 private:
  struct Question {
    QString name;
    QString sentence;
    std::vector<Choice> choices;
  };
  void show_first();
  void choose(int choice);

  std::deque<Question> questions_;
  QLabel* words_;
  QHBoxLayout* row_;
  std::vector<QPushButton*> buttons_;
};

}  // namespace foldyard
