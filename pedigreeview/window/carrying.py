"""Carrying pollen in the picture: a tag dragged on another asks for the cross of the two.

The plant that is dragged gives the pollen, as a brush carries it; the one it is dropped on bears
the seed.  The line in between is that of the pollen parent, of grains.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from PySide6.QtCore import QPoint, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter

from pedigreeview.drawing.signs import colour
from pedigreeview.drawing.theme import Theme
from pedigreeview.window.canvas_places import CanvasPlaces

__all__ = ["Carrying", "paint_carrying", "plant_at"]

_STEP = 7.0
"""Pixels from grain to grain."""


@dataclass(slots=True)
class Carrying:
    """Pollen on its way: whose it is, where the pointer is, on which tag it would fall."""

    code: str
    at: QPoint
    over: str = ""


def plant_at(canvas: CanvasPlaces, spot: QPoint) -> str:
    """The plant whose own tag lies there; '' for a pack, a chain, a cross or the ground."""
    part, placed = canvas.part_at(spot), canvas.placed
    if placed is None or not placed.view.block_of(part):
        return ""
    single = any(item.block.codes == (part,) for item in placed.blocks)
    return part if single else ""


def paint_carrying(
    painter: QPainter, canvas: CanvasPlaces, held: Carrying | None, theme: Theme
) -> None:
    """Draw the grains from the tag to the pointer, and ring the tag under it."""
    if held is None:
        return
    start = QPointF(canvas.where(held.code))
    end = QPointF(held.at)
    away = end - start
    far = math.hypot(away.x(), away.y())
    painter.save()
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour(theme["accent"]))
    for number in range(1, int(far // _STEP) + 1):
        painter.drawEllipse(start + away * (number * _STEP / far), 2.0, 2.0)
    painter.drawEllipse(end, 5.0, 5.0)
    if held.over:
        ring = QRectF(canvas.rect_of(held.over)).adjusted(-4, -4, 4, 4)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        pen = painter.pen()
        pen.setStyle(Qt.PenStyle.SolidLine)
        pen.setColor(colour(theme["select"]))
        pen.setWidthF(2.5)
        painter.setPen(pen)
        painter.drawRoundedRect(ring, 6, 6)
    painter.restore()
