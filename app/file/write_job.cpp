#include "file/write_job.h"

#include "file/exact_length.h"
#include "job/decimal.h"

namespace foldyard {
namespace {

std::string quoted(const std::string& text) {
  static const char* const kHex = "0123456789abcdef";
  std::string out = "\"";
  for (char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    if (c == '"' || c == '\\') out += '\\';
    if (byte < 0x20) (out += "\\u00") += {kHex[byte / 16], kHex[byte % 16]};
    else out += c;
  }
  return out + '"';
}

// One object on one line: {"name": "…", "width": "…"}.
class Line {
 public:
  explicit Line(Unit unit) : unit_(unit) {}

  Line& raw(const char* key, const std::string& value) {
    text_ += (text_.empty() ? "\"" : ", \"");
    text_ += key;
    text_ += "\": ";
    text_ += value;
    return *this;
  }
  Line& text(const char* key, const std::string& value) { return raw(key, quoted(value)); }
  Line& length(const char* key, Length value) { return text(key, exact_length(value, unit_)); }
  Line& flag(const char* key, bool value) { return raw(key, value ? "true" : "false"); }
  Line& whole(const char* key, std::int64_t value) { return raw(key, std::to_string(value)); }
  Line& worth(const char* key, Worth value) { return text(key, write_decimal(value.parts(), 4)); }
  Line& seconds(const char* key, Duration value) {
    return raw(key, write_decimal(value.ticks() / Duration::kTicksPerMs, 3));
  }
  std::string object() const { return '{' + text_ + '}'; }

 private:
  Unit unit_;
  std::string text_;
};

std::string roll_text(const Roll& roll, Unit unit) {
  return Line(unit)
      .text("name", roll.name)
      .length("width", roll.fabric.width)
      .length("selvedge", roll.fabric.selvedge)
      .length("thickness", roll.fabric.thickness)
      .length("length", roll.length)
      .text("nap", roll.fabric.nap == Nap::one_way ? "one-way" : "none")
      .text("colour", roll.fabric.colour)
      .object();
}

std::string panel_text(const Panel& panel, Unit unit) {
  return Line(unit)
      .text("name", panel.name)
      .length("across", panel.across)
      .length("along", panel.along)
      .flag("may_turn", panel.may_turn)
      .flag("on_fold", panel.on_fold)
      .worth("worth", panel.worth)
      .object();
}

std::string table_text(const Table& table, Unit unit) {
  return Line(unit)
      .length("length", table.length)
      .length("depth", table.depth)
      .length("reach", table.reach)
      .flag("both_sides", table.both_sides)
      .object();
}

std::string cutter_text(const Cutter& cutter, Unit unit) {
  return Line(unit)
      .length("height", cutter.height)
      .whole("most_plies", cutter.most_plies)
      .object();
}

std::string losses_text(const Losses& losses, Unit unit) {
  return Line(unit)
      .length("squaring", losses.squaring)
      .length("allowance", losses.allowance)
      .length("fold_trim", losses.fold_trim)
      .length("keep_across", losses.keep_across)
      .length("keep_along", losses.keep_along)
      .object();
}

std::string pace_text(const Pace& pace, Unit unit) {
  return Line(unit)
      .seconds("unroll", pace.unroll)
      .seconds("cross_cut", pace.cross_cut)
      .seconds("fold", pace.fold)
      .seconds("lift", pace.lift)
      .seconds("mark", pace.mark)
      .raw("seconds_per_metre", write_decimal(pace.ms_per_metre, 3))
      .seconds("handle", pace.handle)
      .whole("allowance_percent", pace.allowance_percent)
      .worth("rate", pace.rate)
      .object();
}

template <class List, class Writer>
std::string list_text(const List& list, Unit unit, Writer write) {
  std::string out;
  for (const auto& entry : list) {
    out += (out.empty() ? "[\n    " : ",\n    ") + write(entry, unit);
  }
  return out.empty() ? "[]" : out + "\n  ]";
}

std::string unit_text(Unit unit) {
  static const char* const kUnits[] = {"mm", "cm", "m", "in", "yd"};  // in the order of Unit
  return kUnits[static_cast<int>(unit)];
}

}  // namespace

QByteArray write_job(const Job& job) {
  const Unit unit = job.unit;
  std::string out = "{\n  \"foldyard_job\": 1,\n";
  const auto field = [&out](const char* key, const std::string& value) {
    ((((out += "  \"") += key) += "\": ") += value) += ",\n";
  };
  field("name", quoted(job.name));
  field("unit", quoted(unit_text(unit)));
  field("rolls", list_text(job.rolls, unit, roll_text));
  field("panels", list_text(job.panels, unit, panel_text));
  field("table", table_text(job.table, unit));
  field("cutter", cutter_text(job.cutter, unit));
  field("losses", losses_text(job.losses, unit));
  field("pace", pace_text(job.pace, unit));
  out += "  \"longest_fan\": " + std::to_string(job.longest_fan) + "\n}\n";
  return QByteArray::fromStdString(out);
}

}  // namespace foldyard
