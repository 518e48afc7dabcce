"""Records that cannot be true together, in groups from which none can be left out.

The chance of a group is 0 whatever the frequencies of the alleles are.  For each group other
parentages of its plants are tried, and those that make all records possible are proposed.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from pedigreeview.network.origins import UNKNOWN, Origin, Row
from pedigreeview.planning.inference import LARGEST_EXACT, Question, allele_frequencies
from pedigreeview.planning.loci import LocusModel, locus_model
from pedigreeview.planning.rows import row_of
from pedigreeview.planning.seen import Seen, records_of_locus

if TYPE_CHECKING:
    from pedigreeview.network.pedigree import PedigreeNetwork

__all__ = ["Contradiction", "Proposal", "contradictions"]

Tick = Callable[[int, int], None]
_MOST_PROPOSALS = 8


@dataclass(frozen=True, slots=True)
class Proposal:
    """Another parentage of one plant with which the records can be true.

    plant : the plant whose parentage would be different
    instead : 'a selfing of A'
    sentence : 'X cannot come from A × B: perhaps a selfing of A.'
    mends_all : whether every record of the locus is possible with it, apart from those of other
        contradictions
    """

    plant: str
    instead: str
    sentence: str
    mends_all: bool


@dataclass(frozen=True, slots=True)
class Contradiction:
    """A group of records that cannot be true together, and from which none can be left out.

    records : the group
    proposals : parentages that were tried and make it possible, the likeliest mistakes first
    sentence : the group and the first proposal in words
    """

    locus: str
    records: tuple[Seen, ...]
    proposals: tuple[Proposal, ...]
    sentence: str

    @property
    def plants(self) -> tuple[str, ...]:
        """The plants that the records speak of."""
        return tuple(dict.fromkeys(record.plant for record in self.records))


def contradictions(
    net: PedigreeNetwork,
    locus: str | LocusModel,
    *,
    misread: float = 0.0,
    genotypes: bool = True,
    most: int = 20,
    largest: int = LARGEST_EXACT,
    tick: Tick | None = None,
) -> list[Contradiction]:
    """Groups of records of one locus that cannot be true together.

    Parameters
    ----------
    misread, genotypes : as for `genotype_chances`; where phenotypes may be misread they contradict
        nothing
    most : groups after which to stop
    largest : numbers in the largest table; wider pedigrees are searched family by family
    tick : called with (groups found, most); may raise `Cancelled`

    Notes
    -----
    A group grows by the record at which the records up to it become impossible, until it is so by
    itself; then each record is left out in turn, and stays out where the rest still contradicts
    itself.  After each group the records of the plant that it
    tells against are set aside, and the search goes on.
    """
    model = locus_model(net.book, locus) if isinstance(locus, str) else locus
    shares = allele_frequencies(model)
    records = records_of_locus(net, model, misread=misread, genotypes=genotypes)
    found: list[Contradiction] = []
    for part in Question(net, model, shares, records).parts():
        for question in _searchable(part, largest):
            aside: set[int] = set()
            while len(found) < most:
                if tick is not None:
                    tick(len(found), most)
                if question.possible(aside):
                    break
                group = _minimal(question, aside)
                contradiction, told = _explained(question, group, aside)
                if not any(set(old.records) == set(contradiction.records) for old in found):
                    found.append(contradiction)
                aside |= {at for at, record in enumerate(question.records) if record.plant == told}
    return found


def _searchable(part: Question, largest: int) -> Iterator[Question]:
    """The question itself, or its families where it is too wide."""
    if part.tree.largest <= largest:
        yield part
        return
    net = part.net
    for plant in dict.fromkeys(record.plant for record in part.records):
        near = {plant, *net.parent_codes(plant), *net.progeny(plant)}
        family = part.part([r for r in part.records if r.plant in near], [])
        if family.tree.largest <= largest:
            yield family


def _minimal(question: Question, aside: set[int]) -> list[int]:
    """Numbers of records that contradict each other, none of which can be left out.

    The oldest plants come first, so that a plant is held against its parents sooner than its sibs.
    """
    rows = [record.row for record in question.records]
    ordered = sorted((at for at in range(len(rows)) if at not in aside), key=lambda at: rows[at])
    everything = set(range(len(rows)))

    def possible(kept: list[int]) -> bool:
        return question.possible(everything - set(kept))

    group: list[int] = []
    while not group or possible(group):
        # The shortest run from the oldest that contradicts itself: its last record belongs in.
        low, high = 0, len(ordered)
        while high - low > 1:
            middle = (low + high) // 2
            if possible([*group, *ordered[:middle]]):
                low = middle
            else:
                high = middle
        group.append(ordered[high - 1])
        ordered = ordered[: high - 1]
    for at in list(group):
        fewer = [other for other in group if other != at]
        if fewer and not possible(fewer):
            group = fewer
    return sorted(group)


def _explained(question: Question, group: list[int], aside: set[int]) -> tuple[Contradiction, str]:
    """The group in words, with proposals, and the plant that it tells against."""
    records = tuple(question.records[at] for at in group)
    proposals = tuple(_proposals(question, records, aside))
    listed = "; ".join(record.sentence() for record in records)
    if proposals:
        best = proposals[0]
        sentence = f"{best.sentence} These cannot all be true: {listed}."
        told = best.plant if best.plant in {r.plant for r in records} else ""
    else:
        sentence = f"These cannot all be true: {listed}. One of the records is wrong."
        told = ""
    if not told:
        told = max(records, key=lambda record: record.row).plant
    return Contradiction(question.model.locus, records, proposals, sentence), told


def _proposals(question: Question, records: Sequence[Seen], aside: set[int]) -> Iterator[Proposal]:
    net = question.net
    seen = {record.plant for record in records}
    behind = set(seen)
    for plant in seen:
        behind |= net.ancestors(plant)
    plants = sorted(
        (code for code in behind if code not in net.withheld),
        key=lambda code: (code not in seen, -row_of(net, code)),
    )
    group = question.part(records, [])
    kept = [record for at, record in enumerate(question.records) if at not in aside]
    made: list[tuple[int, int, Proposal]] = []
    for order, plant in enumerate(plants):
        if order > 200 or len(made) >= 3 * _MOST_PROPOSALS:
            break
        row = row_of(net, plant)
        for instead, words in _alternatives(net, row):
            if not _possible(group, {row: instead}):
                continue
            every = Question(
                question.net, question.model, question.frequencies, kept, (), {row: instead}
            )
            mends = every.tree.largest <= LARGEST_EXACT and every.possible()
            origin = _origin_words(net, plant)
            sentence = f"{plant} cannot come from {origin}: perhaps {words}."
            made.append((0 if mends else 1, order, Proposal(plant, words, sentence, mends)))
    made.sort(key=lambda item: item[:2])
    yield from (proposal for _, _, proposal in made[:_MOST_PROPOSALS])


def _possible(group: Question, instead: Mapping[int, Row]) -> bool:
    tried = Question(group.net, group.model, group.frequencies, group.records, (), instead)
    return tried.possible()


def _alternatives(net: PedigreeNetwork, row: int) -> Iterator[tuple[Row, str]]:
    """Other ways in which the plant of a row may have come about, the likeliest mistake first."""
    own = net.arrays.row(row)
    if own.origin is Origin.FOUNDER or own.fixation is not None:
        return
    bare = replace(own, seed=UNKNOWN, pollen=(), origin=Origin.CROSS)
    if own.origin in (Origin.CROSS, Origin.SELF):
        seed = own.seed
        certain = own.pollen[0][0] if len(own.pollen) == 1 and own.pollen[0][1] == 1 else UNKNOWN
        if certain != UNKNOWN and net.arrays.origin[certain] == Origin.FATHER:
            certain = UNKNOWN
        if own.origin is Origin.CROSS and seed != UNKNOWN:
            yield replace(bare, origin=Origin.SELF, seed=seed), f"a selfing of {net.label(seed)}"
        if own.origin is Origin.CROSS and certain != UNKNOWN:
            selfed = replace(bare, origin=Origin.SELF, seed=certain)
            yield selfed, f"a selfing of {net.label(certain)}"
        if seed != UNKNOWN and (own.origin is Origin.SELF or own.pollen):
            words = f"{net.label(seed)} with foreign pollen"
            yield replace(bare, seed=seed), words
        if own.origin is Origin.CROSS and certain != UNKNOWN and seed != UNKNOWN:
            words = f"of another seed parent, with pollen of {net.label(certain)}"
            yield replace(bare, pollen=((certain, 1.0),)), words
    yield bare, "a volunteer, or a plant with another's label"


def _origin_words(net: PedigreeNetwork, plant: str) -> str:
    origin = net.parents(plant)
    if origin.raised != "cross":
        return origin.source
    if origin.selfed:
        return f"a selfing of {origin.seed_parent}"
    pollen = " or ".join(code for code, _ in origin.pollen) or "an unknown pollen parent"
    return f"{origin.seed_parent or 'an unknown seed parent'} × {pollen}"
