"""Which seedlings of a cross are accidental selfings of the seed parent: odds, plant by plant.

Bayes: prior odds of a selfing, times for each thing seen the chance of it in a selfed seedling over
that in a hybrid.  Genes seen count in full, with a rate of misread plants; a measure counts at most
tenfold, because how an F1 stands between its parents is not known beforehand.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import exp, log, pi, sqrt
from typing import TYPE_CHECKING

from pedigreeview.planning.observations import (
    SeenGene,
    copies_of,
    gene_of_trait,
    is_of_words,
    numbers_of,
    words_of,
)
from pedigreeview.planning.tetraploid import dose_distribution

if TYPE_CHECKING:
    from pedigreeview.network.pedigree import PedigreeNetwork

__all__ = [
    "Clue",
    "HybridVerdict",
    "hybrids_of_cross",
    "judge_hybrid",
    "measure_clue",
    "prior_of_selfing",
    "telling_direction",
]

_SURE = 0.9
_TELLS = 2.0
_MOST_OF_A_MEASURE = 10.0
_MISREAD = 0.01
_PRIORS = {"closed": 0.05, "unsure": 0.15, "open": 0.3, "": 0.1}
"""Chance of a selfing by how the bud was when worked (a choice of ours, no source)."""


@dataclass(frozen=True, slots=True)
class Clue:
    """One thing seen of a plant.

    says : in words; if_hybrid, if_self : chance (or density) of it in either case
    impossible : whether neither explains it but by a misreading
    """

    says: str
    if_hybrid: float
    if_self: float
    impossible: bool = False

    @property
    def factor(self) -> float:
        """How much likelier in a selfed seedling than in a hybrid."""
        return self.if_self / self.if_hybrid


@dataclass(frozen=True, slots=True)
class HybridVerdict:
    """One seedling.

    prior, chance : of being a selfing of the seed parent, before and after what was seen
    verdict : 'true hybrid' and 'self' from 90% on, 'doubtful' between, 'not shown' where nothing
        seen tells
    """

    plant: str
    verdict: str
    prior: float
    chance: float
    clues: tuple[Clue, ...]

    def sentence(self) -> str:
        """The verdict with what it rests on."""
        telling = [clue.says for clue in self.clues if abs(log(clue.factor)) > log(1.2)]
        odd = [clue.says for clue in self.clues if clue.impossible]
        if odd:
            return (
                f"{self.plant}: {self.verdict}; {', '.join(odd)} comes from neither: foreign "
                "pollen, a mixed-up label or a misread plant."
            )
        if self.verdict == "not shown":
            return f"{self.plant}: not shown; nothing seen of it tells a hybrid from a selfing."
        chance = "under 0.1%" if self.chance < 1e-3 else f"{100 * self.chance:.3g}%"
        chance = "over 99.9%" if self.chance > 0.999 else chance
        return f"{self.plant}: {self.verdict} ({', '.join(telling)}); chance of a selfing {chance}."


def judge_hybrid(plant: str, prior: float, clues: Iterable[Clue]) -> HybridVerdict:
    """Weigh what was seen of one seedling.

    Parameters
    ----------
    prior : chance of a selfing before, above 0 and below 1
    """
    if not 0 < prior < 1:
        raise ValueError("a chance of a selfing lies between 0 and 1")
    held = tuple(clues)
    weight = sum(log(clue.factor) for clue in held)
    odds = exp(max(-700.0, min(700.0, log(prior / (1 - prior)) + weight)))
    chance = odds / (1 + odds)
    if any(clue.impossible for clue in held):
        verdict = "doubtful"
    elif abs(weight) < log(_TELLS):
        verdict = "not shown"
    elif chance >= _SURE:
        verdict = "self"
    elif chance <= 1 - _SURE and weight < 0:
        verdict = "true hybrid"
    else:
        verdict = "doubtful"
    return HybridVerdict(plant, verdict, prior, chance, held)


def gene_clue(
    gene: SeenGene,
    seen: str,
    seed: int,
    pollen: int,
    *,
    ploidy: int = 2,
    double_reduction: Fraction = Fraction(0),
    misread: float = _MISREAD,
) -> Clue:
    """What one phenotype says.

    Parameters
    ----------
    seed, pollen : copies of the dominant allele that the parents carry
    misread : share of plants that are read as another phenotype, spread over the others evenly
    """
    looks = list(dict.fromkeys(gene.shows))

    def chance(a: int, b: int) -> tuple[float, bool]:
        doses = dose_distribution(a, b, ploidy, double_reduction)
        right = float(sum(s for k, s in enumerate(doses) if gene.look(k, ploidy) == seen))
        return (1 - misread) * right + misread * (1 - right) / max(1, len(looks) - 1), right == 0

    (hybrid, no_hybrid), (selfed, no_self) = chance(seed, pollen), chance(seed, seed)
    return Clue(seen, hybrid, selfed, no_hybrid and no_self)


def measure_clue(
    says: str, value: float, seed: Sequence[float], pollen: Sequence[float]
) -> Clue | None:
    """What one measure says; None where a parent was measured less than three times.

    A selfed seedling of a pure seed parent is spread as that parent; a hybrid lies anywhere about
    the middle of the parents, with half their distance as one standard deviation besides.
    """
    if min(len(seed), len(pollen)) < 3:
        return None
    m, n = sum(seed) / len(seed), sum(pollen) / len(pollen)
    squares = sum((x - m) ** 2 for x in seed) + sum((x - n) ** 2 for x in pollen)
    variance = squares / (len(seed) + len(pollen) - 2)
    if variance <= 0:
        return None
    selfed = _normal(value, m, variance * (1 + 1 / len(seed)))
    hybrid = _normal(value, (m + n) / 2, variance + ((m - n) / 2) ** 2)
    bound = log(_MOST_OF_A_MEASURE)
    factor = max(-bound, min(bound, log(selfed / hybrid) if min(selfed, hybrid) > 0 else -bound))
    return Clue(says, 1.0, exp(factor))


def _normal(value: float, mean: float, variance: float) -> float:
    return exp(-((value - mean) ** 2) / (2 * variance)) / sqrt(2 * pi * variance)


def prior_of_selfing(net: PedigreeNetwork, cross: str) -> float:
    """Chance of a selfing by how the buds of a cross were when worked, weighed by flowers.

    Closed 5%, unsure 15%, open 30%, not written down 10% (a choice of ours, no source).
    """
    rows = [row for row in net.book.pollinations.values() if row.cross == cross]
    if not rows:
        return _PRIORS[""]
    weights = [row.flowers or 1 for row in rows]
    each = [_PRIORS.get(row.bud, _PRIORS[""]) for row in rows]
    return sum(w * p for w, p in zip(weights, each, strict=True)) / sum(weights)


Copies = Callable[[str, str, str], int | None]


def hybrids_of_cross(
    net: PedigreeNetwork,
    cross: str,
    *,
    prior: float | None = None,
    misread: float = _MISREAD,
    copies: Copies | None = None,
) -> list[HybridVerdict]:
    """Every plant raised from a cross, judged from its scores and its parents' genotypes.

    Parameters
    ----------
    prior : chance of a selfing; None: `prior_of_selfing`
    copies : (plant, locus, allele) to the copies it carries; None: as recorded

    Findings already on record are not used, so that the verdict stands beside them.
    """
    book = net.book
    record = book.crosses[cross]
    seed, pollen = record.seed_parent, record.pollen_parent
    plants = [p for p in net.progeny_of_cross(cross) if not book.is_pool(book.plants[p])]
    known = copies or (lambda plant, locus, allele: copies_of(book, plant, locus, allele))
    before = prior_of_selfing(net, cross) if prior is None else prior
    clues: dict[str, list[Clue]] = {plant: [] for plant in plants}
    if seed and pollen and seed != pollen:
        for trait in book.traits:
            for plant, clue in _clues(net, trait, plants, seed, pollen, known, misread):
                clues[plant].append(clue)
    return [judge_hybrid(plant, before, clues[plant]) for plant in plants]


def _clues(
    net: PedigreeNetwork,
    trait: str,
    plants: Sequence[str],
    seed: str,
    pollen: str,
    known: Copies,
    misread: float,
) -> Iterable[tuple[str, Clue]]:
    book = net.book
    gene = gene_of_trait(book, trait)
    if gene is not None:
        a, b = known(seed, gene.locus, gene.dominant), known(pollen, gene.locus, gene.dominant)
        withheld = seed in net.withheld or pollen in net.withheld
        if a is None or b is None or withheld or net.ploidy(seed) != net.ploidy(pollen):
            return
        ploidy = net.ploidy(seed)
        if ploidy not in (2, 4):
            return
        alpha = Fraction(book.double_reduction()).limit_denominator(10**6)
        for plant, word in words_of(book, trait, plants).items():
            if word in gene.shows:
                yield (
                    plant,
                    gene_clue(
                        gene, word, a, b, ploidy=ploidy, double_reduction=alpha, misread=misread
                    ),
                )
    elif not is_of_words(book.traits[trait]):
        parents = numbers_of(book, trait, [seed, pollen])
        for plant, values in numbers_of(book, trait, plants).items():
            clue = measure_clue(
                f"{trait} {sum(values) / len(values):.3g}",
                sum(values) / len(values),
                parents.get(seed, []),
                parents.get(pollen, []),
            )
            if clue is not None:
                yield plant, clue


def telling_direction(net: PedigreeNetwork, a: str, b: str) -> list[tuple[str, str, str]]:
    """In which direction accidental selfs show themselves: (seed parent, trait, look of a self).

    A self shows where the seed parent carries only the recessive and the pollen parent only the
    dominant, so that every hybrid looks otherwise.
    """
    found = []
    for seed, pollen in ((a, b), (b, a)):
        if seed in net.withheld or pollen in net.withheld:
            continue
        for trait in net.book.traits:
            gene = gene_of_trait(net.book, trait)
            if gene is None:
                continue
            own = copies_of(net.book, seed, gene.locus, gene.dominant)
            other = copies_of(net.book, pollen, gene.locus, gene.dominant)
            if own == 0 and other == net.ploidy(pollen):
                found.append((seed, trait, gene.shows[0]))
    return found


__all__ += ["gene_clue"]
