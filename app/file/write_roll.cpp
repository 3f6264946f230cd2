#include "file/write_roll.h"

#include "file/file_words.h"
#include "file/json_line.h"

namespace foldyard {
namespace {

// Writes each figure of a measure and its give.
struct MeasureText {
  JsonLine line;

  void length(const std::string& key, const MeasuredLength& figure) {
    line.length(key, figure.value).length(key + "_give", figure.give);
  }
  void count(const std::string& key, const MeasuredCount& figure, int places = 0) {
    line.decimal(key, figure.value, places).decimal(key + "_give", figure.give, places);
  }

  void operator()(const ByDiameters& by) {
    line.text("by", "diameters");
    length("outer", by.outer);
    length("tube", by.tube);
    length("thickness", by.thickness);
  }
  void operator()(const ByTurns& by) {
    line.text("by", "turns");
    count("turns", by.turns);
    length("outer", by.outer);
    length("tube", by.tube);
  }
  void operator()(const ByWeight& by) {
    line.text("by", "weight");
    count("roll", by.roll);
    count("tube", by.tube);
    count("per_square_metre", by.per_square_metre, 1);
  }
};

std::string measure_text(const RollMeasure& measure, Unit unit) {
  MeasureText text{JsonLine(unit)};
  std::visit(text, measure);
  return text.line.object();
}

std::string repeat_text(const Repeat& repeat, Unit unit) {
  JsonLine line(unit);
  const auto length = [&line](const char* key, Length value) {
    if (value != Length()) line.length(key, value);
  };
  length("along", repeat.along);
  length("across", repeat.across);
  length("start_along", repeat.start_along);
  length("start_across", repeat.start_across);
  if (repeat.symmetric) line.flag("symmetric", true);
  return line.object();
}

std::string shrinkage_text(const Shrinkage& shrinkage, Unit unit) {
  JsonLine line(unit);
  if (shrinkage.along > 0) line.decimal("along_percent", shrinkage.along, 2);
  if (shrinkage.across > 0) line.decimal("across_percent", shrinkage.across, 2);
  return line.object();
}

std::string flaw_text(const Flaw& flaw, Length width, Unit unit) {
  JsonLine line(unit);
  line.length("from", flaw.along.from).length("to", flaw.along.to);
  if (flaw.across.from != Length()) line.length("left", flaw.across.from);
  if (flaw.across.to != width) line.length("right", flaw.across.to);
  if (!flaw.kind.empty()) line.text("kind", flaw.kind);
  return line.object();
}

// Each flaw on a line of its own.
std::string flaws_text(const Roll& roll, Unit unit) {
  std::string out;
  for (const Flaw& flaw : roll.flaws) {
    out += (out.empty() ? "[\n      " : ",\n      ") + flaw_text(flaw, roll.fabric.width, unit);
  }
  return out + "]";
}

}  // namespace

std::string roll_text(const Roll& roll, Unit unit) {
  const Fabric& fabric = roll.fabric;
  JsonLine line(unit);
  line.text("name", roll.name)
      .length("width", fabric.width)
      .length("selvedge", fabric.selvedge)
      .length("thickness", fabric.thickness);
  if (!roll.measured || roll.is_found) line.length("length", roll.length);
  if (roll.measured) line.raw("measured", measure_text(*roll.measured, unit));
  if (roll.cut_since != Length()) line.length("cut_since", roll.cut_since);
  line.text("nap", word_of(kNapWords, fabric.nap).toStdString()).text("colour", fabric.colour);
  if (fabric.railroaded) line.flag("railroaded", true);
  if (fabric.repeat != Repeat()) line.raw("repeat", repeat_text(fabric.repeat, unit));
  if (fabric.shrinkage.is_any()) line.raw("shrinkage", shrinkage_text(fabric.shrinkage, unit));
  if (roll.squared != Squared::none) line.text("squared", word_of(kSquaredWords, roll.squared).toStdString());
  if (!roll.cloth.empty()) line.text("cloth", roll.cloth);
  if (!roll.marks.empty()) line.texts("marks", roll.marks);
  if (roll.price) line.worth("price_per_metre", *roll.price);
  if (roll.in_batch != InBatch::may) line.text("in_batch", word_of(kInBatchWords, roll.in_batch).toStdString());
  if (!roll.flaws.empty()) line.raw("flaws", flaws_text(roll, unit));
  return line.object();
}

}  // namespace foldyard
