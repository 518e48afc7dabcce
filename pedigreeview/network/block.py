"""The moving dense block: coancestries among the rows that are still to be used as parents."""

from __future__ import annotations

from itertools import pairwise
from typing import TYPE_CHECKING, NamedTuple

import numpy as np

from pedigreeview.network.origins import Origin
from pedigreeview.network.sweeps import FloatArray, IntArray

if TYPE_CHECKING:
    from pedigreeview.network.arrays import PedigreeArrays
    from pedigreeview.network.inbreeding import Coefficients, Level

__all__ = ["MovingBlock", "block_size", "block_work"]


def _last_level_used(arrays: PedigreeArrays) -> IntArray:
    """The last level at which each row is a parent; −1 for a row that is none."""
    weights = arrays.weights
    last = np.full(len(arrays), -1, np.int64)
    row = np.repeat(np.arange(len(arrays)), np.diff(weights.starts))
    np.maximum.at(last, weights.older, weights.levels[row])
    return last


def _in_use(arrays: PedigreeArrays, levels: list[Level]) -> IntArray:
    """How many rows stand in the block after each level."""
    last = _last_level_used(arrays)
    used = last >= 0
    change = np.zeros(len(levels) + 1, np.int64)
    np.add.at(change, arrays.weights.levels[used], 1)
    np.add.at(change, last[used], -1)
    return np.cumsum(change)[: len(levels)]


def block_size(arrays: PedigreeArrays, levels: list[Level]) -> int:
    """Rows that the block must hold at once."""
    return int(_in_use(arrays, levels).max(initial=0))


def block_work(arrays: PedigreeArrays, levels: list[Level], size: int) -> float:
    """Estimated additions that moving the block takes."""
    used = arrays.weights.levels[_last_level_used(arrays) >= 0]
    kept = np.bincount(used, minlength=len(levels)).astype(float)
    return float((kept * (2.0 * size + 2.0 * kept)).sum())


class _Sides(NamedTuple):
    """Two weights of each of some rows, by slot of the block; weight 0 where there is none."""

    first: IntArray
    first_weight: FloatArray
    second: IntArray
    second_weight: FloatArray
    more: list[tuple[int, int, float]]
    """(place, slot, weight) beyond two, of uncertain pollen parents."""


class MovingBlock:
    """The block over one set of arrays; asked and advanced level by level."""

    def __init__(self, arrays: PedigreeArrays, levels: list[Level], found: Coefficients) -> None:
        self._arrays = arrays
        self._found = found
        self._last = _last_level_used(arrays)
        self._block = np.zeros((0, 0))
        self._slot = np.full(len(arrays), -1, np.int64)
        self._row_at = np.zeros(0, np.int64)
        self._free: list[int] = []
        self._leaving = self._by_last_level(len(levels))
        self._place = 0

    def _by_last_level(self, count: int) -> list[IntArray]:
        used = np.flatnonzero(self._last >= 0)
        order = used[np.argsort(self._last[used], kind="stable")]
        cuts = np.searchsorted(self._last[order], np.arange(count + 1))
        return [order[a:b] for a, b in pairwise(cuts)]

    def sides(self, level: Level) -> FloatArray:
        """θ(s, q) and θ(q, q) for the seed parent and the mix of candidates of each asked row."""
        arrays, asked = self._arrays, level.asked
        found = np.zeros((len(asked), 2))
        first = arrays.option_starts[asked]
        counts = arrays.option_starts[asked + 1] - first
        seed = np.where(arrays.origin[asked] == Origin.CROSS, arrays.seed[asked], -1)
        single = np.flatnonzero(counts == 1)
        parent, odds = arrays.options[first[single]], arrays.odds[first[single]]
        odds = np.where(parent == seed[single], 0.0, odds)
        at_seed = self._slot[seed[single]]
        known = seed[single] >= 0
        between = self._block[np.where(known, at_seed, 0), self._slot[parent]]
        found[single, 0] = np.where(known, odds * between, 0.0)
        found[single, 1] = odds * odds * self._found.self_coancestry[parent]
        for place in np.flatnonzero(counts > 1).tolist():
            part = slice(first[place], first[place] + counts[place])
            share = np.where(arrays.options[part] == seed[place], 0.0, arrays.odds[part])
            slots = self._slot[arrays.options[part]]
            found[place, 1] = share @ self._block[np.ix_(slots, slots)] @ share
            if seed[place] >= 0:
                found[place, 0] = self._block[self._slot[seed[place]], slots] @ share
        return found

    def advance(self, level: Level) -> None:
        """Take the level's rows that are parents later into the block, let the others go."""
        kept = level.rows[self._last[level.rows] > self._place]
        leaving = self._leaving[self._place]
        self._place += 1
        staying = self._held(leaving)
        if len(kept) > 16 and 4 * len(kept) > len(staying):
            self._rebuild(kept, staying)
            return
        lines = self._lines(kept)
        new = self._among(kept, lines)
        for row in leaving.tolist():
            self._free.append(int(self._slot[row]))
            self._slot[row] = -1
        if not len(kept):
            return
        while len(self._free) < len(kept):
            self._grow()
            lines = np.pad(lines, ((0, 0), (0, len(self._block) - lines.shape[1])))
        slots = np.array([self._free.pop() for _ in range(len(kept))], np.int64)
        self._slot[kept] = slots
        self._row_at[slots] = kept
        self._block[slots, :] = lines
        self._block[np.ix_(staying, slots)] = lines[:, staying].T
        self._block[np.ix_(slots, slots)] = new

    def _grow(self) -> None:
        size = len(self._block)
        more = max(16, size // 2)
        self._block = np.pad(self._block, (0, more))
        self._row_at = np.pad(self._row_at, (0, more), constant_values=-1)
        self._free.extend(range(size + more - 1, size - 1, -1))

    def _held(self, leaving: IntArray) -> IntArray:
        """Slots that stay in use."""
        held = np.ones(len(self._block), bool)
        held[self._free] = False
        held[self._slot[leaving]] = False
        return np.flatnonzero(held)

    def _rebuild(self, kept: IntArray, staying: IntArray) -> None:
        """Lay the block anew, without room for those that leave: many come, few stay."""
        size = len(staying) + len(kept)
        block = np.empty((size, size))
        stay = len(staying)
        block[:stay, :stay] = self._block[np.ix_(staying, staying)]
        sides = self._sides_of(kept)
        if self._arrays.weights.compiled and not sides.more:
            from pedigreeview.network import kernels

            kernels.compiled().new_rows(
                self._block,
                sides.first,
                sides.second,
                sides.first_weight,
                sides.second_weight,
                staying,
                block[stay:],
            )
        else:
            lines = self._lines(kept)
            block[stay:, :stay] = lines[:, staying]
            block[stay:, stay:] = self._among(kept, lines)
        block[:stay, stay:] = block[stay:, :stay].T
        at = np.arange(stay, size)
        block[at, at] = self._found.self_coancestry[kept]
        rows = np.concatenate((self._row_at[staying], kept))
        self._slot[self._row_at[self._row_at >= 0]] = -1
        self._slot[rows] = np.arange(size)
        self._row_at = rows
        self._block = block
        self._free = []

    def _sides_of(self, kept: IntArray) -> _Sides:
        """The first two weights of each row, by slot, and which rows have more."""
        weights = self._arrays.weights
        start = weights.starts[kept]
        count = weights.starts[kept + 1] - start
        slots = np.zeros((2, len(kept)), np.int64)
        shares = np.zeros((2, len(kept)))
        for step in (0, 1):
            here = count > step
            at = start[here] + step
            slots[step, here] = self._slot[weights.older[at]]
            shares[step, here] = weights.weight[at]
        more = [
            (place, int(self._slot[weights.older[at]]), float(weights.weight[at]))
            for place in np.flatnonzero(count > 2).tolist()
            for at in range(start[place] + 2, start[place] + count[place])
        ]
        return _Sides(slots[0], shares[0], slots[1], shares[1], more)

    def _lines(self, kept: IntArray) -> FloatArray:
        """Coancestries of the kept rows with every row of the block."""
        if not len(self._block):
            return np.zeros((len(kept), 0))
        sides = self._sides_of(kept)
        lines: FloatArray = sides.first_weight[:, None] * self._block[sides.first]
        lines += sides.second_weight[:, None] * self._block[sides.second]
        for place, slot, weight in sides.more:
            lines[place] += weight * self._block[slot]
        return lines

    def _among(self, kept: IntArray, lines: FloatArray) -> FloatArray:
        """Coancestries of the kept rows with each other."""
        if not lines.shape[1]:
            return np.diag(self._found.self_coancestry[kept])
        sides = self._sides_of(kept)
        found: FloatArray = lines[:, sides.first] * sides.first_weight
        found += lines[:, sides.second] * sides.second_weight
        for place, slot, weight in sides.more:
            found[:, place] += weight * lines[:, slot]
        np.fill_diagonal(found, self._found.self_coancestry[kept])
        return found
