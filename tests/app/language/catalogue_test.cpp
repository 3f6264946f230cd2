// The catalogues hold every text of the sources, whole: nothing untranslated, no
// place for a value lost, no letter of a menu lost.

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QXmlStreamReader>

namespace foldyard {
namespace {

struct Entry {
  QString context;
  QString source;
  QString note;
  QStringList forms;  // of the translation: one, or one for each plural
  bool is_plural = false;
  bool is_finished = true;

  std::string name() const { return (context + QLatin1String(": ") + source).toStdString(); }
};

const QDir kFolder(QStringLiteral(FOLDYARD_SOURCE_DIR "/resources/languages"));

void read_translation(QXmlStreamReader& xml, Entry& entry) {
  entry.is_finished = xml.attributes().value(QLatin1String("type")).isEmpty();
  if (!entry.is_plural) {
    entry.forms = {xml.readElementText()};
    return;
  }
  while (xml.readNextStartElement()) entry.forms << xml.readElementText();
}

Entry read_message(QXmlStreamReader& xml, const QString& context) {
  Entry entry;
  entry.context = context;
  entry.is_plural = xml.attributes().value(QLatin1String("numerus")) == QLatin1String("yes");
  while (xml.readNextStartElement()) {
    if (xml.name() == QLatin1String("source")) entry.source = xml.readElementText();
    else if (xml.name() == QLatin1String("comment")) entry.note = xml.readElementText();
    else if (xml.name() == QLatin1String("translation")) read_translation(xml, entry);
    else xml.skipCurrentElement();
  }
  return entry;
}

std::vector<Entry> entries_of(const QString& path) {
  QFile file(path);
  EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
  QXmlStreamReader xml(&file);
  std::vector<Entry> entries;
  QString context;
  xml.readNextStartElement();  // TS
  while (xml.readNextStartElement()) {
    while (xml.readNextStartElement()) {
      if (xml.name() == QLatin1String("name")) context = xml.readElementText();
      else entries.push_back(read_message(xml, context));
    }
  }
  EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
  return entries;
}

std::set<std::string> keys_of(const std::vector<Entry>& entries) {
  std::set<std::string> keys;
  for (const Entry& entry : entries) keys.insert(entry.name() + (entry.note.isEmpty() ? "" : " [" + entry.note.toStdString() + "]"));
  return keys;
}

// Sorted: "%1", "%n" and so on, each as often as it stands there.
QStringList places_in(const QString& text) {
  static const QRegularExpression kPlace(QStringLiteral("%(L?[1-9]|n)"));
  QStringList places;
  for (auto match = kPlace.globalMatch(text); match.hasNext();) places << match.next().captured();
  places.sort();
  return places;
}

// The letters after a single "&".
QString letters_in(const QString& text) {
  static const QRegularExpression kLetter(QStringLiteral("&(\\w)"), QRegularExpression::UseUnicodePropertiesOption);
  QString letters;
  for (auto match = kLetter.globalMatch(text); match.hasNext();) letters += match.next().captured(1).toLower();
  return letters;
}

// Spaces at either end and a full stop, dots or colon at the end stay.
QString ends_of(const QString& text) {
  const QString dots = QStringLiteral("….:");
  const QString last = text.trimmed().right(1);
  return QStringLiteral("%1|%2|%3").arg(text.startsWith(QLatin1Char(' '))).arg(text.endsWith(QLatin1Char(' '))).arg(
      dots.contains(last) ? last : QString());
}

void expect_whole(const Entry& entry) {
  EXPECT_TRUE(entry.is_finished) << entry.name();
  for (const QString& form : entry.forms) {
    EXPECT_FALSE(form.isEmpty()) << entry.name();
    QStringList wanted = places_in(entry.source);
    if (!places_in(form).contains(QLatin1String("%n"))) wanted.removeAll(QStringLiteral("%n"));  // "one roll"
    EXPECT_EQ(places_in(form), wanted) << entry.name() << " -> " << form.toStdString();
    EXPECT_EQ(letters_in(form).size(), letters_in(entry.source).size()) << entry.name() << " -> " << form.toStdString();
    if (entry.note == QLatin1String("column")) continue;  // a head may be shortened
    EXPECT_EQ(ends_of(form), ends_of(entry.source)) << entry.name() << " -> " << form.toStdString();
  }
}

// What the command for it makes of copies of the catalogues.
class CatalogueTest : public testing::TestWithParam<const char*> {
 protected:
  QString name = QString::fromLatin1(GetParam()) + QLatin1String(".ts");
  QTemporaryDir folder;

  QString refreshed() {
    for (const QString& each : kFolder.entryList({QStringLiteral("*.ts")}))
      EXPECT_TRUE(QFile::copy(kFolder.filePath(each), folder.filePath(each)));
    QProcess refresh;
    auto environment = QProcessEnvironment::systemEnvironment();
    environment.insert(QStringLiteral("LUPDATE"), QStringLiteral(FOLDYARD_LUPDATE));
    refresh.setProcessEnvironment(environment);
    refresh.start(kFolder.filePath(QStringLiteral("refresh")), {folder.path()});
    EXPECT_TRUE(refresh.waitForFinished(120000));
    EXPECT_EQ(refresh.exitCode(), 0);
    remarks = QString::fromUtf8(refresh.readAllStandardError());
    return folder.filePath(name);
  }

  QString remarks;
};

TEST_P(CatalogueTest, HoldsTheTextsOfTheSources) {
  const auto kept = keys_of(entries_of(kFolder.filePath(name)));
  EXPECT_EQ(kept, keys_of(entries_of(refreshed()))) << "run resources/languages/refresh, and translate what is new";
}

TEST_P(CatalogueTest, IsWhole) {
  for (const Entry& entry : entries_of(kFolder.filePath(name))) expect_whole(entry);
}

// A class that has no tr of its own would look its words up elsewhere.
TEST_P(CatalogueTest, HasTheContextsOfTheProgram) {
  refreshed();
  static const QRegularExpression kClass(QStringLiteral("Class '([^']*)' lacks Q_OBJECT macro"));
  for (auto match = kClass.globalMatch(remarks); match.hasNext();)
    EXPECT_EQ(match.next().captured(1).toStdString(), "foldyard") << "give the class Q_DECLARE_TR_FUNCTIONS";
  EXPECT_FALSE(remarks.contains(QLatin1String("unknown namespace"))) << "a source is misread: " << remarks.toStdString();
}

INSTANTIATE_TEST_SUITE_P(All, CatalogueTest, testing::Values("window_de", "window_en", "pages_de", "pages_en"),
                         [](const auto& param_info) { return std::string(param_info.param); });

}  // namespace
}  // namespace foldyard
