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

WIDE = 1_500
COMPILED_FROM = 20_000
"""Rows from which compiled kernels are worth the wait for their first loading."""


class Weights:
    """The weights W of all rows over older rows, in compressed rows.

    Parameters
    ----------
    starts : (n + 1,) where the weights of each row begin
    older : the older row of each weight
    weight : the weights; a pair may stand twice and then adds up
    compiled : whether sweeps run compiled; None: where there are rows enough
    """

    def __init__(
        self,
        starts: IntArray,
        older: IntArray,
        weight: FloatArray,
        compiled: bool | None = None,
    ) -> None:
        self.starts = starts
        self.older = older
        self.weight = weight
        self._compiled = compiled

    def __len__(self) -> int:
        return len(self.starts) - 1

    @property
    def compiled(self) -> bool:
        """Whether sweeps over these rows run compiled."""
        if self._compiled is not None:
            return self._compiled
        from pedigreeview.network import kernels

        return len(self) >= COMPILED_FROM and kernels.available()

    def compile_if_wide(self, width: int) -> None:
        """Run compiled even below the usual size where so many rows are in use at once."""
        from pedigreeview.network import kernels

        if self._compiled is None and width > WIDE and kernels.available():
            self._compiled = True

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

    @cached_property
    def _halves(self) -> tuple[NDArray[np.int32], NDArray[np.int32]] | None:
        """The two older rows of every row, −1 for none, where each gives it one half.

        Where one older row gives all, it stands twice.  None where other weights occur.
        """
        counts = np.diff(self.starts)
        if counts.max(initial=0) > 2:
            return None
        first = np.full(len(self), -1, np.int32)
        second = np.full(len(self), -1, np.int32)
        one, two = np.flatnonzero(counts > 0), np.flatnonzero(counts == 2)
        at_one, at_two = self.starts[one], self.starts[two] + 1
        first[one], second[two] = self.older[at_one], self.older[at_two]
        weight = self.weight[at_one]
        whole = (weight == 1.0) & (counts[one] == 1)
        second[one[whole]] = first[one[whole]]
        halves = (weight == 0.5).sum() + whole.sum() == len(one)
        return (first, second) if halves and (self.weight[at_two] == 0.5).all() else None

    def shares(self, rows: IntArray) -> FloatArray:
        """T of the asked rows: (n, k), column j the share of rows[j] that comes from every row."""
        found = np.zeros((len(self), len(rows)))
        found[rows, np.arange(len(rows))] = 1.0
        if self.compiled:
            from pedigreeview.network import kernels

            halves = self._halves if len(rows) == 1 else None
            if halves is not None:
                kernels.compiled().halves_up(*halves, int(rows[0]), found[:, 0])
            else:
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

            halves = self._halves if values.shape[1] == 1 else None
            if halves is not None:
                kernels.compiled().halves_down(*halves, values[:, 0])
            else:
                kernels.compiled().sweep_down(self.starts, self.older, self.weight, values)
            return values
        for row, older, weight in self._by_level:
            np.add.at(values, row, weight[:, None] * values[older])
        return values
