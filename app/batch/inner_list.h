#pragma once

// A list inside an entry of another list of the job, such as the rules of the chosen
// line: which entry is asked each time; −1, or one that is gone, has none.

#include <functional>
#include <utility>
#include <vector>

#include "batch/job_table.h"
#include "measure/index.h"

namespace foldyard {

// owners: gives the list that the owner stands in, or null. values: the owner's own list.
template <class Owner, class Value>
struct InnerList {
  std::function<std::vector<Owner>*(Job&)> owners;
  std::vector<Value> Owner::*values;
  std::function<int()> chosen;

  // Null where no owner is chosen.
  std::vector<Value>* find(Job& job) const {
    std::vector<Owner>* all = owners(job);
    const int owner = chosen();
    return !all || owner < 0 || owner >= std::ssize(*all) ? nullptr : &((*all)[ix(owner)].*values);
  }
  std::vector<Value>& of(Job& job) const { return *find(job); }
  Value& at(Job& job, int row) const { return of(job)[ix(row)]; }
  const Value& at(const Job& job, int row) const { return at(const_cast<Job&>(job), row); }
  int count(const Job& job) const {
    const auto* list = find(const_cast<Job&>(job));
    return list ? static_cast<int>(list->size()) : 0;
  }
  Job with(Job job, Value value) const {
    of(job).push_back(std::move(value));
    return job;
  }
  Job without(Job job, int row) const {
    of(job).erase(of(job).begin() + row);
    return job;
  }
  Job moved(Job job, int row, int by) const {
    std::swap(at(job, row), at(job, row + by));
    return job;
  }
};

// place: of the list in a job file, with %1 for the owner and %2 for the row.
template <class Owner, class Value>
JobRows inner_rows(const InnerList<Owner, Value>& list, const QString& place) {
  JobRows rows;
  rows.count = [list](const Job& job) { return list.count(job); };
  rows.where = [list, place](int row) { return place.arg(list.chosen()).arg(row); };
  rows.take = [list](Job job, int row) { return list.without(std::move(job), row); };
  return rows;
}

}  // namespace foldyard
