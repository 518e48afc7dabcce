"""Which plants, crosses and folds a picture shows: the focus and its generations, or all.

`choose` is a pure function of the network and the `Look`; the same question gives the same answer.
Keys in `Look.unfolded` are those that a block carries (`pack:...`, `chain:...`) and `up:CODE` and
`down:CODE` for the parents and the progeny of one plant.  Knows no Qt.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from pedigreeview.book.faults import Fault, Place
from pedigreeview.drawing.blocks import Block, Knot, Link, Row, View
from pedigreeview.drawing.folding import Picked, build
from pedigreeview.drawing.folds import SINGLES

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["CAP", "COMFORT", "Block", "Knot", "Link", "Look", "Row", "View", "choose"]

CAP = 150
"""Blocks beyond which nobody can read a focused picture; the farthest are left out."""

COMFORT = 80
"""Blocks from which large families are packed although some of their plants have progeny."""


@dataclass(frozen=True, slots=True)
class Look:
    """What is wanted of a picture.

    focus : the plant in the middle, or None for the whole book
    up, down : generations of ancestors and of descendants
    unfolded : keys of packs and chains drawn singly, `up:CODE` and `down:CODE` for more relatives
    pins : plants that are shown whatever the depth, always as tags of their own
    also : further plants to show with their parents, such as those on the paths between two pins
    cap : most blocks of a focused picture
    """

    focus: str | None = None
    up: int = 2
    down: int = 2
    unfolded: frozenset[str] = frozenset()
    pins: tuple[str, ...] = ()
    also: frozenset[str] = frozenset()
    cap: int = CAP


def choose(net: PedigreeNetwork, look: Look) -> View:
    """The view that answers the look.

    Raises
    ------
    Fault : the focus is not a plant of the book
    """
    known = set(net.codes)
    if look.focus is None:
        everything = Picked(
            plants=list(net.codes), expanded=known, crosses=list(net.book.crosses), wanted=()
        )
        return build(net, everything, None, _pins(look, known), look.unfolded, look.also)
    if look.focus not in known:
        raise Fault(
            f"'{look.focus}' is not a plant of this book.",
            Place(plant=look.focus),
            "Choose another plant as the focus.",
        )
    return _within_cap(net, look, _Near(net, look, known), known)


def _pins(look: Look, known: set[str]) -> tuple[str, ...]:
    return tuple(code for code in look.pins if code in known)


def _within_cap(net: PedigreeNetwork, look: Look, near: _Near, known: set[str]) -> View:
    """All of the neighbourhood, or as many of the nearest as fit: found by halving."""
    pins = _pins(look, known)

    def attempt(order: list[str]) -> View:
        return build(net, near.only(order), look.focus, pins, look.unfolded, look.also)

    def with_hidden(view: View) -> View:
        shown = view.shown()
        return replace(view, hidden=tuple(code for code in near.order if code not in shown))

    order = near.order
    best = attempt(order)
    if len(best.blocks) > min(COMFORT, look.cap):
        order = near.uncrowded(net, {look.focus or "", *pins, *look.also})
        if len(order) < len(near.order):
            best = with_hidden(attempt(order))
    if len(best.blocks) <= look.cap:
        return best
    low, high, best = 1, len(order), attempt(order[:1])
    while high - low > 1:
        middle = (low + high) // 2
        trial = attempt(order[:middle])
        if len(trial.blocks) <= look.cap:
            low, best = middle, trial
        else:
            high = middle
    return with_hidden(best)


class _Near:
    """Relatives of the focus, nearest first, and what each brings along."""

    def __init__(self, net: PedigreeNetwork, look: Look, known: set[str]) -> None:
        assert look.focus is not None
        self.net = net
        self.distance: dict[str, float] = {}
        self.expanded: set[str] = set()
        self.barren: dict[str, list[str]] = {}
        self._take(look.focus, 0.0, with_parents=look.up > 0)
        ups = _ancestors(net, look.focus, look.up)
        for code, depth in ups.items():
            self._take(code, depth, with_parents=depth < look.up)
        if look.up > 0:
            self._add_sibs(look.focus, ups, look.up)
        self._add_descendants(look.focus, look.down)
        self._add_asked(look, known)
        place = {code: at for at, code in enumerate(net.codes)}
        self.order = sorted(self.distance, key=lambda code: (self.distance[code], place[code]))

    def _take(self, code: str, far: float, *, with_parents: bool) -> None:
        if far < self.distance.get(code, float("inf")):
            self.distance[code] = far
        if with_parents:
            self.expanded.add(code)

    def _add_sibs(self, focus: str, ups: dict[str, int], up: int) -> None:
        """Sibs of the focus, and progeny of the other direction of every cross shown above it."""
        net = self.net
        for sib in net.sibs(focus):
            self._take(sib, 1.5, with_parents=True)
        for code in (focus, *ups):
            depth = ups.get(code, 0)
            cross = net.parents(code).cross
            if depth >= up or not cross:
                continue
            parents = set(net.parent_codes(code))
            for other in net.reciprocal_of(cross):
                record = net.book.crosses[other]
                if {record.seed_parent, record.pollen_parent} <= parents:
                    for child in net.progeny_of_cross(other):
                        self._take(child, depth + 1.6, with_parents=True)

    def _add_descendants(self, focus: str, down: int) -> None:
        net = self.net
        front, seen = [focus], {focus}
        for depth in range(1, down + 1):
            following = []
            for code in front:
                as_seed, as_pollen = net.crosses_of(code)
                self.barren[code] = [
                    cross
                    for cross in dict.fromkeys([*as_seed, *as_pollen])
                    if not net.progeny_of_cross(cross)
                ]
                for child in net.progeny(code):
                    self._take(child, float(depth), with_parents=True)
                    if child not in seen:
                        seen.add(child)
                        following.append(child)
            front = following

    def _add_asked(self, look: Look, known: set[str]) -> None:
        """Pins, plants on paths, and relatives that were unfolded."""
        for pin in _pins(look, known):
            self._take(pin, 0.5, with_parents=False)
        for code in sorted(look.also & known):
            self._take(code, 0.75, with_parents=True)
        for key in sorted(look.unfolded):
            way, _, code = key.partition(":")
            if code not in known:
                continue
            if way == "up":
                self._take(code, 0.9, with_parents=True)
                for parent in self.net.parent_codes(code):
                    self._take(parent, 0.95, with_parents=False)
            elif way == "down":
                self._take(code, 0.9, with_parents=False)
                for child in self.net.progeny(code):
                    self._take(child, 0.95, with_parents=True)

    def only(self, order: list[str]) -> Picked:
        """What is shown when only these relatives are."""
        crosses = [cross for code in order for cross in self.barren.get(code, ())]
        return Picked(order, self.expanded & set(order), crosses, tuple(self.order))

    def uncrowded(self, net: PedigreeNetwork, special: set[str]) -> list[str]:
        """The relatives without the progeny of sibs that then make a pack of their own."""
        families: dict[str, list[str]] = {}
        for code in self.order:
            if code not in special and net.book.plants[code].status != "kept":
                families.setdefault(net.parents(code).cross, []).append(code)
        packed = {
            code
            for cross, sibs in families.items()
            if cross and len(sibs) > SINGLES
            for code in sibs
            if self.distance[code] >= 1
        }
        kept = []
        for code in self.order:
            parents = [p for p in net.parent_codes(code) if p in self.distance]
            if (
                self.distance[code] >= 2
                and code not in special
                and net.book.plants[code].status != "kept"
                and any(p in packed and self.distance[p] < self.distance[code] for p in parents)
            ):
                packed.add(code)
            else:
                kept.append(code)
        return kept


def _ancestors(net: PedigreeNetwork, focus: str, up: int) -> dict[str, int]:
    """Ancestors to the depth; a chain of selfings with one plant each counts as one step."""
    found: dict[str, int] = {}
    front = [(focus, 0, False)]
    while front:
        following = []
        for code, depth, in_chain in front:
            selfed = net.parents(code).selfed
            for parent in net.parent_codes(code):
                lone = selfed and len(net.progeny(parent)) == 1
                far = depth if (in_chain and lone) else depth + 1
                if far > up or found.get(parent, up + 1) <= far or parent == focus:
                    continue
                found[parent] = far
                following.append((parent, far, lone))
        front = following
    return found
