#pragma once

// Worth: what a panel or a plan is worth, in 1/10000 of the maker's currency.
// The currency has no name here; worths are only added and compared.
// Example: Worth::whole(3) == Worth::parts(30000).

#include <compare>
#include <cstdint>

namespace foldyard {

class Worth {
 public:
  static constexpr std::int64_t kPartsPerWhole = 10000;
  constexpr Worth() = default;
  static constexpr Worth parts(std::int64_t n) { return Worth(n); }
  static constexpr Worth whole(std::int64_t n) { return Worth(n * kPartsPerWhole); }

  constexpr std::int64_t parts() const { return parts_; }
  constexpr double in_whole() const { return static_cast<double>(parts_) / kPartsPerWhole; }

  constexpr auto operator<=>(const Worth&) const = default;
  constexpr Worth& operator+=(Worth b) { parts_ += b.parts_; return *this; }
  friend constexpr Worth operator+(Worth a, Worth b) { return Worth(a.parts_ + b.parts_); }
  friend constexpr Worth operator-(Worth a, Worth b) { return Worth(a.parts_ - b.parts_); }
  friend constexpr Worth operator*(Worth a, std::int64_t n) { return Worth(a.parts_ * n); }

 private:
  constexpr explicit Worth(std::int64_t n) : parts_(n) {}
  std::int64_t parts_ = 0;
};

}  // namespace foldyard
