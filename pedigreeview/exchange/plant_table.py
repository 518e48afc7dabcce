"""The plant table, read: one row a plant, as people keep it in a spreadsheet.

Columns, words and defaults are those of the file format; `table_writing` writes it.  Everything
that is wrong with a file is collected and raised together, with line, column, plant and the mend;
nothing is half-loaded.  A pedigree loop is not wrong here.  A large table without a flaw is read
column by column (`table_columns`), to the same book.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from pathlib import Path

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, FileFaults, Place
from pedigreeview.book.memory import uncollected
from pedigreeview.book.records import SELF, Cross, Plant, PollenCandidate, Record, columns
from pedigreeview.exchange import rules
from pedigreeview.exchange.cells import (
    Flaw,
    code_flaw,
    number,
    value,
    word,
)
from pedigreeview.exchange.table_columns import fill_from_columns
from pedigreeview.exchange.table_headings import KNOWN, NEEDED, founders_remark, read_headings
from pedigreeview.exchange.table_writing import DRAWN, cross_name, lost, write
from pedigreeview.exchange.text_files import Sheet, decode, read_bytes, sheet

__all__ = ["lost", "parse", "read", "write"]

COLUMNS_FROM = 200_000
"""Characters from which a table is first tried column by column."""

_BY_NAME = {column.name: column for column in columns(Plant)}

_Odds = tuple[tuple[str, float], ...]
_Wrong = Callable[[Flaw, str], None]


@dataclass(slots=True)
class _Row:
    """A row that has been read, before crosses are shared out."""

    line: int
    plant: Plant
    seed: str = ""
    pollen: str = ""
    odds: _Odds = ()
    drawn: str = ""
    cross: str = ""

    @property
    def mating(self) -> tuple[str, str, _Odds, str]:
        return self.seed, self.pollen, tuple(sorted(self.odds)), self.drawn


@dataclass(slots=True)
class _Reading:
    name: str
    book: Book
    faults: list[Fault] = field(default_factory=list)
    lines: dict[int, int] = field(default_factory=dict)
    """Line of a record, by its `id`."""
    doubtful: set[int] = field(default_factory=set)
    rows: list[_Row] = field(default_factory=list)

    def fault(self, flaw: Flaw, line: int, column: str = "", plant: str = "") -> None:
        self.faults.append(Fault(flaw.what, Place(self.name, line, column, plant), flaw.todo))

    def where(self, record: Record, column: str) -> Place:
        shown = {
            "source": "seed_parent",
            "candidate": "pollen_odds",
            "odds": "pollen_odds",
            "intended": "pollen_parent",
        }.get(column, column)
        plant = record.plant if isinstance(record, Plant) else ""
        return Place(self.name, self.lines.get(id(record)), shown, plant)


def read(
    path: str | Path, *, founders_as: str | None = None, fixation: float | None = None
) -> Book:
    """Read a plant table.

    Parameters
    ----------
    path : a CSV or TSV file
    founders_as, fixation : settings in force for this reading, over the defaults

    Raises
    ------
    FileFaults : with everything that is wrong with the file
    Fault : the file cannot be read at all
    """
    path = Path(path)
    text, remarks = decode(read_bytes(path), str(path))
    book = parse(text, str(path), founders_as=founders_as, fixation=fixation)
    book.remarks[:0] = remarks
    book.path = path
    return book


def parse(
    text: str, name: str, *, founders_as: str | None = None, fixation: float | None = None
) -> Book:
    """Read a plant table from text; `name` stands for the file in faults (see `read`)."""
    reading = _Reading(name, Book())
    if founders_as:
        reading.book.settings.founders_as = founders_as
    if fixation is not None:
        reading.book.settings.variety_fixation = fixation
    text = text.removeprefix("\ufeff")
    if "\0" in text:
        row = text.count("\n", 0, text.index("\0")) + 1
        raise Fault(
            "The file has a NUL byte in it, so it is no text file or it is damaged.",
            Place(file=name, row=row),
            "Save it as 'CSV UTF-8' in the spreadsheet program and open that file.",
        )
    if len(text) >= COLUMNS_FROM and fill_from_columns(reading.book, text, name):
        return reading.book
    found = sheet(text, name, KNOWN)
    if not found.headings:
        if found.faults:
            raise FileFaults(name, found.faults)
        raise Fault(
            "The file is empty.",
            Place(file=name),
            f"A plant table begins with a heading row: {','.join(NEEDED)}.",
        )
    reading.faults += found.faults
    headings = read_headings(found, name)
    reading.faults += headings.faults
    reading.book.remarks += headings.remarks
    if not headings.complete:
        raise FileFaults(name, reading.faults)
    with uncollected():
        _read_rows(reading, found, headings.official, headings.extra)
        _share_crosses(reading)
        _add_founders(reading)
    reading.faults += rules.faults(reading.book, reading.where, reading.doubtful, names=False)
    if reading.faults:
        reading.faults.sort(key=lambda fault: fault.where.row or 0)
        raise FileFaults(name, reading.faults)
    if not reading.rows:
        reading.book.remarks.append("The table has a heading row and no plants.")
    return reading.book


def _read_rows(
    reading: _Reading, found: Sheet, official: dict[str, int], extra: dict[str, int]
) -> None:
    first: dict[str, tuple[int, list[str]]] = {}
    plain_columns = [
        (column, official[name])
        for name, column in _BY_NAME.items()
        if name in official and name not in ("plant", "cross", "source")
    ]
    for line, raw in found.rows:
        cells = [cell.strip() for cell in raw]
        code = cells[official["plant"]]
        if not code:
            reading.fault(
                Flaw("The row has no plant code.", "Give the plant a code."), line, "plant"
            )
            continue
        if code in first:
            before, same = first[code]
            reading.fault(
                Flaw(f"The row is the same as row {before}.", "Delete one of them.")
                if cells == same
                else Flaw(
                    f"The code {code!r} stands in row {before} already.",
                    "Give one of the two plants another code.",
                ),
                line,
                "plant",
                code,
            )
            continue
        first[code] = (line, cells)
        plant = Plant(plant=code)
        reading.lines[id(plant)] = line
        if wrong_code := code_flaw(code):
            reading.fault(wrong_code, line, "plant", code)
        for column, index in plain_columns:
            text = cells[index]
            if text:
                got, flaw = value("plants", column, text, comma=found.decimal_comma, lenient=True)
                setattr(plant, column.name, got)
                if flaw:
                    reading.fault(flaw, line, column.name, code)
                    reading.doubtful.add(id(plant))
        plant.extra = {name: cells[index] for name, index in extra.items() if cells[index]}
        reading.book.plants[code] = plant
        reading.rows.append(_parents(reading, plant, line, cells, official, found.decimal_comma))


def _parents(
    reading: _Reading,
    plant: Plant,
    line: int,
    cells: list[str],
    official: dict[str, int],
    comma: bool,
) -> _Row:
    def cell(name: str) -> str:
        return cells[official[name]] if name in official else ""

    def wrong(flaw: Flaw, column: str) -> None:
        reading.fault(flaw, line, column, plant.plant)
        reading.doubtful.add(id(plant))

    row = _Row(line, plant, cell("seed_parent"), cell("pollen_parent"), cross=cell("cross"))
    for name in ("seed_parent", "pollen_parent"):
        parent = cell(name)
        if parent and (flaw := code_flaw(parent, name)):
            wrong(flaw, name)
    if row.cross and (flaw := code_flaw(row.cross, "cross code")):
        wrong(flaw, "cross")
    if text := cell("pollen_odds"):
        row.odds, flaws = _odds(text, comma)
        for flaw in flaws:
            wrong(flaw, "pollen_odds")
        if row.pollen:
            wrong(
                Flaw(
                    "The row has a pollen parent and odds of pollen parents as well.",
                    "Clear the one or the other; with odds the pollen parent stands among them.",
                ),
                "pollen_odds",
            )
    if text := cell("drawn"):
        row.drawn, flaw_or_none = word(text, "drawn", DRAWN, lenient=True)
        if flaw_or_none:
            wrong(flaw_or_none, "drawn")
    _arose(row, wrong)
    return row


def _arose(row: _Row, wrong: _Wrong) -> None:
    """Faults of how the plant arose that show in its own row; sets the source."""
    plant = row.plant
    parents = bool(row.seed or row.pollen or row.odds)
    if plant.raised in rules.FROM_SOURCE:
        if row.pollen or row.odds:
            wrong(
                Flaw(
                    f"A plant raised {plant.raised!r} has no pollen parent.",
                    "Clear the pollen parent and its odds, or the cell 'raised'.",
                ),
                "pollen_parent" if row.pollen else "pollen_odds",
            )
        if row.cross or row.drawn:
            wrong(
                Flaw(
                    f"A plant raised {plant.raised!r} comes from no cross.",
                    "Clear the cell.",
                ),
                "cross" if row.cross else "drawn",
            )
        plant.source = row.seed
        row.seed = row.pollen = row.cross = row.drawn = ""
        row.odds = ()
    elif plant.raised == "founder" and parents:
        wrong(
            Flaw("A founder has no parents.", "Clear the parents, or the cell 'raised'."), "raised"
        )
    elif not parents and plant.raised != "cross" and (row.cross or row.drawn):
        column = "cross" if row.cross else "drawn"
        wrong(
            Flaw(
                f"The row has a {column} but no parents.",
                "Name the parents, or clear the cell.",
            ),
            column,
        )


def _odds(text: str, comma: bool) -> tuple[_Odds, list[Flaw]]:
    """Candidates with odds from 'TP:0.8; self:0.2'."""
    found: dict[str, float] = {}
    flaws: list[Flaw] = []
    for part in text.split(";"):
        if not part.strip():
            continue
        code, colon, odds = (piece.strip() for piece in part.partition(":"))
        if not colon or not code or not odds:
            flaws.append(
                Flaw(
                    f"The odds {part.strip()!r} are not a code, ':' and a number.",
                    "Write them as TP:0.8; self:0.2.",
                )
            )
            continue
        if code != SELF and (flaw := code_flaw(code, "candidate")):
            flaws.append(
                Flaw(flaw.what, "Did you mean 'self'?") if code.casefold() == SELF else flaw
            )
            continue
        got, flaw_or_none = number(odds, f"odds of {code!r}", 0, 1, comma=comma)
        if flaw_or_none or got is None:
            flaws.append(flaw_or_none or Flaw("The odds are no number."))
        elif code in found:
            flaws.append(Flaw(f"The candidate {code!r} stands twice.", "Add its odds up."))
        else:
            found[code] = got
    return tuple(found.items()), flaws


def _share_crosses(reading: _Reading) -> None:
    """One cross for the rows with a code, and one for the rows with the same parents and none."""
    book = reading.book
    coded: dict[str, _Row] = {}
    unnamed: dict[tuple[str, str, _Odds, str], list[_Row]] = {}
    order: dict[str, _Row] = {}
    for row in reading.rows:
        if not (row.seed or row.pollen or row.odds):
            continue
        if not row.cross:
            unnamed.setdefault(row.mating, []).append(row)
            continue
        first = coded.setdefault(row.cross, row)
        row.plant.cross = row.cross
        if first is row:
            order[row.cross] = row
            continue
        if first.mating[:3] != row.mating[:3]:
            reading.fault(
                Flaw(
                    f"The cross {row.cross!r} has other parents in row {first.line}.",
                    "Correct the parents, or give one of the two crosses another code.",
                ),
                row.line,
                "cross",
                row.plant.plant,
            )
        elif row.drawn and first.drawn and row.drawn != first.drawn:
            reading.fault(
                Flaw(
                    f"The cross {row.cross!r} is drawn {first.drawn!r} in row {first.line}.",
                    "Write the same word in all rows of a cross.",
                ),
                row.line,
                "drawn",
                row.plant.plant,
            )
        first.drawn = first.drawn or row.drawn
    # Sorted, so that the order of the rows does not decide which cross gets which name.
    for mating in sorted(unnamed):
        name = cross_name(*mating[:3], taken=order)
        order[name] = unnamed[mating][0]
        for row in unnamed[mating]:
            row.plant.cross = name
    for name, row in sorted(order.items(), key=lambda item: item[1].line):
        intended = "cross"
        if row.seed and row.seed == row.pollen:
            intended = "selfing"
        elif row.seed and not row.pollen and not row.odds:
            intended = "open"
        cross = Cross(name, row.seed, row.pollen, row.drawn, intended)
        book.crosses[name] = cross
        reading.lines[id(cross)] = row.line
        if id(row.plant) in reading.doubtful:
            reading.doubtful.add(id(cross))
        for code, odds in row.odds:
            candidate = PollenCandidate(name, code, odds)
            book.pollen_candidates.append(candidate)
            reading.lines[id(candidate)] = row.line


def _add_founders(reading: _Reading) -> None:
    """A parent without a row becomes a founder that says nothing of itself."""
    book = reading.book
    added: list[str] = []
    for row in reading.rows:
        for code in (row.seed, row.pollen, row.plant.source, *(code for code, _ in row.odds)):
            # A code that cannot be one is named already, where it stands as a parent.
            if code and code not in book.plants and not code_flaw(code):
                founder = Plant(plant=code)
                book.plants[code] = founder
                reading.lines[id(founder)] = row.line
                added.append(code)
    if added:
        book.remarks.append(founders_remark(added))
