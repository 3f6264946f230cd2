// The program under a German locale: German words, decimal commas; what other
// programs read stays as it is.

#include <gtest/gtest.h>

#include <QFile>
#include <QRegularExpression>
#include <QTemporaryDir>

#include "program.h"

namespace foldyard {
namespace {

struct ReplyText {
  int code = -1;
  QString out;
  QString err;
};

class GermanCli : public testing::Test {
 protected:
  static QString job(const char* name) {
    return QStringLiteral(FOLDYARD_SOURCE_DIR "/tests/cases/%1/job.json").arg(QLatin1String(name));
  }

  ReplyText run(const QStringList& words, const char* locale = "de_DE.UTF-8") const {
    const test::Reply reply = test::run_foldyard(words, folder_.path(), locale);
    return {reply.code, QString::fromUtf8(reply.out), QString::fromUtf8(reply.err)};
  }

  QByteArray bytes_of(const QString& name) const {
    QFile file(folder_.filePath(name));
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
  }

  QTemporaryDir folder_;
};

void expect_says(const QString& text, const QStringList& words) {
  for (const QString& each : words) EXPECT_TRUE(text.contains(each)) << each.toStdString() << " in\n" << text.toStdString();
}

TEST_F(GermanCli, PlansInGerman) {
  const ReplyText plan = run({"plan", job("pouches")});
  EXPECT_EQ(plan.code, 0);
  expect_says(plan.out, {"Rolle ", " nutzbar zwischen den Webkanten", "Schnittbild A: ", "Teile aus jeder Bahn:",
                         "Sicherheit am Schneidegerät", "Nach jedem Schnitt ausschalten"});
  EXPECT_TRUE(plan.out.contains(QRegularExpression("\\d,\\d %")));
  EXPECT_FALSE(plan.out.contains(QRegularExpression("\\d\\.\\d")));
  for (const char* english : {"Roll ", "lengths", "Worth", "Proved", "cut ", "the "})
    EXPECT_FALSE(plan.out.contains(QLatin1String(english))) << english;
}

TEST_F(GermanCli, ComparesAndChecksInGerman) {
  const ReplyText compare = run({"compare", job("pouches")});
  expect_says(compare.out, {"Teile\n", "Faltart", "Webkante auf Webkante", "Vom meisten Wert zur wenigsten Zeit"});
  EXPECT_FALSE(compare.out.contains("selvedge to selvedge"));
  const ReplyText check = run({"check", job("pouches")});
  expect_says(check.out, {"gelesen", "als Bestes bewiesen"});
}

TEST_F(GermanCli, RefusesInGerman) {
  const ReplyText verb = run({"snip", "job.json"});
  EXPECT_EQ(verb.code, 2);
  expect_says(verb.err, {"foldyard: es gibt kein Verb „snip“; eines von plan"});
  const ReplyText file = run({"plan", "none.json"});
  EXPECT_EQ(file.code, 2);
  expect_says(file.err, {"foldyard: none.json: eine solche Datei gibt es nicht; Namen und Ordner prüfen."});
}

TEST_F(GermanCli, HelpsInGermanWithTheSameOptions) {
  const QString german = run({"--help"}).out, english = run({"--help"}, "C").out;
  EXPECT_TRUE(german.startsWith("Foldyard plant"));
  EXPECT_TRUE(english.startsWith("Foldyard plans"));
  static const QRegularExpression kOption("--[a-z-]+");
  for (auto each = kOption.globalMatch(english); each.hasNext();) {
    const QString option = each.next().captured();
    EXPECT_TRUE(german.contains(option)) << option.toStdString();
  }
  for (const QString& line : german.split(u'\n')) EXPECT_LE(line.size(), 90) << line.toStdString();
}

TEST_F(GermanCli, WritesWhatProgramsReadAsInAnyLanguage) {
  EXPECT_EQ(run({"plan", job("pouches"), "--json"}).out, run({"plan", job("pouches"), "--json"}, "C").out);
  EXPECT_EQ(run({"compare", job("pouches"), "--json"}).out, run({"compare", job("pouches"), "--json"}, "C").out);
  EXPECT_EQ(run({"shelf", job("pouches")}).out, run({"shelf", job("pouches")}, "C").out);
  EXPECT_EQ(run({"batch", QStringLiteral(FOLDYARD_SOURCE_DIR "/resources/demo.json"), "--to", "de.csv"}).code, 0);
  EXPECT_EQ(run({"batch", QStringLiteral(FOLDYARD_SOURCE_DIR "/resources/demo.json"), "--to", "en.csv"}, "C").code, 0);
  EXPECT_FALSE(bytes_of("en.csv").isEmpty());
  EXPECT_EQ(bytes_of("de.csv"), bytes_of("en.csv"));
}

TEST_F(GermanCli, SpeaksEnglishWhereTheSystemSpeaksNeither) {
  for (const char* locale : {"C", "C.UTF-8", "fr_FR.UTF-8"})
    EXPECT_TRUE(run({"--help"}, locale).out.startsWith("Foldyard plans")) << locale;
}

// Names that a job begins with are the maker's, not the program's.
TEST_F(GermanCli, NamesWhatAJobBeginsWith) {
  const ReplyText begin = run({"begin", "neu.json", "--cloth", "velvet", "--goods", "cushion", "--length", "12 m"});
  ASSERT_EQ(begin.code, 0) << begin.err.toStdString();
  const QString job = QString::fromUtf8(bytes_of("neu.json"));
  for (const char* name : {"\"Samt\"", "\"Kissenbezug, Vorderseite\"", "\"Kissenbezug, Rückseite\""})
    EXPECT_TRUE(job.contains(QString::fromUtf8(name))) << name << "\n" << job.toStdString();
}

}  // namespace
}  // namespace foldyard
