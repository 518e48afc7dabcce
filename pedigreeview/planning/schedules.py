"""What is left after each generation: heterozygosity, fixed plants, the share of a parent.

Loci are those at which the parents differ.  The spread of a share over plants comes from chromosome
lengths with crossovers without interference (Haldane's map).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import comb, exp, sqrt

__all__ = [
    "BackcrossLine",
    "SelfingLine",
    "backcross_schedule",
    "heterozygous_share_sd",
    "recurrent_share_sd",
    "selfing_schedule",
    "sib_schedule",
]


@dataclass(frozen=True, slots=True)
class SelfingLine:
    """One generation of a schedule.

    generation : 'F2' ...
    heterozygous : share of loci still segregating in a plant
    all_fixed : chance that a plant is fixed at all loci asked about (unlinked)
    like_wanted : chance that it is fixed for the wanted allele at all of them
    spread : standard deviation of the heterozygous share over plants, None without lengths
    """

    generation: str
    heterozygous: Fraction
    all_fixed: Fraction
    like_wanted: Fraction
    spread: float | None

    def sentence(self) -> str:
        """The line in words."""
        return (
            f"{self.generation}: {100 * float(self.heterozygous):.3g}% of the loci still segregate "
            f"in a plant; {100 * float(self.all_fixed):.3g}% of the plants are fixed at all."
        )


def selfing_schedule(
    loci: int, *, last: int = 8, lengths: Sequence[float] | None = None
) -> list[SelfingLine]:
    """F1 to F`last` by selfing each plant, from an F1 that segregates at all the loci.

    lengths : cM of each chromosome of one set, for the spread

    Notes
    -----
    Heterozygous (½)^t after t selfings; all of n fixed [(2^t − 1)/2^t]^n (course on the backcross
    method, University of Nebraska; check S03); half of what is fixed at a locus is the wanted.
    """
    if loci < 0 or last < 1:
        raise ValueError("loci are 0 or more, and the schedule starts with the F1")
    found = []
    for t in range(last):
        left = Fraction(1, 2**t)
        spread = None if lengths is None else heterozygous_share_sd(t, lengths)
        fixed = 1 - left
        found.append(SelfingLine(f"F{t + 1}", left, fixed**loci, (fixed / 2) ** loci, spread))
    return found


def sib_schedule(last: int = 10) -> list[Fraction]:
    """Heterozygous share of the F1 and of each generation of full sibs mated, as in an F1 cross.

    Notes
    -----
    Mated sibs of an F1 of two pure lines: h(t) = h(t−1)/2 + h(t−2)/4 with 1, ½, ½ to begin with
    (Wright 1921, from memory).
    """
    found = [Fraction(1), Fraction(1, 2)]
    while len(found) < last:
        found.append(found[-1] / 2 + found[-2] / 4)
    return found[:last]


@dataclass(frozen=True, slots=True)
class BackcrossLine:
    """One backcross generation.

    share : expected share of the recurrent parent
    spread : its standard deviation over plants, None without lengths
    all_back : chance that a plant has the recurrent parent at all loci asked about (unlinked)
    """

    generation: str
    share: Fraction
    spread: float | None
    all_back: Fraction

    def sentence(self) -> str:
        """The line in words; a range where the spread is known."""
        said = f"{self.generation}: {100 * float(self.share):.4g}% of the recurrent parent expected"
        if self.spread is None:
            return f"{said}."
        return f"{said}, give or take {100 * self.spread:.2g}% from plant to plant (one sd)."


def backcross_schedule(
    last: int = 6, *, loci: int = 1, lengths: Sequence[float] | None = None
) -> list[BackcrossLine]:
    """The F1 and BC1F1 to BC`last`F1, unselected, of two pure lines.

    Share 1 − (½)^(t+1) (check B01); each locus is back with 1 − (½)^t.
    """
    if last < 1 or loci < 0:
        raise ValueError("backcrosses are 1 or more, loci 0 or more")
    found = []
    for t in range(last + 1):
        name = "F1" if t == 0 else f"BC{t}F1"
        spread = None if lengths is None else recurrent_share_sd(t, lengths)
        back = (1 - Fraction(1, 2**t)) ** loci
        found.append(BackcrossLine(name, 1 - Fraction(1, 2 ** (t + 1)), spread, back))
    return found


def recurrent_share_sd(backcrosses: int, lengths: Sequence[float]) -> float:
    """Standard deviation over plants of the recurrent parent's share after t backcrosses.

    Parameters
    ----------
    lengths : cM of each chromosome of one set

    Notes
    -----
    Two points d Morgans apart are both heterozygous with [(1 + e^(−2d)) / 4]^t, so the variance of
    the heterozygous share of a chromosome of l Morgans is the mean over pairs of points of that,
    less (½)^2t: 4^(−t) Σ_{k=1..t} C(t,k) (2kl − 1 + e^(−2kl)) / (2 k² l²).  Chromosomes are
    independent and count by length; the share of the parent varies half as much (after Hill 1993
    and Stam and Zeven 1981, both from memory; the sum is worked out here).
    """
    return _het_sd(backcrosses, lengths, 2.0) / 2


def heterozygous_share_sd(selfings: int, lengths: Sequence[float]) -> float:
    """Standard deviation over plants of the heterozygous share after t selfings of an F1.

    As `recurrent_share_sd`, with both points heterozygous with [(1 + e^(−4d)) / 4]^t.
    """
    return _het_sd(selfings, lengths, 4.0)


def _het_sd(times: int, lengths: Sequence[float], rate: float) -> float:
    if times < 0 or not lengths or min(lengths) < 0:
        raise ValueError("generations are 0 or more, and chromosomes have 0 cM or more")
    whole = sum(lengths)
    variance = 0.0
    for length in lengths:
        weight = length / whole if whole else 1 / len(lengths)
        own = sum(comb(times, k) * _mean_decay(k * rate, length / 100) for k in range(1, times + 1))
        variance += weight**2 * own / 4**times
    return sqrt(variance)


def _mean_decay(rate: float, morgans: float) -> float:
    """Mean of e^(−rate |x − y|) over two points of a chromosome."""
    a = rate * morgans
    # For short chromosomes the difference would lose all digits.
    return 1 - a / 3 if a < 1e-4 else 2 * (a - 1 + exp(-a)) / a**2
