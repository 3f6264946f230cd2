#pragma once

// What is said of orders and products in the window.

#include <QString>

#include <vector>

#include "job/job.h"
#include "measure/result.h"

namespace foldyard {

QString product_name(const Job& job, const OrderLine& line);

// The same problem with its place in words: "Line 2, “Carrier”, from: …" for one at
// `order.lines[1].from[0]`, "Product “Carrier”, worth: …" at `products[0].worth`.
Problem told_in_words(const Problem& problem, const Job& job);
QString order_problem_text(const Problem& problem, const Job& job);

// Cloths and marks as they are typed, set apart by semicolons; by commas too,
// where no roll's cloth or mark has the comma in it.
std::vector<std::string> typed_words(const QString& text, const Job& job);
QString words_text(const std::vector<std::string>& words);

// A whole number of at least 0, as counts are typed.
Result<std::int64_t> typed_count(const QString& text);

}  // namespace foldyard
