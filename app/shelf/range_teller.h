#pragma once

// RangeTeller: what a roll of estimated length will yield, found on another thread.
//
// A question asked meanwhile stops the one that runs; the latest question wins,
// and what belongs to an older one is never told.

#include <QObject>
#include <QThreadPool>

#include <atomic>
#include <functional>
#include <memory>
#include <optional>

#include "job/yield_range.h"

namespace foldyard {

struct RangeQuestion {
  Job job;
  int roll = 0;
  FoldWay way;
  Aim aim = Aim::most_worth;
  bool operator==(const RangeQuestion&) const = default;
};

struct RangeAnswer {
  RangeQuestion question;
  YieldRange range;
};

using FindRange = std::function<Result<YieldRange>(const RangeQuestion&, const std::atomic<bool>& stopped)>;

// yield_range of the job room.
Result<YieldRange> find_range(const RangeQuestion& question, const std::atomic<bool>& stopped);

class RangeTeller : public QObject {
  Q_OBJECT

 public:
  explicit RangeTeller(FindRange find = find_range, QObject* parent = nullptr);
  ~RangeTeller() override;

  void ask(RangeQuestion question);
  // Nobody waits for an answer any more.
  void forget();
  bool is_busy() const { return is_running_; }

 signals:
  void told(const std::shared_ptr<const foldyard::RangeAnswer>& answer);
  // In one sentence.
  void refused(const QString& reason);

 private:
  void run();
  void finish(const std::shared_ptr<const RangeAnswer>& answer, const QString& reason);

  FindRange find_;
  QThreadPool pool_;
  std::optional<RangeQuestion> waiting_;
  std::atomic<bool> stopped_ = false;
  bool is_running_ = false;
  bool is_wanted_ = false;
};

}  // namespace foldyard
