#include "bench/plate_model.h"

#include <array>
#include <map>
#include <set>

#include "oracle/integer_model.h"

namespace foldyard::bench {

namespace {

using Size = std::array<int, 2>;

struct Shape {
  Size size;
  std::size_t panel;
};

class PlateModel {
 public:
  PlateModel(const test::Instance& instance, bool turned) : instance_(instance) {
    for (std::size_t i = 0; i < instance.panels.size(); ++i) {
      const test::InstancePanel& p = instance.panels[i];
      shapes_.push_back({{p.across, p.along}, i});
      if (turned && p.across != p.along) shapes_.push_back({{p.along, p.across}, i});
      limit_rows_.push_back(model_.add_row(-static_cast<int>(p.most)));
    }
    for (const int axis : {0, 1})
      places_[axis] = sums(axis, axis == 0 ? instance.width : instance.length);
  }

  std::int64_t most() {
    const Size whole = floored({instance_.width, instance_.length});
    if (whole[0] == 0 || whole[1] == 0) return 0;
    const int once = model_.add_row(-1);
    model_.add_unknown(0, {{once, -1}, {row_of(whole), 1}});
    return model_.most();
  }

 private:
  std::set<int> sums(int axis, int most) const {
    std::set<int> reached{0};
    for (int at = 0; at <= most; ++at)
      if (reached.contains(at))
        for (const Shape& s : shapes_)
          if (at + s.size[static_cast<std::size_t>(axis)] <= most)
            reached.insert(at + s.size[static_cast<std::size_t>(axis)]);
    return reached;
  }

  Size floored(Size size) const {
    for (const std::size_t axis : {0, 1})
      size[axis] = *std::prev(places_[axis].upper_bound(size[axis]));
    return size;
  }

  int row_of(const Size& plate) {
    const auto known = rows_.find(plate);
    if (known != rows_.end()) return known->second;
    const int row = model_.add_row(0);
    rows_.emplace(plate, row);
    for (const Shape& s : shapes_)
      if (s.size == plate)
        model_.add_unknown(instance_.panels[s.panel].value,
                           {{row, -1}, {limit_rows_[s.panel], -1}});
    for (const std::size_t axis : {0, 1})
      for (const int at : places_[axis])
        if (0 < at && at < plate[axis]) add_cut(plate, row, axis, at);
    return row;
  }

  void add_cut(const Size& plate, int row, std::size_t axis, int at) {
    Size near = plate, beyond = plate;
    near[axis] = at;
    beyond[axis] -= at;
    test::Terms terms{{row, -1}};
    for (const Size& part : {floored(near), floored(beyond)})
      if (part[0] > 0 && part[1] > 0) terms.push_back({row_of(part), 1});
    model_.add_unknown(0, terms);
  }

  const test::Instance& instance_;
  std::vector<Shape> shapes_;
  std::set<int> places_[2];
  test::IntegerModel model_;
  std::vector<int> limit_rows_;
  std::map<Size, int> rows_;
};

}  // namespace

std::int64_t worth_by_solver(const test::Instance& instance, bool turned) {
  return PlateModel(instance, turned).most();
}

}  // namespace foldyard::bench
