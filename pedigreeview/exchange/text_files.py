"""Text files with rows: decoding, the separator, rows with the line on which each begins.

UTF-8 with or without a byte order mark, and UTF-16 with one, as spreadsheet programs write 'Unicode
text'; a file that is neither is read as Windows-1252, and the caller is told.  The separator
(comma, semicolon or tab) is found from the heading row alone: cells below may hold any of them.
"""

from __future__ import annotations

import csv
import io
import os
import re
from collections.abc import Collection, Iterable
from dataclasses import dataclass, field
from itertools import islice
from pathlib import Path

from pedigreeview.book.faults import Fault, Place
from pedigreeview.exchange.archive_guard import MOST_COLUMNS, MOST_UNPACKED
from pedigreeview.exchange.ticking import Tick, no_tick, ticked

__all__ = [
    "Columns",
    "Sheet",
    "columns_below",
    "decode",
    "line_in",
    "line_of",
    "read_bytes",
    "refuse_large",
    "refuse_nul",
    "said_separator",
    "sheet",
    "to_text",
]

SEPARATORS = (",", ";", "\t")

# A line of a text with its end, whatever the ends are.
_LINE = re.compile(r"[^\r\n]*(?:\r\n|\r|\n)|[^\r\n]+")

Columns = list[list[str]]

_CHUNK = 1_024
"""Rows cut at a time where a text is read by columns."""

# A note may be long; without this the module stops at 131,072 characters.
csv.field_size_limit(2**31 - 1)

_SIGNATURES = (
    (b"PK\x03\x04", "a spreadsheet or zip file"),
    (b"\xd0\xcf\x11\xe0", "an old spreadsheet file"),
    (b"%PDF", "a PDF file"),
    (b"SQLite format 3\0", "a database file"),
    (b"\x89PNG", "a picture"),
    (b"\xff\xd8\xff", "a picture"),
    (b"\x1f\x8b", "a packed file"),
)
_UTF16 = {b"\xff\xfe": "utf-16-le", b"\xfe\xff": "utf-16-be"}
_UTF32 = (b"\xff\xfe\0\0", b"\0\0\xfe\xff")
_LOOKED_AT = 2_000
"""Bytes at the beginning of a file by which UTF-16 without its mark is told."""
_SAVE_AS = "Save it as 'CSV UTF-8' in the spreadsheet program and open that file."


@dataclass(slots=True)
class Sheet:
    """A heading row and the rows below, as text, each with the line of the file it begins on."""

    headings: list[str]
    heading_line: int
    rows: list[tuple[int, list[str]]]
    separator: str
    faults: list[Fault] = field(default_factory=list)
    """What could not be read as rows at all, such as a quote that is never closed."""

    @property
    def decimal_comma(self) -> bool:
        """Whether a number may have a decimal comma."""
        return self.separator == ";"


def read_bytes(path: Path) -> bytes:
    """The bytes of a file.

    Raises
    ------
    Fault : there is no such file, it is a folder or larger than the cap, or the system does not
        let us read it
    """
    try:
        with path.open("rb") as stream:
            size = min(os.fstat(stream.fileno()).st_size, MOST_UNPACKED)
            data = stream.read(size + 1)
            if size < len(data) <= MOST_UNPACKED:
                # A device has no size; one without an end must not fill the memory.
                data += stream.read(MOST_UNPACKED + 1 - len(data))
    except FileNotFoundError:
        raise Fault(
            "There is no such file.", Place(file=str(path)), "Check the name and the folder."
        ) from None
    except IsADirectoryError:
        raise Fault("This is a folder.", Place(file=str(path)), "Choose a file.") from None
    except OSError as error:
        raise Fault(
            f"The file cannot be read: {error.strerror or error}.",
            Place(file=str(path)),
            "Check that it is yours to read and that no other program holds it.",
        ) from None
    refuse_large(data, str(path))
    return data


def refuse_large(data: bytes | bytearray, name: str) -> None:
    """Refuse what is larger than the cap.

    Raises
    ------
    Fault : it is
    """
    if len(data) > MOST_UNPACKED:
        raise Fault(
            f"The file is larger than {MOST_UNPACKED // 1_000_000} MB.",
            Place(file=name),
            "Split it into smaller files.",
        )


def line_of(data: bytes, position: int) -> int:
    """The line, counted from 1, on which a byte of a file lies, whatever the ends of lines are."""
    ends = data.count(b"\n", 0, position) + data.count(b"\r", 0, position)
    return ends - data.count(b"\r\n", 0, position) + 1


def line_in(text: str, position: int) -> int:
    """The line, counted from 1, on which a character of a text lies (see `line_of`)."""
    ends = text.count("\n", 0, position) + text.count("\r", 0, position)
    return ends - text.count("\r\n", 0, position) + 1


def decode(data: bytes, name: str) -> tuple[str, list[str]]:
    """The text of a file, without byte order mark, and remarks on how it was read.

    Raises
    ------
    Fault : the file is larger than the cap, or not text in UTF-8, in UTF-16 with its mark or in
        Windows-1252; the sentence says what it seems to be
    """
    where = Place(file=name)
    refuse_large(data, name)
    for signature, what in _SIGNATURES:
        if data.startswith(signature):
            raise Fault(f"This is {what}, not a text file.", where, _SAVE_AS)
    if data.startswith(_UTF32):
        raise Fault("This is UTF-32 text, which is not read.", where, _SAVE_AS)
    if data[:2] in _UTF16:
        return _utf16(data, name), []
    nul = data.find(b"\0")
    if nul >= 0:
        if _seems_utf16(data):
            raise Fault(
                "This seems to be UTF-16 text without the mark at its beginning, which is not "
                "read.",
                where,
                _SAVE_AS,
            )
        raise _nul(name, line_of(data, nul))
    try:
        return data.decode("utf-8-sig"), []
    except UnicodeDecodeError as error:
        wrong = error
    if data.startswith(b"\xef\xbb\xbf"):
        # The file says that it is UTF-8; reading it as anything else would garble the rest.
        raise Fault(
            "The file says that it is UTF-8 but has bytes that are not.",
            Place(file=name, row=line_of(data, wrong.start + 3)),
            _SAVE_AS,
        )
    try:
        text = data.decode("cp1252")
    except UnicodeDecodeError as error:
        raise Fault(
            "The file is neither UTF-8 nor Windows-1252 text.",
            Place(file=name, row=line_of(data, error.start)),
            _SAVE_AS,
        ) from None
    return text, ["The file is not UTF-8 and was read as Windows-1252; check letters with accents."]


def _nul(name: str, row: int) -> Fault:
    return Fault(
        "The file has a NUL byte in it, so it is no text file or it is damaged.",
        Place(file=name, row=row),
        _SAVE_AS,
    )


def refuse_nul(text: str, name: str) -> None:
    """Refuse a text with a NUL in it.

    Raises
    ------
    Fault : it has one; says on which line
    """
    at = text.find("\0")
    if at >= 0:
        raise _nul(name, line_in(text, at))


def _utf16(data: bytes, name: str) -> str:
    coding = _UTF16[data[:2]]
    try:
        text = data[2:].decode(coding)
    except UnicodeDecodeError as error:
        before = data[2 : 2 + error.start].decode(coding)
        raise Fault(
            "The file says that it is UTF-16 but has bytes that are not.",
            Place(file=name, row=line_in(before, len(before))),
            _SAVE_AS,
        ) from None
    refuse_nul(text, name)
    return text


def _seems_utf16(data: bytes) -> bool:
    """Whether about every other byte is NUL, as in UTF-16 of plain letters."""
    head = data[:_LOOKED_AT]
    halves = head[0::2], head[1::2]
    return any(len(half) > 1 and half.count(0) * 2 > len(half) for half in halves) and not all(
        half.count(0) * 2 > len(half) for half in halves
    )


def _rows(text: str, separator: str) -> Iterable[tuple[int, list[str]]]:
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=separator, strict=True)
    begins = 1
    for cells in reader:
        yield begins, cells
        begins = reader.line_num + 1


def _heading(text: str, separator: str) -> list[str]:
    lines = (line[0] for line in _LINE.finditer(text))
    try:
        for cells in csv.reader(lines, delimiter=separator, strict=True):
            if any(cell.strip() for cell in cells):
                return [cell.strip() for cell in cells]
    except csv.Error:
        pass
    return []


def plain(heading: str) -> str:
    """A heading without case, blanks, hyphens and underscores, to compare with."""
    return re.sub(r"[\s_-]+", "", heading).casefold()


def _separator(text: str, known: Collection[str], name: str) -> str:
    wanted = {plain(column) for column in known}
    preferred = "\t" if name.lower().endswith(".tsv") else ","

    def worth(separator: str) -> tuple[int, int, bool]:
        cells = _heading(text, separator)
        return len({plain(c) for c in set(cells)} & wanted), len(cells), separator == preferred

    return max(SEPARATORS, key=worth)


def _begun(text: str, name: str, known: Collection[str]) -> tuple[str, str, int]:
    """The text from its heading on, the separator, and how many lines were left out before."""
    text, separator, lines = said_separator(text)
    return text, separator or _separator(text, known, name), lines


def said_separator(text: str) -> tuple[str, str, int]:
    """The text without a first line such as 'sep=;', what it says, and whether it was one line."""
    said = re.match(r"sep=(.)(?:\r\n|\r|\n)", text)
    if said is not None and said[1] in SEPARATORS:
        return text[said.end() :], said[1], 1
    return text, "", 0


def sheet(text: str, name: str, known: Collection[str], tick: Tick = no_tick) -> Sheet:
    """Cut a text into heading and rows; `known` are the column names that the heading may have.

    Blank rows are left out; cells of every row are as many as headings (blank where a row is
    short).  A row with more cells than headings makes a fault.  The headings are trimmed.
    """
    text, separator, lines = _begun(text, name, known)
    found = Sheet([], 1 + lines, [], separator)
    line = 1
    try:
        for line, cells in ticked(_rows(text, separator), tick):
            if not any(cell.strip() for cell in cells):
                continue
            if not found.headings:
                if _is_blank_heading(cells):
                    continue
                _refuse_wide(cells, name, line + lines)
                found.headings = [cell.strip() for cell in cells]
                found.heading_line = line + lines
                continue
            width = len(found.headings)
            if len(cells) > width:
                if any(cell.strip() for cell in cells[width:]):
                    found.faults.append(
                        Fault(
                            f"The row has {len(cells)} cells, the heading row only {width}.",
                            Place(file=name, row=line + lines),
                            "Put quotes round a cell that has the separator in it.",
                        )
                    )
                cells = cells[:width]
            elif len(cells) < width:
                cells = cells + [""] * (width - len(cells))
            found.rows.append((line + lines, cells))
    except csv.Error as error:
        found.faults.append(_quote_fault(name, text, separator, lines, str(error)))
    return found


def _refuse_wide(cells: list[str], name: str, line: int) -> None:
    if len(cells) > MOST_COLUMNS:
        raise Fault(
            f"The heading row has {len(cells)} cells; no more than {MOST_COLUMNS} are read.",
            Place(file=name, row=line),
            "Check the separator of the file, or delete the empty columns.",
        )


def _is_blank_heading(cells: list[str]) -> bool:
    """A row of nothing but separators is blank, whichever separator was settled on."""
    return not any(cell.strip(" ,;\t") for cell in cells)


def columns_below(
    text: str, name: str, known: Collection[str], tick: Tick = no_tick
) -> tuple[Sheet, Columns] | None:
    """Cut a text into its heading and the columns below it, trimmed; empty lines are left out.

    None where a row wants a closer look than `sheet` alone gives: a quote that is not closed, more
    cells than headings, cells under a blank heading.
    """
    text, separator, lines = _begun(text, name, known)
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=separator, strict=True)
    found = Sheet([], 1 + lines, [], separator)
    columns: Columns = []
    try:
        for cells in reader:
            if any(cell.strip() for cell in cells) and not _is_blank_heading(cells):
                found.headings = [cell.strip() for cell in cells]
                break
            found.heading_line = reader.line_num + 1 + lines
        width = len(found.headings)
        if width > MOST_COLUMNS:
            return None
        columns = [[] for _ in found.headings]
        while rows := list(islice(reader, _CHUNK)):
            tick()
            if set(map(len, rows)) != {width}:
                if max(map(len, rows)) > width:
                    return None
                rows = [cells + [""] * (width - len(cells)) for cells in rows if cells]
            for column, cells_of in zip(columns, zip(*rows, strict=True), strict=False):
                column += map(str.strip, cells_of)
    except csv.Error:
        return None
    if not columns or any(
        not heading and any(column) for heading, column in zip(found.headings, columns, strict=True)
    ):
        return None
    return found, columns


def _quote_fault(name: str, text: str, separator: str, lines: int, error: str) -> Fault:
    begins = 1
    try:
        reader = csv.reader(io.StringIO(text, newline=""), delimiter=separator, strict=True)
        for _ in reader:
            begins = reader.line_num + 1
    except csv.Error:
        pass
    where = Place(file=name, row=begins + lines)
    if "unexpected end" in error:
        return Fault(
            "A quote opened in this row is never closed.", where, "Close it or take it out."
        )
    return Fault(
        "A quoted cell of this row goes on after its closing quote.",
        where,
        "Write a quote inside a quoted cell twice.",
    )


def _cell(text: str, separator: str) -> str:
    if any(mark in text for mark in (separator, '"', "\n", "\r")) or text != text.strip():
        return '"' + text.replace('"', '""') + '"'
    return text


def to_text(headings: list[str], rows: Iterable[list[str]], separator: str = ",") -> str:
    """Rows as text, lines ended by LF, quoted only where needed; the same input, the same bytes."""
    lines = [separator.join(_cell(cell, separator) for cell in headings)]
    lines += [separator.join(_cell(cell, separator) for cell in row) for row in rows]
    return "\n".join(lines) + "\n"
