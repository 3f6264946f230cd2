#pragma once

// Tables as comma-separated text that a spreadsheet opens (RFC 4180): a record a
// line, lines end with CR LF, fields with commas, quotes or line breaks stand between
// quotes, quotes within doubled. UTF-8.
//
// csv_text: rows shorter than the longest get empty fields, since every record has
// as many. A field that a spreadsheet would take for a formula (= + - @ at its head
// and no number) gets a space before it.
// read_csv: also takes lines that end with LF, a byte order mark, and semicolons or
// tabs as separators where the first line has more of them than commas. Refused: a
// quote that is not closed or does not stand at the edge of its field.
//
// Example: {{"roll", "left"}, {"Moss, 1", "3.2 m"}} is
//   roll,left\r\n"Moss, 1",3.2 m\r\n

#include <QByteArray>
#include <QStringList>
#include <vector>

#include "measure/result.h"

namespace foldyard {

QByteArray csv_text(const std::vector<QStringList>& rows);
Result<std::vector<QStringList>> read_csv(const QByteArray& bytes);

}  // namespace foldyard
