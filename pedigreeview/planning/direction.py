"""Which of two plants had better be the seed parent, so that accidental selfs show themselves.

A selfed flower of the seed parent gives seedlings like the seed parent's own.  Where it carries a
recessive that the pollen parent's dominant covers, a self is seen in the seedling; the other way
round nothing shows.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from pedigreeview.planning.inheritance import inheritance, multisets

if TYPE_CHECKING:
    from pedigreeview.planning.inference import GenotypeChances

__all__ = ["DirectionAdvice", "advise_direction", "selfs_shown"]

FloatArray = NDArray[np.float64]
_NEVER = 1e-6


@dataclass(frozen=True, slots=True)
class DirectionAdvice:
    """Which direction lets selfs be seen.

    seed : the plant that had better be the seed parent, '' where neither or both do alike
    shown : chance that a self shows itself with each of the two as the seed parent (a, b)
    loci : the locus that shows it best for each, '' where none does
    sentence : in words
    """

    seed: str
    shown: tuple[float, float]
    loci: tuple[str, str]
    sentence: str


def selfs_shown(answer: GenotypeChances, seed: str, pollen: str) -> float:
    """Chance that a self of the seed parent has a phenotype that no hybrid of the two has.

    The chances of the two parents' genotypes are taken as independent.  0 where one of them has no
    chances, or their ploidies differ.
    """
    return _shown(answer, seed, pollen)[0]


def _shown(answer: GenotypeChances, seed: str, pollen: str) -> tuple[float, FloatArray, FloatArray]:
    kinds = np.zeros(len(answer.model.phenotypes))
    if seed not in answer.chances or pollen not in answer.chances:
        return 0.0, kinds, kinds
    ploidy = answer.ploidy[seed]
    if ploidy != answer.ploidy[pollen] or ploidy % 2:
        return 0.0, kinds, kinds
    rules = inheritance(len(answer.model.alleles), ploidy)
    of_seed, of_pollen = answer.chances[seed], answer.chances[pollen]
    selfed = of_seed @ rules.selfed
    hybrid = np.einsum("s,p,spg->g", of_seed, of_pollen, rules.crossed)
    shows = [answer.model.shows(held) for held in multisets(len(answer.model.alleles), ploidy)]
    by_self, by_cross = kinds.copy(), kinds.copy()
    np.add.at(by_self, shows, selfed)
    np.add.at(by_cross, shows, hybrid)
    return float(by_self[by_cross < _NEVER].sum()), by_self, by_cross


def advise_direction(answers: Mapping[str, GenotypeChances], a: str, b: str) -> DirectionAdvice:
    """Which of two plants had better be the seed parent.

    Parameters
    ----------
    answers : chances of genotypes by locus; loci without phenotypes are passed over
    """
    best: list[tuple[float, str]] = []
    for seed, pollen in ((a, b), (b, a)):
        found = [
            (selfs_shown(answer, seed, pollen), locus)
            for locus, answer in answers.items()
            if any(answer.model.phenotypes)
        ]
        top = max(found, key=lambda item: item[0], default=(0.0, ""))
        best.append(top if top[0] > _NEVER else (0.0, ""))
    (of_a, locus_a), (of_b, locus_b) = best
    shown, loci = (of_a, of_b), (locus_a, locus_b)
    if of_a <= 0 and of_b <= 0:
        sentence = "No gene on record shows a self in either direction: cover the flowers well."
        return DirectionAdvice("", shown, loci, sentence)
    seed, pollen, locus = (a, b, locus_a) if of_a >= of_b else (b, a, locus_b)
    sentence = _sentence(answers[locus], seed, pollen)
    if abs(of_a - of_b) < _NEVER:
        return DirectionAdvice("", shown, loci, f"Selfs show in both directions. {sentence}")
    return DirectionAdvice(seed, shown, loci, sentence)


def _sentence(answer: GenotypeChances, seed: str, pollen: str) -> str:
    chance, by_self, by_cross = _shown(answer, seed, pollen)
    words = answer.model.phenotypes
    telling = " or ".join(
        words[at] for at in np.flatnonzero((by_cross < _NEVER) & (by_self > _NEVER)).tolist()
    )
    usual = " or ".join(words[at] for at in np.flatnonzero(by_cross > _NEVER).tolist())
    often = "every" if chance > 1 - _NEVER else f"{chance:.0%} of the"
    noun = "self is" if chance > 1 - _NEVER else "selfs are"
    return (
        f"With {seed} as the seed parent and pollen of {pollen}, {often} accidental {noun} seen: "
        f"{telling}, where the cross gives {usual}."
    )
