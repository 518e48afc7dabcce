"""What no line joins to the rest of a picture, as a pinned plant, stands close to it.  Knows no Qt.

Orders and places go by relatives; a plant that has none in the picture is drawn nowhere and would
stand wherever there was room, or where an earlier picture had it.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable

from pedigreeview.drawing.layers import Item, Layers
from pedigreeview.drawing.theme import Sizes

__all__ = ["draw_near"]

_GAPS = 2
"""Room between tags, so many times, that is left beside what is drawn near."""
_HELD = 6
"""So many times that room it may be away if it stood in the picture before: it then stays."""


def draw_near(built: Layers, sizes: Sizes, base: str, known: Iterable[str] = ()) -> None:
    """Move each part that hangs together near to the part that holds the base.

    base : key of a block that does not move, as the anchor or the focus
    known : items that stood in the picture before
    """
    parts = _parts(built)
    first = next((part for part in parts if any(item.key == base for item in part)), None)
    if first is None or len(parts) < 2:
        return
    before = set(known)
    middle = _middle(first)
    rest = [part for part in parts if part is not first]
    for way in (1, -1):
        ahead = [part for part in rest if (_middle(part) >= middle) == (way == 1)]
        # Outwards from the base, so that the order of each layer stays what it is.
        for part in sorted(ahead, key=lambda part: way * _near_edge(part, way)):
            stood = any(item.key in before for item in part)
            gaps = _HELD if stood else _GAPS
            others = [item for other in parts if other is not part for item in other]
            _draw(part, others, first, way, sizes, gaps * sizes.tag_gap)


def _draw(
    part: list[Item], others: list[Item], base: list[Item], way: int, sizes: Sizes, most: float
) -> None:
    """Move a part inwards if it is farther from what is beside it than it may be."""
    layers = {item.layer + step for item in part for step in (-1, 0, 1)}
    near = way * _near_edge(part, way)
    far = near + _width(part)
    ends = []
    for item in others:
        if item.layer in layers:
            end = way * item.x + item.width / 2
            if end <= near:
                ends.append(end)
            elif way * item.x - item.width / 2 < far:
                return  # they stand among each other
    beside = any(item.layer in layers for item in base)
    if beside and not ends:
        return  # the base lies farther out
    gap = _GAPS * sizes.tag_gap
    rest = max(way * item.x + item.width / 2 for item in base)
    # Above or below everything it stands within the width of the rest.
    aim = -float("inf") if beside else rest - _width(part)
    aim = max([aim, *(end + gap for end in ends)])
    room = near - aim + (gap if beside or ends else 0.0)
    by = (near - aim) // sizes.grid * sizes.grid
    if room > most and by > 0:
        for item in part:
            item.x -= way * by


def _near_edge(part: list[Item], way: int) -> float:
    """The edge of a part towards the base: its left one at the right side."""
    return way * min(way * item.x - item.width / 2 for item in part)


def _width(part: list[Item]) -> float:
    return max(i.x + i.width / 2 for i in part) - min(i.x - i.width / 2 for i in part)


def _middle(part: list[Item]) -> float:
    return sum(item.x for item in part) / len(part)


def _parts(built: Layers) -> list[list[Item]]:
    """The items of each part that lines join, in the order of the items."""
    beside: dict[str, list[str]] = defaultdict(list)
    for net in built.nets.values():
        ends = [(net.start, link.below) for _, link in net.ends] if net.back else []
        for above, below in [*net.pieces, *ends]:
            beside[above].append(below)
            beside[below].append(above)
        if net.back:
            column = built.back_column(net)
            beside[net.start].append(column[0].key)
            beside[column[0].key].append(net.start)
    found: list[list[Item]] = []
    seen: set[str] = set()
    for key in built.items:
        if key in seen:
            continue
        ahead, part = [key], []
        seen.add(key)
        while ahead:
            at = ahead.pop()
            part.append(built.items[at])
            for other in beside[at]:
                if other not in seen:
                    seen.add(other)
                    ahead.append(other)
        found.append(part)
    return found
