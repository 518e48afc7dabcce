"""What the records say of plants, made ready for tests: scores by plant, genes behind a trait."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass

from pedigreeview.book.book import Book
from pedigreeview.book.records import Locus, Score, Trait
from pedigreeview.planning.loci import phenotype_readings

__all__ = [
    "SeenGene",
    "alleles_of",
    "as_number",
    "copies_of",
    "gene_of_trait",
    "is_of_words",
    "numbers_of",
    "scored_traits",
    "words_of",
]


def as_number(text: str) -> float | None:
    """A value as a number, with point or comma; None if it is none."""
    try:
        return float(text.strip().replace(",", "."))
    except ValueError:
        return None


def is_of_words(trait: Trait | None) -> bool:
    """Whether the values of a trait are words."""
    return trait is not None and trait.type in ("category", "yes_no")


def _rows(book: Book, trait: str, plants: Iterable[str]) -> dict[str, list[Score]]:
    wanted = dict.fromkeys(plants)
    found: dict[str, list[Score]] = {}
    for score in book.scores:
        if score.trait == trait and score.plant in wanted and score.of != "seed" and score.value:
            found.setdefault(score.plant, []).append(score)
    return {plant: found[plant] for plant in wanted if plant in found}


def numbers_of(book: Book, trait: str, plants: Iterable[str]) -> dict[str, list[float]]:
    """All numbers scored of each plant for one trait, of the plant itself."""
    found = {}
    for plant, rows in _rows(book, trait, plants).items():
        known = [value for row in rows if (value := as_number(row.value)) is not None]
        if known:
            found[plant] = known
    return found


def words_of(book: Book, trait: str, plants: Iterable[str]) -> dict[str, str]:
    """The latest word scored of each plant for one trait."""
    record = book.traits.get(trait)
    found = {}
    for plant, held in _rows(book, trait, plants).items():
        word = max(held, key=lambda row: row.date).value.strip()
        found[plant] = word if record is None else _as_written(record, word)
    return found


def scored_traits(book: Book, plants: Iterable[str]) -> list[str]:
    """Traits scored of any of these plants, in the book's order."""
    wanted = set(plants)
    seen = {s.trait for s in book.scores if s.plant in wanted and s.of != "seed" and s.value}
    order = {trait: at for at, trait in enumerate(book.traits)}
    return sorted(seen, key=lambda trait: (order.get(trait, len(order)), trait))


@dataclass(frozen=True, slots=True)
class SeenGene:
    """One gene of two alleles whose phenotypes a trait records.

    dominant, recessive : names of the alleles
    shows : what no copy, some copies and nothing but copies of the dominant look like, as the trait
        writes its values; the last two are alike with complete dominance
    """

    locus: str
    trait: str
    dominant: str
    recessive: str
    shows: tuple[str, str, str]

    def look(self, copies: int, ploidy: int = 2) -> str:
        """What a plant with so many copies of the dominant looks like."""
        return self.shows[0 if copies == 0 else 2 if copies == ploidy else 1]


def alleles_of(locus: Locus) -> tuple[str, ...]:
    """Names of the alleles, the dominant first."""
    return tuple(part.strip() for part in locus.alleles.split(";") if part.strip())


def gene_of_trait(book: Book, trait: str) -> SeenGene | None:
    """The gene of two alleles whose phenotypes are values of the trait, or None.

    Which values speak of which gene is read as `loci.phenotype_readings` reads it.
    """
    record = book.traits.get(trait)
    if record is None:
        return None
    for code, locus in book.loci.items():
        alleles = alleles_of(locus)
        if len(alleles) != 2:
            continue
        word_of = {
            number: _as_written(record, value)
            for (of, value), number in phenotype_readings(book, locus).items()
            if of == trait
        }
        if len(word_of) in (2, 3):
            words = [word_of[number] for number in sorted(word_of)]
            shows = (words[-1], words[0] if len(words) == 2 else words[1], words[0])
            return SeenGene(code, trait, alleles[0], alleles[1], shows)
    return None


def _as_written(trait: Trait, value: str) -> str:
    """A value as the trait's own list writes it, whatever the case and the blanks."""
    plain = " ".join(value.casefold().split())
    for own in trait.values.split(";"):
        if " ".join(own.casefold().split()) == plain:
            return own.strip()
    return value.strip()


def copies_of(book: Book, plant: str, locus: str, allele: str) -> int | None:
    """Copies of an allele that a plant carries: from its genotype, or of a pure line as it looks.

    None where neither is recorded, or the genotype leaves it open ('?').
    """
    for row in reversed(book.genotypes):
        if row.plant == plant and row.locus == locus and row.genotype.strip():
            held = [part.strip() for part in re.split(r"[/;|]", row.genotype)]
            known = set(alleles_of(book.loci[locus])) if locus in book.loci else set(held)
            return Counter(held)[allele] if set(held) <= known else None
    record = book.plants.get(plant)
    if record is None or book.kind(record) != "variety":
        return None
    founder = book.raised(record) == "founder"
    fixation = book.founder_fixation(record) if founder else record.fixation
    if fixation not in (1, None):
        return None
    for trait in book.traits:
        gene = gene_of_trait(book, trait)
        if gene is not None and gene.locus == locus and allele in (gene.dominant, gene.recessive):
            word = words_of(book, trait, [plant]).get(plant)
            if word in (gene.shows[0], gene.shows[2]):
                dominant = word == gene.shows[2]
                return book.founder_ploidy(record) * (dominant == (allele == gene.dominant))
    return None
