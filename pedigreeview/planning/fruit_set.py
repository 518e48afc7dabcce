"""Fruit set of the two directions of a cross: the difference of takes, what flowers can show."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from math import sqrt

import numpy as np
from numpy.typing import NDArray

from pedigreeview.planning.differences import p_words, verdict_words
from pedigreeview.planning.takes import compare_takes

__all__ = [
    "FruitSetTest",
    "detectable_take_difference",
    "flowers_a_side",
    "fruit_set_test",
    "take_power",
]

_LEVEL = 0.05
_POWER = 0.8
_MOST_FLOWERS = 150
_NOT_INDEPENDENT = "Flowers of one plant on one day are not independent, so p is at best a guide."


@dataclass(frozen=True, slots=True)
class FruitSetTest:
    """Takes of two directions.

    difference : take of the first less that of the second; low, high : 95% interval of it
    p : Fisher's exact test, two-sided; verdict : as `takes.compare_takes`
    detectable : smallest difference that so many flowers show with 80% power, None if none
    """

    fruits: tuple[int, int]
    flowers: tuple[int, int]
    difference: float
    low: float
    high: float
    p: float
    verdict: str
    detectable: float | None

    def sentences(self, names: tuple[str, str] = ("the first", "the second")) -> list[str]:
        """Effect, p, what so few flowers can show, and the warning."""
        (a, b), (m, n) = self.fruits, self.flowers
        found = [
            f"Fruit set: {a} of {m} flowers with {names[0]} as the seed parent ({a / m:.0%}), "
            f"{b} of {n} with {names[1]} ({b / n:.0%}); difference {100 * self.difference:+.0f} "
            f"points, likely between {100 * self.low:+.0f} and {100 * self.high:+.0f}.",
            f"{verdict_words(self.verdict)} (exact p {p_words(self.p)}).",
        ]
        if self.verdict != "differs":
            found.append(_can_show_take(self.flowers, self.detectable))
        return [*found, _NOT_INDEPENDENT]


def _can_show_take(flowers: tuple[int, int], detectable: float | None) -> str:
    m, n = flowers
    each = f"{m} flowers each way" if m == n else f"{m} and {n} flowers"
    if detectable is None:
        return f"{each} can show no difference at all with 80% power."
    return f"{each} can only show a difference larger than {100 * detectable:.0f} points."


def fruit_set_test(fruits: tuple[int, int], flowers: tuple[int, int]) -> FruitSetTest | None:
    """Compare the takes of two directions; None where one has no flower.

    The interval is Newcombe's, from Wilson's interval of each take (from memory).

    Raises
    ------
    ValueError : more fruits than flowers
    """
    found = compare_takes(fruits, flowers)
    if found is None:
        return None
    (p, q) = found.takes
    (p_low, p_high), (q_low, q_high) = (_wilson(k, n) for k, n in zip(fruits, flowers, strict=True))
    gap = p - q
    low = gap - sqrt((p - p_low) ** 2 + (q_high - q) ** 2)
    high = gap + sqrt((p_high - p) ** 2 + (q - q_low) ** 2)
    base = sum(fruits) / sum(flowers)
    detectable = detectable_take_difference(flowers, base)
    return FruitSetTest(fruits, flowers, gap, low, high, found.p, found.verdict, detectable)


def _wilson(k: int, n: int) -> tuple[float, float]:
    z = 1.959963984540054
    share = k / n
    middle = (share + z * z / (2 * n)) / (1 + z * z / n)
    half = z * sqrt(share * (1 - share) / n + z * z / (4 * n * n)) / (1 + z * z / n)
    return middle - half, middle + half


@lru_cache(maxsize=64)
def _rejects(m: int, n: int) -> NDArray[np.bool_]:
    """(m + 1, n + 1): whether Fisher's exact test rejects for so many fruits of m and n flowers."""
    from scipy.stats import hypergeom

    found = np.zeros((m + 1, n + 1), bool)
    for took in range(m + n + 1):
        k = np.arange(max(0, took - n), min(m, took) + 1)
        pmf = hypergeom.pmf(k, m + n, m, took)
        p = np.array([pmf[pmf <= own * (1 + 1e-7)].sum() for own in pmf])
        found[k, took - k] = p <= _LEVEL
    return found


def take_power(takes: tuple[float, float], flowers: tuple[int, int]) -> float:
    """Chance that Fisher's exact test at 5% shows a difference of two takes (exact)."""
    from scipy.stats import binom

    m, n = flowers
    of_m = binom.pmf(np.arange(m + 1), m, takes[0])
    of_n = binom.pmf(np.arange(n + 1), n, takes[1])
    return float(of_m @ _rejects(m, n) @ of_n)


def flowers_a_side(takes: tuple[float, float], *, power: float = _POWER) -> int | None:
    """Flowers each way that tell two takes apart by the exact test; None beyond 150.

    Check: 60% from 30% takes 48 (42 by the normal formula).
    """
    return next(
        (n for n in range(2, _MOST_FLOWERS + 1) if take_power(takes, (n, n)) >= power), None
    )


def detectable_take_difference(
    flowers: tuple[int, int], base: float, *, power: float = _POWER
) -> float | None:
    """Smallest difference of takes, spread evenly around `base`, that so many flowers show.

    To the nearest hundredth above; moved inward where a take would leave 0 to 1.  None where even 0
    against 1 is not shown.  Exact to 150 flowers a side, beyond that by the normal formula.
    """
    for step in range(1, 101):
        gap = step / 100
        low = min(max(0.0, base - gap / 2), 1 - gap)
        takes = (low, low + gap)
        if max(flowers) > _MOST_FLOWERS:
            enough = _normal_power(takes, flowers) >= power
        else:
            # The larger take may lie on either side; the harder case counts.
            enough = min(take_power(takes, flowers), take_power(takes[::-1], flowers)) >= power
        if enough:
            return gap
    return None


def _normal_power(takes: tuple[float, float], flowers: tuple[int, int]) -> float:
    from scipy.stats import norm

    error = sqrt(sum(p * (1 - p) / n for p, n in zip(takes, flowers, strict=True)))
    return float(norm.sf(1.96 - abs(takes[0] - takes[1]) / error)) if error else 1.0
