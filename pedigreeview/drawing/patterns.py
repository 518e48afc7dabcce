"""Founders told apart without colour: a pattern for each number of the palette.

Drawn as lines and dots within a rectangle, not as brushes, so that they stay sharp in SVG and PDF.
"""

from __future__ import annotations

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QFont, QPainter

from pedigreeview.drawing.signs import colour, pen
from pedigreeview.drawing.theme import Theme

__all__ = ["hatch", "share"]


def share(painter: QPainter, rect: QRectF, number: int, theme: Theme, *, initial: str = "") -> None:
    """One founder's part of a stripe: its colour, or in grey its pattern with its initial."""
    if not theme.patterned or number < 0:
        painter.fillRect(rect, colour(theme.founder(number)))
        return
    ink, paper = theme["ink"], theme["paper"]
    painter.fillRect(rect, colour(paper))
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
    painter.setPen(pen(theme["paper_edge"], 0.6))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(rect)
    if initial and rect.height() >= 13:
        middle = rect.center()
        spot = QRectF(middle.x() - 4.6, middle.y() - 5.5, 9.2, 11)
        painter.fillRect(spot, colour(paper))
        held = QFont()
        held.setFamilies(list(theme.fonts))
        held.setPixelSize(10)
        held.setBold(True)
        painter.setFont(held)
        painter.setPen(colour(ink))
        painter.drawText(spot, Qt.AlignmentFlag.AlignCenter, initial)


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
