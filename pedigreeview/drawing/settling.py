"""Places along every layer: parents over their knots, knots over their progeny, nothing touching.

Each sweep moves a layer to the mean of where its relatives are, by exact least squares in the given
order (`spread`).  The last places lie on the grid, so that grains of pollen meet at corners.
"""

from __future__ import annotations

import itertools
from collections import defaultdict
from collections.abc import Mapping

from pedigreeview.drawing.layers import Layers
from pedigreeview.drawing.ordering import settle_ports
from pedigreeview.drawing.spread import spread
from pedigreeview.drawing.straightening import apart, straighten_ports, straighten_trunks
from pedigreeview.drawing.theme import Sizes

__all__ = ["settle"]

_HELD = 1e7
"""Weight of the one block that must not move."""
_OLD = 1.2
"""Weight of an old place against that of one relative."""


def settle(built: Layers, sizes: Sizes, pull: Mapping[str, float], anchor: str) -> None:
    """Give every item its x.

    pull : old places, to which items are drawn; empty for a fresh picture
    anchor : key of the block that stays exactly at its old place, or ''
    """
    _first_places(built, sizes)
    sweeps = 10 if len(built.items) < 3000 else 4
    for sweep in range(sweeps):
        settle_ports(built)
        pulls = _pulls(built)
        ways = (True, False) if sweep < sweeps - 2 else (None,)
        for way in ways:
            rows = built.rows if way is not False else list(reversed(built.rows))
            for row in rows:
                _sweep_row(built, row, pulls, way, sizes, pull, anchor)
    _on_grid(built, sizes, pull, anchor)
    for _ in range(3):
        settle_ports(built)
        straighten_trunks(built, sizes)
    settle_ports(built)
    straighten_ports(built, sizes)


def _first_places(built: Layers, sizes: Sizes) -> None:
    for row in built.rows:
        items = [built.items[key] for key in row]
        gaps = [apart(a, b, sizes) for a, b in itertools.pairwise(items)]
        for item, x in zip(
            items, spread([i.x for i in items], [1.0] * len(items), gaps), strict=True
        ):
            item.x = x


def _pulls(built: Layers) -> dict[str, list[tuple[str, float, float, bool]]]:
    """For each item: (relative, distance to keep, weight, whether the relative lies above)."""
    found: dict[str, list[tuple[str, float, float, bool]]] = defaultdict(list)
    for net, above, below in built.pieces():
        upper, lower = built.items[above], built.items[below]
        through = (upper.block is None) + (lower.block is None)
        weight = (1.0, 2.0, 6.0)[through]
        if net.startswith("progeny") and not through:
            weight = 1.5
        for out in upper.below[net]:
            for into in lower.above[net]:
                shift = out.offset - into.offset
                found[below].append((above, shift, weight, True))
                found[above].append((below, -shift, weight, False))
    for line in built.nets.values():
        if not line.back:
            continue
        _, link = line.ends[0]
        column = built.back_column(line)
        for end, key in ((column[0], link.below), (column[-1], link.above)):
            beside = built.items[key].width / 2 + 24.0
            found[end.key].append((key, beside, 0.5, True))
    return found


def _sweep_row(
    built: Layers,
    row: list[str],
    pulls: dict[str, list[tuple[str, float, float, bool]]],
    from_above: bool | None,
    sizes: Sizes,
    old: Mapping[str, float],
    anchor: str,
) -> None:
    items = [built.items[key] for key in row]
    wanted, weights = [], []
    for item in items:
        total, weight = 0.0, 0.0
        for other, shift, part, above in pulls.get(item.key, ()):
            if from_above is None or above == from_above:
                total += part * (built.items[other].x + shift)
                weight += part
        if item.key == anchor:
            total, weight = _HELD * old[anchor], _HELD
        elif item.key in old:
            total += _OLD * old[item.key]
            weight += _OLD
        if not weight:
            total, weight = 0.05 * item.x, 0.05
        wanted.append(total / weight)
        weights.append(weight)
    gaps = [apart(a, b, sizes) for a, b in itertools.pairwise(items)]
    for item, x in zip(items, spread(wanted, weights, gaps), strict=True):
        item.x = x


def _on_grid(built: Layers, sizes: Sizes, old: Mapping[str, float], anchor: str) -> None:
    grid = sizes.grid
    if not anchor:
        left = min((i.x - i.width / 2 for i in built.items.values()), default=0.0)
        for item in built.items.values():
            item.x -= left
    for row in built.rows:
        items = [built.items[key] for key in row]
        for item in items:
            item.x = round(item.x / grid) * grid
        start = next((at for at, item in enumerate(items) if item.key == anchor), 0)
        if items and items[start].key == anchor:
            items[start].x = old[anchor]
        for at in range(start + 1, len(items)):
            least = items[at - 1].x + apart(items[at - 1], items[at], sizes)
            if items[at].x < least:
                items[at].x = -(-least // grid) * grid
        for at in range(start - 1, -1, -1):
            most = items[at + 1].x - apart(items[at], items[at + 1], sizes)
            if items[at].x > most:
                items[at].x = most // grid * grid
