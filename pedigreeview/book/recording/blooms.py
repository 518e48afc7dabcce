"""Recording the first and the last flower of a plant in a season."""

from __future__ import annotations

from typing import TYPE_CHECKING

from pedigreeview.book.dates import surely_before
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.fields import iso_date
from pedigreeview.book.recording.guard import guarded
from pedigreeview.book.recording.lookup import plant_called
from pedigreeview.book.records import Bloom

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit

__all__ = ["record_bloom"]


def record_bloom(edit: Edit, plant: str, *, first: str = "", last: str = "") -> Bloom:
    """Note the first or the last flower; both of one year stand in one record.

    A last flower goes to the season whose first flower is the latest before it, so that a bloom
    over the turn of the year stays one.

    Raises
    ------
    Fault : no such plant, neither date, or the last before the first
    """
    code = plant_called(edit.book, plant).plant
    began, ended = iso_date(first, "first_flower"), iso_date(last, "last_flower")
    if not began and not ended:
        raise Fault(
            "Neither the first nor the last flower is dated.",
            Place(column="first_flower"),
            "Write one of the days.",
        )
    held = _season(edit, code, began, ended)
    with guarded(edit, plants=(code,)):
        if held is None:
            if surely_before(ended, began):
                raise Fault(
                    f"The last flower of {code} is dated {ended}, before its first on {began}.",
                    Place(column="last_flower", plant=code),
                    "Correct one of the days.",
                )
            row = Bloom(code, began, ended)
            edit.add(row)
            return row
        updated = edit.update(
            held,
            first_flower=began or held.first_flower,
            last_flower=ended or held.last_flower,
        )
    assert isinstance(updated, Bloom)
    return updated


def _season(edit: Edit, plant: str, began: str, ended: str) -> Bloom | None:
    rows = [row for row in edit.book.blooms if row.plant == plant]
    if began:
        same = [row for row in rows if row.first_flower[:4] == began[:4] and row.first_flower]
        return same[-1] if same else None
    open_rows = [
        row
        for row in rows
        if row.first_flower
        and not surely_before(ended, row.first_flower)
        and (not row.last_flower or row.last_flower[:4] == ended[:4])
        and int(ended[:4]) - int(row.first_flower[:4]) <= 1
    ]
    return max(open_rows, key=lambda row: row.first_flower, default=None)
