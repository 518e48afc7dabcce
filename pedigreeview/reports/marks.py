"""Marks on tiled sheets: where to cut, where the next sheet joins, which sheet it is."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter

from pedigreeview.drawing.signs import colour, pen
from pedigreeview.drawing.tags import font
from pedigreeview.drawing.theme import Theme

__all__ = ["join_marks"]


def join_marks(painter: QPainter, theme: Theme, area: QRectF, overlap: float, words: str) -> None:
    """Corner marks at the edges of the sheet, crosses in the middle of the overlap, its number."""
    painter.setPen(pen(theme["ink"], 0.7))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    long = 14.0
    for x, way_x in ((area.left(), 1), (area.right(), -1)):
        for y, way_y in ((area.top(), 1), (area.bottom(), -1)):
            painter.drawLine(QPointF(x, y), QPointF(x + way_x * long, y))
            painter.drawLine(QPointF(x, y), QPointF(x, y + way_y * long))
    half = overlap / 2
    for x in (area.left() + half, area.right() - half):
        for y in (area.top() + half, area.bottom() - half):
            painter.drawEllipse(QPointF(x, y), 3.5, 3.5)
            painter.drawLine(QPointF(x - 7, y), QPointF(x + 7, y))
            painter.drawLine(QPointF(x, y - 7), QPointF(x, y + 7))
    painter.setFont(font(theme, 11))
    painter.setPen(colour(theme["ink"]))
    painter.drawText(QPointF(area.left() + 4, area.bottom() + 14), words)
