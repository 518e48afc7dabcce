"""Names and new codes: a finished line named as a variety, a code that was written wrongly."""

from __future__ import annotations

import datetime
from typing import TYPE_CHECKING

from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.look_alikes import sight
from pedigreeview.book.recording.codes import UsedCodes, code_fault
from pedigreeview.book.recording.crosses import record_selfing
from pedigreeview.book.recording.fields import iso_date
from pedigreeview.book.recording.guard import guarded
from pedigreeview.book.recording.lookup import cross_called, plant_called
from pedigreeview.book.recording.varieties import code_from_name
from pedigreeview.book.records import Cross, Note, Plant

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit

__all__ = ["name_as_variety", "rename_cross", "rename_plant"]


def name_as_variety(
    edit: Edit,
    line: str,
    name: str,
    *,
    today: datetime.date,
    code: str = "",
    fixed: bool = True,
    date: str = "",
    note: str = "",
) -> Plant:
    """Name a finished line of one's own as a variety; gives the variety.

    A family becomes the variety under its code.  Of a single plant the variety is the seed that it
    bears by selfing, so it gets a code of its own and the plant stays what it is.

    Parameters
    ----------
    code : for the variety of a single plant; blank for one made of the name
    fixed : whether the line is taken as breeding true (fixation 1); else what its parents make it

    Raises
    ------
    Fault : no name, a variety already, a plant from elsewhere, a code that is taken
    """
    held = plant_called(edit.book, line, "line")
    title = " ".join(name.split())
    if not title:
        raise Fault("The variety has no name.", Place(column="name"), "Write its name.")
    if edit.book.raised(held) == "founder" or edit.book.kind(held) == "variety":
        raise Fault(
            f"{held.plant} is a variety already, or came from elsewhere.",
            Place(plant=held.plant),
            "Choose a line that was raised here; a name is changed on its card.",
        )
    same = [plant.plant for plant in edit.book.plants.values() if sight(plant.name) == sight(title)]
    if [other for other in same if other != held.plant]:
        raise Fault(
            f"The name '{title}' is that of {same[0]}.",
            Place(column="name"),
            "Choose another name.",
        )
    on = iso_date(date)
    fixation = 1.0 if fixed else None
    if edit.book.is_pool(held):
        updated = edit.update(
            held, kind="variety", name=title, fixation=fixation, status="finished",
            note=f"{held.note} {note.strip()}".strip(),
        )  # fmt: skip
        assert isinstance(updated, Plant)
        variety = updated
    else:
        used = UsedCodes(edit.book)
        taken = code.strip() or code_from_name(used, title)
        code_fault(used, taken, column="plant")
        selfing = record_selfing(edit, held.plant, today=today)
        variety = Plant(
            taken, title, "variety", "cross", selfing.cross, fixation=fixation, crop=held.crop,
            status="growing", note=note.strip(),
        )  # fmt: skip
        with guarded(edit, crosses=(selfing.cross,)) as scope:
            edit.add(variety)
            scope.plants.add(taken)
    edit.add(Note(f"plant {variety.plant}", on, f"Named '{title}', from the line {held.plant}."))
    return variety


def rename_plant(edit: Edit, plant: str, code: str) -> Plant:
    """Give a plant another code, here and wherever it is named.

    Raises
    ------
    Fault : no such plant, or a code that may not stand or is taken
    """
    held = plant_called(edit.book, plant)
    code_fault(UsedCodes(edit.book), code.strip(), column="plant", own=held.plant)
    renamed = edit.rename(held, code.strip())
    assert isinstance(renamed, Plant)
    return renamed


def rename_cross(edit: Edit, cross: str, code: str) -> Cross:
    """Give a cross another code, here and wherever it is named; its plants keep theirs.

    Raises
    ------
    Fault : no such cross, or a code that may not stand or is taken
    """
    held = cross_called(edit.book, cross)
    code_fault(UsedCodes(edit.book), code.strip(), column="cross", own=held.cross)
    renamed = edit.rename(held, code.strip())
    assert isinstance(renamed, Cross)
    return renamed
