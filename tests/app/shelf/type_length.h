#pragma once

#include <QTest>

#include "fields/length_field.h"

namespace foldyard::sample {

// Types over what stands there.
inline void type(LengthField* field, const QString& text) {
  field->line()->selectAll();
  QTest::keyClicks(field->line(), text);
}

}  // namespace foldyard::sample
