#pragma once

// A paint device that counts what is painted on it and draws nothing.

#include <QPaintDevice>
#include <QPaintEngine>

namespace foldyard::sample {

struct StrokeCount {
  int grounds = 0;   // rectangles without a pen
  int outlines = 0;  // rectangles without a brush
  int tags = 0;      // rectangles with both
  int lines = 0;
  int words = 0;
};

class CountingEngine : public QPaintEngine {
 public:
  CountingEngine() : QPaintEngine(AllFeatures) {}
  bool begin(QPaintDevice*) override { return true; }
  bool end() override { return true; }
  Type type() const override { return User; }

  void updateState(const QPaintEngineState& now) override {
    if (now.state() & DirtyPen) has_pen_ = now.pen().style() != Qt::NoPen;
    if (now.state() & DirtyBrush) has_brush_ = now.brush().style() != Qt::NoBrush;
  }
  void drawRects(const QRectF*, int number) override { add_rects(number); }
  void drawRects(const QRect*, int number) override { add_rects(number); }
  void drawLines(const QLineF*, int number) override { count.lines += number; }
  void drawLines(const QLine*, int number) override { count.lines += number; }
  void drawTextItem(const QPointF&, const QTextItem&) override { ++count.words; }
  void drawPath(const QPainterPath&) override {}
  void drawPolygon(const QPointF*, int, PolygonDrawMode) override {}
  void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {}

  StrokeCount count;

 private:
  void add_rects(int number) {
    (has_pen_ && has_brush_ ? count.tags : has_pen_ ? count.outlines : count.grounds) += number;
  }

  bool has_pen_ = false;
  bool has_brush_ = false;
};

class StrokeCounter : public QPaintDevice {
 public:
  QPaintEngine* paintEngine() const override { return &engine_; }
  const StrokeCount& count() const { return engine_.count; }

 protected:
  int metric(PaintDeviceMetric metric) const override {
    switch (metric) {
      case PdmWidth:
      case PdmHeight: return 4000;
      case PdmDepth: return 32;
      case PdmDevicePixelRatio: return 1;
      case PdmDevicePixelRatioScaled: return static_cast<int>(devicePixelRatioFScale());
      default: return 96;
    }
  }

 private:
  mutable CountingEngine engine_;
};

}  // namespace foldyard::sample
