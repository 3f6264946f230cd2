#include "language/heading_words.h"

#include <QLocale>

namespace foldyard {

QString heading_words(const QString& heading) {
  return QLocale().language() == QLocale::German ? heading : heading.toLower();
}

}  // namespace foldyard
