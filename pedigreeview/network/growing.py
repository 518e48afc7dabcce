"""Rows added to arrays whose coefficients are known: the old ones are kept, not computed again.

A book grows by a few plants at a time.  Their coefficients follow from the coancestries of their
parents, which two sweeps over the old rows give; so the cost is that of a look-up, however large
the book is.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

import numpy as np
from numpy.typing import NDArray

from pedigreeview.network.inbreeding import Coefficients, Level, level_of, settle
from pedigreeview.network.origins import Origin, Row
from pedigreeview.network.sweeps import FloatArray, IntArray, Weights

if TYPE_CHECKING:
    from pedigreeview.network.arrays import PedigreeArrays

__all__ = ["extended"]


def extended(arrays: PedigreeArrays, rows: Sequence[Row]) -> PedigreeArrays:
    """New arrays with `rows` added after the old ones; the old arrays are left as they are.

    Rows may have parents among those added before them.  Cost: two sweeps over the old rows for
    each new cross, where the old coefficients have been computed; else nothing is computed.
    """
    for run in _runs(len(arrays), rows):
        arrays = _with_run(arrays, run)
    return arrays


def _runs(before: int, rows: Sequence[Row]) -> list[list[Row]]:
    """Split the rows so that no row has a parent in its own run."""
    runs: list[list[Row]] = []
    start = at = before
    for row in rows:
        youngest = max((parent for parent, _ in row.weights()), default=-1)
        if youngest >= at:
            raise ValueError(f"row {at} comes before its parent {youngest}")
        if not runs or youngest >= start:
            runs.append([])
            start = at
        runs[-1].append(row)
        at += 1
    return runs


def _with_run(arrays: PedigreeArrays, rows: list[Row]) -> PedigreeArrays:
    cls = type(arrays)
    new = cls.from_rows(rows, arrays.double_reduction)
    joined = cls(
        origin=_join(arrays.origin, new.origin),
        seed=_join(arrays.seed, new.seed),
        option_starts=_join(arrays.option_starts, new.option_starts[1:] + len(arrays.options)),
        options=_join(arrays.options, new.options),
        odds=_join(arrays.odds, new.odds),
        selfings=_join(arrays.selfings, new.selfings),
        pool=_join(arrays.pool, new.pool),
        fixation=_join(arrays.fixation, new.fixation),
        ploidy=_join(arrays.ploidy, new.ploidy),
        double_reduction=arrays.double_reduction,
        tick=arrays.tick,
    )
    added = np.arange(len(arrays), len(joined))
    old = arrays.weights
    own = new.weights
    weights = Weights(
        _join(old.starts, own.starts[1:] + len(old.older)),
        _join(old.older, own.older),
        _join(old.weight, own.weight),
    )
    joined.weights = weights
    known = arrays.known_coefficients
    if known is None:
        return joined
    weights.levels = _join(old.levels, _new_levels(weights, old.levels, added))
    found = Coefficients(
        *(
            _join(values, np.zeros(len(rows)))
            for values in (known.inbreeding, known.self_coancestry, known.innovation)
        )
    )
    level = level_of(joined, added)
    settle(joined, level, _sides(arrays, joined, level), found)
    joined.set_coefficients(found)
    return joined


def _new_levels(weights: Weights, levels: IntArray, added: IntArray) -> IntArray:
    found = np.zeros(len(added), np.int64)
    for place, row in enumerate(added.tolist()):
        parents = weights.older[weights.starts[row] : weights.starts[row + 1]]
        if len(parents):
            found[place] = 1 + levels[parents].max()
    return found


def _sides(arrays: PedigreeArrays, joined: PedigreeArrays, level: Level) -> FloatArray:
    """θ(s, q) and θ(q, q) for the seed parent and the mix of candidates of each asked row."""
    found = np.zeros((len(level.asked), 2))
    columns: dict[int, FloatArray] = {}

    def column(row: int) -> FloatArray:
        if row not in columns:
            columns[row] = arrays.coancestry_with(row)
        return columns[row]

    for place, row in enumerate(level.asked.tolist()):
        part = slice(joined.option_starts[row], joined.option_starts[row + 1])
        options, odds = joined.options[part], joined.odds[part]
        crossed = joined.origin[row] == Origin.CROSS
        seed = int(joined.seed[row]) if crossed else -1
        odds = np.where(options == seed, 0.0, odds)
        mix = [
            (parent, share) for parent, share in zip(options.tolist(), odds, strict=True) if share
        ]
        if seed >= 0 and mix:
            of_seed = column(seed)
            found[place, 0] = sum(share * of_seed[parent] for parent, share in mix)
        for parent, share in mix:
            if len(mix) == 1:
                found[place, 1] = share * share * arrays.self_coancestry()[parent]
            else:
                of_parent = column(parent)
                found[place, 1] += share * sum(s * of_parent[other] for other, s in mix)
    return found


def _join(old: NDArray[Any], new: NDArray[Any]) -> NDArray[Any]:
    return np.concatenate((old, new.astype(old.dtype, copy=False)))
