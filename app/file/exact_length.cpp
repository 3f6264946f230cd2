#include "file/exact_length.h"

#include "job/decimal.h"

namespace foldyard {

std::string exact_length(Length length, Unit preferred) {
  const std::string text = write_exact(length, preferred);
  if (!text.empty()) return text;
  // 1/320 mm is 0.003125 mm: 3125 in the sixth decimal.
  return write_decimal(length.units() * 3125, 6) + " mm";
}

}  // namespace foldyard
