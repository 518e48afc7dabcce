"""Uprights of different lines that would lie on each other are moved apart by a grid step.

Tracks settle nearly all such meetings by putting one bar above the other; where two lines exchange
places neither order helps, and one end has to move.  Knows no Qt.
"""

from __future__ import annotations

from pedigreeview.drawing.layers import Item, Layers
from pedigreeview.drawing.routing import gap_bars
from pedigreeview.drawing.straightening import apart
from pedigreeview.drawing.theme import Sizes
from pedigreeview.drawing.tracks import NEAR, Bar

__all__ = ["part_uprights"]

_ROUNDS = 8


def part_uprights(built: Layers, sizes: Sizes) -> None:
    """Move ends of lines until no two lines lie on each other, or nothing more helps."""
    for _ in range(_ROUNDS):
        met = False
        for layer in range(len(built.rows) - 1):
            bars, _ = gap_bars(built, layer, sizes)
            for high in bars.values():
                for low in bars.values():
                    x = _meeting(high, low)
                    if x is not None:
                        met = True
                        _move_end(built, layer, high.net, low.net, x, sizes)
        if not met:
            return


def _meeting(one: Bar, other: Bar) -> float | None:
    """Where an upright of `one` from above lies on one of `other` to below."""
    if one.net == other.net or (one.track >= 0 and other.track >= 0 and one.track < other.track):
        return None
    for top in one.tops:
        for bottom in other.bottoms:
            if abs(top - bottom) < NEAR and not (one.straight and other.straight):
                return top
    return None


def _move_end(built: Layers, layer: int, upper: str, lower: str, x: float, sizes: Sizes) -> None:
    """Move the lower end of one line, or else the upper end of the other."""
    for row, net, is_lower in (
        (built.rows[layer + 1], lower, True),
        (built.rows[layer], upper, False),
    ):
        for at, key in enumerate(row):
            item = built.items[key]
            ports = (item.above if is_lower else item.below).get(net, [])
            if not any(abs(item.x + port.offset - x) < NEAR for port in ports):
                continue
            for step in (1, -1, 2, -2):
                if _moved(built, row, at, net, step * sizes.grid, sizes, lower=is_lower):
                    return


def _moved(
    built: Layers, row: list[str], at: int, net: str, by: float, sizes: Sizes, *, lower: bool
) -> bool:
    item = built.items[row[at]]
    if item.block is None:
        for other, way in ((at - 1, -1), (at + 1, 1)):
            if 0 <= other < len(row):
                beside = built.items[row[other]]
                room = apart(item, beside, sizes) - sizes.grid
                if (beside.x - item.x - by) * way < room:
                    return False
        item.x += by
        return True
    if item.knots:
        return False
    return _port_moved(item, net, by, sizes, lower=lower)


def _port_moved(item: Item, net: str, by: float, sizes: Sizes, *, lower: bool) -> bool:
    ports = item.above if lower else item.below
    (port,) = ports[net]
    aim = port.offset + by
    others = [p.offset for key, held in ports.items() if key != net for p in held]
    if abs(aim) > item.width / 2 - 2 * sizes.grid:
        return False
    if any(abs(aim - other) < sizes.grid for other in others):
        return False
    port.offset = aim
    return True
