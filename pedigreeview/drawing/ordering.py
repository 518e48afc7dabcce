"""The order of the items in each layer: first by Graphviz dot, or from old places, then by swaps.

dot runs in this process through pygraphviz and cannot be stopped, so only pictures of a few hundred
items are given to it; larger ones start from barycentres.  The swaps lower crossings and bring seed
parents to the left of their knots.  Knows no Qt.
"""

from __future__ import annotations

import threading
from bisect import bisect_left, bisect_right
from collections import defaultdict
from collections.abc import Iterable, Mapping

from pedigreeview.drawing.layers import Item, Layers
from pedigreeview.drawing.ports import pieces_by_item, settle_ports

__all__ = [
    "DOT_MOST",
    "order_by_barycentre",
    "order_by_dot",
    "order_by_places",
    "untangle",
]

DOT_MOST = 700
"""Items beyond which dot is not asked: it would hold the interpreter for too long."""

_one_at_a_time = threading.Lock()
"""Graphviz keeps state of its own for the whole process: two threads must not lay out at once."""

_WRONG_SIDE = 0.8
"""Cost of a seed parent right of its pollen parent, in crossings."""


def order_by_dot(built: Layers) -> None:
    """Order every layer, and give first places, as dot does with generations as fixed rows."""
    from pygraphviz import AGraph

    names = {key: f"n{number}" for number, key in enumerate(built.items)}
    lines = [
        "digraph{graph[ranksep=0.6,nodesep=0.35,splines=none]",
        'node[shape=record,fixedsize=true,label=""]edge[arrowhead=none]',
    ]
    for layer, row in enumerate(built.rows):
        inside = "".join(f"{names[key]};" for key in row)
        lines.append(f"{{rank=same;s{layer}[style=invis,width=0.01];{inside}}}")
        if layer:
            lines.append(f"s{layer - 1}->s{layer}[style=invis]")
    for key, item in built.items.items():
        label = ""
        if item.knots:
            ports = [f"<p{number}s>|<p{number}p>" for number in range(len(item.knots))]
            label = "|".join(ports)
        lines.append(
            f'{names[key]}[width={max(item.width, 1) / 72:.3f},height=0.3,label="{label}"]'
        )
    for net in built.nets.values():
        weight = 2 if net.role in ("seed", "progeny") else 1
        for above, below in net.pieces:
            head = _record_port(built.items[below], net.key)
            tail = _record_port(built.items[above], net.key)
            lines.append(f"{names[above]}{tail}->{names[below]}{head}[weight={weight}]")
    lines.append("}")
    with _one_at_a_time:
        graph = AGraph(string="\n".join(lines))
        try:
            graph.layout(prog="dot")
            for key, name in names.items():
                place = graph.get_node(name).attr["pos"]
                built.items[key].x = float(place.split(",")[0])
        finally:
            graph.close()
    for net in built.nets.values():
        if net.back:
            _, link = net.ends[0]
            right = max(built.items[link.above].x, built.items[link.below].x)
            for item in built.back_column(net):
                item.x = right + 1.0
    _sort_rows(built)


def _record_port(item: Item, net: str) -> str:
    """The field of a knot's record at which the net ends."""
    if not item.knots:
        return ""
    ports = item.above.get(net) or item.below.get(net) or []
    wanted = ports[0].knot if ports else ""
    side = "p" if net.startswith("pollen") else "s"
    for number, place in enumerate(item.knots):
        if place.knot.key == wanted:
            return f":p{number}{side}"
    return ""


def order_by_places(built: Layers, old: Mapping[str, float]) -> None:
    """Order from the places of an earlier picture; what is new goes by its relatives."""
    beside = _neighbours(built)
    known = {key: x for key, x in old.items() if key in built.items}
    for _ in range(6):
        fresh = {}
        for key in built.items:
            if key in known:
                continue
            near = [known[other] for other in beside[key] if other in known]
            if near:
                fresh[key] = sum(near) / len(near)
        if not fresh:
            break
        known.update(fresh)
    spare = max(known.values(), default=0.0)
    for key, item in built.items.items():
        if key not in known:
            spare += item.width
        item.x = known.get(key, spare)
    _sort_rows(built)


def order_by_barycentre(built: Layers, sweeps: int = 8) -> None:
    """A first order for pictures too large for dot."""
    above, below = pieces_by_item(built)
    ups = {key: [other for other, _ in held] for key, held in above.items()}
    downs = {key: [other for other, _ in held] for key, held in below.items()}
    for net in built.nets.values():
        if net.back:
            _, link = net.ends[0]
            column = built.back_column(net)
            ups.setdefault(column[0].key, []).append(link.below)
            downs.setdefault(column[-1].key, []).append(link.above)
    for row in built.rows:
        for at, key in enumerate(row):
            built.items[key].x = float(at)
    for sweep in range(sweeps):
        down = sweep % 2 == 0
        for row in built.rows if down else reversed(built.rows):
            near = ups if down else downs
            for key in row:
                others = near.get(key)
                if others:
                    total = sum(built.items[other].x for other in others)
                    built.items[key].x = total / len(others)
            row.sort(key=lambda key: built.items[key].x)
            for at, key in enumerate(row):
                built.items[key].x = float(at)


def _sort_rows(built: Layers) -> None:
    for row in built.rows:
        row.sort(key=lambda key: built.items[key].x)


def _neighbours(built: Layers) -> dict[str, list[str]]:
    found: dict[str, list[str]] = defaultdict(list)
    for _, above, below in built.pieces():
        found[above].append(below)
        found[below].append(above)
    return found


def untangle(built: Layers, rounds: int = 6) -> None:
    """Swap neighbours while that lowers crossings, or brings a seed parent to its side."""
    ups, downs = pieces_by_item(built)
    partners = _partners(built)
    for round_ in range(rounds):
        settle_ports(built)
        place = {key: at for row in built.rows for at, key in enumerate(row)}
        changed = False
        order = built.rows if round_ % 2 == 0 else list(reversed(built.rows))
        for row in order:
            if len(row) < 2:
                continue
            # Pieces join neighbouring layers, so that what a row's pieces end at stays meanwhile.
            above = [_ends(built, ups.get(key, ()), place, upper=True) for key in row]
            below = [_ends(built, downs.get(key, ()), place, upper=False) for key in row]
            for at in range(len(row) - 1):
                to = at + 1
                gain = float(_more(above[at], above[to]) + _more(below[at], below[to]))
                if partners:
                    one, other = row[at], row[to]
                    gain += _WRONG_SIDE * partners.get((other, one), 0)
                    gain -= _WRONG_SIDE * partners.get((one, other), 0)
                if gain > 1e-9:
                    row[at], row[to] = row[to], row[at]
                    above[at], above[to] = above[to], above[at]
                    below[at], below[to] = below[to], below[at]
                    changed = True
            for at, key in enumerate(row):
                place[key] = at
        if not changed:
            break
    _lay_out_roughly(built)


def _more(one: list[float], other: list[float]) -> int:
    """How many crossings fewer there are when the second of two neighbours stands first."""
    if not one or not other:
        return 0
    if len(one) == 1 == len(other):
        return (one[0] > other[0]) - (one[0] < other[0])
    size = len(other)
    return sum(bisect_left(other, x) - size + bisect_right(other, x) for x in one)


def _ends(
    built: Layers, near: Iterable[tuple[str, str]], place: Mapping[str, int], *, upper: bool
) -> list[float]:
    """Where the pieces of an item end in the next layer, in places and parts of places, sorted."""
    found = []
    for other, net in near:
        item = built.items[other]
        for port in (item.below if upper else item.above)[net]:
            found.append(place[other] + 0.8 * port.offset / (item.width + 1.0))
    found.sort()
    return found


def _partners(built: Layers) -> dict[tuple[str, str], int]:
    """How often the first of two items leads the seed line to a knot and the second the pollen."""
    seeds: dict[str, list[str]] = defaultdict(list)
    pollens: dict[str, list[str]] = defaultdict(list)
    for net in built.nets.values():
        if net.role not in ("seed", "pollen") or net.back:
            continue
        for above, below in net.pieces:
            item = built.items[below]
            if item.block is not None and item.block.sort == "knot":
                (seeds if net.role == "seed" else pollens)[below].append(above)
    found: dict[tuple[str, str], int] = defaultdict(int)
    for knot, seed_items in seeds.items():
        for seed in seed_items:
            for pollen in pollens.get(knot, ()):
                if seed != pollen:
                    found[seed, pollen] += 1
    return dict(found)


def _lay_out_roughly(built: Layers) -> None:
    """Keep the x of each layer in step with its order."""
    for row in built.rows:
        places = sorted(built.items[key].x for key in row)
        for key, x in zip(row, places, strict=True):
            built.items[key].x = x
