#pragma once

// A list of the job as an editable table: each good cell is a step of the history with
// words, each refused one stays as a draft (fields/draft_table.h).
//
// What the columns hold is said by values of functions; they are called with the job
// of the document and a row. A table of a list inside a list (the rules of a line)
// reads which one from whoever made it, and is shown anew when that changes.

#include <functional>
#include <vector>

#include "document/document.h"
#include "fields/draft_table.h"
#include "measure/index.h"

namespace foldyard {

struct JobColumn {
  QString head;
  QString help;
  std::string key;  // in a job file, as "must"; empty: the row's own place
  std::function<QString(const Job&, int)> text;
  // Puts the text into the job; gives the reason where it means nothing. Null: only read.
  std::function<std::optional<QString>(Job&, int, const QString&)> put = {};
  // Null: typed.
  std::function<QStringList(const Job&)> choices = {};
  bool is_word = false;
  QString empty = {};  // what stands in a cell without text
  // Of one cell, below the help of its column. Null: nothing more.
  std::function<QString(const Job&, int)> more = {};
};

struct JobRows {
  std::function<int(const Job&)> count;
  std::function<QString(int)> where;               // in a job file, as "order.lines[2]"
  std::function<QString(const Job&, int)> called;  // for the history, as "“Carrier”"
  // Null where rows do not come or go.
  std::function<Job(Job)> add = {};
  std::function<Job(Job, int)> take = {};
  std::function<Job(Job, int, int)> move = {};  // a row one up (−1) or down (1); null where their order is nothing
  QString add_words = {};   // for the history
  QString take_words = {};  // with %1 for what the row is called
  QString move_words = {};
};

struct JobList {
  JobRows rows;
  std::vector<JobColumn> columns;
};

class JobTable : public DraftTable {
  Q_OBJECT

 public:
  JobTable(Document& document, JobList list, QObject* parent = nullptr);

  int columnCount(const QModelIndex& parent = {}) const override { return parent.isValid() ? 0 : static_cast<int>(list_.columns.size()); }
  const JobRows& rows() const { return list_.rows; }
  using DraftTable::show_anew;
  // What is reckoned from elsewhere has changed.
  void refresh() { follow(); }

  // What was refused, if anything was.
  std::optional<QString> add();
  std::optional<QString> take(int row);
  // by: −1 or 1. REQUIRES that the row it changes places with is there.
  std::optional<QString> move(int row, int by);

 protected:
  int count_rows() const override { return list_.rows.count(document_.job()); }
  QString head(int column) const override { return at(column).head; }
  QString help(int row, int column) const override;
  bool is_word(int column) const override { return at(column).is_word; }
  bool is_typed(int, int column) const override { return at(column).put != nullptr; }
  QString text(int row, int column) const override { return at(column).text(document_.job(), row); }
  QString empty_text(int column) const override { return at(column).empty; }
  QStringList choices(int column) const override;
  std::optional<QString> put(int row, int column, const QString& text) override;

 private:
  const JobColumn& at(int column) const { return list_.columns[ix(column)]; }
  std::optional<QString> edit(const Job& next, const QString& words, const QString& field = {});

  Document& document_;
  JobList list_;
};

// Texts put into values of the job; the reason where they mean nothing.
std::optional<QString> put_count(std::int64_t& count, const QString& text, const Job& job);
std::optional<QString> put_length(Length& length, const QString& text, const Job& job);
std::optional<QString> put_worth(Worth& worth, const QString& text, const Job& job);
std::optional<QString> put_time(Duration& time, const QString& text, const Job& job);
// A place in a list whose entries have names.
std::optional<QString> put_named(int& place, const QStringList& names, const QString& text);

}  // namespace foldyard
