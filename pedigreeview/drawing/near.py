"""Which plants a picture holds, nearest to the focus first, before it is folded.

`Chosen` is what every way of looking comes to; `neighbourhood` is the usual one, so many
generations up and down.  Knows no Qt.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from pedigreeview.drawing.folding import Picked
from pedigreeview.drawing.folds import SINGLES
from pedigreeview.drawing.places import places_of

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["CROWD", "Chosen", "barren_crosses", "neighbourhood"]

CROWD = 100
"""Sibs of one pack from which most are kept apart while what fits is tried out."""

_NEAREST = 2
"""The nearest generation of which plants are left out so that sibs above them fold."""


@dataclass(slots=True)
class Chosen:
    """Plants with their distance from what is looked at, and what each brings along.

    distance : by plant; the farthest are left out where there are too many
    expanded : plants whose parents come along
    barren : by plant, its crosses that nothing was raised from
    special : plants that always have a tag of their own
    """

    net: PedigreeNetwork
    distance: dict[str, float] = field(default_factory=dict)
    expanded: set[str] = field(default_factory=set)
    barren: dict[str, list[str]] = field(default_factory=dict)
    special: set[str] = field(default_factory=set)

    def take(self, code: str, far: float, *, with_parents: bool) -> None:
        """Show a plant, at the least of the distances that are said of it."""
        if far < self.distance.get(code, float("inf")):
            self.distance[code] = far
        if with_parents:
            self.expanded.add(code)

    def order(self) -> list[str]:
        """The plants, nearest first, in the book's order among equals."""
        place = places_of(self.net)
        return sorted(self.distance, key=lambda code: (self.distance[code], place[code]))

    def add_unfolded(self, unfolded: Iterable[str], also: Iterable[str]) -> None:
        """Plants on paths, and relatives that were unfolded."""
        net, distance = self.net, self.distance
        for code in sorted(set(also)):
            if code in net:
                self.take(code, 0.75, with_parents=True)
        for key in sorted(unfolded):
            way, _, code = key.partition(":")
            if way not in ("up", "down") or code not in net:
                continue
            self.take(code, min(0.9, distance.get(code, 0.9)), with_parents=way == "up")
            for other in net.parent_codes(code) if way == "up" else net.progeny(code):
                self.take(other, 0.95, with_parents=way == "down")

    def only(self, order: list[str], wanted: tuple[str, ...]) -> Picked:
        """What is shown when only these relatives are."""
        crosses = [cross for code in order for cross in self.barren.get(code, ())]
        return Picked(order, self.expanded & set(order), crosses, wanted)

    def crowds_apart(
        self, order: list[str], special: set[str], unfolded: Iterable[str]
    ) -> tuple[list[str], dict[str, list[str]]]:
        """Of the sibs that fold into one pack only so many as make it, and who stands behind those.

        What fits is tried out several times; so a family of thousands costs no more than four.
        Returns the relatives without the rest, and the rest by the last sib that stands for them.
        """
        net, plants = self.net, self.net.book.plants
        if len(order) <= CROWD:
            return order, {}
        held = set(order)
        for code in self.expanded & held:
            held.update(net.parent_codes(code))
        opened = {key.partition("#")[0] for key in unfolded if key.startswith("pack:")}
        groups: dict[tuple[str, int, float, bool], list[str]] = {}
        for code in order:
            origin = net.parents(code)
            plain = (
                origin.cross
                and not origin.finding
                and code not in special
                and plants[code].status != "kept"
                and held.isdisjoint(net.progeny(code))
                and not self.barren.get(code)
            )
            if plain and f"pack:cross:{origin.cross}" not in opened:
                key = (origin.cross, origin.selfings, self.distance[code], code in self.expanded)
                groups.setdefault(key, []).append(code)
        behind = {
            sibs[SINGLES]: sibs[SINGLES + 1 :] for sibs in groups.values() if len(sibs) > CROWD
        }
        rest = {sib for sibs in behind.values() for sib in sibs}
        return [code for code in order if code not in rest] if rest else order, behind

    def uncrowded(self, order: list[str], special: set[str]) -> Iterator[list[str]]:
        """The relatives without the progeny of sibs that then make a pack of their own.

        First without those of the farthest generation, then without those of the one above it too,
        and so on; what would be the same once more is left out.  Kept selections stay near the
        focus, as long as one of their parents on the way there does.
        """
        families: dict[str, list[str]] = {}
        for code in order:
            if code not in special and self.net.book.plants[code].status != "kept":
                families.setdefault(self.net.parents(code).cross, []).append(code)
        packed = {
            code
            for cross, sibs in families.items()
            if cross and len(sibs) > SINGLES
            for code in sibs
            if self.distance[code] >= 1
        }
        distance, before = self.distance, len(order)
        above = {
            code: [p for p in self.net.parent_codes(code) if distance.get(p, far) < far]
            for code in order
            if (far := distance[code]) >= _NEAREST and code not in special
        }
        farthest = max((int(distance[code]) for code in above), default=0)
        for beyond in range(farthest, _NEAREST - 1, -1):
            fewer = self._without(order, above, packed, beyond)
            if len(fewer) < before:
                before = len(fewer)
                yield fewer

    def _without(
        self, order: list[str], above: Mapping[str, list[str]], packed: set[str], beyond: int
    ) -> list[str]:
        """The relatives without the progeny of packed sibs from a distance on.

        above : of those that may be left out the parents that are nearer to the focus
        """
        plants, packed = self.net.book.plants, set(packed)
        kept: list[str] = []
        gone: set[str] = set()
        for code in order:
            far, nearer = self.distance[code], above.get(code)
            if far < beyond or not nearer:
                kept.append(code)
                continue
            # A kept plant stays where a line leads to it, and never hangs in the air.
            plain = far > _NEAREST or plants[code].status != "kept"
            if gone.issuperset(nearer) or (plain and not packed.isdisjoint(nearer)):
                packed.add(code)
                gone.add(code)
            else:
                kept.append(code)
        return kept


def barren_crosses(net: PedigreeNetwork, code: str) -> list[str]:
    """The crosses of a plant, on either side, that nothing was raised from."""
    as_seed, as_pollen = net.crosses_of(code)
    crosses = dict.fromkeys([*as_seed, *as_pollen])
    return [cross for cross in crosses if not net.progeny_of_cross(cross)]


def neighbourhood(net: PedigreeNetwork, focus: str, up: int, down: int) -> Chosen:
    """A plant with its generations up and down, its sibs, and its crosses the other way round."""
    chosen = _Near(net)
    chosen.take(focus, 0.0, with_parents=up > 0)
    ups = _ancestors(net, focus, up)
    for code, depth in ups.items():
        chosen.take(code, depth, with_parents=depth < up)
    if up > 0:
        chosen.add_sibs(focus, ups, up)
    chosen.add_descendants(focus, down)
    return chosen


class _Near(Chosen):
    def add_sibs(self, focus: str, ups: dict[str, int], up: int) -> None:
        """Sibs of the focus, and progeny of the other direction of every cross shown above it."""
        net = self.net
        for sib in net.sibs(focus):
            self.take(sib, 1.5, with_parents=True)
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
                        self.take(child, depth + 1.6, with_parents=True)

    def add_descendants(self, focus: str, down: int) -> None:
        """Descendants to the depth."""
        net = self.net
        front, seen = [focus], {focus}
        for depth in range(1, down + 1):
            following = []
            for code in front:
                self.barren[code] = barren_crosses(net, code)
                for child in net.progeny(code):
                    self.take(child, float(depth), with_parents=True)
                    if child not in seen:
                        seen.add(child)
                        following.append(child)
            front = following


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
