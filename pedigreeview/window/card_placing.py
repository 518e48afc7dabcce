"""Where the card lies: beside its plant, on the emptiest ground, never on what is being looked at.

Some ground is forbidden: the plant itself, its parents, pinned plants, lit lines of descent, the
names of the generations, and the signs that say how much more lies beyond an edge.  The code of no
tag is hidden, and of other marks only few; where no spot is left, the picture makes room at its
side, or the card folds to a strip with its title.  Plain rectangles in the pixels of the stage.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from itertools import pairwise

from PySide6.QtCore import QPointF, QRectF, QSizeF

from pedigreeview.drawing.lighting import Lit, light
from pedigreeview.drawing.placing import Placed, PlacedBlock
from pedigreeview.drawing.theme import sizes
from pedigreeview.window.canvas_edges import sign_rects
from pedigreeview.window.canvas_places import CanvasPlaces

__all__ = ["Ground", "Spot", "ground", "spot_at", "spot_for"]

_MAY_HIDE = 0
"""Tags and knots that the open card may touch, the codes of tags aside."""
_WRITTEN = 0.72
"""Part of a tag's height, from above, in which it is written on."""
_AIR = 5.0
"""Pixels left free around a tag that is not to be hidden."""
_RING, _RING_AIR = 7.0, 12.0
"""Picture units that the ring about the focus reaches out, and pixels left free about it."""
_LINES = 4000
"""More pieces of lines than these are not looked at."""
_WAYS = 28
"""Steps across and down at which a spot is tried."""


@dataclass(frozen=True, slots=True)
class Ground:
    """What lies on the stage."""

    around: QRectF
    tag: QRectF
    """The plant's own tag."""
    forbidden: tuple[QRectF, ...] = ()
    others: tuple[QRectF, ...] = ()
    """Tags and knots that had better be seen."""
    lines: tuple[QRectF, ...] = ()
    """Pieces of the lines, each a thin rectangle."""
    codes: tuple[QRectF, ...] = ()
    """Where the codes of tags stand, with what is written below them."""


@dataclass(frozen=True, slots=True)
class Spot:
    """A place for the card and what it hides there."""

    rect: QRectF
    hidden: int = 0
    """Other tags under it."""
    forbidden: int = 0
    """Pieces of forbidden ground under it."""
    codes: int = 0
    """Codes of tags under it."""

    @property
    def good(self) -> bool:
        """Whether the open card may lie here."""
        return not self.forbidden and not self.codes and self.hidden <= _MAY_HIDE


@dataclass(slots=True)
class _Boxes:
    """Many rectangles that are asked at once how many of them another one touches."""

    rects: Sequence[QRectF]
    edges: list[tuple[float, float, float, float]] = field(init=False)

    def __post_init__(self) -> None:
        self.edges = [(r.left(), r.top(), r.right(), r.bottom()) for r in self.rects]

    def across(self, x0: float, x1: float) -> list[tuple[float, float]]:
        """Top and bottom of those that lie between two places across."""
        return [
            (top, bottom) for left, top, right, bottom in self.edges if left < x1 and right > x0
        ]

    def touched(self, rect: QRectF) -> int:
        x0, y0, x1, y1 = rect.left(), rect.top(), rect.right(), rect.bottom()
        return sum(
            left < x1 and right > x0 and top < y1 and bottom > y0
            for left, top, right, bottom in self.edges
        )


def _evenly(first: float, last: float) -> list[float]:
    return [first + (last - first) * step / (_WAYS - 1) for step in range(_WAYS)]


def spot_at(lying: Ground, rect: QRectF) -> Spot:
    """What the card would hide in one place."""
    forbidden = _Boxes((*lying.forbidden, lying.tag)).touched(rect)
    codes = _Boxes(lying.codes).touched(rect)
    return Spot(rect, _Boxes(lying.others).touched(rect), forbidden, codes)


def spot_for(
    lying: Ground, wanted: Sequence[QSizeF], gap: float, was: QPointF | None = None
) -> Spot:
    """The best spot of all sizes wanted; an earlier size is better, and so is a spot nearby.

    was : the corner where the card lies now; a spot like it is preferred, so that it moves little
    """
    forbidden, others = _Boxes((*lying.forbidden, lying.tag)), _Boxes(lying.others)
    codes, lines = _Boxes(lying.codes), _Boxes(lying.lines)
    around = lying.around.adjusted(gap, gap, -gap, -gap)
    # Where no size finds room it lies in the corner, and that is no good spot.
    best, least = Spot(QRectF(around.topLeft(), wanted[-1]), forbidden=1), float("inf")
    far = max(1.0, around.width() + around.height())
    tag = lying.tag
    for place, size in enumerate(wanted):
        lefts, tops = _corners(around, lying.tag, size, gap, was)
        wide, high = size.width(), size.height()
        x0, y0, x1, y1 = tag.left(), tag.top(), tag.right(), tag.bottom()
        for left in lefts:
            beside = max(0.0, left - x1, x0 - (left + wide))
            below = [boxes.across(left, left + wide) for boxes in (forbidden, codes, others, lines)]
            for top in tops:
                moved = 0.0
                if was is not None:
                    moved = (abs(left - was.x()) + abs(top - was.y())) / far
                away = (beside + max(0.0, top - y1, y0 - (top + high))) / far
                cost = 1.2 * place + 2.0 * away + moved
                # Counting is dear: it ends as soon as the spot cannot be the best any more.
                hits = [0, 0, 0, 0]
                for at, weight in enumerate((1000.0, 60.0, 3.0, 0.3)):
                    if cost >= least:
                        break
                    hits[at] = _within(below[at], top, top + high)
                    cost += weight * hits[at]
                if cost < least:
                    rect = QRectF(left, top, wide, high)
                    best, least = Spot(rect, hits[2], hits[0], hits[1]), cost
    return best


def _within(spans: Sequence[tuple[float, float]], top: float, bottom: float) -> int:
    count = 0
    for above, below in spans:
        if above < bottom and below > top:
            count += 1
    return count


def _corners(
    around: QRectF, tag: QRectF, size: QSizeF, gap: float, was: QPointF | None
) -> tuple[list[int], list[int]]:
    """Where the card's corner is tried: places across and places down, the likeliest first."""
    right, bottom = around.right() - size.width(), around.bottom() - size.height()
    if right < around.left() or bottom < around.top():
        return [], []
    lefts = [tag.right() + gap, tag.left() - gap - size.width()]
    tops = [tag.top() - gap, tag.bottom() + gap - size.height()]
    tops += [tag.bottom() + gap, tag.top() - gap - size.height()]
    if was is not None:
        lefts.append(was.x())
        tops.append(was.y())
    lefts += _evenly(around.left(), right)
    tops += _evenly(around.top(), bottom)
    return (
        list(dict.fromkeys(min(max(round(x), round(around.left())), round(right)) for x in lefts)),
        list(dict.fromkeys(min(max(round(y), round(around.top())), round(bottom)) for y in tops)),
    )


def ground(
    canvas: CanvasPlaces,
    placed: Placed | None,
    code: str,
    kept_clear: Iterable[str],
    paths: Iterable[Sequence[str]],
    shift: QPointF,
    around: QRectF,
) -> Ground:
    """What the picture on a canvas asks to be kept clear of the card of a plant.

    kept_clear : plants that must stay in sight, as parents and pins
    shift : from the places of the canvas to those of the stage
    """
    if placed is None:
        return Ground(around, QRectF(around.center(), QSizeF(1, 1)))
    own = canvas.rect_of(code)
    tag = QRectF(around.center(), QSizeF(1, 1))
    if own.isValid():
        # With the ring about it, and air about that.
        ring = _RING_AIR + _RING * canvas.zoom()
        tag = QRectF(own).translated(shift).adjusted(-ring, -ring, ring, ring)
    forbidden = _band_heads(canvas, placed, around, shift)
    born = {link.above for link in placed.view.links if link.below == placed.view.block_of(code)}
    for other in dict.fromkeys((*kept_clear, *born)):
        rect = canvas.rect_of(other)
        if rect.isValid():
            forbidden.append(QRectF(rect).translated(shift))
    forbidden += [rect.translated(shift) for rect in _lit(canvas, placed, paths)]
    forbidden += [rect.translated(shift) for rect, _ in sign_rects(canvas).values()]
    others = [rect.translated(shift) for rect in canvas.rects_shown(around.translated(-shift))]
    others += [rect.translated(shift) for rect in canvas.tabs_shown()]
    tags = (item for item in placed.blocks if item.block.codes)
    codes = (_code_rect(canvas, item).translated(shift) for item in tags)
    taken = {(rect.x(), rect.y()) for rect in forbidden} | {
        (own.x() + shift.x(), own.y() + shift.y())
    }
    lines = (rect.translated(shift) for rect in _pieces(canvas, placed))
    return Ground(
        around,
        tag,
        tuple(rect for rect in forbidden if rect.intersects(around)),
        tuple(
            rect.adjusted(-_AIR, -_AIR, _AIR, _AIR)
            for rect in others
            if (rect.x(), rect.y()) not in taken
        ),
        tuple(rect for rect in lines if rect.intersects(around)),
        tuple(rect for rect in codes if rect.intersects(around) and not rect.intersects(tag)),
    )


def _code_rect(canvas: CanvasPlaces, item: PlacedBlock) -> QRectF:
    """Where a tag's code stands, and its second line: all of it but the bar at its foot."""
    end = item.y + _WRITTEN * item.height
    return QRectF(canvas.to_view(item.x, item.y), canvas.to_view(item.right, end))


def _band_heads(
    canvas: CanvasPlaces, placed: Placed, around: QRectF, shift: QPointF
) -> list[QRectF]:
    """The names of the generations, which stay at the edge of the stage while one pans."""
    found, room = [], sizes().band_label * canvas.text_scale()
    for band in placed.bands:
        start, end = canvas.to_view(band.start, band.start), canvas.to_view(band.end, band.end)
        if placed.orientation == "down":
            top = start.y() + shift.y()
            found.append(QRectF(around.left(), top, room, end.y() - start.y()))
        else:
            left = start.x() + shift.x()
            found.append(
                QRectF(left, around.top(), end.x() - start.x(), 36.0 * canvas.text_scale())
            )
    return found


def _pieces(canvas: CanvasPlaces, placed: Placed, only: Lit | None = None) -> Iterable[QRectF]:
    """The straight pieces of the lines, all of them or the lit ones."""
    count = 0
    for line in placed.lines:
        for link, points in line.routes:
            if only and (link.above, link.below, link.role, link.knot) not in only.links:
                continue
            for one, other in pairwise(points):
                ends = QRectF(canvas.to_view(*one), canvas.to_view(*other)).normalized()
                yield ends.adjusted(-2, -2, 2, 2)
                count += 1
        if count > _LINES:
            return


def _lit(canvas: CanvasPlaces, placed: Placed, paths: Iterable[Sequence[str]]) -> Iterable[QRectF]:
    lit = light(placed, paths)
    if not lit.blocks:
        return
    for item in placed.blocks:
        if item.block.key in lit.blocks:
            yield QRectF(canvas.to_view(item.x, item.y), canvas.to_view(item.right, item.bottom))
    yield from _pieces(canvas, placed, lit)
