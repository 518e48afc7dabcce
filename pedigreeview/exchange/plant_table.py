"""The plant table, read: one row a plant, as people keep it in a spreadsheet.

Columns, words and defaults are those of the file format; `table_writing` writes it.  Everything
that is wrong with a file is collected and raised together, with line, column, plant and the mend;
nothing is half-loaded.  A pedigree loop is not wrong here.  A large table without a flaw is read
column by column (`table_columns`), to the same book.
"""

from __future__ import annotations

from pathlib import Path

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, FileFaults, Place
from pedigreeview.book.memory import uncollected
from pedigreeview.book.records import Cross, Plant, PollenCandidate
from pedigreeview.exchange import rules
from pedigreeview.exchange.cells import Flaw, code_flaw
from pedigreeview.exchange.characters import heading_faults, unfit
from pedigreeview.exchange.harmless_cells import has_neutral, restored
from pedigreeview.exchange.table_columns import fill_from_columns
from pedigreeview.exchange.table_headings import KNOWN, NEEDED, founders_remark, read_headings
from pedigreeview.exchange.table_rows import Odds, Reading, Row, read_rows
from pedigreeview.exchange.table_writing import cross_name, lost, table_lines, write
from pedigreeview.exchange.text_files import Sheet, decode, read_bytes, refuse_nul, sheet
from pedigreeview.exchange.ticking import Tick, no_tick, ticked

__all__ = ["lost", "parse", "parse_sheet", "read", "table_lines", "write"]

COLUMNS_FROM = 200_000
"""Characters from which a table is first tried column by column."""


def read(
    path: str | Path,
    *,
    founders_as: str | None = None,
    fixation: float | None = None,
    tick: Tick = no_tick,
) -> Book:
    """Read a plant table.

    Parameters
    ----------
    path : a CSV or TSV file
    founders_as, fixation : settings in force for this reading, over the defaults
    tick : called now and then; may raise `Cancelled`

    Raises
    ------
    FileFaults : with everything that is wrong with the file
    Fault : the file cannot be read at all
    """
    path = Path(path)
    text, remarks = decode(read_bytes(path), str(path))
    book = parse(text, str(path), founders_as=founders_as, fixation=fixation, tick=tick)
    book.remarks[:0] = remarks
    book.path = path
    return book


def parse(
    text: str,
    name: str,
    *,
    founders_as: str | None = None,
    fixation: float | None = None,
    tick: Tick = no_tick,
) -> Book:
    """Read a plant table from text; `name` stands for the file in faults (see `read`)."""
    reading = Reading(name, Book())
    if founders_as:
        reading.book.settings.founders_as = founders_as
    if fixation is not None:
        reading.book.settings.variety_fixation = fixation
    text = text.removeprefix("\ufeff")
    refuse_nul(text, name)
    reading.suspect = bool(unfit(text))
    treated = has_neutral(text)
    large = len(text) >= COLUMNS_FROM and not reading.suspect and not treated
    if large and fill_from_columns(reading.book, text, name, tick):
        return reading.book
    found = sheet(text, name, KNOWN, tick)
    if treated:
        found.headings = [restored(heading) for heading in found.headings]
        found.rows = [(line, [restored(cell) for cell in cells]) for line, cells in found.rows]
    return _from_sheet(reading, found, tick)


def parse_sheet(
    found: Sheet,
    name: str,
    *,
    founders_as: str | None = None,
    fixation: float | None = None,
    tick: Tick = no_tick,
) -> Book:
    """Read a plant table from rows that were cut already, such as those of a spreadsheet.

    Parameters
    ----------
    found : headings and rows
    name : stands for the file in faults
    founders_as, fixation, tick : as for `read`
    """
    reading = Reading(name, Book())
    if founders_as:
        reading.book.settings.founders_as = founders_as
    if fixation is not None:
        reading.book.settings.variety_fixation = fixation
    rows = ticked([(0, found.headings), *found.rows], tick)
    reading.suspect = any(unfit(text) for _, cells in rows for text in cells)
    return _from_sheet(reading, found, tick)


def _from_sheet(reading: Reading, found: Sheet, tick: Tick) -> Book:
    name = reading.name
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
    if reading.suspect:
        reading.faults += heading_faults(found, name)
    with uncollected():
        read_rows(reading, found, headings, tick)
        if headings.complete:
            _share_crosses(reading, tick)
            _add_founders(reading, tick)
    if headings.complete:
        reading.faults += rules.faults(
            reading.book, reading.where, reading.doubt, names=False, tick=tick
        )
    if reading.faults:
        reading.faults.sort(key=lambda fault: fault.where.row or 0)
        raise FileFaults(name, reading.faults)
    if not reading.rows:
        reading.book.remarks.append("The table has a heading row and no plants.")
    return reading.book


def _share_crosses(reading: Reading, tick: Tick) -> None:
    """One cross for the rows with a code, and one for the rows with the same parents and none."""
    book = reading.book
    coded: dict[str, Row] = {}
    unnamed: dict[tuple[str, str, Odds], list[Row]] = {}
    order: dict[str, Row] = {}
    for row in ticked(reading.rows, tick):
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
        if first.mating != row.mating:
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
    numbers: dict[str, int] = {}
    for mating in ticked(sorted(unnamed), tick):
        name = cross_name(*mating, taken=order, numbers=numbers)
        order[name] = unnamed[mating][0]
        _agree_how_drawn(reading, unnamed[mating])
        for row in unnamed[mating]:
            row.plant.cross = name
    for name, row in ticked(sorted(order.items(), key=lambda item: item[1].line), tick):
        intended = "cross"
        if row.seed and row.seed == row.pollen:
            intended = "selfing"
        elif row.seed and not row.pollen and not row.odds:
            intended = "open"
        cross = Cross(name, row.seed, row.pollen, row.drawn, intended)
        book.crosses[name] = cross
        reading.lines[id(cross)] = row.line
        if reading.doubt.of(row.plant, "pollen_odds"):
            reading.doubt.add(cross, "pollen_parent")
        for code, odds in row.odds:
            candidate = PollenCandidate(name, code, odds)
            book.pollen_candidates.append(candidate)
            reading.lines[id(candidate)] = row.line


def _agree_how_drawn(reading: Reading, rows: list[Row]) -> None:
    """Rows of one cross without a code: a blank takes the word that another row states."""
    stated = [row for row in rows if row.drawn]
    for row in stated:
        if row.drawn != stated[0].drawn:
            reading.fault(
                Flaw(
                    f"The row is drawn {row.drawn!r}, but row {stated[0].line} with the same "
                    f"parents {stated[0].drawn!r}.",
                    "Write the same word in both, or give each its own code in a column 'cross'.",
                ),
                row.line,
                "drawn",
                row.plant.plant,
            )
    rows[0].drawn = stated[0].drawn if stated else ""


def _add_founders(reading: Reading, tick: Tick) -> None:
    """A parent without a row becomes a founder that says nothing of itself."""
    book = reading.book
    added: list[str] = []
    for row in ticked(reading.rows, tick):
        for code in (row.seed, row.pollen, row.plant.source, *(code for code, _ in row.odds)):
            # A code that cannot be one is named already, where it stands as a parent.
            if code and code not in book.plants and not code_flaw(code):
                founder = Plant(plant=code)
                book.plants[code] = founder
                reading.lines[id(founder)] = row.line
                added.append(code)
    if added:
        book.remarks.append(founders_remark(added))
