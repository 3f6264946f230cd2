#include "window/window_colours.h"

namespace foldyard {
namespace {

const WindowColours kLight = {
    QColor(0xf1, 0xeb, 0xe0), QColor(0xff, 0xfd, 0xf8), QColor(0x26, 0x22, 0x1f),
    QColor(0x5a, 0x52, 0x4a), QColor(0x6c, 0x64, 0x5b), QColor(0x1d, 0x46, 0x70),
    QColor(0xff, 0xff, 0xff), QColor(0xf4, 0xdc, 0x86), QColor(0x26, 0x22, 0x1f),
    QColor(0x8c, 0x1f, 0x14), QColor(0xe6, 0xde, 0xd0)};

const WindowColours kDark = {
    QColor(0x27, 0x24, 0x21), QColor(0x1b, 0x19, 0x17), QColor(0xf3, 0xed, 0xe2),
    QColor(0xbf, 0xb5, 0xa6), QColor(0x9c, 0x93, 0x86), QColor(0x9d, 0xc6, 0xee),
    QColor(0x10, 0x1a, 0x24), QColor(0xe0, 0xc4, 0x6a), QColor(0x1b, 0x19, 0x17),
    QColor(0xff, 0xa0, 0x8e), QColor(0x2e, 0x2b, 0x27)};

// %1 field, %2 ink, %3 soft ink, %4 chalk, %5 on chalk, %6 fault, %7 linen, %8 faded ink.
const char* const kSheet = R"(
QToolTip { background: %1; color: %2; border: 1px solid %3; padding: 3px; }
QMenuBar { background: %7; color: %2; }
QMenuBar::item { padding: 4px 8px; background: transparent; }
QMenuBar::item:selected, QMenu::item:selected { background: %4; color: %5; }
QMenu { background: %1; color: %2; border: 1px solid %3; }
QMenu::item { padding: 5px 22px 5px 22px; }
QMenu::item:disabled { color: %8; }
QMenu::icon, QMenu::indicator { left: 5px; }
QMenu::separator { height: 1px; background: %3; margin: 4px 8px; }
QLineEdit { background: %1; color: %2; border: 1px solid %3; border-radius: 2px;
  padding: 3px 5px; min-height: 18px; selection-background-color: %4; selection-color: %5; }
QLineEdit:focus, QComboBox:focus { border: 2px solid %4; padding: 2px 4px; }
QLineEdit[refused="true"] { border: 2px solid %6; color: %6; padding: 2px 4px; }
QAbstractSpinBox { background: %1; color: %2; border: 1px solid %3; border-radius: 2px;
  padding: 3px 5px; min-height: 18px; selection-background-color: %4; selection-color: %5; }
QAbstractSpinBox:focus { border: 2px solid %4; padding: 2px 4px; }
QLabel[fault="true"] { color: %6; }
QLabel[soft="true"] { color: %3; }
QLabel[figure="true"] { font-size: 22pt; font-weight: bold; }
QComboBox { background: %1; color: %2; border: 1px solid %3; border-radius: 2px;
  padding: 3px 5px; min-height: 20px; }
QComboBox::drop-down { border: none; width: 20px; }
QComboBox::down-arrow { image: none; }
QComboBox QAbstractItemView { background: %1; color: %2; border: 1px solid %3;
  selection-background-color: %4; selection-color: %5; }
QPushButton { background: %7; color: %2; border: 1px dashed %2; border-radius: 4px;
  padding: 4px 12px; min-height: 18px; }
QPushButton:focus { border: 2px solid %4; padding: 3px 11px; }
QPushButton:checked { background: %4; color: %5; border: 1px dashed %5; }
QPushButton:checked:focus { border: 2px solid %2; padding: 3px 11px; }
QPushButton:disabled { color: %8; border: 1px dashed %8; }
QPushButton::menu-indicator { subcontrol-origin: padding; subcontrol-position: center right; right: 3px; }
QListView { background: %7; color: %2; border: none; }
QListView:focus { border: 2px solid %4; }
QTableView { background: %1; color: %2; border: 1px solid %3;
  selection-background-color: %4; selection-color: %5; }
QTableView:focus { border: 2px solid %4; }
QHeaderView { background: %1; border: none; }
QHeaderView::section { background: %1; color: %3; border: none; border-bottom: 2px solid %3;
  padding: 4px 4px; }
QTabBar::tab { background: %7; color: %2; border: 1px dashed %3; border-bottom: none;
  border-top-left-radius: 4px; border-top-right-radius: 4px; padding: 5px 8px; margin-right: 2px; }
QTabBar::tab:selected { background: %4; color: %5; }
QTabBar::tab:selected:focus { border: 2px solid %5; padding: 4px 7px; }
QProgressBar { background: %7; border: 1px solid %3; border-radius: 4px; }
QProgressBar::chunk { background: %4; border-radius: 3px; }
QFrame[strip="true"] { background: %1; border: 1px dashed %3; border-radius: 4px; }
QPushButton[step="true"] { border: none; padding: 5px 9px; }
QPushButton[step="true"]:focus { border: 2px solid %4; padding: 3px 7px; }
QScrollArea { background: transparent; border: none; }
QScrollArea:focus { border: 2px solid %4; }
QStatusBar { background: %7; color: %2; }
QStatusBar::item { border: none; }
QSplitter::handle { background: transparent; }
)";

}  // namespace

const WindowColours& window_colours(Shade shade) { return shade == Shade::dark ? kDark : kLight; }

QPalette window_palette(Shade shade) {
  const auto& c = window_colours(shade);
  QPalette palette(c.ink, c.linen, c.field, c.weave, c.soft_ink, c.ink, c.ink, c.field, c.linen);
  palette.setColor(QPalette::Highlight, c.chalk);
  palette.setColor(QPalette::HighlightedText, c.on_chalk);
  palette.setColor(QPalette::AlternateBase, c.linen);
  palette.setColor(QPalette::PlaceholderText, c.soft_ink);
  palette.setColor(QPalette::BrightText, c.fault);
  palette.setColor(QPalette::Link, c.chalk);
  palette.setColor(QPalette::ToolTipBase, c.field);
  palette.setColor(QPalette::ToolTipText, c.ink);
  for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
    palette.setColor(QPalette::Disabled, role, c.faded_ink);
  return palette;
}

QString window_style_sheet(Shade shade) {
  const auto& c = window_colours(shade);
  return QString::fromLatin1(kSheet).arg(c.field.name(), c.ink.name(), c.soft_ink.name(), c.chalk.name(),
                                         c.on_chalk.name(), c.fault.name(), c.linen.name(),
                                         c.faded_ink.name());
}

Shade shade_of(const QPalette& palette) {
  return palette.window().color().lightness() < 128 ? Shade::dark : Shade::light;
}

}  // namespace foldyard
