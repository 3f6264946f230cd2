#include "window/hand_book.h"

#include <gtest/gtest.h>

#include <QUndoStack>

#include "job/hand_edit.h"

namespace foldyard {
namespace {

constexpr FoldWay kOffCentre{FoldKind::off_centre, 2, false, false};

struct HandBookTest : testing::Test {
  QUndoStack history;
  HandBook book{history};
  HandSet::Place place{"Moss", kOffCentre};
  Hand at(int mm) const { return with_line({}, kOffCentre, 0, Length::mm(mm)); }
};

TEST_F(HandBookTest, OneChangeIsOneStepWithItsWords) {
  int changes = 0;
  QObject::connect(&book, &HandBook::changed, [&](const HandSet::Place& where) { changes += where == place; });
  book.change(place, at(405), "Move fold line 1 to 40.5 cm");
  book.change(place, at(300), "Move fold line 1 to 30 cm");
  EXPECT_EQ(history.count(), 2);
  EXPECT_EQ(history.undoText(), "Move fold line 1 to 30 cm");
  EXPECT_EQ(changes, 2);
}

TEST_F(HandBookTest, WhatChangesNothingLeavesNoTrace) {
  book.change(place, {}, "Back to the best folds");
  book.change(place, at(405), "Move");
  book.change(place, at(405), "Move");
  EXPECT_EQ(history.count(), 1);
}

TEST_F(HandBookTest, UndoGivesTheSetBeforeAndRedoTheSetAfter) {
  std::vector<HandSet> sets = {book.set()};
  for (const int mm : {405, 300, 200}) {
    book.change(place, at(mm), "Move");
    sets.push_back(book.set());
  }
  book.change(place, {}, "Back");
  sets.push_back(book.set());
  for (std::size_t i = sets.size(); i-- > 0;) {
    EXPECT_EQ(book.set(), sets[i]);
    history.undo();
  }
  for (const HandSet& set : sets) {
    EXPECT_EQ(book.set(), set);
    history.redo();
  }
}

TEST_F(HandBookTest, ForgetsEverythingWithAnotherDocument) {
  book.change(place, at(405), "Move");
  history.clear();
  book.forget();
  EXPECT_EQ(book.set(), HandSet{});
}

}  // namespace
}  // namespace foldyard
