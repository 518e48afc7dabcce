"""What was worked, taken, harvested and grown in each direction of a cross: plain sums.

A direction is a set of cross codes with the same seed parent (or the same seed variety).  A sum is
None where nothing was recorded, so that 'no fruit' and 'not written down' stay apart.  Rates are
taken only over records that carry both of their numbers.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass

from pedigreeview.book.book import Book
from pedigreeview.book.records import Harvest, Plant, Pollination, Score, Sowing, Trait

__all__ = ["DirectionCounts", "RecordsByCross", "TraitSummary"]


@dataclass(frozen=True, slots=True)
class TraitSummary:
    """One trait over the progeny: a mean for scores and measures, counts for categories.

    n counts plants; a plant scored more than once enters with its own mean (its latest value where
    values are words).
    """

    trait: str
    unit: str
    n: int
    mean: float | None
    counts: tuple[tuple[str, int], ...]
    """Values that are words with the number of plants, the most frequent first."""


@dataclass(frozen=True, slots=True)
class DirectionCounts:
    """Everything recorded of one direction; None where nothing was written down."""

    crosses: tuple[str, ...]
    flowers: int | None
    fruits_set: int | None
    take_of: tuple[int, int] | None
    """Fruits set and flowers of the pollinations that say both."""
    fruits: int | None
    """Fruits harvested."""
    seeds: int | None
    seeds_of: tuple[int, int] | None
    """Seeds and fruits of the harvests that say both."""
    sown: int | None
    up: int | None
    progeny: tuple[str, ...]
    traits: tuple[TraitSummary, ...]

    @property
    def take_rate(self) -> float | None:
        """Fruits set for each flower worked, 0 to 1, or None."""
        if self.take_of is None or self.take_of[1] == 0:
            return None
        return self.take_of[0] / self.take_of[1]

    @property
    def seeds_per_fruit(self) -> float | None:
        """Seeds for each fruit harvested, or None."""
        if self.seeds_of is None or self.seeds_of[1] == 0:
            return None
        return self.seeds_of[0] / self.seeds_of[1]


class RecordsByCross:
    """The records of a book sorted by cross once, so that many directions can be asked for."""

    def __init__(self, book: Book) -> None:
        self._traits = book.traits
        self._pollinations: dict[str, list[Pollination]] = {}
        self._harvests: dict[str, list[Harvest]] = {}
        self._sowings: dict[str, list[Sowing]] = {}
        self._plants: dict[str, list[Plant]] = {}
        self._scores: dict[str, list[Score]] = {}
        for pollination in book.pollinations.values():
            self._pollinations.setdefault(pollination.cross, []).append(pollination)
        for harvest in book.harvests.values():
            self._harvests.setdefault(harvest.cross, []).append(harvest)
        for sowing in book.sowings.values():
            self._sowings.setdefault(_cross_of_sowing(book, sowing), []).append(sowing)
        for plant in book.plants.values():
            if plant.cross:
                self._plants.setdefault(plant.cross, []).append(plant)
        for score in book.scores:
            if score.of != "seed":
                self._scores.setdefault(score.plant, []).append(score)

    def direction(self, crosses: Iterable[str]) -> DirectionCounts:
        """The sums over some crosses, in the order given."""
        codes = tuple(crosses)
        pollinations = [row for code in codes for row in self._pollinations.get(code, ())]
        harvests = [row for code in codes for row in self._harvests.get(code, ())]
        sowings = [row for code in codes for row in self._sowings.get(code, ())]
        progeny = tuple(row.plant for code in codes for row in self._plants.get(code, ()))
        return DirectionCounts(
            crosses=codes,
            flowers=_total(row.flowers for row in pollinations),
            fruits_set=_total(row.set for row in pollinations),
            take_of=_both((row.set, row.flowers) for row in pollinations),
            fruits=_total(row.fruits for row in harvests),
            seeds=_total(row.seeds for row in harvests),
            seeds_of=_both((row.seeds, row.fruits) for row in harvests),
            sown=_total(row.seeds for row in sowings),
            up=_total(row.up for row in sowings),
            progeny=progeny,
            traits=tuple(self._summaries(progeny)),
        )

    def _summaries(self, plants: Iterable[str]) -> list[TraitSummary]:
        by_trait: dict[str, dict[str, list[Score]]] = {}
        for plant in plants:
            for score in self._scores.get(plant, ()):
                if score.value.strip():
                    by_trait.setdefault(score.trait, {}).setdefault(plant, []).append(score)
        order = {trait: place for place, trait in enumerate(self._traits)}
        return [
            _summary(self._traits.get(trait), trait, by_trait[trait])
            for trait in sorted(by_trait, key=lambda code: (order.get(code, len(order)), code))
        ]


def _cross_of_sowing(book: Book, sowing: Sowing) -> str:
    packet = book.packets.get(sowing.packet)
    if packet is not None:
        harvest = book.harvests.get(packet.harvest)
        if harvest is not None:
            return harvest.cross
    return sowing.sown_from if sowing.sown_from in book.crosses else ""


def _total(values: Iterable[int | None]) -> int | None:
    known = [value for value in values if value is not None]
    return sum(known) if known else None


def _both(pairs: Iterable[tuple[int | None, int | None]]) -> tuple[int, int] | None:
    known = [(part, whole) for part, whole in pairs if part is not None and whole is not None]
    if not known:
        return None
    return sum(part for part, _ in known), sum(whole for _, whole in known)


def _number(text: str) -> float | None:
    try:
        return float(text.strip().replace(",", "."))
    except ValueError:
        return None


def _summary(trait: Trait | None, code: str, scores: dict[str, list[Score]]) -> TraitSummary:
    unit = trait.unit if trait is not None else ""
    as_words = trait is not None and trait.type in ("category", "yes_no")
    if not as_words:
        means = []
        for rows in scores.values():
            known = [value for row in rows if (value := _number(row.value)) is not None]
            if known:
                means.append(sum(known) / len(known))
        if means:
            return TraitSummary(code, unit, len(means), sum(means) / len(means), ())
    latest = (max(rows, key=lambda row: row.date).value.strip() for rows in scores.values())
    counts = Counter(latest)
    ordered = tuple(sorted(counts.items(), key=lambda item: (-item[1], item[0])))
    return TraitSummary(code, unit, len(scores), None, ordered)
