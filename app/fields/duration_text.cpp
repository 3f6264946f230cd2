#include "fields/duration_text.h"

#include <QRegularExpression>

#include <optional>

#include "job/decimal.h"
#include "language/local_numbers.h"
#include "language/tr.h"

namespace foldyard {
namespace {

constexpr qint64 kMsPerMinute = 60000;
constexpr qint64 kMostMinutes = 100000;

Problem no_time(const QString& text) {
  return {"", tr("“%1” is not a time").arg(text).toStdString(), tr("write minutes and seconds such as 1:50, or 90 s").toStdString()};
}

// Digits after the point, as so many of `places`; nothing where there are more.
std::optional<std::int64_t> decimal(const QString& text, int places) {
  const auto read = read_decimal(QString(text).replace(QLatin1Char(','), QLatin1Char('.')).toStdString(), places);
  return read ? std::optional<std::int64_t>(*read) : std::nullopt;
}

std::optional<std::int64_t> ms_of(const QString& text) {
  static const QRegularExpression kClock(QStringLiteral("^(\\d{1,6}):([0-5]?\\d([.,]\\d{1,3})?)$"));
  static const QRegularExpression kNumber(QStringLiteral("^(\\d{1,6}([.,]\\d{1,4})?) ?(s|min)?$"));
  if (const auto clock = kClock.match(text); clock.hasMatch())
    return clock.captured(1).toLongLong() * kMsPerMinute + decimal(clock.captured(2), 3).value_or(0);
  const auto number = kNumber.match(text);
  if (!number.hasMatch()) return {};
  if (number.captured(3) == QLatin1String("s")) return decimal(number.captured(1), 3);
  const auto parts = decimal(number.captured(1), 4);  // of a minute: 6 ms each
  return parts ? std::optional<std::int64_t>(*parts * (kMsPerMinute / 10000)) : std::nullopt;
}

QString clock_text(std::int64_t ms, std::int64_t finest) {
  QString text = QStringLiteral("%1:%2").arg(ms / kMsPerMinute).arg(ms % kMsPerMinute / 1000, 2, 10, QLatin1Char('0'));
  QString rest = QStringLiteral(".%1").arg(ms % 1000, 3, 10, QLatin1Char('0'));
  if (finest > 1) return text + rest.left(2);
  while (rest.endsWith(QLatin1Char('0'))) rest.chop(1);
  return rest.size() > 1 ? text + rest : text;
}

}  // namespace

Result<Duration> typed_duration(const QString& text) {
  const QString plain = text.trimmed();
  const auto ms = ms_of(plain);
  if (!ms || *ms > kMostMinutes * kMsPerMinute) return no_time(plain);
  return Duration::ms(*ms);
}

QString duration_text(Duration time) { return local_numbers(clock_text(time.ticks() / Duration::kTicksPerMs, 1)); }

QString watch_text(Duration time) { return local_numbers(clock_text(time.ticks() / Duration::kTicksPerMs, 100)); }

}  // namespace foldyard
