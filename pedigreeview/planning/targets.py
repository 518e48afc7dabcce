"""What is wanted in one plant: traits by the genes behind them, and which genotypes have them.

Every locus is read as 'wanted allele or not'.  A genotype of n loci is a place in an array of shape
(4,) * n: along each axis 2 * a + b, where a is 1 if the haplotype from the seed parent carries the
wanted allele, and b the same for that from the pollen parent.  Loci stand in map order, with a
recombination fraction between neighbours (1/2: unlinked), crossovers without interference.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import exp
from typing import Any, Literal

import numpy as np
from numpy.typing import NDArray

__all__ = [
    "MOST_LOCI",
    "Share",
    "Target",
    "WantedTrait",
    "from_copies",
    "from_haplotypes",
    "recombination_from_cM",
]

Share = Fraction | float
Rule = Literal["dominant", "recessive", "additive"]

MOST_LOCI = 8
"""Loci that are followed together; independent linkage groups are followed apart."""

_WHOLE = Fraction(1)
_HALF = Fraction(1, 2)
_COPIES = np.array([0, 1, 1, 2])


@dataclass(frozen=True, slots=True)
class WantedTrait:
    """One trait and its loci.

    rule : 'dominant' (one wanted allele at each locus shows it), 'recessive' (two at each locus) or
        'additive' (at least `at_least` wanted alleles over all its loci)
    at_least : of an additive trait, 1 to 2 * loci; None: all
    """

    name: str
    loci: tuple[str, ...]
    rule: Rule
    at_least: int | None = None

    @property
    def copies(self) -> int:
        """Wanted alleles that an additive trait asks for."""
        return 2 * len(self.loci) if self.at_least is None else self.at_least


@dataclass(frozen=True, slots=True)
class Target:
    """Traits wanted together in one plant.

    loci : in map order
    recombination : between neighbours, one fewer than loci, each 0 to 1/2
    traits : each locus belongs to one trait

    Raises
    ------
    ValueError : no trait, a locus in none or in several traits, a recombination outside 0 to 1/2
    """

    loci: tuple[str, ...]
    recombination: tuple[Share, ...]
    traits: tuple[WantedTrait, ...]

    def __post_init__(self) -> None:
        named = [locus for trait in self.traits for locus in trait.loci]
        if not self.traits or sorted(named) != sorted(set(self.loci)):
            raise ValueError("each locus belongs to exactly one wanted trait")
        if len(self.recombination) != len(self.loci) - 1:
            raise ValueError("one recombination fraction stands between neighbouring loci")
        if any(not 0 <= r <= _HALF for r in self.recombination):
            raise ValueError("a recombination fraction lies from 0 to 1/2")
        for trait in self.traits:
            if not 1 <= trait.copies <= 2 * len(trait.loci):
                raise ValueError("an additive trait asks for 1 to twice as many alleles as loci")

    @classmethod
    def of(cls, *traits: WantedTrait, linked: Sequence[Share] | None = None) -> Target:
        """A target over the loci of the traits in their order, unlinked unless said otherwise."""
        loci = tuple(locus for trait in traits for locus in trait.loci)
        gaps = (_HALF,) * (len(loci) - 1) if linked is None else tuple(linked)
        return cls(loci, gaps, traits)

    # Genotypes ------------------------------------------------------------------------------------

    def _copies_at(self, locus: str) -> NDArray[np.int64]:
        shape = [1] * len(self.loci)
        shape[self.loci.index(locus)] = 4
        return _COPIES.reshape(shape)

    def _shown(self, trait: WantedTrait) -> NDArray[np.bool_]:
        copies = [self._copies_at(locus) for locus in trait.loci]
        if trait.rule == "additive":
            return np.asarray(_sum(copies) >= trait.copies)
        enough = 2 if trait.rule == "recessive" else 1
        return _all(copy >= enough for copy in copies)

    def _whole(self, found: NDArray[np.bool_]) -> NDArray[np.bool_]:
        return np.broadcast_to(found, (4,) * len(self.loci))

    def shown(self, traits: Iterable[str] | None = None) -> NDArray[np.bool_]:
        """(4,) * n: genotypes that show the traits of those names (all if None)."""
        names = None if traits is None else set(traits)
        chosen = [self._shown(t) for t in self.traits if names is None or t.name in names]
        return self._whole(_all([np.bool_(True), *chosen]))

    def fixed(self) -> NDArray[np.bool_]:
        """(4,) * n: genotypes that show every trait and breed true for it."""
        pure = [self._copies_at(locus) != 1 for locus in self.loci]
        return self._whole(_all([self.shown(), *pure]))

    def carriers(self, traits: Iterable[str] | None = None) -> NDArray[np.bool_]:
        """(4,) * n: genotypes from which the traits can still be fixed by selfing alone."""
        names = None if traits is None else set(traits)
        found: list[NDArray[np.bool_] | np.bool_] = [np.bool_(True)]
        for trait in self.traits:
            if names is not None and trait.name not in names:
                continue
            there = [self._copies_at(locus) >= 1 for locus in trait.loci]
            if trait.rule == "additive":
                found.append(np.asarray(2 * _sum(there) >= trait.copies))
            else:
                found.extend(there)
        return self._whole(_all(found))

    def parts(self) -> list[Target]:
        """The target split where loci are unlinked and no trait reaches over; chances multiply."""
        place = {locus: at for at, locus in enumerate(self.loci)}
        reach = [
            (min(spots), max(spots)) for t in self.traits if (spots := [place[x] for x in t.loci])
        ]
        cuts = [
            at + 1
            for at, r in enumerate(self.recombination)
            if r == _HALF and not any(low <= at < high for low, high in reach)
        ]
        found = []
        for start, end in zip([0, *cuts], [*cuts, len(self.loci)], strict=True):
            loci = self.loci[start:end]
            traits = tuple(t for t in self.traits if t.loci[0] in loci)
            found.append(Target(loci, self.recombination[start : end - 1], traits))
        return found

    def sentence(self) -> str:
        """The wish in words."""
        words = {"dominant": "dominant", "recessive": "recessive"}
        said = []
        for trait in self.traits:
            if trait.rule == "additive":
                said.append(
                    f"{trait.name} ({trait.copies} or more of {2 * len(trait.loci)} wanted alleles)"
                )
            else:
                said.append(f"{trait.name} ({words[trait.rule]})")
        linked = sum(r < _HALF for r in self.recombination)
        tail = f", {linked} linked pair{'s' if linked > 1 else ''} of neighbours" if linked else ""
        return f"Wanted in one plant: {', '.join(said)}{tail}."


def _all(parts: Iterable[Any]) -> NDArray[np.bool_]:
    found: NDArray[np.bool_] = np.asarray(True)
    for part in parts:
        found = found & part
    return found


def _sum(parts: Iterable[Any]) -> NDArray[np.int64]:
    found: NDArray[np.int64] = np.asarray(0)
    for part in parts:
        found = found + part
    return found


def from_copies(copies: Sequence[int]) -> NDArray[Any]:
    """(4,) * n Fractions: a plant of which the wanted alleles at each locus are counted.

    Which of them lie together on one chromosome is not told by counts: where several linked loci
    are heterozygous, every way is taken as equally likely.

    Raises
    ------
    ValueError : a count that is not 0, 1 or 2
    """
    if any(count not in (0, 1, 2) for count in copies):
        raise ValueError("a plant carries 0, 1 or 2 wanted alleles at a locus")
    of: dict[int, tuple[Fraction | int, ...]] = {
        0: (1, 0, 0, 0),
        1: (0, _HALF, _HALF, 0),
        2: (0, 0, 0, 1),
    }
    return _outer([np.array([_WHOLE * x for x in of[count]], object) for count in copies])


def from_haplotypes(seed_side: Sequence[int], pollen_side: Sequence[int]) -> NDArray[Any]:
    """(4,) * n Fractions: a plant whose two haplotypes are known, 1 for the wanted allele."""
    if len(seed_side) != len(pollen_side) or not {*seed_side, *pollen_side} <= {0, 1}:
        raise ValueError("two haplotypes name 0 or 1 at the same loci")
    return _outer(
        [
            np.array([Fraction(int(i == 2 * a + b)) for i in range(4)], object)
            for a, b in zip(seed_side, pollen_side, strict=True)
        ]
    )


def _outer(axes: Sequence[NDArray[Any]]) -> NDArray[Any]:
    whole = axes[0]
    for axis in axes[1:]:
        whole = np.multiply.outer(whole, axis)
    return whole


def recombination_from_cM(distance: float) -> float:
    """Recombination fraction of two loci `distance` cM apart: (1 − e^(−2d)) / 2, d in Morgans.

    Source: Haldane's map function (from memory), which has no interference.
    """
    if distance < 0:
        raise ValueError("a distance is 0 cM or more")
    return (1 - exp(-distance / 50)) / 2
