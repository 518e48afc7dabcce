"""Does a count fit a ratio: exact where classes are small, chi-square where they are not.

The exact p is the chance, if the ratio is true, of all counts that are no likelier than the one
seen; it is enumerated within a stated size, else drawn with a stated error.  Chi-square is used
where every expected count is 5 or more, without Yates's correction.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from math import ceil, comb, isqrt, sqrt

import numpy as np
from numpy.typing import NDArray

from pedigreeview.planning.multiplicity import holm
from pedigreeview.planning.ratios import Ratio, named_ratios

__all__ = [
    "RatioFit",
    "SegregationTest",
    "exact_p",
    "plants_to_tell",
    "power_to_reject",
    "ratio_test",
    "ratio_tests",
    "tell_by_one_threshold",
    "which_fit",
]

_LEVEL = 0.05
_FEW = 5.0
_MOST_TABLES = 300_000
_DRAWS = 200_000
_TIE = 1 + 1e-7


@dataclass(frozen=True, slots=True)
class SegregationTest:
    """One count against one ratio.

    expected : counts expected
    statistic : chi-square, whatever the method
    p : of the method; p_adjusted : Holm over the counts tested together, else the same
    method : 'chi-square', 'exact' or 'drawn'
    p_error : standard error of a drawn p, else 0
    verdict : 'fits', 'does not fit', 'too few to tell'
    """

    observed: tuple[int, ...]
    ratio: Ratio
    expected: tuple[float, ...]
    statistic: float
    freedom: int
    p: float
    p_adjusted: float
    method: str
    p_error: float
    verdict: str
    power: float
    """Chance to reject the ratio if the classes were really alike (or 3:1 for a ratio 1:1)."""

    def sentences(self) -> list[str]:
        """The test in words: what was seen and expected, verdict, how it was found."""
        seen = " : ".join(map(str, self.observed))
        due = " : ".join(f"{value:.4g}" for value in self.expected)
        found = [f"Seen {seen}, expected for {self.ratio.name}: {due}."]
        if self.verdict == "too few to tell":
            found.append(
                f"{sum(self.observed)} plants are too few to tell whether {self.ratio.name} holds."
            )
        else:
            found.append(f"The count {self.verdict} {self.ratio.name}.")
        how = {
            "chi-square": f"chi-square {self.statistic:.3g}, degrees of freedom {self.freedom}",
            "exact": "exact test, as a class is expected in fewer than 5 plants",
            "drawn": f"test by {_DRAWS:,} drawn counts, error of p {self.p_error:.2g}",
        }[self.method]
        adjusted = ""
        if self.p_adjusted != self.p:
            adjusted = f", {self.p_adjusted:.2g} after Holm's correction"
        found.append(f"p {_p_text(self.p)}{adjusted} ({how}).")
        return found

    def sentence(self) -> str:
        """All in one line."""
        return " ".join(self.sentences())


def _p_text(p: float) -> str:
    return "below 0.0001" if p < 1e-4 else f"{p:.2g}"


def ratio_test(
    observed: Sequence[int],
    ratio: Ratio,
    *,
    most_tables: int = _MOST_TABLES,
    draws: int = _DRAWS,
    seed: int = 0,
) -> SegregationTest:
    """Test a count against a ratio.

    Parameters
    ----------
    observed : plants of each class, in the ratio's order
    most_tables : counts that are enumerated at most; beyond, `draws` are drawn

    Raises
    ------
    ValueError : other classes than the ratio's, a count below 0, no plant
    """
    counts = tuple(int(x) for x in observed)
    n = sum(counts)
    if len(counts) != len(ratio.parts) or min(counts) < 0 or n == 0:
        raise ValueError("a count has a plant and one number for each class of the ratio")
    shares = np.array(ratio.shares)
    expected = n * shares
    statistic = float(((np.array(counts) - expected) ** 2 / expected).sum())
    freedom = len(counts) - 1
    error = 0.0
    if expected.min() >= _FEW:
        method, p = "chi-square", _chi_tail(statistic, freedom)
    elif comb(n + freedom, freedom) <= most_tables:
        method, p = "exact", exact_p(counts, shares)
    else:
        method = "drawn"
        p, error = _drawn_p(counts, shares, draws, seed)
    power = power_to_reject(ratio, _plain_rival(ratio), n)
    return SegregationTest(
        counts,
        ratio,
        tuple(float(x) for x in expected),
        statistic,
        freedom,
        p,
        p,
        method,
        error,
        _verdict(p, power),
        power,
    )


def _verdict(p: float, power: float) -> str:
    if p < _LEVEL:
        return "does not fit"
    return "fits" if power >= 0.5 else "too few to tell"


def _plain_rival(ratio: Ratio) -> tuple[float, ...]:
    shares = ratio.shares
    k = len(shares)
    if max(shares) - min(shares) > 1e-9:
        return (1 / k,) * k
    return (3 / (k + 2), *((1 / (k + 2),) * (k - 1)))


def _chi_tail(statistic: float, freedom: int) -> float:
    from scipy.stats import chi2

    return float(chi2.sf(statistic, freedom))


@lru_cache(maxsize=512)
def _compositions(n: int, k: int) -> NDArray[np.int64]:
    """(tables, k): all ways to share n plants out to k classes."""
    if k == 1:
        return np.array([[n]])
    blocks = []
    for first in range(n + 1):
        rest = _compositions(n - first, k - 1)
        blocks.append(np.column_stack([np.full(len(rest), first), rest]))
    return np.concatenate(blocks)


def _log_chances(tables: NDArray[np.int64], shares: NDArray[np.float64]) -> NDArray[np.float64]:
    from scipy.special import gammaln

    n = int(tables[0].sum())
    found: NDArray[np.float64] = (
        gammaln(n + 1) - gammaln(tables + 1).sum(axis=1) + tables @ np.log(shares)
    )
    return found


def exact_p(observed: Sequence[int], shares: Sequence[float] | NDArray[np.float64]) -> float:
    """Chance of all counts no likelier than the seen one (exact multinomial test)."""
    tables = _compositions(sum(observed), len(observed))
    q = np.asarray(shares, float)
    chances = np.exp(_log_chances(tables, q))
    seen = float(np.exp(_log_chances(np.array([observed]), q)[0]))
    return min(1.0, float(chances[chances <= seen * _TIE].sum()))


def _drawn_p(
    observed: Sequence[int], shares: NDArray[np.float64], draws: int, seed: int
) -> tuple[float, float]:
    rng = np.random.default_rng(seed)
    tables = rng.multinomial(sum(observed), shares, draws)
    seen = _log_chances(np.array([observed]), shares)[0]
    as_rare = int((_log_chances(tables, shares) <= seen + 1e-7).sum())
    p = (as_rare + 1) / (draws + 1)
    return p, sqrt(p * (1 - p) / draws)


def ratio_tests(counts: Sequence[tuple[Sequence[int], Ratio]]) -> list[SegregationTest]:
    """Several families or traits tested together, with Holm's correction in `p_adjusted`."""
    found = [ratio_test(observed, ratio) for observed, ratio in counts]
    adjusted = holm([test.p for test in found])
    return [_adjusted(test, p) for test, p in zip(found, adjusted, strict=True)]


def _adjusted(test: SegregationTest, p: float | None) -> SegregationTest:
    from dataclasses import replace

    assert p is not None
    return replace(test, p_adjusted=p, verdict=_verdict(p, test.power))


# Which ratios fit, and what it would take to tell two of them apart -------------------------------


@dataclass(frozen=True, slots=True)
class RatioFit:
    """All ratios tried on one count, best first, and whether those that fit can be told apart.

    apart : plants that would tell the two best apart, None where they differ in nothing that can
        be counted or where fewer than two fit
    """

    observed: tuple[int, ...]
    tests: tuple[SegregationTest, ...]
    apart: int | None

    @property
    def fitting(self) -> tuple[Ratio, ...]:
        """Ratios that are not rejected, the best first."""
        return tuple(test.ratio for test in self.tests if test.p >= _LEVEL)

    @property
    def verdict(self) -> str:
        """'fits' (one alone), 'too few to tell' (several), 'does not fit' (none)."""
        number = len(self.fitting)
        return "fits" if number == 1 else "too few to tell" if number else "does not fit"

    def sentences(self) -> list[str]:
        """Which fit, which do not, and how many plants would tell."""
        fits = [test for test in self.tests if test.p >= _LEVEL]
        if not fits:
            return ["None of the ratios tried fits this count."]
        said = ", ".join(f"{t.ratio.name} (p {_p_text(t.p)}; {t.ratio.meaning})" for t in fits)
        if len(fits) == 1:
            return [f"Of the ratios tried only this one fits: {said}."]
        found = [f"These ratios fit, the best first: {said}."]
        if self.apart is not None:
            found.append(
                f"{sum(self.observed)} plants are too few to tell {fits[0].ratio.name} from "
                f"{fits[1].ratio.name}; about {self.apart:,} would."
                if sum(self.observed) < self.apart
                else f"Neither of the two best is rejected, though {self.apart:,} plants should "
                "tell them apart."
            )
        return found


def which_fit(
    observed: Sequence[int], ratios: Sequence[Ratio] | None = None, *, ploidy: int = 2
) -> RatioFit:
    """Try named ratios of the ploidy (or those given) of as many classes on one count.

    Two classes are tried in the order counted; a count with the rarer class first fits nothing.
    """
    tried = named_ratios(len(observed), ploidy) if ratios is None else list(ratios)
    tests = [ratio_test(observed, ratio) for ratio in tried]
    tests.sort(key=lambda test: -test.p)
    fits = [test for test in tests if test.p >= _LEVEL]
    apart = None
    if len(fits) > 1:
        apart = plants_to_tell(fits[0].ratio, fits[1].ratio)
    return RatioFit(tuple(int(x) for x in observed), tuple(tests), apart)


def plants_to_tell(one: Ratio, other: Ratio, *, level: float = 0.05) -> int | None:
    """Plants at which each of two ratios would be told from the other, by the normal rule.

    None where they are the same, or have other classes.  Of more than two classes the pair of
    'this class or not' that tells soonest is taken.

    Notes
    -----
    n = z² (√(p(1 − p)) + √(q(1 − q)))² / (p − q)², z of the two-sided level: 3:1 from 9:7 takes 95
    (course page on distinguishing two segregation ratios, read in part).
    """
    from scipy.stats import norm

    if len(one.parts) != len(other.parts):
        return None
    z = float(norm.isf(level / 2))
    found = []
    for p, q in zip(one.shares, other.shares, strict=True):
        if abs(p - q) > 1e-9:
            found.append(ceil((z * (sqrt(p * (1 - p)) + sqrt(q * (1 - q))) / (p - q)) ** 2))
    return min(found) if found else None


def tell_by_one_threshold(one: Ratio, other: Ratio, plants: int) -> float:
    """Worse of the two errors when so many plants decide between two ratios of two classes.

    Below the best threshold of the second class the first ratio is taken, else the other.  Exact
    binomial tails.
    """
    from scipy.stats import binom

    p, q = one.shares[1], other.shares[1]
    if p > q:
        p, q = q, p
    cuts = np.arange(plants + 2)
    wrong = np.maximum(binom.sf(cuts - 1, plants, p), binom.cdf(cuts - 1, plants, q))
    return float(wrong.min())


def power_to_reject(
    ratio: Ratio, truth: Sequence[float], plants: int, *, level: float = _LEVEL
) -> float:
    """Chance that so many plants reject a ratio when other shares hold.

    Two classes: exact, over all counts.  More: by the noncentral chi-square distribution, which is
    rough for small classes.
    """
    shares, real = np.array(ratio.shares), np.asarray(truth, float)
    if len(shares) == 2 and plants <= 400:
        from scipy.stats import binom

        rejected = [k for k, p in enumerate(_binomial_ps(plants, float(shares[0]))) if p < level]
        return float(binom.pmf(rejected, plants, real[0]).sum()) if rejected else 0.0
    from scipy.stats import chi2, ncx2

    freedom = len(shares) - 1
    away = plants * float(((real - shares) ** 2 / shares).sum())
    if away == 0:
        return level
    return float(ncx2.sf(chi2.isf(level, freedom), freedom, away))


@lru_cache(maxsize=4096)
def _binomial_ps(n: int, share: float) -> tuple[float, ...]:
    """p of every count 0 ... n of the first class, by the method that `ratio_test` takes."""
    from scipy.stats import binom, chi2

    k = np.arange(n + 1)
    if n * min(share, 1 - share) >= _FEW:
        statistic = (k - n * share) ** 2 / (n * share * (1 - share))
        return tuple(chi2.sf(statistic, 1).tolist())
    pmf = binom.pmf(k, n, share)
    return tuple(float(pmf[pmf <= x * _TIE].sum()) for x in pmf)


def plants_for_power(
    ratio: Ratio, truth: Sequence[float], *, power: float = 0.8, most: int = 10_000
) -> int | None:
    """Smallest number of plants from which on the ratio is rejected with that power.

    Power wavers as counts are whole numbers, so the number from which it stays for a tenth more is
    given; None beyond `most`.
    """
    n = 2
    while n <= most:
        ahead = range(n, n + max(3, n // 10), max(1, isqrt(n) // 6))
        short = [m for m in ahead if power_to_reject(ratio, truth, m) < power]
        if not short:
            return n
        n = max(n + 1, short[-1] + 1)
    return None


__all__ += ["plants_for_power"]
