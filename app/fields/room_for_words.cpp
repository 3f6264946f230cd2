#include "fields/room_for_words.h"

#include <QLayout>

namespace foldyard {

void grow_for_words(QWidget& window) {
  const int needed = window.layout()->totalHeightForWidth(window.width());
  if (needed > window.height()) window.resize(window.width(), needed);
}

}  // namespace foldyard
