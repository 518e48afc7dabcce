"""The crossing list of a day: what to cross, who is in flower, where they stand, what to heed."""

from __future__ import annotations

import datetime
from dataclasses import dataclass

from pedigreeview.book.book import Book
from pedigreeview.book.recording.compatibility import remarks_on_pair
from pedigreeview.book.recording.pollen import age_of_pollen, lots_of
from pedigreeview.book.records import Plant
from pedigreeview.book.season import flowering_window

__all__ = ["CrossToMake", "ParentToday", "crossing_list"]


@dataclass(frozen=True, slots=True)
class ParentToday:
    """One parent on the day of the list.

    flower : 'in flower', 'expected', 'over', 'not yet' or '' where it is not known
    """

    plant: str
    name: str
    place: str
    flower: str


@dataclass(frozen=True, slots=True)
class CrossToMake:
    """One line of the list.

    pollen : stored pollen of the pollen parent with its age, such as 'L24-2, 3 days old'
    flowers_done : flowers worked before that day
    remarks : what speaks against the cross, one sentence each
    """

    cross: str
    seed_parent: ParentToday
    pollen_parent: ParentToday
    pollen: tuple[str, ...]
    flowers_done: int
    remarks: tuple[str, ...]


def _flower(book: Book, plant: Plant, on: datetime.date) -> str:
    window = flowering_window(book, plant, on)
    if window is None:
        return ""
    if on < window.first:
        return "not yet"
    if window.last is not None and on > window.last:
        return "over"
    return "in flower" if window.basis.source == "your own records" else "expected"


def _parent(book: Book, code: str, on: datetime.date) -> ParentToday:
    plant = book.plants.get(code)
    if plant is None:
        return ParentToday(code, "", "", "")
    return ParentToday(code, plant.name, plant.place, _flower(book, plant, on))


def crossing_list(
    book: Book, on: datetime.date, *, all_planned: bool = True
) -> tuple[CrossToMake, ...]:
    """The planned crosses of a day; those with both parents in flower first.

    all_planned : else only those of which no parent is known to be out of flower
    """
    done: dict[str, int] = {}
    for row in book.pollinations.values():
        done[row.cross] = done.get(row.cross, 0) + (row.flowers or 0)
    found = []
    for cross in book.crosses.values():
        if cross.state != "planned" or not cross.seed_parent:
            continue
        seed = _parent(book, cross.seed_parent, on)
        pollen = _parent(book, cross.pollen_parent, on)
        stored = []
        for lot in lots_of(book, cross.pollen_parent) if cross.pollen_parent else ():
            if lot.collected and lot.collected > on.isoformat():
                continue
            age = age_of_pollen(book, lot.pollen_lot, on.isoformat())
            stored.append(f"{lot.pollen_lot}, {age.words()}" if age else lot.pollen_lot)
        out = seed.flower in ("over", "not yet") or (
            pollen.flower in ("over", "not yet") and not stored
        )
        if out and not all_planned:
            continue
        remarks = remarks_on_pair(book, cross.seed_parent, cross.pollen_parent)
        found.append(
            CrossToMake(cross.cross, seed, pollen, tuple(stored), done.get(cross.cross, 0), remarks)
        )
    ready = {"in flower": 0, "expected": 1, "": 2, "not yet": 3, "over": 4}
    return tuple(
        sorted(
            found,
            key=lambda line: (
                ready[line.seed_parent.flower],
                0 if line.pollen else ready[line.pollen_parent.flower],
            ),
        )
    )
