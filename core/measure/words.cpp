#include "measure/words.h"

namespace foldyard {
namespace {

// The part that stands at the place after a percent sign; null where there is none.
const Words* part_at(char place, const std::vector<Words>& parts) {
  if (place == 'n') return parts.empty() ? nullptr : &parts.front();
  const std::size_t index = static_cast<std::size_t>(place - '1');
  return place >= '1' && place <= '9' && index < parts.size() ? &parts[index] : nullptr;
}

std::string filled(std::string_view pattern, const std::vector<Words>& parts) {
  std::string text;
  for (std::size_t i = 0; i < pattern.size(); ++i) {
    const bool is_place = pattern[i] == '%' && i + 1 < pattern.size();
    const Words* part = is_place ? part_at(pattern[i + 1], parts) : nullptr;
    if (part) text += part->english(), ++i;
    else text += pattern[i];
  }
  return text;
}

}  // namespace

Words Words::number(std::string text) {
  Words words(std::move(text));
  words.is_number_ = true;
  return words;
}

Words Words::made(const char* pattern, std::vector<Words> parts) {
  Words words(filled(pattern, parts));
  words.made_ = std::make_shared<const Made>(Made{pattern, std::move(parts)});
  return words;
}

const std::vector<Words>& Words::parts() const {
  static const std::vector<Words> kNone;
  return made_ ? made_->parts : kNone;
}

}  // namespace foldyard
