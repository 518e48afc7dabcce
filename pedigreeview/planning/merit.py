"""How far each candidate has what is wanted, from its scores and its chances of genotypes."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from pedigreeview.planning.measured import Observation, observations, values_by_plant
from pedigreeview.planning.wanted import Wanted

if TYPE_CHECKING:
    from pedigreeview.network.pedigree import PedigreeNetwork
    from pedigreeview.planning.inference import GenotypeChances

__all__ = ["Standing", "genotype_of", "standing_of"]

FloatArray = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Standing:
    """Where n candidates stand in w wishes.

    wanted : the wishes
    codes : the candidates
    value : (n, w) mean of the scores, share of the scores with the value, or expected share of the
        allele; NaN where nothing is known
    level : (n, w) the same from 0 (worst candidate, or lacks it) to 1 (best, or has it alone)
    count : (n, w) observations behind it; of an allele 0
    low, high : (n, w) range of the single scores, NaN where there is none
    """

    wanted: tuple[Wanted, ...]
    codes: tuple[str, ...]
    value: FloatArray
    level: FloatArray
    count: NDArray[np.int64]
    low: FloatArray
    high: FloatArray

    @property
    def weights(self) -> FloatArray:
        """(w,) weights of the wishes, summing to 1; alike where all are 0."""
        given = np.array([wish.weight for wish in self.wanted], float)
        if not len(given):
            return given
        total = given.sum()
        return given / total if total > 0 else np.full(len(given), 1 / len(given))

    @property
    def merit(self) -> FloatArray:
        """(n,) weighted mean of the known levels, 0 to 1; ½ where none is known."""
        known = ~np.isnan(self.level)
        weight = known * self.weights
        total = weight.sum(axis=1)
        sums = (np.nan_to_num(self.level) * weight).sum(axis=1)
        return np.divide(sums, total, out=np.full(len(self.codes), 0.5), where=total > 0)


def genotype_of(net: PedigreeNetwork, code: str) -> str:
    """The plant that a clone goes back to; what was scored on one was scored on all."""
    seen = {code}
    while net.parents(code).raised == "cutting_of":
        code = net.parents(code).source
        if code in seen:
            break
        seen.add(code)
    return code


def standing_of(
    net: PedigreeNetwork,
    wanted: Sequence[Wanted],
    codes: Sequence[str],
    *,
    answers: Mapping[str, GenotypeChances] | None = None,
) -> Standing:
    """Where candidates stand in what is wanted.

    Parameters
    ----------
    answers : chances of genotypes by locus; those that are missing are worked out

    Raises
    ------
    Fault : a trait or locus that cannot be read
    """
    shape = (len(codes), len(wanted))
    value, level, low, high = (np.full(shape, np.nan) for _ in range(4))
    count = np.zeros(shape, np.int64)
    origins = [genotype_of(net, code) for code in codes]
    answered = dict(answers or {})
    for at, wish in enumerate(wanted):
        if wish.kind == "allele":
            if wish.of not in answered:
                from pedigreeview.planning.inference import genotype_chances

                answered[wish.of] = genotype_chances(net, wish.of)
            value[:, at] = level[:, at] = _shares(answered[wish.of], wish.want, codes)
            continue
        held = _scores(net, wish)
        for place, origin in enumerate(origins):
            scores = held.get(origin, [])
            if scores:
                count[place, at] = len(scores)
                value[place, at] = float(np.mean(scores))
                low[place, at], high[place, at] = min(scores), max(scores)
        level[:, at] = _levels(value[:, at], wish)
    return Standing(tuple(wanted), tuple(codes), value, level, count, low, high)


def _scores(net: PedigreeNetwork, wish: Wanted) -> dict[str, list[float]]:
    """Values of each genotype: numbers, or 1 and 0 for the wanted value and another."""
    if wish.kind == "measured":
        found = observations(net.book, wish.of)
    else:
        found = [
            Observation(s.plant, float(s.value.strip().casefold() == wish.want.casefold()))
            for s in net.book.scores
            if s.trait == wish.of and s.of != "seed" and s.value.strip() and s.plant in net
        ]
    merged: dict[str, list[float]] = {}
    for plant, values in values_by_plant(found).items():
        merged.setdefault(genotype_of(net, plant), []).extend(values)
    return merged


def _levels(value: FloatArray, wish: Wanted) -> FloatArray:
    if wish.kind == "category":
        return value.copy()
    known = value[~np.isnan(value)]
    if not len(known) or known.max() == known.min():
        return np.where(np.isnan(value), np.nan, 0.5)
    level = (value - known.min()) / (known.max() - known.min())
    return level if wish.want == "high" else 1 - level


def _shares(answer: GenotypeChances, allele: str, codes: Sequence[str]) -> FloatArray:
    """Expected share of the allele in each plant; NaN where it has no chances."""
    from pedigreeview.planning.inheritance import inheritance

    number, found = answer.model.allele(allele), np.full(len(codes), np.nan)
    for place, code in enumerate(codes):
        chances = answer.chances.get(code)
        if chances is not None:
            rules = inheritance(len(answer.model.alleles), answer.ploidy[code])
            found[place] = float(chances @ rules.shares[:, number])
    return found
