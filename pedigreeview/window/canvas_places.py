"""Where things are in the canvas: picture and viewport, and what lies at a point."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

from PySide6.QtCore import QPoint, QPointF, QRect, QRectF, Signal
from PySide6.QtWidgets import QWidget

from pedigreeview.drawing.band_names import gutter
from pedigreeview.drawing.placing import Placed, PlacedBlock
from pedigreeview.drawing.tags import tab_rects
from pedigreeview.window.picture_area import PictureArea
from pedigreeview.window.saying import say

__all__ = ["CanvasPlaces", "old_corners"]


class CanvasPlaces(PictureArea):
    """A scroll area that shows a placed picture at a scale, from a place in the picture on."""

    zoomed = Signal(float)
    all_next = Signal(bool)
    """Whether the next fit shows all of the picture, though its codes cannot be read then."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._placed: Placed | None = None
        self._scale = 1.0
        self._origin = QPointF(0, 0)
        self._pan = (QPointF(0, 0), QPointF(0, 0))
        self._is_fitted = True
        self._partly = False
        self._said_all_next = False
        self._covered = 0
        self._text = 1.0
        self._zooming = (1.0, 1.0)
        self._part = 1.0
        """How far a move has come; 1 when nothing moves."""

    def zoom(self) -> float:
        """Pixels that one picture unit takes."""
        return self._scale

    @property
    def _fitted(self) -> bool:
        return self._is_fitted

    @_fitted.setter
    def _fitted(self, fitted: bool) -> None:
        self._is_fitted = fitted
        if self.shows_all_next() != self._said_all_next:
            self._said_all_next = not self._said_all_next
            self.all_next.emit(self._said_all_next)

    def shows_all_next(self) -> bool:
        """Whether the next fit shows all of the picture whether its codes can be read or not."""
        return self._is_fitted and self._partly

    def clear_area(self) -> QRectF:
        """The part of the viewport beside the names of the generations."""
        left, above = self._gutter()
        return QRectF(self.viewport().rect()).adjusted(left, above, 0, 0)

    def _gutter(self) -> tuple[float, float]:
        """Pixels that the names of the generations take at the left and above."""
        return (0.0, 0.0) if self._placed is None else gutter(self._placed, self._text)

    @contextmanager
    def at_rest(self) -> Iterator[None]:
        """Places are asked for as they will be when the picture has come to rest."""
        now = self._origin, self._scale
        if self._part < 1.0:
            self._origin, self._scale = self._pan[1], self._zooming[1]
        try:
            yield
        finally:
            self._origin, self._scale = now

    def to_view(self, x: float, y: float) -> QPointF:
        """Viewport place of a place in the picture."""
        return QPointF((x - self._origin.x()) * self._scale, (y - self._origin.y()) * self._scale)

    def to_picture(self, point: QPoint | QPointF) -> QPointF:
        """Place in the picture of a viewport place."""
        return QPointF(
            point.x() / self._scale + self._origin.x(), point.y() / self._scale + self._origin.y()
        )

    def rect_of(self, key: str) -> QRect:
        """Viewport rectangle of a plant, a block or a tab (`up:CODE`); null when not shown."""
        found = self._find(key)
        if found is None:
            return QRect()
        rect = QRectF(found.x, found.y, found.width, found.height)
        way, _, code = key.partition(":")
        if way in ("up", "down") and found.block.code == code:
            up, down = tab_rects(found.block, rect, self._scale)
            tab = up if way == "up" else down
            rect = tab if tab is not None else rect
        corner, end = (
            self.to_view(rect.left(), rect.top()),
            self.to_view(rect.right(), rect.bottom()),
        )
        return QRectF(corner, end).toRect()

    def where(self, code: str) -> QPoint:
        """Middle of a plant's tag (or block, or tab) in the viewport; (-1, -1) when not shown."""
        rect = self.rect_of(code)
        return rect.center() if rect.isValid() else QPoint(-1, -1)

    def at(self, point: QPoint) -> str:
        """Code of the plant whose tag lies at a viewport place, or ''."""
        found = self.block_at(point)
        return found.block.code if found is not None else ""

    def part_at(self, point: QPoint) -> str:
        """What a click there is on: a code, a block's key, `up:CODE`, `down:CODE` or ''."""
        if self._placed is None or not self.clear_area().contains(QPointF(point)):
            return ""
        spot = self.to_picture(point)
        for item in self._placed.blocks:
            if item.block.more_up or item.block.more_down:
                rect = QRectF(item.x, item.y, item.width, item.height)
                tabs = tab_rects(item.block, rect, self._scale)
                for tab, way in zip(tabs, ("up", "down"), strict=True):
                    if tab is not None and tab.adjusted(-3, -3, 3, 3).contains(spot):
                        if item.block.sort == "pack":
                            return item.block.key
                        return f"{way}:{item.block.codes[0] if way == 'up' else item.block.code}"
        found = self.block_at(point)
        if found is None:
            return ""
        return found.block.code if found.block.sort == "tag" else found.block.key

    def visible_codes(self) -> list[str]:
        """Plants whose tags lie in the viewport, top to bottom and left to right."""
        if self._placed is None:
            return []
        area = self.clear_area()
        found = []
        for item in sorted(self._placed.blocks, key=lambda item: (item.y, item.x)):
            middle = self.to_view(*item.middle)
            if item.block.code and area.contains(middle):
                found.append(item.block.code)
        return found

    def rects_shown(self, area: QRectF | None = None) -> list[QRectF]:
        """Viewport rectangles of all blocks that can be seen, or that reach into another area."""
        if self._placed is None:
            return []
        area = QRectF(self.viewport().rect()) if area is None else area
        found = (
            QRectF(self.to_view(item.x, item.y), self.to_view(item.right, item.bottom))
            for item in self._placed.blocks
        )
        return [rect for rect in found if rect.intersects(area)]

    def tabs_shown(self) -> list[QRectF]:
        """Viewport rectangles of the tabs that can be seen."""
        found = []
        for item in self._placed.blocks if self._placed is not None else ():
            rect = QRectF(item.x, item.y, item.width, item.height)
            for tab in tab_rects(item.block, rect, self._scale):
                if tab is not None:
                    corner, end = tab.topLeft(), tab.bottomRight()
                    ends = self.to_view(corner.x(), corner.y()), self.to_view(end.x(), end.y())
                    found.append(QRectF(*ends))
        area = QRectF(self.viewport().rect())
        return [rect for rect in found if rect.intersects(area)]

    def neighbour(self, code: str, step: int) -> str:
        """The next tag in the row, to the right for 1 and to the left for -1; '' at the end."""
        found = self._find(code)
        if found is None or self._placed is None:
            return ""
        down = self._placed.orientation == "down"
        row = [
            item
            for item in self._placed.blocks
            if item.block.code and item.block.row == found.block.row
        ]
        row.sort(key=lambda item: item.x if down else item.y)
        at = next((n for n, item in enumerate(row) if item is found), -1) + step
        return row[at].block.code if 0 <= at < len(row) else ""

    def _find(self, key: str) -> PlacedBlock | None:
        if self._placed is None or not key:
            return None
        found = self._placed.block_of(key) or self._placed.block(key)
        if found is None and key.startswith(("up:", "down:")):
            found = self._placed.block_of(key.partition(":")[2])
        return found

    def placed_focus(self) -> PlacedBlock | None:
        """The block of the plant in focus; None when the picture has none."""
        return self._find(self._placed.view.focus or "") if self._placed is not None else None

    @property
    def placed(self) -> Placed | None:
        """The picture on show."""
        return self._placed

    def block_at(self, point: QPoint) -> PlacedBlock | None:
        """The tag, pack, chain, knot or frame at a viewport place."""
        if self._placed is None or not self.clear_area().contains(QPointF(point)):
            return None
        spot = self.to_picture(point)
        return self._placed.at(spot.x(), spot.y())

    def text_scale(self) -> float:
        """How much larger than usual the type of the picture is."""
        return self._text

    def tag_codes(self) -> list[str]:
        """Keys of all blocks that a screen reader is told of, in reading order: codes for tags."""
        if self._placed is None:
            return []
        order = sorted(self._placed.blocks, key=lambda item: (item.block.row, item.y, item.x))
        # A tag without a code is a cross that is only tried out.
        chosen = ((item.block, item.block.sort == "tag") for item in order)
        return [(block.code if tag else "") or block.key for block, tag in chosen]

    def words_of(self, key: str) -> str:
        """What a screen reader says of a block."""
        found = self._find(key)
        return say(found.block.words) if found is not None else ""


def old_corners(before: Placed, placed: Placed) -> dict[str, tuple[float, float]]:
    """Where each block of the new picture comes from: its old corner, or that of what held it."""
    old = {item.block.key: (item.x, item.y) for item in before.blocks}
    found: dict[str, tuple[float, float]] = {}
    for item in placed.blocks:
        if item.block.key in old:
            found[item.block.key] = old[item.block.key]
            continue
        for code in item.block.codes:
            key = before.view.block_of(code)
            if key in old:
                found[item.block.key] = old[key]
                break
    return found
