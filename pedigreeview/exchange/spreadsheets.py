"""Any table: CSV, TSV and semicolon text, XLSX and ODS, as sheets of rows.

Numbers and dates of a spreadsheet keep their types; of text files every cell is text.  A formula
gives the value that was saved with it.  What could fill the memory is refused before it is unpacked
(`archive_guard`).
"""

from __future__ import annotations

import csv
import datetime
import io
import zipfile
from collections.abc import Sequence
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from pedigreeview.book.faults import Cancelled, Fault, FileFaults, Place
from pedigreeview.exchange.archive_guard import (
    MOST_CELLS,
    MOST_COLUMNS,
    MOST_ROWS,
    check_archive,
)
from pedigreeview.exchange.cells import to_cell
from pedigreeview.exchange.opendocument import Value, read_content
from pedigreeview.exchange.text_files import (
    SEPARATORS,
    Sheet,
    decode,
    plain,
    read_bytes,
    refuse_large,
    said_separator,
)
from pedigreeview.exchange.ticking import Tick, no_tick, ticked

__all__ = [
    "SPREADSHEETS",
    "Cell",
    "Sheets",
    "Table",
    "cell_text",
    "open_table",
    "read_table",
    "to_sheet",
]

SPREADSHEETS = (".xlsx", ".ods")
"""Endings of spreadsheet files that are read."""

Cell = Value
"""What a cell holds; '' where it is empty."""

_SIGNATURE = b"PK\x03\x04"
_LOOKED_AT = 30
_PART = 200_000
"""Bytes of an OpenDocument file that are read between two ticks."""
_SAVE_AS = "Save it as 'CSV UTF-8' in the spreadsheet program and open that file."


@dataclass(slots=True)
class Table:
    """One sheet.

    Attributes
    ----------
    name : of the sheet; that of the file for a text file
    rows : each with its number in the file, counted from 1; blank rows are left out
    width : cells of the widest row
    heading : index in `rows` of the row that looks most like the headings; None without rows
    decimal_comma : whether a number may have a decimal comma
    """

    name: str
    rows: list[tuple[int, list[Cell]]]
    width: int = 0
    heading: int | None = None
    decimal_comma: bool = False

    def headings(self, heading: int | None) -> list[str]:
        """The texts of the heading row, or 'Column 1' and so on without one."""
        if heading is None:
            return [f"Column {at + 1}" for at in range(self.width)]
        cells = [cell_text(cell).strip() for cell in self.rows[heading][1]]
        return cells + [""] * (self.width - len(cells))

    def below(self, heading: int | None) -> list[tuple[int, list[Cell]]]:
        """The rows below the heading row."""
        return self.rows if heading is None else self.rows[heading + 1 :]


@dataclass(slots=True)
class Sheets:
    """A file of one or several tables, with what the person should know of its reading."""

    name: str
    tables: list[Table]
    remarks: list[str] = field(default_factory=list)

    def named(self, name: str) -> Table:
        """The table of a name; the first with rows for ''.

        Raises
        ------
        Fault : there is none of that name
        """
        if not name:
            return next((table for table in self.tables if table.rows), self.tables[0])
        for table in self.tables:
            if table.name == name:
                return table
        names = ", ".join(repr(table.name) for table in self.tables)
        raise Fault(f"The file has no sheet {name!r}.", Place(file=self.name), f"It has: {names}.")


def cell_text(cell: Cell) -> str:
    """A cell as text: numbers as short as they are exact, dates as 2021-05-17."""
    if isinstance(cell, str):
        return cell
    if isinstance(cell, datetime.datetime):
        if cell.time() == datetime.time():
            return cell.date().isoformat()
        return cell.isoformat(" ", "minutes" if not cell.second else "seconds")
    if isinstance(cell, datetime.date | datetime.time):
        return cell.isoformat()
    if isinstance(cell, datetime.timedelta):
        return str(cell)
    return to_cell(cell)


def open_table(path: str | Path, tick: Tick = no_tick) -> Sheets:
    """Read a table from a file.

    tick : called now and then; may raise `Cancelled`

    Raises
    ------
    Fault : it cannot be read, or is larger than the caps
    FileFaults : its text has quotes that are not closed and the like
    """
    path = Path(path)
    return read_table(read_bytes(path), str(path), tick)


def read_table(data: bytes, name: str, tick: Tick = no_tick) -> Sheets:
    """Read a table from bytes; `name` stands for the file in faults (see `open_table`)."""
    refuse_large(data, name)
    if data.startswith(_SIGNATURE):
        return _spreadsheet(data, name, tick)
    if name.lower().endswith(SPREADSHEETS):
        raise Fault("This is no spreadsheet file, or it is damaged.", Place(file=name), _SAVE_AS)
    text, remarks = decode(data, name)
    return Sheets(name, [_text_table(text, name, tick)], remarks)


# Text files --------------------------------------------------------------------------------------


def _separator(text: str, name: str) -> str:
    preferred = "\t" if name.lower().endswith((".tsv", ".tab")) else ","
    head = "\n".join(text.splitlines()[:_LOOKED_AT])

    def worth(separator: str) -> tuple[int, int, bool]:
        try:
            rows = list(csv.reader(io.StringIO(head, newline=""), delimiter=separator))
        except csv.Error:
            return 0, 0, False
        widths = [len(row) for row in rows if any(cell.strip() for cell in row)]
        if not widths:
            return 0, 0, False
        usual = max(set(widths), key=lambda width: (widths.count(width), width))
        # A separator that parts nothing is none, however alike the rows are.
        return (widths.count(usual) if usual > 1 else 0), usual, separator == preferred

    return max(SEPARATORS, key=worth)


def _text_table(text: str, name: str, tick: Tick) -> Table:
    text, separator, lines = said_separator(text)
    separator = separator or _separator(text, name)
    rows: list[tuple[int, list[Cell]]] = []
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=separator, strict=True)
    begins, cells_held = 1 + lines, 0
    try:
        for cells in ticked(reader, tick):
            if len(cells) > MOST_COLUMNS:
                raise Fault(
                    f"The row has {len(cells)} cells; no more than {MOST_COLUMNS} are read.",
                    Place(name, begins),
                    "Check the separator of the file.",
                )
            cells_held += len(cells)
            if cells_held > 4 * MOST_CELLS:
                raise Fault(
                    f"The file has more than {4 * MOST_CELLS} cells.",
                    Place(file=name),
                    "Split it into smaller files.",
                )
            if any(cell.strip() for cell in cells):
                rows.append((begins, list(cells)))
            begins = reader.line_num + 1 + lines
    except csv.Error as error:
        closed = "unexpected end" in str(error)
        what = "A quote opened in this row is never closed." if closed else (
            "A quoted cell of this row goes on after its closing quote."
        )  # fmt: skip
        raise FileFaults(
            name, [Fault(what, Place(name, begins), "Write a quote inside a cell twice.")]
        ) from None
    return _table(Path(name).stem or "table", rows, decimal_comma=separator == ";")


# Spreadsheets ------------------------------------------------------------------------------------


def _spreadsheet(data: bytes, name: str, tick: Tick) -> Sheets:
    if check_archive(data, name, tick) == "ods":
        return _opendocument(data, name, tick)
    import python_calamine

    tables: list[Table] = []
    remarks: list[str] = []
    try:
        book = python_calamine.CalamineWorkbook.from_filelike(io.BytesIO(data))
        hidden = 0
        for described in ticked(book.sheets_metadata, tick, 1):
            if described.typ != python_calamine.SheetTypeEnum.WorkSheet:
                continue
            sheet = book.get_sheet_by_name(described.name)
            if sheet.height * sheet.width > MOST_CELLS:
                raise Fault(
                    f"The sheet {described.name!r} has more than {MOST_CELLS} cells.",
                    Place(file=name),
                    _SAVE_AS,
                )
            hidden += described.visible != python_calamine.SheetVisibleEnum.Visible
            start = sheet.start or (0, 0)
            rows = [
                (start[0] + at + 1, [""] * start[1] + [_value(cell) for cell in cells])
                for at, cells in enumerate(ticked(sheet.to_python(skip_empty_area=True), tick))
            ]
            tables.append(_table(described.name, [row for row in rows if _filled(row[1])]))
    except (Fault, Cancelled):
        raise
    except (python_calamine.CalamineError, zipfile.BadZipFile, OSError, ValueError) as error:
        raise Fault(
            f"The spreadsheet cannot be read: {error}.", Place(file=name), _SAVE_AS
        ) from None
    except BaseException as error:
        # A panic of the reader's own language is no Exception; it is a damaged file all the same.
        if type(error).__name__ != "PanicException":
            raise
        raise Fault(
            "The spreadsheet is damaged and cannot be read.", Place(file=name), _SAVE_AS
        ) from None
    if not tables:
        raise Fault("The file has no sheet with cells.", Place(file=name), "Choose another file.")
    if hidden:
        remarks.append(f"The file has {hidden} hidden {'sheet' if hidden == 1 else 'sheets'}.")
    if _from_1904(data):
        remarks.append("The file counts days from 1904; check the dates.")
    return Sheets(name, tables, remarks)


def _opendocument(data: bytes, name: str, tick: Tick) -> Sheets:
    with zipfile.ZipFile(io.BytesIO(data)) as archive:
        content = archive.read("content.xml")
    parts = (content[at : at + _PART] for at in range(0, len(content), _PART))
    grids = read_content(
        ticked(parts, tick, 1), name, rows=MOST_ROWS, columns=MOST_COLUMNS, cells=MOST_CELLS
    )
    if not grids:
        raise Fault("The file has no sheet with cells.", Place(file=name), "Choose another file.")
    tables = [_table(grid.name, [row for row in grid.rows if _filled(row[1])]) for grid in grids]
    return Sheets(name, tables)


def _from_1904(data: bytes) -> bool:
    with zipfile.ZipFile(io.BytesIO(data)) as archive:
        head = archive.read("xl/workbook.xml")
    return b'date1904="1"' in head or b'date1904="true"' in head


def _value(cell: Any) -> Cell:
    if isinstance(cell, float) and cell.is_integer() and abs(cell) < 1e15:
        return int(cell)
    if isinstance(cell, str):
        # Line ends as text files have them; a blank that is none is a slip of the typist.
        return cell.replace("\r\n", "\n").replace("\r", "\n")
    if isinstance(cell, bool | int | float | datetime.date | datetime.time):
        return cell
    return "" if cell is None else str(cell)


def _filled(cells: Sequence[Cell]) -> bool:
    return any(not isinstance(cell, str) or cell.strip() for cell in cells)


# The heading row ---------------------------------------------------------------------------------


def _table(name: str, rows: list[tuple[int, list[Cell]]], *, decimal_comma: bool = False) -> Table:
    width = max((len(cells) for _, cells in rows), default=0)
    return Table(name, rows, width, _heading(rows, width), decimal_comma)


def _heading(rows: list[tuple[int, list[Cell]]], width: int) -> int | None:
    """The row that looks most like headings: filled with different words, and near the top."""
    from pedigreeview.exchange.import_headings import known_meaning

    best: tuple[float, int] | None = None
    for index, (_, cells) in enumerate(rows[:_LOOKED_AT]):
        texts = [cell.strip() for cell in cells if isinstance(cell, str) and cell.strip()]
        if not texts:
            continue
        different = len({plain(text) for text in texts}) / len(texts)
        numbers = sum(not isinstance(cell, str) for cell in cells)
        known = sum(known_meaning(text) is not None for text in texts)
        worth = known * 2 + different * len(texts) / max(width, 1) - numbers - index * 0.1
        if best is None or worth > best[0]:
            best = worth, index
    return best[1] if best else (0 if rows else None)


def to_sheet(table: Table) -> Sheet:
    """A table as the reader of plant tables takes it: the first row its headings, all text."""
    if not table.rows:
        return Sheet([], 1, [], ",")
    line, first = table.rows[0]
    headings = [cell_text(cell).strip() for cell in first]
    while headings and not headings[-1]:
        headings.pop()
    width = max(len(headings), 1)
    found = Sheet(headings, line, [], ";" if table.decimal_comma else ",")
    for at, cells in table.rows[1:]:
        texts = [cell_text(cell) for cell in cells]
        if any(text.strip() for text in texts[width:]):
            found.faults.append(
                Fault(
                    f"The row has {len(texts)} cells, the heading row only {width}.",
                    Place(row=at),
                    "Give the column a heading or clear its cells.",
                )
            )
        found.rows.append((at, (texts + [""] * width)[:width]))
    return found
