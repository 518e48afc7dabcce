"""How large the canvas shows its picture, and from where on: fit, zoom, what stays in sight.

What goes first where not all has room: the focus, both of its parents and their knot, its first
progeny; codes stay readable unless all of the picture is asked for.
"""

from __future__ import annotations

from PySide6.QtCore import QPoint, QPointF, QRectF, QSize, QSizeF

from pedigreeview.drawing.lighting import way_up
from pedigreeview.drawing.placing import Placed, PlacedBlock
from pedigreeview.drawing.tags import FAR_CODE
from pedigreeview.drawing.theme import sizes
from pedigreeview.window.canvas_places import CanvasPlaces

__all__ = ["CanvasFit"]

_LEAST, _MOST = 0.04, 4.0
_FIRST_MOST = 1.15
"""A small picture is not blown up beyond this when it is fitted."""
_COMFORTABLE = 0.65
_READABLE = 0.6
"""A focused picture is not fitted smaller than this when it is first shown."""

_LEAST_TYPE = 9.0
"""Pixels that the type of a code has at least where the picture is fitted about its focus."""

_NEAR_EDGE = 28.0
"""Pixels from the edge that are left free where the picture moves by the least."""

_EDGE = 40.0
"""Pixels from the edge within which a plant is brought further in."""


def _over(area: QRectF, origin: QPointF, wide: float, high: float, edge: float) -> QPointF:
    """The origin nearest to the given one from which the area shows, off the edges if it fits."""
    edge_x = min(edge, max(0.0, (wide - area.width()) / 2))
    edge_y = min(edge, max(0.0, (high - area.height()) / 2))
    x = min(max(origin.x(), area.right() + edge_x - wide), area.left() - edge_x)
    y = min(max(origin.y(), area.bottom() + edge_y - high), area.top() - edge_y)
    return QPointF(x, y)


class CanvasFit(CanvasPlaces):
    """A canvas that chooses scale and place."""

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
        content = self._content()
        left, above = self._gutter()
        across = (room.width() - left) / max(content.width(), 1.0)
        down = (room.height() - above) / max(content.height(), 1.0)
        return min(across, down, _FIRST_MOST * self._text)

    def _content(self) -> QRectF:
        """The picture without the room that it leaves for the names of its generations."""
        assert self._placed is not None
        left, top, width, height = self._placed.bounds
        room = sizes().band_label
        if self._placed.orientation == "down":
            return QRectF(left + room, top, width - room, height)
        return QRectF(left, top + room, width, height - room)

    def set_text_scale(self, factor: float) -> None:
        """Make the picture's type as much larger as that of the window; 1 is the usual size."""
        if factor <= 0 or factor == self._text:
            return
        change, self._text = factor / self._text, factor
        if self._fitted or self._placed is None:
            self.first_look()
        else:
            self.zoom_by(change)

    def fit(self) -> None:
        """Show the whole picture, as large as it goes but not blown up.

        Where its codes could not be read so, the part about the focus is shown at a scale at which
        they can; asked once more, the whole is shown all the same.
        """
        target = self._fit_target()
        if target is None:
            return
        again = self._fitted and self._partly
        near = None if again else self._about_focus(target[0], self.least_scale())
        self._go_to(*(near or target), fitted=True, partly=near is not None)

    def refit(self) -> None:
        """Fit again what is fitted, as after a change of size: the whole, or about the focus."""
        target = self._fit_target()
        if not self._fitted or target is None:
            return
        # What was shown whole though it cannot be read so was asked for.
        least = self.least_scale()
        keep = not self._partly and self._scale < least
        near = None if keep else self._about_focus(target[0], least)
        self._go_to(*(near or target), fitted=True, partly=near is not None)

    def hold_still(self) -> None:
        """Keep scale and place when the size changes from now on."""
        self._fitted = False

    def least_scale(self) -> float:
        """The least scale at which codes can be read."""
        return _LEAST_TYPE / FAR_CODE * self._text

    def _fit_target(self) -> tuple[float, QPointF] | None:
        """Scale and origin at which the whole picture shows."""
        if self._placed is None:
            return None
        content, room = self._content(), self._room()
        if content.isEmpty() or room.isEmpty():
            return None
        scale = max(_LEAST, self._fitting(room))
        left, above = self._gutter()
        middle = content.center()
        return scale, QPointF(
            middle.x() - (room.width() + left) / scale / 2,
            middle.y() - (room.height() + above) / scale / 2,
        )

    def first_look(self) -> None:
        """The whole picture if it can be read so, else its focus at a size that can."""
        target = self._first_target()
        if target is not None:
            self._go_to(*target[:2], fitted=target[2])

    def look_at(self, scale: float) -> None:
        """Show the focus and its nearest at a scale, or at a smaller one if they need it."""
        target = self._about_focus(0.0, scale)
        if target is not None and abs(self._scale - scale) > 1e-9:
            self._go_to(*target, fitted=False)

    def _first_target(self) -> tuple[float, QPointF, bool] | None:
        found = self._fit_target()
        if found is None:
            return None
        near = self._about_focus(found[0], _READABLE * self._text)
        return (*near, False) if near is not None else (*found, True)

    def _about_focus(self, fitting: float, least: float) -> tuple[float, QPointF] | None:
        """Scale and origin that show the part about the focus at the least scale.

        None where the whole is shown larger than that, or the picture has no focus.
        """
        placed = self._placed
        item = self._find(placed.view.focus or "") if placed is not None else None
        if item is None or fitting >= least or self.viewport().size().isEmpty():
            return None
        room = self._room()
        own = QRectF(item.x, item.y, item.width, item.height)
        wanted = (self._along_way(), self._near_focus(), self._with_parents())
        areas = [area for area in wanted if area is not None]
        # A little smaller, where that shows the nearest relatives too and codes can still be read.
        scale = least
        left, above = self._gutter()
        for area in areas:
            fits = min(
                (room.width() - 2 * _EDGE - left) / area.width(),
                (room.height() - 2 * _EDGE - above) / area.height(),
            )
            if fits >= min(self.least_scale(), least):
                scale, own = min(least, fits), area
                break
        wide, high = room.width() / scale, room.height() / scale
        middle = QPointF(*item.middle)
        origin = self._within_picture(
            QPointF(middle.x() - wide / 2, middle.y() - high / 2), wide, high, scale
        )
        own = own.adjusted(-left / scale, -above / scale, 0, 0)
        return scale, _over(own, origin, wide, high, _EDGE / scale)

    def _along_way(self) -> QRectF | None:
        """The rectangle from where the way that is looked along comes from down to the focus."""
        keys = way_up(self._placed) if self._placed is not None else set()
        return self._about(keys) if keys else None

    def _with_parents(self) -> QRectF | None:
        """The rectangle about the focus and its parents."""
        placed = self._placed
        item = placed.block_of(placed.view.focus or "") if placed is not None else None
        if placed is None or item is None:
            return None
        above = {link.above for link in placed.view.links if link.below == item.block.key}
        above |= {
            link.above
            for link in placed.view.links
            if link.below in above and link.role != "progeny" and not link.back
        }
        return self._about({item.block.key, *above})

    def _about(self, keys: set[str]) -> QRectF:
        """The rectangle about some blocks."""
        area = QRectF()
        for other in self._placed.blocks if self._placed is not None else ():
            if other.block.key in keys:
                area = area.united(QRectF(other.x, other.y, other.width, other.height))
        return area

    def _within_picture(self, origin: QPointF, wide: float, high: float, scale: float) -> QPointF:
        """The origin nearest to the given one that leaves no room empty beside the picture."""
        content = self._content()
        left, above = (part / scale for part in self._gutter())

        def held(value: float, start: float, long: float, room: float) -> float:
            if long <= room:
                return start + (long - room) / 2
            return min(max(value, start), start + long - room)

        x = held(origin.x() + left, content.left(), content.width(), wide - left)
        y = held(origin.y() + above, content.top(), content.height(), high - above)
        return QPointF(x - left, y - above)

    def _go_to(self, scale: float, origin: QPointF, *, fitted: bool, partly: bool = False) -> None:
        self._scale, self._origin, self._partly = scale, origin, partly
        self._fitted = fitted
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
        if found is None or self.shows_all():
            return
        with self.at_rest():
            target = self._brought_in(found, self._origin)
        if self._part < 1.0:
            self._pan = (self._pan[0], target)
        else:
            self._origin = target
            self._settle_pan()
        self.viewport().update()

    def _brought_in(self, item: PlacedBlock, origin: QPointF) -> QPointF:
        return self._brought(QRectF(item.x, item.y, item.width, item.height), origin)

    def _brought(self, area: QRectF, origin: QPointF, edge: float = _EDGE) -> QPointF:
        room = self.viewport().size()
        wide, high = room.width() / self._scale, room.height() / self._scale
        if self._fits(area, self._covered):
            wide -= self._covered / self._scale
        left, above = (part / self._scale for part in self._gutter())
        area = area.adjusted(-left, -above, 0, 0)
        return _over(area, origin, wide, high, edge / self._scale)

    def _fits(self, area: QRectF, less: float = 0.0) -> bool:
        """Whether an area can be seen at once as large as it is now; less: pixels of width gone."""
        clear = self.clear_area()
        wide, high = (clear.width() - less) / self._scale, clear.height() / self._scale
        return area.width() <= wide and area.height() <= high

    def _shows_all(self, scale: float, origin: QPointF) -> bool:
        """Whether all tags are in sight from a place in the picture on."""
        if self._placed is None:
            return False
        left, above = (part / scale for part in self._gutter())
        size = QSizeF(self.viewport().size()) / scale
        seen = QRectF(origin, size).adjusted(left, above, 0, 0)
        everything = self._everything()
        clear = seen.adjusted(0, 0, -self._covered / scale, 0)
        return (clear if everything.width() <= clear.width() else seen).contains(everything)

    def shows_all(self) -> bool:
        """Whether the picture is fitted as a whole."""
        return self._fitted and not self._partly

    def may_narrow(self, less: float) -> bool:
        """Whether, with less width, all that was fitted can be seen as large as it is now.

        Else whether focus, parents and their knot can.
        """
        with self.at_rest():
            area = self._everything() if self.shows_all() else self._with_parents()
            return area is None or self._fits(area, less)

    def _everything(self) -> QRectF:
        """The rectangle about all blocks."""
        blocks = self._placed.blocks if self._placed is not None else ()
        return self._about({item.block.key for item in blocks})

    def stay_in_sight(self, before: QSize) -> None:
        """Move by the least after a change of size: all tags stay in sight if they can.

        Else the focus, its parents and their knot do, where they were in sight before; at a smaller
        scale if need be, as long as codes can be read.
        """
        if self._placed is None or self._fitted or before.isEmpty():
            return
        with self.at_rest():
            found = self._kept_in_sight(before)
        if found is None:
            return
        scale, origin = found
        if self._part < 1.0:
            self._pan, self._zooming = (self._pan[0], origin), (self._zooming[0], scale)
        else:
            self._go_to(scale, origin, fitted=False)

    def _kept_in_sight(self, before: QSize) -> tuple[float, QPointF] | None:
        assert self._placed is not None
        everything = self._everything()
        if self._fits(everything):
            return self._scale, self._brought(everything, self._origin, _NEAR_EDGE)
        area = self._with_parents()
        if area is None:
            return None
        left, above = self._gutter()
        seen = QRectF(
            self.to_picture(QPointF(left - 1, above - 1)),
            self.to_picture(QPointF(before.width() + 1, before.height() + 1)),
        )
        if not seen.contains(area):
            return None
        if self._fits(area):
            return self._scale, self._brought(area, self._origin, _NEAR_EDGE)
        return self._about_focus(0.0, min(self._scale, _READABLE * self._text))

    def _wanted_view(self, placed: Placed) -> tuple[float, QPointF, bool]:
        """Where the view goes for a new picture: as little as shows the focus and its nearest.

        It stays as it is when the focus, its parents and its first progeny can be seen.  Where they
        cannot be seen together, or nothing can be read, the picture is fitted.
        """
        now = (self._scale, self._origin, False)
        readable = self._scale >= self.least_scale() - 1e-6
        if readable and self._shows_all(self._scale, self._origin):
            return now
        everything = self._everything()
        if readable and self._covered and self._fits(everything, self._covered):
            return self._scale, self._brought(everything, self._origin, _NEAR_EDGE), False
        area = self._near_focus()
        if placed.view.focus is None or area is None:
            return now
        if readable and self._fits(area):
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
        return self._about(wanted)
