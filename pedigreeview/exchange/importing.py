"""An import: preview, then all of it as one edit, or nothing; with a report of what came in.

`carry_out` computes everything beforehand and changes nothing; `Imported.apply` puts it into an
edit, so that the window makes it one step that can be undone.
"""

from __future__ import annotations

import datetime
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, FileFaults, Place
from pedigreeview.book.records import TABLES
from pedigreeview.exchange.cells import to_cell
from pedigreeview.exchange.import_cells import Gathered
from pedigreeview.exchange.import_plan import ImportPlan, planned
from pedigreeview.exchange.import_reading import read_plants
from pedigreeview.exchange.merging import Comparison, Difference, Side, compare
from pedigreeview.exchange.one_row_per_cross import read_crosses
from pedigreeview.exchange.spreadsheets import Sheets, Table, cell_text
from pedigreeview.exchange.ticking import Tick, no_tick

if TYPE_CHECKING:
    from pedigreeview.book.edits import Edit

__all__ = ["LARGE", "Imported", "Preview", "Report", "carry_out", "preview"]

LARGE = 100_000
"""Rows from which an import is undone by a backup rather than step by step."""

_SHOWN = 8


@dataclass(frozen=True, slots=True)
class Preview:
    """The first rows as they would be read, with what is wrong with the table.

    headings : of the columns
    rows : row of the file and its cells as text
    faults : the first problems, each with row and column in its place
    more_faults : how many there are beyond these
    marked : (row, column heading) of the cells that have one
    missing : what the plan lacks, one sentence each
    """

    headings: tuple[str, ...]
    rows: tuple[tuple[int, tuple[str, ...]], ...]
    faults: tuple[Fault, ...] = ()
    more_faults: int = 0
    marked: frozenset[tuple[int, str]] = frozenset()
    missing: tuple[str, ...] = ()


@dataclass(slots=True)
class Report:
    """What an import did, one sentence each."""

    came_in: list[str] = field(default_factory=list)
    guessed: list[str] = field(default_factory=list)
    left_out: list[str] = field(default_factory=list)

    def lines(self) -> list[str]:
        """The report as lines of text under their headings."""
        said: list[str] = []
        for heading, sentences in (
            ("Came in", self.came_in),
            ("Guessed", self.guessed),
            ("Left out", self.left_out),
        ):
            if sentences:
                said += [f"{heading}:", *(f"  {sentence}" for sentence in sentences)]
        return said


@dataclass(slots=True)
class Imported:
    """What a table holds, and how it meets a book.

    book : the records of the table alone
    comparison : what is new, the same and different in the book it goes into; None without one
    report : what came in, was guessed and left out
    large : whether it is past the rows that can be undone step by step
    """

    book: Book
    report: Report
    comparison: Comparison | None = None
    large: bool = False

    @property
    def differences(self) -> list[Difference]:
        """What the table and the book say differently."""
        return [] if self.comparison is None else self.comparison.differences

    def apply(
        self,
        edit: Edit,
        choose: Mapping[Difference, Side] | Side | None = None,
        *,
        tick: Tick = no_tick,
    ) -> None:
        """Put it into an edit of the book (see `Comparison.apply`).

        tick : called now and then; where it raises, the edit is not to be kept

        Raises
        ------
        Fault : something no longer fits; the edit is not to be kept
        """
        comparison = self.comparison
        if comparison is None:
            comparison = compare(Book(), self.book, tick=tick)
        comparison.apply(edit, choose, tick=tick)


def preview(
    sheets: Sheets,
    plan: ImportPlan,
    rows: int = 50,
    *,
    most_faults: int = 50,
    today: datetime.date | None = None,
    tick: Tick = no_tick,
) -> Preview:
    """The first rows of a table under a plan, with the first problems of the whole table.

    Parameters
    ----------
    sheets, plan : the file, and how it is to be read
    rows : how many are shown
    most_faults : how many problems are listed
    today : for dates with two digits of the year
    tick : called now and then; may raise `Cancelled`
    """
    table = sheets.named(plan.sheet)
    shown = tuple(
        (line, tuple(cell_text(cell) for cell in cells) + ("",) * (table.width - len(cells)))
        for line, cells in table.below(plan.heading)[:rows]
    )
    headings = tuple(table.headings(plan.heading))
    missing = tuple(planned(plan))
    faults: Sequence[Fault] = ()
    if not missing:
        try:
            _read(sheets, table, plan, today, tick)
        except FileFaults as error:
            faults = error.faults
        except Fault as fault:
            faults = [fault]
    marked = frozenset(
        (fault.where.row, fault.where.column) for fault in faults if fault.where.row is not None
    )
    return Preview(
        headings,
        shown,
        tuple(faults[:most_faults]),
        max(len(faults) - most_faults, 0),
        marked,
        missing,
    )


def _read(
    sheets: Sheets, table: Table, plan: ImportPlan, today: datetime.date | None, tick: Tick
) -> tuple[Book, Gathered]:
    gathered = Gathered(sheets.name)
    day = today or datetime.date.today()
    read = read_plants if plan.form == "plants" else read_crosses
    return read(table, plan, gathered, day, tick), gathered


def carry_out(
    sheets: Sheets,
    plan: ImportPlan,
    into: Book | None = None,
    *,
    today: datetime.date | None = None,
    tick: Tick = no_tick,
) -> Imported:
    """Read a table by its plan, whole or not at all, and lay it beside a book.

    Parameters
    ----------
    sheets, plan : the file, and how it is to be read
    into : the book it goes into; None for a new one
    today : for dates with two digits of the year
    tick : called now and then; may raise `Cancelled`

    Returns
    -------
    what comes in; `apply` puts it into an edit.  Nothing is changed here

    Raises
    ------
    FileFaults : with everything that is wrong with the table
    Fault : the plan lacks something
    """
    missing = planned(plan)
    if missing:
        raise Fault(missing[0], Place(file=sheets.name), "Say what each column means.")
    table = sheets.named(plan.sheet)
    if into is not None:
        plan = _known_traits(plan, into)
    book, gathered = _read(sheets, table, plan, today, tick)
    comparison = None if into is None else compare(into, book, tick=tick)
    report = _report(sheets, plan, book, gathered, comparison)
    large = len(table.below(plan.heading)) > LARGE
    if large:
        report.guessed.append("The table is large; keep a backup to be able to go back.")
    return Imported(book, report, comparison, large)


def _known_traits(plan: ImportPlan, into: Book) -> ImportPlan:
    """The plan with the names of traits as the book spells them, whatever the case."""
    known = {name.casefold(): name for name in into.traits}
    columns = tuple(
        replace(column, trait=known.get(column.trait.casefold(), column.trait))
        for column in plan.columns
    )
    return replace(plan, columns=columns)


def _counted(count: int, table: str) -> str:
    from pedigreeview.book.references import ONE

    words = table.replace("_", " ") if count != 1 else ONE[table]
    return f"{count} {words}"


def _report(
    sheets: Sheets,
    plan: ImportPlan,
    book: Book,
    gathered: Gathered,
    comparison: Comparison | None,
) -> Report:
    report = Report()
    if comparison is None:
        counts = {name: len(book.table(name)) for name in TABLES}
        report.came_in = [f"{_counted(n, name)}." for name, n in counts.items() if n]
    else:
        new: dict[str, int] = {}
        for record in comparison.new:
            new[record.TABLE] = new.get(record.TABLE, 0) + 1
        report.came_in = [f"{_counted(count, name)}, new." for name, count in new.items()]
        if comparison.same:
            report.came_in.append(f"{comparison.same} records are in the book already.")
        if comparison.differences:
            report.came_in.append(
                f"{len(comparison.differences)} cells differ from the book; yours stay unless "
                "they are blank or you say otherwise."
            )
        report.guessed += _other_crosses(comparison)
    report.guessed += list(plan.why)
    report.guessed += [
        f"The column {column.heading!r} was taken as {column.meaning.replace('_', ' ')}. "
        f"{column.why}"
        for column in plan.columns
        if column.confidence < 0.9 and column.meaning != "left_out"
    ]
    for text, mark in plan.marks.items():
        if mark != "code":
            shown = repr(text) if text else "A blank"
            meant = "open-pollinated" if mark == "open" else "not known"
            report.guessed.append(f"{shown} under a parent was read as {meant}.")
    for spelled, code in plan.same.items():
        report.guessed.append(f"{spelled!r} was taken as {code!r}, as you said.")
    report.guessed += [_sentence(words, count) for words, count in gathered.guessed.items()]
    report.guessed += [
        remark for remark in (*sheets.remarks, *book.remarks) if "kept as notes" not in remark
    ]
    report.left_out += [
        f"The column {column.heading or column.index + 1!r}."
        for column in plan.columns
        if column.meaning == "left_out"
    ]
    report.left_out += [_sentence(words, count) for words, count in gathered.left_out.items()]
    others = [table.name for table in sheets.tables if table.rows and table.name != plan.sheet]
    if plan.sheet and others:
        report.left_out.append(f"The other sheets: {', '.join(others[:_SHOWN])}.")
    return report


def _sentence(words: str, count: int) -> str:
    text = words[:1].upper() + words[1:]
    return f"{text}." if count == 1 else f"{text} ({count} times)."


def _other_crosses(comparison: Comparison) -> list[str]:
    """Crosses that come in beside others of the same parents."""
    held: dict[tuple[str, str], list[str]] = {}
    for cross in comparison.mine.crosses.values():
        held.setdefault((cross.seed_parent, cross.pollen_parent), []).append(cross.cross)
    said = []
    for record in comparison.new:
        if record.TABLE != "crosses":
            continue
        pair = (to_cell(getattr(record, "seed_parent", "")), getattr(record, "pollen_parent", ""))
        if pair in held and all(pair):
            said.append(
                f"The cross {getattr(record, 'cross', '')!r} comes in beside "
                f"{', '.join(held[pair][:_SHOWN])}, which has the same parents."
            )
    return said[:_SHOWN]
