#include "bench/markdown.h"

#include <cstdio>
#include <fstream>
#include <sstream>

namespace foldyard::bench {

std::string fixed(double value, int decimals) {
  char text[64];
  std::snprintf(text, sizeof text, "%.*f", decimals, value);
  return text;
}

std::string milliseconds(double seconds) {
  const double ms = seconds * 1000;
  return fixed(ms, ms < 10 ? 1 : 0);
}

std::string times(double ratio) { return "× " + fixed(ratio, ratio < 10 ? 1 : 0); }

std::string percent(double share) { return fixed(share * 100, 0) + " %"; }

namespace {

std::string line(const std::vector<std::string>& cells) {
  std::string text = "|";
  for (const std::string& cell : cells) text += " " + cell + " |";
  return text + "\n";
}

}  // namespace

std::string Table::text() const {
  std::string text = line(heads_) + "|---|";
  for (std::size_t i = 1; i < heads_.size(); ++i) text += "---:|";
  text += "\n";
  for (const auto& row : rows_) text += line(row);
  return text + "\n";
}

bool write_between_marks(const std::string& path, const std::string& text, const std::string& first,
                         const std::string& last) {
  std::ifstream file(path);
  std::ostringstream content;
  content << file.rdbuf();
  std::string page = content.str();
  const auto begin = page.find(first), end = page.find(last);
  if (!file || begin == std::string::npos || end == std::string::npos || end < begin) return false;
  const auto start = begin + first.size();
  page.replace(start, end - start, "\n" + text);
  return static_cast<bool>(std::ofstream(path, std::ios::trunc) << page);
}

}  // namespace foldyard::bench
