"""What of the picture is to be in sight, and the place from which it is.

What goes first where not all has room: the focus, both of its parents and their knot, its first
progeny, the other plant of a connection, pinned plants; then as much of the picture as may be.
"""

from __future__ import annotations

from collections.abc import Collection

from PySide6.QtCore import QPointF, QRectF, QSize, QSizeF

from pedigreeview.drawing.in_sight import Edges, Ground, families, lineage, outstanding
from pedigreeview.drawing.lighting import way_up
from pedigreeview.drawing.placing import PlacedBlock
from pedigreeview.drawing.tags import FAR_CODE
from pedigreeview.drawing.theme import sizes
from pedigreeview.window.canvas_places import CanvasPlaces

__all__ = ["CanvasAim"]

_FIRST_MOST = 1.15
"""A small picture is not blown up beyond this when it is fitted."""

_COMFORTABLE = 0.65

_LEAST_TYPE = 9.0
"""Pixels that the type of a code has at least where the picture is fitted about its focus."""

_LEAST_OF_ENDS = 8.0
"""The same where both plants of a connection can be in sight together only so."""

_EDGE = 40.0
"""Pixels from the edge within which a plant is brought further in."""

_BARE = 24.0
"""Pixels of ground that are left beyond the last tag where the picture is cut off elsewhere."""

_SIGN, _BESIDE = 24.0, 24.0
"""Pixels that a sign takes at an edge, with usual type; and that are left between it and a tag."""

_FREE = 60.0
"""Pixels of bare ground up to which a picture stays where it is though it is cut off elsewhere."""

_Span = tuple[float, float]


def _span(near: float, far: float, long: float, edges: _Span) -> _Span:
    """First and last place from which a stretch shows in a view so long, off the edges if it fits.

    edges : ground before and behind it
    """
    free = max(0.0, long - (far - near))
    before, behind = edges
    part = min(1.0, free / (before + behind)) if before + behind else 0.0
    first, last = far + behind * part - long, near - before * part
    # A stretch longer than the view shows its middle.
    return (first, last) if first <= last else ((first + last) / 2,) * 2


def _over(
    area: QRectF,
    origin: QPointF,
    wide: float,
    high: float,
    edges: tuple[float, float, float, float],
) -> QPointF:
    """The origin nearest to the given one from which the area shows, off the edges if it fits.

    edges : ground at the left, above, at the right and below
    """
    left, above, right, below = edges
    across = _span(area.left(), area.right(), wide, (left, right))
    down = _span(area.top(), area.bottom(), high, (above, below))
    return QPointF(
        min(max(origin.x(), across[0]), across[1]), min(max(origin.y(), down[0]), down[1])
    )


class CanvasAim(CanvasPlaces):
    """A canvas that knows which of its plants are wanted in sight."""

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

    def least_scale(self) -> float:
        """The least scale at which codes can be read."""
        return _LEAST_TYPE / FAR_CODE * self._text

    def _about_focus(self, fitting: float, least: float) -> tuple[float, QPointF] | None:
        """Scale and origin that show the part about the focus at the least scale.

        None where the whole is shown larger than that, or the picture has no focus.
        """
        placed = self._placed
        item = self._find(placed.view.focus or "") if placed is not None else None
        if item is None or fitting >= least or self.viewport().size().isEmpty():
            return None
        room, full = self._room(), self.viewport().size()
        area, scale = self._chosen_area(item, least, room)
        clear = QSize(full.width() - self._covered, full.height())
        if self._covered and self._scale_for(area, clear) >= scale:
            room = clear
        return scale, self._place_for(area, QPointF(*item.middle), scale, room)

    def _chosen_area(self, item: PlacedBlock, least: float, room: QSize) -> tuple[QRectF, float]:
        """What is to be in sight with the focus, and the scale at which it is.

        A little smaller than the least scale where that shows more and codes can still be read.
        """
        assert self._placed is not None
        floor = min(self.least_scale(), least)
        own = QRectF(item.x, item.y, item.width, item.height)
        more = outstanding(self._placed)
        view = self._placed.view
        other = view.block_of(view.way.other) if view.way is not None else ""
        ends = self._about({item.block.key, other}) if other else None
        wanted = (self._along_way(), ends, self._near_focus(), self._with_parents(), own)
        part = _LEAST_OF_ENDS / _LEAST_TYPE

        def smallest(one: QRectF) -> float:
            return floor * (part if one is ends else 1.0)

        fit = ((a, self._scale_for(a, room)) for a in wanted if a)
        area = next((a for a, fits in fit if fits >= smallest(a)), own)
        scale = min(least, max(smallest(area), self._scale_for(area, room)))
        floor = min(floor, scale)
        parents = self._with_parents()
        further = [(parents, floor)] if parents is not None else []
        # Where the two parents stand too far apart, one of them.
        further += [(self._about(keys), floor) for keys in lineage(self._placed)]
        further += [(self._about({key}), floor) for key in more]
        further += [(self._about(keys), scale) for keys in families(self._placed)]
        for one, enough in further:
            both = area.united(one)
            fits = self._scale_for(both, room)
            if fits >= enough:
                area, scale = both, min(scale, fits)
        return area, scale

    def _scale_for(self, area: QRectF, room: QSize, edge: float = _EDGE) -> float:
        """The scale up to which an area can be seen in a room, off its edges."""
        left, above = self._gutter()
        at_left, at_top, at_right, at_bottom = self._edges(area, edge)
        return min(
            (room.width() - left - at_left - at_right) / max(area.width(), 1.0),
            (room.height() - above - at_top - at_bottom) / max(area.height(), 1.0),
        )

    def _edges(self, area: QRectF, edge: float = _EDGE) -> tuple[float, float, float, float]:
        """Pixels to leave free beside an area: left, above, right, below; few where nothing is."""
        every, bare = self._everything(), min(_BARE, edge)
        down = max(edge, self._down_edge())
        return (
            edge if area.left() > every.left() + 1 else bare,
            down if area.top() > every.top() + 1 else bare,
            edge if area.right() < every.right() - 1 else bare,
            down if area.bottom() < every.bottom() - 1 else bare,
        )

    def _down_edge(self) -> float:
        """Pixels above and below in which a sign lies and the picture fades."""
        return _SIGN * self._text + _BESIDE

    def _place_for(self, area: QRectF, middle: QPointF, scale: float, room: QSize) -> QPointF:
        """The origin from which an area shows and, beside it, as much of the picture as may be."""
        assert self._placed is not None
        left, above = (part / scale for part in self._gutter())
        size = QSizeF(room.width() / scale - left, room.height() / scale - above)
        at_left, at_top, at_right, at_bottom = (part / scale for part in self._edges(area))
        every, bare = self._everything(), _BARE / scale

        def span(own: tuple[float, float], ends: tuple[float, float], long: float) -> _Span:
            near, far = ends[0] - bare, ends[1] + bare - long
            if near >= far:
                return ((near + far) / 2,) * 2
            return min(max(own[0], near), far), min(max(own[1], near), far)

        across = _span(area.left(), area.right(), size.width(), (at_left, at_right))
        down = _span(area.top(), area.bottom(), size.height(), (at_top, at_bottom))
        spans = (
            span(across, (every.left(), every.right()), size.width()),
            span(down, (every.top(), every.bottom()), size.height()),
        )
        wanted = QPointF(middle.x() - size.width() / 2, middle.y() - size.height() / 2)
        edges = Edges(bare, _EDGE / scale, self._down_edge() / scale)
        found = Ground(self._placed, self._brought_out()).fullest(wanted, size, spans, edges)
        return QPointF(found.x() - left, found.y() - above)

    def _brought_out(self) -> Collection[str]:
        """Keys of the blocks that are lit."""
        return ()

    def _with_bare_filled(self, origin: QPointF) -> QPointF:
        """The nearest place at which no wide ground is bare while tags opposite are cut off."""
        assert self._placed is not None
        scale = self._scale
        left, above = (part / scale for part in self._gutter())
        size = QSizeF(self.viewport().size()) / scale
        room = QSizeF(size.width() - left, size.height() - above)
        start = QPointF(origin.x() + left, origin.y() + above)
        found = Ground(self._placed).filled(start, room, _BARE / scale, _FREE / scale)
        return QPointF(found.x() - left, found.y() - above)

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

    def _about(self, keys: set[str]) -> QRectF:
        """The rectangle about some blocks."""
        area = QRectF()
        for key in keys:
            item = self._placed.block(key) if self._placed is not None else None
            if item is not None:
                area = area.united(QRectF(item.x, item.y, item.width, item.height))
        return area

    def _everything(self) -> QRectF:
        """The rectangle about all blocks; worked out once for each picture."""
        placed = self._placed
        if placed is None:
            return QRectF()
        if "everything" not in placed.held:
            placed.held["everything"] = self._about({item.block.key for item in placed.blocks})
        return QRectF(placed.held["everything"])

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

    def _brought_in(self, item: PlacedBlock, origin: QPointF) -> QPointF:
        return self._brought(QRectF(item.x, item.y, item.width, item.height), origin)

    def _brought(self, area: QRectF, origin: QPointF, edge: float = _EDGE) -> QPointF:
        room = self.viewport().size()
        wide, high = room.width() / self._scale, room.height() / self._scale
        if self._fits(area, self._covered):
            wide -= self._covered / self._scale
        left, above = (part / self._scale for part in self._gutter())
        at_left, at_top, at_right, at_bottom = (
            part / self._scale for part in self._edges(area, edge)
        )
        area = area.adjusted(-left, -above, 0, 0)
        return _over(area, origin, wide, high, (at_left, at_top, at_right, at_bottom))

    def _fits(self, area: QRectF, less: float = 0.0) -> bool:
        """Whether an area can be seen at once as large as it is now; less: pixels of width gone."""
        clear = self.clear_area()
        wide, high = (clear.width() - less) / self._scale, clear.height() / self._scale
        return area.width() <= wide and area.height() <= high
