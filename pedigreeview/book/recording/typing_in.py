"""Typing a printed garden sheet in: every cell by row and column, all of it in one edit or nothing.

Columns are those of the paper.  A row that is left blank says nothing.
"""

from __future__ import annotations

import datetime
from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.crosses import record_cross, record_open, record_selfing
from pedigreeview.book.recording.lookup import cross_called, plant_called
from pedigreeview.book.recording.notes import record_note
from pedigreeview.book.recording.pollinations import (
    BUDS,
    record_fruits,
    record_pollination,
)
from pedigreeview.book.recording.printed_sheets import PrintedSheet, note_typed_in
from pedigreeview.book.recording.scores import GridFaults, record_scores, score_grid
from pedigreeview.book.recording.sowings import record_seedlings
from pedigreeview.book.recording.typed_dates import Order, typed_date
from pedigreeview.book.references import about

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit

__all__ = ["CONTENTS", "OPEN_WORDS", "SELF_WORDS", "sheet_columns", "type_sheet_in"]

CONTENTS = {
    "pollinations": (
        "seed_parent", "pollen_parent", "cross", "date", "flowers", "bud", "cover", "tag", "by",
        "note",
    ),
    "crossing": (
        "seed_parent", "pollen_parent", "cross", "flowers", "bud", "cover", "tag", "by", "note",
    ),
    "rows": ("up", "kept", "off-types", "place", "note"),
    "fruits": ("set", "dropped", "note"),
}  # fmt: skip
"""The columns of each kind of sheet in the order of the paper; scores have their traits."""

SELF_WORDS = ("self", "selfed", "⊗", "x self")
OPEN_WORDS = ("open", "op", "open-pollinated", "○")
"""What may stand for the pollen parent of a selfing and of open-pollinated seed."""

_TABLES = {"scores": "plants", "rows": "sowings", "fruits": "pollinations", "crossing": "crosses"}
_NOTE = "note"

_Cell = tuple[int, int]


def sheet_columns(sheet: PrintedSheet) -> tuple[str, ...]:
    """What is typed of a sheet; behind the traits of a score sheet stands a note."""
    return (*sheet.columns, _NOTE) if sheet.kind == "scores" else sheet.columns


@dataclass(slots=True)
class _Typing:
    """One sheet under way."""

    edit: Edit
    sheet: PrintedSheet
    columns: tuple[str, ...]
    today: datetime.date
    date: str
    by: str
    order: Order
    faults: dict[_Cell, Fault] = field(default_factory=dict)

    @property
    def book(self) -> Book:
        return self.edit.book

    def fault(self, row: int, name: str, fault: Fault) -> None:
        """A fault beside its cell; of a column that the sheet has not, beside the first."""
        shown = name if name in self.columns else self.columns[0]
        place = Place(row=row + 1, column=shown, plant=self.sheet.rows[row])
        self.faults[row, self.columns.index(shown)] = Fault(fault.what, place, fault.todo)


def type_sheet_in(
    edit: Edit,
    sheet: PrintedSheet,
    cells: Mapping[_Cell, str],
    *,
    today: datetime.date,
    date: str = "",
    by: str = "",
    order: Order = "day-month",
) -> int:
    """Record a filled sheet, its cells by row and column from 0; gives how many rows were filled.

    Parameters
    ----------
    date : ISO day on which it was filled in; rows with a day of their own keep that
    by : who filled it in, for rows that do not say

    Raises
    ------
    GridFaults : everything that cannot be taken, by cell; the edit is then to be given up
    Fault : no cell is filled
    """
    filled = {cell: text.strip() for cell, text in cells.items() if text.strip()}
    rows = sorted({row for row, _ in filled})
    if not rows:
        raise Fault("Nothing is typed in yet.", Place(), "Type what stands on the sheet.")
    typing = _Typing(edit, sheet, sheet_columns(sheet), today, date, by, order)
    if sheet.kind == "scores":
        _scores(typing, filled)
    else:
        take = {
            "pollinations": _pollinated,
            "crossing": _pollinated,
            "fruits": _fruits,
            "rows": _sown,
        }[sheet.kind]
        for row in rows:
            said = {name: filled.get((row, at), "") for at, name in enumerate(typing.columns)}
            try:
                _there(typing, row)
                take(typing, row, said)
            except Fault as fault:
                typing.fault(row, fault.where.column, fault)
    if typing.faults:
        raise GridFaults(dict(sorted(typing.faults.items())))
    note_typed_in(edit, sheet, today)
    return len(rows)


def _there(typing: _Typing, row: int) -> None:
    key, table = typing.sheet.rows[row], _TABLES.get(typing.sheet.kind, "")
    if key and table and key not in getattr(typing.book, table):
        raise Fault(
            f"{about(table, key).capitalize()} is not in the book any more.",
            Place(),
            "Leave the row blank, or record it elsewhere.",
        )


# Pollinations -----------------------------------------------------------------------------------


def _pollinated(typing: _Typing, row: int, said: dict[str, str]) -> None:
    edit, key = typing.edit, typing.sheet.rows[row]
    flowers = _count(said["flowers"], "flowers")
    date = typing.date
    if said.get("date"):
        date = typed_date(said["date"], typing.today, order=typing.order)
    bud = _bud(said["bud"])
    cross = key or _cross_of_row(typing, said)
    record_pollination(
        edit,
        cross,
        today=typing.today,
        date=date,
        flowers=flowers,
        cover=said["cover"],
        tag=said["tag"],
        by=said["by"] or typing.by,
        bud=bud,
        note=said["note"],
    )


def _cross_of_row(typing: _Typing, said: dict[str, str]) -> str:
    """The cross that a row names by its code, by its parents, or both; a new one is recorded."""
    book, code = typing.book, said["cross"]
    seed, pollen = said["seed_parent"], said["pollen_parent"]
    if code and (not seed or code in book.crosses):
        held = cross_called(book, code)
        for typed, name in ((seed, "seed_parent"), (pollen, "pollen_parent")):
            _agrees(book, held.cross, typed, name)
        return held.cross
    if not seed:
        raise Fault(
            "The row names no seed parent and no cross.",
            Place(column="seed_parent"),
            "Type the plant that bears the fruit, or the code of the cross.",
        )
    word = " ".join(pollen.casefold().split())
    today, edit = typing.today, typing.edit
    mother = plant_called(book, seed, "seed_parent").plant
    if word in SELF_WORDS:
        return record_selfing(edit, mother, today=today, code=code).cross
    if word in OPEN_WORDS:
        return record_open(edit, mother, today=today, code=code).cross
    if not pollen:
        raise Fault(
            "The row names no pollen parent.",
            Place(column="pollen_parent"),
            "Type the plant that gave the pollen, 'self' or 'open'.",
        )
    return record_cross(edit, mother, pollen, today=today, code=code)[0].cross


def _agrees(book: Book, cross: str, typed: str, name: str) -> None:
    if not typed:
        return
    held = book.crosses[cross]
    word = " ".join(typed.casefold().split())
    if name == "pollen_parent" and word in (*SELF_WORDS, *OPEN_WORDS):
        selfed = held.pollen_parent == held.seed_parent
        if selfed if word in SELF_WORDS else not held.pollen_parent:
            return
    elif plant_called(book, typed, name).plant == getattr(held, name):
        return
    pollen = held.pollen_parent or "unknown"
    raise Fault(
        f"The cross {cross} is {held.seed_parent or 'unknown'} × {pollen}, not with {typed!r}.",
        Place(column=name),
        "Correct the code of the cross, or leave one of the two blank.",
    )


def _bud(text: str) -> str:
    """'c' is enough for 'closed'."""
    word = text.casefold()
    found = [bud for bud in BUDS if word and bud.startswith(word)]
    if word and len(found) != 1:
        raise Fault(
            f"{text!r} does not say how the bud was.",
            Place(column="bud"),
            f"Type {', '.join(BUDS)}, or their first letters.",
        )
    return found[0] if found else ""


# Fruits and rows --------------------------------------------------------------------------------


def _fruits(typing: _Typing, row: int, said: dict[str, str]) -> None:
    held = typing.book.pollinations[typing.sheet.rows[row]]
    took, lost = _count(said["set"], "set"), _count(said["dropped"], "dropped")
    record_fruits(
        typing.edit,
        held.pollination,
        fruits=held.set if took is None else took,
        dropped=held.dropped if lost is None else lost,
        note=said["note"],
    )


def _sown(typing: _Typing, row: int, said: dict[str, str]) -> None:
    edit, key = typing.edit, typing.sheet.rows[row]
    off = _count(said["off-types"], "off-types")
    words = [said["note"]] if said["note"] else []
    if off is not None:
        words.append(f"off-types: {off}")
    up, kept = _count(said["up"], "up"), _count(said["kept"], "kept")
    record_seedlings(edit, key, up=up, kept=kept, note="; ".join(words))
    if said["place"]:
        edit.update(edit.book.sowings[key], place=said["place"])


# Scores -----------------------------------------------------------------------------------------


def _scores(typing: _Typing, filled: dict[_Cell, str]) -> None:
    edit, sheet = typing.edit, typing.sheet
    traits = [trait for trait in sheet.columns if trait in edit.book.traits]
    for row, at in filled:
        if sheet.rows[row] not in edit.book.plants:
            _missing(typing, row, at)
        elif at < len(sheet.columns) and sheet.columns[at] not in edit.book.traits:
            gone = Fault(
                f"The trait {sheet.columns[at]!r} is not in the book any more.",
                Place(),
                "Leave the column blank, or record the trait again.",
            )
            typing.fault(row, sheet.columns[at], gone)
    plants = [code for code in sheet.rows if code in edit.book.plants]
    grid = score_grid(edit.book, plants, traits, date=typing.date)
    row_of = {code: at for at, code in enumerate(plants)}
    notes, cells, back = {}, {}, {}
    for (row, at), text in filled.items():
        code = sheet.rows[row]
        if (row, at) in typing.faults or code not in row_of:
            continue
        if at == len(sheet.columns):
            notes[code] = text
            continue
        cell = (row_of[code], traits.index(sheet.columns[at]))
        cells[cell], back[cell] = text, (row, at)
    try:
        record_scores(edit, grid, cells, by=typing.by)
    except GridFaults as found:
        for cell, fault in found.faults.items():
            row, at = back[cell]
            typing.fault(row, typing.columns[at], fault)
    except Fault as fault:
        # A score that comes before its plant was sown names the plant, and no cell.
        row = sheet.rows.index(fault.where.plant) if fault.where.plant in sheet.rows else 0
        named = [at for where, at in filled if where == row]
        typing.fault(row, typing.columns[min(named, default=0)], fault)
    for code, text in notes.items():
        record_note(edit, "plants", code, text, date=typing.date)


def _missing(typing: _Typing, row: int, at: int) -> None:
    try:
        _there(typing, row)
    except Fault as fault:
        typing.fault(row, typing.columns[at], fault)


def _count(text: str, column: str) -> int | None:
    if not text:
        return None
    if not text.isascii() or not text.isdigit():
        raise Fault(
            f"{text!r} is no whole number.",
            Place(column=column),
            "Type digits alone, or leave it blank.",
        )
    return int(text)
