"""Places along one layer: as close to where each item wants to be as its neighbours allow.

Exact least squares by pooling of adjacent violators, on x less the running separation; linear time
in the number of items, never an overlap.  Knows no Qt.
"""

from __future__ import annotations

from collections.abc import Sequence

__all__ = ["spread"]


def spread(
    wanted: Sequence[float], weights: Sequence[float], apart: Sequence[float]
) -> list[float]:
    """Places nearest to those wanted, in the given order, at least `apart` from one to the next.

    wanted, weights : n numbers; weights above 0
    apart : n - 1 least distances between neighbours
    """
    run = [0.0]
    for distance in apart:
        run.append(run[-1] + distance)
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
