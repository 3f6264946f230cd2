#pragma once

// Makes every text 40 % longer, as another language often is.

#include <QApplication>
#include <QTranslator>

namespace foldyard::sample {

class LongerWords : public QTranslator {
 public:
  LongerWords() { QApplication::installTranslator(this); }
  ~LongerWords() override { QApplication::removeTranslator(this); }

  bool isEmpty() const override { return false; }
  QString translate(const char*, const char* source, const char*, int) const override {
    const QString words = QString::fromUtf8(source);
    return words + QString((2 * words.size() + 4) / 5, QLatin1Char('n'));
  }
};

}  // namespace foldyard::sample
