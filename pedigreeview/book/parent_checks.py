"""Checks of what parents were when a cross was made: in flower, alive, two plants and not one."""

from __future__ import annotations

import datetime
from collections.abc import Iterator

from pedigreeview.book.book import Book
from pedigreeview.book.dates import earliest, is_date, latest, surely_before
from pedigreeview.book.problems import Problem
from pedigreeview.book.records import Bloom, Cross, Note, Plant

__all__ = [
    "STATUS_WORDS",
    "culled_on",
    "genotype",
    "not_in_flower",
    "same_plant_twice",
    "used_after_culling",
]

STATUS_WORDS = "Status: "
"""How the dated note of a plant begins that tells when it got its status."""

_BUD = datetime.timedelta(days=10)
"""A flower is worked in bud before the first one opens."""
_LATE = datetime.timedelta(days=5)
"""A flower worked may be the one that was noted as the last."""


def genotype(book: Book, code: str) -> str:
    """The plant that a chain of cuttings began with."""
    seen = {code}
    plant = book.plants.get(code)
    while plant is not None and plant.raised == "cutting_of" and plant.source not in seen:
        code = plant.source
        seen.add(code)
        plant = book.plants.get(code)
    return code


def _cross_dates(book: Book) -> Iterator[tuple[Cross, str, bool]]:
    """Every date on which a cross was worked, and whether stored pollen was used."""
    worked = set()
    for pollination in book.pollinations.values():
        cross = book.crosses.get(pollination.cross)
        worked.add(pollination.cross)
        if cross is not None and is_date(pollination.date):
            yield cross, pollination.date, bool(pollination.pollen_lot)
    for cross in book.crosses.values():
        if cross.cross not in worked and is_date(cross.made_on):
            yield cross, cross.made_on, False


def not_in_flower(book: Book) -> Iterator[Problem]:
    """Pollinations surely outside the flowering of the seed parent that was noted for that year.

    A variety or family may have been sown again and is exempt, and so is a plant of which no whole
    bloom of that year was noted.
    """
    blooms: dict[str, list[Bloom]] = {}
    for bloom in book.blooms:
        blooms.setdefault(bloom.plant, []).append(bloom)
    named: set[tuple[str, str]] = set()
    for cross, date, _ in _cross_dates(book):
        plant = book.plants.get(cross.seed_parent)
        if plant is None or book.is_pool(plant) or (cross.cross, date) in named:
            continue
        year = date[:4]
        noted = [row for row in blooms.get(plant.plant, ()) if row.first_flower[:4] == year]
        if not noted or any(_may_flower(row, date) for row in noted):
            continue
        named.add((cross.cross, date))
        row = noted[-1]
        yield Problem(
            "not_in_flower",
            "warning",
            (plant.plant,),
            f"The cross {cross.cross} was worked on {date}, but {plant.plant} flowered from "
            f"{row.first_flower}{f' to {row.last_flower}' if row.last_flower else ' on'}.",
            "Correct the date of the pollination, the seed parent or the bloom.",
            (("crosses", cross.cross),),
        )


def _may_flower(bloom: Bloom, date: str) -> bool:
    if not is_date(bloom.first_flower):
        return True
    if latest(date) + _BUD < earliest(bloom.first_flower):
        return False
    if not is_date(bloom.last_flower):
        return True
    return earliest(date) <= latest(bloom.last_flower) + _LATE


def culled_on(book: Book) -> dict[str, str]:
    """When each plant that is culled or lost became so, as its latest dated note of that tells."""
    found: dict[str, str] = {}
    for note in book.notes:
        plant = _judged(book, note)
        if plant is not None:
            found[plant.plant] = max(found.get(plant.plant, ""), note.date)
    return found


def _judged(book: Book, note: Note) -> Plant | None:
    if not note.date or not note.text.startswith(STATUS_WORDS):
        return None
    plant = book.plants.get(note.about.removeprefix("plant "))
    if plant is None or plant.status not in ("culled", "lost"):
        return None
    return plant if note.text.startswith(f"{STATUS_WORDS}{plant.status}") else None


def used_after_culling(book: Book) -> Iterator[Problem]:
    """Crosses surely made after a parent was culled or lost, as its dated note tells.

    Pools outlive a plant of theirs, and stored pollen outlives the plant that gave it.
    """
    gone = culled_on(book)
    if not gone:
        return
    named: set[tuple[str, str]] = set()
    for cross, date, stored in _cross_dates(book):
        for code in dict.fromkeys((cross.seed_parent, cross.pollen_parent)):
            if code not in gone or (cross.cross, code) in named or book.is_pool(book.plants[code]):
                continue
            if stored and code != cross.seed_parent:
                continue
            if surely_before(gone[code], date):
                named.add((cross.cross, code))
                yield Problem(
                    "used_after_culling",
                    "warning",
                    (code,),
                    f"The cross {cross.cross} was worked on {date} with {code}, which was "
                    f"{book.plants[code].status} on {gone[code]}.",
                    "Correct the date, the parent or the status.",
                    (("crosses", cross.cross),),
                )


def same_plant_twice(book: Book) -> Iterator[Problem]:
    """Crosses meant to be of two plants whose parents are one plant, or cuttings of one."""
    for cross in book.crosses.values():
        seed, pollen = cross.seed_parent, cross.pollen_parent
        if not seed or not pollen or cross.intended == "selfing":
            continue
        if seed == pollen:
            if cross.intended != "cross":
                continue
            what = f"names {seed} as both parents"
        elif genotype(book, seed) == genotype(book, pollen):
            what = f"is of {seed} and {pollen}, which are one genotype"
        else:
            continue
        yield Problem(
            "same_plant_twice",
            "warning",
            tuple(dict.fromkeys((seed, pollen))),
            f"The cross {cross.cross} {what}, so its seed is a selfing.",
            "Correct a parent, or record it as a selfing.",
            (("crosses", cross.cross),),
        )
