#include "cli/call.h"

#include <QFileInfo>
#include <QMap>

#include <limits>

#include "language/tr.h"

namespace foldyard {
namespace {

const QStringList kVerbs = {"plan", "compare", "draw", "check", "batch", "cut", "shelf", "begin", "kinds"};
const QStringList kAims = {"most-worth", "worth-less-time"};  // in the order of Aim
const QStringList kPaperKeys = {"a4", "letter", "a3", "legal", "tabloid"};  // in the order of Paper
const QStringList kFormats = {"pdf", "svg", "png"};           // in the order of Format
const QStringList kUnits = {"mm", "cm", "m", "in", "yd"};     // in the order of Unit

const QMap<QString, QStringList> kOptionsOf = {
    {"plan", {"--roll", "--way", "--aim", "--json"}},
    {"compare", {"--roll", "--aim", "--json"}},
    {"draw",
     {"--to", "--roll", "--way", "--aim", "--paper", "--landscape", "--unit", "--pages",
      "--patterns", "--no-comparison", "--templates", "--panel"}},
    {"check", {}},
    {"batch", {"--json", "--to", "--paper"}},
    {"cut", {"--to", "--lays", "--when"}},
    {"shelf", {"--to", "--from"}},
    {"begin", {"--cloth", "--goods", "--length", "--unit"}},
    {"kinds", {}},
};

// Options without a value.
const QStringList kFlags = {"--json", "--landscape", "--no-comparison", "--templates"};

Problem wrong(const QString& what, const QString& next) {
  return {"", what.toStdString(), next.toStdString()};
}

QString list_of(const QStringList& words) { return words.join(QStringLiteral(", ")); }

// The arguments of a verb: job files, and options with their values.
struct Given {
  QStringList jobs;
  QMap<QString, QString> options;
};

std::optional<Problem> add_option(Given& words, const QString& verb, QStringList& rest,
                                  const QString& word) {
  const qsizetype equals = word.indexOf(u'=');
  const QString name = word.left(equals);
  const QStringList known = kOptionsOf.value(verb);
  if (!known.contains(name)) {
    return wrong(tr("%1 knows no option %2").arg(verb, name),
                 known.isEmpty() ? tr("leave it out")
                                 : tr("use one of %1").arg(list_of(known)));
  }
  if (words.options.contains(name)) {
    return wrong(tr("%1 stands twice").arg(name), tr("give it once"));
  }
  if (kFlags.contains(name)) {
    if (equals >= 0) return wrong(tr("%1 takes no value").arg(name), tr("leave it out"));
    words.options[name] = QString();
    return {};
  }
  if (equals < 0 && rest.isEmpty()) {
    return wrong(tr("%1 has no value").arg(name), tr("put it behind the option"));
  }
  words.options[name] = equals >= 0 ? word.mid(equals + 1) : rest.takeFirst();
  return {};
}

Result<Given> sort_words(const QString& verb, QStringList rest) {
  Given words;
  bool only_names = false;
  while (!rest.isEmpty()) {
    const QString word = rest.takeFirst();
    if (word == QLatin1String("--") && !only_names) {
      only_names = true;
    } else if (word.startsWith(QLatin1Char('-')) && !only_names) {
      if (const auto problem = add_option(words, verb, rest, word)) return *problem;
    } else {
      words.jobs << word;
    }
  }
  const bool wants_job = verb != QLatin1String("kinds");
  if (!wants_job && !words.jobs.isEmpty()) {
    return wrong(tr("kinds takes no job file"), tr("leave it out"));
  }
  if (wants_job && words.jobs.isEmpty()) {
    return wrong(tr("no job file is named"),
                 tr("write foldyard %1 JOB").arg(verb));
  }
  if (words.jobs.size() > 1) {
    return wrong(tr("more than one job file is named: %1").arg(list_of(words.jobs)),
                 tr("name one; quote names with spaces"));
  }
  return words;
}

Problem no_such_value(const QString& option, const QString& given, const QStringList& known) {
  return wrong(tr("%1 cannot be \"%2\"").arg(option, given), tr("use one of %1").arg(list_of(known)));
}

template <class Value>
std::optional<Problem> take_word(const Given& words, const char* option, const QStringList& known,
                                 Value& value) {
  const auto found = words.options.constFind(QLatin1String(option));
  if (found == words.options.constEnd()) return {};
  const qsizetype index = known.indexOf(*found);
  if (index < 0) return no_such_value(QLatin1String(option), *found, known);
  value = static_cast<Value>(index);
  return {};
}

std::optional<Problem> take_way(const Given& words, Call& call) {
  if (!words.options.contains(QStringLiteral("--way"))) return {};
  FoldWay way;
  const QString key = words.options.value(QStringLiteral("--way"));
  if (!way_from_key(key.toStdString(), way)) {
    return wrong(tr("there is no way of folding \"%1\"").arg(key),
                 tr("take a key that foldyard compare JOB shows"));
  }
  call.way = way;
  return {};
}

std::optional<Problem> take_target(const Given& words, Call& call) {
  if (call.verb != Verb::draw) return {};
  call.to = words.options.value(QStringLiteral("--to"));
  if (call.to.isEmpty()) {
    return wrong(tr("draw does not know where to write"),
                 tr("add --to FILE.pdf, FILE.svg or FILE.png"));
  }
  const qsizetype index = kFormats.indexOf(QFileInfo(call.to).suffix().toLower());
  if (index < 0) {
    return wrong(tr("\"%1\" names no kind of drawing").arg(call.to),
                 tr("let the name end in .pdf, .svg or .png"));
  }
  call.format = static_cast<Format>(index);
  return {};
}

// "3" is page 3 alone, "2-4" three pages, "2-" all from the second on.
std::optional<Problem> take_pages(const Given& words, Call& call) {
  const QString text = words.options.value(QStringLiteral("--pages"), QStringLiteral("1-"));
  const QStringList ends = text.split(u'-');
  bool first_is = false, last_is = false;
  const int first = ends.front().toInt(&first_is);
  int last = ends.back().toInt(&last_is);
  const bool to_end = ends.size() == 2 && ends.back().isEmpty();
  if (to_end) last = std::numeric_limits<int>::max();
  last_is = last_is || to_end;
  if (ends.size() > 2 || !first_is || !last_is || first < 1 || last < first) {
    return wrong(tr("--pages cannot be \"%1\"").arg(text),
                 tr("write pages like 2-4, 3 or 2-"));
  }
  call.pages = {first - 1, to_end ? last : last - 1};
  return {};
}

// What stands on the sheet.
std::optional<Problem> take_sheet(const Given& words, Call& call) {
  const auto has = [&](const char* option) { return words.options.contains(QLatin1String(option)); };
  call.landscape = has("--landscape");
  call.comparison = !has("--no-comparison");
  call.templates = has("--templates");
  if (has("--panel")) call.panel = words.options.value(QStringLiteral("--panel"));
  if (has("--patterns")) call.patterns = words.options.value(QStringLiteral("--patterns")).split(u',');
  if (call.panel && !call.templates) {
    return wrong(tr("--panel names a template"), tr("add --templates"));
  }
  if (!call.patterns.isEmpty() && call.templates) {
    return wrong(tr("--templates draws no patterns"), tr("leave --patterns out"));
  }
  if (call.verb == Verb::draw && has("--unit")) {
    call.words_in = Unit::cm;
    if (const auto problem = take_word(words, "--unit", kUnits, *call.words_in)) return problem;
  }
  return take_pages(words, call);
}

// "1-3,5": lays counted from 1, kept from 0.
std::optional<Problem> take_lays(const Given& words, Call& call) {
  const QString text = words.options.value(QStringLiteral("--lays"));
  if (text.isEmpty()) return {};
  for (const QString& part : text.split(u',')) {
    const QStringList ends = part.split(u'-');
    bool first_is = false, last_is = false;
    const int first = ends.front().toInt(&first_is), last = ends.back().toInt(&last_is);
    if (ends.size() > 2 || !first_is || !last_is || first < 1 || last < first || last > 100'000) {
      return wrong(tr("--lays cannot be \"%1\"").arg(text), tr("write lays like 1-3,5"));
    }
    for (int lay = first; lay <= last; ++lay) call.lays.push_back(lay - 1);
  }
  return {};
}

// Where a batch, the job after cutting, or a shelf is written to.
std::optional<Problem> take_batch(const Given& words, Call& call) {
  if (call.verb != Verb::batch && call.verb != Verb::cut && call.verb != Verb::shelf) return {};
  call.to = words.options.value(QStringLiteral("--to"));
  call.from = words.options.value(QStringLiteral("--from"));
  call.when = words.options.value(QStringLiteral("--when"));
  const QString ending = QFileInfo(call.to).suffix().toLower();
  if (call.verb == Verb::batch && !call.to.isEmpty() && ending != QLatin1String("pdf") && ending != QLatin1String("csv")) {
    return wrong(tr("\"%1\" names no kind of paper").arg(call.to), tr("let the name end in .pdf or .csv"));
  }
  if (call.to.isEmpty() && (call.verb == Verb::cut || !call.from.isEmpty())) {
    return wrong(tr("there is no word of where to write the job"), tr("add --to FILE.json"));
  }
  return take_lays(words, call);
}

// The keys of --cloth and --goods, and the length of the rolls.
std::optional<Problem> take_start(const Given& words, Call& call) {
  if (call.verb != Verb::begin) return {};
  for (const char* option : {"--cloth", "--goods", "--length"}) {
    if (!words.options.value(QLatin1String(option)).isEmpty()) continue;
    return wrong(tr("begin needs %1").arg(QLatin1String(option)),
                 tr("write foldyard begin JOB --cloth KEY --goods KEY --length "
                                "\"20 m\"; foldyard kinds shows the keys"));
  }
  call.cloth = words.options.value(QStringLiteral("--cloth")).split(u',');
  call.goods = words.options.value(QStringLiteral("--goods")).split(u',');
  call.length = words.options.value(QStringLiteral("--length"));
  return take_word(words, "--unit", kUnits, call.unit);
}

Result<Call> read_verb(Verb verb, const Given& words) {
  Call call;
  call.verb = verb;
  call.job = words.jobs.value(0);
  call.json = words.options.contains(QStringLiteral("--json"));
  if (words.options.contains(QStringLiteral("--roll"))) {
    call.roll = words.options.value(QStringLiteral("--roll"));
  }
  if (const auto problem = take_way(words, call)) return *problem;
  if (const auto problem = take_word(words, "--aim", kAims, call.aim)) return *problem;
  if (const auto problem = take_word(words, "--paper", kPaperKeys, call.paper)) return *problem;
  if (const auto problem = take_target(words, call)) return *problem;
  if (const auto problem = take_sheet(words, call)) return *problem;
  if (const auto problem = take_batch(words, call)) return *problem;
  if (const auto problem = take_start(words, call)) return *problem;
  return call;
}

}  // namespace

QString aim_key(Aim aim) { return kAims[static_cast<int>(aim)]; }

Result<Call> read_call(const QStringList& arguments) {
  Call call;
  if (arguments.contains(QStringLiteral("--help")) || arguments.contains(QStringLiteral("-h"))) return call;
  if (arguments == QStringList{QStringLiteral("--version")}) {
    call.verb = Verb::version;
    return call;
  }
  if (arguments.isEmpty()) {
    return wrong(tr("nothing was asked for"), tr("see foldyard --help"));
  }
  const QString verb = arguments.front();
  const qsizetype index = kVerbs.indexOf(verb);
  if (index < 0) {
    return wrong(tr("there is no verb \"%1\"").arg(verb),
                 tr("use one of %1, or see foldyard --help").arg(list_of(kVerbs)));
  }
  const Result<Given> words = sort_words(verb, arguments.mid(1));
  if (!words) return words.problem();
  return read_verb(static_cast<Verb>(static_cast<int>(Verb::plan) + index), *words);
}

QString help_text() {
  return tr(
      R"(Foldyard plans how to cross-cut, fold and cut rolls of cloth into rectangular
panels, and proves how good each plan is.

  foldyard plan JOB     the best plan of each roll, with every cut
  foldyard compare JOB  all ways of folding each roll, ranked
  foldyard draw JOB --to FILE.pdf|.svg|.png
                        the cutting diagram of one roll, true to scale
  foldyard check JOB    reads the job, plans it in every way and inspects all plans
  foldyard batch JOB    the order of the job over all its rolls: lays, webbing, what to
                        buy, time and money; --to FILE.pdf: the tickets, FILE.csv: tables
  foldyard cut JOB --to FILE.json
                        the job after its batch, or some lays of it, is cut
  foldyard shelf JOB    the rolls as a table for a spreadsheet; --from FILE.csv --to
                        FILE.json: the job with the rolls of a table
  foldyard begin JOB --cloth KEY --goods KEY --length LENGTH
                        a first job file from ready kinds of cloth and goods
  foldyard kinds        what there is to begin from
  foldyard [JOB]        the window, where there is a display
  foldyard --help       this text
  foldyard --version    the version

Options
  --roll NAME    this roll only (draw: the first roll, if none is named)
  --way KEY      this way of folding, by a key that compare shows (plan, draw)
  --aim AIM      most-worth: the most worth, then the fewest cuts (if none is named)
                 worth-less-time: the most worth after your minutes at your rate
  --json         the answer as JSON (plan, compare, batch)
  --paper PAPER  a4 (if none is named), a3, letter, legal or tabloid (draw)
  --landscape    the long side of the paper lies across (draw)
  --patterns LETTERS
                 pages of these patterns only, like A,C (draw)
  --no-comparison
                 the first page without the comparison of the fold ways (draw)
  --pages PAGES  these pages only, like 2-4, 3 or 2- (draw)
  --templates    instead of the diagram: panels in full size, over several pages
                 with marks to join them, and a square to check the print (draw)
  --panel NAME   the template of this panel only (draw --templates)
  --lays LAYS    only these are cut, like 1-3,5; all if none are named (cut)
  --when WORDS   kept in the job's history (cut)
  --cloth, --goods
                 keys that kinds shows; several with commas (begin)
  --length LENGTH
                 cloth on each roll, like "23.4 m" (begin)
  --unit UNIT    mm, cm, m, in or yd: of the new job, cm if none is named (begin);
                 of all words of the drawing, if not the job's (draw)

The program ends with 0 if all was done, with 1 if the job cannot be planned,
and with 2 if the call or the job file is wrong; then nothing is written.
Job files are described in docs/job-file.md, the JSON answers in docs/output.md.
)");
}

}  // namespace foldyard
