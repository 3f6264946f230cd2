#include "file/csv.h"

#include <algorithm>

namespace foldyard {
namespace {

bool looks_like_a_formula(const QString& field) {
  if (field.isEmpty() || !QStringLiteral("=+-@").contains(field[0])) return false;
  bool is_number = false;
  field.toDouble(&is_number);
  return !is_number;
}

QString field_text(const QString& field) {
  QString text = looks_like_a_formula(field) ? QLatin1Char(' ') + field : field;
  const bool plain = std::none_of(text.begin(), text.end(), [](QChar c) {
    return c == u',' || c == u'"' || c == u'\n' || c == u'\r';
  });
  if (plain) return text;
  return QLatin1Char('"') + text.replace(u'"', QStringLiteral("\"\"")) + QLatin1Char('"');
}

class Reader {
 public:
  explicit Reader(const QString& text) : text_(text), separator_(separator_of(text)) {}

  Result<std::vector<QStringList>> read() {
    while (at_ < text_.size()) {
      if (auto problem = read_field()) return *problem;
    }
    if (!row_.isEmpty()) end_row();
    return std::move(rows_);
  }

 private:
  static QChar separator_of(const QString& text) {
    const QString head = text.left(text.indexOf(u'\n'));
    QChar best = u',';
    for (const QChar each : {QChar(u';'), QChar(u'\t')}) {
      if (head.count(each) > head.count(best)) best = each;
    }
    return best;
  }

  std::optional<Problem> read_field() {
    QString field;
    const bool is_quoted = text_[at_] == u'"';
    if (is_quoted && !read_quoted(field)) return fault(say("a quote is not closed"));
    if (!is_quoted) read_plain(field);
    row_ << field;
    if (at_ == text_.size()) return {};
    if (text_[at_] == separator_) {
      if (++at_ == text_.size()) row_ << QString();
      return {};
    }
    if (text_[at_] == u'\r') ++at_;
    if (at_ < text_.size() && text_[at_] != u'\n') return fault(say("a quote stands within a field"));
    ++at_;
    end_row();
    return {};
  }

  // From behind the opening quote to behind the closing one.
  bool read_quoted(QString& field) {
    for (++at_; at_ < text_.size(); ++at_) {
      if (text_[at_] != u'"') {
        field += text_[at_];
      } else if (at_ + 1 < text_.size() && text_[at_ + 1] == u'"') {
        field += text_[at_++];
      } else {
        ++at_;
        return true;
      }
    }
    return false;
  }

  void read_plain(QString& field) {
    while (at_ < text_.size() && text_[at_] != separator_ && text_[at_] != u'\n' && text_[at_] != u'\r')
      field += text_[at_++];
  }

  void end_row() {
    rows_.push_back(row_);
    row_.clear();
  }

  Problem fault(const Words& what) const {
    return {say("line %1", rows_.size() + 1), what, say("write the table out again from the spreadsheet as CSV")};
  }

  const QString& text_;
  QChar separator_;
  qsizetype at_ = 0;
  QStringList row_;
  std::vector<QStringList> rows_;
};

}  // namespace

QByteArray csv_text(const std::vector<QStringList>& rows) {
  qsizetype columns = 0;
  for (const QStringList& row : rows) columns = std::max(columns, row.size());
  QString text;
  for (const QStringList& row : rows) {
    QStringList fields;
    for (qsizetype i = 0; i < columns; ++i) fields << field_text(row.value(i));
    text += fields.join(u',') + QStringLiteral("\r\n");
  }
  return text.toUtf8();
}

Result<std::vector<QStringList>> read_csv(const QByteArray& bytes) {
  QString text = QString::fromUtf8(bytes);
  if (text.startsWith(QChar(QChar::ByteOrderMark))) text.remove(0, 1);
  return Reader(text).read();
}

}  // namespace foldyard
