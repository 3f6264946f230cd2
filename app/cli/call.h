#pragma once

// A call of the command line, read from its arguments.
//
//   foldyard plan JOB    [--roll NAME] [--way KEY] [--aim AIM] [--json]
//   foldyard compare JOB [--roll NAME] [--aim AIM] [--json]
//   foldyard draw JOB --to FILE [--roll NAME] [--way KEY] [--aim AIM] [--paper PAPER]
//                 [--landscape] [--unit UNIT] [--pages FROM-TO]
//                 [--patterns LETTER[,LETTER…]] [--no-comparison]
//                 [--templates [--panel NAME]]
//   foldyard check JOB
//   foldyard batch JOB [--json] [--to FILE.pdf|.csv] [--paper PAPER]
//   foldyard cut JOB --to FILE.json [--lays 1-3,5] [--when WORDS]
//   foldyard shelf JOB [--to FILE.csv] | --from FILE.csv --to FILE.json
//   foldyard begin JOB --cloth KEY[,KEY…] --goods KEY[,KEY…] --length LENGTH [--unit UNIT]
//   foldyard kinds
//   foldyard --help · foldyard --version
//
// An option's value stands behind it or after "=". Refused, with what to do:
// an unknown verb or option, an option the verb does not know or that stands
// twice, a value nobody knows, a missing job or a second one, a panel without
// templates and patterns with them.

#include <QString>
#include <QStringList>
#include <optional>

#include "drawing/sheet.h"
#include "fold/fold_plan.h"
#include "job/plan.h"
#include "measure/result.h"
#include "measure/write_length.h"

namespace foldyard {

enum class Verb { help, version, plan, compare, draw, check, batch, cut, shelf, begin, kinds };
enum class Format { pdf, svg, png };

struct Call {
  Verb verb = Verb::help;
  QString job;
  std::optional<QString> roll;
  std::optional<FoldWay> way;
  Aim aim = Aim::most_worth;
  bool json = false;
  QString to;
  Format format = Format::pdf;  // by the ending of `to`
  Paper paper = Paper::a4;
  bool landscape = false;
  bool comparison = true;
  bool templates = false;
  std::optional<QString> panel;  // of the templates
  QStringList patterns;          // letters, as given; cli/sheet_choice.h knows them
  PageRange pages;
  std::optional<Unit> words_in;  // of the drawing; none: the job's
  QString from;           // a table, of shelf
  QString when;           // of cut
  std::vector<int> lays;  // of cut, from 0; none: all
  QStringList cloth;  // keys, as given; cli/begin_verb.h knows them
  QStringList goods;
  QString length;
  Unit unit = Unit::cm;
};

// Without the program's own name.
Result<Call> read_call(const QStringList& arguments);
// What the program can do, for a person.
QString help_text();
// "most-worth", "worth-less-time".
QString aim_key(Aim aim);

}  // namespace foldyard
