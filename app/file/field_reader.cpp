#include "file/field_reader.h"

#include <algorithm>
#include <charconv>
#include <limits>

#include "job/decimal.h"
#include "measure/read_length.h"

namespace foldyard {
namespace {

Words kind_of(const QJsonValue& value) {
  switch (value.type()) {
    case QJsonValue::Null: return say("null");
    case QJsonValue::Bool: return say("true or false");
    case QJsonValue::Double: return say("a number");
    case QJsonValue::String: return say("a text");
    case QJsonValue::Array: return say("a list");
    default: return say("an object");
  }
}

// The shortest text that reads back to the number, without an exponent.
std::string number_text(double number) {
  char buffer[400];
  const auto end =
      std::to_chars(buffer, buffer + sizeof buffer, number, std::chars_format::fixed).ptr;
  return std::string(buffer, end);
}

std::string shown(const std::string& text) {
  if (text.size() <= 40) return text;
  std::size_t end = 12;
  while ((text[end] & 0xC0) == 0x80) --end;  // not within a character
  return text.substr(0, end) + "…";
}

bool breaks_a_line(unsigned char c) { return c < ' ' || c == 127; }

// A refusal is one line, whatever it quotes.
Words one_line(const Words& words) {
  std::string text = words;
  if (std::none_of(text.begin(), text.end(), breaks_a_line)) return words;
  std::replace_if(text.begin(), text.end(), breaks_a_line, ' ');
  return text;
}

Words joined(const QStringList& words) { return words.join(QStringLiteral(", ")).toStdString(); }

}  // namespace

FieldReader::FieldReader(QJsonObject object, std::string path, std::optional<Problem>& fault)
    : object_(std::move(object)), path_(std::move(path)), fault_(&fault) {}

bool FieldReader::is_absent(const char* key) const { return fault_->has_value() || !has(key); }

void FieldReader::refuse(const char* key, const Words& what, const Words& next) {
  if (!*fault_) *fault_ = Problem{one_line(path_ + key), one_line(what), next};
}

void FieldReader::only(const QStringList& known) {
  for (const QString& key : object_.keys()) {
    if (known.contains(key)) continue;
    refuse(key.left(40).toUtf8().constData(), say("no such field is known"),
           say("use one of %1, or leave it out", joined(known)));
  }
}

void FieldReader::need(const char* key, const char* next) {
  if (!has(key)) need(key, say(next));
}

void FieldReader::need(const char* key, const Words& next) {
  if (!has(key)) refuse(key, say("the field is missing"), next);
}

std::string FieldReader::text(const char* key, const std::string& fallback) {
  if (is_absent(key)) return fallback;
  if (value(key).isString()) return value(key).toString().toStdString();
  refuse(key, say("%1 is not a text", kind_of(value(key))), say("write it between quotes"));
  return fallback;
}

bool FieldReader::flag(const char* key, bool fallback) {
  if (is_absent(key) || value(key).isBool()) return value(key).toBool(fallback);
  refuse(key, say("%1 is neither true nor false", kind_of(value(key))), say("write true or false"));
  return fallback;
}

Length FieldReader::length(const char* key, Length fallback) {
  if (is_absent(key)) return fallback;
  if (!value(key).isString()) {
    refuse(key, say("%1 is not a length", kind_of(value(key))),
           say("write it as text with its unit, like \"45 cm\""));
    return fallback;
  }
  const Result<Length> read = read_length(value(key).toString().toStdString());
  if (read) return *read;
  const Words& next = read.problem().next;
  refuse(key, read.problem().what, next.empty() ? say("write it like \"45 cm\" or \"17 3/4 in\"") : next);
  return fallback;
}

std::int64_t FieldReader::decimal(const char* key, int places, std::int64_t fallback) {
  if (is_absent(key)) return fallback;
  if (!value(key).isString() && !value(key).isDouble()) {
    refuse(key, say("%1 is not a number", kind_of(value(key))), say("write it like %1", "7.5"));
    return fallback;
  }
  const std::string text = value(key).isDouble() ? number_text(value(key).toDouble())
                                                 : value(key).toString().toStdString();
  const auto read = read_decimal(text, places);
  if (!read) {
    const std::string given = shown(text);
    refuse(key,
           places == 0 ? say("%1 is not a whole number that is 0 or more and below 1000000000", given)
                       : say("%1 is not a number with at most %2 decimals that is 0 or more and below 1000000000",
                             given, places),
           say("write it like %1", places == 0 ? "7" : "7.5"));
  }
  return read.value_or(fallback);
}

int FieldReader::whole(const char* key, int fallback) {
  return static_cast<int>(decimal(key, 0, fallback));
}

Duration FieldReader::seconds(const char* key, Duration fallback) {
  return Duration::ms(decimal(key, 3, fallback.ticks() / Duration::kTicksPerMs));
}

Worth FieldReader::worth(const char* key, Worth fallback) {
  return Worth::parts(decimal(key, 4, fallback.parts()));
}

int FieldReader::choice(const char* key, const QStringList& words, int fallback) {
  if (is_absent(key)) return fallback;
  const qsizetype index = value(key).isString() ? words.indexOf(value(key).toString()) : -1;
  if (index >= 0) return static_cast<int>(index);
  const Words given = value(key).isString() ? Words("\"" + shown(value(key).toString().toStdString()) + "\"")
                                            : kind_of(value(key));
  refuse(key, say("%1 is not one of the words known here", given), say("write one of %1", joined(words)));
  return fallback;
}

FieldReader FieldReader::group(const char* key) {
  if (has(key) && !value(key).isObject()) {
    refuse(key, say("%1 is not a group of fields", kind_of(value(key))), say("write it between { and }"));
  }
  return {value(key).toObject(), path_ + key + ".", *fault_};
}

std::vector<FieldReader> FieldReader::list(const char* key) {
  need(key, to_say("write a list between [ and ]"));
  return list_or_none(key);
}

std::vector<FieldReader> FieldReader::list_or_none(const char* key) {
  if (has(key) && !value(key).isArray()) {
    refuse(key, say("%1 is not a list", kind_of(value(key))), say("write it between [ and ]"));
  }
  std::vector<FieldReader> entries;
  const QJsonArray array = value(key).toArray();
  for (qsizetype i = 0; i < array.size(); ++i) {
    const std::string name = key + ("[" + std::to_string(i) + "]");
    if (!array[i].isObject()) {
      refuse(name.c_str(), say("%1 is not a group of fields", kind_of(array[i])),
             say("write it between { and }"));
    }
    entries.push_back({array[i].toObject(), path_ + name + ".", *fault_});
  }
  return entries;
}

FieldReader FieldReader::entries_of(const char* key, std::vector<std::string>& names) {
  if (has(key) && !value(key).isArray()) {
    refuse(key, say("%1 is not a list", kind_of(value(key))), say("write it between [ and ]"));
  }
  QJsonObject entries;
  const QJsonArray array = value(key).toArray();
  for (qsizetype i = 0; i < array.size(); ++i) {
    names.push_back(key + ("[" + std::to_string(i) + "]"));
    entries.insert(QString::fromStdString(names.back()), array[i]);
  }
  return {entries, path_, *fault_};
}

std::vector<std::string> FieldReader::texts(const char* key) {
  std::vector<std::string> names;
  FieldReader entries = entries_of(key, names);
  std::vector<std::string> texts;
  for (const std::string& name : names) texts.push_back(entries.text(name.c_str()));
  return texts;
}

std::vector<Length> FieldReader::lengths(const char* key) {
  std::vector<std::string> names;
  FieldReader entries = entries_of(key, names);
  std::vector<Length> lengths;
  for (const std::string& name : names) lengths.push_back(entries.length(name.c_str(), {}));
  return lengths;
}

std::vector<Duration> FieldReader::times(const char* key) {
  std::vector<std::string> names;
  FieldReader entries = entries_of(key, names);
  std::vector<Duration> times;
  for (const std::string& name : names) times.push_back(entries.seconds(name.c_str(), {}));
  return times;
}

}  // namespace foldyard
