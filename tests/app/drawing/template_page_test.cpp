#include "drawing/template_page.h"

#include <gtest/gtest.h>

#include "app/drawing/paper_probe.h"
#include "app/drawing/sample_plans.h"
#include "drawing/template_data.h"
#include "drawing/template_tile.h"
#include "goods/cut_size.h"

namespace foldyard {
namespace {

SheetOptions templates_on(Paper paper, bool landscape = false, std::vector<int> panels = {0}) {
  SheetOptions options{paper};
  options.landscape = landscape;
  options.diagram = false;
  options.templates = std::move(panels);
  return options;
}

// The printed pages of one template, put together as a person does: page by
// page, each laid so that its crosses meet those of the page before.
class Printed {
 public:
  explicit Printed(const Sheet& sheet)
      : area_(tile_area(sheet)),
        data_(template_data(sheet.job(), sheet.job().rolls[0].fabric, 0, area_.size())) {
    const QByteArray pdf = sheet_pdf(sheet);
    for (int page = 1; page < sheet.pages(); ++page) pages_.push_back(probe::pdf_page(pdf, page));
  }

  const TemplateData& data() const { return data_; }
  std::size_t tiles() const { return pages_.size(); }

  // From the left cut line of the first page of a row to the right one of its last.
  double width(int row) const {
    const QRectF panel = data_.grid.panel_rect();
    const int last = static_cast<int>(data_.grid.columns) - 1;
    const double y = clear_y(row);
    double width = upright(row, last, {panel.right(), y}) - upright(row, 0, {panel.left(), y});
    for (int column = 0; column < last; ++column) {
      const QPointF cross = cross_between(row, column, true) - QPointF(0, 2);
      width += upright(row, column, cross) - upright(row, column + 1, cross);
    }
    return width;
  }

  double height(int column) const {
    const QRectF panel = data_.grid.panel_rect();
    const int last = static_cast<int>(data_.grid.rows) - 1;
    const double x = clear_x(column);
    double height = level(last, column, {x, panel.bottom()}) - level(0, column, {x, panel.top()});
    for (int row = 0; row < last; ++row) {
      const QPointF cross = cross_between(row, column, false) - QPointF(2, 0);
      height += level(row, column, cross) - level(row + 1, column, cross);
    }
    return height;
  }

  // How far apart the two prints of a cross come to lie, along its join.
  double largest_shift() const {
    double most = 0;
    for (int row = 0; row < data_.grid.rows; ++row)
      for (int column = 0; column + 1 < data_.grid.columns; ++column) {
        const QPointF cross = cross_between(row, column, true) - QPointF(2, 0);
        most = std::max(most, std::abs(level(row, column, cross) - level(row, column + 1, cross)));
      }
    return most;
  }

 private:
  const QImage& page(int row, int column) const {
    return pages_.at(static_cast<std::size_t>(row * data_.grid.columns + column));
  }
  QPointF on_page(int row, int column, const QPointF& at) const {
    return at - data_.grid.tile_rect(row, column).topLeft() + area_.topLeft();
  }
  double upright(int row, int column, const QPointF& at) const {
    return probe::upright_stroke(page(row, column), on_page(row, column, at));
  }
  double level(int row, int column, const QPointF& at) const {
    return probe::level_stroke(page(row, column), on_page(row, column, at));
  }
  // Where a person's eye looks for the cross; it is measured on the print.
  QPointF cross_between(int row, int column, bool beside) const {
    const QRectF a = data_.grid.tile_rect(row, column);
    const QRectF b = data_.grid.tile_rect(row + !beside, column + beside);
    for (const MatchMark& mark : match_marks(data_.grid))
      if (mark.beside == beside && a.contains(mark.at) && b.contains(mark.at)) return mark.at;
    ADD_FAILURE() << "no cross between pages";
    return {};
  }
  double clear_y(int row) const {
    return std::max(data_.grid.panel_rect().top(), data_.grid.tile_rect(row, 0).top()) + 21;
  }
  double clear_x(int column) const {
    return std::max(data_.grid.panel_rect().left(), data_.grid.tile_rect(0, column).left()) + 21;
  }

  QRectF area_;
  TemplateData data_;
  std::vector<QImage> pages_;
};

struct OnPaper {
  const char* name;
  Paper paper;
  bool landscape;
};

class TemplateOn : public testing::TestWithParam<OnPaper> {};

TEST_P(TemplateOn, MeasuresThePanelOncePutTogether) {
  const samples::Sample sample = samples::carriers();
  const Printed printed(sample.sheet(templates_on(GetParam().paper, GetParam().landscape)));
  ASSERT_EQ(static_cast<std::int64_t>(printed.tiles()), printed.data().grid.tiles());
  ASSERT_GT(printed.tiles(), 3u);
  // 450 × 900 mm; an error of a page would show in every row it is in.
  const QSizeF panel = printed.data().grid.turned ? QSizeF(900, 450) : QSizeF(450, 900);
  for (int row = 0; row < printed.data().grid.rows; ++row)
    EXPECT_NEAR(printed.width(row), panel.width(), 0.2) << "row " << row;
  for (int column = 0; column < printed.data().grid.columns; ++column)
    EXPECT_NEAR(printed.height(column), panel.height(), 0.2) << "column " << column;
  EXPECT_LE(printed.largest_shift(), 0.1);
}

INSTANTIATE_TEST_SUITE_P(Papers, TemplateOn,
                         testing::Values(OnPaper{"a4", Paper::a4, false},
                                         OnPaper{"letter", Paper::letter, false},
                                         OnPaper{"a3_lengthwise", Paper::a3, true}),
                         [](const auto& paper) { return std::string(paper.param.name); });

TEST(TemplatePage, TheFirstHasASquareOf100Millimetres) {
  for (bool landscape : {false, true}) {
    const Sheet sheet = samples::carriers().sheet(templates_on(Paper::a4, landscape));
    const QSizeF square = probe::square_in(probe::pdf_page(sheet_pdf(sheet), 0), sheet.page_size_mm());
    EXPECT_NEAR(square.width(), 100, 0.1);
    EXPECT_NEAR(square.height(), 100, 0.1);
  }
}

TEST(TemplatePage, SaysNameSizeAndHowManyToCut) {
  const samples::Sample sample = samples::carriers();
  const auto pages = probe::pdf_words(sheet_pdf(sample.sheet(templates_on(Paper::a4))));
  for (const probe::Page& page : pages) {
    QStringList words;
    for (const probe::Word& word : page.words) words << word.text;
    const QString text = words.join(u' ');
    EXPECT_TRUE(text.contains(QString::fromStdString(sample.job.panels[0].name)));
    EXPECT_TRUE(text.contains(QStringLiteral("cut %1").arg(sample.plan().yield[0]))) << text.toStdString();
  }
}

TEST(TemplatePage, EveryMarkIsNamedOnBothItsPages) {
  const Sheet sheet = samples::carriers().sheet(templates_on(Paper::a4));
  std::map<QString, int> seen;
  for (const probe::Page& page : probe::pdf_words(sheet_pdf(sheet)))
    for (const probe::Word& word : page.words) ++seen[word.text];
  const Printed printed(sheet);
  for (const MatchMark& mark : match_marks(printed.data().grid))
    EXPECT_EQ(seen[mark.name], 2) << mark.name.toStdString();
}

TEST(TemplatePage, FollowsTheDiagramWhereBothAreAskedFor) {
  SheetOptions both;
  both.templates = {0};
  const Sheet sheet = samples::carriers().sheet(both);
  const int diagram = samples::carriers().sheet(Paper::a4).pages();
  EXPECT_EQ(sheet.pages(), diagram + template_pages(sheet, 0));
  EXPECT_TRUE(sheet.page_title(diagram).startsWith("Template P1"));
  EXPECT_TRUE(sheet.page_title(diagram - 1).startsWith("Pattern"));
}

TEST(TemplateData, PutsSeamsAndHemsWhereTheyAreSewn) {
  Job job = samples::carriers().job;
  Sewn bag;
  bag.goods = {GoodsKind::two_panel_bag, Length::mm(360), Length::mm(380), Length::mm(100),
               Length::mm(12), Length::mm(40)};
  Panel& panel = job.panels[0];
  const CutSize size = *cut_size(bag);
  panel.sewn = bag;
  panel.across = size.across;
  panel.along = size.along;
  const Fabric& fabric = job.rolls[0].fabric;
  const TemplateData upright = template_data(job, fabric, 0, {186, 260});
  EXPECT_EQ(upright.turnings.left.depth, Length::mm(12));
  EXPECT_EQ(upright.turnings.far, (Turning{Length::mm(40), false}));
  std::swap(panel.across, panel.along);
  const TemplateData sideways = template_data(job, fabric, 0, {186, 260});
  EXPECT_EQ(sideways.turnings.right, (Turning{Length::mm(40), false}));
  EXPECT_EQ(sideways.turnings.near.depth, Length::mm(12));
}

TEST(TemplateData, IsAsLargeAsThePanelIsCutBeforeItShrinks) {
  // 3 % along: 970 mm are cut 1000 mm (goods/shrinkage.h).
  Job job = samples::carriers().job;
  job.rolls[0].fabric.shrinkage.along = 300;
  job.panels[0].along = Length::mm(970);
  EXPECT_EQ(template_data(job, job.rolls[0].fabric, 0, {186, 260}).along, Length::mm(1000));
}

TEST(TemplateProblem, RefusesMoreThanSixtyPagesInOneSentence) {
  Job job = samples::carriers().job;
  job.panels[0].across = Length::mm(1400);
  job.panels[0].along = Length::mm(2500);
  const Fabric& fabric = job.rolls[0].fabric;
  const auto problem = template_problem(job, fabric, 0, SheetOptions{Paper::a4});
  ASSERT_TRUE(problem);
  EXPECT_NE(problem->sentence().find("pages of A4, and 60 is the most; take larger paper"), std::string::npos)
      << problem->sentence();
  EXPECT_FALSE(template_problem(job, fabric, 0, SheetOptions{Paper::a3}));
}

TEST(Inside, CutsLinesOffAtTheBox) {
  const QRectF box(0, 0, 10, 10);
  EXPECT_EQ(inside({-5, 3, 20, 3}, box), QLineF(0, 3, 10, 3));
  EXPECT_EQ(inside({4, 12, 4, 5}, box), QLineF(4, 5, 4, 10));
  EXPECT_TRUE(inside({-5, 11, 20, 11}, box).isNull());
  EXPECT_TRUE(inside({11, 0, 11, 5}, box).isNull());
}

}  // namespace
}  // namespace foldyard
