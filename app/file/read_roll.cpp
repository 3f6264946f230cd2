#include "file/read_roll.h"

#include "cloth/roll_estimate.h"
#include "file/file_words.h"
#include "job/defaults.h"

namespace foldyard {
namespace {

const QStringList kMeasures = {"diameters", "turns", "weight"};  // in the order of RollMeasure

std::string give_of(const char* key) { return std::string(key) + "_give"; }

void need_figure(FieldReader& fields, const char* key, const char* example) {
  if (!fields.has(key)) fields.need(key, say("give it as measured, like %1", say(example)));
  fields.need(give_of(key).c_str(), to_say("say by how much it may be off either way, 0 if by nothing"));
}

MeasuredLength measured_length(FieldReader& fields, const char* key, const char* example) {
  need_figure(fields, key, example);
  return {fields.length(key, {}), fields.length(give_of(key).c_str(), {})};
}

MeasuredCount measured_count(FieldReader& fields, const char* key, int places,
                             const char* example) {
  need_figure(fields, key, example);
  return {fields.decimal(key, places, 0), fields.decimal(give_of(key).c_str(), places, 0)};
}

ByDiameters by_diameters(FieldReader& fields) {
  fields.only({"by", "outer", "outer_give", "tube", "tube_give", "thickness", "thickness_give"});
  return {measured_length(fields, "outer", "\"31 cm\""),
          measured_length(fields, "tube", "\"5 cm\""),
          measured_length(fields, "thickness", "\"1 mm\"")};
}

ByTurns by_turns(FieldReader& fields) {
  fields.only({"by", "turns", "turns_give", "outer", "outer_give", "tube", "tube_give"});
  return {measured_count(fields, "turns", 0, "60"),
          measured_length(fields, "outer", "\"31 cm\""),
          measured_length(fields, "tube", "\"5 cm\"")};
}

ByWeight by_weight(FieldReader& fields) {
  fields.only({"by", "roll", "roll_give", "tube", "tube_give", "per_square_metre",
               "per_square_metre_give"});
  return {measured_count(fields, "roll", 0, to_say("18400 (grams)")),
          measured_count(fields, "tube", 0, to_say("900 (grams)")),
          measured_count(fields, "per_square_metre", 1, to_say("340.5 (grams)"))};
}

RollMeasure read_measure(FieldReader fields) {
  fields.need("by", say("write one of %1", kMeasures.join(QStringLiteral(", ")).toStdString()));
  switch (fields.choice("by", kMeasures, 0)) {
    case 0: return by_diameters(fields);
    case 1: return by_turns(fields);
    default: return by_weight(fields);
  }
}

Repeat read_repeat(FieldReader fields, const Repeat& usual) {
  fields.only({"along", "across", "start_along", "start_across", "symmetric"});
  Repeat repeat;
  repeat.along = fields.length("along", usual.along);
  repeat.across = fields.length("across", usual.across);
  repeat.start_along = fields.length("start_along", usual.start_along);
  repeat.start_across = fields.length("start_across", usual.start_across);
  repeat.symmetric = fields.flag("symmetric", usual.symmetric);
  return repeat;
}

Shrinkage read_shrinkage(FieldReader fields, const Shrinkage& usual) {
  fields.only({"along_percent", "across_percent"});
  return {fields.decimal("along_percent", 2, usual.along),
          fields.decimal("across_percent", 2, usual.across)};
}

Flaw read_flaw(FieldReader& fields, Length width) {
  fields.only({"from", "to", "left", "right", "kind"});
  fields.need("from", to_say("say where the flaw begins, from the free end, like \"3.2 m\""));
  fields.need("to", to_say("say where the flaw ends, from the free end, like \"3.26 m\""));
  Flaw flaw;
  flaw.along = {fields.length("from", {}), fields.length("to", {})};
  flaw.across = {fields.length("left", {}), fields.length("right", width)};
  flaw.kind = fields.text("kind");
  return flaw;
}

void read_length_of(FieldReader& fields, Roll& roll) {
  if (!fields.has("measured")) {
    fields.need("length", to_say("say how much cloth is on the roll, like \"23.4 m\", or what was "
                                 "\"measured\""));
  }
  roll.length = fields.length("length", {});
  roll.cut_since = fields.length("cut_since", {});
  if (!fields.has("measured")) return;
  roll.measured = read_measure(fields.group("measured"));
  roll.is_found = fields.has("length");
  if (roll.is_found || roll.fabric.width <= Length()) return;
  const Result<LengthEstimate> length = estimate_of(roll);
  if (length) roll.length = length->least;
}

}  // namespace

Roll read_roll(FieldReader& fields) {
  const Fabric usual = default_fabric();
  fields.only({"name", "width", "selvedge", "thickness", "length", "measured", "cut_since", "nap", "colour",
               "railroaded", "repeat", "shrinkage", "flaws", "cloth", "marks", "price_per_metre", "squared", "in_batch"});
  fields.need("name", to_say("give the roll a name"));
  Roll roll;
  roll.name = fields.text("name");
  roll.fabric.width = fields.length("width", usual.width);
  roll.fabric.selvedge = fields.length("selvedge", usual.selvedge);
  roll.fabric.thickness = fields.length("thickness", usual.thickness);
  read_length_of(fields, roll);
  roll.fabric.nap = static_cast<Nap>(fields.choice("nap", kNapWords, static_cast<int>(usual.nap)));
  roll.fabric.colour = fields.text("colour", usual.colour);
  roll.fabric.railroaded = fields.flag("railroaded", usual.railroaded);
  roll.fabric.repeat = read_repeat(fields.group("repeat"), usual.repeat);
  roll.fabric.shrinkage = read_shrinkage(fields.group("shrinkage"), usual.shrinkage);
  roll.squared = static_cast<Squared>(fields.choice("squared", kSquaredWords, 0));
  roll.cloth = fields.text("cloth");
  roll.marks = fields.texts("marks");
  if (fields.has("price_per_metre")) roll.price = fields.worth("price_per_metre", {});
  roll.in_batch = static_cast<InBatch>(fields.choice("in_batch", kInBatchWords, 0));
  for (FieldReader& flaw : fields.list_or_none("flaws")) {
    roll.flaws.push_back(read_flaw(flaw, roll.fabric.width));
  }
  return roll;
}

}  // namespace foldyard
