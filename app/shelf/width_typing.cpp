#include "shelf/width_typing.h"

#include "cloth/roll_edit.h"

namespace foldyard {

Roll WidthTyping::typed(Roll roll, Length width) {
  if (!before_) before_ = Before{roll.fabric.width, roll.flaws};
  roll.fabric.width = before_->width;
  roll.flaws = before_->flaws;
  return with_width(std::move(roll), width);
}

}  // namespace foldyard
