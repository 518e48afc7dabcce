"""Both directions of a pair judged from the records: fruit set, seeds, every trait, and what a
difference would mean."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from pedigreeview.book.book import Book
from pedigreeview.planning.differences import MeansTest, SharesTest, means_test, shares_test
from pedigreeview.planning.fruit_set import FruitSetTest, fruit_set_test
from pedigreeview.planning.multiplicity import holm
from pedigreeview.planning.observations import (
    is_of_words,
    numbers_of,
    scored_traits,
    words_of,
)

if TYPE_CHECKING:
    from pedigreeview.network.pedigree import PedigreeNetwork
    from pedigreeview.network.reciprocals import ReciprocalPair

__all__ = ["ReciprocalReport", "SeedSet", "TraitPair", "reciprocal_report", "what_it_means"]

Test = MeansTest | SharesTest


@dataclass(frozen=True, slots=True)
class SeedSet:
    """Seeds of the two directions.

    totals : (seeds, fruits) of each direction, None where not recorded
    test : on counts of single fruits, None where only totals are known
    """

    totals: tuple[tuple[int, int] | None, tuple[int, int] | None]
    test: MeansTest | None

    def sentences(self, names: tuple[str, str]) -> list[str]:
        """Means a fruit; without single counts no p."""
        if self.test is not None:
            return self.test.sentences()
        said = [
            f"{held[0]} seeds in {held[1]} fruits ({held[0] / held[1]:.3g} a fruit) on {name}"
            for held, name in zip(self.totals, names, strict=True)
            if held is not None
        ]
        if not said:
            return []
        only = "Only totals are on record, so no test is possible: write down each fruit's seeds."
        return [f"Seeds: {'; '.join(said)}.", only]


@dataclass(frozen=True, slots=True)
class TraitPair:
    """One trait in the progeny of both directions, and in their selfed seed where it was grown.

    first, later : p adjusted over all traits of that generation (Holm)
    generations : their names
    """

    trait: str
    first: Test | None
    later: Test | None
    generations: tuple[str, str] = ("F1", "F2")

    def sentences(self) -> list[str]:
        """Both generations in words, and what they mean together."""
        found = []
        for test, generation in zip((self.first, self.later), self.generations, strict=True):
            if test is not None:
                found += test.sentences(f"in the {generation}, ")
        return [*found, *what_it_means(self.first, self.later)]


@dataclass(frozen=True, slots=True)
class ReciprocalReport:
    """All that the records say of two directions.

    names : the two parents; the first is the seed parent of the first direction
    plants : progeny judged of each direction, accidental selfs left out
    left_out : accidental selfs that were left out
    """

    names: tuple[str, str]
    crosses: tuple[tuple[str, ...], tuple[str, ...]]
    fruit_set: FruitSetTest | None
    seeds: SeedSet
    traits: tuple[TraitPair, ...]
    plants: tuple[tuple[str, ...], tuple[str, ...]]
    left_out: tuple[str, ...]
    same_cytoplasm: bool | None

    def sentences(self) -> list[str]:
        """The whole report, effects first."""
        a, b = self.names
        found = [f"{a} × {b} against {b} × {a}."]
        if self.fruit_set is None:
            found.append("Flowers and fruits are not written down for both directions.")
        else:
            found += self.fruit_set.sentences(self.names)
        found += self.seeds.sentences(self.names)
        if self.left_out:
            found.append(f"Left out as accidental selfs: {', '.join(self.left_out)}.")
        for trait in self.traits:
            found += trait.sentences()
        if self.same_cytoplasm:
            found.append(
                "Both directions go back to the same cytoplasm, so it cannot be what differs."
            )
        if len(self.traits) > 1:
            found.append(
                f"{len(self.traits)} traits were tested; each p is also given after Holm's "
                "correction where that changes it."
            )
        return found


def what_it_means(first: Test | None, later: Test | None) -> list[str]:
    """What a difference of two directions can come from, after the F1 and the F2.

    A difference through the mother plant (early vigour, seed size) fades in the F2, one through the
    cytoplasm stays (trade terms, numbers of plants).
    """
    in_first = first is not None and first.verdict == "differs"
    in_later = later is not None and later.verdict == "differs"
    if in_first and later is None:
        return [
            "A difference may come from the cytoplasm, from the mother plant, from mixed-up labels "
            "or from chance; self plants of both directions and grow them side by side to tell: "
            "what the mother plant gave fades there, what the cytoplasm gives stays."
        ]
    if in_first and in_later:
        if _sign(first) * _sign(later) < 0:
            return [
                "The two generations differ in opposite ways, which speaks for mixed-up labels or "
                "different beds rather than for the cytoplasm."
            ]
        return ["The difference stays in the selfed progeny, which speaks for the cytoplasm."]
    if in_first:
        return [
            "In the selfed progeny no difference is shown, which speaks for the mother plant (or "
            "for chance) rather than for the cytoplasm."
        ]
    if in_later and first is not None:
        return [
            "Only the selfed progeny differ: the plants that were selfed may have differed, or the "
            "labels or beds; the cytoplasm alone would show before too."
        ]
    return []


def _sign(test: Test | None) -> int:
    if isinstance(test, MeansTest):
        return (test.difference > 0) - (test.difference < 0)
    return 1


def reciprocal_report(net: PedigreeNetwork, pair: ReciprocalPair) -> ReciprocalReport:
    """The report of a reciprocal pair (`net.reciprocal_pairs()`).

    Progeny that a finding shows to be selfs of the seed parent, and pools, are not counted; a
    plant scored more than once enters with its mean.
    """
    from pedigreeview.book.reciprocal_counts import RecordsByCross

    book = net.book
    records = RecordsByCross(book)
    sides = [records.direction(codes) for codes in pair.crosses]
    take = None
    if all(side.take_of for side in sides):
        (a, m), (b, n) = (side.take_of or (0, 0) for side in sides)
        if a <= m and b <= n:
            take = fruit_set_test((a, b), (m, n))
    plants, out = [], []
    for codes in pair.crosses:
        raised = [p for code in codes for p in net.progeny_of_cross(code)]
        single = [p for p in raised if not book.is_pool(book.plants[p])]
        selfs = {p for p in single if net.parents(p).selfed}
        out += [p for p in single if p in selfs]
        plants.append(tuple(p for p in single if p not in selfs))
    seconds = [tuple(_selfed_progeny(net, first)) for first in plants]
    names = scored_traits(book, [p for side in (*plants, *seconds) for p in side])
    firsts = _tests(book, names, plants[0], plants[1])
    laters = _tests(book, names, seconds[0], seconds[1])
    generations = (
        _generation(net, plants, "first progeny"),
        _generation(net, seconds, "selfed progeny"),
    )
    traits = tuple(
        TraitPair(name, firsts[name], laters[name], generations)
        for name in names
        if firsts[name] is not None or laters[name] is not None
    )
    first, second = pair.parents
    return ReciprocalReport(
        (first, second),
        pair.crosses,
        take,
        _seeds(book, pair.crosses, (sides[0].seeds_of, sides[1].seeds_of)),
        traits,
        (plants[0], plants[1]),
        tuple(out),
        net.same_cytoplasm(first, second),
    )


def _generation(net: PedigreeNetwork, sides: Iterable[Iterable[str]], usual: str) -> str:
    names = {net.generation_name(plant) for side in sides for plant in side}
    only = names.pop() if len(names) == 1 else None
    return only or usual


def _selfed_progeny(net: PedigreeNetwork, plants: Iterable[str]) -> list[str]:
    wanted = set(plants)
    return [
        code
        for plant in plants
        for code in net.progeny(plant)
        if net.parents(code).selfed
        and net.parents(code).seed_parent in wanted
        and not net.book.is_pool(net.book.plants[code])
    ]


def _seeds(
    book: Book,
    crosses: tuple[tuple[str, ...], tuple[str, ...]],
    totals: tuple[tuple[int, int] | None, tuple[int, int] | None],
) -> SeedSet:
    single = []
    for codes in crosses:
        rows = [h for h in book.harvests.values() if h.cross in codes and h.fruits]
        alone = [float(h.seeds) for h in rows if h.fruits == 1 and h.seeds is not None]
        # Fruits counted together beside single ones would leave out a part of the harvest.
        single.append(alone if rows and len(alone) == len(rows) else [])
    test = None
    if all(single):
        test = means_test(single[0], single[1], what="seeds a fruit", things="fruits")
    return SeedSet(totals, test)


def _tests(
    book: Book, traits: Sequence[str], one: Sequence[str], other: Sequence[str]
) -> dict[str, Test | None]:
    found: dict[str, Test | None] = {trait: _test(book, trait, one, other) for trait in traits}
    adjusted = holm([test.p if test is not None else None for test in found.values()])
    for (trait, test), p in zip(list(found.items()), adjusted, strict=True):
        if test is not None and p is not None:
            found[trait] = replace(test, p_adjusted=p)
    return found


def _test(book: Book, trait: str, one: Sequence[str], other: Sequence[str]) -> Test | None:
    record = book.traits.get(trait)
    if not is_of_words(record):
        means = [
            [sum(held) / len(held) for held in numbers_of(book, trait, side).values()]
            for side in (one, other)
        ]
        if all(means):
            unit = record.unit if record is not None else ""
            return means_test(means[0], means[1], what=trait, unit=unit)
        return None
    words = [list(words_of(book, trait, side).values()) for side in (one, other)]
    if not all(words):
        return None
    values = list(dict.fromkeys([*words[0], *words[1]]))
    counts = [(words[0].count(value), words[1].count(value)) for value in values]
    return shares_test(trait, values, counts)
