"""Which plants, crosses and folds a picture shows: the focus and its generations, or all.

`choose` is a pure function of the network and the `Look`; the same question gives the same answer.
Keys in `Look.unfolded` are those that a block carries (`pack:...`, `chain:...`) and `up:CODE` and
`down:CODE` for the parents and the progeny of one plant.  Knows no Qt.
"""

from __future__ import annotations

from collections import deque
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from pedigreeview.book.faults import Fault, Place
from pedigreeview.drawing.blocks import Block, Knot, Link, Row, View
from pedigreeview.drawing.folding import Builder, Picked, build, builder
from pedigreeview.drawing.founders import Table, numbers_as_before
from pedigreeview.drawing.ghost import Ghost, with_ghost
from pedigreeview.drawing.narrowing import MOST
from pedigreeview.drawing.near import Chosen, neighbourhood
from pedigreeview.drawing.tinting import Wanted
from pedigreeview.drawing.ways import NEAR, Way, along_cytoplasm, came_of, of_connection

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = [
    "CAP",
    "COMFORT",
    "Block",
    "Ghost",
    "Knot",
    "Link",
    "Look",
    "Row",
    "View",
    "Way",
    "choose",
]

CAP = 150
"""Blocks beyond which nobody can read a focused picture; the farthest are left out."""

COMFORT = 80
"""Blocks from which large families are packed although some of their plants have progeny."""

_SPARE = 2
"""Blocks that a picture may stay below its cap."""

_AT_ONCE = 4 * CAP
"""Plants that are folded at the first try; in a large book more would be thrown away again."""


@dataclass(frozen=True, slots=True)
class Look:
    """What is wanted of a picture.

    focus : the plant in the middle, or None for the whole book
    up, down : generations of ancestors and of descendants
    unfolded : keys of packs and chains drawn singly, `up:CODE` and `down:CODE` for more relatives
    pins : plants that are shown whatever the depth, always as tags of their own
    also : further plants to show with their parents, such as those on the paths between two pins
    cap : most blocks of a focused picture
    way : the neighbourhood of the focus, or another way of looking at it
    away : plants folded away by a filter; the focus, pins and what links the rest to it stay
    faded : plants put back by a filter
    tint : what the tags are tinted by
    ghost : a cross that is only tried out
    like : numbers in the palette of the founders of the picture before, which they keep
    """

    focus: str | None = None
    up: int = 2
    down: int = 2
    unfolded: frozenset[str] = frozenset()
    pins: tuple[str, ...] = ()
    also: frozenset[str] = frozenset()
    cap: int = CAP
    way: Way = NEAR
    away: frozenset[str] = frozenset()
    faded: frozenset[str] = frozenset()
    tint: Wanted | None = None
    ghost: Ghost | None = None
    like: Table = ()


def choose(net: PedigreeNetwork, look: Look) -> View:
    """The view that answers the look.

    Raises
    ------
    Fault : the focus, or the second plant of a connection, is not a plant of the book
    """
    wanted = [] if look.focus is None else [look.focus]
    if look.way.mode == "connection":
        wanted.append(look.way.other)
    for code in wanted:
        if code not in net:
            raise Fault(
                f"'{code}' is not a plant of this book.",
                Place(plant=code),
                "Choose another plant as the focus.",
            )
    view = _whole(net, look) if look.focus is None else _focused(net, look, look.focus)
    if look.like:
        view = replace(view, founders=numbers_as_before(net, view.founders, look.like))
    if look.ghost is not None and {look.ghost.seed, look.ghost.pollen} <= view.shown():
        view = with_ghost(view, net, look.ghost)
    return view


def _pins(net: PedigreeNetwork, look: Look) -> tuple[str, ...]:
    return tuple(code for code in look.pins if code in net)


def _whole(net: PedigreeNetwork, look: Look) -> View:
    pins = _pins(net, look)
    away = look.away - {*pins, *look.also}
    plants = [code for code in net.codes if code not in away]
    expanded = {c for c in plants if not away or not away.issuperset(net.parent_codes(c))}
    crosses = list(net.book.crosses)
    if away:
        crosses = [c for c in crosses if not _stands_on(net, c) <= away]
    picked = Picked(plants=plants, expanded=expanded, crosses=crosses, wanted=())
    view = build(net, picked, None, pins, look.unfolded, look.also)
    return _set_apart(view, look, NEAR, frozenset(away - view.shown()), set())


def _stands_on(net: PedigreeNetwork, cross: str) -> set[str]:
    record = net.book.crosses[cross]
    return {code for code in (record.seed_parent, record.pollen_parent) if code}


def _focused(net: PedigreeNetwork, look: Look, focus: str) -> View:
    """What a way of looking chooses, thinned by the filter, as much of it as fits."""
    out: tuple[str, ...] = ()
    meeting: tuple[str, ...] = ()
    way, pins = look.way, _pins(net, look)
    asked = list(pins)
    if look.ghost is not None:
        asked += [code for code in (look.ghost.seed, look.ghost.pollen) if code in net]
    if way.mode == "connection":
        chosen, meeting = of_connection(net, focus, way.other)
    elif way.mode == "descent":
        chosen, out = came_of(net, focus, everything=way.everything)
    elif way.mode == "cytoplasm":
        chosen, oldest = along_cytoplasm(net, focus)
        meeting = (oldest,)
    else:
        chosen = neighbourhood(net, focus, look.up, look.down)
        for code in asked:
            chosen.take(code, 0.5, with_parents=False)
    own = set(chosen.distance)
    chosen.special |= {focus, *(code for code in asked if code in own)}
    chosen.add_unfolded(look.unfolded, look.also)
    before = chosen.order()
    order = _thinned(net, chosen, before, look, {focus, way.other, *asked})
    view = _within_cap(net, look, chosen, order, pins)
    gone = frozenset(code for code in before if code in look.away) - view.shown()
    apart = set(view.shown()) - set(chosen.distance) if way != NEAR else set()
    view = _set_apart(view, look, way, gone, apart)
    return replace(view, left_out=out, meeting=meeting)


def _set_apart(view: View, look: Look, way: Way, gone: frozenset[str], apart: set[str]) -> View:
    """Say what stands beside the way, and what the filter folded away."""
    if way == NEAR and not look.away:
        return view
    aside = frozenset(apart | (set(look.away) & view.shown())) - {look.focus, *look.pins}
    return replace(view, way=way, aside=frozenset(c for c in aside if c), away=gone)


def _thinned(
    net: PedigreeNetwork, chosen: Chosen, order: list[str], look: Look, fast: set[str]
) -> list[str]:
    """The plants that fit the filter, and those that link them to the focus.

    A tree of shortest ways from the focus says which do; so a sib that fits keeps one parent.
    """
    if not look.away or look.focus is None:
        return order
    held = set(order)
    before: dict[str, str] = {look.focus: ""}
    ahead = deque([look.focus])
    while ahead:
        code = ahead.popleft()
        for other in (*net.parent_codes(code), *net.progeny(code)):
            if other in held and other not in before:
                before[other] = code
                ahead.append(other)
    kept: set[str] = set()
    for code in order:
        if code not in look.away or code in fast:
            step = code
            while step and step not in kept:
                kept.add(step)
                step = before.get(step, "")
    chosen.expanded = {
        code
        for code in chosen.expanded
        if code in kept and any(parent in kept for parent in net.parent_codes(code))
    }
    for code in list(chosen.barren):
        if code in look.away and code not in fast:
            del chosen.barren[code]
    return [code for code in order if code in kept]


def _within_cap(
    net: PedigreeNetwork, look: Look, chosen: Chosen, order: list[str], pins: tuple[str, ...]
) -> View:
    """All that is chosen, or as many of the nearest as fit."""
    wanted = tuple(order)
    special = look.also | chosen.special

    def built_of(plants: list[str]) -> Builder:
        picked = chosen.only(plants, wanted)
        return builder(net, picked, look.focus, pins, look.unfolded, special)

    def of(count: int) -> Builder:
        if count not in built:
            built[count] = built_of(order[:count])
        return built[count]

    built: dict[int, Builder] = {}
    every = order
    order, behind = chosen.crowds_apart(every, {*special, *pins}, look.unfolded)
    low, fit, size, crowded = 1, 1, min(len(order), _AT_ONCE), False
    blocks = of(size).block_count()
    while True:
        if blocks > min(COMFORT, look.cap) and not crowded:
            crowded = True
            tighter = list(chosen.uncrowded(every, {*special, *pins}))
            for fewer in tighter:
                # What is far too much is not even tried out.
                if fewer is not tighter[-1] and len(fewer) * blocks > 1.25 * COMFORT * size:
                    continue
                order, behind = chosen.crowds_apart(fewer, {*special, *pins}, look.unfolded)
                built.clear()
                low, fit, size = 1, 1, min(len(order), _AT_ONCE)
                blocks = of(size).block_count()
                if blocks <= min(COMFORT, look.cap) and of(size).widest <= MOST:
                    break
        if blocks > look.cap or size >= len(order):
            break
        low, fit, size = size, blocks, min(2 * size, len(order))
        blocks = of(size).block_count()
    if blocks > look.cap:
        high, size = size, low
        short, over, last = look.cap + 0.5 - fit, blocks - look.cap - 0.5, 0
        # A block or two of room left do not matter; each try takes as long as a small picture.
        while high - size > 1 and look.cap - fit > _SPARE:
            # False position; an end that stays twice counts half, so that it does not creep (the
            # Illinois rule, Dowell and Jarratt 1971, from memory).
            part = short / (short + over)
            middle = min(max(size + round(part * (high - size)), size + 1), high - 1)
            count = of(middle).block_count()
            if count <= look.cap:
                size, fit, short = middle, count, look.cap + 0.5 - count
                over, last = over / 2 if last > 0 else over, 1
            else:
                high, over = middle, count - look.cap - 0.5
                short, last = short / 2 if last < 0 else short, -1
    fitting = order[:size]
    rest = [sib for code in fitting for sib in behind.get(code, ())]
    view = (built_of([*fitting, *rest]) if rest else of(size)).view()
    shown = view.shown()
    return replace(view, hidden=tuple(code for code in wanted if code not in shown))
