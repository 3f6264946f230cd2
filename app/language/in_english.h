#pragma once

// Speaks English for as long as it lives, then what was spoken before: for
// answers that other programs read.
//
// Example: { const InEnglish english; text = csv_of(answer); }

#include <QLocale>

namespace foldyard {

class InEnglish {
 public:
  InEnglish();
  ~InEnglish();
  InEnglish(const InEnglish&) = delete;
  InEnglish& operator=(const InEnglish&) = delete;

 private:
  QLocale before_;
};

}  // namespace foldyard
