"""The chance of every genotype of every plant at one locus, from all that was seen.

Base: founders and unknown parents have the stated frequencies of the alleles.  The answer is exact
where the largest table of the elimination stays small, else from a sampler, with its error said.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from pedigreeview.book.faults import Fault
from pedigreeview.network.origins import Row
from pedigreeview.planning.elimination import Impossible, Tree, tree_of
from pedigreeview.planning.genotype_model import GenotypeModel
from pedigreeview.planning.loci import LocusModel, locus_model
from pedigreeview.planning.rows import given_rows, row_of, rows_of
from pedigreeview.planning.seen import Seen, records_of_locus
from pedigreeview.planning.tables import Table

if TYPE_CHECKING:
    from pedigreeview.network.pedigree import PedigreeNetwork

__all__ = [
    "LARGEST_EXACT",
    "Carriers",
    "GenotypeChances",
    "Question",
    "allele_frequencies",
    "genotype_chances",
    "which_carry",
]

FloatArray = NDArray[np.float64]
Tick = Callable[[int, int], None]

LARGEST_EXACT = 2_000_000
"""Numbers in the largest table up to which the answer is computed exactly."""
LIKELY = 0.95
"""Chance from which a plant is said to carry an allele 'likely'; below 1 − this 'unlikely'."""
_SURE = 1e-9
_LARGEST_SAMPLED = 200_000
"""The same for the sampler, which runs through its tables some hundred times."""


@dataclass(frozen=True, slots=True)
class GenotypeChances:
    """Chances of the genotypes of plants at one locus.

    Attributes
    ----------
    model : the locus
    chances : plant → (genotypes,) chances, in the order of `model.texts(ploidy)`; of a pool those
        of one of its plants
    ploidy : plant → sets of chromosomes
    impossible : plants whose records, with those of their kin, cannot be true together; they have
        no chances (see `contradictions`)
    error : largest standard error of a chance, by the sampler; 0 where the answer is exact
    samples : effective number of samples behind it, 0 where exact
    base : one sentence on what the chances rest on
    """

    model: LocusModel
    chances: Mapping[str, FloatArray]
    ploidy: Mapping[str, int]
    impossible: tuple[str, ...]
    error: float
    samples: float
    base: str

    @property
    def exact(self) -> bool:
        """Whether no sampler was needed."""
        return self.samples == 0

    def of(self, plant: str) -> dict[str, float]:
        """Genotype → chance, likeliest first; those of chance 0 left out."""
        chances = self.chances[plant]
        texts = self.model.texts(self.ploidy[plant])
        held = {text: float(c) for text, c in zip(texts, chances, strict=True) if c > 0}
        return dict(sorted(held.items(), key=lambda item: -item[1]))

    def carrying(self, plant: str, allele: str) -> float:
        """Chance that a plant carries an allele at all."""
        holds = self.model.carries(self.model.allele(allele), self.ploidy[plant])
        return float(self.chances[plant][holds].sum())

    def fixed(self, plant: str, allele: str) -> float:
        """Chance that a plant has that allele alone."""
        at = self.model.texts(self.ploidy[plant]).index("/".join([allele] * self.ploidy[plant]))
        return float(self.chances[plant][at])

    def showing(self, plant: str) -> FloatArray:
        """Chance of each phenotype of the locus in a plant."""
        from pedigreeview.planning.inheritance import multisets

        found = np.zeros(len(self.model.phenotypes))
        held = multisets(len(self.model.alleles), self.ploidy[plant])
        for genotype, chance in zip(held, self.chances[plant], strict=True):
            found[self.model.shows(genotype)] += chance
        return found

    def verdict(self, plant: str, allele: str) -> str:
        """'surely', 'likely', 'open', 'unlikely' or 'cannot': whether a plant carries an allele."""
        chance = self.carrying(plant, allele)
        # Sampled chances of 0 and 1 are no proof.
        if self.exact and chance >= 1 - _SURE:
            return "surely"
        if self.exact and chance <= _SURE:
            return "cannot"
        if chance >= LIKELY:
            return "likely"
        return "unlikely" if chance <= 1 - LIKELY else "open"


@dataclass(frozen=True, slots=True)
class Carriers:
    """Plants by whether they carry an allele; each (code, chance), the likeliest first.

    surely, likely, open, unlikely, cannot : as `GenotypeChances.verdict`
    impossible : plants without a chance, since their records contradict each other
    """

    surely: tuple[tuple[str, float], ...]
    likely: tuple[tuple[str, float], ...]
    open: tuple[tuple[str, float], ...]
    unlikely: tuple[tuple[str, float], ...]
    cannot: tuple[tuple[str, float], ...]
    impossible: tuple[str, ...]


def allele_frequencies(
    model: LocusModel, frequencies: Mapping[str, float] | None = None
) -> FloatArray:
    """Frequencies of the alleles in founders: as stated, the rest shared alike; (alleles,).

    Raises
    ------
    ValueError : frequencies that are no chances, or of an allele that the locus lacks
    """
    stated = dict(frequencies or {})
    if set(stated) - set(model.alleles):
        raise ValueError(f"{model.locus} has no allele {sorted(set(stated) - set(model.alleles))}")
    rest = 1.0 - sum(stated.values())
    silent = [name for name in model.alleles if name not in stated]
    if any(value < 0 for value in stated.values()) or rest < -1e-9 or (rest > 1e-9 and not silent):
        raise ValueError("the frequencies of the alleles add up to 1")
    each = max(0.0, rest) / len(silent) if silent else 0.0
    found = np.array([stated.get(name, each) for name in model.alleles])
    return found / found.sum()


@dataclass
class Question:
    """A question of inference: the pedigree of some plants with the records that speak of it.

    net, model, frequencies : the pedigree, the locus, and the alleles in founders
    records : what was seen
    plants : codes asked about
    instead : rows in place of the recorded ones
    """

    net: PedigreeNetwork
    model: LocusModel
    frequencies: FloatArray
    records: Sequence[Seen]
    plants: Sequence[str] = ()
    instead: Mapping[int, Row] = field(default_factory=dict)

    @cached_property
    def _built(self) -> tuple[GenotypeModel, list[int]]:
        """The model, and the unknown that each record speaks of."""
        rows = dict.fromkeys([record.row for record in self.records])
        rows.update(dict.fromkeys(rows_of(self.net, self.plants).tolist()))
        built = GenotypeModel(self.net.arrays, self.frequencies, list(rows), self.instead)
        spoken = [
            built.seed_on(record.row, record.selfed)
            if record.of_seed
            else built.unknown_of[record.row]
            for record in self.records
        ]
        return built, spoken

    @property
    def lengths(self) -> list[int]:
        """Number of values of each unknown."""
        return self._built[0].lengths

    def unknown(self, plant: str) -> int:
        """The unknown of a plant that is asked about or has a record."""
        return self._built[0].unknown_of[row_of(self.net, plant)]

    def tables(self, without: frozenset[int] | set[int] = frozenset()) -> list[Table]:
        """The tables of inheritance, then one for each record; all ones for those left out."""
        built, spoken = self._built
        said = [
            Table((unknown,), np.ones_like(r.chances) if at in without else r.chances)
            for at, (unknown, r) in enumerate(zip(spoken, self.records, strict=True))
        ]
        return [*built.tables, *said]

    @cached_property
    def tree(self) -> Tree:
        """The tree of elimination of all tables."""
        return tree_of([table.names for table in self.tables()], self.lengths)

    def kin(self) -> list[set[int]]:
        """Unknowns parted into those that hang together by the pedigree."""
        import networkx as nx

        graph = nx.Graph()
        for table in self.tables():
            nx.add_path(graph, table.names)
        return [set(part) for part in nx.connected_components(graph)]

    def possible(self, without: frozenset[int] | set[int] = frozenset()) -> bool:
        """Whether all records but those left out can be true together."""
        try:
            self.tree.run(self.tables(without), back=False, possible=True)
        except Impossible:
            return False
        return True

    def part(self, records: Sequence[Seen], plants: Sequence[str]) -> Question:
        """The same question for fewer records and plants."""
        return Question(self.net, self.model, self.frequencies, records, plants, self.instead)

    def parts(self) -> list[Question]:
        """The question parted into those that have nothing to do with each other."""
        _, spoken = self._built
        part_of: dict[int, int] = {}
        for at, names in enumerate(self.kin()):
            part_of.update(dict.fromkeys(names, at))
        records: dict[int, list[Seen]] = {}
        plants: dict[int, list[str]] = {}
        for record, unknown in zip(self.records, spoken, strict=True):
            records.setdefault(part_of[unknown], []).append(record)
        for plant in self.plants:
            plants.setdefault(part_of[self.unknown(plant)], []).append(plant)
        every = dict.fromkeys([*records, *plants])
        return [self.part(records.get(at, []), plants.get(at, [])) for at in every]


def genotype_chances(
    net: PedigreeNetwork,
    locus: str | LocusModel,
    *,
    plants: Sequence[str] | None = None,
    misread: float = 0.0,
    frequencies: Mapping[str, float] | None = None,
    genotypes: bool = True,
    without: Sequence[Seen] = (),
    largest: int = LARGEST_EXACT,
    samples: int = 400,
    seed: int = 0,
    tick: Tick | None = None,
) -> GenotypeChances:
    """Chances of every genotype of plants at a locus, given every record of the book.

    Parameters
    ----------
    plants : whom to ask about; default every plant that is not withheld
    misread : chance that a phenotype was read as another one
    frequencies : allele → frequency in founders and unknown parents; those not stated share the
        rest alike (with none stated: all alike)
    genotypes : whether recorded genotypes count
    without : records to leave out, by what they say (of `records_of_locus`)
    largest : numbers in the largest table up to which the answer is exact
    samples, seed : of the sampler, where it is needed
    tick : called with (done, in all); may raise `Cancelled`

    Raises
    ------
    Fault : the locus or a genotype cannot be read, or the sampler finds no way
    """
    model = locus_model(net.book, locus) if isinstance(locus, str) else locus
    shares = allele_frequencies(model, frequencies)
    asked = list(given_rows(net) if plants is None else dict.fromkeys(plants))
    left_out = {record.sentence() for record in without}
    records = [
        record
        for record in records_of_locus(net, model, misread=misread, genotypes=genotypes)
        if record.sentence() not in left_out
    ]
    chances: dict[str, FloatArray] = {}
    impossible: list[str] = []
    error = effective = 0.0
    parts = Question(net, model, shares, records, asked).parts()
    for at, part in enumerate(parts):
        if tick is not None:
            tick(at, len(parts))
        try:
            found, wrong, count = _answer(part, largest, samples, seed, tick)
        except Impossible:
            impossible.extend(part.plants)
            continue
        chances.update(found)
        if count:
            error = max(error, wrong)
            effective = count if not effective else min(effective, count)
    order = {plant: chances[plant] for plant in asked if plant in chances}
    ploidy = {plant: net.ploidy(plant) for plant in asked}
    base = _base(model, shares, misread)
    return GenotypeChances(model, order, ploidy, tuple(impossible), error, effective, base)


def _answer(
    question: Question, largest: int, samples: int, seed: int, tick: Tick | None
) -> tuple[dict[str, FloatArray], float, float]:
    """Chances, largest standard error and effective samples (0, 0 where exact)."""

    def watch() -> None:
        if tick is not None:
            tick(0, 1)

    if question.tree.largest <= largest:
        question.tree.run(question.tables(), watch=watch)
        found = {plant: question.tree.chances(question.unknown(plant)) for plant in question.plants}
        return found, 0.0, 0.0
    if question.plants and question.records:
        # Plants that were not seen make the question wider; one at a time they may not.
        core = question.part(question.records, [])
        if core.tree.largest <= largest:
            narrow = _one_by_one(question, largest, watch)
            if narrow is not None:
                return narrow, 0.0, 0.0
    from pedigreeview.planning.sampler import sampled

    limit = min(largest, _LARGEST_SAMPLED)
    try:
        return sampled(question, limit, samples, seed, tick)
    except Fault:
        # Larger tables hold fewer plants, so that more of what is drawn is possible.
        if limit == largest:
            raise
    return sampled(question, largest, samples, seed, tick)


def _one_by_one(
    question: Question, largest: int, watch: Callable[[], None]
) -> dict[str, FloatArray] | None:
    found = {}
    for plant in question.plants:
        alone = question.part(question.records, [plant])
        if alone.tree.largest > largest:
            return None
        alone.tree.run(alone.tables(), watch=watch)
        found[plant] = alone.tree.chances(alone.unknown(plant))
    return found


def _base(model: LocusModel, frequencies: FloatArray, misread: float) -> str:
    said = ", ".join(
        f"{name} {share:.3g}" for name, share in zip(model.alleles, frequencies, strict=True)
    )
    wrong = f"{misread:.3g} of the phenotypes misread" if misread else "no phenotype misread"
    return f"Alleles in founders and unknown parents: {said}; {wrong}."


def which_carry(
    net: PedigreeNetwork, locus: str, allele: str, *, answer: GenotypeChances | None = None
) -> Carriers:
    """Which plants of the book carry an allele for sure, likely, perhaps, hardly, or cannot.

    Parameters
    ----------
    answer : chances that were computed before; default `genotype_chances(net, locus)`

    Raises
    ------
    Fault : as `genotype_chances`, or the locus lacks the allele
    """
    found = answer if answer is not None else genotype_chances(net, locus)
    found.model.allele(allele)
    held: dict[str, list[tuple[str, float]]] = {
        word: [] for word in ("surely", "likely", "open", "unlikely", "cannot")
    }
    for plant in found.chances:
        chance = found.carrying(plant, allele)
        held[found.verdict(plant, allele)].append((plant, chance))
    ordered = {
        word: tuple(sorted(plants, key=lambda item: -item[1])) for word, plants in held.items()
    }
    return Carriers(**ordered, impossible=found.impossible)
