"""Garden sheets that were printed: kept by their number, found again when they are typed in.

A sheet is kept in the settings of the book under its number, with its rows and columns in the order
of the paper, so that it is typed in as it was walked.  The oldest are forgotten after `MOST`.
"""

from __future__ import annotations

import datetime
import json
from collections.abc import Iterable
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.codes import did_you_mean

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit

__all__ = [
    "MOST",
    "PrintedSheet",
    "keep_sheets",
    "note_typed_in",
    "printed_sheets",
    "sheet_number",
    "sheet_numbered",
]

MOST = 60
"""Sheets that a book keeps; the oldest give way."""

_KEY = "garden sheet "
_KINDS = ("pollinations", "crossing", "scores", "rows", "fruits")


@dataclass(frozen=True, slots=True)
class PrintedSheet:
    """One sheet as it was printed.

    kind : 'pollinations' (empty rows), 'crossing' (a row for each cross, then empty ones), 'scores'
        (for each plant), 'rows' (for each sowing) or 'fruits' (for each pollination)
    rows : keys of the records in the order of the paper, '' for an empty row
    columns : the blanks; of scores the traits
    printed, typed : ISO days; '' where it was not typed in yet
    """

    number: str
    kind: str
    rows: tuple[str, ...]
    columns: tuple[str, ...]
    printed: str = ""
    typed: str = ""


def sheet_number(text: str) -> str:
    """A number as it stands on the paper, '7F3K-Q', from what somebody typed."""
    signs = "".join(sign for sign in text.upper() if sign.isalnum())
    # O, I, L and U are no signs of a number; whoever reads one has seen a digit or a V.
    signs = signs.translate(str.maketrans("OILU", "011V"))
    return f"{signs[:4]}-{signs[4:]}" if len(signs) > 4 else signs


def _read(number: str, text: str) -> PrintedSheet | None:
    try:
        held: Any = json.loads(text)
        kind, rows, columns = str(held["kind"]), list(held["rows"]), list(held["columns"])
        printed, typed = str(held.get("printed", "")), str(held.get("typed", ""))
    except (ValueError, KeyError, TypeError, AttributeError):
        return None
    if kind not in _KINDS or not all(isinstance(one, str) for one in [*rows, *columns]):
        return None
    return PrintedSheet(number, kind, tuple(rows), tuple(columns), printed, typed)


def printed_sheets(book: Book) -> tuple[PrintedSheet, ...]:
    """The sheets that the book keeps, the one printed last first."""
    held = [
        sheet
        for key, text in book.settings.extra.items()
        if key.startswith(_KEY) and (sheet := _read(key.removeprefix(_KEY), text)) is not None
    ]
    # Of one day the one that was put in last stands first.
    return tuple(sorted(held, key=lambda sheet: sheet.printed)[::-1])


def sheet_numbered(book: Book, number: str) -> PrintedSheet:
    """The sheet of a number, however it was typed.

    Raises
    ------
    Fault : no such sheet is kept, with the nearest number
    """
    wanted = sheet_number(number)
    held = {sheet.number: sheet for sheet in printed_sheets(book)}
    if wanted in held:
        return held[wanted]
    raise Fault(
        f"No garden sheet {wanted or number.strip()} was printed from this book.",
        Place(column="number"),
        did_you_mean(wanted, held) or "Read the number in the box at the top of the sheet again.",
    )


def _written(sheet: PrintedSheet) -> str:
    held = {
        "kind": sheet.kind,
        "rows": list(sheet.rows),
        "columns": list(sheet.columns),
        "printed": sheet.printed,
    }
    if sheet.typed:
        held["typed"] = sheet.typed
    return json.dumps(held, ensure_ascii=False, separators=(",", ":"))


def keep_sheets(edit: Edit, sheets: Iterable[PrintedSheet]) -> None:
    """Keep printed sheets; one of the same number, which asks the same, is put in anew."""
    extra = dict(edit.book.settings.extra)
    for sheet in sheets:
        extra.pop(_KEY + sheet.number, None)
        extra[_KEY + sheet.number] = _written(sheet)
    kept = [key for key in extra if key.startswith(_KEY)]
    for key in kept[: max(0, len(kept) - MOST)]:
        del extra[key]
    edit.set_settings(extra=extra)


def note_typed_in(edit: Edit, sheet: PrintedSheet, on: datetime.date) -> None:
    """Write down that a sheet was typed in; one that the book has forgotten stays so."""
    key = _KEY + sheet.number
    held = edit.book.settings.extra
    if key in held:
        done = PrintedSheet(
            sheet.number, sheet.kind, sheet.rows, sheet.columns, sheet.printed, on.isoformat()
        )
        edit.set_settings(extra={**held, key: _written(done)})
