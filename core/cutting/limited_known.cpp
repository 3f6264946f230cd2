#include "cutting/limited_known.h"

namespace foldyard::limited {

namespace {

bool is_as_good(const Build& a, const Build& b) {
  return a.width <= b.width && a.height <= b.height && a.gain >= b.gain;
}

}  // namespace

std::size_t KnownBuilds::hash(const Build& b) const {
  std::uint64_t h = 0x9e3779b97f4a7c15 + b.rim;
  for (int i = 0; i < counting_.words(); ++i) {
    h = (h ^ b.copies[i]) * 0xff51afd7ed558ccd;
    h ^= h >> 32;
  }
  return static_cast<std::size_t>(h);
}

bool KnownBuilds::has_same_panels(const Build& a, const Build& b) const {
  if (a.rim != b.rim) return false;
  for (int i = 0; i < counting_.words(); ++i)
    if (a.copies[i] != b.copies[i]) return false;
  return true;
}

std::size_t KnownBuilds::slot_of(const Build& b) const {
  const std::size_t mask = first_.size() - 1;
  std::size_t slot = hash(b) & mask;
  while (first_[slot] >= 0 && !has_same_panels(builds_[first_[slot]], b)) slot = (slot + 1) & mask;
  return slot;
}

bool KnownBuilds::has_as_good(const Build& b) {
  const std::size_t slot = slot_of(b);
  for (int i = first_[slot]; i >= 0; i = next_[i])
    if (is_as_good(builds_[i], b)) return true;
  // The first stays in its slot, given up or not: the slot is found by it.
  for (int before = first_[slot], i = before; i >= 0; i = next_[i]) {
    if (!is_as_good(b, builds_[i])) {
      before = i;
      continue;
    }
    given_up_[i] = 1;
    if (i != before) next_[before] = next_[i];
  }
  return false;
}

void KnownBuilds::add(int index) {
  next_.resize(index + 1, -1);
  given_up_.resize(index + 1, 0);
  const std::size_t slot = slot_of(builds_[index]);
  if (first_[slot] < 0) ++used_;
  next_[index] = first_[slot];
  first_[slot] = index;
  if (used_ * 2 > first_.size()) grow();
}

void KnownBuilds::grow() {
  std::vector<int> old(first_.size() * 2, -1);
  old.swap(first_);
  for (int head : old)
    if (head >= 0) first_[slot_of(builds_[head])] = head;
}

}  // namespace foldyard::limited
