"""Pollen that is collected: lots of one plant or mixed, their age when used, a mix in a cross."""

from __future__ import annotations

import datetime
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from pedigreeview.book.book import Book
from pedigreeview.book.dates import earliest, is_date, latest
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.codes import next_key
from pedigreeview.book.recording.crosses import record_cross
from pedigreeview.book.recording.doubt import set_candidates
from pedigreeview.book.recording.fields import iso_date
from pedigreeview.book.recording.lookup import lot_called, plant_called, split_codes
from pedigreeview.book.recording.typed_dates import day_of
from pedigreeview.book.records import Cross, PollenLot

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit

__all__ = [
    "PollenAge",
    "age_of_pollen",
    "cross_with_mixed_pollen",
    "lots_of",
    "record_pollen",
]


def record_pollen(
    edit: Edit,
    plants: str | Sequence[str],
    *,
    today: datetime.date,
    collected: str = "",
    stored: str = "",
    note: str = "",
    code: str = "",
) -> PollenLot:
    """Record pollen collected on one day from one plant, or mixed from several.

    Raises
    ------
    Fault : no plant, or one that is not in the book
    """
    named = split_codes(plants) if isinstance(plants, str) else list(plants)
    codes = list(dict.fromkeys(plant_called(edit.book, code).plant for code in named))
    if not codes:
        raise Fault(
            "The pollen is of no plant.", Place(column="plant"), "Name the plant it came from."
        )
    on = iso_date(collected, "collected")
    lot = PollenLot(
        code.strip() or next_key(edit.book, "pollen_lot", day_of(on, today), parent=codes[0]),
        "; ".join(codes),
        on,
        stored.strip(),
        note.strip(),
    )
    edit.add(lot)
    return lot


def lots_of(book: Book, plant: str) -> tuple[PollenLot, ...]:
    """Pollen of one plant alone, the freshest first; lots without a date stand last."""
    found = [lot for lot in book.pollen_lots.values() if split_codes(lot.plant) == [plant]]
    return tuple(sorted(found, key=lambda lot: lot.collected, reverse=True))


@dataclass(frozen=True, slots=True)
class PollenAge:
    """How old pollen is when it is used: from `least` to `most` days, as far as dates tell."""

    least: int
    most: int

    def words(self) -> str:
        """The age as a person says it."""
        if self.least != self.most:
            return f"{self.least} to {self.most} days old"
        if self.least == 0:
            return "collected the same day"
        return "1 day old" if self.least == 1 else f"{self.least} days old"


def age_of_pollen(book: Book, lot: str, used_on: str) -> PollenAge | None:
    """Days between the collecting of a pollen lot and a day; None where a date is not known.

    Raises
    ------
    Fault : no such lot, or the day lies before the pollen was collected
    """
    held = lot_called(book, lot)
    if not is_date(held.collected) or not is_date(used_on):
        return None
    most = (latest(used_on) - earliest(held.collected)).days
    least = (earliest(used_on) - latest(held.collected)).days
    if most < 0:
        raise Fault(
            f"The pollen {held.pollen_lot} was collected on {held.collected}, after {used_on}.",
            Place(column="pollen_lot"),
            "Choose another lot, or correct a date.",
        )
    return PollenAge(max(least, 0), most)


def cross_with_mixed_pollen(
    edit: Edit,
    seed_parent: str,
    lot: str | Mapping[str, float],
    *,
    today: datetime.date,
    state: str = "made",
    made_on: str = "",
    code: str = "",
    note: str = "",
) -> Cross:
    """Record a cross with pollen of several plants: each is a candidate, with odds.

    Each seed has a pollen parent of its own, so the cross is drawn 'each'.

    Parameters
    ----------
    lot : code of a mixed pollen lot, whose plants get equal odds, or the plants with their odds

    Raises
    ------
    Fault : a plant or lot that is not in the book, a lot of one plant, odds over 1
    """
    if isinstance(lot, Mapping):
        odds = {plant_called(edit.book, name, "candidate").plant: v for name, v in lot.items()}
    else:
        held = lot_called(edit.book, lot)
        plants = split_codes(held.plant)
        odds = dict.fromkeys(plants, 1 / len(plants)) if plants else {}
    if len(odds) < 2:
        raise Fault(
            "The pollen is of one plant, so the pollen parent is certain.",
            Place(column="pollen_lot"),
            "Record the cross with that plant as its pollen parent.",
        )
    seed = plant_called(edit.book, seed_parent, "seed_parent").plant
    other = next(name for name in odds if name != seed)
    (cross,) = record_cross(
        edit, seed, other, today=today, state=state, made_on=made_on, code=code, note=note,
        repeat=True, pollen_doubt="possible",
    )  # fmt: skip
    set_candidates(edit, cross.cross, odds, drawn="each")
    return edit.book.crosses[cross.cross]
