"""Flowers to pollinate for so many wanted seedlings, from one's own takes and the crop's.

A rate of one's own is drawn towards the crop's while few were counted: the crop's range is read as
a beta distribution (its middle, and the range as two standard deviations each way), but counts at
most as much as a dozen flowers.  The chance of enough plants from n flowers then runs over the
whole uncertainty of the take (beta-binomial) and of seeds (Poisson).
"""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil
from typing import Any

from pedigreeview.book.book import Book
from pedigreeview.book.crops import Crop, crop_named

__all__ = [
    "FlowersNeeded",
    "Rate",
    "SeedRates",
    "flowers_needed",
    "flowers_plainly",
    "rates_of_book",
    "shrunk_mean",
    "shrunk_rate",
]

_MOST_WEIGHT = 12.0
"""Flowers that a crop's range counts for at most (a choice of ours, no source)."""
_FRUITS_WEIGHT = 3.0
_SEEDS_WEIGHT = 10.0
_GERMINATION = (0.8, "a germination of 80% (common practice, no source)")
_TRUE = (0.95, "19 true seedlings in 20 (common practice, no source)")
_SEEDS = 10.0
_UNKNOWN = (1.0, 1.0)
_MOST_FLOWERS = 100_000


@dataclass(frozen=True, slots=True)
class Rate:
    """A share with what stands behind it: beta distribution of a own and b other parts.

    done, of : one's own counts
    prior : what it was drawn towards, in words
    """

    a: float
    b: float
    done: int
    of: int
    prior: str

    @property
    def mean(self) -> float:
        """The rate to plan with."""
        return self.a / (self.a + self.b)

    def sentence(self, what: str) -> str:
        """'Take 44%: 7 of 12 of your own, drawn towards the crop's 30 to 60%.'"""
        own = f"{self.done} of {self.of} of your own" if self.of else "none of your own yet"
        return f"{what} {100 * self.mean:.3g}%: {own}, drawn towards {self.prior}."


def shrunk_rate(
    done: int,
    of: int,
    low: float | None = None,
    high: float | None = None,
    *,
    most_weight: float = _MOST_WEIGHT,
    prior: str = "",
) -> Rate:
    """One's own count drawn towards a range.

    Parameters
    ----------
    done, of : fruits set and flowers worked, or seedlings and seeds
    low, high : the range; None: nothing is known, every rate as likely as another

    Raises
    ------
    ValueError : counts that cannot be, or a range outside 0 to 1
    """
    if not 0 <= done <= of:
        raise ValueError("a count is no more than what it was counted of")
    if low is None or high is None:
        a, b = _UNKNOWN
        return Rate(a + done, b + of - done, done, of, prior or "every rate as likely as another")
    if not 0 <= low <= high <= 1:
        raise ValueError("a range of a rate lies from 0 to 1")
    middle = min(0.99, max(0.01, (low + high) / 2))
    sd = max((high - low) / 4, 1e-6)
    weight = min(most_weight, max(2.0, middle * (1 - middle) / sd**2 - 1))
    said = prior or f"the crop's {100 * low:g} to {100 * high:g}%"
    return Rate(middle * weight + done, (1 - middle) * weight + of - done, done, of, said)


def shrunk_mean(total: float, count: int, usual: float, weight: float) -> float:
    """A mean per piece drawn towards the usual one, which counts as `weight` pieces."""
    if count < 0 or weight <= 0:
        raise ValueError("a weight lies above 0 and pieces are 0 or more")
    return (total + usual * weight) / (count + weight)


@dataclass(frozen=True, slots=True)
class SeedRates:
    """All that stands between a flower and a true seedling."""

    take: Rate
    seeds_per_fruit: float
    germination: Rate
    true: Rate
    notes: tuple[str, ...] = ()

    @property
    def per_fruit(self) -> float:
        """Expected true seedlings of one fruit."""
        return self.seeds_per_fruit * self.germination.mean * self.true.mean

    def sentences(self) -> list[str]:
        """Each rate in words."""
        return [
            self.take.sentence("Take"),
            f"Seeds a fruit: {self.seeds_per_fruit:.3g}.",
            self.germination.sentence("Germination"),
            self.true.sentence("True seedlings"),
            *self.notes,
        ]


@dataclass(frozen=True, slots=True)
class FlowersNeeded:
    """Flowers for so many plants.

    expected : flowers that give so many on average
    flowers : flowers that give them with the assurance
    """

    plants: int
    expected: int
    flowers: int
    assurance: float
    rates: SeedRates

    def sentence(self) -> str:
        """How many to pollinate, in words."""
        return (
            f"Pollinate {self.flowers:,} flowers for {self.plants:,} true seedlings with "
            f"{100 * self.assurance:g}% assurance; {self.expected:,} would give them on average."
        )


def flowers_plainly(
    plants: int, take: float, seeds_per_fruit: float, germination: float = 1.0, true: float = 1.0
) -> int:
    """Wanted plants / (take × seeds a fruit × germination × share true), rounded up.

    Source: the plain rule of the trade (trade terms, numbers of plants).
    """
    each = take * seeds_per_fruit * germination * true
    if plants < 0 or not each > 0:
        raise ValueError("a flower must be able to give a plant")
    return ceil(plants / each - 1e-9)


def flowers_needed(plants: int, rates: SeedRates, *, assurance: float = 0.9) -> FlowersNeeded:
    """Smallest number of flowers that gives `plants` true seedlings with that assurance.

    Fruits of n flowers are beta-binomial, true seedlings of f fruits Poisson of mean f × per_fruit.

    Raises
    ------
    ValueError : no plant wanted, or more than 100,000 flowers needed
    """
    if plants < 1 or not 0 < assurance < 1:
        raise ValueError("a plant is wanted, and an assurance lies between 0 and 1")
    mean = flowers_plainly(plants, rates.take.mean, rates.per_fruit)
    low, high = 0, max(1, mean)
    while chance_of_plants(plants, high, rates) < assurance:
        low, high = high, 2 * high
        if high > _MOST_FLOWERS:
            raise ValueError("more than 100,000 flowers would be needed")
    while high - low > 1:
        middle = (low + high) // 2
        if chance_of_plants(plants, middle, rates) < assurance:
            low = middle
        else:
            high = middle
    return FlowersNeeded(plants, mean, high, assurance, rates)


def chance_of_plants(plants: int, flowers: int, rates: SeedRates) -> float:
    """Chance of so many true seedlings or more from so many flowers."""
    import numpy as np
    from scipy.stats import betabinom, poisson

    if plants <= 0:
        return 1.0
    fruits = np.arange(1, flowers + 1)
    weight = betabinom.pmf(fruits, flowers, rates.take.a, rates.take.b)
    enough = poisson.sf(plants - 1, fruits * rates.per_fruit)
    return float(min(1.0, (weight * enough).sum()))


def rates_of_book(book: Book, crosses: tuple[str, ...] | None = None, crop: str = "") -> SeedRates:
    """One's own rates from the records of some crosses (all but selfings if None), and the crop's.

    Share true: seedlings with a finding of their own pollen parent that is the seed parent itself
    count as selfs, all other plants of hand crosses as true.
    """
    facts = crop_named(crop or book.settings.crop)
    chosen = set(_hand_crosses(book) if crosses is None else crosses)
    worked = [
        (row.set, row.flowers)
        for row in book.pollinations.values()
        if row.cross in chosen and row.set is not None and row.flowers is not None
    ]
    fruits = [
        (row.seeds, row.fruits)
        for row in book.harvests.values()
        if row.cross in chosen and row.seeds is not None and row.fruits
    ]
    sown = [
        (row.up, row.seeds)
        for row in book.sowings.values()
        if _cross_of(book, row) in chosen and row.up is not None and row.seeds
    ]
    selfs = {f.plant for f in book.parent_findings if f.pollen_parent == "self" and _sure(f)}
    of_crosses = [p.plant for p in book.plants.values() if p.cross in chosen]
    notes = []
    low, high = _range(facts, "take")
    seeds_low, seeds_high = _range(facts, "seeds_per_fruit")
    usual = _SEEDS if seeds_low is None or seeds_high is None else (seeds_low + seeds_high) / 2
    if facts is None:
        notes.append("Without a crop nothing is known of takes and seeds but your own counts.")
    seeds = shrunk_mean(sum(s for s, _ in fruits), sum(f for _, f in fruits), usual, _FRUITS_WEIGHT)
    up, all_sown = sum(u for u, _ in sown), sum(s for _, s in sown)
    true = len([plant for plant in of_crosses if plant not in selfs])
    return SeedRates(
        shrunk_rate(sum(min(s, f) for s, f in worked), sum(f for _, f in worked), low, high),
        seeds,
        _about(*_GERMINATION, min(up, all_sown), all_sown),
        _about(*_TRUE, true, len(of_crosses)),
        tuple(notes),
    )


def _about(mean: float, words: str, done: int, of: int) -> Rate:
    w = _SEEDS_WEIGHT
    return Rate(mean * w + done, (1 - mean) * w + of - done, done, of, words)


def _hand_crosses(book: Book) -> list[str]:
    return [
        code
        for code, cross in book.crosses.items()
        if cross.pollen_parent
        and cross.pollen_parent != cross.seed_parent
        and cross.intended != "open"
    ]


def _cross_of(book: Book, sowing: Any) -> str:
    packet = book.packets.get(sowing.packet)
    harvest = book.harvests.get(packet.harvest) if packet is not None else None
    if harvest is not None:
        return harvest.cross
    return str(sowing.sown_from) if sowing.sown_from in book.crosses else ""


def _sure(finding: Any) -> bool:
    return finding.odds is None or finding.odds > 0.5


def _range(crop: Crop | None, fact: str) -> tuple[float | None, float | None]:
    held = crop.facts.get(fact) if crop is not None else None
    if not held:
        return None, None
    value = held.get("value")
    low, high = held.get("low", value), held.get("high", value)
    return (None, None) if low is None or high is None else (float(low), float(high))


__all__ += ["chance_of_plants"]
