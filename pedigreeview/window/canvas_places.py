"""Where things are in the canvas: picture and viewport, what lies at a point, zoom and fit."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QPointF, QRect, QRectF, QSize, Signal
from PySide6.QtWidgets import QAbstractScrollArea, QWidget

from pedigreeview.drawing.placing import Placed, PlacedBlock
from pedigreeview.drawing.tags import tab_rects
from pedigreeview.drawing.theme import sizes
from pedigreeview.window.saying import say

__all__ = ["CanvasPlaces"]

_LEAST, _MOST = 0.04, 4.0
_FIRST_MOST = 1.15
"""A small picture is not blown up beyond this when it is fitted."""
_COMFORTABLE = 0.65
_READABLE = 0.6
"""A focused picture is not fitted smaller than this when it is first shown."""

_EDGE = 40.0
"""Pixels from the edge within which a plant is brought further in."""


def _over(area: QRectF, origin: QPointF, wide: float, high: float, edge: float) -> QPointF:
    """The origin nearest to the given one from which the area shows, off the edges if it fits."""
    edge_x = min(edge, max(0.0, (wide - area.width()) / 2))
    edge_y = min(edge, max(0.0, (high - area.height()) / 2))
    x = min(max(origin.x(), area.right() + edge_x - wide), area.left() - edge_x)
    y = min(max(origin.y(), area.bottom() + edge_y - high), area.top() - edge_y)
    return QPointF(x, y)


class CanvasPlaces(QAbstractScrollArea):
    """A scroll area that shows a placed picture at a scale, from a place in the picture on."""

    zoomed = Signal(float)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._placed: Placed | None = None
        self._scale = 1.0
        self._origin = QPointF(0, 0)
        self._pan = (QPointF(0, 0), QPointF(0, 0))
        self._fitted = True
        self._covered = 0
        self._text = 1.0
        self._zooming = (1.0, 1.0)

    def zoom(self) -> float:
        """Pixels that one picture unit takes."""
        return self._scale

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
            up, down = tab_rects(found.block, rect)
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
        if self._placed is None:
            return ""
        spot = self.to_picture(point)
        for item in self._placed.blocks:
            if item.block.more_up or item.block.more_down:
                tabs = tab_rects(item.block, QRectF(item.x, item.y, item.width, item.height))
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
        area = QRectF(self.viewport().rect())
        found = []
        for item in sorted(self._placed.blocks, key=lambda item: (item.y, item.x)):
            middle = self.to_view(*item.middle)
            if item.block.code and area.contains(middle):
                found.append(item.block.code)
        return found

    def rects_shown(self) -> list[QRectF]:
        """Viewport rectangles of all blocks that can be seen."""
        if self._placed is None:
            return []
        area = QRectF(self.viewport().rect())
        found = (
            QRectF(self.to_view(item.x, item.y), self.to_view(item.right, item.bottom))
            for item in self._placed.blocks
        )
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

    @property
    def placed(self) -> Placed | None:
        """The picture on show."""
        return self._placed

    def block_at(self, point: QPoint) -> PlacedBlock | None:
        """The tag, pack, chain, knot or frame at a viewport place."""
        if self._placed is None:
            return None
        spot = self.to_picture(point)
        return self._placed.at(spot.x(), spot.y())

    def set_covered(self, pixels: int) -> None:
        """How much of the right side something else lies on; a fitted picture keeps clear of it."""
        self._covered = max(0, pixels)

    def _room(self) -> QSize:
        """The part of the viewport that a fitted picture takes.

        It keeps clear of what is covered as long as it can be read well so.
        """
        size = self.viewport().size()
        clear = QSize(size.width() - self._covered, size.height())
        return clear if self._fitting(clear) >= _COMFORTABLE * self._text else size

    def _fitting(self, room: QSize) -> float:
        """Scale at which the whole picture fits into a room; not blown up."""
        assert self._placed is not None
        _, _, width, height = self._placed.bounds
        # The names of the generations keep their size, so the room they take is in pixels.
        names = self._names()
        across = (room.width() - names) / max(width - sizes().band_label, 1.0)
        if not names:
            across = room.width() / max(width, 1.0)
        return min(across, room.height() / max(height, 1.0), _FIRST_MOST * self._text)

    def _names(self) -> float:
        """Pixels that the names of the generations take at the left."""
        assert self._placed is not None
        return sizes().band_label * self._text if self._placed.orientation == "down" else 0.0

    def set_text_scale(self, factor: float) -> None:
        """Make the picture's type as much larger as that of the window; 1 is the usual size."""
        if factor <= 0 or factor == self._text:
            return
        change, self._text = factor / self._text, factor
        if self._fitted or self._placed is None:
            self.first_look()
        else:
            self.zoom_by(change)

    def text_scale(self) -> float:
        """How much larger than usual the type of the picture is."""
        return self._text

    def fit(self) -> None:
        """Show the whole picture, as large as it goes but not blown up."""
        target = self._fit_target()
        if target is not None:
            self._go_to(*target, fitted=True)

    def _fit_target(self) -> tuple[float, QPointF] | None:
        """Scale and origin at which the whole picture shows."""
        if self._placed is None:
            return None
        left, top, width, height = self._placed.bounds
        room = self._room()
        if width <= 0 or height <= 0 or room.isEmpty():
            return None
        scale = max(_LEAST, self._fitting(room))
        names = self._names()
        if names:
            more = max(names / scale, sizes().band_label) - sizes().band_label
            left, width = left - more, width + more
        return scale, QPointF(
            left + width / 2 - room.width() / scale / 2,
            top + height / 2 - room.height() / scale / 2,
        )

    def first_look(self) -> None:
        """The whole picture if it can be read so, else its focus at a size that can."""
        target = self._first_target()
        if target is not None:
            self._go_to(*target[:2], fitted=target[2])

    def _first_target(self) -> tuple[float, QPointF, bool] | None:
        found = self._fit_target()
        focus = self._placed.view.focus if self._placed is not None else None
        item = self._find(focus or "")
        if found is None:
            return None
        least = _READABLE * self._text
        if item is None or found[0] >= least or self.viewport().size().isEmpty():
            return (*found, True)
        room = self._room() / least
        area = self._near_focus() or QRectF(item.x, item.y, item.width, item.height)
        middle = QPointF(*item.middle)
        origin = QPointF(middle.x() - room.width() / 2, middle.y() - room.height() / 2)
        return least, _over(area, origin, room.width(), room.height(), _EDGE / least), False

    def _go_to(self, scale: float, origin: QPointF, *, fitted: bool) -> None:
        self._scale, self._origin, self._fitted = scale, origin, fitted
        self._settle_pan()
        self.zoomed.emit(self._scale)
        self.viewport().update()

    def _settle_pan(self) -> None:
        self._pan = (QPointF(self._origin), QPointF(self._origin))
        self._zooming = (self._scale, self._scale)

    def zoom_by(self, factor: float, about: QPointF | QPoint | None = None) -> None:
        """Zoom, keeping one viewport place (the middle by default) where it is."""
        spot = QPointF(about) if about is not None else QPointF(self.viewport().rect().center())
        held = self.to_picture(spot)
        scale = min(_MOST, max(_LEAST, self._scale * factor))
        origin = QPointF(held.x() - spot.x() / scale, held.y() - spot.y() / scale)
        self._go_to(scale, origin, fitted=False)

    def show_code(self, code: str) -> None:
        """Pan by as little as brings the plant into view; not at all if it can be seen well."""
        found = self._find(code)
        if found is not None:
            self._origin = self._brought_in(found, self._origin)
            self._settle_pan()
            self.viewport().update()

    def _brought_in(self, item: PlacedBlock, origin: QPointF) -> QPointF:
        return self._brought(QRectF(item.x, item.y, item.width, item.height), origin)

    def _brought(self, area: QRectF, origin: QPointF) -> QPointF:
        room = self.viewport().size()
        wide, high = room.width() / self._scale, room.height() / self._scale
        return _over(area, origin, wide, high, _EDGE / self._scale)

    def _wanted_view(self, placed: Placed) -> tuple[float, QPointF, bool]:
        """Where the view goes for a new picture: as little as shows the focus and its nearest.

        It stays as it is when the focus, its parents and its first progeny can be seen.  Where they
        cannot be seen together, or nothing can be read, the picture is fitted.
        """
        now = (self._scale, self._origin, False)
        area = self._near_focus()
        if placed.view.focus is None or area is None:
            return now
        room = self.viewport().size()
        wide, high = room.width() / self._scale, room.height() / self._scale
        if self._scale >= _READABLE * self._text and area.width() <= wide and area.height() <= high:
            return self._scale, self._brought(area, self._origin), False
        return self._first_target() or now

    def _near_focus(self) -> QRectF | None:
        """The rectangle about the focus, its parents and its first progeny."""
        placed = self._placed
        item = placed.block_of(placed.view.focus or "") if placed is not None else None
        if placed is None or item is None:
            return None
        key = item.block.key
        above = [link.above for link in placed.view.links if link.below == key]
        below = [link.below for link in placed.view.links if link.above == key]
        wanted = {key, *above, *below}
        progeny = []
        for link in placed.view.links:
            if link.below in above and link.role != "progeny" and not link.back:
                wanted.add(link.above)
            elif link.above in below and link.role == "progeny":
                progeny.append(link.below)
        wanted.update(progeny[:1])
        area = QRectF(item.x, item.y, item.width, item.height)
        for other in placed.blocks:
            if other.block.key in wanted:
                area = area.united(QRectF(other.x, other.y, other.width, other.height))
        return area

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
