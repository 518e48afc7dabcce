"""What a file to be brought in holds: sheets that have to be explained, or a whole book.

Knows no widget; everything here runs off the window's thread.
"""

from __future__ import annotations

import datetime
import re
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path
from typing import TYPE_CHECKING

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, FileFaults, Place
from pedigreeview.exchange.import_plan import DateOrder, ImportPlan
from pedigreeview.exchange.ticking import Tick, no_tick, ticked

if TYPE_CHECKING:
    from pedigreeview.exchange.importing import Imported
    from pedigreeview.exchange.same_plants import Spellings
    from pedigreeview.exchange.spreadsheets import Sheets, Table

__all__ = [
    "TABLES",
    "Draft",
    "Source",
    "bring_in_book",
    "cells_counted",
    "code_words",
    "date_example",
    "look_alikes_in",
    "read_source",
    "wants_explaining",
]

TABLES = (".csv", ".tsv", ".txt", ".xlsx", ".ods")
"""Endings of files that are read as sheets of rows."""

_DATE = re.compile(r"\s*([0-9]{1,2})[-./ ]([0-9]{1,2})[-./ ]([0-9]{2,4})\s*\Z")
_DATED = ("sown", "made_on", "harvested")


@dataclass(frozen=True, slots=True)
class Source:
    """A file that was read.

    path : of the file or folder
    sheets : its sheets, where columns have to be explained; None for a whole book
    book : the records, where the file says itself what they are
    """

    path: Path
    sheets: Sheets | None = None
    book: Book | None = None


@dataclass(slots=True)
class Draft:
    """What has been settled so far on the way into a book.

    into : the book that it goes into; None for a new one
    plan : how the sheets are read; None for a whole book
    spellings : spellings that may be one plant, as they are offered
    same : a spelling and the code that is to be taken for it, as the person said
    """

    source: Source
    into: Book | None
    plan: ImportPlan | None = None
    spellings: list[Spellings] = field(default_factory=list)
    same: dict[str, str] = field(default_factory=dict)
    imported: Imported | None = None

    @property
    def table(self) -> Table | None:
        """The sheet that is read."""
        if self.source.sheets is None or self.plan is None:
            return None
        return self.source.sheets.named(self.plan.sheet)


def read_source(path: Path, tick: Tick = no_tick) -> Source:
    """Read a file or folder for bringing in.

    tick : called now and then; may raise `Cancelled`

    Raises
    ------
    Fault, FileFaults : it cannot be read
    """
    from pedigreeview.exchange.formats import format_of_path, read_path_as
    from pedigreeview.exchange.spreadsheets import open_table

    held = format_of_path(path)
    tabular = held is None or held.name in ("table", "xlsx", "ods")
    if path.is_dir() or not tabular or path.name == "datapackage.json":
        return Source(path, book=read_path_as(path, tick=tick))
    if path.suffix.lower() == ".xls":
        raise Fault(
            "This is an old spreadsheet file, which is not read.",
            Place(file=str(path)),
            "Save it as .xlsx or .ods in the spreadsheet program and bring that file in.",
        )
    sheets = open_table(path, tick)
    if _says_itself(sheets, tick):
        try:
            return Source(path, sheets, read_path_as(path, tick=tick))
        except FileFaults:
            # Its cells are what is wrong; the steps show them where they stand.
            pass
    return Source(path, sheets)


def _says_itself(sheets: Sheets, tick: Tick) -> bool:
    """Whether every column is one of the plant table, and no cell has to be asked about."""
    from pedigreeview.exchange import passport
    from pedigreeview.exchange.import_plan import guess_plan
    from pedigreeview.exchange.table_headings import KNOWN, NEEDED
    from pedigreeview.exchange.text_files import plain

    table = sheets.named("")
    if not table.rows:
        return False
    headings = table.headings(0)
    if passport.is_passport(headings):
        return True
    folded = {plain(text) for text in headings if text}
    needed = {plain(word) for word in NEEDED}
    if not needed <= folded or not folded <= {plain(word) for word in KNOWN}:
        return False
    return not set(guess_plan(sheets, tick=tick).marks) - {""}


def wants_explaining(path: Path) -> bool:
    """Whether a file is a table without the headings of a plant table, which cannot be opened.

    Raises
    ------
    Fault : it cannot be read at all
    """
    from pedigreeview.exchange import passport
    from pedigreeview.exchange.spreadsheets import open_table
    from pedigreeview.exchange.table_headings import NEEDED
    from pedigreeview.exchange.text_files import plain

    if path.suffix.lower() not in TABLES or not path.is_file():
        return False
    needed = {plain(word) for word in NEEDED}
    sheets = open_table(path)
    for table in sheets.tables:
        if table.rows:
            headings = table.headings(0)
            if needed <= {plain(text) for text in headings} or passport.is_passport(headings):
                return False
    return any(table.rows for table in sheets.tables)


# What the steps ask of the table ------------------------------------------------------------------


def _texts(
    table: Table, plan: ImportPlan, meanings: tuple[str, ...], tick: Tick = no_tick
) -> Iterator[str]:
    from pedigreeview.exchange.spreadsheets import cell_text

    columns = [column.index for column in plan.columns if column.meaning in meanings]
    for _, cells in ticked(table.below(plan.heading), tick):
        for index in columns:
            cell = cells[index] if index < len(cells) else ""
            if isinstance(cell, datetime.date):
                continue
            yield cell_text(cell).strip()


def date_example(
    table: Table, plan: ImportPlan, tick: Tick = no_tick
) -> tuple[str, DateOrder | None]:
    """A date whose order is in question, and the order that the dates of the table prove.

    tick : called now and then; may raise `Cancelled`

    Returns
    -------
    a date as it stands, '' where no order is in question; and 'day-month' or 'month-day' where some
    date can only be read that way, None where none can
    """
    example, sure = "", False
    proved: DateOrder | None = None
    for text in _texts(table, plan, _DATED, tick):
        found = _DATE.match(text)
        if found is None:
            continue
        one, two = int(found[1]), int(found[2])
        if one > 12 >= two:
            proved = "day-month"
        elif two > 12 >= one:
            proved = proved or "month-day"
        both_ways = one <= 12 and two <= 12 and one != two
        if not example or (both_ways and not sure):
            example, sure = text, both_ways
    return example, proved


def cells_counted(table: Table, plan: ImportPlan) -> dict[str, int]:
    """How often each mark of the plan stands under a parent."""
    counts = dict.fromkeys(plan.marks, 0)
    for text in _texts(table, plan, ("seed_parent", "pollen_parent", "parents")):
        if text in counts:
            counts[text] += 1
    return counts


def look_alikes_in(draft: Draft, tick: Tick = no_tick) -> list[Spellings]:
    """Spellings that may be one plant, within what comes in and against the book.

    tick : called now and then; may raise `Cancelled`
    """
    from pedigreeview.exchange.same_plants import look_alikes, look_alikes_of

    source = draft.source
    if draft.plan is not None and source.sheets is not None:
        return look_alikes(source.sheets, draft.plan, draft.into, tick)
    if source.book is None or draft.into is None:
        return []
    counts = dict.fromkeys(source.book.plants, 1)
    # Within a book every code is a plant of its own; only a code of mine can be meant by theirs.
    return [
        found
        for found in look_alikes_of(counts, draft.into.plants, tick)
        if len(found.known) == 1 and sum(code in counts for code in found.codes) == 1
    ]


def code_words(count: int, table: str) -> str:
    """'1 plant', '12 crosses'."""
    from pedigreeview.book.references import ONE

    return f"{count} {ONE[table] if count == 1 else table.replace('_', ' ')}"


def bring_in_book(draft: Draft, tick: Tick = no_tick) -> Imported:
    """A whole book laid beside the one that it goes into, with the report.

    tick : called now and then; may raise `Cancelled`

    Raises
    ------
    Fault : it does not fit
    """
    from pedigreeview.book.records import TABLES as RECORDS
    from pedigreeview.exchange.importing import LARGE, Imported, Report
    from pedigreeview.exchange.merging import compare

    book = draft.source.book
    assert book is not None
    report = Report(guessed=list(book.remarks))
    names: dict[tuple[str, str], str] = {
        ("plants", spelled): code for spelled, code in draft.same.items()
    }
    comparison = None
    if draft.into is not None:
        comparison = compare(draft.into, book, names=names, tick=tick)
    if comparison is None:
        counts = {name: len(book.table(name)) for name in RECORDS}
        report.came_in = [f"{code_words(n, name)}." for name, n in counts.items() if n]
    else:
        new: dict[str, int] = {}
        for record in comparison.new:
            new[record.TABLE] = new.get(record.TABLE, 0) + 1
        report.came_in = [f"{code_words(n, name)}, new." for name, n in new.items()]
        if comparison.same:
            report.came_in.append(f"{comparison.same} records are in the book already.")
        report.guessed += [
            f"{old!r} was taken as {new_!r}, as you said." for old, new_ in draft.same.items()
        ]
        report.left_out = list(comparison.settings)
    return Imported(book, report, comparison, len(book.plants) > LARGE)
