#include "fields/field_names.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <QStringList>

namespace foldyard {
namespace {

// What the command that collects texts reads; a field is found by its key.
[[maybe_unused]] constexpr const char* kNames[] = {
    QT_TRANSLATE_NOOP("fields", "across"),        QT_TRANSLATE_NOOP("fields", "across percent"),
    QT_TRANSLATE_NOOP("fields", "along"),         QT_TRANSLATE_NOOP("fields", "along percent"),
    QT_TRANSLATE_NOOP("fields", "at least"),      QT_TRANSLATE_NOOP("fields", "at most"),
    QT_TRANSLATE_NOOP("fields", "cloth"),         QT_TRANSLATE_NOOP("fields", "colour"),
    QT_TRANSLATE_NOOP("fields", "core"),          QT_TRANSLATE_NOOP("fields", "count"),
    QT_TRANSLATE_NOOP("fields", "cuts"),          QT_TRANSLATE_NOOP("fields", "diameters"),
    QT_TRANSLATE_NOOP("fields", "each at least"), QT_TRANSLATE_NOOP("fields", "ends"),
    QT_TRANSLATE_NOOP("fields", "flaws"),         QT_TRANSLATE_NOOP("fields", "from"),
    QT_TRANSLATE_NOOP("fields", "full length"),   QT_TRANSLATE_NOOP("fields", "grain"),
    QT_TRANSLATE_NOOP("fields", "kept"),          QT_TRANSLATE_NOOP("fields", "kind"),
    QT_TRANSLATE_NOOP("fields", "labels"),        QT_TRANSLATE_NOOP("fields", "left"),
    QT_TRANSLATE_NOOP("fields", "length"),        QT_TRANSLATE_NOOP("fields", "lines"),
    QT_TRANSLATE_NOOP("fields", "loss"),          QT_TRANSLATE_NOOP("fields", "marks"),
    QT_TRANSLATE_NOOP("fields", "match"),         QT_TRANSLATE_NOOP("fields", "may"),
    QT_TRANSLATE_NOOP("fields", "may turn"),      QT_TRANSLATE_NOOP("fields", "measured"),
    QT_TRANSLATE_NOOP("fields", "must"),          QT_TRANSLATE_NOOP("fields", "name"),
    QT_TRANSLATE_NOOP("fields", "nap"),           QT_TRANSLATE_NOOP("fields", "of"),
    QT_TRANSLATE_NOOP("fields", "on fold"),       QT_TRANSLATE_NOOP("fields", "on hand"),
    QT_TRANSLATE_NOOP("fields", "order"),         QT_TRANSLATE_NOOP("fields", "panel"),
    QT_TRANSLATE_NOOP("fields", "panels"),        QT_TRANSLATE_NOOP("fields", "price"),
    QT_TRANSLATE_NOOP("fields", "price per metre"), QT_TRANSLATE_NOOP("fields", "prices"),
    QT_TRANSLATE_NOOP("fields", "product"),       QT_TRANSLATE_NOOP("fields", "products"),
    QT_TRANSLATE_NOOP("fields", "railroaded"),    QT_TRANSLATE_NOOP("fields", "repeat"),
    QT_TRANSLATE_NOOP("fields", "right"),         QT_TRANSLATE_NOOP("fields", "roll"),
    QT_TRANSLATE_NOOP("fields", "rolls"),         QT_TRANSLATE_NOOP("fields", "rules"),
    QT_TRANSLATE_NOOP("fields", "seam"),          QT_TRANSLATE_NOOP("fields", "seconds"),
    QT_TRANSLATE_NOOP("fields", "selvedge"),      QT_TRANSLATE_NOOP("fields", "sewing"),
    QT_TRANSLATE_NOOP("fields", "sewn"),          QT_TRANSLATE_NOOP("fields", "shrinkage"),
    QT_TRANSLATE_NOOP("fields", "squared"),       QT_TRANSLATE_NOOP("fields", "start across"),
    QT_TRANSLATE_NOOP("fields", "start along"),   QT_TRANSLATE_NOOP("fields", "steps"),
    QT_TRANSLATE_NOOP("fields", "symmetric"),     QT_TRANSLATE_NOOP("fields", "thickness"),
    QT_TRANSLATE_NOOP("fields", "timed"),         QT_TRANSLATE_NOOP("fields", "to"),
    QT_TRANSLATE_NOOP("fields", "webbing"),       QT_TRANSLATE_NOOP("fields", "width"),
    QT_TRANSLATE_NOOP("fields", "worth")};

QString name_of(QString key) {
  return QCoreApplication::translate("fields", key.replace(QLatin1Char('_'), QLatin1Char(' ')).toUtf8().constData());
}

}  // namespace

QString field_words(const QString& field) {
  static const QRegularExpression kStep(QStringLiteral("^([^\\[]*)((\\[\\d+\\])*)$")), kIndex(QStringLiteral("\\d+"));
  QStringList words;
  for (const QString& step : field.split(QLatin1Char('.'), Qt::SkipEmptyParts)) {
    const auto parts = kStep.match(step);
    QString word = parts.hasMatch() ? name_of(parts.captured(1)) : name_of(step);
    for (auto index = kIndex.globalMatch(parts.captured(2)); index.hasNext();)
      word += QLatin1Char(' ') + QString::number(index.next().captured().toInt() + 1);
    words << word;
  }
  return words.join(QLatin1String(", "));
}

}  // namespace foldyard
