"""The marks of what is picked: a dotted outline and a tick, never colour alone; and the band."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRect, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPolygonF

from pedigreeview.drawing.signs import colour, pen
from pedigreeview.drawing.tags import font, tag_path
from pedigreeview.drawing.theme import Theme

__all__ = ["draw_band", "draw_picked", "draw_tick"]


def draw_band(painter: QPainter, band: QRect, theme: Theme) -> None:
    """The band that is being drawn, in the viewport."""
    if band.isNull():
        return
    fill = QColor(theme["select"])
    fill.setAlpha(36)
    painter.fillRect(band, fill)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(pen(theme["ground"], 3.0))
    painter.drawRect(band)
    painter.setPen(pen(theme["select"], 1.5, Qt.PenStyle.DashLine))
    painter.drawRect(band)


def draw_picked(
    painter: QPainter, rect: QRectF, theme: Theme, *, some: str = "", text: float = 1.0
) -> None:
    """The mark of a picked tag, in the viewport: a dashed outline and a tick at the lower left.

    some : how many are picked of a block of many, as '3 of 7'; '' for one plant or all
    text : how much larger than usual the type is
    """
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    small = min(rect.width(), rect.height()) < 14
    painter.setBrush(Qt.BrushStyle.NoBrush)
    around = rect.adjusted(-3, -3, 3, 3)
    painter.setPen(pen(theme["ground"], 3.0))
    painter.drawPath(tag_path(around, 3.0 if small else 8.0))
    painter.setPen(pen(theme["ink"], 1.8, Qt.PenStyle.DotLine))
    painter.drawPath(tag_path(around, 3.0 if small else 8.0))
    if rect.width() < 8:
        return
    half = min(9.0 * text, max(5.0, rect.height() * 0.24))
    draw_tick(painter, around.left() + 1, around.bottom() - 1, half, theme, some)


def draw_tick(
    painter: QPainter, x: float, y: float, half: float, theme: Theme, some: str = ""
) -> None:
    """A tick on a dark disc about a place, with a number beside it."""
    spot = QPointF(x, y)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setFont(font(theme, max(9.0, half * 1.2), strong=True))
    wide = painter.fontMetrics().horizontalAdvance(some) + half if some else 0.0
    badge = QRectF(spot.x() - half, spot.y() - half, 2 * half + wide, 2 * half)
    painter.setPen(pen(theme["ground"], 1.5))
    painter.setBrush(colour(theme["ink"]))
    painter.drawRoundedRect(badge, half, half)
    tick = QPolygonF()
    for at_x, at_y in ((-0.45, 0.02), (-0.12, 0.36), (0.46, -0.36)):
        tick.append(QPointF(spot.x() + at_x * half, spot.y() + at_y * half))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(pen(theme["ground"], max(1.4, half * 0.26)))
    painter.drawPolyline(tick)
    if some:
        left = QRectF(spot.x() + half, badge.top(), wide, badge.height())
        painter.setPen(colour(theme["ground"]))
        painter.drawText(left, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, some)
