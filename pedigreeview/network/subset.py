"""Coancestries among a set of rows, over the ancestors of the set alone."""

from __future__ import annotations

import numpy as np

from pedigreeview.network.sweeps import FloatArray, IntArray, Weights

__all__ = ["ancestors_of", "coancestry_between", "narrowed"]

_COLUMN_MEMORY = 4 * 2**20
"""Bytes of working columns at a time: few enough to stay near the processor."""


def ancestors_of(weights: Weights, rows: IntArray) -> IntArray:
    """The asked rows and all rows behind them, oldest first."""
    wanted = np.zeros(len(weights), bool)
    wanted[rows] = True
    ahead = np.unique(rows)
    while len(ahead):
        counts = weights.starts[ahead + 1] - weights.starts[ahead]
        offsets = np.repeat(weights.starts[ahead] - np.cumsum(counts) + counts, counts)
        parents = np.unique(weights.older[offsets + np.arange(counts.sum())])
        ahead = parents[~wanted[parents]]
        wanted[ahead] = True
    return np.flatnonzero(wanted)


def narrowed(weights: Weights, rows: IntArray) -> Weights:
    """The weights of a set of rows that holds all their ancestors, renumbered in order."""
    place = np.full(len(weights), -1, np.int64)
    place[rows] = np.arange(len(rows))
    counts = weights.starts[rows + 1] - weights.starts[rows]
    starts = np.zeros(len(rows) + 1, np.int64)
    np.cumsum(counts, out=starts[1:])
    at = np.repeat(weights.starts[rows] - starts[:-1], counts) + np.arange(starts[-1])
    return Weights(starts, place[weights.older[at]], weights.weight[at], weights.compiled)


def coancestry_between(
    weights: Weights, innovation: FloatArray, rows: IntArray, columns: IntArray
) -> FloatArray:
    """Coancestry of each of `rows` with each of `columns`: (len(rows), len(columns))."""
    among = ancestors_of(weights, np.concatenate((rows, columns)))
    inside = narrowed(weights, among)
    d = innovation[among]
    at_rows = np.searchsorted(among, rows)
    at_columns = np.searchsorted(among, columns)
    found = np.empty((len(rows), len(columns)))
    step = max(1, int(_COLUMN_MEMORY / 8 / max(1, len(among))))
    for start in range(0, len(columns), step):
        part = at_columns[start : start + step]
        values = inside.shares(part)
        values *= d[:, None]
        found[:, start : start + step] = inside.gather(values)[at_rows]
    return found
