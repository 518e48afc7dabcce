"""The small map in the corner of the large one: where in the book the window looks."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QImage, QPainter

from pedigreeview.drawing.overview import Overview
from pedigreeview.drawing.overview_raster import Frame
from pedigreeview.drawing.signs import colour, pen
from pedigreeview.drawing.theme import Theme

__all__ = ["corner_rect", "draw_corner", "place_in_corner"]

_SIZE = QSize(176, 104)
_EDGE = 12


def corner_rect(area: QRect) -> QRectF:
    """Where the small map lies in the window; null where it would cover too much of it."""
    if area.width() < 2 * _SIZE.width() or area.height() < 2 * _SIZE.height():
        return QRectF()
    left = area.width() - _SIZE.width() - _EDGE
    top = area.height() - _SIZE.height() - _EDGE
    return QRectF(left, top, _SIZE.width(), _SIZE.height())


def place_in_corner(point: QPointF, rect: QRectF, overview: Overview) -> tuple[float, float]:
    """Place in the map of a point in the small map."""
    x = (point.x() - rect.left()) / rect.width() * overview.width
    y = (point.y() - rect.top()) / rect.height() * len(overview.counts)
    return x, y


def draw_corner(
    painter: QPainter, rect: QRectF, small: QImage, overview: Overview, shown: Frame, theme: Theme
) -> None:
    """Paint the small map with a frame around the part that the window shows."""
    around = rect.adjusted(-4, -4, 4, 4)
    painter.fillRect(around, colour(theme["ground"]))
    painter.drawImage(rect.topLeft(), small)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(pen(theme["paper_edge"], 1.0))
    painter.drawRect(around)
    across = rect.width() / overview.width
    down = rect.height() / len(overview.counts)
    seen = QRectF(
        rect.left() + shown.x * across,
        rect.top() + shown.y * down,
        max(4.0, (shown.width - shown.margin) / shown.across * across),
        max(4.0, shown.height / shown.down * down),
    ).intersected(rect)
    painter.setPen(pen(theme["ground"], 4.0))
    painter.drawRect(seen)
    painter.setPen(pen(theme["accent"], 2.0))
    painter.drawRect(seen)
