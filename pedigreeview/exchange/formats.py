"""Every format that holds a book: its name, its endings, how it is read and written.

The command line and the window choose from here; a format is told by the ending of a file, else by
what the bytes begin with.
"""

from __future__ import annotations

import datetime
import tempfile
from dataclasses import dataclass, replace
from pathlib import Path
from typing import TYPE_CHECKING, Any

from pedigreeview.book.book import Book
from pedigreeview.book.faults import Fault, Place
from pedigreeview.exchange.ticking import Tick, no_tick

if TYPE_CHECKING:
    from pedigreeview.exchange.spreadsheets import Table
    from pedigreeview.network import PedigreeNetwork

__all__ = [
    "FORMATS",
    "Format",
    "format_of_bytes",
    "format_of_path",
    "lost",
    "read_bytes_as",
    "read_path_as",
    "to_bytes",
    "with_settings",
    "write_as",
]


@dataclass(frozen=True, slots=True)
class Format:
    """One format.

    name : as on the command line
    words : what it is
    endings : of its files, the usual one first; none for a folder
    reads, writes : what can be done with it
    """

    name: str
    words: str
    endings: tuple[str, ...]
    reads: bool = True
    writes: bool = True


FORMATS: dict[str, Format] = {
    held.name: held
    for held in (
        Format("book", "book", (".pedbook",)),
        Format("folder", "Data Package folder", ()),
        Format("table", "plant table", (".csv", ".tsv", ".txt")),
        Format("xlsx", "plant table as a spreadsheet", (".xlsx",)),
        Format("ods", "plant table as a spreadsheet", (".ods",), writes=False),
        Format("brapi", "Breeding API 2.1 JSON", (".brapi.json",)),
        Format("passport", "passport data of founders", (".mcpd.csv", ".mcpd.tsv", ".mcpd.xlsx")),
        Format("graphml", "GraphML", (".graphml",)),
        Format("gexf", "GEXF", (".gexf",)),
        Format("node-link", "node-link JSON", (".json",)),
        Format("dot", "DOT", (".dot", ".gv"), reads=False),
    )
}
"""Every format by its name."""

_GRAPHS = {"graphml": ".graphml", "gexf": ".gexf", "node-link": ".json"}


def format_of_path(path: str | Path) -> Format | None:
    """The format of a path by its longest known ending; None where there is none."""
    name = Path(path).name.lower()
    found = [
        (len(ending), held)
        for held in FORMATS.values()
        for ending in held.endings
        if name.endswith(ending)
    ]
    return max(found, key=lambda item: item[0])[1] if found else None


def format_of_bytes(data: bytes, name: str) -> Format:
    """The format of a file without a telling ending, by what it begins with."""
    if data.startswith(b"SQLite format 3\0"):
        return FORMATS["book"]
    if data.startswith(b"PK\x03\x04"):
        return FORMATS["xlsx"]
    head = data[:4_096].lstrip(b"\xef\xbb\xbf \t\r\n")
    if head[:1] in (b"{", b"["):
        return _json_format(data, name)
    if head[:1] == b"<":
        return FORMATS["gexf" if b"<gexf" in head else "graphml"]
    return FORMATS["table"]


def _json_format(data: bytes, name: str) -> Format:
    from pedigreeview.exchange import graph_reading
    from pedigreeview.exchange.json_files import read_json
    from pedigreeview.exchange.text_files import decode

    document = read_json(decode(data, name)[0], name)
    return FORMATS["node-link" if graph_reading.is_node_link(document) else "brapi"]


def with_settings(book: Book, founders_as: str | None, fixation: float | None) -> Book:
    """The book with settings in force for this reading, over its own."""
    settings = book.settings
    if founders_as:
        settings = replace(settings, founders_as=founders_as)
    if fixation is not None:
        settings = replace(settings, variety_fixation=fixation)
    if settings is not book.settings:
        book.settings = settings
    return book


def read_path_as(
    path: Path,
    held: Format | None = None,
    *,
    founders_as: str | None = None,
    fixation: float | None = None,
    tick: Tick = no_tick,
) -> Book:
    """Read a file or folder in a format; None: the one of its ending or contents.

    tick : called now and then; may raise `Cancelled`

    Raises
    ------
    FileFaults : with everything that is wrong
    Fault : it cannot be read, or not in this format
    """
    from pedigreeview.exchange import data_package, pedbook, plant_table
    from pedigreeview.exchange.text_files import read_bytes

    given: dict[str, Any] = {"founders_as": founders_as, "fixation": fixation, "tick": tick}
    if path.is_dir() or path.name == data_package.DESCRIPTOR:
        return data_package.read(path, **given)
    if held is None:
        held = format_of_path(path)
    if held is not None and held.name == "book":
        return pedbook.read(path, **given)
    if held is not None and held.name == "table":
        return plant_table.read(path, **given)
    data = read_bytes(path)
    if held is None or (held.name == "node-link" and path.suffix.lower() == ".json"):
        sniffed = format_of_bytes(data, str(path))
        # What ends in .json and is none is named as such, not read as a table.
        held = FORMATS["brapi"] if held is not None and sniffed.name == "table" else sniffed
    if held.name == "book":
        return pedbook.read(path, **given)
    book = read_bytes_as(data, held, str(path), **given)
    book.path = path
    return book


def read_bytes_as(
    data: bytes,
    held: Format,
    name: str,
    *,
    founders_as: str | None = None,
    fixation: float | None = None,
    tick: Tick = no_tick,
) -> Book:
    """Read bytes, such as standard input, in a format (see `read_path_as`)."""
    if not held.reads:
        raise Fault(
            f"{held.words} is written only, not read.", Place(file=name), "Choose another file."
        )
    if held.name == "table":
        from pedigreeview.exchange import plant_table
        from pedigreeview.exchange.text_files import decode

        text, remarks = decode(data, name)
        book = plant_table.parse(text, name, founders_as=founders_as, fixation=fixation, tick=tick)
        book.remarks[:0] = remarks
        return book
    if held.name in ("xlsx", "ods"):
        return _spreadsheet(data, name, founders_as, fixation, tick)
    if held.name == "passport":
        from pedigreeview.exchange import passport

        book = passport.parse(data, name, tick=tick)
    elif held.name == "brapi":
        from pedigreeview.exchange import breeding_api
        from pedigreeview.exchange.text_files import decode

        text, remarks = decode(data, name)
        book = breeding_api.parse(text, name, tick)
        book.remarks[:0] = remarks
    elif held.name in _GRAPHS:
        from pedigreeview.exchange import graph_reading

        book = graph_reading.parse(data, _GRAPHS[held.name], name, tick)
    else:
        raise Fault(
            f"A {held.words} is not read from a stream of bytes.",
            Place(file=name),
            "Name the file or the folder.",
        )
    return with_settings(book, founders_as, fixation)


def _spreadsheet(
    data: bytes, name: str, founders_as: str | None, fixation: float | None, tick: Tick
) -> Book:
    from pedigreeview.exchange import passport, plant_table
    from pedigreeview.exchange.spreadsheets import read_table, to_sheet
    from pedigreeview.exchange.table_headings import NEEDED
    from pedigreeview.exchange.text_files import plain

    sheets = read_table(data, name, tick)
    for table in sheets.tables:
        first = {plain(text) for text in table.headings(0)} if table.rows else set()
        if {plain(word) for word in NEEDED} <= first:
            book = plant_table.parse_sheet(
                to_sheet(table), name, founders_as=founders_as, fixation=fixation, tick=tick
            )
            book.remarks[:0] = [*sheets.remarks, *_dates_for_codes(table)]
            return book
        if table.rows and passport.is_passport(table.headings(0)):
            return with_settings(passport.parse(sheets, tick=tick), founders_as, fixation)
    raise Fault(
        "No sheet of the file has the headings of a plant table.",
        Place(file=name),
        f"Name its columns {', '.join(NEEDED)}, or import it, which asks what each column means.",
    )


def _dates_for_codes(table: Table) -> list[str]:
    """A sentence where codes are dates: spreadsheet programs make 2021-01-03 of a code 21-01-3."""
    from pedigreeview.exchange.spreadsheets import cell_text
    from pedigreeview.exchange.text_files import plain

    codes = {plain(word) for word in ("plant", "seed_parent", "pollen_parent", "cross")}
    columns = [at for at, text in enumerate(table.headings(0)) if plain(text) in codes]
    found = [
        (line, cell_text(cells[at]))
        for line, cells in table.below(0)
        for at in columns
        if at < len(cells) and isinstance(cells[at], datetime.date)
    ]
    if not found:
        return []
    line, shown = found[0]
    many = "1 code is a date" if len(found) == 1 else f"{len(found)} codes are dates"
    return [
        f"{many}, such as {shown!r} in row {line}: a spreadsheet program makes dates of codes such "
        "as 21-01-3. Set the columns of the codes to 'text' there before the codes are typed or "
        "the file is opened."
    ]


def lost(book: Book, held: Format) -> list[str]:
    """What a format cannot carry of a book, one sentence each; to be said before it is written."""
    from pedigreeview.exchange import (
        breeding_api,
        data_package,
        graph_files,
        passport,
        pedbook,
        plant_table,
    )

    if held.name == "dot":
        return ["DOT is for drawing alone and is not read again."]
    asked: dict[str, Any] = {
        "book": pedbook.lost,
        "folder": data_package.lost,
        "table": plant_table.lost,
        "xlsx": plant_table.lost,
        "ods": plant_table.lost,
        "brapi": breeding_api.lost,
        "passport": passport.lost,
        "graphml": graph_files.lost,
        "gexf": graph_files.lost,
        "node-link": graph_files.lost,
    }
    said: list[str] = asked[held.name](book)
    return said


def write_as(net: PedigreeNetwork, path: Path, held: Format, *, replace: bool = False) -> None:
    """Write a book to a file or folder in a format.

    Raises
    ------
    Fault : the format is read only, or the system does not let us write
    """
    from pedigreeview.exchange import (
        breeding_api,
        data_package,
        graph_files,
        passport,
        pedbook,
        plant_table,
    )
    from pedigreeview.exchange.spreadsheet_writing import write_table

    if not held.writes:
        raise Fault(
            f"A {held.endings[0]} file is read, but not written.",
            Place(file=str(path)),
            "Write an .xlsx file, which the same programs open.",
        )
    if held.name == "book":
        pedbook.write(net.book, path, replace=replace).close()
    elif held.name == "xlsx":
        headings, lines = plant_table.table_lines(net.book)
        write_table(path, headings, lines, title="plants")
    elif held.name in ("graphml", "gexf", "node-link", "dot"):
        writers = {
            "graphml": graph_files.write_graphml,
            "gexf": graph_files.write_gexf,
            "node-link": graph_files.write_node_link,
            "dot": graph_files.write_dot,
        }
        writers[held.name](net, path)
    else:
        with pedbook.unpacked(net.book) as book:
            writers_of_books: dict[str, Any] = {
                "folder": data_package.write,
                "table": plant_table.write,
                "brapi": breeding_api.write,
                "passport": passport.write,
            }
            writers_of_books[held.name](book, path)


def to_bytes(net: PedigreeNetwork, held: Format) -> bytes:
    """A book as the bytes of a file, for standard output.

    Raises
    ------
    Fault : the format is a folder, or read only
    """
    if not held.endings:
        raise Fault(
            "A folder cannot be written to standard output.", None, "Name a folder to write."
        )
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / f"book{held.endings[0]}"
        write_as(net, path, held)
        return path.read_bytes()
