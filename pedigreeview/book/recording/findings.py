"""What one plant shows of its own pollen parent: 'this one is a selfing of A'.

A finding overrides the odds of the plant's cross for that plant alone.  It is dated and stays; the
latest one holds.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from typing import TYPE_CHECKING

from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.ancestry import refuse_loop
from pedigreeview.book.recording.fields import choice, iso_date, share
from pedigreeview.book.recording.guard import guarded
from pedigreeview.book.recording.lookup import plant_called
from pedigreeview.book.records import GRADES, SELF, ParentFinding

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit

__all__ = ["record_finding", "withdraw_finding"]


def record_finding(
    edit: Edit,
    plants: str | Iterable[str],
    pollen_parent: str | Mapping[str, float],
    *,
    date: str,
    grade: str = "",
    text: str = "",
    instead: bool = False,
) -> tuple[ParentFinding, ...]:
    """Record who was found to be the pollen parent of one plant, or of several alike.

    Parameters
    ----------
    pollen_parent : a code, 'self', '' for unknown, or several candidates with odds
    date : needed, since the latest finding holds
    instead : put it in the place of a finding of the same day

    Raises
    ------
    Fault : a plant that came from no cross, a pollen parent that descends from it, no date or one
        before an older finding's, a finding of the same day
    """
    on = iso_date(date)
    if not on:
        raise Fault(
            "The finding has no date.", Place(column="date"), "Write the day; the latest holds."
        )
    word = choice(grade, GRADES, "grade")
    odds = pollen_parent if isinstance(pollen_parent, Mapping) else {pollen_parent: 1.0}
    codes = [plants] if isinstance(plants, str) else list(plants)
    found: list[ParentFinding] = []
    held = [plant_called(edit.book, code) for code in codes]
    with guarded(edit, plants=[plant.plant for plant in held]):
        for plant in held:
            cross = edit.book.crosses.get(plant.cross)
            if cross is None:
                raise Fault(
                    f"{plant.plant} came from no cross, so it has no pollen parent to find.",
                    Place(plant=plant.plant),
                    "Name its cross first.",
                )
            rows = _rows(edit, plant.plant, cross.seed_parent, odds, word, on, text.strip())
            refuse_loop(edit.book, [plant.plant], [row.pollen_parent for row in rows])
            _clear_way(edit, plant.plant, on, instead)
            for row in rows:
                edit.add(row)
            found += rows
    return tuple(found)


def _rows(
    edit: Edit,
    plant: str,
    seed_parent: str,
    odds: Mapping[str, float],
    grade: str,
    date: str,
    text: str,
) -> list[ParentFinding]:
    wanted: dict[str, float] = {}
    for name, value in odds.items():
        code = name.strip()
        if code.casefold() == SELF:
            code = SELF
        elif code:
            code = plant_called(edit.book, code, "pollen_parent").plant
        if code and code == seed_parent:
            code = SELF
        if code == SELF and not seed_parent:
            raise Fault(
                f"The cross of {plant} has no seed parent, so it cannot be a self.",
                Place(plant=plant),
                "Name the seed parent of the cross first.",
            )
        found = share(value, "odds")
        if found:
            wanted[code] = wanted.get(code, 0.0) + found
    total = math.fsum(wanted.values())
    if total > 1 + 1e-9:
        raise Fault(
            f"The odds of the finding add up to {total:g}, over 1.",
            Place(column="odds"),
            "Lower them; what is missing to 1 is left unknown.",
        )
    if not wanted:
        wanted = {"": 1.0}
    single = len(wanted) == 1 and abs(total - 1) < 1e-9
    return [
        ParentFinding(plant, code, None if single or not code else value, grade, date, text)
        for code, value in wanted.items()
    ]


def _clear_way(edit: Edit, plant: str, date: str, instead: bool) -> None:
    older = [row for row in edit.book.parent_findings if row.plant == plant]
    later = [row.date for row in older if row.date > date]
    if later:
        raise Fault(
            f"{plant} has a finding of {max(later)}, which would still hold over one of {date}.",
            Place(column="date", plant=plant),
            "Give this one a later date, or take the other away.",
        )
    same = [row for row in older if row.date == date]
    if same and not instead:
        raise Fault(
            f"{plant} has a finding of {date} already.",
            Place(column="date", plant=plant),
            "Put this one in its place, or give it another date.",
        )
    for row in same:
        edit.remove(row)


def withdraw_finding(edit: Edit, plant: str, date: str) -> tuple[ParentFinding, ...]:
    """Take the finding of one day away; gives the rows that were taken.

    The plant's cross, or its finding before that, holds again.

    Raises
    ------
    Fault : no such finding
    """
    code = plant_called(edit.book, plant).plant
    rows = [row for row in edit.book.parent_findings if row.plant == code and row.date == date]
    if not rows:
        raise Fault(f"{code} has no finding of {date}.", Place(plant=code), "Look at its card.")
    with guarded(edit, plants=(code,)):
        for row in rows:
            edit.remove(row)
    cross = edit.book.crosses.get(edit.book.plants[code].cross)
    if cross is not None:
        refuse_loop(edit.book, [code], [cross.seed_parent, cross.pollen_parent])
    return tuple(rows)
