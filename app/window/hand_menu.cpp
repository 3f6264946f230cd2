#include "window/hand_menu.h"

#include <QInputDialog>

#include "drawing/words.h"
#include "job/limits.h"
#include "measure/index.h"

namespace foldyard {

HandMenu::HandMenu(ByHand* by_hand, PlanView* view, QWidget* parent)
    : QMenu(tr("By ha&nd"), parent), by_hand_(by_hand), view_(view) {
  ask_ = [this](const QString& title, const QString& label, std::int64_t first) -> std::optional<std::int64_t> {
    bool is_given = false;
    const int number = QInputDialog::getInt(parentWidget(), title, label, static_cast<int>(first), 1,
                                            static_cast<int>(limits::kAtMost.most), 1, &is_given);
    return is_given ? std::optional<std::int64_t>(number) : std::nullopt;
  };
  connect(this, &QMenu::aboutToShow, this, [this] {
    clear();
    ClothTable* table = view_->table();
    fill(this, table->flat()->held_line(), table->lit());
  });
  connect(view_->table(), &ClothTable::menu_wanted, this, [this](int line, int patch, const QPoint& global) {
    auto* menu = new QMenu(parentWidget());
    menu->setAttribute(Qt::WA_DeleteOnClose);
    fill(menu, line, patch);
    menu->popup(global);
  });
}

void HandMenu::fill(QMenu* menu, int line, int patch) {
  if (!by_hand_->has_plan()) {
    menu->addAction(tr("Choose a fold way that is possible"))->setEnabled(false);
    return;
  }
  add_line(menu, line);
  add_length(menu);
  add_panels(menu, patch);
  menu->addSeparator();
  QAction* back = menu->addAction(tr("&Back to the best folds"), by_hand_, &ByHand::put_back);
  back->setEnabled(!by_hand_->hand().is_empty());
}

void HandMenu::add_line(QMenu* menu, int line) {
  const auto lines = view_->table()->flat()->cloth() ? std::ssize(view_->table()->flat()->cloth()->cloth().fold.lines) : 0;
  if (lines == 0) return;
  const int of = line < 0 || line >= lines ? 0 : line;
  const bool pinned = by_hand_->hand().has_line(of);
  menu->addAction((pinned ? tr("Take the &pin out of fold line %1\tP") : tr("&Pin fold line %1 where it lies\tP")).arg(of + 1), this,
                  [this, of] { by_hand_->toggle_pin(of); });
}

void HandMenu::add_length(QMenu* menu) {
  const int pattern = view_->pattern();
  const Job* job = by_hand_->job();
  if (by_hand_->hand().length) {
    menu->addAction(tr("Let the lengths be &free"), this, [this] { by_hand_->keep_length(std::nullopt); });
  } else if (pattern >= 0) {
    const Length length = view_->plan()->patterns[ix(pattern)].length;
    menu->addAction(tr("&Keep lengths of %1").arg(length_words(length, job->unit)), this,
                    [this, length] { by_hand_->keep_length(length); });
  }
}

// The panel that is pointed at; else all of them, in a menu of their own.
void HandMenu::add_panels(QMenu* menu, int patch) {
  const LaidClothPtr& cloth = view_->table()->flat()->cloth();
  const bool is_panel = cloth && patch >= 0 && patch < std::ssize(cloth->patches) && !cloth->patches[ix(patch)].is_rest();
  if (is_panel) return add_panel(menu, cloth->patches[ix(patch)].panel, false);
  QMenu* all = menu->addMenu(tr("At &least so many of"));
  for (int panel = 0; panel < std::ssize(by_hand_->job()->panels); ++panel) add_panel(all, panel, true);
}

void HandMenu::add_panel(QMenu* menu, int panel, bool plural) {
  const std::string& name = by_hand_->job()->panels[ix(panel)].name;
  const QString words = QString::fromStdString(name);
  menu->addAction((plural ? tr("%1…") : tr("At &least so many of “%1”…")).arg(words), this, [this, panel] { want(panel); });
  if (by_hand_->hand().at_least.contains(name))
    menu->addAction(tr("Any number of “%1”").arg(words), this, [this, name] { by_hand_->want_at_least(name, 0); });
}

void HandMenu::want(int panel) {
  if (!by_hand_->has_plan()) return;
  const std::string name = by_hand_->job()->panels[ix(panel)].name;
  const auto number = ask_(tr("At least so many"), tr("How many of “%1” must come out of this roll?").arg(QString::fromStdString(name)),
                           view_->plan()->yield[ix(panel)] + 1);
  if (number) by_hand_->want_at_least(name, *number);
}

}  // namespace foldyard
