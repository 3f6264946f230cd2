#include "cli/run_cli.h"

#include <QFile>
#include <QGuiApplication>
#include <cstdio>
#include <memory>

#include "cli/batch_verb.h"
#include "cli/begin_verb.h"
#include "cli/call.h"
#include "cli/check_verb.h"
#include "cli/choice.h"
#include "cli/compare_verb.h"
#include "cli/draw_verb.h"
#include "cli/plan_verb.h"
#include "file/read_job.h"
#include "language/language.h"
#include "language/tr.h"

namespace foldyard {
namespace {

Outcome run_verb(const Call& call, const Job& job) {
  if (const auto problem = wrong_choice(job, call)) return refusal(Exit::wrong_call, *problem);
  switch (call.verb) {
    case Verb::plan: return plan_verb(job, call);
    case Verb::compare: return compare_verb(job, call);
    case Verb::draw: return draw_verb(job, call);
    case Verb::batch: return batch_verb(job, call);
    case Verb::cut: return cut_verb(job, call);
    case Verb::shelf: return shelf_verb(job, call);
    default: return check_verb(job);
  }
}

// The path once, before whatever the reader says of the file.
Problem in_file(const QString& path, Problem problem) {
  const std::string name = path.toStdString();
  if (problem.where.empty()) problem.where = name;
  else if (problem.where != name) problem.where = say("%1: %2", name, problem.where);
  return problem;
}

// Whether all of it went out.
bool print(std::FILE* stream, const QString& text) {
  const QByteArray bytes = text.toUtf8();
  const auto size = static_cast<std::size_t>(bytes.size());
  return std::fwrite(bytes.constData(), 1, size, stream) == size && std::fflush(stream) == 0;
}

void complain(const QString& sentence) {
  print(stderr, QStringLiteral("foldyard: ") + sentence + QLatin1Char('\n'));
}

// The library's remarks about the machine are no answer to the call.
void keep_quiet(QtMsgType kind, const QMessageLogContext&, const QString& message) {
  if (kind == QtCriticalMsg || kind == QtFatalMsg) print(stderr, message + QLatin1Char('\n'));
}

QStringList words_of(int argc, char** argv) {
  QStringList words;
  for (int i = 1; i < argc; ++i) words << QFile::decodeName(argv[i]);
  return words;
}

}  // namespace

Outcome answer(const QStringList& arguments) {
  const Result<Call> call = read_call(arguments);
  if (!call) return refusal(Exit::wrong_call, call.problem());
  if (call->verb == Verb::help) return {Exit::done, help_text(), {}};
  if (call->verb == Verb::version) {
    return {Exit::done, QStringLiteral("foldyard " FOLDYARD_VERSION "\n"), {}};
  }
  if (call->verb == Verb::kinds) return kinds_verb();
  if (call->verb == Verb::begin) return begin_verb(*call);
  const Result<Job> job = load_job(call->job);
  if (!job) return refusal(Exit::wrong_call, in_file(call->job, job.problem()));
  return run_verb(*call, *job);
}

int run_cli(int argc, char** argv) {
  const QStringList words = words_of(argc, argv);
  qInstallMessageHandler(keep_quiet);
  qputenv("QT_QPA_PLATFORM", "offscreen");
  const QStringList drawing = {QStringLiteral("draw"), QStringLiteral("batch")};
  std::unique_ptr<QCoreApplication> application;
  if (drawing.contains(words.value(0))) application = std::make_unique<QGuiApplication>(argc, argv);
  else application = std::make_unique<QCoreApplication>(argc, argv);
  speak(language_for({}));
  const Outcome outcome = answer(words);
  if (!print(stdout, outcome.text)) {
    complain(tr("the answer could not be written out; give its target room."));
    return static_cast<int>(Exit::wrong_call);
  }
  if (!outcome.complaint.isEmpty()) complain(outcome.complaint);
  return static_cast<int>(outcome.code);
}

}  // namespace foldyard
