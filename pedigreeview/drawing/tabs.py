"""The tabs of a tag, which say that the book holds more above it or below: where they lie.

They meet no line.  Lines leave a tag 12 units from its corners or more, and go past it 24 away or
more; the lower tab hangs over a corner within that.  The upper one stands only on a tag that no
line reaches.

All tabs of a picture are of one height and one form, whatever their numbers: these go by the scale
alone, and a number that would be too wide is set narrower.
"""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QRectF

from pedigreeview.drawing.blocks import Block
from pedigreeview.drawing.theme import sizes

__all__ = ["TAB_TYPE", "TabNumber", "has_chevron", "tab_number", "tab_rects"]

TAB_TYPE = 10.5
"""Type of the number on a tab, in picture units."""
_LEAST = 10.0
"""Pixels below which that number is not drawn, as far as there is room for it."""
_MOST = 2.4
_INSIDE, _BESIDE, _BELOW = 10.0, 21.4, 19.0
"""How far a tab may reach into the corner of its tag, and out of it sideways and down."""
_HIGH, _UP = 14.0, 11.0
"""Height of the tab below and of the one above."""
_HEAD, _PAD, _DIGIT = 11.0, 1.4, 6.3
"""Width of the chevron, of the paper to either side of a number, and of a digit at most."""
_LEAST_WIDE = 15.0
"""Width of a tab at least, so that it is hit by a click."""
_CHEVRON_FROM = 0.8
"""Scale from which there is room for a chevron beside a number of three digits."""
_MOST_SAID = 9999
"""A larger number has no room."""


@dataclass(frozen=True, slots=True)
class TabNumber:
    """How the number of a lower tab is written."""

    text: str
    large: float
    """How much larger than at scale 1 the tab is."""
    narrow: float
    """Its width as a part of what it is in the usual type; at most 1."""


def tab_rects(
    block: Block, rect: QRectF, detail: float = 1.0
) -> tuple[QRectF | None, QRectF | None]:
    """The small tabs that say there is more above and below, where the tag has them.

    detail : scale of the picture; far out the tabs grow, so that their number can still be read
    """
    up = down = None
    if block.more_up:
        high = min(_UP * _scale(detail), _BELOW)
        up = QRectF(rect.left() + sizes().stripe + 6, rect.top() - high, 2 * high, high)
    if block.more_down:
        number = tab_number(block.more_down, detail)
        high = _HIGH * number.large
        wide = _beside(detail) * number.large + _wide(number)
        wide = max(wide, _LEAST_WIDE * number.large)
        top = rect.bottom() - min(_INSIDE, high / 3)
        down = QRectF(rect.right() - _INSIDE, top, wide, high)
    return up, down


def has_chevron(detail: float) -> bool:
    """Whether the lower tabs carry a chevron; far out the number needs all the room."""
    return detail >= _CHEVRON_FROM


def tab_number(more: int, detail: float) -> TabNumber:
    """How a lower tab writes how many plants there are: all as tall, the wide ones narrower."""
    text = str(more) if more <= _MOST_SAID else "999+"
    large = min(_scale(detail), (_INSIDE + _BELOW) / _HIGH)
    room = _INSIDE + _BESIDE - _beside(detail) * large
    return TabNumber(text, large, min(1.0, room / (_DIGIT * len(text) * large)))


def _scale(detail: float) -> float:
    return min(max(1.0, _LEAST / (TAB_TYPE * max(detail, 0.01))), _MOST)


def _beside(detail: float) -> float:
    """Width of what a tab carries beside its number, at scale 1."""
    return 2 * _PAD + (_HEAD if has_chevron(detail) else 0.0)


def _wide(number: TabNumber) -> float:
    return _DIGIT * len(number.text) * number.large * number.narrow
