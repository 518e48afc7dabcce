"""The dress of the window: palette and style sheet, both made from the tokens of `drawing.theme`.

The picture and the window thus share one source of colour.  All lengths are multiples of one grid
step that follows the size of the text, so that text at 200% moves everything apart with it.
"""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QFont, QFontMetrics, QGuiApplication, QPalette
from PySide6.QtWidgets import QApplication

from pedigreeview.drawing.theme import theme
from pedigreeview.places import resource

__all__ = [
    "Colours",
    "colours_of",
    "current",
    "current_name",
    "dress",
    "founder_colour",
    "put_on",
    "sheet_of_now",
    "step",
    "system_name",
    "worn",
]

SERIF = ["Source Serif 4", "Iowan Old Style", "Palatino Linotype", "P052", "Georgia", "Noto Serif"]


@dataclass(frozen=True, slots=True)
class Colours:
    """The colours of one theme as the window uses them."""

    window: QColor
    sheet: QColor
    paper: QColor
    """The paper of a tag."""
    rail: QColor
    rail_ink: QColor
    ink: QColor
    soft: QColor
    rule: QColor
    hover: QColor
    accent: QColor
    on_accent: QColor
    accent_soft: QColor
    focus: QColor
    warn: QColor
    error: QColor
    pollen: QColor


_state: dict[str, object] = {}


def mixed(one: QColor, other: QColor, share: float) -> QColor:
    """A colour between two; share 0 is the first."""
    return QColor.fromRgbF(
        one.redF() + (other.redF() - one.redF()) * share,
        one.greenF() + (other.greenF() - one.greenF()) * share,
        one.blueF() + (other.blueF() - one.blueF()) * share,
    )


def colours_of(name: str) -> Colours:
    """The colours of 'light' or 'dark', from the tokens of the picture."""
    held = theme(name)

    def token(key: str) -> QColor:
        return QColor(held[key])

    ink, ground, paper = token("ink"), token("ground"), token("paper")
    sheet = paper if name == "light" else token("band")
    return Colours(
        window=ground,
        sheet=sheet,
        paper=paper,
        rail=mixed(ground, ink, 0.06),
        rail_ink=mixed(ink, ground, 0.12),
        ink=ink,
        soft=token("ink_soft"),
        rule=mixed(token("paper_edge"), sheet, 0.45),
        hover=mixed(sheet, token("accent"), 0.09),
        accent=token("accent"),
        on_accent=QColor("#ffffff") if name == "light" else ground,
        accent_soft=mixed(sheet, token("accent"), 0.18),
        focus=token("select"),
        warn=mixed(token("accent"), ink, 0.2),
        error=token("warning"),
        pollen=QColor(held.founder(1)),
    )


def founder_colour(number: int | None) -> QColor:
    """Colour of a founder's number in the palette of the picture; None: an unknown parent."""
    held = theme(current_name())
    return QColor(held["unknown"] if number is None else held.founder(number))


def system_name() -> str:
    """'dark' where the system asks for it, else 'light'."""
    dark = QGuiApplication.styleHints().colorScheme() == Qt.ColorScheme.Dark
    return "dark" if dark else "light"


def current() -> Colours:
    """The colours in force."""
    held = _state.get("colours")
    if not isinstance(held, Colours):
        held = colours_of("light")
        _state["colours"] = held
    return held


def current_name() -> str:
    """'light' or 'dark', whichever is in force."""
    return str(_state.get("name", "light"))


def worn() -> tuple[str, int] | None:
    """Name of the theme and size of the text in percent that the program wears; None: bare."""
    found = _state.get("worn")
    return found if isinstance(found, tuple) else None


def step() -> int:
    """One step of the grid in pixels: half the height of a line of text."""
    return max(6, round(QFontMetrics(QGuiApplication.font()).height() / 2))


def dress(app: QApplication, name: str, text_percent: int) -> None:
    """Put palette, font and style sheet of a theme on the whole program."""
    if worn() == (name, text_percent) and app.styleSheet():
        return
    # Qt dresses a widget anew once for each widget that it lies in where one sheet takes the place
    # of another, which takes five times as long as to take the sheet off and to put one on.
    app.setStyleSheet("")
    put_on(app, name, text_percent)
    app.setStyleSheet(sheet_of_now())


def put_on(app: QApplication, name: str, text_percent: int) -> None:
    """Let the program wear a theme from now on, without the style sheet: palette and font."""
    if "point_size" not in _state:
        app.setStyle("Fusion")
        size = app.font().pointSizeF()
        _state["point_size"] = size if size > 0 else 10.0
    colours = colours_of(name)
    _state.update(colours=colours, name=name, worn=(name, text_percent))
    base = _state["point_size"]
    assert isinstance(base, float)
    font = QFont(app.font())
    font.setFamilies(list(theme(name).fonts))
    font.setPointSizeF(base * text_percent / 100)
    app.setFont(font)
    app.setPalette(_palette(colours))


def sheet_of_now() -> str:
    """The style sheet of what the program wears."""
    return _sheet(current(), QGuiApplication.font().pointSizeF(), step())


def _palette(c: Colours) -> QPalette:
    palette = QPalette()
    role = QPalette.ColorRole
    for which, colour in (
        (role.Window, c.window),
        (role.WindowText, c.ink),
        (role.Base, c.sheet),
        (role.AlternateBase, c.hover),
        (role.Text, c.ink),
        (role.Button, c.sheet),
        (role.ButtonText, c.ink),
        (role.BrightText, c.error),
        (role.ToolTipBase, c.sheet),
        (role.ToolTipText, c.ink),
        (role.PlaceholderText, c.soft),
        (role.Highlight, c.accent),
        (role.HighlightedText, c.on_accent),
        (role.Link, c.accent),
        (role.LinkVisited, c.accent),
        (role.Mid, c.rule),
        (role.Midlight, c.hover),
        (role.Light, c.sheet),
        (role.Dark, c.soft),
        (role.Accent, c.accent),
    ):
        palette.setColor(which, colour)
    for which in (role.WindowText, role.Text, role.ButtonText):
        palette.setColor(QPalette.ColorGroup.Disabled, which, mixed(c.soft, c.window, 0.45))
    return palette


def _sheet(c: Colours, points: float, s: int) -> str:
    serif = ", ".join(f'"{family}"' for family in SERIF) + ", serif"
    n = {key: getattr(c, key).name() for key in Colours.__slots__}
    pale = mixed(c.soft, c.window, 0.45).name()
    hint = mixed(c.soft, c.sheet, 0.12).name()
    name, icons = current_name(), resource("icons").as_posix()
    half, third = max(2, s // 2), max(2, s // 3)
    return f"""
* {{ outline: none; }}
QWidget {{ color: {n["ink"]}; }}
QDialog {{ background: {n["window"]}; }}
QToolTip {{ background: {n["sheet"]}; color: {n["ink"]}; border: 1px solid {n["rule"]};
    padding: {third}px {half}px; }}
QScrollArea, QScrollArea > QWidget > QWidget {{ background: transparent; }}
#rail {{ background: {n["rail"]}; border-right: 1px solid {n["rule"]}; }}
#header {{ background: {n["window"]}; border-bottom: 1px solid {n["rule"]}; }}
#page, #welcome {{ background: {n["sheet"]}; }}
#foot {{ background: {n["window"]}; border-top: 1px solid {n["rule"]}; }}
#strip {{ background: {mixed(c.window, c.pollen, 0.22).name()};
    border-bottom: 1px solid {n["rule"]}; }}
#tools {{ background: {n["sheet"]}; border-bottom: 1px solid {n["rule"]}; }}
#drawer, #slip {{ background: {n["window"]}; }}
#drawer {{ border-right: 1px solid {n["rule"]}; }}
#slip {{ border-left: 1px solid {n["rule"]}; }}
QFrame[role="sheet"] {{ background: {n["sheet"]}; border: 1px solid {n["rule"]};
    border-radius: {third}px; }}
QFrame[role="sheet"]:hover {{ border-color: {n["accent"]}; }}
QRadioButton[role="choice"] {{ font-weight: 600; }}
#key {{ background: {n["sheet"]}; border: 1px solid {n["rule"]}; border-radius: {third}px; }}
QFrame[role="pin"] {{ border: 1px solid transparent; border-radius: {third}px; }}
QFrame[role="pin in force"] {{ border: 1px solid {n["focus"]}; border-radius: {third}px; }}
QLabel[role="letter"] {{ color: {n["on_accent"]}; background: {n["focus"]};
    border-radius: {round(0.9 * s)}px; font-weight: 600; }}
#found {{ background: {n["sheet"]}; border: 1px solid {n["rule"]}; }}

QLabel {{ background: transparent; }}
QLabel[role="heading1"] {{ font-family: {serif}; font-size: {points * 2.1:.1f}pt; }}
QLabel[role="heading2"] {{ font-family: {serif}; font-size: {points * 1.5:.1f}pt; }}
QLabel[role="heading3"] {{ font-family: {serif}; font-size: {points * 1.18:.1f}pt;
    font-weight: 600; }}
QLabel[role="number"] {{ font-family: {serif}; font-size: {points * 1.35:.1f}pt; }}
QLabel[role="soft"] {{ color: {n["soft"]}; }}
QLabel[role="caption"] {{ color: {n["soft"]}; font-size: {points * 0.92:.1f}pt;
    letter-spacing: 1px; }}
QLabel[role="fault"] {{ color: {n["error"]}; }}
QLabel[role="warn"] {{ color: {n["warn"]}; }}
QLabel:focus {{ border: 1px solid {n["focus"]}; }}

QPushButton {{ background: {n["sheet"]}; color: {n["ink"]}; border: 1px solid {n["rule"]};
    border-radius: {third}px; padding: {half}px {2 * s}px; min-height: {round(1.8 * s)}px; }}
QPushButton:hover {{ background: {n["hover"]}; border-color: {n["accent"]}; }}
QPushButton:pressed {{ background: {n["accent_soft"]}; }}
QPushButton:focus {{ border: 2px solid {n["focus"]}; padding: {half - 1}px {2 * s - 1}px; }}
QPushButton:disabled {{ color: {pale}; background: transparent; }}
QPushButton[role="main"] {{ background: {n["accent"]}; color: {n["on_accent"]};
    border-color: {n["accent"]}; font-weight: 600; }}
QPushButton[role="main"]:hover {{ background: {mixed(c.accent, c.ink, 0.15).name()}; }}
QPushButton[role="main"]:focus {{ border: 2px solid {n["ink"]}; }}
QPushButton[role="main"]:disabled {{ background: {n["rule"]}; border-color: {n["rule"]};
    color: {n["soft"]}; }}
QPushButton[role="line"] {{ background: transparent; border: 1px solid transparent;
    text-align: left; padding: {third}px {s}px; color: {n["soft"]}; }}
#strip QPushButton[role="line"] {{ color: {n["ink"]}; }}
QPushButton[role="line"]:hover {{ color: {n["ink"]}; border-color: {n["rule"]}; }}
QPushButton[role="line"]:focus {{ border: 1px solid {n["focus"]}; color: {n["ink"]}; }}

QFrame[role="why"] {{ background: {mixed(c.paper, c.pollen, 0.07).name()};
    border-left: {max(2, s // 4)}px solid {n["rule"]}; }}
QPushButton[role="lit"] {{ background: transparent; border: 1px solid transparent;
    border-radius: {third}px; padding: 0; min-height: 0; }}
QPushButton[role="lit"]:hover {{ background: {n["hover"]}; border-color: {n["rule"]}; }}
QPushButton[role="lit"]:checked {{ background: {n["accent_soft"]}; }}
QPushButton[role="lit"]:focus {{ border: 1px solid {n["focus"]}; padding: 0; }}

QToolButton {{ background: transparent; border: 1px solid transparent;
    border-radius: {third}px; padding: {third}px {s}px; min-height: {2 * s}px;
    min-width: {round(1.2 * s)}px; }}
QToolButton:hover {{ background: {n["hover"]}; border-color: {n["rule"]}; }}
QToolButton:pressed, QToolButton:checked {{ background: {n["accent_soft"]};
    border-color: {n["accent"]}; }}
QToolButton:focus {{ border: 1px solid {n["focus"]}; background: {n["hover"]}; }}
QToolButton:disabled {{ color: {pale}; }}
#tools QToolButton {{ border-color: {n["rule"]}; padding: {max(1, third // 2)}px {s}px; }}
QToolButton[role="why"] {{ color: {n["accent"]}; padding: 0; min-height: 0; min-width: 0;
    border: none; text-decoration: underline; }}
QToolButton[role="why"]:hover, QToolButton[role="why"]:checked {{ background: transparent;
    color: {n["ink"]}; }}
QToolButton[role="why"]:focus {{ border: 1px solid {n["focus"]}; }}
QToolButton::menu-indicator {{ image: none; }}
#tools QToolButton:checked {{ background: {n["accent_soft"]}; border: 2px solid {n["accent"]};
    padding: {max(0, third // 2 - 1)}px {s - 1}px; }}
#tools QToolButton[caret="true"] {{ padding-right: {round(2.4 * s)}px; }}
#tools QToolButton[caret="true"]::menu-indicator {{ subcontrol-origin: padding;
    subcontrol-position: center right; right: {half}px; width: {s}px; height: {s}px;
    image: url("{icons}/window-down-{name}.svg"); }}
#tools QToolButton[segment="first"] {{ border-top-right-radius: 0; border-bottom-right-radius: 0;
    border-right: none; }}
#tools QToolButton[segment="middle"] {{ border-radius: 0; }}
#tools QToolButton[segment="last"] {{ border-top-left-radius: 0; border-bottom-left-radius: 0;
    border-left: none; }}
#tools QToolButton[segment]:focus {{ border: 1px solid {n["focus"]}; }}

QLineEdit, QSpinBox, QDoubleSpinBox, QComboBox, QTextEdit, QPlainTextEdit {{
    background: {n["sheet"]};
    border: 1px solid {n["rule"]}; border-radius: {third}px; padding: {third}px {s}px;
    min-height: {2 * s}px; selection-background-color: {n["accent"]};
    selection-color: {n["on_accent"]}; }}
QLineEdit, QComboBox, QTextEdit, QPlainTextEdit {{ placeholder-text-color: {hint}; }}
QLineEdit:focus, QSpinBox:focus, QDoubleSpinBox:focus, QComboBox:focus, QTextEdit:focus,
QPlainTextEdit:focus {{ border: 2px solid {n["focus"]}; padding: {third - 1}px {s - 1}px; }}
QLineEdit:disabled, QSpinBox:disabled, QDoubleSpinBox:disabled, QComboBox:disabled {{
    color: {pale}; background: transparent; }}
QSpinBox QLineEdit, QDoubleSpinBox QLineEdit {{ border: none; padding: 0; min-height: 0;
    background: transparent; }}
#tools QSpinBox {{ min-height: {round(1.6 * s)}px;
    padding: {max(1, third // 2)}px 0 {max(1, third // 2)}px {s}px; }}
QComboBox::drop-down {{ border: none; width: {2 * s}px; }}
QComboBox QAbstractItemView {{ background: {n["sheet"]}; border: 1px solid {n["rule"]};
    selection-background-color: {n["accent_soft"]}; selection-color: {n["ink"]}; }}

QListView, QTableView, QTreeView {{ background: {n["sheet"]}; border: 1px solid {n["rule"]};
    border-radius: {third}px; selection-background-color: {n["accent_soft"]};
    selection-color: {n["ink"]}; }}
QListView:focus, QTableView:focus, QTreeView:focus {{ border: 1px solid {n["focus"]}; }}
#drawer QListView, #drawer QTreeView {{ background: transparent; border: none; }}
#drawer QListView::item {{ border: 2px solid transparent; border-radius: {third}px; }}
#drawer QListView::item:focus {{ border: 2px solid {n["focus"]}; }}
#drawer QListView::item:selected {{ background: {n["accent_soft"]}; color: {n["ink"]}; }}
#leaves::tab {{ background: transparent; border: 1px solid transparent;
    border-bottom: {max(2, s // 4)}px solid transparent; color: {n["soft"]};
    padding: {third}px 0; margin-right: {s}px; }}
#leaves::tab:hover {{ color: {n["ink"]}; border-bottom-color: {n["rule"]}; }}
#leaves::tab:selected {{ color: {n["ink"]}; border-bottom-color: {n["accent"]}; }}
#leaves::tab:selected:focus {{ border-color: {n["focus"]};
    border-bottom-color: {n["focus"]}; }}
QListView::item {{ padding: {third}px {s}px; }}
QListView::item:hover {{ background: {n["hover"]}; }}
QTableView {{ gridline-color: {n["rule"]}; }}
QTableView::item {{ padding: {third}px {s}px; }}
QHeaderView::section {{ background: {n["window"]}; color: {n["soft"]}; border: none;
    border-bottom: 1px solid {n["rule"]}; padding: {half}px {s + 3}px; }}
QHeaderView::section:checked {{ font-weight: normal; }}
QTableCornerButton::section {{ background: {n["window"]}; border: none;
    border-bottom: 1px solid {n["rule"]}; }}
QAbstractScrollArea::corner {{ background: transparent; border: none; }}

QMenuBar {{ background: {n["window"]}; color: {n["ink"]}; padding: {third}px {half}px; }}
QMenuBar::item {{ padding: {third}px {s}px; border-radius: {third}px; background: transparent; }}
QMenuBar::item:selected {{ background: {n["accent_soft"]}; }}
QMenu {{ background: {n["sheet"]}; border: 1px solid {n["rule"]}; padding: {half}px 0; }}
QMenu::item {{ padding: {half}px {3 * s}px; }}
QMenu::item:selected {{ background: {n["accent_soft"]}; color: {n["ink"]}; }}
QMenu::item:disabled {{ color: {pale}; }}
QMenu::separator {{ height: 1px; background: {n["rule"]}; margin: {half}px {s}px; }}

QAbstractSpinBox::up-button, QAbstractSpinBox::down-button {{ border: none;
    background: transparent; width: {round(1.8 * s)}px; }}
QAbstractSpinBox::up-button:hover, QAbstractSpinBox::down-button:hover {{
    background: {n["hover"]}; }}
QAbstractSpinBox::up-arrow {{ image: url("{icons}/window-up-{name}.svg");
    width: {s}px; height: {s}px; }}
QAbstractSpinBox::down-arrow {{ image: url("{icons}/window-down-{name}.svg");
    width: {s}px; height: {s}px; }}
QComboBox::down-arrow {{ image: url("{icons}/window-down-{name}.svg");
    width: {round(1.2 * s)}px; height: {round(1.2 * s)}px; }}
QRadioButton::indicator, QCheckBox::indicator {{ width: {round(1.5 * s)}px;
    height: {round(1.5 * s)}px; border: 1px solid {n["soft"]}; background: {n["sheet"]}; }}
QRadioButton::indicator {{ border-radius: {round(0.75 * s) + 1}px; }}
QRadioButton::indicator:checked {{ border-color: {n["accent"]};
    background: qradialgradient(cx:0.5, cy:0.5, radius:0.5, fx:0.5, fy:0.5,
    stop:0 {n["accent"]}, stop:0.55 {n["accent"]}, stop:0.65 {n["sheet"]}, stop:1 {n["sheet"]}); }}
QCheckBox::indicator {{ border-radius: {max(2, s // 4)}px; }}
QCheckBox::indicator:checked {{ border-color: {n["accent"]}; background: {n["accent"]};
    image: url("{icons}/window-tick-{name}.svg"); }}
QMenu::indicator {{ width: {s}px; height: {s}px; margin-left: {s}px; }}
QMenu::indicator:checked {{ border-radius: {half}px; background: {n["accent"]}; }}
QRadioButton, QCheckBox {{ spacing: {s}px; background: transparent; padding: {third}px; }}
QRadioButton:focus, QCheckBox:focus {{ border: 1px solid {n["focus"]};
    border-radius: {third}px; }}
QSlider {{ border: 1px solid transparent; border-radius: {third}px; min-height: {2 * s}px; }}
QSlider:focus {{ border: 1px solid {n["focus"]}; }}
QSlider::groove:horizontal {{ background: {n["rule"]}; border-radius: {max(1, s // 4)}px;
    height: {max(2, s // 2)}px; margin: 0 {third}px; }}
QSlider::sub-page:horizontal {{ background: {n["accent"]}; border-radius: {max(1, s // 4)}px;
    margin: 0 {third}px; }}
QSlider::handle:horizontal {{ background: {n["sheet"]}; border: 2px solid {n["accent"]};
    border-radius: {round(0.7 * s)}px; width: {2 * round(0.7 * s) - 4}px;
    margin: -{round(0.7 * s) - max(1, s // 4)}px 0; }}
QSlider::handle:horizontal:hover {{ background: {n["accent_soft"]}; }}
QSlider::handle:horizontal:focus {{ background: {n["accent"]}; border-color: {n["focus"]}; }}
QSlider::sub-page:horizontal:disabled, QSlider::handle:horizontal:disabled {{
    background: {n["rule"]}; border-color: {n["soft"]}; }}
QProgressBar {{ background: {n["sheet"]}; border: 1px solid {n["rule"]};
    border-radius: {third}px; max-height: {s}px; min-height: {s}px; }}
QProgressBar::chunk {{ background: {n["accent"]}; }}

QScrollBar:vertical {{ background: transparent; width: {round(1.4 * s)}px; margin: 0; }}
QScrollBar:horizontal {{ background: transparent; height: {round(1.4 * s)}px; margin: 0; }}
QScrollBar::handle {{ background: {n["rule"]}; border-radius: {third}px; margin: {third}px;
    min-height: {3 * s}px; min-width: {3 * s}px; }}
QScrollBar::handle:hover {{ background: {n["soft"]}; }}
QScrollBar::add-line, QScrollBar::sub-line {{ width: 0; height: 0; }}
QScrollBar::add-page, QScrollBar::sub-page {{ background: transparent; }}
QSplitter::handle {{ background: {n["rule"]}; }}
"""
