#pragma once

// FieldReader: takes the fields of one JSON object by name and type, and keeps
// the first fault of the whole file.
//
// Each reader gives the field's value, or the fallback where the field is left
// out or a fault was met before; `needed` ones must be there. `only` refuses
// fields that nobody knows. Ranges are not its matter (job/check_job.h).

#include <QJsonArray>
#include <QJsonObject>
#include <QStringList>
#include <optional>

#include "measure/duration.h"
#include "measure/length.h"
#include "measure/result.h"
#include "measure/worth.h"

namespace foldyard {

class FieldReader {
 public:
  // path: of the object, with its dot ("rolls[1]."), empty for the file.
  FieldReader(QJsonObject object, std::string path, std::optional<Problem>& fault);

  void only(const QStringList& known);
  bool has(const char* key) const { return object_.contains(QLatin1String(key)); }
  // next: what to do where it is missing, a pattern (measure/words.h).
  void need(const char* key, const char* next);
  void need(const char* key, const Words& next);

  std::string text(const char* key, const std::string& fallback = {});
  bool flag(const char* key, bool fallback);
  Length length(const char* key, Length fallback);
  // A number, or its text, with at most `places` decimals, in the last place.
  std::int64_t decimal(const char* key, int places, std::int64_t fallback);
  int whole(const char* key, int fallback);
  Duration seconds(const char* key, Duration fallback);
  Worth worth(const char* key, Worth fallback);
  // One of the words; gives its index.
  int choice(const char* key, const QStringList& words, int fallback);

  // Keeps a fault of this field, unless there was one before.
  void refuse(const char* key, const Words& what, const Words& next);
  // Whether the file has a fault so far.
  bool is_faulty() const { return fault_->has_value(); }

  FieldReader group(const char* key);
  std::vector<FieldReader> list(const char* key);
  // The same, but that it may be left out.
  std::vector<FieldReader> list_or_none(const char* key);
  // Lists of texts, of lengths and of times; empty where left out.
  std::vector<std::string> texts(const char* key);
  std::vector<Length> lengths(const char* key);
  std::vector<Duration> times(const char* key);  // in seconds

 private:
  // The entries of a list as fields of a reader, so that each is read by its name.
  FieldReader entries_of(const char* key, std::vector<std::string>& names);
  bool is_absent(const char* key) const;
  QJsonValue value(const char* key) const { return object_.value(QLatin1String(key)); }

  QJsonObject object_;
  std::string path_;
  std::optional<Problem>* fault_;
};

}  // namespace foldyard
