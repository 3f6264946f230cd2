#pragma once

// The limits of a job, both ends included; docs/job-file.md lists them and the
// tests try both sides of each. They keep every sum of a plan within 64 bits.

#include <cstddef>
#include <string_view>

#include "measure/length.h"
#include "measure/words.h"

namespace foldyard {

struct LengthLimit {
  Length least;
  Length most;
  std::string_view in_words;
};

struct NumberLimit {
  std::int64_t least = 0;
  std::int64_t most = 0;
};

namespace limits {

inline constexpr std::size_t kMostRolls = 200;
inline constexpr std::size_t kMostPanels = 50;
inline constexpr std::size_t kLongestName = 80;  // characters
inline constexpr std::size_t kMostFlaws = 200;   // a roll

inline constexpr LengthLimit kRollWidth{Length::mm(10), Length::mm(10'000), to_say("1 cm to 10 m")};
inline constexpr LengthLimit kSelvedge{Length::mm(0), Length::mm(1'000), to_say("0 cm to 1 m")};
inline constexpr LengthLimit kThickness{Length::units(16), Length::mm(50), to_say("0.05 mm to 50 mm")};
inline constexpr LengthLimit kRollLength{Length::mm(10), kLongest, to_say("1 cm to 1 km (1000 m)")};
inline constexpr LengthLimit kOuter{Length::mm(10), Length::mm(5'000), to_say("1 cm to 5 m")};
inline constexpr LengthLimit kTube{Length::mm(0), Length::mm(5'000), to_say("0 cm to 5 m")};
inline constexpr LengthLimit kGive{Length::mm(0), Length::mm(1'000), to_say("0 cm to 1 m")};
// Of a pattern that repeats; 0 where it does not.
inline constexpr LengthLimit kRepeat{Length::mm(1), Length::mm(10'000), to_say("1 mm to 10 m")};
inline constexpr LengthLimit kPanelAcross{Length::mm(5), Length::mm(10'000), to_say("5 mm to 10 m")};
inline constexpr LengthLimit kPanelAlong{Length::mm(5), kLongest, to_say("5 mm to 1 km (1000 m)")};
inline constexpr LengthLimit kTableLength{Length::mm(100), kLongest, to_say("10 cm to 1 km (1000 m)")};
inline constexpr LengthLimit kTableDepth{Length::mm(100), Length::mm(10'000), to_say("10 cm to 10 m")};
inline constexpr LengthLimit kReach{Length::mm(100), Length::mm(10'000), to_say("10 cm to 10 m")};
inline constexpr LengthLimit kCutterHeight{Length::mm(1), Length::mm(500), to_say("1 mm to 50 cm")};
inline constexpr LengthLimit kSquaring{Length::mm(0), Length::mm(10'000), to_say("0 cm to 10 m")};
inline constexpr LengthLimit kAllowance{Length::mm(0), Length::mm(1'000), to_say("0 cm to 1 m")};
inline constexpr LengthLimit kFoldTrim{Length::units(32), Length::mm(100), to_say("0.1 mm to 10 cm")};
inline constexpr LengthLimit kKeep{Length::mm(5), kLongest, to_say("5 mm to 1 km (1000 m)")};

inline constexpr NumberLimit kMostPlies{1, 200};
inline constexpr NumberLimit kLongestFan{3, 12};
inline constexpr NumberLimit kAllowancePercent{0, 100};
inline constexpr NumberLimit kStepMs{0, 900'000};          // 15 min
inline constexpr NumberLimit kMsPerMetre{0, 600'000};      // 10 min a metre
inline constexpr NumberLimit kPanelWorth{1, 1'000'000'000};  // 0.0001 to 100 000
inline constexpr NumberLimit kRate{0, 100'000'000};          // 0 to 10 000 an hour
inline constexpr NumberLimit kAtMost{1, 1'000'000};
inline constexpr NumberLimit kShrinkage{0, 5'000};                // 0 to 50 %
inline constexpr NumberLimit kTurns{1, 50'000};
inline constexpr NumberLimit kTurnsGive{0, 50'000};
inline constexpr NumberLimit kGrams{1, 100'000'000};              // 1 g to 100 t
inline constexpr NumberLimit kGramsOrNone{0, 100'000'000};
inline constexpr NumberLimit kSquareMetreGrams{1, 100'000};       // 0.1 g to 10 kg
inline constexpr NumberLimit kSquareMetreGive{0, 100'000};

// Of goods that panels are sewn into (core/job/check_sewn.h).
inline constexpr Length kMostFinished = Length::mm(10'000);
inline constexpr Length kMostTurning = Length::mm(500);  // a seam or a hem
inline constexpr int kMostHandles = 8;

// Of what a batch is planned from (core/job/check_order.h).
inline constexpr std::size_t kMostProducts = 50;
inline constexpr std::size_t kMostWebbings = 20;
inline constexpr std::size_t kMostEnds = 200;       // of one webbing
inline constexpr std::size_t kMostOrderLines = 100;
inline constexpr std::size_t kMostWords = 20;       // in a list of cloths and marks
inline constexpr std::size_t kMostRules = 20;       // of one line
inline constexpr std::size_t kMostOnHand = 5'000;
inline constexpr std::size_t kMostRecords = 1'000;
inline constexpr LengthLimit kCutOff{Length::mm(0), kLongest, to_say("0 cm to 1 km (1000 m)")};
inline constexpr std::size_t kMostSewingOrders = 10;  // of one product
inline constexpr std::size_t kMostSteps = 50;
inline constexpr std::size_t kMostTimes = 200;        // taken of one step
inline constexpr std::size_t kMostKept = 500;         // of an order
inline constexpr std::size_t kMostKeptSteps = 2'000;  // of one length
inline constexpr NumberLimit kKeptCount{1, 1'000};
inline constexpr LengthLimit kSeam{Length::mm(0), Length::mm(1'000'000), to_say("0 cm to 1 km (1000 m)")};
inline constexpr LengthLimit kReel{Length::mm(1'000), Length::mm(1'000'000), to_say("1 m to 1 km (1000 m)")};
inline constexpr NumberLimit kThreadTenths{10, 1'000};             // 1 to 100 times
inline constexpr NumberLimit kSewingMs{0, 86'400'000};             // a day
inline constexpr NumberLimit kSittingMs{60'000, 86'400'000};
inline constexpr std::int64_t kMostSittings = 100'000;  // that all pieces of an order take to sew
inline constexpr std::int64_t kMostCuttingHours = 4'000'000;  // of all rolls (core/job/most_cutting.h)
inline constexpr std::int64_t kMostAbreast = 250'000;         // on all rolls of a batch (core/job/most_abreast.h)
inline constexpr NumberLimit kLabels{0, 1'000};
inline constexpr NumberLimit kInAPiece{1, 1'000};
inline constexpr NumberLimit kPieces{0, 100'000};
inline constexpr NumberLimit kClothPrice{0, 1'000'000'000};  // 0 to 100 000
inline constexpr LengthLimit kWebbingRoll{Length::mm(100), Length::mm(1'000'000), to_say("10 cm to 1 km (1000 m)")};
inline constexpr LengthLimit kWebbingCut{Length::mm(5), Length::mm(1'000'000), to_say("5 mm to 1 km (1000 m)")};
inline constexpr LengthLimit kWebbingLoss{Length::mm(0), Length::mm(1'000), to_say("0 cm to 1 m")};

// Of the smallest panel, by area, on one roll.
inline constexpr std::int64_t kMostPanelsOnRoll = 1'000'000;

}  // namespace limits
}  // namespace foldyard
