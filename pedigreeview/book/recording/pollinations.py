"""Recording a pollination: what was worked on one day, and later what became of the flowers."""

from __future__ import annotations

import datetime
from dataclasses import dataclass
from typing import TYPE_CHECKING

from pedigreeview.book.book import Book
from pedigreeview.book.dates import surely_before
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.codes import next_key
from pedigreeview.book.recording.fields import choice, iso_date, whole
from pedigreeview.book.recording.guard import guarded
from pedigreeview.book.recording.lookup import cross_not_skipped, lot_called, pollination_called
from pedigreeview.book.recording.typed_dates import day_of
from pedigreeview.book.records import Pollination

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit

__all__ = [
    "BUDS",
    "COVERS",
    "COVER_OFF",
    "RELABELLED",
    "LastUsed",
    "last_used",
    "note_relabelled",
    "record_fruits",
    "record_pollination",
    "take_cover_off",
]

BUDS = ("closed", "unsure", "open")
COVERS = ("bag", "tape", "cage", "petals off", "none")
"""Covers that are offered; any other word may be written."""

COVER_OFF, RELABELLED = "cover_off", "relabelled"
"""Columns in which the days are kept on which the cover came off and the fruit was labelled."""


@dataclass(frozen=True, slots=True)
class LastUsed:
    """What the last pollination said, proposed for the next."""

    flowers: int | None
    cover: str
    by: str
    bud: str


def last_used(book: Book) -> LastUsed:
    """The values of the pollination that was recorded last."""
    for row in reversed(book.pollinations.values()):
        return LastUsed(row.flowers, row.cover, row.by, row.bud)
    return LastUsed(None, "", "", "")


def record_pollination(
    edit: Edit,
    cross: str,
    *,
    today: datetime.date,
    date: str = "",
    flowers: int | None = None,
    emasculated_on: str = "",
    pollen_lot: str = "",
    cover: str = "",
    tag: str = "",
    by: str = "",
    bud: str = "",
    note: str = "",
    code: str = "",
) -> Pollination:
    """Record one working of a cross on one day; a planned cross is made from then on.

    The date of the cross is filled in where it has none.

    Raises
    ------
    Fault : no such cross or pollen lot, the cross is skipped, a count below 0, a date that comes
        before a parent was sown, the bud emasculated or the pollen collected
    """
    todo = "Set it to planned first if it is to be made after all."
    held = cross_not_skipped(edit.book, cross, todo)
    worked_on = iso_date(date)
    row = Pollination(
        code.strip() or next_key(edit.book, "pollination", day_of(worked_on, today), held.cross),
        held.cross,
        worked_on,
        whole(flowers, "flowers"),
        iso_date(emasculated_on, "emasculated_on"),
        lot_called(edit.book, pollen_lot).pollen_lot if pollen_lot.strip() else "",
        cover.strip(),
        tag.strip(),
        by.strip(),
        choice(bud, BUDS, "bud"),
        note=note.strip(),
    )
    with guarded(edit, crosses=(held.cross,)):
        edit.add(row)
        changed: dict[str, object] = {}
        if held.state != "made":
            changed["state"] = "made"
        if not held.made_on and worked_on:
            changed["made_on"] = worked_on
        if changed:
            edit.update(held, **changed)
    return row


def record_fruits(
    edit: Edit, pollination: str, *, fruits: int | None, dropped: int | None = None, note: str = ""
) -> Pollination:
    """Say how many flowers of a pollination set fruit, and how many of these were lost since.

    Raises
    ------
    Fault : no such pollination, more fruits than flowers, more lost than set
    """
    row = pollination_called(edit.book, pollination)
    took, lost = whole(fruits, "set"), whole(dropped, "dropped")
    if took is not None and lost is not None and lost > took:
        raise Fault(
            f"The pollination {row.pollination} would have {lost} fruits lost of {took} set.",
            Place(column="dropped"),
            "A flower that never took is not set and not lost; correct one of the counts.",
        )
    changed: dict[str, object] = {"set": took, "dropped": lost}
    if note.strip():
        changed["note"] = f"{row.note} {note.strip()}".strip()
    with guarded(edit, crosses=(row.cross,)):
        updated = edit.update(row, **changed)
    assert isinstance(updated, Pollination)
    return updated


def take_cover_off(edit: Edit, pollination: str, *, date: str) -> Pollination:
    """Note the day on which the cover came off."""
    return _day_noted(edit, pollination, COVER_OFF, date)


def note_relabelled(edit: Edit, pollination: str, *, date: str) -> Pollination:
    """Note the day on which the fruits got a label that lasts until harvest."""
    return _day_noted(edit, pollination, RELABELLED, date)


def _day_noted(edit: Edit, pollination: str, column: str, date: str) -> Pollination:
    row = pollination_called(edit.book, pollination)
    day = iso_date(date)
    if not day:
        raise Fault("The day is blank.", Place(column="date"), "Write the day, such as today.")
    if surely_before(day, row.date):
        raise Fault(
            f"The pollination {row.pollination} was on {row.date}, after {day}.",
            Place(column="date"),
            "Correct the day.",
        )
    updated = edit.update(row, extra={**row.extra, column: day})
    assert isinstance(updated, Pollination)
    return updated
