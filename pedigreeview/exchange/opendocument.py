"""The tables of an OpenDocument spreadsheet (.ods), read from its `content.xml`.

Rows and cells that are repeated are counted before they are made, so that a few bytes cannot fill
the memory.  A formula gives the value that was saved with it; notes on cells are left out.
"""

from __future__ import annotations

import datetime
from collections.abc import Iterable
from dataclasses import dataclass, field
from xml.parsers import expat

from pedigreeview.book.faults import Fault, Place

__all__ = ["Grid", "Value", "read_content"]

_URN = "urn:oasis:names:tc:opendocument:xmlns:"
_TABLE, _TEXT, _OFFICE = f"{_URN}table:1.0", f"{_URN}text:1.0", f"{_URN}office:1.0"
_MOST_DEPTH = 200
_MANY = 10**9

Value = str | float | int | bool | datetime.date | datetime.datetime | datetime.time
"""What a cell holds; '' where it is empty."""


@dataclass(slots=True)
class Grid:
    """One table: its name, and its rows with their numbers, blank rows left out."""

    name: str
    rows: list[tuple[int, list[Value]]] = field(default_factory=list)


@dataclass(slots=True)
class _Limits:
    rows: int
    columns: int
    cells: int


def read_content(
    chunks: Iterable[bytes], name: str, *, rows: int, columns: int, cells: int
) -> list[Grid]:
    """The tables of a `content.xml`.

    Parameters
    ----------
    chunks : its bytes
    name : stands for the file in faults
    rows, columns, cells : the most that one table may reach over

    Raises
    ------
    Fault : it is damaged, nested too deep, declares a document type, or is larger than that
    """
    reader = _Reader(name, _Limits(rows, columns, cells))
    try:
        for chunk in chunks:
            reader.parser.Parse(chunk, False)
        reader.parser.Parse(b"", True)
    except (expat.ExpatError, LookupError, ValueError, UnicodeError) as error:
        raise reader.fault(f"The file is damaged: {error}.") from None
    return reader.tables


class _Reader:
    def __init__(self, name: str, limits: _Limits) -> None:
        self.name, self.limits = name, limits
        self.tables: list[Grid] = []
        self.depth = 0
        self.outside = 0
        """Depth of a part that holds no cells, such as a note; 0 outside of any."""
        self.row: list[tuple[Value, int]] | None = None
        self.line = self.held = 0
        self.repeat_row = self.repeat_cell = 1
        self.kind: dict[str, str] | None = None
        self.paragraphs: list[list[str]] = []
        self.in_paragraph = 0
        self.parser = expat.ParserCreate(namespace_separator=" ")
        self.parser.buffer_text = True
        self.parser.StartElementHandler = self.start
        self.parser.EndElementHandler = self.end
        self.parser.CharacterDataHandler = self.text
        self.parser.StartDoctypeDeclHandler = self.refuse
        self.parser.EntityDeclHandler = self.refuse

    def fault(self, what: str) -> Fault:
        todo = "Save it anew in the spreadsheet program, or as 'CSV UTF-8'."
        return Fault(what, Place(file=self.name), todo)

    def refuse(self, *_: object) -> None:
        raise self.fault("The XML in the file declares a document type or entities.")

    def start(self, tag: str, held: dict[str, str]) -> None:
        self.depth += 1
        if self.depth > _MOST_DEPTH:
            raise self.fault("The XML in the file is nested too deep to be a spreadsheet.")
        if self.outside:
            return
        space, _, word = tag.partition(" ")
        if space == _OFFICE and word == "annotation":
            self.outside = self.depth
        elif space == _TABLE:
            self.table_part(word, held)
        elif space == _TEXT and self.kind is not None:
            self.text_part(word, held)

    def table_part(self, word: str, held: dict[str, str]) -> None:
        if word in ("shapes", "tracked-changes", "named-expressions"):
            self.outside = self.depth
        elif word == "table" and self.row is None:
            self.tables.append(Grid(held.get(f"{_TABLE} name", f"Sheet {len(self.tables) + 1}")))
            self.line = self.held = 0
        elif word == "table-row" and self.tables:
            self.row, self.repeat_row = [], _count(held, "number-rows-repeated")
        elif word in ("table-cell", "covered-table-cell") and self.row is not None:
            self.repeat_cell = _count(held, "number-columns-repeated")
            self.kind, self.paragraphs, self.in_paragraph = held, [], 0

    def text_part(self, word: str, held: dict[str, str]) -> None:
        if word in ("p", "h"):
            self.in_paragraph += 1
            self.paragraphs.append([])
        elif self.paragraphs:
            if word == "s":
                self.paragraphs[-1].append(" " * min(_number(held.get(f"{_TEXT} c", "1")), 1_000))
            elif word == "tab":
                self.paragraphs[-1].append("\t")
            elif word == "line-break":
                self.paragraphs[-1].append("\n")

    def text(self, data: str) -> None:
        if self.in_paragraph and not self.outside:
            self.paragraphs[-1].append(data)

    def end(self, tag: str) -> None:
        if self.outside:
            if self.outside == self.depth:
                self.outside = 0
            self.depth -= 1
            return
        self.depth -= 1
        space, _, word = tag.partition(" ")
        if space == _TEXT and word in ("p", "h") and self.in_paragraph:
            self.in_paragraph -= 1
        elif space != _TABLE or self.row is None:
            return
        elif word in ("table-cell", "covered-table-cell") and self.kind is not None:
            self.row.append((self.value(self.kind), self.repeat_cell))
            self.kind = None
        elif word == "table-row":
            self.take_row(self.row)
            self.row = None

    def take_row(self, row: list[tuple[Value, int]]) -> None:
        while row and row[-1][0] == "":
            row.pop()
        if not row:
            self.line += self.repeat_row
            return
        width = sum(count for _, count in row)
        reach = self.line + self.repeat_row
        self.held += width * self.repeat_row
        limits = self.limits
        if width > limits.columns or reach > limits.rows or self.held > limits.cells:
            raise Fault(
                f"A sheet of the file reaches over {reach} rows and {width} columns, which is "
                f"more than is read ({limits.cells} cells).",
                Place(file=self.name),
                "Delete the cells that stand far from the table, or save it as 'CSV UTF-8'.",
            )
        cells = [value for value, count in row for _ in range(count)]
        rows = self.tables[-1].rows
        for _ in range(self.repeat_row):
            self.line += 1
            rows.append((self.line, list(cells)))

    def value(self, held: dict[str, str]) -> Value:
        kind = held.get(f"{_OFFICE} value-type", "")
        text = "\n".join("".join(parts) for parts in self.paragraphs)
        try:
            if kind in ("float", "percentage", "currency"):
                number = float(held[f"{_OFFICE} value"])
                if number.is_integer() and abs(number) < 1e15:
                    return int(number)
                return number if abs(number) < float("inf") else text
            if kind == "date":
                said = held[f"{_OFFICE} date-value"]
                if len(said) <= 10:
                    return datetime.date.fromisoformat(said)
                return datetime.datetime.fromisoformat(said[:19])
            if kind == "boolean":
                return held[f"{_OFFICE} boolean-value"] == "true"
        except (KeyError, ValueError, OverflowError):
            return text
        return text or held.get(f"{_OFFICE} string-value", "")


def _number(text: str) -> int:
    return int(text) if text.isascii() and text.isdigit() and len(text) < 9 else _MANY


def _count(held: dict[str, str], word: str) -> int:
    return max(_number(held.get(f"{_TABLE} {word}", "1")), 1)
