"""What a picture asks to be kept clear of a card that lies on it, as arrays.

Some ground is forbidden: the plant itself, its parents and the lines by which it came of them,
pinned plants, lit lines of descent, the names of the generations, and the signs that say how much
more lies beyond an edge.  The code of no tag is hidden, and no other mark where that can be.  Plain
rectangles in pixels of what the card lies on, worked out from the picture once and moved with it.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field, replace
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, QRectF, QSizeF

from pedigreeview.drawing.lighting import light
from pedigreeview.drawing.placing import Placed, PlacedBlock
from pedigreeview.drawing.strokes import LinkKey
from pedigreeview.drawing.tabs import tab_rects
from pedigreeview.drawing.theme import sizes

__all__ = ["NOTHING", "Boxes", "Ground", "boxes_of", "ground_of"]

Boxes = NDArray[np.float64]
"""(n, 4): left, top, right and bottom of n rectangles."""

NOTHING: Boxes = np.zeros((0, 4))
"""No rectangle."""

_WRITTEN = 0.72
"""Part of a tag's height, from above, in which it is written on."""
_AIR = 5.0
"""Pixels left free around a tag that is not to be hidden."""
_RING, _RING_AIR = 7.0, 12.0
"""Picture units that the ring about the focus reaches out, and pixels left free about it."""
_LINES = 4000
"""More pieces of lines than these are not looked at."""
_THIN = 2.0
"""Pixels that a line is taken for to either side."""


@dataclass(frozen=True, slots=True, eq=False)
class Ground:
    """What lies on the stage."""

    around: QRectF
    tag: QRectF
    """The plant's own tag."""
    forbidden: Boxes = field(default_factory=lambda: NOTHING)
    others: Boxes = field(default_factory=lambda: NOTHING)
    """Tags and knots that had better be seen."""
    lines: Boxes = field(default_factory=lambda: NOTHING)
    """Pieces of the lines, each a thin rectangle."""
    codes: Boxes = field(default_factory=lambda: NOTHING)
    """Where the codes of tags stand, with what is written below them."""

    def without(self, rects: Iterable[QRectF]) -> Ground:
        """The same with more that is forbidden."""
        more = boxes_of(rects)
        if not len(more):
            return self
        return replace(self, forbidden=np.concatenate((self.forbidden, more)))


def boxes_of(rects: Iterable[QRectF]) -> Boxes:
    """Rectangles as an array."""
    rows = [(rect.left(), rect.top(), rect.right(), rect.bottom()) for rect in rects]
    return np.array(rows, dtype=float).reshape(-1, 4)


@dataclass(slots=True, eq=False)
class _Parts:
    """What a picture consists of, in its own units; made once for a picture."""

    at: dict[str, int]
    """Number of each block, by its key."""
    blocks: Boxes
    codes: Boxes
    lines: Boxes
    links: list[LinkKey]
    """The link that each piece of a line belongs to."""
    above: dict[str, list[str]]
    """Keys of the blocks right above each block."""
    tabbed: list[tuple[PlacedBlock, QRectF]]


def _parts(placed: Placed) -> _Parts:
    held: _Parts | None = placed.held.get("card_parts")
    if held is not None:
        return held
    blocks = [(item.x, item.y, item.right, item.bottom) for item in placed.blocks]
    codes = [
        (item.x, item.y, item.right, item.y + _WRITTEN * item.height)
        for item in placed.blocks
        if item.block.codes
    ]
    lines: list[tuple[float, float, float, float]] = []
    links: list[LinkKey] = []
    for line in placed.lines:
        for link, points in line.routes:
            key = (link.above, link.below, link.role, link.knot)
            for (x, y), (far_x, far_y) in pairwise(points):
                lines.append((min(x, far_x), min(y, far_y), max(x, far_x), max(y, far_y)))
                links.append(key)
        if len(lines) > _LINES:
            break
    above: dict[str, list[str]] = {}
    for link in placed.view.links:
        above.setdefault(link.below, []).append(link.above)
    made = placed.held["card_parts"] = _Parts(
        {item.block.key: number for number, item in enumerate(placed.blocks)},
        np.array(blocks, dtype=float).reshape(-1, 4),
        np.array(codes, dtype=float).reshape(-1, 4),
        np.array(lines, dtype=float).reshape(-1, 4),
        links,
        above,
        [
            (item, QRectF(item.x, item.y, item.width, item.height))
            for item in placed.blocks
            if item.block.more_up or item.block.more_down
        ],
    )
    return made


def _tabs(placed: Placed, parts: _Parts, scale: float) -> Boxes:
    """The tabs that say how much is folded away, in picture units; they depend on the scale."""
    held: tuple[float, Boxes] | None = placed.held.get("card_tabs")
    if held is None or held[0] != scale:
        rects = (tab for item, rect in parts.tabbed for tab in tab_rects(item.block, rect, scale))
        held = placed.held["card_tabs"] = (scale, boxes_of(tab for tab in rects if tab is not None))
    return held[1]


def ground_of(
    placed: Placed,
    code: str,
    kept: Iterable[str] = (),
    paths: Iterable[Sequence[str]] = (),
    *,
    start: QPointF,
    scale: float,
    around: QRectF,
    signs: Iterable[QRectF] = (),
    text: float = 1.0,
) -> Ground:
    """What a picture asks to be kept clear of the card of a plant.

    kept : plants that must stay in sight, as parents and pins
    paths : lines of descent that are lit
    start, scale : where the picture's own (0, 0) lies, and pixels a unit
    around : all that the card may lie on
    signs : what else must not be hidden
    text : how much larger than usual the type of the window is
    """
    parts = _parts(placed)
    corner = np.array((start.x(), start.y(), start.x(), start.y()))

    def seen(boxes: Boxes, air: float = 0.0) -> Boxes:
        """Rectangles of the picture as they lie on the stage, those that reach into it."""
        found = boxes * scale + corner + np.array((-air, -air, air, air))
        return _inside(found, around)

    own_key = placed.view.block_of(code)
    own = parts.at.get(own_key, -1)
    tag = QRectF(around.center(), QSizeF(1, 1))
    if own >= 0:
        # With the ring about it, and air about that.
        ring = _RING_AIR + _RING * scale
        left, top, right, bottom = (parts.blocks[own] * scale + corner).tolist()
        tag = QRectF(left, top, right - left, bottom - top).adjusted(-ring, -ring, ring, ring)
    born = parts.above.get(own_key, ())
    keys = [*(placed.view.block_of(other) for other in kept), *born]
    taken = {parts.at[key] for key in keys if key in parts.at}
    lit = light(placed, paths)
    taken |= {parts.at[key] for key in lit.blocks if key in parts.at}
    parents = {own_key, *born} - {""}
    is_own = np.array([key[1] in parents or key in lit.links for key in parts.links], dtype=bool)
    forbidden = [
        boxes_of(_band_heads(placed, start, scale, around, text)),
        seen(parts.blocks[sorted(taken)]),
        boxes_of(signs),
        seen(parts.lines[is_own], _THIN),
    ]
    rest = np.ones(len(parts.blocks), dtype=bool)
    rest[[*taken, *([own] if own >= 0 else [])]] = False
    codes = seen(parts.codes)
    return Ground(
        around,
        tag,
        _inside(np.concatenate(forbidden), around),
        np.concatenate((seen(parts.blocks[rest], _AIR), seen(_tabs(placed, parts, scale), _AIR))),
        seen(parts.lines, _THIN),
        codes[~_meet(codes, tag)],
    )


def _meet(boxes: Boxes, rect: QRectF) -> NDArray[np.bool_]:
    """Which rectangles meet another one."""
    met: NDArray[np.bool_] = (
        (boxes[:, 0] < rect.right())
        & (boxes[:, 2] > rect.left())
        & (boxes[:, 1] < rect.bottom())
        & (boxes[:, 3] > rect.top())
    )
    return met


def _inside(boxes: Boxes, around: QRectF) -> Boxes:
    return boxes[_meet(boxes, around)]


def _band_heads(
    placed: Placed, start: QPointF, scale: float, around: QRectF, text: float
) -> list[QRectF]:
    """The names of the generations, which stay at the edge while one pans."""
    room = sizes().band_label * text
    found = []
    for band in placed.bands:
        long = (band.end - band.start) * scale
        if placed.orientation == "down":
            top = start.y() + band.start * scale
            found.append(QRectF(around.left(), top, room, long))
        else:
            left = start.x() + band.start * scale
            found.append(QRectF(left, around.top(), long, 36.0 * text))
    return found
