"""Type on labels and lists: measured in tenths of a millimetre, wrapped, shortened.

A painter of labels works in tenths of a millimetre, so that a size of 25 is 2.5 mm, about 7 points,
on every device.
"""

from __future__ import annotations

from functools import lru_cache

from PySide6.QtGui import QFont, QFontMetricsF

from pedigreeview.drawing.application import ensure_gui
from pedigreeview.drawing.theme import Theme

__all__ = [
    "UNITS_PER_INCH",
    "UNITS_PER_MM",
    "ascent",
    "paper_font",
    "rise",
    "shortened",
    "width_of",
    "wrapped",
]

UNITS_PER_MM = 10.0
UNITS_PER_INCH = 254.0

_ELLIPSIS = "…"


@lru_cache(maxsize=512)
def _font(families: tuple[str, ...], size: int, strong: bool) -> QFont:
    found = QFont()
    found.setFamilies(list(families))
    found.setPixelSize(size)
    # Fitted to the pixels of a screen, widths would not hold on paper.
    found.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    found.setWeight(QFont.Weight.Bold if strong else QFont.Weight.Normal)
    return found


def paper_font(theme: Theme, size: float, *, strong: bool = False) -> QFont:
    """The type of the picture at a size in tenths of a millimetre."""
    return _font(theme.fonts, max(1, round(size)), strong)


@lru_cache(maxsize=512)
def _metrics(families: tuple[str, ...], size: int, strong: bool) -> QFontMetricsF:
    ensure_gui()
    return QFontMetricsF(_font(families, size, strong))


@lru_cache(maxsize=65536)
def _width(families: tuple[str, ...], size: int, strong: bool, text: str) -> float:
    return _metrics(families, size, strong).horizontalAdvance(text)


def width_of(theme: Theme, size: float, text: str, *, strong: bool = False) -> float:
    """Width of a text."""
    return _width(theme.fonts, max(1, round(size)), strong, text)


def ascent(theme: Theme, size: float) -> float:
    """Height of the type above its baseline, accents included."""
    return _metrics(theme.fonts, max(1, round(size)), False).ascent()


def rise(theme: Theme, size: float, text: str, *, strong: bool = False) -> float:
    """How far the ink of a text reaches above its baseline, accents upon accents included."""
    return -_metrics(theme.fonts, max(1, round(size)), strong).tightBoundingRect(text).top()


def shortened(theme: Theme, size: float, text: str, room: float, *, strong: bool = False) -> str:
    """The text, its middle left out where it is too wide: the ends of codes tell them apart."""
    if width_of(theme, size, text, strong=strong) <= room:
        return text
    for kept in range(len(text) - 1, 0, -1):
        head = (kept + 1) // 2
        tail = kept - head
        trial = text[:head].rstrip() + _ELLIPSIS + (text[-tail:].lstrip() if tail else "")
        if width_of(theme, size, trial, strong=strong) <= room:
            return trial
    return _ELLIPSIS


def wrapped(
    theme: Theme, size: float, text: str, room: float, *, strong: bool = False
) -> list[str]:
    """Lines of at most the room, broken at blanks; a word that is wider is shortened."""
    lines: list[str] = []
    for word in text.split():
        trial = f"{lines[-1]} {word}" if lines else word
        if lines and width_of(theme, size, trial, strong=strong) <= room:
            lines[-1] = trial
        else:
            lines.append(shortened(theme, size, word, room, strong=strong))
    return lines
