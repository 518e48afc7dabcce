"""A picture of the paper: every sheet with its edge and shadow, as it will be written."""

from __future__ import annotations

import math

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QImage, QPainter

from pedigreeview.drawing.margins import UNITS_PER_MM
from pedigreeview.reports.pages import Pages
from pedigreeview.reports.sheets import Sheet

__all__ = ["preview"]

_GAP = 18
_SHADOW = QColor(0, 0, 0, 46)
_EDGE = QColor(120, 116, 104)


def preview(made: Sheet | Pages, width: int = 1100, height: int = 1000) -> QImage:
    """All sheets side by side on clear ground, within the size."""
    if isinstance(made, Sheet):
        paper = (made.width, made.height)
        count, margin = 1, 0.0
    else:
        margin = made.margin * UNITS_PER_MM
        paper = (made.width + 2 * margin, made.height + 2 * margin)
        count = made.count
    columns, scale = _arranged(count, paper, width, height)
    rows = -(-count // columns)
    wide, high = paper[0] * scale, paper[1] * scale
    image = QImage(
        max(1, round(columns * (wide + _GAP) + _GAP)),
        max(1, round(rows * (high + _GAP) + _GAP)),
        QImage.Format.Format_ARGB32_Premultiplied,
    )
    image.fill(Qt.GlobalColor.transparent)
    painter = QPainter()
    painter.begin(image)
    try:
        for at in range(count):
            spot = QPointF(
                _GAP + at % columns * (wide + _GAP), _GAP + at // columns * (high + _GAP)
            )
            edge = QRectF(spot.x(), spot.y(), wide, high)
            painter.fillRect(edge.translated(3, 4), _SHADOW)
            painter.fillRect(edge, Qt.GlobalColor.white)
            painter.save()
            painter.setClipRect(edge)
            painter.translate(spot)
            painter.scale(scale, scale)
            if isinstance(made, Sheet):
                made.paint(painter)
            else:
                painter.translate(margin, margin)
                made.paint(painter, at)
            painter.restore()
            painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
            painter.setPen(_EDGE)
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(edge)
    finally:
        painter.end()
    return image


def _arranged(count: int, paper: tuple[float, float], width: int, height: int) -> tuple[int, float]:
    """Columns in which the sheets come out largest, and their scale."""

    def scale(columns: int) -> float:
        rows = math.ceil(count / columns)
        across = (width - _GAP) / columns - _GAP
        down = (height - _GAP) / rows - _GAP
        return min(across / paper[0], down / paper[1])

    best = max(range(1, count + 1), key=scale)
    return best, max(scale(best), 0.01)
