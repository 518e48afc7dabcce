"""The order of the items in each layer: first by Graphviz dot, or from old places, then by swaps.

dot runs in this process through pygraphviz and cannot be stopped, so only pictures of a few hundred
items are given to it; larger ones start from barycentres.  The swaps lower crossings and bring seed
parents to the left of their knots.  Knows no Qt.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping

from pedigreeview.drawing.blocks import Role
from pedigreeview.drawing.layers import Item, KnotPlace, Layers, Port

__all__ = [
    "DOT_MOST",
    "PITCH",
    "WIDE_PITCH",
    "open_slots",
    "order_by_barycentre",
    "order_by_dot",
    "order_by_places",
    "settle_ports",
    "slot_pitch",
    "spread_ends",
    "untangle",
]

DOT_MOST = 700
"""Items beyond which dot is not asked: it would hold the interpreter for too long."""

PITCH = 12.0
"""Between the two lines that reach a knot; more lines stand wider, with their odds between."""
WIDE_PITCH = 36.0

_WRONG_SIDE = 0.8
"""Cost of a seed parent right of its pollen parent, in crossings."""


def order_by_dot(built: Layers) -> None:
    """Order every layer, and give first places, as dot does with generations as fixed rows."""
    from pygraphviz import AGraph

    names = {key: f"n{number}" for number, key in enumerate(built.items)}
    lines = [
        "digraph{graph[ranksep=0.6,nodesep=0.35,outputorder=nodesfirst]",
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
    ups, downs = _pieces_by_item(built)
    for net in built.nets.values():
        if net.back:
            _, link = net.ends[0]
            column = built.back_column(net)
            ups[column[0].key].append((link.below, net.key))
            downs[column[-1].key].append((link.above, net.key))
    for row in built.rows:
        for at, key in enumerate(row):
            built.items[key].x = float(at)
    for sweep in range(sweeps):
        down = sweep % 2 == 0
        for row in built.rows if down else reversed(built.rows):
            near = ups if down else downs
            for key in row:
                others = near[key]
                if others:
                    total = sum(built.items[other].x for other, _ in others)
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


def _pieces_by_item(
    built: Layers,
) -> tuple[dict[str, list[tuple[str, str]]], dict[str, list[tuple[str, str]]]]:
    ups: dict[str, list[tuple[str, str]]] = defaultdict(list)
    downs: dict[str, list[tuple[str, str]]] = defaultdict(list)
    for net, above, below in built.pieces():
        ups[below].append((above, net))
        downs[above].append((below, net))
    return ups, downs


def untangle(built: Layers, rounds: int = 6) -> None:
    """Swap neighbours while that lowers crossings, or brings a seed parent to its side."""
    ups, downs = _pieces_by_item(built)
    partners = _partners(built)
    for round_ in range(rounds):
        settle_ports(built)
        place = {key: at for row in built.rows for at, key in enumerate(row)}
        changed = False
        order = built.rows if round_ % 2 == 0 else list(reversed(built.rows))
        for row in order:
            for at in range(len(row) - 1):
                one, other = row[at], row[at + 1]
                gain = 0.0
                for near, upper in ((ups, True), (downs, False)):
                    a = _ends(built, near.get(one, ()), place, upper)
                    b = _ends(built, near.get(other, ()), place, upper)
                    gain += sum(x > y for x in a for y in b) - sum(x < y for x in a for y in b)
                gain += _WRONG_SIDE * partners.get((other, one), 0)
                gain -= _WRONG_SIDE * partners.get((one, other), 0)
                if gain > 1e-9:
                    row[at], row[at + 1] = other, one
                    place[one], place[other] = at + 1, at
                    changed = True
        if not changed:
            break
    _lay_out_roughly(built)


def _ends(
    built: Layers,
    near: Iterable[tuple[str, str]],
    place: dict[str, int],
    upper: bool,
) -> list[float]:
    """Where the pieces of an item end in the next layer, in places and parts of places."""
    found = []
    for other, net in near:
        item = built.items[other]
        for port in (item.below if upper else item.above)[net]:
            found.append(place[other] + 0.8 * port.offset / (item.width + 1.0))
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


def settle_ports(built: Layers, pitch: float = 12.0) -> None:
    """Where nets leave a tag and reach a knot, so that they cross as little as may be."""
    ups, downs = _pieces_by_item(built)
    for item in built.items.values():
        if item.knots:
            _knot_ports(built, item, ups)
        elif item.block is not None:
            _tag_ports(built, item, item.below, downs.get(item.key, []), pitch, lower=True)
            _tag_ports(built, item, item.above, ups.get(item.key, []), pitch, lower=False)


def _tag_ports(
    built: Layers,
    item: Item,
    ports: dict[str, list[Port]],
    pieces: list[tuple[str, str]],
    pitch: float,
    *,
    lower: bool,
) -> None:
    aims: dict[str, list[float]] = defaultdict(list)
    for other, net in pieces:
        end = built.items[other]
        aims[net] += [end.x + port.offset for port in (end.above if lower else end.below)[net]]
    for net in ports:
        if net.startswith("back"):
            aims[net].append(built.items[f"{net} @{item.layer}"].x)
    rank = {"seed": 0, "source": 1, "pollen": 2}
    order = sorted(
        ports,
        key=lambda net: (
            round(sum(aims[net]) / len(aims[net]) / 20) if aims[net] else 0,
            rank.get(net.split(" ", 1)[0], 3),
            net,
        ),
    )
    own = min(pitch, (item.width - 24.0) / max(len(order) - 1, 1))
    for at, net in enumerate(order):
        for port in ports[net]:
            port.offset = (at - (len(order) - 1) / 2) * own


def _knot_ports(built: Layers, item: Item, ups: dict[str, list[tuple[str, str]]]) -> None:
    comes_from: dict[str, float] = {}
    for above, net in ups.get(item.key, ()):
        end = built.items[above]
        comes_from[net] = end.x + end.below[net][0].offset
    for net in item.above:
        if net.startswith("back"):
            comes_from[net] = built.items[f"{net} @{item.layer}"].x
    by_knot: dict[str, list[tuple[str, Port]]] = defaultdict(list)
    for net, ports in item.above.items():
        for port in ports:
            by_knot[port.knot].append((net, port))
    for place in item.knots:
        for ports in item.below.values():
            for port in ports:
                if port.knot == place.knot.key:
                    port.offset = place.middle
        spread_ends(place, by_knot.get(place.knot.key, []), comes_from)


def slot_pitch(place: KnotPlace, slots: int) -> float:
    """Distance between the ends of lines at a knot."""
    if slots <= 2:
        return PITCH
    return min(WIDE_PITCH, (place.width - PITCH) // (slots - 1) // 6 * 6)


def spread_ends(
    place: KnotPlace, ends: list[tuple[str, Port]], comes_from: Mapping[str, float]
) -> None:
    """Where the lines reach a knot: seed side left, unless both sides come the other way round."""
    knot = place.knot
    unknown = sum(not code for code, _ in knot.pollen) if knot.sign != "open" else 0
    unknown += knot.seed == "" and bool(knot.pollen)
    slots = len(ends) + unknown
    pitch = slot_pitch(place, slots)
    seeds = [net for net, _ in ends if net.startswith("seed")]
    order = sorted(
        ends,
        key=lambda end: (comes_from.get(end[0], 0.0), not end[0].startswith("seed"), end[0]),
    )
    first = 0
    if not seeds and knot.seed == "" and knot.pollen:
        first = 1
    for at, (_, port) in enumerate(order):
        port.offset = place.middle + (first + at - (slots - 1) / 2) * pitch


def open_slots(item: Item) -> list[tuple[str, Role, float, float]]:
    """Unknown parents of a block's knots: (knot, side, odds, x)."""
    found: list[tuple[str, Role, float, float]] = []
    for held in item.knots:
        knot = held.knot
        if knot.sign not in ("cross", "selfing"):
            continue
        known = sum(port.knot == knot.key for ports in item.above.values() for port in ports)
        blank = [odds for code, odds in knot.pollen if not code]
        slots = known + len(blank) + (not knot.seed)
        pitch = slot_pitch(held, slots)
        first = item.x + held.middle - (slots - 1) / 2 * pitch
        if not knot.seed:
            found.append((knot.key, "seed", 1.0, first))
        found += [
            (knot.key, "pollen", odds, first + (slots - len(blank) + at) * pitch)
            for at, odds in enumerate(blank)
        ]
    return found
