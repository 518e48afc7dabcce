"""In which row each plant stands: its generation, parents above progeny, loops cut.

The rows are an axis: a plant stands in the generation that the network says, related to the rest of
the picture or not.  Only founders may stand lower, and their tags say so.  No Qt.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from pedigreeview.drawing.births import births_of
from pedigreeview.drawing.blocks import Knot

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["UNKNOWN", "Mating", "Spot", "rank"]

Spot = tuple[int, int]
"""Generation, and level within it: clones hang one level below their source."""

UNKNOWN = 1000
"""Levels from which stand plants whose generation is not known, below that generation's own."""


@dataclass(slots=True)
class Mating:
    """A knot while it is being put together."""

    knot: Knot
    progeny: list[str] = field(default_factory=list)
    _parents: tuple[str, ...] | None = None

    def parents(self) -> tuple[str, ...]:
        """Known parents, seed side first, each once."""
        if self._parents is None:
            sides = [self.knot.seed, *(code for code, _ in self.knot.pollen)]
            self._parents = tuple(code for code in dict.fromkeys(sides) if code)
        return self._parents


class _Ranks:
    def __init__(
        self,
        net: PedigreeNetwork,
        plants: Sequence[str],
        born_of: Mapping[str, str],
        matings: Mapping[str, Mating],
        parent_in: Mapping[str, Sequence[str]],
    ) -> None:
        self.net = net
        self.plants = plants
        self.born_of = born_of
        self.matings = matings
        self.parent_in = parent_in
        self.births = births_of(net)
        self.spot: dict[str, Spot] = {}
        self._deepest: int | None = None

    def run(self) -> dict[str, Spot]:
        """Generation and place within it, parents above progeny, loops cut where they enter."""
        left = list(self.plants)
        spot = self.spot
        while left:
            waiting = []
            for code in left:
                for parent in self._parents_shown(code):
                    if parent not in spot:
                        waiting.append(code)
                        break
                else:
                    self._place(code)
            if len(waiting) == len(left):
                first = max(
                    waiting, key=lambda code: sum(p in self.spot for p in self._parents_shown(code))
                )
                self._place(first)
                waiting.remove(first)
            left = waiting
        self._lower_founders()
        return self.spot

    def _parents_shown(self, code: str) -> tuple[str, ...]:
        key = self.born_of.get(code)
        return () if key is None else self.matings[key].parents()

    def _place(self, code: str) -> None:
        own = self.births.generation(self.net, code)
        above = [self.spot[p] for p in self._parents_shown(code) if p in self.spot]
        if own is None:
            # Below a loop no generation is known, and none is said: rows apart, below the parents.
            generation, level = max(above, default=(self._last(), 0))
            self.spot[code] = (generation, max(level + 1, UNKNOWN))
            return
        level = max((level + 1 for generation, level in above if generation == own), default=0)
        self.spot[code] = (own, level)

    def _last(self) -> int:
        """The last generation of the picture."""
        if self._deepest is None:
            known = (self.births.generation(self.net, code) for code in self.plants)
            self._deepest = max((one for one in known if one is not None), default=0)
        return self._deepest

    def _lower_founders(self) -> None:
        """Founders stand just above their first use, so that fewer lines are long."""
        for code in self.plants:
            if code in self.born_of or self.births.birth(self.net, code).parents:
                continue
            uses = []
            for key in self.parent_in.get(code, ()):
                mating = self.matings[key]
                if not mating.knot.cross:
                    uses.append(self.spot[code][0] + 1)
                others = [self.spot[p][0] for p in mating.parents() if p != code]
                below = [
                    self.spot[child][0] - self.births.birth(self.net, child).selfings
                    for child in mating.progeny
                    if self.spot[child] > self.spot[code]
                ]
                uses.append(min(below) if below else max(others, default=0) + 1)
            if uses and min(uses) - 1 > self.spot[code][0]:
                self.spot[code] = (min(uses) - 1, 0)


def rank(
    net: PedigreeNetwork,
    plants: Sequence[str],
    born_of: Mapping[str, str],
    matings: Mapping[str, Mating],
    parent_in: Mapping[str, Sequence[str]],
) -> dict[str, Spot]:
    """The spot of every plant of a picture.

    plants : codes, parents before progeny but for loops
    born_of : key of the mating that a plant comes from, where the picture shows it
    parent_in : keys of the matings that a plant is a parent in
    """
    return _Ranks(net, plants, born_of, matings, parent_in).run()
