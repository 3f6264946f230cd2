#include "window/ask_strip.h"

#include <QAccessible>

#include <algorithm>

#include "measure/index.h"

namespace foldyard {

AskStrip::AskStrip(QWidget* parent) : QFrame(parent), words_(new QLabel), row_(new QHBoxLayout(this)) {
  setProperty("strip", true);
  setAccessibleName(tr("Message"));
  row_->setContentsMargins(8, 3, 8, 3);
  row_->addWidget(words_, 1);
  words_->setWordWrap(true);
  words_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  hide();
}

void AskStrip::ask(const QString& name, const QString& sentence, std::vector<Choice> choices) {
  const auto old = std::find_if(questions_.begin(), questions_.end(), [&](const Question& q) { return q.name == name; });
  if (old != questions_.end()) *old = {name, sentence, std::move(choices)};
  else questions_.push_back({name, sentence, std::move(choices)});
  show_first();
}

void AskStrip::tell(const QString& name, const QString& sentence) { ask(name, sentence, {{tr("Close"), {}}}); }

void AskStrip::take_back(const QString& name) {
  const auto is_it = [&](const Question& question) { return question.name == name; };
  const auto from = std::remove_if(questions_.begin(), questions_.end(), is_it);
  if (from == questions_.end()) return;
  questions_.erase(from, questions_.end());
  show_first();
}

QString AskStrip::sentence() const { return questions_.empty() ? QString() : questions_.front().sentence; }

void AskStrip::show_first() {
  for (auto* button : buttons_) {
    row_->removeWidget(button);
    button->hide();
    button->deleteLater();
  }
  buttons_.clear();
  setVisible(!questions_.empty());
  if (questions_.empty()) return;
  words_->setText(sentence());
  setAccessibleDescription(sentence());
  const auto& choices = questions_.front().choices;
  QWidget* before = words_;  // the strip itself takes no focus and would not count
  for (int i = 0; i < static_cast<int>(choices.size()); ++i) {
    auto* button = new QPushButton(choices[ix(i)].words, this);
    connect(button, &QPushButton::clicked, this, [this, i] { choose(i); });
    row_->addWidget(button);
    buttons_.push_back(button);
    setTabOrder(before, button);
    before = button;
  }
  QAccessibleEvent alert(this, QAccessible::Alert);
  QAccessible::updateAccessibility(&alert);
}

void AskStrip::choose(int choice) {
  const auto act = questions_.front().choices[ix(choice)].act;
  questions_.pop_front();
  show_first();
  if (act) act();
}

}  // namespace foldyard
