"""`convert`: between a book's own file, a Data Package folder, plant tables and other formats."""

from __future__ import annotations

import os
import sys
from pathlib import Path
from typing import TYPE_CHECKING

from pedigreeview.book.faults import Fault, Place
from pedigreeview.commands.answer import Answer, counted
from pedigreeview.commands.streams import say

if TYPE_CHECKING:
    from pedigreeview.exchange.formats import Format
    from pedigreeview.network import PedigreeNetwork

__all__ = [
    "FORMAT_NAMES",
    "STREAM",
    "convert",
    "read_source",
    "refuse_taken",
    "stream_bytes",
    "target_format",
    "write_target",
]

_PART = 1 << 20
"""Bytes of standard input that are read at a time."""
STREAM = "-"
"""The word for standard input and standard output."""

FORMAT_NAMES = (
    "book", "folder", "table", "xlsx", "ods", "brapi", "passport", "graphml", "gexf", "node-link",
    "dot",
)  # fmt: skip
"""The formats by name; a test holds them against `exchange.formats`."""


def target_format(target: str, name: str | None = None) -> Format:
    """The format in which the words say to write.

    Raises
    ------
    Fault : they name none that can be written
    """
    from pedigreeview.exchange.formats import FORMATS, format_of_path

    path = Path(target)
    if name is not None:
        found = FORMATS[name]
    elif target == STREAM:
        found = FORMATS["table"]
    elif path.name == "datapackage.json" or path.is_dir() or target.endswith((os.sep, "/")):
        found = FORMATS["folder"]
    else:
        by_ending = format_of_path(path)
        if by_ending is None and not path.suffix:
            by_ending = FORMATS["folder"]
        if by_ending is None or not by_ending.writes:
            raise Fault(
                f"A file that ends in {path.suffix} cannot be written.",
                Place(file=target),
                "Name a .pedbook file for a book, a .csv, .tsv or .xlsx file for a plant table, a "
                "folder for a Data Package, or say --to.",
            )
        found = by_ending
    if not found.writes:
        raise Fault(
            f"The format {found.name!r} is read, but not written.",
            Place(file=target),
            "Choose xlsx, which the same programs open.",
        )
    return found


def stream_bytes() -> bytes:
    """All of standard input.

    Raises
    ------
    Fault : there is none, or it is larger than the cap
    """
    from pedigreeview.exchange import text_files

    stream = sys.stdin
    if stream is None or stream.closed:
        raise Fault("There is no standard input.", None, "Name a file.")
    data = bytearray()
    # A stream without an end must not fill the memory.
    while len(data) <= text_files.MOST_UNPACKED and (part := stream.buffer.read(_PART)):
        data += part
    text_files.refuse_large(data, "standard input")
    return bytes(data)


def read_source(
    source: str,
    name: str | None = None,
    *,
    founders_as: str | None = None,
    fixation: float | None = None,
) -> PedigreeNetwork:
    """The network of a file, a folder or standard input, in a format if one is named."""
    from pedigreeview.exchange.formats import (
        FORMATS,
        format_of_bytes,
        read_bytes_as,
        read_path_as,
    )
    from pedigreeview.network import PedigreeNetwork

    held = None if name is None else FORMATS[name]
    if source == STREAM:
        data = stream_bytes()
        held = held or format_of_bytes(data, "standard input")
        book = read_bytes_as(
            data, held, "standard input", founders_as=founders_as, fixation=fixation
        )
    elif held is None:
        from pedigreeview.exchange import read_book

        book = read_book(Path(source), founders_as=founders_as, fixation=fixation)
    else:
        if not Path(source).exists():
            raise Fault(
                "There is no such file or folder.",
                Place(file=source),
                "Check the name and the folder.",
            )
        book = read_path_as(Path(source), held, founders_as=founders_as, fixation=fixation)
    return PedigreeNetwork.from_records(book)


def refuse_taken(source: Path | None, target: Path, *, replace: bool) -> None:
    """Refuse to write over what is read, inside of it or, without `replace`, over anything."""
    place = Place(file=str(target))
    if source is not None:
        if target.exists() and source.exists() and target.samefile(source):
            raise Fault("This is the file to be read.", place, "Name another one to write.")
        inside = source.is_dir() and source.resolve() in target.resolve().parents
        if inside or (target.is_dir() and target.resolve() in source.resolve().parents):
            raise Fault(
                "The book to be read and what is to be written lie one inside the other.",
                place,
                "Name a place outside to write.",
            )
    taken = any(target.iterdir()) if target.is_dir() else target.exists()
    if taken and not replace:
        raise Fault("This exists already.", place, "Name another, or add --replace.")


def write_target(
    net: PedigreeNetwork,
    target: str,
    held: Format,
    source: Path | None = None,
    *,
    replace: bool = False,
) -> Answer:
    """Write a book; what its format cannot carry is said before."""
    from pedigreeview.exchange.formats import lost, to_bytes, write_as

    path = Path(target)
    if held.name == "folder" and path.name == "datapackage.json":
        path = path.parent
    if target != STREAM:
        refuse_taken(source, path, replace=replace)
    for sentence in lost(net.book, held):
        say(f"Not carried: {sentence}")
    plants = counted(len(net.book.plants), "plant")
    crosses = counted(len(net.book.crosses), "cross", "crosses")
    if target == STREAM:
        data = to_bytes(net, held)
        sys.stdout.flush()
        sys.stdout.buffer.write(data)
        sys.stdout.buffer.flush()
        say(f"Wrote {held.words}: {plants}, {crosses}.")
        return Answer([], None, net.problems())
    write_as(net, path, held, replace=replace)
    return Answer([f"Wrote {path} ({held.words}): {plants}, {crosses}."], None, net.problems())


def convert(
    net: PedigreeNetwork,
    source: str,
    target: str,
    *,
    to: str | None = None,
    replace: bool = False,
) -> Answer:
    """Write the book to `target`; what its format cannot carry is said before."""
    read_from: Path | None = None
    if source != STREAM:
        read_from = Path(source)
        if read_from.name == "datapackage.json":
            read_from = read_from.parent
    return write_target(net, target, target_format(target, to), read_from, replace=replace)
