#include "drawing/actual_size.h"

#include <optional>
#include <vector>

#include "measure/index.h"

namespace foldyard {

namespace {

constexpr qsizetype kEntry = 20;  // bytes of a line of the table
const QByteArray kWish = "\n/ViewerPreferences << /PrintScaling /None >>";

// Where the table stands, where its objects do (−1: not used), and its root.
struct Places {
  qsizetype table = 0;
  qsizetype entries = 0;  // where the first line of the table is
  std::vector<qsizetype> objects;
  qsizetype root = 0;
};

// The whole number at a place, or −1.
qsizetype number_at(const QByteArray& pdf, qsizetype at) {
  qsizetype value = -1;
  for (; at >= 0 && at < pdf.size() && pdf[at] >= '0' && pdf[at] <= '9' && value < 100'000'000'000; ++at)
    value = (value < 0 ? 0 : value) * 10 + (pdf[at] - '0');
  return value;
}

qsizetype behind(const QByteArray& pdf, const QByteArray& words, qsizetype from) {
  const qsizetype at = pdf.indexOf(words, from);
  return at < 0 ? -1 : at + words.size();
}

bool stands_at(const QByteArray& pdf, const QByteArray& words, qsizetype at) {
  return at >= 0 && at + words.size() <= pdf.size() && pdf.mid(at, words.size()) == words;
}

bool read_objects(const QByteArray& pdf, qsizetype count, Places& places) {
  for (qsizetype i = 0; i < count; ++i) {
    const qsizetype line = places.entries + i * kEntry;
    if (line + kEntry > pdf.size() || (pdf[line + 17] != 'n' && pdf[line + 17] != 'f')) return false;
    const bool used = pdf[line + 17] == 'n';
    places.objects.push_back(used ? number_at(pdf, line) : -1);
    if (used && !stands_at(pdf, QByteArray::number(i) + " 0 obj", places.objects.back()))
      return false;
  }
  return true;
}

std::optional<Places> places_of(const QByteArray& pdf) {
  const qsizetype end = pdf.lastIndexOf("startxref\n");
  if (end < 0 || pdf.count("startxref") != 1) return {};
  Places places;
  places.table = number_at(pdf, end + 10);
  if (!stands_at(pdf, "xref\n0 ", places.table)) return {};
  const qsizetype count = number_at(pdf, places.table + 7);
  places.entries = behind(pdf, "\n", places.table + 7);
  if (count < 1 || count > pdf.size() / kEntry || !read_objects(pdf, count, places)) return {};
  const qsizetype trailer = places.entries + count * kEntry;
  const qsizetype root = number_at(pdf, behind(pdf, "/Root ", trailer));
  if (!stands_at(pdf, "trailer", trailer) || root < 1 || root >= count) return {};
  places.root = places.objects[ix(root)];
  return places;
}

QByteArray ten_digits(qsizetype number) {
  return QByteArray::number(number).rightJustified(10, '0');
}

}  // namespace

QByteArray at_actual_size(const QByteArray& pdf) {
  const std::optional<Places> places = places_of(pdf);
  if (!places) return pdf;
  const qsizetype at = behind(pdf, "/Type /Catalog", places->root);
  const qsizetype close = pdf.indexOf("endobj", places->root);
  if (at < 0 || at > close || pdf.contains("/ViewerPreferences")) return pdf;
  QByteArray changed = pdf;
  for (std::size_t i = 0; i < places->objects.size(); ++i)
    if (places->objects[i] >= at)
      changed.replace(places->entries + static_cast<qsizetype>(i) * kEntry, 10,
                      ten_digits(places->objects[i] + kWish.size()));
  const qsizetype end = changed.lastIndexOf("startxref\n") + 10;
  changed.replace(end, QByteArray::number(places->table).size(),
                  QByteArray::number(places->table + kWish.size()));
  changed.insert(at, kWish);
  return places_of(changed) ? changed : pdf;
}

}  // namespace foldyard
