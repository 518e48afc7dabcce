"""Where a card lies on a picture: at the right side, and never on what is being looked at.

It comes to the same place from plant to plant, as tall as the ground there is free.  Only where not
even a folded card has room there it lies where it was, or near its plant, on the emptiest ground.
What lies where is said by `free_ground`.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QRectF, QSizeF

from pedigreeview.drawing.free_ground import Boxes, Ground, boxes_of

__all__ = ["Spot", "home_spot", "settled_spot", "spot_at", "spot_for"]

_WAYS = 28
"""Steps across and down at which a spot is tried."""
_MUCH = 0.6
"""So much of what it could show elsewhere at the right side is enough for the card to stay."""
_COVERED = (1000.0, 60.0, 3.0, 0.3)
"""What it costs to lie on one piece of forbidden ground, a code, another mark, a line."""


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
        return not (self.forbidden or self.codes or self.hidden)


def spot_at(lying: Ground, rect: QRectF) -> Spot:
    """What the card would hide in one place."""
    forbidden = _touched(lying.forbidden, rect) + _touched(boxes_of([lying.tag]), rect)
    return Spot(rect, _touched(lying.others, rect), forbidden, _touched(lying.codes, rect))


def _touched(boxes: Boxes, rect: QRectF) -> int:
    met = (boxes[:, 0] < rect.right()) & (boxes[:, 2] > rect.left())
    met &= (boxes[:, 1] < rect.bottom()) & (boxes[:, 3] > rect.top())
    return int(np.count_nonzero(met))


def spot_for(
    lying: Ground, wanted: Sequence[QSizeF], gap: float, was: QRectF | None = None
) -> Spot:
    """The best spot: at the right side, else where the card was, else near the plant's tag.

    wanted : sizes, the best first; those of one width are taken for all heights between
    was : where the card lies now; it stays there if it can
    """
    settled = settled_spot(lying, wanted, gap, was)
    if settled is not None:
        return settled
    stays = _staying(lying, wanted, gap, was) if was is not None else None
    return stays or _nearby(lying, wanted, gap, was)


def settled_spot(
    lying: Ground, wanted: Sequence[QSizeF], gap: float, was: QRectF | None = None
) -> Spot | None:
    """A good spot at the right side; none where it can only lie elsewhere.

    wanted, was : as for `spot_for`
    """
    home = home_spot(lying, wanted, gap)
    if was is None or abs(was.right() - _inner(lying, gap).right()) >= 1.0:
        return home
    stays = _staying(lying, wanted, gap, was)
    if home is None or stays is None:
        return home or stays
    # It stays high or low, unless it could show much more of itself.
    return stays if stays.rect.height() >= _MUCH * home.rect.height() else home


def _staying(lying: Ground, wanted: Sequence[QSizeF], gap: float, was: QRectF) -> Spot | None:
    """A good spot with its upper edge where the card was, and one of its sides."""
    inner, solid = _inner(lying, gap), _solid(lying)
    for least, most in _widths(wanted):
        left = was.left()
        if abs(was.right() - inner.right()) < 1.0:
            left = inner.right() - most.width()
        place = QRectF(left, was.top(), most.width(), most.height())
        found = _down_to(lying, solid, place, least, inner)
        if found is not None:
            return found
    return None


def home_spot(lying: Ground, wanted: Sequence[QSizeF], gap: float) -> Spot | None:
    """A good spot at the right side of the stage, from its top down, else from its foot up.

    It lies on no line either, if it can be so.
    """
    inner = _inner(lying, gap)
    must = _solid(lying)
    for solid in (np.concatenate((must, lying.lines)), must):
        for least, most in _widths(wanted):
            place = QRectF(inner.right() - most.width(), inner.top(), most.width(), most.height())
            found = _down_to(lying, solid, place, least, inner)
            found = found or _up_to(lying, solid, place, least, inner)
            if found is not None:
                return found
    return None


def _inner(lying: Ground, gap: float) -> QRectF:
    return lying.around.adjusted(gap, gap, -gap, -gap)


def _solid(lying: Ground) -> Boxes:
    """All that must stay in sight."""
    tag = boxes_of([lying.tag])
    return np.concatenate((lying.forbidden, tag, lying.codes, lying.others))


def _widths(wanted: Sequence[QSizeF]) -> Iterator[tuple[float, QSizeF]]:
    """For each width that is wanted, in order, its least height and its best size."""
    for width in dict.fromkeys(size.width() for size in wanted):
        heights = [size.height() for size in wanted if size.width() == width]
        yield min(heights), QSizeF(width, max(heights))


def _down_to(
    lying: Ground, solid: Boxes, place: QRectF, least: float, inner: QRectF
) -> Spot | None:
    """As much of a place, from its top down, as is free; none if that is too little."""
    if place.left() < inner.left() or place.right() > inner.right() or place.top() < inner.top():
        return None
    column = _across(solid, place)
    below = column[column[:, 3] > place.top(), 1]
    end = min(place.bottom(), inner.bottom(), float(below.min(initial=np.inf)))
    height = float(np.floor(end - place.top()))
    if height < min(least, place.height()):
        return None
    return spot_at(lying, QRectF(place.left(), place.top(), place.width(), height))


def _up_to(lying: Ground, solid: Boxes, place: QRectF, least: float, inner: QRectF) -> Spot | None:
    """The same from the foot of the stage up."""
    if place.left() < inner.left():
        return None
    column = _across(solid, place)
    above = column[column[:, 1] < inner.bottom(), 3]
    start = max(inner.bottom() - place.height(), inner.top(), float(above.max(initial=-np.inf)))
    height = float(np.floor(inner.bottom() - start))
    if height < min(least, place.height()):
        return None
    return spot_at(lying, QRectF(place.left(), inner.bottom() - height, place.width(), height))


def _across(boxes: Boxes, place: QRectF) -> Boxes:
    return boxes[(boxes[:, 0] < place.right()) & (boxes[:, 2] > place.left())]


def _nearby(lying: Ground, wanted: Sequence[QSizeF], gap: float, was: QRectF | None) -> Spot:
    """The spot that hides least, near the plant's tag and not far from where the card was."""
    around = _inner(lying, gap)
    # Where no size finds room it lies in the corner, and that is no good spot.
    best, least = Spot(QRectF(around.topLeft(), wanted[-1]), forbidden=1), float("inf")
    far = max(1.0, around.width() + around.height())
    tag = lying.tag
    kinds = (lying.forbidden, boxes_of([tag]), lying.codes, lying.others, lying.lines)
    costs = (_COVERED[0], *_COVERED)
    boxes = np.concatenate(kinds).astype(np.float32)
    weights = np.repeat(np.array(costs, dtype=np.float32), [len(kind) for kind in kinds])
    for place, size in enumerate(wanted):
        if 1.2 * place >= least:
            break
        lefts, tops = _corners(around, tag, size, gap, was)
        if not len(lefts):
            continue
        wide, high = size.width(), size.height()
        across = (boxes[:, 0] < lefts[:, None] + wide) & (boxes[:, 2] > lefts[:, None])
        down = (boxes[:, 1] < tops[:, None] + high) & (boxes[:, 3] > tops[:, None])
        cost = ((across * weights) @ down.T.astype(np.float32)).astype(np.float64)
        beside = np.maximum.reduce([lefts - tag.right(), tag.left() - lefts - wide, 0 * lefts])
        above = np.maximum.reduce([tops - tag.bottom(), tag.top() - tops - high, 0 * tops])
        cost += 2.0 * (beside[:, None] + above) / far + 1.2 * place
        if was is not None:
            cost += (np.abs(lefts - was.left())[:, None] + np.abs(tops - was.top())) / far
        at = int(cost.argmin())
        if cost.flat[at] < least:
            least = float(cost.flat[at])
            column, row = divmod(at, len(tops))
            best = spot_at(lying, QRectF(float(lefts[column]), float(tops[row]), wide, high))
    return best


def _corners(
    around: QRectF, tag: QRectF, size: QSizeF, gap: float, was: QRectF | None
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Where the card's corner is tried: places across and places down, the likeliest first."""
    right, bottom = around.right() - size.width(), around.bottom() - size.height()
    if right < around.left() or bottom < around.top():
        return np.zeros(0), np.zeros(0)
    lefts = [tag.right() + gap, tag.left() - gap - size.width()]
    tops = [tag.top() - gap, tag.bottom() + gap - size.height()]
    tops += [tag.bottom() + gap, tag.top() - gap - size.height()]
    if was is not None:
        lefts.append(was.left())
        tops.append(was.top())
    return (
        _held(lefts, around.left(), right),
        _held(tops, around.top(), bottom),
    )


def _held(likely: Sequence[float], first: float, last: float) -> NDArray[np.float64]:
    """Whole pixels between two bounds: the likely places, and more at even steps."""
    places = np.concatenate((likely, np.linspace(first, last, _WAYS)))
    return np.clip(np.rint(places), np.ceil(first), np.floor(last))
