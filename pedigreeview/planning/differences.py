"""Differences between two groups of plants or fruits: means of counts and measures, categories.

The effect comes first, with an interval, and p second; each result says how large a difference so
few can show at all.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import combinations
from math import comb, inf, sqrt
from typing import Any

import numpy as np
from numpy.typing import NDArray

__all__ = [
    "MeansTest",
    "SharesTest",
    "detectable_mean_difference",
    "means_test",
    "p_words",
    "permutation_p",
    "plants_a_side",
    "shares_test",
    "verdict_words",
]

Numbers = Sequence[float] | NDArray[Any]

_LEVEL = 0.05
_POWER = 0.8
_MOST_WAYS = 50_000
_DRAWS = 50_000
_SMALL = 8
_FEW_PLANTS = 42
"""Plants a side that tell a share of 60% from one of 30% at 80% power (normal formula)."""


def p_words(p: float) -> str:
    """A p as a person reads it."""
    return "below 0.0001" if p < 1e-4 else f"{p:.2g}"


def verdict_words(verdict: str) -> str:
    """A verdict about two directions as the start of a sentence."""
    return {"differs": "The two directions differ", "too few to tell": "Too few to tell"}.get(
        verdict, "No difference is shown"
    )


def _verdict(p: float | None, adjusted: float | None, numbers: Iterable[int], few: int) -> str:
    """What two groups show by p, or by the adjusted p; fewer than `few` cannot show that little."""
    p = p if adjusted is None else adjusted
    if p is None:
        return "too few to tell"
    if p < _LEVEL:
        return "differs"
    return "too few to tell" if min(numbers) < few else "no difference shown"


def _after_holm(p: float | None, adjusted: float | None) -> str:
    """The adjusted p as it stands behind p; '' where it is the same."""
    if adjusted is None or adjusted == p:
        return ""
    return f", {p_words(adjusted)} after Holm's correction"


@dataclass(frozen=True, slots=True)
class MeansTest:
    """Means of two groups of counts or measures.

    means, sds, numbers : of each group; an sd is None for a single value
    difference : mean of the first less that of the second
    low, high : 95% interval by Welch, None where a group has one value or nothing varies
    p : by `method` ('unequal-variance t' or 'permutation'), None where no test is possible
    detectable : smallest difference that so few show with 80% power; None without a spread
    things : what was counted or measured: plants or fruits
    """

    what: str
    unit: str
    means: tuple[float, float]
    sds: tuple[float | None, float | None]
    numbers: tuple[int, int]
    difference: float
    low: float | None
    high: float | None
    p: float | None
    method: str
    detectable: float | None
    p_adjusted: float | None = None
    things: str = "plants"

    @property
    def verdict(self) -> str:
        """'differs', 'no difference shown' or 'too few to tell' (also where nothing is tested)."""
        return _verdict(self.p, self.p_adjusted, self.numbers, plants_a_side(1.0))

    def sentences(self, lead: str = "") -> list[str]:
        """Effect first, p second, then what so few can show; `lead` stands before the trait."""
        unit = f" {self.unit}" if self.unit else ""
        (a, b), (m, n) = self.means, self.numbers
        said = f"{_first_up(lead + self.what)}: mean {a:.4g} (n {m}) and {b:.4g} (n {n}){unit}; "
        said += f"difference {self.difference:+.3g}{unit}"
        if self.low is not None and self.high is not None:
            said += f", likely between {self.low:+.3g} and {self.high:+.3g}"
        found = [f"{said}."]
        if self.p is None:
            return [*found, "Too few to tell: a test needs two values or more on each side."]
        adjusted = _after_holm(self.p, self.p_adjusted)
        found.append(
            f"{verdict_words(self.verdict)} ({self.method}, p {p_words(self.p)}{adjusted})."
        )
        if self.verdict != "differs" and self.detectable is not None:
            found.append(
                f"{m} and {n} {self.things} can only show a difference larger than about "
                f"{self.detectable:.2g}{unit}."
            )
        return found


def _first_up(text: str) -> str:
    return text[:1].upper() + text[1:]


def means_test(
    first: Sequence[float],
    second: Sequence[float],
    *,
    what: str = "",
    unit: str = "",
    things: str = "plants",
    seed: int = 0,
) -> MeansTest:
    """Compare two groups.

    Both with 8 values or more: t with unequal variances (Welch); fewer, or nothing that varies in
    one group: permutation of the values between the groups, exact within 50,000 ways, else drawn.

    Raises
    ------
    ValueError : an empty group
    """
    a, b = np.asarray(first, float), np.asarray(second, float)
    if not len(a) or not len(b):
        raise ValueError("each side needs a value")
    numbers = (len(a), len(b))
    means = (float(a.mean()), float(b.mean()))
    sds = (_sd(a), _sd(b))
    gap = means[0] - means[1]
    low = high = p = detectable = None
    method = "no test"
    if sds[0] is not None and sds[1] is not None:
        low, high, welch = _welch(a, b)
        if min(numbers) >= _SMALL and min(sds[0], sds[1]) > 0:
            method, p = "unequal-variance t", welch
        else:
            method, p = "permutation", permutation_p(a, b, seed=seed)
        pooled = sqrt((len(a) - 1) * sds[0] ** 2 + (len(b) - 1) * sds[1] ** 2)
        pooled /= sqrt(sum(numbers) - 2)
        if pooled > 0:
            detectable = pooled * detectable_mean_difference(numbers)
    return MeansTest(
        what,
        unit,
        means,
        (sds[0], sds[1]),
        numbers,
        gap,
        low,
        high,
        p,
        method,
        detectable,
        things=things,
    )


def _sd(values: NDArray[np.float64]) -> float | None:
    return float(values.std(ddof=1)) if len(values) > 1 else None


def _welch(
    a: NDArray[np.float64], b: NDArray[np.float64]
) -> tuple[float | None, float | None, float]:
    from scipy.stats import t

    parts = (a.var(ddof=1) / len(a), b.var(ddof=1) / len(b))
    error = sqrt(sum(parts))
    gap = float(a.mean() - b.mean())
    if error == 0:
        return None, None, 1.0 if gap == 0 else 0.0
    freedom = sum(parts) ** 2 / (parts[0] ** 2 / (len(a) - 1) + parts[1] ** 2 / (len(b) - 1))
    half = float(t.isf(0.025, freedom)) * error
    return gap - half, gap + half, float(2 * t.sf(abs(gap) / error, freedom))


def permutation_p(first: Numbers, second: Numbers, *, seed: int = 0) -> float:
    """Two-sided permutation test of a difference of means.

    Exact over all ways to share the values out up to 50,000, else 50,000 drawn ones (seeded).
    """
    a, b = np.asarray(first, float), np.asarray(second, float)
    values = np.concatenate([a, b])
    values = values - values.mean()
    seen = abs(float(a.mean() - b.mean()))
    scale = 1 / len(a) + 1 / len(b)
    slack = 1e-9 * (1 + float(np.abs(values).max()))
    if comb(len(values), len(a)) <= _MOST_WAYS:
        ways = np.array(list(combinations(range(len(values)), len(a))))
        # The values sum to 0, so the sum of one group tells both means.
        sums = values[ways].sum(axis=1)
        return float((np.abs(sums) * scale >= seen - slack).mean())
    rng = np.random.default_rng(seed)
    hits = 0
    for _ in range(_DRAWS // 1000):
        mixed = rng.permuted(np.tile(values, (1000, 1)), axis=1)
        hits += int((np.abs(mixed[:, : len(a)].sum(axis=1)) * scale >= seen - slack).sum())
    return (hits + 1) / (_DRAWS + 1)


@lru_cache(maxsize=4096)
def detectable_mean_difference(numbers: tuple[int, int], *, power: float = _POWER) -> float:
    """Smallest difference, in standard deviations, that two groups show with that power.

    Two-sided t test at 5% with equal spread; 17 a side show one standard deviation.
    """
    low, high = 0.0, 1.0
    if min(numbers) < 1 or sum(numbers) < 3:
        return inf
    while _t_power(high, numbers) < power:
        high *= 2
    for _ in range(40):
        middle = (low + high) / 2
        low, high = (middle, high) if _t_power(middle, numbers) < power else (low, middle)
    return high


def _t_power(effect: float, numbers: tuple[int, int]) -> float:
    from scipy.stats import nct, t

    m, n = numbers
    freedom = m + n - 2
    away = effect * sqrt(m * n / (m + n))
    cut = float(t.isf(_LEVEL / 2, freedom))
    # Beyond the reach of the distribution's series the power is 1 for all that matters.
    if away > cut + 30:
        return 1.0
    return float(nct.sf(cut, freedom, away))


@lru_cache(maxsize=64)
def plants_a_side(effect: float, *, power: float = _POWER) -> int:
    """Plants each way that show a difference of so many standard deviations."""
    if effect <= 0:
        raise ValueError("a difference to show lies above 0")
    n = 2
    while _t_power(effect, (n, n)) < power:
        n += 1
    return n


@dataclass(frozen=True, slots=True)
class SharesTest:
    """Counts of categories in two groups, by the exact test of a table of two rows.

    values : the categories; counts : of each, in the two groups
    """

    what: str
    values: tuple[str, ...]
    counts: tuple[tuple[int, int], ...]
    p: float | None
    method: str = "exact"
    p_adjusted: float | None = None

    @property
    def numbers(self) -> tuple[int, int]:
        """Plants of the two groups."""
        return sum(a for a, _ in self.counts), sum(b for _, b in self.counts)

    @property
    def verdict(self) -> str:
        """'differs', 'no difference shown' or 'too few to tell'."""
        return _verdict(self.p, self.p_adjusted, self.numbers, _FEW_PLANTS)

    def sentences(self, lead: str = "") -> list[str]:
        """Counts first, p second; `lead` stands before the trait."""
        said = ", ".join(
            f"{value} {a} and {b}" for value, (a, b) in zip(self.values, self.counts, strict=True)
        )
        m, n = self.numbers
        found = [f"{_first_up(lead + self.what)}: {said} (of {m} and {n} plants)."]
        if self.p is None:
            return [*found, "All look alike, so there is nothing to compare."]
        adjusted = _after_holm(self.p, self.p_adjusted)
        how = "exact" if self.method == "exact" else "drawn"
        return [*found, f"{verdict_words(self.verdict)} ({how} p {p_words(self.p)}{adjusted})."]


def shares_test(
    what: str, values: Sequence[str], counts: Sequence[tuple[int, int]], *, seed: int = 0
) -> SharesTest:
    """Compare the counts of categories (Fisher; Freeman and Halton for more than two values).

    Enumerated within 50,000 tables, else drawn.
    """
    kept = [(v, c) for v, c in zip(values, counts, strict=True) if sum(c)]
    rows = tuple((int(a), int(b)) for _, (a, b) in kept)
    names = tuple(value for value, _ in kept)
    totals = [a + b for a, b in rows]
    m = sum(a for a, _ in rows)
    if len(rows) < 2 or m in (0, sum(totals)):
        return SharesTest(what, names, rows, None)
    size = 1
    for total in totals[:-1]:
        size *= total + 1
    if size <= _MOST_WAYS:
        return SharesTest(what, names, rows, _table_p([a for a, _ in rows], totals, m))
    rng = np.random.default_rng(seed)
    tables = rng.multivariate_hypergeometric(totals, m, _DRAWS)
    seen = _log_ways(np.array([[a for a, _ in rows]]), totals)[0]
    rare = int((_log_ways(tables, totals) <= seen + 1e-7).sum())
    return SharesTest(what, names, rows, (rare + 1) / (_DRAWS + 1), "drawn")


def _log_ways(tables: NDArray[np.int64], totals: Sequence[int]) -> NDArray[np.float64]:
    from scipy.special import gammaln

    t = np.array(totals)
    found: NDArray[np.float64] = (
        gammaln(t + 1) - gammaln(tables + 1) - gammaln(t - tables + 1)
    ).sum(axis=1)
    return found


def _table_p(seen: Sequence[int], totals: Sequence[int], m: int) -> float:
    grid = np.indices([total + 1 for total in totals[:-1]]).reshape(len(totals) - 1, -1).T
    last = m - grid.sum(axis=1)
    possible = (last >= 0) & (last <= totals[-1])
    tables = np.column_stack([grid[possible], last[possible]])
    logs = _log_ways(tables, totals)
    ways = np.exp(logs - logs.max())
    own = _log_ways(np.array([seen]), totals)[0] - logs.max()
    return min(1.0, float(ways[ways <= np.exp(own) * (1 + 1e-7)].sum() / ways.sum()))
