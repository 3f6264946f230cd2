#include "document/side_file.h"

#include <QCryptographicHash>
#include <QJsonDocument>
#include <QJsonObject>

#include "file/read_job.h"
#include "file/write_job.h"
#include "language/tr.h"

namespace foldyard {
namespace {

constexpr char kFormat[] = "foldyard-side-file 1 ";

QByteArray head_of(const QByteArray& body) {
  return kFormat + QCryptographicHash::hash(body, QCryptographicHash::Sha256).toHex() + '\n';
}

QString text_of(const QDateTime& time) { return time.toUTC().toString(Qt::ISODateWithMs); }

QDateTime time_of(const QJsonValue& value) { return QDateTime::fromString(value.toString(), Qt::ISODateWithMs); }

QJsonObject object_of(const FileMark& mark) {
  return {{"size", mark.size}, {"hash", QString::fromLatin1(mark.hash.toHex())}, {"time", text_of(mark.time)}};
}

FileMark mark_in(const QJsonObject& object) {
  return {object["size"].toInteger(), QByteArray::fromHex(object["hash"].toString().toLatin1()), time_of(object["time"])};
}

Problem damage() {
  return {"", tr("the side file of an unsaved job is damaged").toStdString(),
          tr("it was put aside; open the job's own file").toStdString()};
}

}  // namespace

QByteArray write_side_file(const SideFile& side) {
  QJsonObject object = {{"path", side.path},
                        {"time", text_of(side.time)},
                        {"crashes", side.crashes},
                        {"job", QString::fromUtf8(write_job(side.job))}};
  if (side.mark) object["mark"] = object_of(*side.mark);
  const QByteArray body = QJsonDocument(object).toJson(QJsonDocument::Compact);
  return head_of(body) + body;
}

Result<SideFile> read_side_file(const QByteArray& bytes) {
  const QByteArray body = bytes.mid(bytes.indexOf('\n') + 1);
  if (body.isEmpty() || bytes != head_of(body) + body) return damage();
  const QJsonObject object = QJsonDocument::fromJson(body).object();
  if (!object["job"].isString() || !object["path"].isString()) return damage();
  auto job = read_job(object["job"].toString().toUtf8());
  if (!job) return job.problem();
  SideFile side{*std::move(job), object["path"].toString(), {}, time_of(object["time"]), object["crashes"].toInt()};
  if (object["mark"].isObject()) side.mark = mark_in(object["mark"].toObject());
  return side;
}

}  // namespace foldyard
