"""Places along every layer: parents over their knots, knots over their progeny, nothing touching.

Each sweep moves a layer to the mean of where its relatives are, by exact least squares in the given
order (`spread`).  The last places lie on the grid, so that grains of pollen meet at corners.
"""

from __future__ import annotations

import itertools
from collections import defaultdict
from collections.abc import Mapping
from dataclasses import dataclass

from pedigreeview.drawing.layers import Item, Layers, Port
from pedigreeview.drawing.ports import settle_ports
from pedigreeview.drawing.spread import running, spread_over
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
    rows = _rows(built, sizes, pull, anchor)
    for row in rows:
        found = spread_over([i.x for i in row.items], [1.0] * len(row.items), row.run)
        for item, x in zip(row.items, found, strict=True):
            item.x = x
    # From old places few sweeps do: more of them change next to nothing, and a fold waits for them.
    sweeps = (6 if pull else 10) if len(built.items) < 3000 else 4
    for sweep in range(sweeps):
        settle_ports(built)
        if sweep < sweeps - 2:
            for row in rows:
                _sweep(row.items, row.above, row)
            for row in reversed(rows):
                _sweep(row.items, row.below, row)
        else:
            for row in rows:
                _sweep(row.items, row.all, row)
    _on_grid(built, sizes, pull, anchor)
    for _ in range(3):
        settle_ports(built)
        straighten_trunks(built, sizes)
    settle_ports(built)
    straighten_ports(built, sizes)


_Pull = tuple[Item, Port, Port, float]
"""A relative, the port there, the item's own port, and the weight."""


@dataclass(slots=True)
class _Row:
    """One layer in its order, with what draws each item: relatives above, below, and all."""

    items: list[Item]
    run: list[float]
    above: list[list[_Pull]]
    below: list[list[_Pull]]
    all: list[list[_Pull]]
    own: list[tuple[float, float]]
    """For each item place times weight, and weight, of its old place; 0 without one."""


def _rows(built: Layers, sizes: Sizes, old: Mapping[str, float], anchor: str) -> list[_Row]:
    above, below, both = _pulls(built)
    found = []
    for row in built.rows:
        items = [built.items[key] for key in row]
        own = [
            (_HELD * old[key], _HELD)
            if key == anchor
            else (_OLD * old[key], _OLD)
            if key in old
            else (0.0, 0.0)
            for key in row
        ]
        found.append(
            _Row(
                items,
                running(apart(a, b, sizes) for a, b in itertools.pairwise(items)),
                [above.get(key, []) for key in row],
                [below.get(key, []) for key in row],
                [both.get(key, []) for key in row],
                own,
            )
        )
    return found


def _pulls(
    built: Layers,
) -> tuple[dict[str, list[_Pull]], dict[str, list[_Pull]], dict[str, list[_Pull]]]:
    """What draws each item to its relatives above, below, and both."""
    ups: dict[str, list[_Pull]] = defaultdict(list)
    downs: dict[str, list[_Pull]] = defaultdict(list)
    both: dict[str, list[_Pull]] = defaultdict(list)
    for net, above, below in built.pieces():
        upper, lower = built.items[above], built.items[below]
        through = (upper.block is None) + (lower.block is None)
        weight = (1.0, 2.0, 6.0)[through]
        if net.startswith("progeny") and not through:
            weight = 1.5
        for out in upper.below[net]:
            for into in lower.above[net]:
                up, down = (upper, out, into, weight), (lower, into, out, weight)
                ups[below].append(up)
                both[below].append(up)
                downs[above].append(down)
                both[above].append(down)
    for line in built.nets.values():
        if not line.back:
            continue
        _, link = line.ends[0]
        column = built.back_column(line)
        for end, key in ((column[0], link.below), (column[-1], link.above)):
            item = built.items[key]
            beside = (item, Port(item.width / 2 + 24.0), Port(), 0.5)
            ups[end.key].append(beside)
            both[end.key].append(beside)
    return ups, downs, both


def _sweep(items: list[Item], pulls: list[list[_Pull]], row: _Row) -> None:
    """Move a layer to the mean of where its relatives are."""
    if not items:
        return
    wanted, weights = [], []
    for item, near, (own, held) in zip(items, pulls, row.own, strict=True):
        total, weight = own, held
        if held < _HELD:
            for other, there, here, part in near:
                total += part * (other.x + (there.offset - here.offset))
                weight += part
        if not weight:
            total, weight = 0.05 * item.x, 0.05
        wanted.append(total / weight)
        weights.append(weight)
    for item, x in zip(items, spread_over(wanted, weights, row.run), strict=True):
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
