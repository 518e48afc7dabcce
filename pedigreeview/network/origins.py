"""How a row of the pedigree arose, and the rules of inheritance that follow.

The rules are written once, for numbers and arrays alike; the engine, the exact fractions and the
explanations all use them.  Sources (bibliographic details from memory): Malécot 1948 for coancestry
and inbreeding, Wright 1922 for the rule of a cross, Kerr et al. 2012 for polysomic inheritance.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum
from fractions import Fraction
from typing import Any

import numpy as np

__all__ = ["UNKNOWN", "Origin", "Row", "Rules", "gamete_share"]

UNKNOWN = -1
"""In place of a row: the parent is not known."""


class Origin(IntEnum):
    """How a row arose; decides its F and its θ with itself.

    FOUNDER  no weights; F = fixation f; θ = f for a pool, else 1/P + (1 − 1/P) f
    MEMBER   grown from seed of a pool g; F = F(g)
    CROSS    seed parent s, candidates p with odds; F by the cross rule (self rule where p is s)
    SELF     each plant of the one parent selfed; F by the self rule
    SIB      two members of a pool g mated; F by the cross rule with θ(g, g)
    CLONE    F and θ of the source
    DOUBLED  chromosome-doubled form, ploidy P to 2P; F = e + (1 − e) F(o), e = 1/(2P − 1)
    HAPLOID  doubled gamete; diploid F = 1; else e + (1 − e) γ(F_s), e = 1/(P − 1)
    FATHER   the one unseen pollen parent: F = Σ odds F(p), θ = Σ odds θ(p, p) + rest/P
    """

    FOUNDER = 0
    MEMBER = 1
    CROSS = 2
    SELF = 3
    SIB = 4
    CLONE = 5
    DOUBLED = 6
    HAPLOID = 7
    FATHER = 8


@dataclass(slots=True)
class Row:
    """One row of the pedigree by itself; indices are of older rows."""

    origin: Origin
    seed: int = UNKNOWN
    """Seed parent, or the source, or UNKNOWN."""
    pollen: tuple[tuple[int, float], ...] = ()
    """(index, odds) of the candidates; the rest to 1 is unknown."""
    selfings: int = 0
    pool: bool = False
    fixation: float | None = None
    """A founder's fixation, or that of a line taken as fixed; else None."""
    ploidy: int = 2

    def weights(self) -> tuple[tuple[int, float], ...]:
        """(older row, weight) pairs: the expected share of the alleles that come from each."""
        if self.origin is Origin.FOUNDER:
            return ()
        if self.origin is Origin.FATHER:
            return self.pollen
        if self.origin is not Origin.CROSS:
            return ((self.seed, 1.0),)
        found: dict[int, float] = {}
        if self.seed != UNKNOWN:
            found[self.seed] = 0.5
        for parent, odds in self.pollen:
            found[parent] = found.get(parent, 0.0) + 0.5 * odds
        return tuple(found.items())


def gamete_share(ploidy: int) -> Fraction:
    """Chance c that two different alleles of a plant came in one gamete: (P/2 − 1)/(P − 1)."""
    if ploidy == 1:
        # One set of chromosomes has no two alleles to be different; no row asks, empty arrays do.
        return Fraction(0)
    return Fraction(ploidy // 2 - 1, ploidy - 1)


@dataclass(frozen=True, slots=True)
class Rules:
    """The rules of inheritance at one ploidy; numbers in are floats, arrays or fractions alike.

    ploidy : P, even
    alpha : double reduction, 0 to 1/6; counts at ploidy 4 only
    number : turns a fraction into the kind of number computed with (float or Fraction)
    """

    ploidy: int
    alpha: Any
    number: type = float

    def gametic(self, inbreeding: Any) -> Any:
        """γ(F): chance that two alleles of one gamete are identical by descent."""
        if self.ploidy != 4:
            return inbreeding
        return self.alpha + (1 - self.alpha) * inbreeding

    def itself(self, inbreeding: Any) -> Any:
        """θ of a plant with itself: 1/P + (1 − 1/P) F."""
        share = self.number(Fraction(1, self.ploidy))
        return share + (1 - share) * inbreeding

    def cross(self, of_seed: Any, of_pollen: Any, between: Any) -> Any:
        """F of progeny: c · ½[γ(F_s) + γ(F_p)] + (1 − c) · θ(s, p)."""
        if self.ploidy == 2:
            return between
        within = self.number(gamete_share(self.ploidy))
        half = self.number(Fraction(1, 2))
        gametes = half * (self.gametic(of_seed) + self.gametic(of_pollen))
        return within * gametes + (1 - within) * between

    def selfed(self, inbreeding: Any, times: int = 1) -> Any:
        """F after selfings: each time c · γ(F) + (1 − c) · θ(s, s).

        Floats come to rest after some hundred selfings, and no more are worked out then.
        """
        for _ in range(times):
            after = self.cross(inbreeding, inbreeding, self.itself(inbreeding))
            if self.number is float and np.array_equal(after, inbreeding):
                break
            inbreeding = after
        return inbreeding

    def doubled(self, inbreeding: Any) -> Any:
        """F of the chromosome-doubled form; the ploidy here is the doubled one."""
        share = self.number(Fraction(1, max(self.ploidy - 1, 1)))
        return share + (1 - share) * inbreeding

    def doubled_gamete(self, inbreeding: Any) -> Any:
        """F of a doubled haploid grown from a plant of inbreeding F."""
        share = self.number(Fraction(1, max(self.ploidy - 1, 1)))
        return share + (1 - share) * self.gametic(inbreeding)
