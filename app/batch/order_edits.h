#pragma once

// Edits of an order and its products: each gives a whole new Job.

#include "job/job.h"

namespace foldyard {

// A line for every product, must 1; where there is no product, first one for every
// panel, with the panel's name and worth.
Job with_order_of_all(Job job);

// A line more, must 1: of the first product that no line asks for, else of the
// first. REQUIRES a product.
Job with_line(Job job);
Job without_line(Job job, int line);

// A product more, of one of the first panel and worth as much, under a name of its own.
Job with_product(Job job);
// The lines that ask for it go with it.
Job without_product(Job job, int product);


// A webbing more, of 50 m, under a name of its own.
Job with_webbing(Job job);
// What products take of it goes with it.
Job without_webbing(Job job, int webbing);

}  // namespace foldyard
