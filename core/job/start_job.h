#pragma once

// A job made from ready kinds: rolls of a kind of cloth, the panels of goods.
//
// Names are those given, in the maker's language, with a number where the job has that name
// ("Velvet", "Velvet 2"; "Cushion cover 2, front"). A panel is worth its area at the
// default worth. The cloth's shrinkage is the kind's, so that panels are cut
// larger; whoever sews washed cloth sets it to none.
//
// Nothing here is checked against the limits; whoever takes the job asks
// check_job.

#include "cloth/cloth_kinds.h"
#include "goods/goods_panels.h"
#include "goods/ready_goods.h"
#include "job/job.h"
#include "measure/result.h"

namespace foldyard {

// Called as the kind is in English, or by the name given.
void add_roll(Job& job, const ClothKind& kind, Length length);
void add_roll(Job& job, const ClothKind& kind, Length length, const std::string& name);
// Refused as in goods/cut_size.h; ready goods never are.
std::optional<Problem> add_goods(Job& job, const std::string& name, const Goods& goods,
                                 bool is_lined, const SayPiece& say = say_in_english);

}  // namespace foldyard
