#pragma once

// The kinds of paper a sheet can be laid out for.
//
// A4 210 × 297 and A3 297 × 420 mm (ISO 216); Letter 8.5 × 11, Legal 8.5 × 14
// and Tabloid 11 × 17 in (Letter and Tabloid: ANSI/ASME Y14.1, sizes A and B;
// Legal: common practice, no source). Exact in tenths of a millimetre.

#include <QPageLayout>
#include <QSizeF>
#include <QString>
#include <array>

namespace foldyard {

enum class Paper { a4, letter, a3, legal, tabloid };

inline constexpr std::array<Paper, 5> kPapers = {Paper::a4, Paper::a3, Paper::letter, Paper::legal,
                                                 Paper::tabloid};

QSizeF paper_size_mm(Paper paper, bool landscape);
// "A4", "Letter": a proper name in every language.
QString paper_name(Paper paper);
// The whole page with no margins, for a printer or a PDF.
QPageLayout full_page(Paper paper, bool landscape);

}  // namespace foldyard
