"""Spreadsheet files are zip archives of XML: looked at before anything unpacks or parses them.

What is refused: more bytes than the cap when unpacked, many members, members that are locked,
document types and entities in the XML, and sheets whose few filled cells lie so far apart that the
grid between them would fill the memory.
"""

from __future__ import annotations

import io
import re
import zipfile
import zlib
from collections.abc import Iterator

from pedigreeview.book.faults import Fault, Place
from pedigreeview.exchange.ticking import Tick, no_tick, ticked

__all__ = ["MOST_CELLS", "MOST_COLUMNS", "MOST_ROWS", "MOST_UNPACKED", "check_archive", "check_xml"]

MOST_UNPACKED = 200_000_000
"""Bytes of a file when it is unpacked."""

MOST_ROWS = 1_200_000
MOST_COLUMNS = 16_384
MOST_CELLS = 5_000_000
"""Cells of one sheet, empty ones between filled ones counted."""

_SPARSE = 1_000_000
"""Cells of a sheet, empty ones counted, up to which it may be filled as thinly as it likes."""

_MOST_MEMBERS = 10_000
_CHUNK = 1 << 20
_NOT_XML_TEXT = "Save it anew in the spreadsheet program, or as 'CSV UTF-8'."
_FORBIDDEN = re.compile(rb"<!(?:DOCTYPE|ENTITY)", re.I)
# Cells and rows with something in them, with their attributes; '>' may stand inside quotes.
_CELL = re.compile(rb"<(?:[\w.-]+:)?c((?:\s+[^\s=<>\"'/]+\s*=\s*(?:\"[^\"<]*\"|'[^'<]*'))*)\s*>")
_ROW = re.compile(rb"<(?:[\w.-]+:)?row((?:\s+[^\s=<>\"'/]+\s*=\s*(?:\"[^\"<]*\"|'[^'<]*'))*)\s*>")
_AT = re.compile(rb"\sr\s*=\s*[\"']([A-Za-z]*)([0-9]*)[\"']")
_TAIL = 4_096


def _fault(name: str, what: str, todo: str = _NOT_XML_TEXT) -> Fault:
    return Fault(what, Place(file=name), todo)


def check_xml(data: bytes, name: str) -> None:
    """Refuse XML with a document type or entities, or in a coding that hides them.

    Raises
    ------
    Fault : it has either
    """
    if data.startswith((b"\xff\xfe", b"\xfe\xff")) or b"\0" in data[:4_096]:
        raise _fault(name, "The XML in the file is not UTF-8.")
    if _FORBIDDEN.search(data):
        raise _fault(
            name,
            "The XML in the file declares a document type or entities, which are not read.",
            "Save it anew with the program that made it.",
        )


def _chunks(archive: zipfile.ZipFile, member: zipfile.ZipInfo, name: str) -> Iterator[bytes]:
    held = 0
    try:
        with archive.open(member) as stream:
            while chunk := stream.read(_CHUNK):
                held += len(chunk)
                if held > MOST_UNPACKED:
                    raise _too_large(name)
                yield chunk
    except (
        zipfile.BadZipFile, zlib.error, EOFError, NotImplementedError, RuntimeError, OSError,
        ValueError,
    ) as error:  # fmt: skip
        raise _fault(name, f"The file is damaged: {error}.") from None


def _too_large(name: str) -> Fault:
    return _fault(
        name,
        f"The file is larger than {MOST_UNPACKED // 1_000_000} MB when it is unpacked.",
        "Split it into smaller files.",
    )


def check_archive(data: bytes, name: str, tick: Tick = no_tick) -> str:
    """Look through a spreadsheet file; gives 'xlsx' or 'ods'.

    tick : called now and then; may raise `Cancelled`

    Raises
    ------
    Fault : it is no such file, or something in it is refused
    """
    try:
        archive = zipfile.ZipFile(io.BytesIO(data))
        members = archive.infolist()
    except (zipfile.BadZipFile, OSError, ValueError, NotImplementedError, EOFError) as error:
        raise _fault(name, f"This is no spreadsheet file, or it is damaged: {error}.") from None
    if len(members) > _MOST_MEMBERS:
        raise _fault(name, f"The file holds {len(members)} members, more than a spreadsheet has.")
    if sum(member.file_size for member in members) > MOST_UNPACKED:
        raise _too_large(name)
    names = [member.filename for member in members]
    if len(set(names)) < len(names):
        raise _fault(name, "The file holds two members of one name.")
    if any(member.flag_bits & 1 for member in members) or "EncryptedPackage" in names:
        raise _fault(name, "The file is locked by a password.", "Save it without one.")
    if "xl/workbook.xml" in names:
        kind = "xlsx"
    elif "content.xml" in names:
        kind = "ods"
    else:
        raise _fault(name, "This is a zip file but holds no spreadsheet.", "Choose another file.")
    unpacked = 0
    for member in members:
        if not member.filename.lower().endswith((".xml", ".rels", ".vml")):
            continue
        before = b""
        sheet = _Extent() if "/worksheets/" in member.filename.lower() else None
        for chunk in ticked(_chunks(archive, member, name), tick, 1):
            unpacked += len(chunk)
            if unpacked > MOST_UNPACKED:
                raise _too_large(name)
            if not before:
                check_xml(chunk[:4_096], name)
            joined = before + chunk
            if _FORBIDDEN.search(joined):
                check_xml(joined, name)
            if sheet is not None:
                sheet.take(joined)
            before = joined[-_TAIL:]
        if sheet is not None:
            sheet.check(name)
    return kind


class _Extent:
    """How far the filled cells of one sheet reach."""

    def __init__(self) -> None:
        self.rows = 1
        self.columns = 1
        self.nowhere = 0
        self.filled = 0
        self.hidden = False

    def take(self, data: bytes) -> None:
        cells = _CELL.findall(data)
        found = _AT.findall(b"\n".join(cells))
        self.filled += len(cells)
        for text in {at[0] for at in found}:
            number = 0
            for letter in text.upper()[:9]:
                number = number * 26 + letter - 64
            self.columns = max(self.columns, number)
        # Without a place of its own a cell stands right of the one before.
        self.nowhere += len(cells) - len(found)
        rows = {at[1] for at in found}
        if self.nowhere:
            # Such a cell stands in the row of its element; other rows may well be empty.
            rows.update(at[1] for at in _AT.findall(b"\n".join(_ROW.findall(data))))
        for row in rows:
            self.rows = max(self.rows, int(row[:9] or b"0"))
        # A place written with character references could not be told here.
        self.hidden = self.hidden or any(b"&" in cell for cell in cells)

    def check(self, name: str) -> None:
        if self.hidden:
            raise _fault(name, "A sheet of the file hides where its cells stand.")
        columns = max(self.columns, min(self.nowhere, MOST_COLUMNS + 1))
        rows = max(self.rows, 1)
        # The reader makes a grid of all cells, so that a few far apart would take much memory.
        most = min(MOST_CELLS, max(_SPARSE, 20 * self.filled))
        if columns > MOST_COLUMNS or rows > MOST_ROWS or columns * rows > most:
            raise _too_wide(name, rows, columns, most)


def _too_wide(name: str, rows: int, columns: int, most: int) -> Fault:
    return _fault(
        name,
        f"A sheet of the file reaches over {rows} rows and {columns} columns, which is more than "
        f"is read of it ({most} cells).",
        "Delete the cells that stand far from the table, or save the table as 'CSV UTF-8'.",
    )
