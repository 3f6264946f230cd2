#pragma once

// The lists of products that are edited: what is made, and of one product the panels
// and webbing it takes and the prices it is sold for.

#include <functional>

#include "batch/job_table.h"

namespace foldyard {

enum class ProductColumn { name, worth, price, seam, labels };
JobList product_list();

// product: which one; −1: none.
enum class PieceColumn { panel, count, from };
JobList piece_list(std::function<int()> product);
enum class CutColumn { webbing, length, count };
JobList webbing_cut_list(std::function<int()> product);
enum class PriceColumn { of, price };
JobList price_list(std::function<int()> product);

}  // namespace foldyard
