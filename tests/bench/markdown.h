#pragma once

// Tables of figures in Markdown, and their place in a document.

#include <string>
#include <vector>

namespace foldyard::bench {

std::string fixed(double value, int decimals);
std::string milliseconds(double seconds);
// "× 1.9"
std::string times(double ratio);
std::string percent(double share);

class Table {
 public:
  explicit Table(std::vector<std::string> heads) : heads_(std::move(heads)) {}
  void add(std::vector<std::string> row) { rows_.push_back(std::move(row)); }
  // The first column to the left, figures to the right.
  std::string text() const;

 private:
  std::vector<std::string> heads_;
  std::vector<std::vector<std::string>> rows_;
};

inline constexpr const char* kBegin = "<!-- tables: begin -->\n";
inline constexpr const char* kEnd = "<!-- tables: end -->\n";

// Puts the text between the marks of the file; false where it has none.
bool write_between_marks(const std::string& path, const std::string& text, const std::string& first = kBegin,
                         const std::string& last = kEnd);

}  // namespace foldyard::bench
