"""Is this line stable: F expected, spread of scores against the parent lines', off-types seen."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass
from math import sqrt
from typing import TYPE_CHECKING

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault
from pedigreeview.planning.fixing import selfings_until
from pedigreeview.planning.observations import (
    gene_of_trait,
    is_of_words,
    numbers_of,
    scored_traits,
    words_of,
)
from pedigreeview.planning.off_types import OffTypes, judge_off_types

if TYPE_CHECKING:
    from pedigreeview.network.pedigree import PedigreeNetwork

__all__ = ["LineReport", "OddPlant", "TraitSpread", "line_report", "members_of", "spread_ratio"]

_FIXED = 0.99
_FEW = 10


@dataclass(frozen=True, slots=True)
class OddPlant:
    """A plant unlike its row in a trait with words.

    foreign : the row shows the recessive alone and the plant the dominant, which cannot segregate
    """

    plant: str
    trait: str
    value: str
    usual: str
    foreign: bool

    def sentence(self) -> str:
        """What is odd about it."""
        said = f"{self.plant}: {self.trait} {self.value} in a row of {self.usual}"
        if self.foreign:
            return f"{said}; that is foreign pollen or a volunteer, not segregation."
        return f"{said}."


@dataclass(frozen=True, slots=True)
class TraitSpread:
    """The spread of one measured trait in the row, against that of uniform plants.

    sd, number : of the row's plants; against, against_number : within the parent lines and
        their F1, which are alike by descent; None where no two of them were measured
    low, high : 95% interval of the ratio of the two standard deviations
    """

    trait: str
    unit: str
    sd: float
    number: int
    against: float | None
    against_number: int
    low: float | None
    high: float | None

    @property
    def verdict(self) -> str:
        """'still varies', 'as even as its parents' or 'too few to tell'."""
        if self.low is None or self.high is None:
            return "too few to tell"
        if not self.sd and self.number < _FEW:
            # Without any spread the interval has no width, however few they are.
            return "too few to tell"
        if self.low > 1:
            return "still varies"
        return "as even as its parents" if self.high < 2 else "too few to tell"

    def sentence(self) -> str:
        """The spread in words."""
        unit = f" {self.unit}" if self.unit else ""
        said = f"{self.trait}: one sd is {self.sd:.3g}{unit} over {self.number} plants"
        said = said[:1].upper() + said[1:]
        if self.against is None or self.low is None or self.high is None:
            return f"{said}; no plants that are all alike were measured to set it against."
        words = {
            "still varies": "the row still varies more than they do",
            "as even as its parents": "it is as even as its parents",
            "too few to tell": "too few to tell whether it is as even",
        }[self.verdict]
        if not self.sd:
            return (
                f"{self.trait[:1].upper()}{self.trait[1:]}: all {self.number} plants alike as "
                f"measured, against one sd of {self.against:.3g}{unit} among plants that are all "
                f"alike: {words}."
            )
        return (
            f"{said} against {self.against:.3g}{unit} among plants that are all alike (ratio "
            f"likely between {self.low:.2g} and {self.high:.2g}): {words}."
        )


@dataclass(frozen=True, slots=True)
class LineReport:
    """Everything that speaks for or against a line being stable.

    inbreeding : F expected of its plants, None where it is withheld
    generation : the trade's name, or None
    more_selfings : until F is 0.99, None where selfing is not the question
    segregating : (trait, counts) where recessives still come out of a dominant row
    """

    code: str
    plants: tuple[str, ...]
    inbreeding: float | None
    generation: str | None
    more_selfings: int | None
    odd: tuple[OddPlant, ...]
    segregating: tuple[tuple[str, tuple[tuple[str, int], ...]], ...]
    off_types: OffTypes
    spreads: tuple[TraitSpread, ...]

    @property
    def verdict(self) -> str:
        """'not stable', 'too few to tell', 'looks stable', or 'none seen, too few to tell'.

        'looks stable' needs the bound of the share of off-types within what is put up with.
        """
        varies = any(spread.verdict == "still varies" for spread in self.spreads)
        own = self.off_types.seen > 0
        if self.segregating or varies or (own and not self.off_types.uniform):
            return "not stable"
        if self.off_types.plants < _FEW or self.inbreeding is None or self.inbreeding < 0.9:
            return "too few to tell"
        if self.off_types.bound <= self.off_types.wanted:
            return "looks stable"
        return "too few to tell" if own else "none seen, too few to tell"

    def sentences(self) -> list[str]:
        """The verdict, then what it rests on."""
        words = {
            "not stable": "is not stable yet",
            "looks stable": "looks stable as far as it was scored",
            "too few to tell": "has too little behind it to tell",
        }
        if self.verdict in words:
            found = [f"{self.code} {words[self.verdict]}."]
        else:
            found = [f"{self.code}: no own off-type seen, too few to tell."]
        if self.inbreeding is not None:
            name = f"{self.generation}, " if self.generation else ""
            found.append(
                f"{name[:1].upper()}{name[1:]}F expected {self.inbreeding:.4g}: "
                f"{100 * (1 - self.inbreeding):.3g}% of what once segregated is expected to do so "
                "still in each plant."
            )
        if self.more_selfings:
            noun = "selfing" if self.more_selfings == 1 else "selfings"
            found.append(f"{self.more_selfings} more {noun} bring F to {_FIXED:g}.")
        for trait, counts in self.segregating:
            said = " : ".join(f"{count} {value}" for value, count in counts)
            found.append(f"It still segregates for {trait}: {said}.")
        found += [odd.sentence() for odd in self.odd]
        found += self.off_types.sentences()
        return [*found, *(spread.sentence() for spread in self.spreads)]


def members_of(net: PedigreeNetwork, code: str) -> tuple[str, ...]:
    """The single plants that stand for a line.

    Of a family its cross's plants, of a variety those grown from its seed, of a plant its selfed
    progeny (the row that was grown from it).
    """
    book = net.book
    record = book.plants[code]
    if book.is_pool(record):
        grown = [c for c in net.progeny(code) if net.parents(c).raised in ("seed_of", "sibbed_in")]
        held = list(net.progeny_of_cross(record.cross)) if record.cross else []
        found = dict.fromkeys([*held, *grown])
    else:
        found = dict.fromkeys(_row_of(net, code))
    found.pop(code, None)
    return tuple(p for p in found if not book.is_pool(book.plants[p]))


def _row_of(net: PedigreeNetwork, code: str) -> list[str]:
    """All plants of the plant's selfings; those with a strange finding grew in the row too."""
    as_seed, as_pollen = net.crosses_of(code)
    both = set(as_pollen)
    return [p for cross in as_seed if cross in both for p in net.progeny_of_cross(cross)]


def line_report(net: PedigreeNetwork, code: str, *, wanted: float = 0.05) -> LineReport:
    """Judge whether a line (a family, a variety, or the row grown from one plant) is stable.

    Parameters
    ----------
    wanted : largest share of off-types that would be put up with

    Raises
    ------
    Fault : the book has no such plant
    """
    if code not in net:
        raise Fault(f"There is no plant {code!r} in this book.", None, "Name a line of the book.")
    book = net.book
    plants = members_of(net, code)
    inbreeding, generation, more = _expected(net, code, plants)
    odd: list[OddPlant] = []
    segregating = []
    judged: set[str] = set()
    spreads = []
    for trait in scored_traits(book, plants):
        if is_of_words(book.traits.get(trait)):
            words = words_of(book, trait, plants)
            judged |= set(words)
            here, counts = _odd(book, trait, words)
            odd += here
            if counts:
                segregating.append((trait, counts))
        else:
            spread = _spread(net, trait, code, plants)
            if spread is not None:
                spreads.append(spread)
    strays = {one.plant for one in odd if one.foreign}
    seen = {one.plant for one in odd} - strays
    return LineReport(
        code,
        plants,
        inbreeding,
        generation,
        more,
        tuple(odd),
        tuple(segregating),
        judge_off_types(len(seen), len(judged - strays), wanted=wanted, strays=len(strays)),
        tuple(spreads),
    )


def _expected(
    net: PedigreeNetwork, code: str, plants: tuple[str, ...]
) -> tuple[float | None, str | None, int | None]:
    # Of a plant the line is its selfed row, so F and generation are those of the row.
    sure = [p for p in plants if not net.parents(p).finding and p not in net.withheld]
    of = code if net.book.is_pool(net.book.plants[code]) or not sure else sure[0]
    if of in net.withheld:
        return None, net.generation_name(of), None
    inbreeding = net.inbreeding(of)
    ploidy = net.ploidy(of)
    more = None
    if ploidy % 2 == 0 and inbreeding < _FIXED:
        more = selfings_until(
            _FIXED,
            inbreeding=inbreeding,
            ploidy=ploidy,
            double_reduction=net.book.double_reduction(),
        )
    return inbreeding, net.generation_name(of), more


def _odd(
    book: Book, trait: str, words: dict[str, str]
) -> tuple[list[OddPlant], tuple[tuple[str, int], ...]]:
    """Odd plants of one trait; or counts where it plainly segregates."""
    counts = Counter(words.values())
    if len(counts) < 2:
        return [], ()
    (usual, most), *_ = counts.most_common()
    gene = gene_of_trait(book, trait)
    recessive = gene is not None and usual == gene.shows[0]
    if gene is not None and usual == gene.shows[2] and counts[gene.shows[0]]:
        # Recessives out of a row that shows the dominant are what a carrier gives.
        return [], tuple(counts.most_common())
    if not recessive and sum(counts.values()) - most > max(1, sum(counts.values()) // 10):
        return [], tuple(counts.most_common())
    odd = [
        OddPlant(plant, trait, word, usual, recessive)
        for plant, word in words.items()
        if word != usual
    ]
    return odd, ()


def _spread(
    net: PedigreeNetwork, trait: str, code: str, plants: tuple[str, ...]
) -> TraitSpread | None:
    book = net.book
    values = _means(book, trait, plants)
    if len(values) < 2:
        return None
    squares, freedom = 0.0, 0
    for like in _uniform(net, trait, code):
        if len(like) > 1:
            middle = sum(like) / len(like)
            squares += sum((x - middle) ** 2 for x in like)
            freedom += len(like) - 1
    record = book.traits.get(trait)
    unit = record.unit if record is not None else ""
    sd = _sd(values)
    if not freedom or squares == 0:
        return TraitSpread(trait, unit, sd, len(values), None, 0, None, None)
    against = sqrt(squares / freedom)
    low, high = spread_ratio(sd, len(values) - 1, against, freedom)
    return TraitSpread(trait, unit, sd, len(values), against, freedom + 1, low, high)


def _uniform(net: PedigreeNetwork, trait: str, code: str) -> list[list[float]]:
    """Values of groups of plants that are alike by descent, so that what varies is no gene."""
    book = net.book
    behind = net.ancestors(code)
    found = []
    for founder in sorted(behind):
        record = book.plants[founder]
        if net.parents(founder).raised != "founder":
            continue
        if book.is_pool(record) and book.founder_fixation(record) < 1:
            continue
        own = [c for c in net.progeny(founder) if net.parents(c).raised == "seed_of"]
        # One line scored in several seasons shows how much seasons and hands alone vary.
        here = numbers_of(book, trait, [founder]).get(founder, [])
        found.append(_means(book, trait, tuple(own)) or here)
    crosses = {net.parents(c).cross for c in behind if net.parents(c).cross}
    for cross in sorted(crosses):
        first = book.crosses[cross]
        ends = [first.seed_parent, first.pollen_parent]
        known = all(end in book.plants and end not in net.withheld for end in ends)
        if known and ends[0] != ends[1] and all(net.self_coancestry(end) == 1 for end in ends):
            alike = [p for p in net.progeny_of_cross(cross) if not net.parents(p).selfed]
            found.append(_means(book, trait, tuple(alike)))
    return found


def _means(book: Book, trait: str, plants: tuple[str, ...]) -> list[float]:
    return [sum(held) / len(held) for held in numbers_of(book, trait, plants).values()]


def _sd(values: list[float]) -> float:
    middle = sum(values) / len(values)
    return sqrt(sum((x - middle) ** 2 for x in values) / (len(values) - 1))


def spread_ratio(
    sd: float, freedom: int, against: float, against_freedom: int
) -> tuple[float, float]:
    """95% interval of the ratio of two standard deviations, by the F distribution."""
    from scipy.stats import f

    if min(freedom, against_freedom) < 1 or against <= 0:
        raise ValueError("a ratio of spreads needs two values or more on both sides")
    square = (sd / against) ** 2
    low = square / float(f.ppf(0.975, freedom, against_freedom))
    high = square / float(f.ppf(0.025, freedom, against_freedom))
    return sqrt(low), sqrt(high)
