#pragma once

// FirstFault: keeps the first of the faults that a check meets; all after it
// are without effect. Says how a value breaks its limit, in lengths of the
// job's unit.
//
// Example: length("rolls[0].width", {}, kRollWidth) keeps
// "rolls[0].width: 0 cm is too small; give 1 cm to 10 m."

#include <optional>

#include "job/limits.h"
#include "measure/duration.h"
#include "measure/result.h"
#include "measure/write_length.h"

namespace foldyard {

// An entry of a list as a place: "rolls[2]".
inline std::string at(const std::string& list, std::size_t i) { return list + "[" + std::to_string(i) + "]"; }

class FirstFault {
 public:
  explicit FirstFault(Unit unit) : unit_(unit) {}

  const std::optional<Problem>& fault() const { return first_; }
  void keep(std::string where, Words what, Words next);

  void length(const std::string& where, Length value, const LengthLimit& limit);
  // value: in the last of `places` decimals.
  void number(const std::string& where, std::int64_t value, NumberLimit limit, int places);
  void step(const std::string& where, Duration value);
  // Of a list: 1 to `most` entries.
  void count(const std::string& where, std::size_t value, std::size_t most);
  void no_more(const std::string& where, std::size_t value, std::size_t most);
  void name(const std::string& where, const std::string& text, bool needed);

  // Exact where the job's unit can be.
  Words text_of(Length length) const;

 private:
  void keep_range(const std::string& where, const Words& value, bool too_small, const Words& range);

  Unit unit_;
  std::optional<Problem> first_;
};

}  // namespace foldyard
