"""Where lines leave a tag and reach a knot, so that they cross as little as may be.  No Qt.

Ports are settled many times while a picture is laid out, and only places change meanwhile.  What
hangs together is therefore looked up once for a set of layers (`Joint`).
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from pedigreeview.drawing.blocks import Role
from pedigreeview.drawing.layers import Item, KnotPlace, Layers, Port

__all__ = ["PITCH", "WIDE_PITCH", "open_slots", "pieces_by_item", "settle_ports", "slot_pitch"]

PITCH = 12.0
"""Between the two lines that reach a knot; more lines stand wider, with their odds between."""
WIDE_PITCH = 36.0

_RANK = {"seed": 0, "source": 1, "pollen": 2}

PiecesByItem = Mapping[str, Sequence[tuple[str, str]]]
"""By item, (other item, net) of the pieces on one side."""


@dataclass(slots=True)
class _Leaving:
    """One net at one side of a tag: its ports there, and the ports that it leads to."""

    ports: list[Port]
    aims: list[tuple[Item, Port]]
    column: Item | None
    """Of a line back to an ancestor, the place beside the tag."""


@dataclass(slots=True)
class _Reaching:
    """One net that reaches a knot from above."""

    port: Port
    start: Item | None
    out: Port | None


@dataclass(slots=True)
class _KnotJoint:
    place: KnotPlace
    below: list[Port]
    ends: list[_Reaching]
    slots: int
    first: int


@dataclass(slots=True)
class Joint:
    """All ports of one block: sides of a tag with several nets, or the knots of a knot block."""

    sides: list[tuple[float, list[_Leaving]]]
    """Distance between ports, and the nets in the order of seed, source, pollen, rest."""
    single: list[Port]
    """Ports of sides with one net: they are in the middle."""
    knots: list[_KnotJoint]


def settle_ports(built: Layers) -> None:
    """Give every port of every block its offset."""
    for joint in _joints(built):
        for own in joint.knots:
            _settle_knot(own)
        for port in joint.single:
            port.offset = 0.0
        for pitch, leaving in joint.sides:
            _settle_side(pitch, leaving)


def _settle_side(pitch: float, leaving: list[_Leaving]) -> None:
    keys = []
    for net in leaving:
        total, count = 0.0, 0
        for end, port in net.aims:
            total += end.x + port.offset
            count += 1
        if net.column is not None:
            total += net.column.x
            count += 1
        keys.append(round(total / count / 20) if count else 0)
    middle = (len(leaving) - 1) / 2
    for at, number in enumerate(sorted(range(len(leaving)), key=keys.__getitem__)):
        for port in leaving[number].ports:
            port.offset = (at - middle) * pitch


def _settle_knot(joint: _KnotJoint) -> None:
    """The seed side is left, unless both sides come the other way round."""
    middle = joint.place.middle
    for port in joint.below:
        port.offset = middle
    ends = joint.ends
    if len(ends) > 1:
        ends = sorted(ends, key=_comes_from)
    pitch = slot_pitch(joint.place, joint.slots)
    for at, end in enumerate(ends):
        end.port.offset = middle + (joint.first + at - (joint.slots - 1) / 2) * pitch


def _comes_from(end: _Reaching) -> float:
    if end.start is None:
        return 0.0
    return end.start.x + end.out.offset if end.out is not None else end.start.x


def slot_pitch(place: KnotPlace, slots: int) -> float:
    """Distance between the ends of lines at a knot."""
    if slots <= 2:
        return PITCH
    return min(WIDE_PITCH, (place.width - PITCH) // (slots - 1) // 6 * 6)


# What hangs together ------------------------------------------------------------------------------


def pieces_by_item(built: Layers) -> tuple[PiecesByItem, PiecesByItem]:
    """The pieces that reach each item from above, and those that leave it below."""
    if "pieces" not in built.held:
        ups: dict[str, list[tuple[str, str]]] = defaultdict(list)
        downs: dict[str, list[tuple[str, str]]] = defaultdict(list)
        for net, above, below in built.pieces():
            ups[below].append((above, net))
            downs[above].append((below, net))
        built.held["pieces"] = (dict(ups), dict(downs))
    found: tuple[PiecesByItem, PiecesByItem] = built.held["pieces"]
    return found


def _joints(built: Layers) -> list[Joint]:
    if "joints" not in built.held:
        ups, downs = pieces_by_item(built)
        found = []
        for item in built.items.values():
            if item.knots:
                found.append(Joint([], [], _knot_joints(built, item, ups.get(item.key, ()))))
            elif item.block is not None:
                joint = Joint([], [], [])
                _add_side(built, item, downs.get(item.key, ()), joint, lower=True)
                _add_side(built, item, ups.get(item.key, ()), joint, lower=False)
                found.append(joint)
        built.held["joints"] = found
    joints: list[Joint] = built.held["joints"]
    return joints


def _add_side(
    built: Layers, item: Item, pieces: Sequence[tuple[str, str]], joint: Joint, *, lower: bool
) -> None:
    ports = item.below if lower else item.above
    if len(ports) == 1:
        joint.single += next(iter(ports.values()))
    if len(ports) < 2:
        return
    aims: dict[str, list[tuple[Item, Port]]] = defaultdict(list)
    for other, net in pieces:
        end = built.items[other]
        aims[net] += [(end, port) for port in (end.above if lower else end.below)[net]]
    order = sorted(ports, key=lambda net: (_RANK.get(net.split(" ", 1)[0], 3), net))
    leaving = [
        _Leaving(ports[net], aims[net], _column(built, item, net) if _back(net) else None)
        for net in order
    ]
    joint.sides.append((min(PITCH, (item.width - 24.0) / (len(ports) - 1)), leaving))


def _back(net: str) -> bool:
    return net.startswith("back")


def _column(built: Layers, item: Item, net: str) -> Item:
    return built.items[f"{net} @{item.layer}"]


def _knot_joints(built: Layers, item: Item, pieces: Sequence[tuple[str, str]]) -> list[_KnotJoint]:
    starts: dict[str, Item] = {net: built.items[above] for above, net in pieces}
    by_knot: dict[str, list[tuple[str, Port]]] = defaultdict(list)
    for net, ports in item.above.items():
        for port in ports:
            by_knot[port.knot].append((net, port))
    found = []
    for place in item.knots:
        knot = place.knot
        ends = by_knot.get(knot.key, [])
        ends.sort(key=lambda end: (not end[0].startswith("seed"), end[0]))
        below = [p for ports in item.below.values() for p in ports if p.knot == knot.key]
        unknown = sum(not code for code, _ in knot.pollen) if knot.sign != "open" else 0
        unknown += knot.seed == "" and bool(knot.pollen)
        seeded = any(net.startswith("seed") for net, _ in ends)
        reaching = []
        for net, port in ends:
            if _back(net):
                reaching.append(_Reaching(port, _column(built, item, net), None))
            else:
                start = starts.get(net)
                out = start.below[net][0] if start is not None else None
                reaching.append(_Reaching(port, start, out))
        first = int(not seeded and knot.seed == "" and bool(knot.pollen))
        found.append(_KnotJoint(place, below, reaching, len(ends) + unknown, first))
    return found


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
