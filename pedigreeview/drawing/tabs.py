"""The tabs of a tag, which say that the book holds more above it or below: where they lie.

They meet no line.  Lines leave a tag 12 units from its corners or more, and go past it 24 away or
more; the lower tab hangs over a corner within that.  The upper one stands only on a tag that no
line reaches.
"""

from __future__ import annotations

from PySide6.QtCore import QRectF

from pedigreeview.drawing.blocks import Block
from pedigreeview.drawing.theme import sizes

__all__ = ["TAB_TYPE", "has_chevron", "tab_rects"]

TAB_TYPE = 10.5
"""Type of the number on a tab, in picture units."""
_LEAST = 10.0
"""Pixels below which that number is not drawn, as far as `_MOST` lets it grow."""
_MOST = 2.4
_INSIDE, _BESIDE, _BELOW = 10.0, 21.4, 19.0
"""How far a tab may reach into the corner of its tag, and out of it sideways and down."""
_HIGH, _UP = 14.0, 11.0
"""Height of the tab below and of the one above."""
_MARKED, _PLAIN, _DIGIT = 14.0, 6.0, 6.6
"""Width of a tab without its number, with and without the chevron, and of a digit."""
_LEAST_WIDE = 15.0
"""Width of a tab at least, so that it is hit by a click."""


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
        large = _number_scale(block, detail)
        wide = _MARKED + _number(block) if has_chevron(block, detail) else _plain(block)
        high = _HIGH * large
        top = rect.bottom() - min(_INSIDE, high / 3)
        down = QRectF(rect.right() - _INSIDE, top, wide * large, high)
    return up, down


def has_chevron(block: Block, detail: float) -> bool:
    """Whether there is room for a chevron beside the number; far out the number goes first."""
    return (_MARKED + _number(block)) * _scale(detail) <= _INSIDE + _BESIDE


def _scale(detail: float) -> float:
    return min(max(1.0, _LEAST / (TAB_TYPE * max(detail, 0.01))), _MOST)


def _number(block: Block) -> float:
    """Width of the number below."""
    return _DIGIT * len(str(block.more_down))


def _plain(block: Block) -> float:
    """Width of the tab below without a chevron."""
    return max(_PLAIN + _number(block), _LEAST_WIDE)


def _number_scale(block: Block, detail: float) -> float:
    """How large the tab below is: as large as there is room for."""
    if has_chevron(block, detail):
        return _scale(detail)
    across = (_INSIDE + _BESIDE) / _plain(block)
    return min(_scale(detail), across, (_INSIDE + _BELOW) / _HIGH)
