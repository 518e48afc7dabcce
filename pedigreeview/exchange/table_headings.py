"""The heading row of a plant table: which column is which, and what a reader says of them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from pedigreeview.book.faults import Fault, Place
from pedigreeview.exchange.cells import did_you_mean
from pedigreeview.exchange.table_writing import OFFICIAL, PLANT_COLUMNS
from pedigreeview.exchange.text_files import Sheet, plain

__all__ = ["KNOWN", "NEEDED", "Headings", "founders_remark", "read_headings"]

NEEDED = ("plant", "seed_parent", "pollen_parent")
KNOWN = (*OFFICIAL, *PLANT_COLUMNS)
_SHOWN = 8


@dataclass(slots=True)
class Headings:
    """Index of each official column and of each that is kept as a note of the plant."""

    official: dict[str, int] = field(default_factory=dict)
    extra: dict[str, int] = field(default_factory=dict)
    remarks: list[str] = field(default_factory=list)
    faults: list[Fault] = field(default_factory=list)

    @property
    def complete(self) -> bool:
        """Whether every needed column is there."""
        return all(column in self.official for column in NEEDED)


def read_headings(found: Sheet, file: str) -> Headings:
    """Tell the columns of a sheet apart; `file` stands in the faults."""
    known = {plain(column): column for column in KNOWN}
    headings = Headings()

    def fault(what: str, todo: str, line: int, column: str = "") -> None:
        headings.faults.append(Fault(what, Place(file, line, column), todo))

    line = found.heading_line
    kept: list[str] = []
    for index, heading in enumerate(found.headings):
        if not heading:
            filled = next((at for at, cells in found.rows if cells[index].strip()), None)
            if filled is not None:
                what = f"Column {index + 1} has cells but no heading."
                fault(what, "Give it a heading or clear its cells.", filled)
            continue
        column = known.get(plain(heading))
        held = headings.extra if column is None else headings.official
        name = column or heading
        if name in held:
            what = f"The column {heading!r} stands twice."
            fault(what, "Delete or rename one of them.", line, heading)
            continue
        held[name] = index
        if column is not None and column != heading:
            headings.remarks.append(f"The column {heading!r} was read as {column!r}.")
        if column is None or column in PLANT_COLUMNS:
            kept.append(heading)
    for column in NEEDED:
        if column not in headings.official:
            guess = did_you_mean(column, headings.extra, often=1, cutoff=0.75)
            mend = f"Add a column with the heading {column!r}."
            if guess:
                mend = guess.replace("Did you mean", "Did you mean it by") + f" Name it {column!r}."
            fault(f"The needed column {column!r} is missing.", mend, line, column)
    if kept and headings.complete:
        headings.remarks.append(_kept_remark(kept, headings.official))
    return headings


def _kept_remark(kept: Sequence[str], official: dict[str, int]) -> str:
    known = {plain(column) for column in KNOWN}
    free = [column for column in OFFICIAL if column not in official]
    words = []
    for heading in kept:
        guess = "" if plain(heading) in known else did_you_mean(heading, free, often=1, cutoff=0.75)
        words.append(f"{heading!r} (d{guess[1:]})" if guess else repr(heading))
    one = len(kept) == 1
    return (
        f"{'The column' if one else 'The columns'} {', '.join(words)} "
        f"{'is' if one else 'are'} not of the plant table and {'was' if one else 'were'} kept "
        "as notes of the plants."
    )


def founders_remark(added: Sequence[str]) -> str:
    """What is said of parents that have no row."""
    shown = ", ".join(repr(code) for code in added[:_SHOWN])
    more = f" and {len(added) - _SHOWN} more" if len(added) > _SHOWN else ""
    words = "parent has no row and was taken as a founder"
    if len(added) > 1:
        words = "parents have no row and were taken as founders"
    return f"{len(added)} {words}: {shown}{more}."
