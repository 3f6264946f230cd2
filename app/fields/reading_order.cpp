#include "fields/reading_order.h"

#include <QGuiApplication>

namespace foldyard {
namespace {

constexpr QChar kLeftToRightMark(0x200e);  // Unicode: LEFT-TO-RIGHT MARK, seen by no one

}  // namespace

QString in_own_order(const QString& words) {
  return QGuiApplication::isRightToLeft() && !words.isEmpty() ? kLeftToRightMark + words + kLeftToRightMark : words;
}

}  // namespace foldyard
