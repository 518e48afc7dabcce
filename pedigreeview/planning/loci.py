"""A locus as its record states it: alleles, dominance, and which phenotype each genotype shows.

The alleles stand best (dominant) first.  With complete dominance the first allele that a plant has
shows, so the k-th phenotype belongs to the k-th allele.  Otherwise (incomplete dominance,
codominance, additive) every dose is seen: the phenotypes are those of the genotypes in the order of
`Inheritance.genotypes` (A/A; A/a; a/a), or three for a tetraploid with two alleles, the one in the
middle for every mixed dose.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.records import Locus, Trait
from pedigreeview.planning.inheritance import Multiset, multisets

__all__ = ["LocusModel", "locus_model", "phenotype_readings"]

BoolArray = NDArray[np.bool_]

_COMPLETE = ("", "complete", "dominant", "full")
_UNKNOWN_ALLELE = ("?", "-", "_", ".", "")


@dataclass(frozen=True, slots=True)
class LocusModel:
    """One locus ready for inference.

    locus : its code
    alleles : names, dominant first
    complete : whether dominance is complete
    phenotypes : their words, '' where the record has none
    readings : (trait, value) → number of the phenotype that the value shows
    """

    locus: str
    alleles: tuple[str, ...]
    complete: bool
    phenotypes: tuple[str, ...]
    readings: dict[tuple[str, str], int]

    def text(self, genotype: Multiset) -> str:
        """'C/c'."""
        return "/".join(self.alleles[allele] for allele in genotype)

    def texts(self, ploidy: int) -> tuple[str, ...]:
        """Every genotype at one ploidy, in the order of the answers."""
        return tuple(self.text(held) for held in multisets(len(self.alleles), ploidy))

    def shows(self, genotype: Multiset) -> int:
        """Number of the phenotype of a genotype."""
        if self.complete:
            return min(min(genotype), len(self.phenotypes) - 1)
        all_of_them = multisets(len(self.alleles), len(genotype))
        if len(self.phenotypes) == len(all_of_them):
            return all_of_them.index(genotype)
        if genotype[0] == genotype[-1]:
            return 0 if genotype[0] == 0 else len(self.phenotypes) - 1
        return 1

    def seen(self, phenotype: int, ploidy: int, misread: float) -> NDArray[np.float64]:
        """Chance of that reading for each genotype; (genotypes,).

        Parameters
        ----------
        misread : chance that a plant is read as another phenotype, spread over all others alike
        """
        others = max(1, len(self.phenotypes) - 1)
        return np.array(
            [
                1 - misread if self.shows(held) == phenotype else misread / others
                for held in multisets(len(self.alleles), ploidy)
            ]
        )

    def fitting(self, genotype: str, ploidy: int, place: Place) -> BoolArray:
        """Which genotypes a written genotype allows; '?' and '-' stand for any allele.

        Raises
        ------
        Fault : an allele that the locus does not have, or more alleles than the ploidy
        """
        written = [part.strip() for part in re.split(r"[/;|]", genotype)]
        known = [part for part in written if part not in _UNKNOWN_ALLELE]
        for part in known:
            if part not in self.alleles:
                raise Fault(
                    f"The genotype {genotype!r} has the allele {part!r}, which {self.locus} lacks.",
                    place,
                    f"Its alleles are {', '.join(self.alleles)}.",
                )
        if len(written) > ploidy:
            raise Fault(
                f"The genotype {genotype!r} has {len(written)} alleles for a plant of {ploidy}x.",
                place,
                "Write one allele for each set of chromosomes, '?' for one that is not known.",
            )
        wanted = {allele: known.count(name) for allele, name in enumerate(self.alleles)}
        return np.array(
            [
                all(held.count(allele) >= count for allele, count in wanted.items())
                for held in multisets(len(self.alleles), ploidy)
            ]
        )

    def carries(self, allele: int, ploidy: int) -> BoolArray:
        """Which genotypes hold the allele."""
        return np.array([allele in held for held in multisets(len(self.alleles), ploidy)])

    def allele(self, name: str) -> int:
        """Number of an allele.

        Raises
        ------
        Fault : the locus lacks it
        """
        if name not in self.alleles:
            raise Fault(
                f"The locus {self.locus} has no allele {name!r}.",
                None,
                f"Its alleles are {', '.join(self.alleles)}.",
            )
        return self.alleles.index(name)


def locus_model(
    book: Book, locus: str, readings: dict[tuple[str, str], int] | None = None
) -> LocusModel:
    """The model of a locus of the book.

    Parameters
    ----------
    readings : which values of which traits show which phenotype; by default found by the words
        (`phenotype_readings`)

    Raises
    ------
    Fault : the locus is not in the book, or has fewer than two alleles
    """
    record = book.loci.get(locus)
    if record is None:
        known = ", ".join(book.loci) or "none"
        raise Fault(f"There is no locus {locus!r} in this book.", None, f"It has {known}.")
    alleles = tuple(part.strip() for part in record.alleles.split(";") if part.strip())
    if len(alleles) < 2 or len(set(alleles)) < len(alleles):
        raise Fault(
            f"The locus {locus} needs two or more different alleles.",
            Place(column="alleles"),
            "Write them dominant first, parted by ';'.",
        )
    complete = record.dominance.strip().casefold() in _COMPLETE
    phenotypes = _phenotypes(record)
    usual = len(alleles) if complete else len(multisets(len(alleles), 2))
    found = LocusModel(
        locus,
        alleles,
        complete,
        phenotypes or ("",) * usual,
        phenotype_readings(book, record) if readings is None else dict(readings),
    )
    lengths = {usual} if complete else {usual, len(multisets(len(alleles), 4))}
    if phenotypes and len(phenotypes) not in lengths:
        raise Fault(
            f"The locus {locus} has {len(phenotypes)} phenotypes where its alleles make {usual}.",
            Place(column="phenotypes"),
            "Write one for each, in the order of the alleles, parted by ';'.",
        )
    return found


def _phenotypes(record: Locus) -> tuple[str, ...]:
    return tuple(part.strip() for part in record.phenotypes.split(";") if part.strip())


def phenotype_readings(book: Book, record: Locus) -> dict[tuple[str, str], int]:
    """Which scores speak of a locus, by their words: (trait, value) → number of the phenotype.

    A value shows a phenotype that is written alike, or that is the value with the name of its trait
    ('regular' of the trait leaf, 'regular leaf').  Where no trait fits so for every phenotype, the
    words that all phenotypes end in are taken off ('red fruit', 'orange fruit' of the trait
    colour), and one trait must fit alone.  A yes/no trait shows 'eye' and 'no eye'.
    """
    phenotypes = _phenotypes(record)
    if len(phenotypes) < 2:
        return {}
    exact: dict[str, list[str]] = {}
    loose: dict[str, list[str]] = {}
    short = _without_shared_end(phenotypes)
    for trait in book.traits.values():
        spoken = {_plain(_spoken(trait, value)): value for value in _values(trait)}
        spoken |= {_plain(value): value for value in _values(trait)}
        for wanted, into in ((phenotypes, exact), (short, loose)):
            if all(_plain(word) in spoken for word in wanted):
                into[trait.trait] = [spoken[_plain(word)] for word in wanted]
    named = {trait: found for trait, found in exact.items() if _names_trait(phenotypes, trait)}
    for held in (named, exact, loose):
        if len(held) == 1:
            ((trait_name, values),) = held.items()
            return {(trait_name, _plain(value)): place for place, value in enumerate(values)}
        if held:
            # Two traits fit alike: nobody knows which is meant.
            return {}
    return {}


def _values(trait: Trait) -> list[str]:
    if trait.type == "yes_no":
        return ["yes", "no"]
    return [part.strip() for part in trait.values.split(";") if part.strip()]


def _spoken(trait: Trait, value: str) -> str:
    if trait.type == "yes_no":
        return trait.trait if value == "yes" else f"no {trait.trait}"
    return f"{value} {trait.trait}"


def _plain(text: str) -> str:
    return " ".join(text.casefold().split())


def _names_trait(phenotypes: tuple[str, ...], trait: str) -> bool:
    return all(_plain(trait) in _plain(word) for word in phenotypes)


def _without_shared_end(phenotypes: tuple[str, ...]) -> tuple[str, ...]:
    words = [word.split() for word in phenotypes]
    while all(len(held) > 1 for held in words) and len({held[-1] for held in words}) == 1:
        words = [held[:-1] for held in words]
    return tuple(" ".join(held) for held in words)
