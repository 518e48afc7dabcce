"""Who came from whom in a whole book, as arrays by place in `codes`.

Structure alone: nothing here waits for a coefficient.  Rows are the plants of the network's
`codes`, parents before progeny; plants tied up in loops come last.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING
from weakref import WeakKeyDictionary

import numpy as np
from numpy.typing import NDArray

from pedigreeview.network.sweeps import FloatArray, IntArray, Weights

if TYPE_CHECKING:
    from pedigreeview.network.relatives import Relatives

__all__ = ["POLLEN", "SEED", "SOURCE", "Links", "links_of"]

SEED, POLLEN, SOURCE = 0, 1, 2
"""Roles of a link: seed parent, pollen parent or a candidate for it, source of a clone and such."""

_SAME_GENERATION = ("seed_of", "cutting_of", "doubled_of")
_HELD: WeakKeyDictionary[Relatives, Links] = WeakKeyDictionary()


@dataclass(eq=False)
class Links:
    """The links of n plants.

    Attributes
    ----------
    sorted : how many plants come parents first; those after them are tied up in loops
    child, parent : (m,) rows at the two ends of each link
    role : (m,) `SEED`, `POLLEN` or `SOURCE`
    odds : (m,) odds of the link, below 1 for candidates
    family : (n,) a number that plants of the same cross, or from the same source, share; each
        founder has its own
    steps : (n,) generations between a plant and the youngest of its parents
    founders : rows of the founders in the book's order
    direction_unknown : (n,) whether it is not known which of two parents bore the seed
    """

    sorted: int
    child: IntArray
    parent: IntArray
    role: NDArray[np.int8]
    odds: FloatArray
    family: IntArray
    steps: IntArray
    founders: IntArray
    direction_unknown: NDArray[np.bool_]

    def __len__(self) -> int:
        return len(self.family)

    @cached_property
    def weights(self) -> Weights:
        """The expected share that each link passes on, for the plants outside loops."""
        free = self.child < self.sorted
        order = np.argsort(self.child[free], kind="stable")
        child, role = self.child[free][order], self.role[free][order]
        starts = np.zeros(self.sorted + 1, np.int64)
        np.cumsum(np.bincount(child, minlength=self.sorted), out=starts[1:])
        share = np.where(role == SOURCE, 1.0, 0.5) * self.odds[free][order]
        return Weights(starts, self.parent[free][order], share)

    @cached_property
    def generation(self) -> IntArray:
        """(n,) generation of every plant, founders 0; −1 for plants tied up in loops."""
        found = np.full(len(self), -1, np.int64)
        found[: self.sorted] = 0
        weights, steps = self.weights, self.steps
        levels = weights.levels
        orphans = levels == 0
        found[: self.sorted][orphans] = steps[: self.sorted][orphans]
        for row, older, _ in weights._by_level:
            np.maximum.at(found, row, found[older])
            rows = row[np.concatenate(([True], row[1:] != row[:-1]))] if len(row) else row
            found[rows] += steps[rows]
        return found

    def founder_shares(self, founders: IntArray) -> FloatArray:
        """Expected share of each of the asked founders in every plant: (n, k), 0 in loops."""
        found = np.zeros((len(self), len(founders)))
        found[founders, np.arange(len(founders))] = 1.0
        found[: self.sorted] = self.weights.gather(found[: self.sorted].copy())
        return found

    def descendants(self, row: int) -> NDArray[np.bool_]:
        """(n,) whether each plant descends from a row."""
        return self._reached(row, self._by_parent)

    def ancestors(self, row: int) -> NDArray[np.bool_]:
        """(n,) whether a row descends from each plant."""
        return self._reached(row, self._by_child)

    @cached_property
    def _by_parent(self) -> tuple[IntArray, IntArray]:
        return _compressed(self.parent, self.child, len(self))

    @cached_property
    def _by_child(self) -> tuple[IntArray, IntArray]:
        return _compressed(self.child, self.parent, len(self))

    def _reached(self, row: int, along: tuple[IntArray, IntArray]) -> NDArray[np.bool_]:
        starts, ends = along
        found = np.zeros(len(self), bool)
        front = np.array([row])
        while len(front):
            first, count = starts[front], starts[front + 1] - starts[front]
            shift = np.repeat(first - np.concatenate(([0], np.cumsum(count)[:-1])), count)
            reached = ends[shift + np.arange(len(shift))]
            front = np.unique(reached[~found[reached]])
            found[front] = True
        return found

    def descendants_of_founders(self) -> IntArray:
        """How many plants descend from each founder, in the order of `founders`."""
        from pedigreeview.network import kernels

        weights, count = self.weights, len(self)
        if weights.compiled and kernels.available() and self.sorted == count:
            from pedigreeview.network.link_kernels import descendants_of_founders

            found: IntArray = descendants_of_founders(weights.starts, weights.older, self.founders)
            return found
        levels = [(row, older) for row, older, _ in weights._by_level]
        tied = self.child >= self.sorted
        child, parent = self.child[tied], self.parent[tied]
        total = np.empty(len(self.founders), np.int64)
        for first in range(0, len(self.founders), 64):
            some = self.founders[first : first + 64]
            below = np.zeros(count, np.uint64)
            own = np.zeros(count, np.uint64)
            own[some] = np.uint64(1) << np.arange(len(some), dtype=np.uint64)
            for row, older in levels:
                np.bitwise_or.at(below, row, below[older] | own[older])
            while len(child):
                before = below[child].copy()
                np.bitwise_or.at(below, child, below[parent] | own[parent])
                if (below[child] == before).all():
                    break
            bits = np.unpackbits(
                below.astype("<u8").view(np.uint8).reshape(count, 8), axis=1, bitorder="little"
            )
            total[first : first + 64] = bits.sum(axis=0)[: len(some)]
        return total

    @cached_property
    def cytoplasm(self) -> IntArray:
        """(n,) row of the founder at the end of each seed-parent line, −1 where it is unknown."""
        line = np.full(len(self), -1, np.int64)
        bears = (self.role == SEED) | (self.role == SOURCE)
        line[self.child[bears]] = self.parent[bears]
        line[self.direction_unknown] = -1
        founder = np.zeros(len(self), bool)
        founder[self.founders] = True
        line[founder] = np.flatnonzero(founder)
        line[self.sorted :] = -1
        # Each step doubles how far a line has been followed.
        while True:
            further = np.where(line >= 0, line[line], -1)
            if (further == line).all():
                break
            line = further
        either = np.flatnonzero(self.direction_unknown[: self.sorted])
        return line if not len(either) else self._with_unknown_direction(line, either)

    def _with_unknown_direction(self, line: IntArray, either: IntArray) -> IntArray:
        """Lines through crosses of unknown direction, known where both sides end alike."""
        starts, parents = self._by_child
        mother = np.full(len(self), -1, np.int64)
        bears = (self.role == SEED) | (self.role == SOURCE)
        mother[self.child[bears]] = self.parent[bears]
        below = np.zeros(len(self), bool)
        below[either] = True
        for row in range(int(either[0]), self.sorted):
            if self.direction_unknown[row]:
                ends = np.unique(line[parents[starts[row] : starts[row + 1]]])
                line[row] = ends[0] if len(ends) == 1 else -1
            elif mother[row] >= 0 and below[mother[row]]:
                line[row] = line[mother[row]]
                below[row] = True
        return line


def _compressed(key: IntArray, value: IntArray, count: int) -> tuple[IntArray, IntArray]:
    starts = np.zeros(count + 1, np.int64)
    np.cumsum(np.bincount(key, minlength=count), out=starts[1:])
    return starts, value[np.argsort(key, kind="stable")]


def links_of(net: Relatives) -> Links:
    """The links of a network; made once for each network."""
    held = _HELD.get(net)
    if held is None:
        held = _from_columns(net) if net._columns is not None else _from_records(net)
        _HELD[net] = held
    return held


def _from_records(net: Relatives) -> Links:
    codes, parents, crosses = net.codes, net._parents, net.book.crosses
    row = {code: at for at, code in enumerate(codes)}
    number = {code: at for at, code in enumerate(crosses)}
    count, made = len(codes), len(number)
    family = np.arange(count) + made + count
    steps = np.zeros(count, np.int64)
    unknown = np.zeros(count, bool)
    ends: list[tuple[int, int, int, float]] = []
    for at, code in enumerate(codes):
        origin = parents[code]
        if origin.raised == "founder":
            continue
        if origin.raised not in _SAME_GENERATION:
            steps[at] = 1 + origin.selfings
        if origin.source:
            source = row[origin.source]
            ends.append((at, source, SOURCE, 1.0))
            family[at] = made + source
            continue
        family[at] = number[origin.cross]
        unknown[at] = not crosses[origin.cross].direction_known
        if origin.seed_parent:
            ends.append((at, row[origin.seed_parent], SEED, 1.0))
        for parent, odds in origin.pollen:
            ends.append((at, row[parent], POLLEN, odds))
    table = np.array(ends, float).reshape(-1, 4)
    founders = np.array([row[code] for code in net.founders], np.int64)
    return Links(
        sorted=len(net._ordered),
        child=table[:, 0].astype(np.int64),
        parent=table[:, 1].astype(np.int64),
        role=table[:, 2].astype(np.int8),
        odds=table[:, 3].copy(),
        family=family,
        steps=steps,
        founders=founders,
        direction_unknown=unknown,
    )


def _from_columns(net: Relatives) -> Links:
    known = net._columns
    assert known is not None
    columns = known._columns
    order = np.concatenate([known._order, _places(columns.plants, net._tied)])
    count = len(order)
    row = np.empty(count, np.int64)
    row[order] = np.arange(count)
    source, seed, pollen = (side[order] for side in (columns.source, known._seed, known._pollen))
    cross = columns.cross[order]
    child, parent, role, odds = [], [], [], []
    opened = _by_rate(net, known) if (pollen[cross >= 0] < 0).any() else None
    for side, part in ((seed, SEED), (pollen, POLLEN), (source, SOURCE)):
        held = side >= 0
        if part == SEED:
            held &= source < 0
        here = np.flatnonzero(held)
        child.append(here)
        parent.append(row[side[here]])
        role.append(np.full(len(here), part, np.int8))
        odds.append(np.ones(len(here)))
    if opened is not None:
        rate = opened[order]
        here = np.flatnonzero(rate > 0)
        child.append(here)
        parent.append(row[seed[here]])
        role.append(np.full(len(here), POLLEN, np.int8))
        odds.append(rate[here])
    founder = (cross < 0) & (source < 0)
    made = len(columns.crosses)
    family = np.arange(count) + made + count
    family[cross >= 0] = cross[cross >= 0]
    family[source >= 0] = made + row[source[source >= 0]]
    steps = 1 + columns.cell("selfings", np.int64, 0)[order]
    steps[founder] = 0
    for at in np.flatnonzero(source >= 0).tolist():
        if columns.cells["raised"][int(order[at])] in _SAME_GENERATION:
            steps[at] = 0
    return Links(
        sorted=len(known._order),
        child=np.concatenate(child),
        parent=np.concatenate(parent),
        role=np.concatenate(role),
        odds=np.concatenate(odds),
        family=family,
        steps=steps,
        founders=row[np.sort(order[founder])],
        direction_unknown=np.zeros(count, bool),
    )


def _places(places: dict[str, int], codes: list[str]) -> IntArray:
    return np.array([places[code] for code in codes], np.int64)


def _by_rate(net: Relatives, known: object) -> FloatArray:
    """(n,) by place in the book: odds that open-pollinated seed came from its own plant."""
    columns = known._columns  # type: ignore[attr-defined]
    seed, pollen = known._seed, known._pollen  # type: ignore[attr-defined]
    found = np.zeros(len(columns))
    opened = np.flatnonzero((columns.cross >= 0) & (pollen < 0) & (seed >= 0))
    rates: dict[str, float] = {}
    crops = columns.cells.get("crop")
    for place in opened.tolist():
        mother = int(seed[place])
        crop = crops[mother] if crops is not None and mother < columns.rows else ""
        if crop not in rates:
            rate = net.book.outcrossing(columns.plant(mother))
            rates[crop] = 0.0 if rate is None else 1.0 - rate
        found[place] = rates[crop]
    return found
