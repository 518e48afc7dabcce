"""Tables out, as CSV and as XLSX, safe to open in a spreadsheet program.

In CSV a text that would be taken for a formula gets an apostrophe before it (`harmless_cells`); in
XLSX every text is stored as text, so nothing need be put before it.
"""

from __future__ import annotations

import datetime
import io
import math
import re
from collections.abc import Iterable, Sequence
from pathlib import Path
from typing import Any

from pedigreeview.book.faults import Fault, Place
from pedigreeview.exchange.harmless_cells import neutral
from pedigreeview.exchange.spreadsheets import cell_text
from pedigreeview.exchange.text_files import to_text
from pedigreeview.exchange.writing import replace_file

__all__ = ["table_text", "workbook_bytes", "write_table"]

_NOT_XML = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\ud800-\udfff\ufffe\uffff]")
_SHEET_NAME = re.compile(r"[\[\]:*?/\\']")
_LONGEST_CELL = 32_767
_MOST_ROWS = 1_048_576
_MOST_COLUMNS = 16_384


def _shown(held: Any) -> str:
    if held is None or (isinstance(held, float) and math.isnan(held)):
        return ""
    if isinstance(held, str):
        return neutral(held)
    return cell_text(held)


def table_text(headings: Sequence[str], rows: Iterable[Sequence[Any]], separator: str = ",") -> str:
    """A table as CSV text; numbers and dates as files of the book have them, None blank."""
    return to_text(
        [neutral(heading) for heading in headings],
        ([_shown(held) for held in row] for row in rows),
        separator,
    )


def workbook_bytes(
    sheets: Iterable[tuple[str, Sequence[str], Iterable[Sequence[Any]]]], name: str = ""
) -> bytes:
    """An XLSX file of one sheet for each (name, headings, rows).

    Raises
    ------
    Fault : a sheet is larger than the format allows
    """
    import xlsxwriter

    buffer = io.BytesIO()
    book = xlsxwriter.Workbook(
        buffer,
        {
            "in_memory": True,
            "strings_to_formulas": False,
            "strings_to_urls": False,
            "strings_to_numbers": False,
            "default_date_format": "yyyy-mm-dd",
        },
    )
    # The same table gives the same bytes.
    book.set_properties({"created": datetime.datetime(2000, 1, 1)})
    bold = book.add_format({"bold": True})
    taken: set[str] = set()
    for title, headings, rows in sheets:
        sheet = book.add_worksheet(_sheet_name(title, taken))
        for column, heading in enumerate(headings):
            sheet.write_string(0, column, _fit(heading, name, 1), bold)
        for at, row in enumerate(rows, start=1):
            if at >= _MOST_ROWS or len(row) > _MOST_COLUMNS:
                raise Fault(
                    f"The table is larger than an XLSX sheet can be ({_MOST_ROWS} rows, "
                    f"{_MOST_COLUMNS} columns).",
                    Place(file=name),
                    "Write it as CSV.",
                )
            for column, held in enumerate(row):
                _write_cell(sheet, at, column, held, name)
        sheet.freeze_panes(1, 0)
    book.close()
    return buffer.getvalue()


def _write_cell(sheet: Any, row: int, column: int, held: Any, name: str) -> None:
    if held is None or held == "":
        return
    if isinstance(held, bool):
        sheet.write_boolean(row, column, held)
    elif isinstance(held, int | float):
        if math.isfinite(held):
            sheet.write_number(row, column, held)
    elif isinstance(held, datetime.date):
        sheet.write_datetime(row, column, held)
    else:
        sheet.write_string(row, column, _fit(str(held), name, row + 1))


def _fit(text: str, name: str, row: int) -> str:
    text = _NOT_XML.sub("\ufffd", text)
    if len(text) > _LONGEST_CELL:
        raise Fault(
            f"A text of {len(text)} characters is longer than an XLSX cell can hold.",
            Place(name, row),
            "Shorten it, or write the table as CSV.",
        )
    return text


def _sheet_name(title: str, taken: set[str]) -> str:
    base = _NOT_XML.sub("", _SHEET_NAME.sub(" ", title)).strip()[:28] or "Table"
    found, count = base, 1
    while found.casefold() in taken:
        count += 1
        found = f"{base} {count}"[:31]
    taken.add(found.casefold())
    return found


def write_table(
    path: str | Path, headings: Sequence[str], rows: Iterable[Sequence[Any]], *, title: str = ""
) -> None:
    """Write a table of any kind; the ending says how: .csv, .tsv or .xlsx.

    Parameters
    ----------
    path : the file; what stood there is replaced only when all is written
    headings : names of the columns
    rows : texts, numbers, dates, True and False, None for blank; NaN is blank
    title : name of the sheet in an XLSX file

    Raises
    ------
    Fault : the ending is none of these, or the system does not let us write
    """
    path = Path(path)
    suffix = path.suffix.lower()
    if suffix == ".xlsx":
        data = workbook_bytes([(title or path.stem, headings, rows)], str(path))
    elif suffix in (".csv", ".tsv", ".txt"):
        data = table_text(headings, rows, "\t" if suffix == ".tsv" else ",").encode(
            "utf-8", "replace"
        )
    else:
        raise Fault(
            f"A table cannot be written to a file that ends in {suffix or 'nothing'}.",
            Place(file=str(path)),
            "Use .csv, .tsv or .xlsx.",
        )
    with replace_file(path) as beside:
        beside.write_bytes(data)
