"""A wish read from the book: genes of the wanted traits, their linkage, what parents carry."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise
from typing import TYPE_CHECKING, Any

from numpy.typing import NDArray

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.planning.observations import SeenGene, copies_of, gene_of_trait
from pedigreeview.planning.targets import (
    Share,
    Target,
    WantedTrait,
    from_copies,
    recombination_from_cM,
)

if TYPE_CHECKING:
    from pedigreeview.network.pedigree import PedigreeNetwork

__all__ = ["Wish", "wish_of_book"]

_HALF = Fraction(1, 2)

Copies = Callable[[str, str, str], int | None]


@dataclass(frozen=True, slots=True)
class Wish:
    """A target with two parents read from the book.

    genes : of the target's loci, in its order
    seed, pollen : (4,) * n, the parents
    notes : what was assumed, one sentence each
    """

    target: Target
    genes: tuple[SeenGene, ...]
    seed: NDArray[Any]
    pollen: NDArray[Any]
    notes: tuple[str, ...]


def wish_of_book(
    net: PedigreeNetwork,
    seed: str,
    pollen: str,
    wanted: Iterable[tuple[str, str]],
    *,
    copies: Copies | None = None,
) -> Wish:
    """The wish for some values of traits in one plant, out of two parents.

    Parameters
    ----------
    wanted : (trait, value), such as ('height', 'dwarf')
    copies : (plant, locus, allele) to the copies it carries; None: as recorded

    Raises
    ------
    Fault : a trait without a gene, a value that is not one of its phenotypes, parents whose genes
        are not known, or who are not diploid
    """
    book = net.book
    for parent in (seed, pollen):
        if net.ploidy(parent) != 2:
            raise Fault(
                f"{parent} is {net.ploidy(parent)}x; several genes together are followed in 2x.",
                Place(plant=parent),
                "Ask about one gene at a time.",
            )
    known = copies or (lambda plant, locus, allele: copies_of(book, plant, locus, allele))
    held = [(_gene(book, trait), value) for trait, value in wanted]
    held.sort(key=lambda item: _map_place(book, item[0].locus))
    traits, alleles = [], []
    for gene, value in held:
        rule, allele = _rule(gene, value)
        alleles.append(allele)
        name = f"{value} {gene.trait}"
        traits.append(WantedTrait(name, (gene.locus,), rule))
    gaps: list[Share] = []
    notes: list[str] = []
    for (one, _), (other, _) in pairwise(held):
        gaps.append(_gap(book, one.locus, other.locus, notes))
    target = Target.of(*traits, linked=gaps)
    parents = []
    for parent in (seed, pollen):
        counts = []
        for (gene, _), allele in zip(held, alleles, strict=True):
            count = known(parent, gene.locus, allele)
            if count is None:
                raise Fault(
                    f"What {parent} carries at {gene.locus} is not known.",
                    Place(plant=parent),
                    f"Write down its genotype, or score its {gene.trait}.",
                )
            counts.append(count)
        linked = [i for i, count in enumerate(counts) if count == 1]
        if any(all(gap != _HALF for gap in gaps[a:b]) for a, b in pairwise(linked)):
            notes.append(
                f"Which alleles lie together on a chromosome of {parent} is not on record; every "
                "way is taken as equally likely."
            )
        parents.append(from_copies(counts))
    return Wish(target, tuple(gene for gene, _ in held), parents[0], parents[1], tuple(notes))


def _gene(book: Book, trait: str) -> SeenGene:
    gene = gene_of_trait(book, trait)
    if gene is None:
        raise Fault(
            f"No gene of this book says how {trait} is inherited.",
            Place(column="loci"),
            "Add a locus with two alleles whose phenotypes are the trait's values.",
        )
    return gene


def _rule(gene: SeenGene, value: str) -> tuple[Any, str]:
    none, some, all_of = gene.shows
    if value == none:
        return "recessive", gene.recessive
    if value == all_of:
        return ("dominant" if some == all_of else "recessive"), gene.dominant
    words = ", ".join(dict.fromkeys(gene.shows))
    raise Fault(
        f"{value!r} of {gene.trait} does not breed true or is none of {words}.",
        Place(column="traits"),
        "Wish for a value that a fixed plant can have.",
    )


def _map_place(book: Book, locus: str) -> tuple[str, float, str]:
    record = book.loci[locus]
    position = record.position_cM if record.position_cM is not None else float("inf")
    return record.chromosome, position, locus


def _gap(book: Book, one: str, other: str, notes: list[str]) -> Share:
    a, b = book.loci[one], book.loci[other]
    if not a.chromosome or a.chromosome != b.chromosome:
        return _HALF
    if a.position_cM is None or b.position_cM is None:
        notes.append(
            f"{one} and {other} lie on the same chromosome, but how far apart is not on record; "
            "they are taken as unlinked."
        )
        return _HALF
    return recombination_from_cM(abs(b.position_cM - a.position_cM))
