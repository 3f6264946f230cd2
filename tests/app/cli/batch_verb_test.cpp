// The verbs of a batch, as the real program answers them.

#include "cli/batch_verb.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>

#include "file/read_job.h"

namespace foldyard {
namespace {

struct Answered {
  int code = 0;
  QByteArray out, err;
};

Answered run(const QStringList& arguments) {
  QProcess program;
  program.start(QStringLiteral(FOLDYARD_BINARY_DIR "/app/foldyard"), arguments);
  EXPECT_TRUE(program.waitForFinished(120'000));
  return {program.exitCode(), program.readAllStandardOutput(), program.readAllStandardError()};
}

const char* const kJob = R"({"foldyard_job": 2, "name": "Bags", "unit": "cm",
  "rolls": [{"name": "Moss 1", "length": "5 m", "width": "140 cm", "cloth": "moss"},
            {"name": "Moss 2", "length": "4 m", "width": "140 cm", "cloth": "moss"},
            {"name": "Fern", "length": "5 m", "width": "140 cm", "marks": ["printed"]}],
  "panels": [{"name": "body", "across": "45 cm", "along": "90 cm"}],
  "webbing": [{"name": "cotton", "roll": "50 m", "price": "18"}],
  "products": [{"name": "bag", "worth": "20", "panels": [{"panel": "body"}],
                "webbing": [{"webbing": "cotton", "length": "55 cm", "count": 2}]}],
  "order": {"lines": [{"product": "bag", "must": 20, "rules": [{"of": "printed", "at_least": 3}]}]}})";

class Batch : public testing::Test {
 protected:
  Batch() { write("job.json", kJob); }

  QString at(const char* name) const { return folder_.filePath(QString::fromLatin1(name)); }
  void write(const char* name, const QByteArray& bytes) const {
    QFile file(at(name));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
  }

  QTemporaryDir folder_;
};

TEST_F(Batch, IsPlannedInWordsAndAsJson) {
  const Answered words = run({"batch", at("job.json")});
  EXPECT_EQ(words.code, 0) << words.err.toStdString();
  for (const char* part : {"20 × bag", "What is made", "Lays, in cutting order", "Rolls", "Webbing", "To buy"})
    EXPECT_TRUE(words.out.contains(part)) << part;
  const QJsonObject json = QJsonDocument::fromJson(run({"batch", at("job.json"), "--json"}).out).object();
  EXPECT_EQ(json["filled"].toString(), "400");
  EXPECT_EQ(json["filled_bound"].toString(), "400");
  int pieces = 0, printed = 0;
  for (const QJsonValue& made : json["made"].toArray()) {
    pieces += made["pieces"].toInt();
    if (made["cloth"].toString() == "Fern") printed += made["pieces"].toInt();
  }
  EXPECT_EQ(pieces, 20);
  EXPECT_GE(printed, 3);
  EXPECT_EQ(json["webbing"][0]["rolls_to_buy"].toInt(), 1);  // 40 × 55 cm are 22 m
}

TEST_F(Batch, SaysWhatLacksWhereTheOrderCannotBeFilled) {
  write("job.json", QByteArray(kJob).replace("\"must\": 20", "\"must\": 90"));
  const Answered words = run({"batch", at("job.json")});
  EXPECT_EQ(words.code, 0) << words.err.toStdString();
  EXPECT_TRUE(words.out.contains("What lacks"));
  EXPECT_TRUE(words.out.contains("cannot be filled"));
}

TEST_F(Batch, WritesTicketsAndTables) {
  const Answered pdf = run({"batch", at("job.json"), "--to", at("batch.pdf")});
  EXPECT_EQ(pdf.code, 0) << pdf.err.toStdString();
  QFile file(at("batch.pdf"));
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  EXPECT_TRUE(file.read(5) == "%PDF-");
  EXPECT_EQ(run({"batch", at("job.json"), "--to", at("batch.csv")}).code, 0);
  QFile csv(at("batch.csv"));
  ASSERT_TRUE(csv.open(QIODevice::ReadOnly));
  EXPECT_TRUE(csv.readAll().contains("\"Lays, in cutting order\""));
  EXPECT_EQ(run({"batch", at("job.json"), "--to", at("batch.txt")}).code, 2);
}

// Half of it is cut, the rest is planned again and cut too: then nothing is left to cut.
TEST_F(Batch, IsHalfCutPlannedAgainAndFinished) {
  ASSERT_EQ(run({"cut", at("job.json"), "--to", at("half.json"), "--lays", "1", "--when", "Monday"}).code, 0);
  const Result<Job> half = load_job(at("half.json"));
  ASSERT_TRUE(half) << half.problem().sentence();
  EXPECT_FALSE(half->on_hand.empty());
  EXPECT_EQ(half->history[0].when, "Monday");
  const QJsonObject again = QJsonDocument::fromJson(run({"batch", at("half.json"), "--json"}).out).object();
  EXPECT_EQ(again["filled"].toString(), "400");
  ASSERT_EQ(run({"cut", at("half.json"), "--to", at("done.json"), "--when", "Tuesday"}).code, 0);
  const QJsonObject done = QJsonDocument::fromJson(run({"batch", at("done.json"), "--json"}).out).object();
  EXPECT_EQ(done["filled"].toString(), "400");
  EXPECT_EQ(done["lays"].toArray().size(), 0);
  EXPECT_EQ(done["cost"].toString(), "0");
}

TEST_F(Batch, GivesTheShelfToASpreadsheetAndTakesItBack) {
  const Answered shelf = run({"shelf", at("job.json")});
  EXPECT_EQ(shelf.code, 0);
  EXPECT_TRUE(shelf.out.startsWith("name,cloth,marks,"));
  write("shelf.csv", "name,length\r\nMoss 1,7 m\r\nMoss 2,4 m\r\nFern,5 m\r\n");
  EXPECT_EQ(run({"shelf", at("job.json"), "--from", at("shelf.csv"), "--to", at("new.json")}).code, 0);
  const Result<Job> job = load_job(at("new.json"));
  ASSERT_TRUE(job) << job.problem().sentence();
  EXPECT_EQ(job->rolls[0].length, Length::mm(7'000));
  EXPECT_EQ(job->rolls[2].marks, std::vector<std::string>{"printed"});
}

TEST_F(Batch, RefusesInOneSentence) {
  EXPECT_EQ(run({"cut", at("job.json")}).err,
            "foldyard: there is no word of where to write the job; add --to FILE.json.\n");
  EXPECT_EQ(run({"cut", at("job.json"), "--to", at("x.json"), "--lays", "0"}).err,
            "foldyard: --lays cannot be \"0\"; write lays like 1-3,5.\n");
  EXPECT_EQ(run({"cut", at("job.json"), "--to", at("x.json"), "--lays", "99"}).code, 2);
  write("none.json", R"({"foldyard_job": 2, "rolls": [{"name": "Moss", "length": "5 m"}],
    "panels": [{"name": "body", "across": "45 cm", "along": "90 cm"}]})");
  EXPECT_EQ(run({"batch", at("none.json")}).err, "foldyard: order: nothing is asked for; add a line to the order.\n");
}

}  // namespace
}  // namespace foldyard
