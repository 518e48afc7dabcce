"""Ways of looking at a pedigree besides the neighbourhood of one plant.  Knows no Qt.

'connection' : how two plants are connected: every plant on a path from a plant where their lines
meet down to either of the two, and nothing else
'descent' : what came of a plant: of its descendants those that matter
'cytoplasm' : a plant's seed-parent line up to its founder, and all that has its cytoplasm

Each is a pure function of the network.  Parents that stand beside a way, as the mates of the plants
on it, are drawn faint, so that no cross is shown with one parent missing.
"""

from __future__ import annotations

import heapq
from collections import deque
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import TYPE_CHECKING, Literal

from pedigreeview.drawing.near import Chosen, barren_crosses
from pedigreeview.drawing.places import places_of

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = [
    "NEAR",
    "Connection",
    "Mode",
    "Way",
    "along_cytoplasm",
    "came_of",
    "connection",
    "matters",
    "of_connection",
]

Mode = Literal["near", "connection", "descent", "cytoplasm"]

_SINK = ""
"""Below both plants of a connection; no plant has a blank code."""


@dataclass(frozen=True, slots=True)
class Way:
    """How the picture is looked at.

    mode : 'near' for the neighbourhood, else as the module says
    other : of a connection the second plant; the first is the focus
    everything : of 'descent' also the descendants that do not matter
    """

    mode: Mode = "near"
    other: str = ""
    everything: bool = False


NEAR = Way()


@dataclass(frozen=True, slots=True)
class Connection:
    """How two plants hang together.

    meeting : plants from which two lines lead down, one to each of the two, that share no plant
        but the one that they begin with; one of the two itself if the other descends from it
    plants : the two, and all plants on paths from a meeting plant to either, shortest paths first
    far : by plant, steps of the shortest path between the two that it lies on
    """

    meeting: tuple[str, ...]
    plants: tuple[str, ...]
    far: dict[str, float]


def connection(net: PedigreeNetwork, a: str, b: str) -> Connection:
    """How two plants are connected through common ancestors.

    A meeting plant is a common ancestor above which no single plant stands in the way: seen from
    below both plants, nothing dominates it (Menger's theorem for paths that share no plant).

    Raises
    ------
    Fault : one of them is not a plant of the book
    """
    of_a, of_b = net.ancestors(a) | {a}, net.ancestors(b) | {b}
    common = of_a & of_b
    if not common:
        return Connection((), (a, b), {a: 0.0, b: 0.0})
    nodes = of_a | of_b
    over = _dominators(net, a, b, nodes)
    place = places_of(net)
    meeting = sorted((m for m in common if over[m] == _SINK), key=place.__getitem__)

    def below(code: str) -> Iterable[str]:
        return (child for child in net.progeny(code) if child in nodes)

    reached = _steps(meeting, below)
    from_a = _steps([a], net.parent_codes)
    from_b = _steps([b], net.parent_codes)
    far = {a: 0.0, b: 0.0}
    for own, other in ((from_a, from_b), (from_b, from_a)):
        across = _spread({m: float(other[m]) for m in meeting}, below)
        for code in reached:
            if code in own and code in across:
                far[code] = min(far.get(code, float("inf")), own[code] + across[code])
    far[a] = far[b] = 0.0
    plants = sorted(far, key=lambda code: (far[code], place[code]))
    return Connection(tuple(meeting), tuple(plants), far)


def _steps(start: Iterable[str], on: Callable[[str], Iterable[str]]) -> dict[str, int]:
    """Fewest steps to everything that can be reached."""
    found = dict.fromkeys(start, 0)
    ahead = deque(found)
    while ahead:
        code = ahead.popleft()
        for other in on(code):
            if other not in found:
                found[other] = found[code] + 1
                ahead.append(other)
    return found


def _spread(start: dict[str, float], on: Callable[[str], Iterable[str]]) -> dict[str, float]:
    """Least distance to everything that can be reached, from starts at distances of their own."""
    found: dict[str, float] = {}
    ahead = [(far, code) for code, far in start.items()]
    heapq.heapify(ahead)
    while ahead:
        far, code = heapq.heappop(ahead)
        if code in found:
            continue
        found[code] = far
        for other in on(code):
            if other not in found:
                heapq.heappush(ahead, (far + 1.0, other))
    return found


def _dominators(net: PedigreeNetwork, a: str, b: str, nodes: set[str]) -> dict[str, str]:
    """For each plant the nearest one below it that every path from a or b up to it passes.

    The method of Cooper, Harvey & Kennedy (A simple, fast dominance algorithm, 2001; from memory):
    it goes round until nothing changes, so pedigree loops do no harm.
    """

    def parents(code: str) -> tuple[str, ...]:
        return (a, b) if code == _SINK else net.parent_codes(code)

    number: dict[str, int] = {}
    order: list[str] = []
    stack = [(_SINK, iter(parents(_SINK)))]
    seen = {_SINK}
    while stack:
        code, left = stack[-1]
        above = next((parent for parent in left if parent not in seen), None)
        if above is None:
            stack.pop()
            number[code] = len(order)
            order.append(code)
        else:
            seen.add(above)
            stack.append((above, iter(parents(above))))
    over: dict[str, str] = {_SINK: _SINK}

    def shared(one: str, other: str) -> str:
        while one != other:
            while number[one] < number[other]:
                one = over[one]
            while number[other] < number[one]:
                other = over[other]
        return one

    changed = True
    while changed:
        changed = False
        for code in reversed(order[:-1]):
            lower = [child for child in net.progeny(code) if child in nodes and child in over]
            if code in (a, b):
                lower.append(_SINK)
            new = lower[0]
            for child in lower[1:]:
                new = shared(child, new)
            if over.get(code) != new:
                over[code], changed = new, True
    return over


def of_connection(net: PedigreeNetwork, focus: str, other: str) -> tuple[Chosen, tuple[str, ...]]:
    """The connecting pedigree of two plants and where their lines meet; else the two alone."""
    found = connection(net, focus, other)
    chosen = Chosen(net, special={focus, other, *found.meeting})
    held = set(found.plants)
    for code in found.plants:
        inside = any(parent in held for parent in net.parent_codes(code))
        chosen.take(code, found.far[code], with_parents=inside)
    return chosen, found.meeting


def matters(net: PedigreeNetwork, code: str) -> bool:
    """Whether a plant was kept, finished, or used as a parent."""
    if net.book.plants[code].status in ("kept", "finished") or net.progeny(code):
        return True
    return any(net.crosses_of(code))


def came_of(
    net: PedigreeNetwork, focus: str, *, everything: bool = False
) -> tuple[Chosen, tuple[str, ...]]:
    """The descendants of a plant that matter, and those that are left out.

    What leads to one that matters was a parent, so it matters too: each has its path to the focus.
    """
    far = _steps([focus], net.progeny)
    chosen = Chosen(net)
    out: list[str] = []
    for code, depth in far.items():
        if code == focus or everything or matters(net, code):
            chosen.take(code, float(depth), with_parents=code != focus)
            chosen.barren[code] = barren_crosses(net, code)
        else:
            out.append(code)
    return chosen, tuple(out)


def along_cytoplasm(net: PedigreeNetwork, focus: str) -> tuple[Chosen, str]:
    """The seed-parent line of a plant and all that has its cytoplasm; and the line's oldest plant.

    Where the line ends in an unknown, what has the cytoplasm of the oldest plant known.
    """
    from pedigreeview.network.links import links_of

    line = [focus]
    while (above := _seed_side(net, line[-1])) and above not in line:
        line.append(above)
    chosen = Chosen(net, special=set(line))
    founder = net.cytoplasm(focus)
    held = set(line)
    if founder is not None:
        rows = links_of(net).cytoplasm
        own = places_of(net)[founder]
        held.update(net.codes[row] for row in (rows == own).nonzero()[0].tolist())
    else:
        held.update(_steps([line[-1]], lambda code: _borne(net, code)))
    start = {code: at / 1000.0 for at, code in enumerate(line)}
    near = _spread(start, lambda code: (c for c in _borne(net, code) if c in held))
    for code in held:
        chosen.take(code, near.get(code, 1000.0), with_parents=code != line[-1])
    return chosen, line[-1]


def _seed_side(net: PedigreeNetwork, code: str) -> str:
    """The plant that a plant has its cytoplasm from; '' where that is not known."""
    origin = net.parents(code)
    record = net.book.crosses.get(origin.cross)
    if record is not None and not record.direction_known:
        return ""
    return origin.source or origin.seed_parent


def _borne(net: PedigreeNetwork, code: str) -> Iterable[str]:
    """Progeny that have their cytoplasm from a plant."""
    return (child for child in net.progeny(code) if _seed_side(net, child) == code)
