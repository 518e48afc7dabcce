"""Segregation of plants of the book: counts by trait, the parents' own ratio, the tests."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import product
from typing import TYPE_CHECKING, Any

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault
from pedigreeview.network.parentage import certain_pollen
from pedigreeview.planning.observations import SeenGene, copies_of, gene_of_trait, words_of
from pedigreeview.planning.ratios import Ratio
from pedigreeview.planning.segregation import (
    RatioFit,
    SegregationTest,
    ratio_test,
    ratio_tests,
    which_fit,
)
from pedigreeview.planning.tetraploid import dose_distribution

if TYPE_CHECKING:
    from pedigreeview.network.pedigree import PedigreeNetwork

__all__ = ["FamilyCount", "SegregationReport", "segregation_of"]

Copies = Callable[[str, str, str], int | None]
"""(plant, locus, allele) to the copies it carries, or None."""


@dataclass(frozen=True, slots=True)
class FamilyCount:
    """The plants of one pair of parents.

    parents : seed and pollen parent
    counts : of the classes of the report
    ratio : from the parents' genotypes, None where they are not known or give one class alone
    """

    parents: tuple[str, str]
    counts: tuple[int, ...]
    ratio: Ratio | None
    test: SegregationTest | None


@dataclass(frozen=True, slots=True)
class SegregationReport:
    """One trait, or several together, among some plants.

    classes : in the order of the counts
    families : by parents; their tests are corrected together (Holm)
    expected : the ratio if all families have the same one
    test : of all plants together against it
    fit : named ratios on all plants together
    """

    traits: tuple[str, ...]
    classes: tuple[str, ...]
    counts: tuple[int, ...]
    families: tuple[FamilyCount, ...]
    expected: Ratio | None
    test: SegregationTest | None
    fit: RatioFit | None
    unscored: int
    impossible: tuple[str, ...]
    """Plants of a class that their parents cannot give."""
    strangers: tuple[str, ...]
    """Plants left out because their own finding names another pollen parent than their cross."""

    def sentences(self) -> list[str]:
        """Counts, the test against the parents' ratio, else which named ratios fit."""
        pairs = zip(self.classes, self.counts, strict=True)
        said = ", ".join(f"{count} {name}" for name, count in pairs)
        found = [f"{_first_up(' and '.join(self.traits))}: {said}."]
        if self.unscored:
            found.append(f"{self.unscored} of the plants are not scored for it.")
        if self.test is not None:
            found += self.test.sentences()
            if len(self.families) > 1:
                found += self._family_sentences()
        elif self.fit is not None:
            found.append("The parents' genotypes do not give one ratio for all of these plants.")
            found += self.fit.sentences()
        elif len(self.classes) < 2:
            found.append("All look alike, so nothing segregates here.")
        if self.strangers:
            found.append(
                f"Left out, as their own finding names another pollen parent: "
                f"{', '.join(self.strangers)}."
            )
        if self.impossible:
            found.append(
                f"Their parents cannot give {', '.join(self.impossible)}: foreign pollen, a "
                "volunteer, a misread plant or a mixed-up label."
            )
        return found

    def _family_sentences(self) -> list[str]:
        odd = [f for f in self.families if f.test is not None and f.test.verdict == "does not fit"]
        if not odd:
            return [f"None of the {len(self.families)} families alone departs from it."]
        names = ", ".join(" × ".join(f.parents) for f in odd)
        return [f"By themselves these families do not fit, after Holm's correction: {names}."]


def _first_up(text: str) -> str:
    return text[:1].upper() + text[1:]


def segregation_of(
    net: PedigreeNetwork,
    plants: Iterable[str],
    traits: str | Sequence[str],
    *,
    copies: Copies | None = None,
    ratio: Ratio | None = None,
) -> SegregationReport:
    """Count some plants by one trait or by several together, and test the counts.

    Parameters
    ----------
    copies : how many of an allele a plant carries; None: as recorded (`observations.copies_of`)
    ratio : to test against instead of the parents'; its classes must be those of the report

    Raises
    ------
    Fault : no plant of these is scored for all the traits
    """
    book = net.book
    names = (traits,) if isinstance(traits, str) else tuple(traits)
    known = copies or (lambda plant, locus, allele: copies_of(book, plant, locus, allele))
    single = [p for p in dict.fromkeys(plants) if not book.is_pool(book.plants[p])]
    strangers = tuple(p for p in single if _is_stranger(net, p))
    asked = [p for p in single if p not in strangers]
    seen = [words_of(book, trait, asked) for trait in names]
    scored = {p: tuple(words[p] for words in seen) for p in asked if all(p in w for w in seen)}
    if not scored:
        raise Fault(
            f"None of these plants is scored for {' and '.join(names)}.",
            None,
            "Score them, or pick another trait.",
        )
    genes = [gene_of_trait(book, trait) for trait in names]
    by_parents: dict[tuple[str, str], list[str]] = {}
    for plant in scored:
        by_parents.setdefault(_pair(net, plant), []).append(plant)
    chances = {pair: _chances(net, pair, genes, known) for pair in by_parents}
    order = _classes(book, names, genes, list(scored.values()), list(chances.values()))
    impossible = tuple(
        plant
        for pair, held in by_parents.items()
        for plant in held
        if (due := chances[pair]) is not None and not due.get(scored[plant])
    )
    families = _families(by_parents, scored, chances, order, set(impossible))
    fair = [plant for plant in scored if plant not in impossible]
    counts = tuple(sum(scored[p] == words for p in fair) for words in order)
    ratios = {family.ratio for family in families}
    expected = ratio if ratio is not None else next(iter(ratios)) if len(ratios) == 1 else None
    if expected is not None and len(expected.parts) != len(order):
        expected = None
    test = ratio_test(counts, expected) if expected is not None and fair else None
    fit = None
    if test is None and len(order) > 1 and fair:
        ploidies = {net.ploidy(plant) for plant in fair if plant not in net.withheld}
        ordered = sorted(counts, reverse=True)
        fit = which_fit(ordered, ploidy=max(ploidies, default=2))
        fit = fit if fit.tests else None
    return SegregationReport(
        names,
        tuple(" ".join(words) for words in order),
        counts,
        families,
        expected,
        test,
        fit,
        len(asked) - len(scored),
        impossible,
        strangers,
    )


def _is_stranger(net: PedigreeNetwork, plant: str) -> bool:
    parents = net.parents(plant)
    cross = net.book.crosses.get(parents.cross)
    if cross is None or not parents.finding:
        return False
    meant = certain_pollen(cross, net.book.candidates().get(cross.cross, []))
    return meant != "" and parents.pollen_parent != meant


def _pair(net: PedigreeNetwork, plant: str) -> tuple[str, str]:
    parents = net.parents(plant)
    return parents.seed_parent, parents.pollen_parent


def _chances(
    net: PedigreeNetwork, pair: tuple[str, str], genes: Sequence[SeenGene | None], known: Copies
) -> dict[tuple[str, ...], Any] | None:
    """Chance of each class among the progeny of two parents, unlinked genes; None if not known."""
    if not all(pair) or any(code in net.withheld for code in pair):
        return None
    ploidy = net.ploidy(pair[0])
    if ploidy not in (2, 4) or net.ploidy(pair[1]) != ploidy:
        return None
    looks: list[dict[str, Any]] = []
    for gene in genes:
        if gene is None:
            return None
        doses = [known(code, gene.locus, gene.dominant) for code in pair]
        if doses[0] is None or doses[1] is None:
            return None
        own: dict[str, Any] = {}
        alpha = Fraction(net.book.double_reduction()).limit_denominator(10**6)
        for copies, share in enumerate(dose_distribution(doses[0], doses[1], ploidy, alpha)):
            if share:
                word = gene.look(copies, ploidy)
                own[word] = own.get(word, 0) + share
        looks.append(own)
    found: dict[tuple[str, ...], Any] = {}
    for words in product(*looks):
        share = 1
        for own, word in zip(looks, words, strict=True):
            share = share * own[word]
        found[words] = share
    return found


def _classes(
    book: Book,
    traits: Sequence[str],
    genes: Sequence[SeenGene | None],
    seen: Sequence[tuple[str, ...]],
    chances: Sequence[dict[tuple[str, ...], Any] | None],
) -> list[tuple[str, ...]]:
    """Classes that were seen or are due, the dominant or first named value of each trait first."""
    due = {words for own in chances if own is not None for words in own}
    if not due or any(own is None for own in chances):
        due |= set(seen)
    ranks = []
    for trait, gene in zip(traits, genes, strict=True):
        words = list(reversed(gene.shows)) if gene is not None else []
        record = book.traits.get(trait)
        words += [v.strip() for v in record.values.split(";")] if record is not None else []
        ranks.append({word: at for at, word in reversed(list(enumerate(words)))})
    return sorted(
        due, key=lambda words: [(r.get(w, len(r)), w) for r, w in zip(ranks, words, strict=True)]
    )


def _families(
    by_parents: dict[tuple[str, str], list[str]],
    scored: dict[str, tuple[str, ...]],
    chances: dict[tuple[str, str], dict[tuple[str, ...], Any] | None],
    order: Sequence[tuple[str, ...]],
    impossible: set[str],
) -> tuple[FamilyCount, ...]:
    found: list[FamilyCount] = []
    tested: list[tuple[int, tuple[int, ...], Ratio]] = []
    for pair, held in by_parents.items():
        counts = tuple(
            sum(scored[p] == words and p not in impossible for p in held) for words in order
        )
        due = chances[pair]
        ratio = None
        if due is not None and len(due) == len(order) > 1:
            parts = tuple(due[words] for words in order)
            ratio = Ratio(parts, "computed from the parents", tuple(map(" ".join, order)))
            if sum(counts):
                tested.append((len(found), counts, ratio))
        found.append(FamilyCount(pair, counts, ratio, None))
    for (at, _, _), test in zip(tested, ratio_tests([(c, r) for _, c, r in tested]), strict=True):
        old = found[at]
        found[at] = FamilyCount(old.parents, old.counts, old.ratio, test)
    return tuple(found)
