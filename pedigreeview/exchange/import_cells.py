"""Cells of a foreign table, read as the records want them: dates in the person's order, ploidy,
words.

Nothing here raises; what cannot be read gives a flaw, so that all of a table's are found together.
"""

from __future__ import annotations

import datetime
import re
from dataclasses import dataclass, field

from pedigreeview.book import dates
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.recording.typed_dates import typed_date
from pedigreeview.exchange.cells import Flaw
from pedigreeview.exchange.import_plan import DateOrder, ImportPlan
from pedigreeview.exchange.spreadsheets import Cell, Table, cell_text

__all__ = ["Gathered", "as_date", "as_ploidy", "cell_at"]

_HAS_YEAR = re.compile(r"[0-9]{4}|[-./ ]'?[0-9]{2}\Z")
_SETS = re.compile(r"(?:2n\s*=\s*)?([0-9]{1,2})\s*[xX×](?:\s*=\s*[0-9]+)?\Z")
_PLOIDIES = {
    "haploid": 1, "diploid": 2, "triploid": 3, "tetraploid": 4, "pentaploid": 5, "hexaploid": 6,
    "octoploid": 8, "dip": 2, "tet": 4,
}  # fmt: skip
_MOST_FAULTS = 1_000


@dataclass(slots=True)
class Gathered:
    """What is learned of a table while its rows are read."""

    file: str
    faults: list[Fault] = field(default_factory=list)
    guessed: dict[str, int] = field(default_factory=dict)
    left_out: dict[str, int] = field(default_factory=dict)

    def fault(self, flaw: Flaw, row: int, column: str) -> None:
        """Note what is wrong with a cell."""
        if len(self.faults) < _MOST_FAULTS:
            self.faults.append(Fault(flaw.what, Place(self.file, row, column), flaw.todo))

    def guess(self, sentence: str) -> None:
        """Count something that was taken for granted."""
        self.guessed[sentence] = self.guessed.get(sentence, 0) + 1

    def leave(self, sentence: str) -> None:
        """Count something that does not come in."""
        self.left_out[sentence] = self.left_out.get(sentence, 0) + 1


def cell_at(cells: list[Cell], index: int) -> Cell:
    """A cell of a row that may be short."""
    return cells[index] if index < len(cells) else ""


def as_date(cell: Cell, order: DateOrder, today: datetime.date) -> tuple[str, Flaw | None]:
    """A date in ISO form, which may stop at the year or month; '' for a blank."""
    if isinstance(cell, datetime.datetime):
        return cell.date().isoformat(), None
    if isinstance(cell, datetime.date):
        return cell.isoformat(), None
    text = cell_text(cell).strip()
    if not text or dates.is_date(text):
        return text, None
    head = re.match(r"([0-9]{4}-[0-9]{2}-[0-9]{2})[T ]", text)
    if head and dates.is_date(head[1]):
        return head[1], None
    if not _HAS_YEAR.search(text):
        return "", Flaw(f"The date {text!r} has no year.", "Write it as 2021-05-17.")
    try:
        return typed_date(text, today, order=order, when="past"), None
    except Fault as fault:
        return "", Flaw(fault.what, "Write it as 2021, 2021-05 or 2021-05-17.")


def as_ploidy(text: str) -> str:
    """'4x', '2n=4x=48' and 'tetraploid' as the number of sets; anything else as it stands."""
    found = _SETS.match(text)
    if found:
        return found[1]
    return str(_PLOIDIES.get(text.casefold(), text))


def parent_of(plan: ImportPlan, cell: Cell) -> tuple[str, str]:
    """The code of a parent and how it is: 'code', 'unknown' or 'open'."""
    text = cell_text(cell).strip()
    mark = plan.marks.get(text, "code" if text else "unknown")
    if mark == "code" and text:
        return plan.same.get(text, text), "code"
    return "", "unknown" if mark == "code" else mark


def rows_of(table: Table, plan: ImportPlan) -> list[tuple[int, list[Cell]]]:
    """The rows below the heading that have something in them."""
    return table.below(plan.heading)
