"""Founders told apart without colour: a pattern for each number of the palette.

Drawn as lines and dots within a rectangle, not as brushes, so that they stay sharp in SVG and PDF.
"""

from __future__ import annotations

from functools import lru_cache

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QFont, QFontMetricsF, QPainter

from pedigreeview.drawing.signs import colour, pen
from pedigreeview.drawing.theme import Theme, contrast

__all__ = ["FOUNDER_PATTERNS", "hatch", "outlined", "share"]

FOUNDER_PATTERNS = 6
"""Founders with a pattern of their own; the others are blank and have their mark alone."""
_LEAST_PATTERN = 8.0
"""Height below which a part is too thin for a pattern."""
_MARK_SIZES = (10, 9, 8, 7)
"""Sizes of type in which a mark is tried upright."""


@lru_cache(maxsize=256)
def outlined(founder: str, paper: str) -> bool:
    """Whether a founder's colour is too near to the paper, so that its part needs an outline."""
    return contrast(founder, paper) < 3.0


def share(painter: QPainter, rect: QRectF, number: int, theme: Theme, *, initial: str = "") -> None:
    """One founder's part of a stripe: its colour, or in grey its pattern with its mark."""
    if not theme.patterned or number < 0:
        painter.fillRect(rect, colour(theme.founder(number)))
        if outlined(theme.founder(number), theme["paper"]) and rect.height() > 2:
            painter.setPen(pen(theme["line_soft"], 0.9))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(rect.adjusted(0.45, 0.45, -0.45, -0.45))
        return
    painter.fillRect(rect, colour(theme["paper"]))
    # More patterns than six are not told apart on a narrow edge; there the mark alone tells.
    told_by_mark = bool(initial) and number >= FOUNDER_PATTERNS
    if rect.height() >= _LEAST_PATTERN and not told_by_mark:
        _pattern(painter, rect, number, theme)
    painter.setPen(pen(theme["paper_edge"], 0.6))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(rect)
    if initial:
        _initial(painter, rect, theme, initial)


def _pattern(painter: QPainter, rect: QRectF, number: int, theme: Theme) -> None:
    ink = theme["ink"]
    if number == 0:
        hatch(painter, rect, ink, 3.6, way=1)
    elif number == 1:
        _dots(painter, rect, ink)
    elif number == 2:
        hatch(painter, rect, ink, 5.0, way=1)
        hatch(painter, rect, ink, 5.0, way=-1)
    elif number == 3:
        _bars(painter, rect, ink, 4.0, level=True)
    elif number == 4:
        _bars(painter, rect, ink, 3.6, level=False)
    elif number == 5:
        hatch(painter, rect, ink, 3.6, way=-1)
    elif number == 6:
        hatch(painter, rect, ink, 7.0, way=1, width=2.6)
    elif number == 7:
        _bars(painter, rect, ink, 7.0, level=True, width=3.0)
    elif number == 8:
        hatch(painter, rect, ink, 7.0, way=-1, width=2.6)
    elif number == 9:
        _bars(painter, rect, ink, 4.0, level=True)
        _bars(painter, rect, ink, 3.6, level=False)
    elif number == 10:
        painter.fillRect(rect, colour(theme["ink_soft"]))
    else:
        painter.fillRect(rect, colour(ink))


def _initial(painter: QPainter, rect: QRectF, theme: Theme, mark: str) -> None:
    """The mark of a founder on plain paper, upright if it fits in smaller type, else along it."""
    held = QFont()
    held.setFamilies(list(theme.fonts))
    held.setBold(True)
    along = False
    for size in _MARK_SIZES:
        held.setPixelSize(size)
        wide = QFontMetricsF(held).horizontalAdvance(mark) + 1.0
        if wide <= rect.width():
            break
    else:
        along = True
        held.setPixelSize(_MARK_SIZES[0])
        wide = QFontMetricsF(held).horizontalAdvance(mark) + 2.0
    high = held.pixelSize() + 1.0
    room = (rect.height(), rect.width()) if along else (rect.width(), rect.height() - 1.0)
    if wide > room[0] or high - 0.5 > room[1]:
        return
    painter.save()
    painter.translate(rect.center())
    if along:
        painter.rotate(-90)
    spot = QRectF(-wide / 2, -high / 2, wide, high)
    painter.fillRect(spot, colour(theme["paper"]))
    painter.setFont(held)
    painter.setPen(colour(theme["ink"]))
    painter.drawText(spot, Qt.AlignmentFlag.AlignCenter, mark)
    painter.restore()


def hatch(
    painter: QPainter, rect: QRectF, ink: str, step: float, *, way: int, width: float = 1.0
) -> None:
    """Slanted lines, cut off at the rectangle."""
    painter.setPen(pen(ink, width))
    high, wide = rect.height(), rect.width()
    start = -high
    while start < wide:
        low, top = max(start, 0.0), min(start + high, wide)
        if top > low:
            x0, x1 = rect.left() + low, rect.left() + top
            y0, y1 = rect.bottom() - (low - start), rect.bottom() - (top - start)
            if way < 0:
                x0, x1 = rect.right() - low, rect.right() - top
            painter.drawLine(QLineF(x0, y0, x1, y1))
        start += step


def _bars(
    painter: QPainter, rect: QRectF, ink: str, step: float, *, level: bool, width: float = 1.0
) -> None:
    painter.setPen(pen(ink, width))
    at = step / 2
    while at < (rect.height() if level else rect.width()):
        if level:
            y = rect.top() + at
            painter.drawLine(QLineF(rect.left(), y, rect.right(), y))
        else:
            x = rect.left() + at
            painter.drawLine(QLineF(x, rect.top(), x, rect.bottom()))
        at += step


def _dots(painter: QPainter, rect: QRectF, ink: str) -> None:
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour(ink))
    y, odd = rect.top() + 2.5, False
    while y < rect.bottom() - 1:
        x = rect.left() + (4.5 if odd else 2.0)
        while x < rect.right() - 1:
            painter.drawEllipse(QPointF(x, y), 1.1, 1.1)
            x += 5.0
        y, odd = y + 3.0, not odd
