#pragma once

// A hand that has only keys: it presses where the focus is, and works in the
// dialog that a key opens.

#include <gtest/gtest.h>

#include <QApplication>
#include <QTest>
#include <QTimer>
#include <QWidget>

#include <functional>

namespace foldyard::sample {

inline constexpr int kMostTabs = 80;
inline constexpr int kDialogMs = 10'000;  // until a dialog is there

class KeyHand {
 public:
  explicit KeyHand(QWidget& window) : window_(window) {}

  void press(int key, Qt::KeyboardModifiers with = Qt::NoModifier) {
    QTest::keyClick(focus(), static_cast<Qt::Key>(key), with);
  }
  void type(const QString& text) { QTest::keyClicks(focus(), text); }
  bool tab_to(const QWidget* widget) {
    for (int i = 0; i < kMostTabs && QApplication::focusWidget() != widget; ++i) press(Qt::Key_Tab);
    return QApplication::focusWidget() == widget;
  }

  // What is done in the dialog that `open` brings up, whether `open` waits for its
  // end or not. False where none came, or where it is still there afterwards; then
  // it is closed.
  bool in_dialog(const std::function<void()>& open, const std::function<void(QWidget*)>& act) {
    bool came = false, went = false;
    QTimer poll;
    QObject::connect(&poll, &QTimer::timeout, &window_, [&] {
      QWidget* dialog = QApplication::activeModalWidget();
      if (!dialog || !dialog->isVisible()) return;
      poll.stop();
      // Its window counts as active before the keys go to it.
      came = QTest::qWaitFor([dialog] { return dialog->isAncestorOf(QApplication::focusWidget()); }, kDialogMs);
      if (came) act(dialog);
      went = QTest::qWaitFor([] { return !QApplication::activeModalWidget(); }, kDialogMs);
      if (!went) dialog->close();
    });
    poll.start(10);
    open();
    const bool over = QTest::qWaitFor([&] { return went; }, 2 * kDialogMs);
    window_.activateWindow();
    return came && over && QTest::qWaitFor([this] { return window_.isAncestorOf(QApplication::focusWidget()); }, kDialogMs);
  }

 private:
  QWidget* focus() const {
    QWidget* focus = QApplication::focusWidget();
    return focus ? focus : &window_;
  }

  QWidget& window_;
};

}  // namespace foldyard::sample
