#include "fields/trade_icon.h"

#include <QFile>
#include <QGuiApplication>
#include <QIconEngine>
#include <QPainter>
#include <QPalette>
#include <QPixmap>
#include <QSvgRenderer>

#include <array>

namespace foldyard {
namespace {

constexpr std::array<const char*, kTradeIcons> kIconNames{
    "roll-on-table", "roll-add", "roll-tag", "roll-measure", "panel-add", "goods-add",
    "take-away",     "cut",      "lay",      "paper",        "stopwatch", "compare"};
constexpr char kDrawnInk[] = "#000";  // what the files are drawn in

QColor ink_of(IconPlace place, QIcon::Mode mode, QIcon::State state) {
  const QPalette palette = QGuiApplication::palette();
  if (mode == QIcon::Disabled) return palette.color(QPalette::Disabled, QPalette::ButtonText);
  const bool is_chosen = place == IconPlace::menu ? mode == QIcon::Active : mode == QIcon::Selected || state == QIcon::On;
  return palette.color(QPalette::Active, is_chosen ? QPalette::HighlightedText : QPalette::ButtonText);
}

class InkEngine : public QIconEngine {
 public:
  InkEngine(QByteArray drawing, IconPlace place) : drawing_(std::move(drawing)), place_(place) {}

  void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State state) override {
    QByteArray inked = drawing_;
    QSvgRenderer(inked.replace(kDrawnInk, ink_of(place_, mode, state).name().toLatin1())).render(painter, rect);
  }
  QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
    QPixmap pixmap(size);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    paint(&painter, pixmap.rect(), mode, state);
    return pixmap;
  }
  QIconEngine* clone() const override { return new InkEngine(*this); }

 private:
  QByteArray drawing_;
  IconPlace place_;
};

QByteArray drawing_of(TradeIcon icon) {
  QFile file(QStringLiteral(":/icons/%1.svg").arg(QLatin1String(kIconNames[static_cast<std::size_t>(icon)])));
  return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

}  // namespace

QIcon trade_icon(TradeIcon icon, IconPlace place) { return QIcon(new InkEngine(drawing_of(icon), place)); }

}  // namespace foldyard
