"""Sweeps over the pedigree: shares of alleles upwards, coancestries downwards.

Rows are swept level by level (a level is the longest way up to a founder), so that NumPy does the
rows of a level at once.  For large pedigrees the same sweeps run compiled (`kernels`).
"""

from __future__ import annotations

from functools import cached_property
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

__all__ = ["FloatArray", "IntArray", "Weights"]

FloatArray = NDArray[np.float64]
IntArray = NDArray[np.int64]

COMPILED_FROM = 20_000
"""Rows from which compiled kernels are worth the wait for their first loading."""


class Weights:
    """The weights W of all rows over older rows, in compressed rows.

    Parameters
    ----------
    starts : (n + 1,) where the weights of each row begin
    older : the older row of each weight
    weight : the weights; a pair may stand twice and then adds up
    """

    def __init__(self, starts: IntArray, older: IntArray, weight: FloatArray) -> None:
        self.starts = starts
        self.older = older
        self.weight = weight

    def __len__(self) -> int:
        return len(self.starts) - 1

    @property
    def compiled(self) -> bool:
        """Whether sweeps over this many rows run compiled."""
        from pedigreeview.network import kernels

        return len(self) >= COMPILED_FROM and kernels.available()

    @cached_property
    def levels(self) -> IntArray:
        """(n,) longest number of steps up to a row without older rows."""
        if self.compiled:
            from pedigreeview.network import kernels

            found: IntArray = kernels.compiled().levels(self.starts, self.older)
            return found
        level = [0] * len(self)
        older = self.older.tolist()
        starts = self.starts.tolist()
        for row, (first, last) in enumerate(pairwise(starts)):
            if first < last:
                level[row] = 1 + max(level[parent] for parent in older[first:last])
        return np.array(level, dtype=np.int64)

    @cached_property
    def _by_level(self) -> list[tuple[IntArray, IntArray, FloatArray]]:
        """For each level but the first the (row, older row, weight) triples of its rows."""
        row = np.repeat(np.arange(len(self)), np.diff(self.starts))
        level = self.levels[row]
        order = np.argsort(level, kind="stable")
        last = int(self.levels.max(initial=0))
        cuts = np.searchsorted(level[order], np.arange(1, last + 2))
        return [
            (row[part], self.older[part], self.weight[part])
            for part in (order[a:b] for a, b in pairwise(cuts))
        ]

    def shares(self, rows: IntArray) -> FloatArray:
        """T of the asked rows: (n, k), column j the share of rows[j] that comes from every row."""
        found = np.zeros((len(self), len(rows)))
        found[rows, np.arange(len(rows))] = 1.0
        if self.compiled:
            from pedigreeview.network import kernels

            kernels.compiled().sweep_up(self.starts, self.older, self.weight, found)
            return found
        for row, older, weight in reversed(self._by_level):
            np.add.at(found, older, weight[:, None] * found[row])
        return found

    def gather(self, values: FloatArray) -> FloatArray:
        """T · values: each row gets its own value and the weighted values of its older rows.

        `values` is (n, k) and is overwritten with the result.
        """
        if self.compiled:
            from pedigreeview.network import kernels

            kernels.compiled().sweep_down(self.starts, self.older, self.weight, values)
            return values
        for row, older, weight in self._by_level:
            np.add.at(values, row, weight[:, None] * values[older])
        return values
