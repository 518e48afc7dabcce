"""A connection to a book's file that runs nothing from the file, and says faults as sentences.

No word of a file is ever run: what it holds beside our own tables is refused before anything else
is read, expressions in its schema are not trusted, and sizes are limited.
"""

from __future__ import annotations

import os
import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

from pedigreeview.book.file_faults import (
    BookBusy,
    BookDamaged,
    BookGone,
    BookNotWritable,
    DiskFull,
    FileFault,
    NotABook,
    UnfitBook,
)
from pedigreeview.book.lock_holders import holder_of

__all__ = [
    "MAGIC",
    "PATIENCE",
    "as_faults",
    "close",
    "connect",
    "file_fault",
    "looks_like_a_database",
]

MAGIC = b"SQLite format 3\x00"
PATIENCE = 5.0
"""Seconds that a writer waits for another."""
_LARGEST_CELL = 128 * 1024 * 1024
"""Bytes of the largest text or photo; a file that says more is not believed."""
_OLDEST = (3, 37)
"""The SQLite from which on tables hold their types."""


def looks_like_a_database(path: Path) -> bool:
    """Whether the file begins as one; OSError where it cannot be read."""
    with open(path, "rb") as stream:
        return stream.read(len(MAGIC)) == MAGIC


def connect(path: Path, *, write: bool) -> sqlite3.Connection:
    """Open a file that is there.

    Raises
    ------
    NotABook, BookGone, BookNotWritable : it cannot be opened
    """
    if sqlite3.sqlite_version_info < _OLDEST:
        raise BookNotWritable(path, f"SQLite {sqlite3.sqlite_version} is too old for this book.")
    try:
        if path.is_dir():
            raise NotABook(path, "This is a folder.")
        if not looks_like_a_database(path):
            raise NotABook(path)
    except FileNotFoundError:
        raise BookGone(path, "There is no such file.") from None
    except OSError as error:
        raise BookGone(path, f"The file cannot be read: {error.strerror or error}.") from error
    address = f"{path.resolve().as_uri()}?mode={'rw' if write else 'ro'}"
    with as_faults(path):
        connection = sqlite3.connect(
            address, uri=True, timeout=PATIENCE, isolation_level=None, check_same_thread=False
        )
    try:
        with as_faults(path):
            _harden(connection)
    except BaseException:
        connection.close()
        raise
    return connection


def _harden(connection: sqlite3.Connection) -> None:
    connection.setlimit(sqlite3.SQLITE_LIMIT_LENGTH, _LARGEST_CELL)
    connection.setlimit(sqlite3.SQLITE_LIMIT_ATTACHED, 0)
    connection.setlimit(sqlite3.SQLITE_LIMIT_TRIGGER_DEPTH, 1)
    # Both are off by default, but a library may have been built otherwise.
    connection.execute("PRAGMA trusted_schema = OFF")
    connection.execute("PRAGMA writable_schema = OFF")
    connection.execute("PRAGMA cell_size_check = ON")
    connection.execute("PRAGMA mmap_size = 0")
    configure = getattr(connection, "setconfig", None)
    if configure is not None:
        # Python 3.12 and newer.
        configure(getattr(sqlite3, "SQLITE_DBCONFIG_DEFENSIVE"), True)  # noqa: B009
        configure(getattr(sqlite3, "SQLITE_DBCONFIG_ENABLE_TRIGGER"), False)  # noqa: B009
        configure(getattr(sqlite3, "SQLITE_DBCONFIG_ENABLE_VIEW"), False)  # noqa: B009


# Faults ------------------------------------------------------------------------------------------


def file_fault(path: Path, error: sqlite3.Error | OverflowError | UnicodeError) -> FileFault | None:
    """The fault of the world that an error of the store stands for; None: a bug."""
    if isinstance(error, UnicodeEncodeError | OverflowError):
        return UnfitBook(path, f"A value cannot be kept: {error}.")
    code = getattr(error, "sqlite_errorcode", None)
    if code is None:
        # The module itself raises these: text in the file that is none.
        damaged = isinstance(error, sqlite3.OperationalError | UnicodeError)
        return BookDamaged(path, str(error)) if damaged else None
    kind = code & 0xFF
    if kind in (sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED):
        return BookBusy(path, holder_of(path))
    if kind == sqlite3.SQLITE_FULL:
        return DiskFull(path)
    if kind in (sqlite3.SQLITE_CORRUPT, sqlite3.SQLITE_NOTADB, sqlite3.SQLITE_FORMAT):
        return BookDamaged(path, str(error))
    if kind == sqlite3.SQLITE_TOOBIG:
        return UnfitBook(path, "A text or photo is too large to be kept.")
    if kind not in (
        sqlite3.SQLITE_READONLY,
        sqlite3.SQLITE_CANTOPEN,
        sqlite3.SQLITE_IOERR,
        sqlite3.SQLITE_PERM,
        sqlite3.SQLITE_AUTH,
        sqlite3.SQLITE_NOLFS,
    ):
        return None
    if not path.exists():
        return BookGone(path)
    if kind == sqlite3.SQLITE_IOERR:
        return BookGone(path, f"The disk does not answer: {error}.")
    if not os.access(path.parent, os.W_OK):
        return BookNotWritable(path, "The folder of the book cannot be written to.")
    return BookNotWritable(path, f"The book cannot be written to: {error}.")


@contextmanager
def as_faults(path: Path) -> Iterator[None]:
    """Turn errors of the store into faults with a sentence; bugs go through as they are."""
    try:
        yield
    except (sqlite3.Error, OverflowError, UnicodeError) as error:
        fault = file_fault(path, error)
        if fault is None:
            raise
        raise fault from error


def close(connection: sqlite3.Connection) -> None:
    """Close a connection whatever state it is in."""
    with suppress(sqlite3.Error):
        if connection.in_transaction:
            connection.rollback()
    with suppress(sqlite3.Error):
        connection.close()
