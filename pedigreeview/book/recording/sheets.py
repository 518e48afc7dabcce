"""Blank sheets for the garden: what stands on them, and how they are typed in afterwards.

A sheet has the rows in a stated order and keeps it, so that the paper is typed in line by line as
it was walked.  Nothing of a sheet is recorded unless all of it can be.
"""

from __future__ import annotations

import datetime
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.guard import guarded
from pedigreeview.book.recording.moving import bed_map
from pedigreeview.book.recording.place_names import read_place
from pedigreeview.book.recording.pollinations import record_fruits, record_pollination
from pedigreeview.book.recording.scores import GridFaults, record_scores, score_grid
from pedigreeview.book.recording.sowings import record_seedlings
from pedigreeview.book.recording.typed_dates import Order, typed_date

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit

__all__ = ["ORDERS", "GardenSheet", "SheetRow", "blank_sheet", "in_order", "type_in"]

ORDERS = ("given", "code", "place")
"""The orders in which rows can stand."""


@dataclass(frozen=True, slots=True)
class SheetRow:
    """One line: the key of its record, what is printed before the blanks, and where it stands."""

    key: str
    words: str
    place: str


@dataclass(frozen=True, slots=True)
class GardenSheet:
    """A sheet to be filled in by hand.

    kind : 'pollinations' (a row for each cross), 'fruits' (for each pollination), 'seedlings' (for
        each sowing) or 'scores' (for each plant)
    columns : names of the blanks; of scores the traits
    order : a word of `ORDERS`
    """

    kind: str
    rows: tuple[SheetRow, ...]
    columns: tuple[str, ...]
    order: str


_COLUMNS = {
    "pollinations": ("date", "flowers", "cover", "tag", "bud", "by"),
    "fruits": ("set", "dropped"),
    "seedlings": ("up", "kept"),
}


def in_order(book: Book, plants: Sequence[str], order: str) -> list[str]:
    """Plants in the order of a sheet: as given, by code, or as one walks bed by bed and row by row;
    plants without a place stand last."""
    if order == "code":
        return sorted(plants, key=_numbers_in_order)
    if order != "place":
        return list(plants)
    walked: dict[str, int] = {}
    for bed in bed_map(book, with_gone=True).beds:
        for row in bed.rows:
            for code in [c for _, codes in row.standing for c in codes] + list(row.elsewhere):
                walked[code] = len(walked)
    return sorted(plants, key=lambda code: walked.get(code, len(walked)))


def _numbers_in_order(code: str) -> tuple[tuple[int, int, str], ...]:
    parts: list[tuple[int, int, str]] = []
    word = ""
    for sign in code:
        if sign.isascii() and sign.isdigit():
            if parts and parts[-1][0] == 0 and not word:
                parts[-1] = (0, parts[-1][1] * 10 + int(sign), "")
                continue
            if word:
                parts.append((1, 0, word))
                word = ""
            parts.append((0, int(sign), ""))
        else:
            word += sign
    return tuple([*parts, (1, 0, word)] if word else parts)


def blank_sheet(
    book: Book,
    kind: str,
    keys: Sequence[str],
    *,
    traits: Sequence[str] = (),
    order: str = "given",
) -> GardenSheet:
    """A sheet for some crosses, pollinations, sowings or plants.

    Raises
    ------
    Fault : a record that is not in the book, scores without traits, an order that is not known
    """
    if order not in ORDERS:
        raise Fault(
            f"{order!r} is no order of rows.", Place(column="order"),
            f"Choose from: {', '.join(ORDERS)}.",
        )  # fmt: skip
    table = {"pollinations": "crosses", "fruits": "pollinations", "seedlings": "sowings"}.get(
        kind, "plants"
    )
    held = getattr(book, table)
    missing = [key for key in keys if key not in held]
    if missing:
        raise Fault(
            f"{missing[0]!r} is not among the {table} of this book.",
            Place(column=table),
            "Choose what is there.",
        )
    if kind == "scores":
        columns = tuple(dict.fromkeys(traits))
        if not columns or any(trait not in book.traits for trait in columns):
            raise Fault(
                "The sheet names no trait, or one that is not in the book.",
                Place(column="trait"),
                "Choose the traits to score.",
            )
    else:
        columns = _COLUMNS[kind]
    rows = [_row(book, kind, key) for key in dict.fromkeys(keys)]
    if order == "code":
        rows.sort(key=lambda row: _numbers_in_order(row.key))
    elif order == "place":
        rows.sort(key=lambda row: _walk(row.place))
    return GardenSheet(kind, tuple(rows), columns, order)


def _walk(place: str) -> tuple[object, ...]:
    read = read_place(place)
    if read is None:
        return (1, (), (), 0)
    return (
        0,
        _numbers_in_order(read.bed.casefold()),
        _numbers_in_order(read.row.casefold()),
        read.position or 0,
    )


def _row(book: Book, kind: str, key: str) -> SheetRow:
    if kind == "scores":
        plant = book.plants[key]
        return SheetRow(key, plant.name, plant.place)
    if kind == "seedlings":
        sowing = book.sowings[key]
        seeds = "" if sowing.seeds is None else f"{sowing.seeds} sown"
        what = sowing.packet or sowing.sown_from
        words = ", ".join(part for part in (what, sowing.date, seeds) if part)
        return SheetRow(key, words, sowing.place)
    pollination = book.pollinations.get(key) if kind == "fruits" else None
    cross = book.crosses[pollination.cross if pollination is not None else key]
    seed = book.plants.get(cross.seed_parent)
    pair = f"{cross.seed_parent or 'unknown'} × {cross.pollen_parent or 'unknown'}"
    if pollination is None:
        return SheetRow(key, pair, seed.place if seed is not None else "")
    tag = f"tag {pollination.tag}" if pollination.tag else ""
    flowers = "" if pollination.flowers is None else f"{pollination.flowers} flowers"
    parts = (cross.cross, pair, pollination.date, flowers, tag)
    words = ", ".join(part for part in parts if part)
    return SheetRow(key, words, seed.place if seed is not None else "")


def type_in(
    edit: Edit,
    sheet: GardenSheet,
    cells: Mapping[tuple[int, int], str],
    *,
    today: datetime.date,
    date: str = "",
    by: str = "",
    order: Order = "day-month",
) -> int:
    """Record a filled sheet, its cells by row and column from 0; gives how many rows were filled.

    Parameters
    ----------
    date : ISO day on which it was filled in; on a pollination sheet that of rows without their own
    by : who filled it in, for rows that do not say

    Raises
    ------
    GridFaults : everything that cannot be taken, by cell; nothing is recorded then
    """
    filled = {cell: text.strip() for cell, text in cells.items() if text.strip()}
    rows = sorted({row for row, _ in filled})
    if sheet.kind == "scores":
        grid = score_grid(edit.book, [row.key for row in sheet.rows], sheet.columns, date=date)
        record_scores(edit, grid, filled, by=by)
        return len(rows)
    faults: dict[tuple[int, int], Fault] = {}
    crosses = {_cross(edit.book, sheet.kind, sheet.rows[row].key) for row in rows}
    packets = {
        edit.book.sowings[sheet.rows[row].key].packet for row in rows if sheet.kind == "seedlings"
    }
    with guarded(edit, crosses=crosses, packets=packets):
        for row in rows:
            said = {
                name: filled.get((row, column), "") for column, name in enumerate(sheet.columns)
            }
            _one_row(edit, sheet, row, said, _Typed(today, date, by, order), faults)
        if faults:
            raise GridFaults(faults)
    return len(rows)


@dataclass(frozen=True, slots=True)
class _Typed:
    today: datetime.date
    date: str
    by: str
    order: Order


def _cross(book: Book, kind: str, key: str) -> str:
    if kind == "fruits":
        return book.pollinations[key].cross
    return book.sowings[key].sown_from if kind == "seedlings" else key


def _one_row(
    edit: Edit,
    sheet: GardenSheet,
    row: int,
    said: dict[str, str],
    typed: _Typed,
    faults: dict[tuple[int, int], Fault],
) -> None:
    key = sheet.rows[row].key

    def at(name: str, read: Callable[[str], object]) -> object:
        try:
            return read(said[name])
        except Fault as fault:
            place = Place(row=row + 1, column=name)
            faults[row, sheet.columns.index(name)] = Fault(fault.what, place, fault.todo)
            return None

    before = len(faults)
    values: dict[str, object] = {
        name: at(name, _count) for name in sheet.columns if name in _COUNTS
    }
    if sheet.kind == "pollinations":
        when = at("date", lambda text: typed_date(text, typed.today, order=typed.order))
        values |= {
            "date": when or typed.date, "cover": said["cover"], "tag": said["tag"],
            "bud": said["bud"].casefold(), "by": said["by"] or typed.by,
        }  # fmt: skip
    if len(faults) > before:
        return
    try:
        if sheet.kind == "pollinations":
            record_pollination(edit, key, today=typed.today, **values)  # type: ignore[arg-type]
        elif sheet.kind == "fruits":
            held = edit.book.pollinations[key]
            record_fruits(
                edit,
                key,
                fruits=values["set"] if said["set"] else held.set,  # type: ignore[arg-type]
                dropped=values["dropped"] if said["dropped"] else held.dropped,  # type: ignore[arg-type]
            )
        else:
            record_seedlings(edit, key, **values)  # type: ignore[arg-type]
    except Fault as fault:
        column = fault.where.column if fault.where.column in sheet.columns else sheet.columns[0]
        place = Place(row=row + 1, column=column)
        faults[row, sheet.columns.index(column)] = Fault(fault.what, place, fault.todo)


_COUNTS = ("flowers", "set", "dropped", "up", "kept")


def _count(text: str) -> int | None:
    if not text:
        return None
    if not text.isascii() or not text.isdigit():
        raise Fault(f"{text!r} is no whole number.", todo="Write a number, or leave it blank.")
    return int(text)
