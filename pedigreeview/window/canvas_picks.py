"""Which plants of a placed picture are picked by a place or a band, and how that is marked."""

from __future__ import annotations

from collections.abc import Callable, Collection

from PySide6.QtCore import QPoint, QRect, QRectF
from PySide6.QtGui import QPainter

from pedigreeview.drawing.picked import draw_picked
from pedigreeview.drawing.placing import PlacedBlock
from pedigreeview.drawing.theme import Theme
from pedigreeview.window.canvas_places import CanvasPlaces

__all__ = ["codes_at", "codes_inside", "codes_shown", "paint_picked"]


def codes_at(canvas: CanvasPlaces, point: QPoint) -> tuple[str, ...]:
    """All plants of the tag, pack or chain at a viewport place."""
    item = canvas.block_at(point)
    return item.block.codes if item is not None else ()


def codes_inside(canvas: CanvasPlaces, band: QRect) -> list[str]:
    """Plants of all tags, packs and chains that a band touches, in reading order."""
    corner, end = canvas.to_picture(band.topLeft()), canvas.to_picture(band.bottomRight())
    area = QRectF(corner, end)
    return [
        code
        for item in _in_order(canvas)
        if area.intersects(QRectF(item.x, item.y, item.width, item.height))
        for code in item.block.codes
    ]


def codes_shown(canvas: CanvasPlaces) -> list[str]:
    """Plants of everything in the picture, in reading order."""
    return [code for item in _in_order(canvas) for code in item.block.codes]


def _in_order(canvas: CanvasPlaces) -> list[PlacedBlock]:
    placed = canvas.placed
    blocks = placed.blocks if placed is not None else ()
    return sorted(blocks, key=lambda item: (item.block.row, item.y, item.x))


def paint_picked(
    painter: QPainter,
    canvas: CanvasPlaces,
    picked: Collection[str],
    theme: Theme,
    moved: Callable[[PlacedBlock], tuple[float, float]],
) -> None:
    """Mark the blocks that hold picked plants; the painter is in viewport pixels."""
    placed = canvas.placed
    if placed is None or not picked:
        return
    area = QRectF(canvas.viewport().rect())
    painter.save()
    for item in placed.blocks:
        codes = item.block.codes
        held = sum(code in picked for code in codes)
        if not held:
            continue
        dx, dy = moved(item)
        rect = QRectF(
            canvas.to_view(item.x + dx, item.y + dy),
            canvas.to_view(item.right + dx, item.bottom + dy),
        )
        if not rect.adjusted(-20, -20, 20, 20).intersects(area):
            continue
        some = "" if held == len(codes) else f"{held}/{len(codes)}"
        draw_picked(painter, rect, theme, some=some, text=canvas.text_scale())
    painter.restore()
