"""Which part of a picture is shown where not all of it has room.

Some plants have to be in sight: the focus with its parents, the two of a connection, pinned plants.
Within what that leaves open a view lies where the most can be seen, and no ground is left bare at
one edge while tags are cut off at the opposite one.

All lengths are picture units; the place of a view is its upper left corner.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Collection, Iterable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, QSizeF

from pedigreeview.drawing.lighting import way_up
from pedigreeview.drawing.placing import Placed

__all__ = ["Edges", "Ground", "families", "lineage", "outstanding"]

_ASIDE, _KNOT, _LIT = 0.3, 0.3, 4.0
"""What a block counts, beside 1 for a plain tag: drawn faint; a cross; brought out."""
_FAR = 1.5
"""How many tags more there must be in sight for a view that lies a whole view further off."""
_MOST = 150
"""Places along each way that are weighed at most."""

_Numbers = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Edges:
    """Ground left free between the edges of a view and what is in sight.

    bare : where the picture ends
    across, down : where it goes on beyond the edge, which fades there
    """

    bare: float
    across: float
    down: float


class Ground:
    """The blocks of a picture as boxes, with what each counts."""

    def __init__(self, placed: Placed, lit: Collection[str] = ()) -> None:
        aside, up = placed.view.aside, way_up(placed)
        self._near, self._far = [], []
        blocks = placed.blocks
        for near, far in (("x", "right"), ("y", "bottom")):
            self._near.append(np.array([getattr(item, near) for item in blocks], float))
            self._far.append(np.array([getattr(item, far) for item in blocks], float))

        def worth(key: str, codes: tuple[str, ...]) -> float:
            if key in lit or key in up:
                return _LIT
            if not codes:
                return _KNOT
            return _ASIDE if aside.issuperset(codes) else 1.0

        self._worth = np.array([worth(item.block.key, item.block.codes) for item in blocks], float)

    def filled(self, origin: QPointF, room: QSizeF, bare: float, least: float = 0.0) -> QPointF:
        """The nearest place from which nothing is cut off at one edge while the other is bare.

        bare : ground that may be left beyond the last tag
        least : ground up to which the view stays where it is
        """
        if not self._worth.size:
            return origin
        place, size = [origin.x(), origin.y()], (room.width(), room.height())
        for axis in (0, 1, 0):
            other = 1 - axis
            middle = (self._near[other] + self._far[other]) / 2
            beside = (middle > place[other]) & (middle < place[other] + size[other])
            if not beside.any():
                continue
            near, far = self._near[axis][beside].min(), self._far[axis][beside].max()
            start, end = place[axis], place[axis] + size[axis]
            ahead, behind = near - start, end - far
            if min(ahead, behind) >= 0 or max(ahead, behind) <= max(bare, least):
                continue
            low, high = sorted((near - bare, far + bare - size[axis]))
            place[axis] = float(min(max(start, low), high))
        return QPointF(*place)

    def _candidates(
        self, axis: int, room: float, span: tuple[float, float], edge: float, bare: float
    ) -> tuple[_Numbers, _Numbers, _Numbers]:
        """Places along one way, and the boxes with the free ground that each needs."""
        near, far = self._near[axis] - edge, self._far[axis] + edge
        # At the end of the picture less ground is left.
        near[near <= near.min() + 1] += edge - bare
        far[far >= far.max() - 1] -= edge - bare
        places: _Numbers = np.unique(np.round(np.concatenate((near, far - room)), 1))
        places = places[(places > span[0]) & (places < span[1])]
        if places.size > _MOST:
            places = places[:: -(-places.size // _MOST)]
        return places, near, far

    def fullest(
        self,
        wanted: QPointF,
        room: QSizeF,
        spans: tuple[tuple[float, float], tuple[float, float]],
        edges: Edges,
    ) -> QPointF:
        """The place within the spans, across and down, from which the most can be seen.

        wanted : the place that is taken where others show no more
        """
        size, aim = (room.width(), room.height()), (wanted.x(), wanted.y())
        found = []
        for axis, edge in enumerate((edges.across, edges.down)):
            low, high = spans[axis]
            places, near, far = self._candidates(axis, size[axis], spans[axis], edge, edges.bare)
            more = [low, high, min(max(aim[axis], low), high)]
            found.append((np.unique(np.append(places, more)), near, far))
        (across, left, right), (down, top, bottom) = found
        best, place = -np.inf, aim
        for y in down:
            rows = (top >= y - 0.2) & (bottom <= y + size[1] + 0.2)
            starts, ends, worth = left[rows], right[rows], self._worth[rows]
            by_start, by_end = np.argsort(starts), np.argsort(ends)
            before = np.concatenate(((0.0,), np.cumsum(worth[by_start])))
            up_to = np.concatenate(((0.0,), np.cumsum(worth[by_end])))
            # What ends in sight less what begins before it: no box is wider than a view.
            seen = up_to[np.searchsorted(ends[by_end], across + size[0] + 0.2, "right")]
            seen = seen - before[np.searchsorted(starts[by_start], across - 0.2, "left")]
            away = np.abs(across - aim[0]) / size[0] + abs(y - aim[1]) / size[1]
            score = seen - _FAR * away
            at = int(np.argmax(score))
            if score[at] > best:
                best, place = score[at], (float(across[at]), float(y))
        return self.filled(QPointF(*place), room, edges.bare)


def outstanding(placed: Placed) -> list[str]:
    """Keys of blocks that are to be in sight with the focus: the other end, pins, where lines meet.

    The most wanted first; of the places where lines meet the lowest first.
    """
    view = placed.view
    other = view.way.other if view.way is not None else ""
    rows = {item.block.key: item.block.row for item in placed.blocks}
    meeting = [view.block_of(code) for code in view.meeting]
    meeting.sort(key=lambda key: -rows.get(key, 0))
    keys = [view.block_of(code) for code in (other, *view.pins)] + meeting
    return list(dict.fromkeys(key for key in keys if key in rows))


def families(placed: Placed) -> list[set[str]]:
    """For each cross of the focus its knot and its first progeny; the nearest first."""
    key = placed.view.block_of(placed.view.focus or "")
    below: dict[str, list[str]] = defaultdict(list)
    for link in placed.view.links:
        if not link.back:
            below[link.above].append(link.below)
    return [{knot, *below[knot][:1]} for knot in _nearest(placed, key, below[key])]


def lineage(placed: Placed) -> list[set[str]]:
    """For each parent of the focus it and the knot; the nearest to the focus first."""
    key = placed.view.block_of(placed.view.focus or "")
    above: dict[str, list[str]] = defaultdict(list)
    for link in placed.view.links:
        if not link.back:
            above[link.below].append(link.above)
    knots = {parent: knot for knot in above[key] for parent in above[knot]}
    return [{parent, knots[parent]} for parent in _nearest(placed, key, knots)]


def _nearest(placed: Placed, key: str, others: Iterable[str]) -> list[str]:
    """The keys in the picture, the nearest to a block first."""
    own = placed.block(key)
    if own is None:
        return []
    x, y = own.middle
    items = {other: placed.block(other) for other in others}
    far = {
        other: abs(item.middle[0] - x) + abs(item.middle[1] - y)
        for other, item in items.items()
        if item is not None
    }
    return sorted(far, key=far.__getitem__)
