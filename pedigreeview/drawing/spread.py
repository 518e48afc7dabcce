"""Places along one layer: as close to where each item wants to be as its neighbours allow.

Exact least squares by pooling of adjacent violators, on x less the running separation; linear time
in the number of items, never an overlap.  Knows no Qt.
"""

from __future__ import annotations

import itertools
from collections.abc import Iterable, Sequence

__all__ = ["running", "spread", "spread_over"]


def running(apart: Iterable[float]) -> list[float]:
    """The least distances of neighbours as distances from the first."""
    return [0.0, *itertools.accumulate(apart)]


def spread(
    wanted: Sequence[float], weights: Sequence[float], apart: Sequence[float]
) -> list[float]:
    """Places nearest to those wanted, in the given order, at least `apart` from one to the next.

    wanted, weights : n numbers; weights above 0
    apart : n - 1 least distances between neighbours
    """
    return spread_over(wanted, weights, running(apart))


def spread_over(
    wanted: Sequence[float], weights: Sequence[float], run: Sequence[float]
) -> list[float]:
    """`spread` with the least distances as `running` gives them."""
    pools: list[tuple[float, float, int]] = []
    for value, weight, shift in zip(wanted, weights, run, strict=False):
        mean, total, count = value - shift, weight, 1
        while pools and pools[-1][0] > mean:
            other, more, held = pools.pop()
            mean = (mean * total + other * more) / (total + more)
            total += more
            count += held
        pools.append((mean, total, count))
    flat: list[float] = []
    for mean, _, count in pools:
        flat.extend([mean] * count)
    return [value + shift for value, shift in zip(flat, run, strict=False)]
