"""A book's file made whole, from a book or as a copy: written beside its place, then moved in."""

from __future__ import annotations

import hashlib
import os
import secrets
import sqlite3
from collections.abc import Iterator, Mapping
from contextlib import closing, contextmanager, suppress
from dataclasses import replace as replaced
from pathlib import Path, PurePosixPath

from pedigreeview.book.book import Book
from pedigreeview.book.connections import as_faults, connect, file_fault
from pedigreeview.book.faults import Fault, Place
from pedigreeview.book.file_faults import (
    BookExists,
    BookGone,
    BookNotWritable,
    DiskFull,
    FileFault,
    UnfitBook,
)
from pedigreeview.book.reading_rows import Tick, no_tick
from pedigreeview.book.references import ONE
from pedigreeview.book.row_images import StoredFile
from pedigreeview.book.writing_rows import fill, make_tables, write_contents

__all__ = [
    "Files",
    "copy_file",
    "copy_pages",
    "flushed",
    "make_file",
    "os_fault",
    "read_content",
    "written_beside",
]

Files = Mapping[str, bytes | Path]
"""Files of a book by their path in its folder: their bytes, or where they lie."""

_FULL = (28, 122)
"""ENOSPC and EDQUOT."""


def os_fault(path: Path, error: OSError) -> FileFault:
    if error.errno in _FULL:
        return DiskFull(path)
    if not path.parent.is_dir():
        return BookGone(path, "There is no such folder.")
    return BookNotWritable(path, f"The file cannot be written: {error.strerror or error}.")


def flushed(path: Path) -> None:
    """Wait until a file, or the names in a folder, are on the disk."""
    if path.is_dir() and os.name == "nt":
        # Windows opens no folder.
        return
    held = os.open(path, os.O_RDONLY if path.is_dir() else os.O_RDWR)
    try:
        os.fsync(held)
    finally:
        os.close(held)


@contextmanager
def written_beside(path: Path, *, replace: bool = False) -> Iterator[Path]:
    """Hand out a path to write to; move it to its place when the block ends well.

    When the block raises, nothing is left and what stood at `path` is untouched.

    Raises
    ------
    BookExists, DiskFull, BookNotWritable, BookGone
    """
    if path.is_dir() or (path.exists() and not replace):
        raise BookExists(path)
    if not path.parent.is_dir():
        raise BookGone(path, "There is no such folder.")
    beside = path.with_name(f".{path.stem}-{secrets.token_hex(4)}{path.suffix}")
    try:
        with as_faults(path):
            yield beside
        flushed(beside)
        os.replace(beside, path)
        flushed(path.parent)
    except OSError as error:
        raise os_fault(path, error) from error
    finally:
        for left in (beside, beside.with_name(f"{beside.name}-journal")):
            with suppress(OSError):
                left.unlink(missing_ok=True)


def _new(path: Path) -> sqlite3.Connection:
    """A new file that nobody else sees yet, so that it need not be written with care."""
    connection = sqlite3.connect(path, isolation_level=None)
    connection.execute("PRAGMA journal_mode = MEMORY")
    connection.execute("PRAGMA synchronous = OFF")
    connection.execute("PRAGMA cache_size = -64000")
    return connection


def make_file(
    path: Path, book: Book, files: Files, *, replace: bool = False, tick: Tick = no_tick
) -> None:
    """Make the file of a book.

    Raises
    ------
    BookExists, DiskFull, BookNotWritable, BookGone : it cannot be written
    UnfitBook : the records break a rule that every book keeps
    """
    with written_beside(path, replace=replace) as beside, closing(_new(beside)) as connection:
        connection.execute("BEGIN")
        try:
            # The list of tables then lies at the head, which a file that is cut short still has.
            make_tables(connection, "table", "index")
            held = dict(_keep(connection, book, files, tick))
            fill(connection, replaced(book, files=held), tick)
            _check_names(connection, path)
        except sqlite3.IntegrityError as error:
            raise UnfitBook(path, f"The records do not fit together: {error}.") from error
        connection.execute("COMMIT")


def _check_names(connection: sqlite3.Connection, path: Path) -> None:
    broken = connection.execute("PRAGMA foreign_key_check").fetchone()
    if broken is not None:
        table, row, parent, _ = broken
        raise UnfitBook(
            path,
            f"A {ONE[table]} (row {row} of {table}) names a {ONE[parent]} that is not in the book.",
        )


# Files in the book -------------------------------------------------------------------------------


def _keep(
    connection: sqlite3.Connection, book: Book, files: Files, tick: Tick
) -> Iterator[tuple[str, StoredFile]]:
    for path, data in _files_of(book, files):
        tick()
        content = hashlib.sha256(data).hexdigest()
        write_contents(connection, {content: data})
        yield path, StoredFile(path, content)


def _files_of(book: Book, files: Files) -> Iterator[tuple[str, bytes]]:
    """Every file of a book with its bytes: those given, then those that it came with."""
    for path, given in files.items():
        yield path, given if isinstance(given, bytes) else given.read_bytes()
    if book.path is None:
        return
    if book.files and book.path.is_file():
        with closing(connect(book.path, write=False)) as source, as_faults(book.path):
            for path in book.files:
                if path not in files:
                    yield path, read_content(source, book.path, path)
    elif book.path.is_dir():
        for name in book.photos:
            path, photo = f"photos/{name}", book.path / "photos" / name
            plain = PurePosixPath(name).name == name and Path(name).name == name
            if path not in files and plain and not photo.is_symlink() and photo.is_file():
                yield path, photo.read_bytes()


def read_content(connection: sqlite3.Connection, book: Path, path: str) -> bytes:
    """The bytes of a file that a book holds.

    Raises
    ------
    Fault : it holds none of that path
    """
    row = connection.execute(
        'SELECT "data" FROM "files" JOIN "contents" USING ("content") WHERE "path" = ?', (path,)
    ).fetchone()
    if row is None or not isinstance(row[0], bytes):
        raise Fault(
            f"The book holds no file {path!r}.",
            Place(file=str(book)),
            "Put the file in again, or go back to a backup that has it.",
        )
    return row[0]


# Copies ------------------------------------------------------------------------------------------


def copy_file(
    connection: sqlite3.Connection, path: Path, *, replace: bool = False, tick: Tick = no_tick
) -> None:
    """Write what a connection holds to another file, page by page.

    Raises
    ------
    BookExists, DiskFull, BookNotWritable, BookGone : it cannot be written
    """
    with written_beside(path, replace=replace) as beside:
        target = sqlite3.connect(beside, isolation_level=None)
        try:
            copy_pages(connection, target, path, tick)
        finally:
            target.close()


def copy_pages(
    source: sqlite3.Connection, target: sqlite3.Connection, path: Path, tick: Tick = no_tick
) -> None:
    """Copy a whole database into another.

    Raises
    ------
    BookBusy : one of them stayed locked
    """
    refused = [0]

    def look(status: int, remaining: int, total: int) -> None:
        del remaining, total
        tick()
        if status in (sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED):
            # Without this the copy would wait for ever.
            refused[0] += 1
            if refused[0] > _TRIES:
                busy = sqlite3.OperationalError("database is locked")
                busy.sqlite_errorcode = sqlite3.SQLITE_BUSY
                fault = file_fault(path, busy)
                assert fault is not None
                raise fault

    source.backup(target, pages=_PAGES, progress=look, sleep=0.05)


_PAGES = 4_000
_TRIES = 3
"""Tries beside the time that each waits by itself."""
