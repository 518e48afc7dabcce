"""The coancestry of two plants split over the plants where their lines first meet (Wright 1922).

Start from the pair, always replace the younger of the two by its parents with their weights, stop
where both are the same plant a: a contributes the weight that arrives at (a, a) times θ(a, a).  The
contributions add up to θ exactly.  The weight that arrives is found without walking the paths: the
shares T of both plants in a give the weight of all pairs of paths to a, and those that met before
in some b are taken off,

    m(a) = T(i, a) T(j, a) − Σ_b m(b) T(b, a)²,

the same with counts of paths in place of weights for how many pairs of paths there are.  Paths are
walked only to list them, up to a limit.

Where the ancestors are many, the weights are passed on pair by pair instead, in doubles: the
youngest row that is still waiting hands its pairs to its parents, and what is then paired with
itself has met.  Only rows that are waiting take room, so deep pedigrees stay cheap.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

import numpy as np

from pedigreeview.network.exact import as_fraction

__all__ = ["AncestorPath", "Lines", "MeetingRow"]


Older = Callable[[int], tuple[tuple[int, float], ...]]
"""The (older row, weight) pairs of a row."""

_MOST_IN_FRACTIONS = 250
_MOST_STEPS = 5_000
"""Walking stops here: pairs of lines that meet elsewhere can be far more than those listed."""


@dataclass(frozen=True, slots=True)
class AncestorPath:
    """One way from a over the meeting plant to b.

    through : codes from a to b; unrecorded plants are shown by their pool, or left out where they
        only pass on what one of their candidates gave
    links : steps between the codes shown
    weight, weight_exact : product of all weights along both lines; exact None with decimal odds
    """

    through: tuple[str, ...]
    links: int
    weight: float
    weight_exact: Fraction | None

    def as_json(self) -> dict[str, Any]:
        """One entry of `paths` in `relate --json`."""
        exact = self.weight_exact
        return {
            "through": list(self.through),
            "links": self.links,
            "weight": self.weight,
            "weight_exact": None if exact is None else str(exact),
        }


@dataclass(frozen=True, slots=True)
class MeetingRow:
    """A row where the two lines first meet: the weight that arrives, and by how many paths.

    `weight` is a fraction where the ancestors are few, else a float; a number of paths past 2**53
    is rounded then.
    """

    row: int
    weight: Fraction | float
    paths: int


def _closure(older: Older, starts: tuple[int, ...]) -> list[int]:
    found: set[int] = set()
    ahead = list(starts)
    while ahead:
        index = ahead.pop()
        if index not in found:
            found.add(index)
            ahead.extend(parent for parent, _ in older(index))
    return sorted(found, reverse=True)


class Lines:
    """The ancestors of two rows, where their lines meet, and the paths between.

    Parameters
    ----------
    older : gives the (older row, weight) pairs of a row
    a, b : the two rows; the same row twice meets itself at once
    tick : called now and then; may raise `Cancelled`
    """

    def __init__(
        self, older: Older, a: int, b: int, tick: Callable[[], None] | None = None
    ) -> None:
        known: dict[int, tuple[tuple[int, float], ...]] = {}

        def once(row: int) -> tuple[tuple[int, float], ...]:
            if row not in known:
                known[row] = older(row)
            return known[row]

        self._older = once
        self._a, self._b = a, b
        self._tick = tick or (lambda: None)
        self.ancestors = _closure(once, (a, b))
        """Both rows and all behind them, youngest first."""

    def meetings(self) -> list[MeetingRow]:
        """The rows where the two lines first meet, youngest first; their weights make up θ."""
        if len(self.ancestors) <= _MOST_IN_FRACTIONS:
            return self._meetings_in_fractions()
        return self._meetings_in_doubles()

    def _meetings_in_fractions(self) -> list[MeetingRow]:
        parents = {
            index: [(parent, as_fraction(weight)) for parent, weight in self._older(index)]
            for index in self.ancestors
        }
        from_a, count_a = _shares(self._a, self.ancestors, parents)
        from_b, count_b = _shares(self._b, self.ancestors, parents)
        common = [index for index in self.ancestors if index in from_a and index in from_b]
        left = {index: from_a[index] * from_b[index] for index in common}
        left_paths = {index: count_a[index] * count_b[index] for index in common}
        found = []
        for place, index in enumerate(common):
            arriving, paths = left[index], left_paths[index]
            if paths == 0:
                continue
            found.append(MeetingRow(index, arriving, paths))
            below, count_below = _shares(index, common[place:], parents)
            for behind, share in below.items():
                if behind != index:
                    left[behind] -= arriving * share * share
                    left_paths[behind] -= paths * count_below[behind] ** 2
        return found

    def _meetings_in_doubles(self) -> list[MeetingRow]:
        pairs = _WaitingPairs(self._a, self._b)
        found = []
        for step, row in enumerate(self.ancestors):
            if step % 256 == 0:
                self._tick()
            weight, paths = pairs.hand_on(row, self._older(row))
            if weight > 0:
                found.append(MeetingRow(row, weight, int(paths)))
        return found

    def paths_to(self, meeting: int, limit: int) -> Iterator[tuple[list[int], Fraction]]:
        """Up to `limit` pairs of paths from a and b that first meet in `meeting`.

        Yields the rows from a over the meeting row to b, and the product of the weights.  Walking
        stops after so many steps, because pairs of lines that meet elsewhere can be far more.
        """
        if limit < 1:
            return
        reaches: dict[int, bool] = {}
        for index in reversed(self.ancestors):
            reaches[index] = index == meeting or any(
                reaches[parent] for parent, _ in self._older(index)
            )
        if not (reaches[self._a] and reaches[self._b]):
            return
        given, tried = 0, 0
        stack: list[tuple[list[int], list[int], Fraction]] = [([self._a], [self._b], Fraction(1))]
        while stack and given < limit and tried < _MOST_STEPS:
            tried += 1
            left, right, weight = stack.pop()
            here, there = left[-1], right[-1]
            if here == there:
                if here == meeting:
                    given += 1
                    yield [*left, *reversed(right[:-1])], weight
                continue
            on_left = here > there
            other = there if on_left else here
            steps = []
            for parent, share in self._older(here if on_left else there):
                # A line that has passed the meeting row, or met the other before it, is no use.
                early = parent == other and parent != meeting
                if not reaches[parent] or parent < meeting or early:
                    continue
                on = weight * as_fraction(share)
                steps.append(
                    ([*left, parent], right, on) if on_left else (left, [*right, parent], on)
                )
            stack.extend(reversed(steps))


def _shares(
    start: int, youngest_first: list[int], parents: Mapping[int, list[tuple[int, Fraction]]]
) -> tuple[dict[int, Fraction], dict[int, int]]:
    """Weight and number of all paths from `start` up to each of its ancestors."""
    weight = {start: Fraction(1)}
    count = {start: 1}
    for index in youngest_first:
        arrived = weight.get(index)
        if arrived is None:
            continue
        for parent, share in parents[index]:
            weight[parent] = weight.get(parent, Fraction(0)) + arrived * share
            count[parent] = count.get(parent, 0) + count[index]
    return weight, count


class _WaitingPairs:
    """Weight and number of paths of every pair of rows that wait for their turn."""

    def __init__(self, a: int, b: int) -> None:
        self._mass = np.zeros((2, 64, 64))
        self._free = list(range(63, -1, -1))
        self._slot: dict[int, int] = {}
        at_a, at_b = self._place(a), self._place(b)
        self._mass[:, at_a, at_b] = self._mass[:, at_b, at_a] = 1.0

    def _place(self, row: int) -> int:
        if row not in self._slot:
            if not self._free:
                size = self._mass.shape[1]
                self._mass = np.pad(self._mass, ((0, 0), (0, size), (0, size)))
                self._free = list(range(2 * size - 1, size - 1, -1))
            self._slot[row] = self._free.pop()
        return self._slot[row]

    def hand_on(self, row: int, older: tuple[tuple[int, float], ...]) -> tuple[float, float]:
        """Take the youngest row out: what has met in it, the rest goes to its parents."""
        if row not in self._slot:
            return 0.0, 0.0
        parents = [(self._place(parent), weight) for parent, weight in older]
        at = self._slot.pop(row)
        mass = self._mass
        met, paths = float(mass[0, at, at]), float(mass[1, at, at])
        line = mass[:, at, :].copy()
        line[:, at] = 0.0
        mass[:, at, :] = 0.0
        mass[:, :, at] = 0.0
        for place, weight in parents:
            share = line * np.array([[weight], [1.0]])
            mass[:, place, :] += share
            mass[:, :, place] += share
            # The pair of the parent with itself has been counted from both sides.
            mass[:, place, place] -= share[:, place]
        self._free.append(at)
        return met, paths
