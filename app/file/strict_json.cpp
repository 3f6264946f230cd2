#include "file/strict_json.h"

#include <QStringDecoder>
#include <cstdlib>
#include <set>
#include <string_view>

namespace foldyard {
namespace {

constexpr int kDeepest = 16;

bool is_utf8(const QByteArray& bytes) {
  QStringDecoder decoder(QStringDecoder::Utf8, QStringDecoder::Flag::Stateless);
  const QString decoded = decoder(bytes);
  return !decoder.hasError();
}

// A fault is thrown as its sentence: it stays within this file.
struct Fault {
  Words what;
};

class Scanner {
 public:
  explicit Scanner(std::string_view text) : text_(text) {}

  std::optional<Problem> run() {
    try {
      if (text_.starts_with("\xEF\xBB\xBF")) throw Fault{say("the file starts with a byte order mark")};
      skip_space();
      if (peek() != '{') throw Fault{say("a job file starts with {")};
      object(1);
      skip_space();
      if (at_ < text_.size()) throw Fault{say("something stands after the closing }")};
      return {};
    } catch (const Fault& fault) {
      return Problem{place(), fault.what, say("correct the file there")};
    }
  }

 private:
  Words place() const {
    const std::string_view before = text_.substr(0, at_);
    std::size_t line = 1;
    for (char c : before) line += c == '\n';
    const std::size_t start = before.rfind('\n') + 1;  // npos + 1 is 0
    return say("line %1, column %2", line, at_ - start + 1);
  }

  char peek() const { return at_ < text_.size() ? text_[at_] : '\0'; }

  void skip_space() {
    while (at_ < text_.size() && std::string_view(" \t\r\n").find(peek()) != std::string_view::npos) {
      ++at_;
    }
  }

  bool take(char c) {
    if (at_ >= text_.size() || text_[at_] != c) return false;
    ++at_;
    return true;
  }

  void expect(char c) {
    skip_space();
    if (!take(c)) throw Fault{say("a %1 is missing", std::string(1, c))};
  }

  void value(int depth) {
    skip_space();
    switch (peek()) {
      case '{': return object(depth);
      case '[': return array(depth);
      case '"': string(); return;
      case 't': return word("true");
      case 'f': return word("false");
      case 'n': return word("null");
      default: return number();
    }
  }

  void hold_depth(int depth) const {
    if (depth > kDeepest) throw Fault{say("the file is nested too deep")};
  }

  void object(int depth) {
    hold_depth(depth);
    expect('{');
    std::set<std::string_view> names;
    skip_space();
    if (take('}')) return;
    do {
      field(names, depth);
      skip_space();
    } while (take(','));
    expect('}');
  }

  void field(std::set<std::string_view>& names, int depth) {
    skip_space();
    const std::size_t start = at_;
    const std::string_view name = string();
    if (name.find('\\') != std::string_view::npos) {
      at_ = start;
      throw Fault{say("a field name holds a backslash")};
    }
    if (!names.insert(name).second) {
      at_ = start;
      throw Fault{say("the field \"%1\" stands twice", name)};
    }
    expect(':');
    value(depth + 1);
  }

  void array(int depth) {
    hold_depth(depth);
    expect('[');
    skip_space();
    if (take(']')) return;
    do {
      value(depth + 1);
      skip_space();
    } while (take(','));
    expect(']');
  }

  // The text between the quotes, escapes as they stand.
  std::string_view string() {
    if (!take('"')) throw Fault{say("a %1 is missing", "\"")};
    const std::size_t start = at_;
    while (!take('"')) {
      if (at_ >= text_.size()) throw Fault{say("a text is not closed by \"")};
      if (static_cast<unsigned char>(peek()) < 0x20) {
        throw Fault{say("a line break or control character stands in a text")};
      }
      if (take('\\')) escape();
      else ++at_;
    }
    return text_.substr(start, at_ - start - 1);
  }

  void escape() {
    if (take('u')) return surrogates(hex4());
    if (std::string_view("\"\\/bfnrt").find(peek()) == std::string_view::npos || !peek()) {
      throw Fault{say("an unknown escape follows the backslash")};
    }
    ++at_;
  }

  void surrogates(unsigned code) {
    if (code < 0xD800 || code > 0xDFFF) return;
    const bool paired = code < 0xDC00 && take('\\') && take('u');
    const unsigned second = paired ? hex4() : 0;
    if (second < 0xDC00 || second > 0xDFFF) throw Fault{say("half of a surrogate pair stands alone")};
  }

  unsigned hex4() {
    unsigned code = 0;
    for (int i = 0; i < 4; ++i, ++at_) {
      const std::size_t digit = std::string_view("0123456789abcdef").find(
          static_cast<char>(peek() >= 'A' && peek() <= 'F' ? peek() + 32 : peek()));
      if (digit == std::string_view::npos) throw Fault{say("four hexadecimal digits must follow \\u")};
      code = code * 16 + static_cast<unsigned>(digit);
    }
    return code;
  }

  void word(std::string_view expected) {
    if (text_.substr(at_, expected.size()) != expected) throw Fault{say("an unknown word")};
    at_ += expected.size();
  }

  bool is_digit() const { return peek() >= '0' && peek() <= '9'; }

  void digits() {
    if (!is_digit()) throw Fault{say("a value or a digit is missing")};
    while (is_digit()) ++at_;
  }

  void number() {
    take('-');
    if (!take('0')) digits();
    else if (is_digit()) throw Fault{say("a number starts with a needless 0")};
    if (take('.')) digits();
    if (take('e') || take('E')) {
      if (!take('+')) take('-');
      digits();
    }
  }

  std::string_view text_;
  std::size_t at_ = 0;
};

}  // namespace

std::optional<Problem> check_json(const QByteArray& bytes) {
  if (!is_utf8(bytes)) return Problem{"", say("the file is not UTF-8 text"), say("save it as UTF-8")};
  return Scanner(std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size()))).run();
}

}  // namespace foldyard
