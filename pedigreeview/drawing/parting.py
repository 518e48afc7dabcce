"""Uprights of different lines stand apart, so that none is read as the going on of another.

Within one gap between two layers the stem of one parent and the arrival of another's line must not
stand on one upright, nor close beside each other: the eye would join them.  Ends of lines are moved
along their tags, through places and knots along their layers, by small steps and while that helps.
Small kinks are straightened in the same way.  Knows no Qt.
"""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass, field

from pedigreeview.drawing.layers import Item, Layers, Port
from pedigreeview.drawing.ports import open_slots
from pedigreeview.drawing.straightening import apart
from pedigreeview.drawing.theme import Sizes

__all__ = ["APART", "part_uprights"]

APART = 12.0
"""Least distance between uprights of two lines in one gap."""
_READ = 8.0
"""Uprights of two lines closer than this look like one."""
_ROUNDS = 10
_MET, _TIGHT, _KINK, _JOG, _STRAIGHT, _BENT = 100.0, 3.0, 40.0, 8.0, -6.0, 0.5
_STEPS = (6.0, -6.0, 12.0, -12.0, 18.0, -18.0, 24.0, -24.0, 36.0, -36.0, 48.0, -48.0)
_CELL = 24.0
_ALL = "all"
_PUSHED = 6
"""Most neighbours that one move pushes along."""


@dataclass(slots=True, eq=False)
class _Upright:
    """One end of a net in one gap."""

    x: float
    net: str
    gap: int
    top: bool
    item: str


@dataclass(slots=True)
class _Mover:
    """Something that can be shifted, with the uprights that go along."""

    uprights: list[_Upright]
    item: Item
    net: str = ""
    """The line whose end moves along its tag; `_ALL`: of all lines; blank: the whole item moves."""
    lower: bool = False
    cost: float = 0.0

    def ports(self) -> list[Port]:
        """The ends that move."""
        held = self.item.below if self.lower else self.item.above
        if self.net == _ALL:
            return [port for ports in held.values() for port in ports]
        return held[self.net]


@dataclass(slots=True)
class _Gaps:
    """All uprights, found by gap and place."""

    cells: dict[tuple[int, int], list[_Upright]] = field(default_factory=lambda: defaultdict(list))
    nets: dict[tuple[int, str], list[_Upright]] = field(default_factory=lambda: defaultdict(list))

    def add(self, one: _Upright) -> None:
        self.cells[one.gap, int(one.x // _CELL)].append(one)

    def take(self, one: _Upright) -> None:
        self.cells[one.gap, int(one.x // _CELL)].remove(one)

    def near(self, one: _Upright) -> list[_Upright]:
        cell = int(one.x // _CELL)
        return [
            other
            for at in (cell - 1, cell, cell + 1)
            for other in self.cells.get((one.gap, at), ())
            if other.net != one.net
        ]

    def cost(self, one: _Upright) -> float:
        """What stands too close to an upright, and how crooked its own line is."""
        total, x, net, gap = 0.0, one.x, one.net, one.gap
        cell, cells = int(x // _CELL), self.cells
        for at in (cell - 1, cell, cell + 1):
            for other in cells.get((gap, at), ()):
                if other.net == net:
                    continue
                far = abs(other.x - x)
                if far < APART - 0.01:
                    total += _MET + (APART - far)
                elif far < APART + 5.9 and other.top != one.top:
                    total += _TIGHT
        for other in self.nets[one.gap, one.net]:
            if other.top == one.top:
                continue
            far = abs(other.x - one.x)
            if far < 0.01:
                total += _STRAIGHT
            else:
                total += _KINK if far < APART - 0.01 else _JOG if far < 24.1 else _BENT
        return total

    def told_apart(self) -> bool:
        """Whether no two uprights of different lines stand so close that they look like one."""
        return not any(
            abs(other.x - one.x) < _READ
            for held in self.nets.values()
            for one in held
            for other in self.near(one)
        )

    def troubled(self) -> list[_Upright]:
        """Uprights that stand too close to another, or whose line has a kink."""
        found = []
        for held in self.nets.values():
            for one in held:
                kink = any(o.top != one.top and 0.01 <= abs(o.x - one.x) < 24.1 for o in held)
                met = any(abs(o.x - one.x) < APART - 0.01 for o in self.near(one))
                if met or kink:
                    found.append(one)
        return found


def part_uprights(built: Layers, sizes: Sizes, anchor: str = "") -> bool:
    """Move ends of lines until no two stand too close, or nothing more helps.

    anchor : key of the block that must not move
    Returns whether all uprights of different lines can be told apart now.
    """
    gaps, movers, whole = _uprights(built)
    beside = {key: (row, at) for row in built.rows for at, key in enumerate(row)}
    for _ in range(_ROUNDS):
        moved = False
        for one in gaps.troubled():
            before = gaps.cost(one)
            if before <= 0:
                continue
            moved |= _ease(built, gaps, movers[id(one)], beside, whole, sizes, anchor)
        if not moved:
            break
    return gaps.told_apart()


def _uprights(built: Layers) -> tuple[_Gaps, dict[int, list[_Mover]], dict[str, _Mover]]:
    """All uprights, what moves each of them, and the mover of every item as a whole."""
    gaps = _Gaps()
    wholes: dict[str, _Mover] = {}
    # Two gaps with no block between them are one to the eye.
    gap_of = {-1: -1}
    for layer, row in enumerate(built.rows):
        blank = all(built.items[key].block is None for key in row)
        gap_of[layer] = gap_of[layer - 1] if blank else layer
    movers: dict[int, list[_Mover]] = defaultdict(list)
    for item in built.items.values():
        whole = wholes[item.key] = _Mover([], item)
        whole.cost = 1.0 if item.block is None else 6.0 if item.knots else 14.0
        for lower, held in ((True, item.below), (False, item.above)):
            side = _Mover([], item, _ALL, lower, 4.0)
            gap = gap_of[item.layer if lower else item.layer - 1]
            for net, ports in held.items():
                own = [_Upright(item.x + p.offset, net, gap, lower, item.key) for p in ports]
                if item.block is not None and not item.knots:
                    port_mover = _Mover(own, item, net, lower, 2.0)
                    side.uprights += own
                    for one in own:
                        movers[id(one)] += [port_mover, side]
                whole.uprights += own
        for knot, _, _, x in open_slots(item):
            whole.uprights.append(
                _Upright(x, f"open {knot}", gap_of[item.layer - 1], False, item.key)
            )
        for one in whole.uprights:
            movers[id(one)].append(whole)
            gaps.add(one)
            gaps.nets[one.gap, one.net].append(one)
    return gaps, movers, wholes


def _ease(
    built: Layers,
    gaps: _Gaps,
    movers: list[_Mover],
    beside: dict[str, tuple[list[str], int]],
    whole: dict[str, _Mover],
    sizes: Sizes,
    anchor: str,
) -> bool:
    """The best small move that lowers the cost, if there is one."""
    best, found = -0.5, None
    for mover in movers:
        costs: dict[int, float] = {}
        for step in _STEPS:
            moves = _moves(built, mover, step, beside, whole, sizes, anchor)
            if not moves:
                continue
            uprights = [one for other, _ in moves for one in other.uprights]
            # Side and number say what is pushed along; alone the mover is the same to both sides.
            pushed = len(moves) if step > 0 or len(moves) == 1 else -len(moves)
            if pushed not in costs:
                costs[pushed] = sum(gaps.cost(one) for one in uprights)
            now = costs[pushed]
            for other, by in moves:
                _shift(gaps, other, by)
            gain = sum(gaps.cost(one) for one in uprights) - now
            for other, by in moves:
                _shift(gaps, other, -by)
                gain += other.cost * 0.3 + abs(by) * 0.15 * (1 + other.cost * 0.1)
            if gain < best:
                best, found = gain, moves
    for other, by in found or ():
        _shift(gaps, other, by)
        if other.net:
            for port in other.ports():
                port.offset += by
        else:
            other.item.x += by
    return found is not None


def _shift(gaps: _Gaps, mover: _Mover, step: float) -> None:
    for one in mover.uprights:
        gaps.take(one)
        one.x += step
        gaps.add(one)


def _moves(
    built: Layers,
    mover: _Mover,
    step: float,
    beside: dict[str, tuple[list[str], int]],
    whole: dict[str, _Mover],
    sizes: Sizes,
    anchor: str,
) -> list[tuple[_Mover, float]]:
    """A move with all that it pushes along its layer; none where it cannot be made."""
    item = mover.item
    if mover.net:
        room = item.width / 2 - 2 * sizes.grid
        kept = all(abs(port.offset + step) <= room for port in mover.ports())
        return [(mover, step)] if kept else []
    row, at = beside[item.key]
    way = 1 if step > 0 else -1
    found: list[tuple[_Mover, float]] = []
    by = abs(step)
    while by > 0.01:
        if row[at] == anchor or len(found) > _PUSHED:
            return []
        found.append((whole[row[at]], by * way))
        if not 0 <= at + way < len(row):
            break
        one, other = built.items[row[at]], built.items[row[at + way]]
        lacking = apart(one, other, sizes) - ((other.x - one.x) * way - by)
        by = -(-round(lacking, 3) // sizes.grid) * sizes.grid
        at += way
    return found
