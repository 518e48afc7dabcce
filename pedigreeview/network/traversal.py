"""One walk over the ancestors of each cross, youngest first, for wide and shallow pedigrees."""

from __future__ import annotations

import heapq
from typing import TYPE_CHECKING, Any

import numpy as np

from pedigreeview.network.origins import Origin
from pedigreeview.network.subset import narrowed
from pedigreeview.network.sweeps import FloatArray, IntArray

if TYPE_CHECKING:
    from pedigreeview.network.arrays import PedigreeArrays
    from pedigreeview.network.inbreeding import Coefficients, Level

__all__ = ["Traversal", "traversal_work"]

_STEP = 20.0
"""Cost of one ancestor on a walk, in additions of the moving block (measured, about)."""


def traversal_work(arrays: PedigreeArrays, levels: list[Level]) -> float:
    """Estimated cost of all walks, in additions of the moving block, from a sample of crosses."""
    from pedigreeview.network import kernels

    asked = np.concatenate([level.asked for level in levels])
    if not len(asked):
        return 0.0
    sample = asked[np.linspace(0, len(asked) - 1, 64).astype(np.int64)]
    weights = arrays.weights
    counts = kernels.compiled().count_ancestors(weights.starts, weights.older, sample, 100_000)
    return float(_STEP * len(asked) * counts.mean())


class Traversal:
    """Walks over one set of arrays; D of all levels above must be settled.

    Only rows that are parents can be met on a walk, so the walks go over these alone.
    """

    def __init__(self, arrays: PedigreeArrays, found: Coefficients) -> None:
        self._arrays = arrays
        self._found = found
        weights = arrays.weights
        parent = np.zeros(len(arrays), bool)
        parent[weights.older] = True
        self._parents = np.flatnonzero(parent)
        self._place = np.full(len(arrays) + 1, -1, np.int64)
        self._place[self._parents] = np.arange(len(self._parents))
        inside = narrowed(weights, self._parents)
        level = weights.levels[self._parents]
        self._innovation = np.zeros(len(self._parents))
        self._graph = (inside.starts, inside.older, inside.weight, level, self._innovation)
        self._state = (
            np.full(int(level.max(initial=0)) + 1, -1, np.int64),
            np.full(len(self._parents), -2, np.int64),
            np.zeros((len(self._parents), 2)),
        )

    def advance(self, level: Level) -> None:
        """Take note of D of a level that has been settled."""
        place = self._place[level.rows]
        known = place >= 0
        self._innovation[place[known]] = self._found.innovation[level.rows[known]]

    def sides(self, level: Level) -> FloatArray:
        """θ(s, q) and θ(q, q) for the seed parent and the mix of candidates of each asked row."""
        arrays, asked = self._arrays, level.asked
        found = np.zeros((len(asked), 2))
        if not len(asked):
            return found
        crossed = arrays.origin[asked] == Origin.CROSS
        seed = np.where(crossed, self._place[arrays.seed[asked]], -1)
        first = arrays.option_starts[asked]
        counts = arrays.option_starts[asked + 1] - first
        starts = np.concatenate(([0], np.cumsum(counts)))
        at = np.repeat(first - starts[:-1], counts) + np.arange(starts[-1])
        options, odds = self._place[arrays.options[at]], arrays.odds[at]
        odds = np.where(options == np.repeat(seed, counts), 0.0, odds)
        walk = self._walk
        if arrays.weights.compiled:
            from pedigreeview.network import kernels

            walk = kernels.compiled().by_traversal
        walk(self._graph, seed, starts, options, odds, found, self._state)
        return found

    @staticmethod
    def _walk(
        graph: tuple[IntArray, IntArray, FloatArray, IntArray, FloatArray],
        asked_seed: IntArray,
        starts: IntArray,
        options: IntArray,
        odds: FloatArray,
        found: FloatArray,
        _state: object,
    ) -> None:
        """The plain road of the compiled kernel `by_traversal`."""
        edge_starts, older, weight, _, innovation = graph
        for index, seed in enumerate(asked_seed.tolist()):
            shares: dict[int, list[float]] = {}
            heap: list[int] = []

            def give(
                parent: int, to_seed: float, to_mix: float, shares: Any = shares, heap: Any = heap
            ) -> None:
                if parent not in shares:
                    shares[parent] = [0.0, 0.0]
                    heapq.heappush(heap, -parent)
                shares[parent][0] += to_seed
                shares[parent][1] += to_mix

            if seed >= 0:
                give(seed, 1.0, 0.0)
            for at in range(starts[index], starts[index + 1]):
                give(int(options[at]), 0.0, float(odds[at]))
            while heap:
                row = -heapq.heappop(heap)
                a, b = shares.pop(row)
                found[index, 0] += a * b * innovation[row]
                found[index, 1] += b * b * innovation[row]
                for at in range(edge_starts[row], edge_starts[row + 1]):
                    w = float(weight[at])
                    give(int(older[at]), w * a, w * b)
