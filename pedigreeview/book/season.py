"""When a season's work falls due: days to ripe, to take a cover off, to label, with their basis.

The person's own records come first where there are enough of them; else the crop's figures, each
with its source or marked as common practice.  A window always says what it rests on.
"""

from __future__ import annotations

import datetime
from collections.abc import Iterable
from dataclasses import dataclass

from pedigreeview.book.book import Book
from pedigreeview.book.crops import Crop, crop_fact, crop_named
from pedigreeview.book.dates import is_date
from pedigreeview.book.records import Cross, Plant, Pollination

__all__ = [
    "ENOUGH",
    "Basis",
    "OwnDays",
    "Window",
    "cover_off_window",
    "crop_of_cross",
    "exact_day",
    "flowering_window",
    "harvest_window",
    "relabel_window",
]

ENOUGH = 5
"""Harvests of a crop with known days to ripe, from which the person's own records come first."""

_PRACTICE = "common practice, no source"
_COVER_DAYS = (5, 10)
_LABEL_DAYS = 14


@dataclass(frozen=True, slots=True)
class Basis:
    """What a window rests on.

    words : one sentence, such as 'Pea pods ripen 35 to 50 days after pollination.'
    source : where the figure stands, or 'your own records'
    own : whether it comes from the person's own records
    """

    words: str
    source: str
    own: bool = False


@dataclass(frozen=True, slots=True)
class Window:
    """Days between which something is due; `last` is None where the window stays open."""

    first: datetime.date
    last: datetime.date | None
    basis: Basis

    def holds(self, day: datetime.date) -> bool:
        """Whether the day lies in the window."""
        return self.first <= day and (self.last is None or day <= self.last)


def exact_day(date: str) -> datetime.date | None:
    """The day of a date that is written to the day; None for any other."""
    return datetime.date.fromisoformat(date) if len(date) == 10 and is_date(date) else None


def _crop_name(crop: Crop | None, said: str) -> str:
    return crop.name if crop is not None else said.strip()


def crop_of_cross(book: Book, cross: Cross) -> tuple[str, Crop | None]:
    """Name of the crop of a cross, by its seed parent, and what is known of it."""
    plant = book.plants.get(cross.seed_parent) or book.plants.get(cross.pollen_parent)
    said = book.crop(plant) if plant is not None else book.settings.crop
    crop = crop_named(said)
    return _crop_name(crop, said), crop


class OwnDays:
    """Days from pollination to harvest by crop, as the person's own records tell them.

    Only crosses count whose pollinations and harvests are all dated to the day: from the first
    pollination to the first harvest, which is exact where there was one of each.
    """

    def __init__(self, book: Book) -> None:
        self._days: dict[str, list[int]] = {}
        worked = _by_cross(book.pollinations.values())
        taken: dict[str, list[str]] = {}
        for harvest in book.harvests.values():
            taken.setdefault(harvest.cross, []).append(harvest.date)
        for code, dates in taken.items():
            cross = book.crosses.get(code)
            rows = worked.get(code, [])
            if cross is None or not rows:
                continue
            pollinated = [exact_day(row.date) for row in rows]
            harvested = [exact_day(date) for date in dates]
            if None in pollinated or None in harvested:
                continue
            first = min(day for day in pollinated if day is not None)
            days = (min(day for day in harvested if day is not None) - first).days
            if days > 0:
                self._days.setdefault(crop_of_cross(book, cross)[0], []).append(days)

    def days(self, crop: str) -> tuple[int, ...]:
        """Days to harvest of every cross of a crop that tells them, in order."""
        return tuple(sorted(self._days.get(crop, ())))

    def range(self, crop: str) -> tuple[int, int] | None:
        """The least and the most days where there are enough; else None."""
        found = self.days(crop)
        return (found[0], found[-1]) if len(found) >= ENOUGH else None


def _by_cross(rows: Iterable[Pollination]) -> dict[str, list[Pollination]]:
    found: dict[str, list[Pollination]] = {}
    for row in rows:
        found.setdefault(row.cross, []).append(row)
    return found


def _after(day: datetime.date, low: float, high: float | None, basis: Basis) -> Window:
    last = None if high is None else day + datetime.timedelta(days=round(high))
    return Window(day + datetime.timedelta(days=round(low)), last, basis)


def _plural(word: str) -> str:
    return "berries" if word == "berry" else f"{word}s"


def harvest_window(book: Book, pollination: Pollination, own: OwnDays) -> Window | None:
    """When the fruits of a pollination ripen; None without a day, or where nothing is known."""
    day, cross = exact_day(pollination.date), book.crosses.get(pollination.cross)
    if day is None or cross is None:
        return None
    name, crop = crop_of_cross(book, cross)
    held = own.range(name)
    if held is not None:
        count = len(own.days(name))
        words = (
            f"{count} crosses of {name} were harvested {held[0]} to {held[1]} days after "
            "pollination."
        )
        return _after(day, held[0], held[1], Basis(words, "your own records", True))
    fact = crop_fact(crop, "days_to_ripe")
    if fact is None or crop is None:
        return None
    fruit = _plural(crop.facts.get("fruit", "fruit"))
    after = "petal fall" if "petal fall" in fact.note.casefold() else "pollination"
    words = f"{name.capitalize()} {fruit} ripen {fact.words()} days after {after}."
    return _after(day, fact.low, fact.high, Basis(words, fact.source))


def cover_off_window(book: Book, pollination: Pollination) -> Window | None:
    """When the cover may come off: the stigma takes no more pollen; None without a day."""
    day, cross = exact_day(pollination.date), book.crosses.get(pollination.cross)
    if day is None or cross is None:
        return None
    name, crop = crop_of_cross(book, cross)
    fact = crop_fact(crop, "cover_off_days")
    if fact is None:
        low, high = _COVER_DAYS
        words = f"A cover may come off {low} to {high} days after pollination."
        return _after(day, low, high, Basis(words, _PRACTICE))
    words = f"On {name} a cover may come off {fact.words()} days after pollination."
    return _after(day, fact.low, fact.high, Basis(words, fact.source))


def relabel_window(book: Book, pollination: Pollination) -> Window | None:
    """When the fruits want a label that lasts until harvest; None without a day."""
    day, cross = exact_day(pollination.date), book.crosses.get(pollination.cross)
    if day is None or cross is None:
        return None
    name, crop = crop_of_cross(book, cross)
    fact = crop_fact(crop, "relabel_days")
    days = fact.low if fact is not None else _LABEL_DAYS
    source = fact.source if fact is not None else _PRACTICE
    words = (
        f"Fruits of {name or 'most crops'} take a lasting label {days:g} days after pollination."
    )
    return _after(day, days, None, Basis(words, source))


def flowering_window(book: Book, plant: Plant, on: datetime.date) -> Window | None:
    """When a plant flowers in the season of a day: as noted, else from its sowing and its crop.

    None where neither is known, or where it has flowered and is over.
    """
    noted = [
        (first, exact_day(row.last_flower))
        for row in book.blooms
        if row.plant == plant.plant
        and (first := exact_day(row.first_flower)) is not None
        and abs((on - first).days) < 200
    ]
    if noted:
        first, last = max(noted, key=lambda bloom: bloom[0])
        return Window(first, last, Basis(f"{plant.plant} was seen in flower.", "your own records"))
    sown = exact_day(plant.sown)
    fact = crop_fact(book.crop_facts(plant), "first_flower_days")
    if sown is None or fact is None or book.is_pool(plant) or (on - sown).days > 400:
        return None
    name = _crop_name(book.crop_facts(plant), book.crop(plant))
    words = f"{name.capitalize()} first flowers {fact.words()} days after sowing."
    return Window(sown + datetime.timedelta(days=round(fact.low)), None, Basis(words, fact.source))
