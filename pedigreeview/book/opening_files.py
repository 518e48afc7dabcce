"""Opening a book's file: what it is, which version, whether it is sound and can be written in."""

from __future__ import annotations

import os
import sqlite3
from dataclasses import dataclass
from pathlib import Path

from pedigreeview.book import backups
from pedigreeview.book.book import Book
from pedigreeview.book.connections import as_faults, close, connect
from pedigreeview.book.faults import Fault
from pedigreeview.book.file_faults import BookDamaged, BookTooNew
from pedigreeview.book.making_files import copy_pages
from pedigreeview.book.migrations import OLDEST, expected, migrate
from pedigreeview.book.reading_rows import Tick, read_book
from pedigreeview.book.records import TABLES
from pedigreeview.book.references import names, references
from pedigreeview.book.schema import VERSION, quoted
from pedigreeview.book.strangers import refuse_strangers, version_of

__all__ = ["Found", "check_tables", "open_file"]


@dataclass(slots=True)
class Found:
    """An open file.

    Attributes
    ----------
    data_version, schema_version : of the moment at which the book was read
    place : device and number of the file, by which it is known again
    newer : its version where that is newer than ours, else 0
    read_only_because : one sentence; '' where it can be written in
    """

    connection: sqlite3.Connection
    book: Book
    revision: int
    data_version: int
    schema_version: int
    place: tuple[int, int]
    newer: int
    read_only_because: str


def check_tables(connection: sqlite3.Connection, path: Path, *, every_page: bool = False) -> None:
    """Look whether the rows are whole and of the right types.

    every_page : also the bytes of photos, which may be many

    Raises
    ------
    BookDamaged
    """
    tables = [""]
    if not every_page:
        named = connection.execute("SELECT name FROM sqlite_master WHERE type = 'table'")
        tables = [f"({quoted(name)})" for (name,) in named if name != "contents"]
    for table in tables:
        said = connection.execute(f"PRAGMA quick_check{table}").fetchone()
        if said is not None and said[0] != "ok":
            raise BookDamaged(path, str(said[0]).splitlines()[0])


def _check_names(connection: sqlite3.Connection, path: Path) -> None:
    """Look whether every row that names another finds it, for nothing can be worked out else."""
    broken = connection.execute("PRAGMA foreign_key_check").fetchone()
    if broken is not None:
        raise BookDamaged(path, f"a row of {broken[0]} names what is not there")


def _check_names_read(book: Book, path: Path) -> None:
    """The same of what was read of a newer version, whose tables may have other names."""
    for table in TABLES:
        for reference in references(table):
            if reference.said or not reference.holds:
                continue
            for record in book.table(table):
                for code in names(reference, record):
                    if not any(code in getattr(book, other) for other in reference.tables):
                        raise BookDamaged(path, f"a row of {table} names what is not there")


def open_file(
    path: Path, *, read_only: bool, backup_folder: Path | None, backup: bool, tick: Tick
) -> Found:
    """Open a file and read it.

    Raises
    ------
    NotABook, StrangeBook, BookDamaged, BookBusy, BookGone
    """
    can_write = os.access(path, os.W_OK) and os.access(path.parent, os.W_OK)
    connection = connect(path, write=can_write)
    try:
        with as_faults(path):
            because = _why_only_read(path, read_only)
            version = version_of(connection, path)
            newer = version if version > VERSION else 0
            if version < OLDEST:
                raise BookDamaged(path, f"its version {version} is none")
            refuse_strangers(connection, path, None if newer else expected(version))
            check_tables(connection, path)
            if newer:
                because = BookTooNew(path, version, VERSION).what
            elif version < VERSION:
                connection, because = _brought_up(
                    connection, path, because, backup_folder if backup else None, backup, tick
                )
            _prepare(connection, write=not because)
            if not because:
                _clear_journal(connection, path)
            connection.execute("BEGIN")
            book = read_book(connection, path, newer=bool(newer), tick=tick)
            # All of one moment: what another program writes after it must be seen as new.
            revision, data, schema = (
                int(connection.execute(asked).fetchone()[0])
                for asked in (
                    'SELECT "revision" FROM "about"',
                    "PRAGMA data_version",
                    "PRAGMA schema_version",
                )
            )
            if newer:
                _check_names_read(book, path)
            else:
                _check_names(connection, path)
            connection.execute("COMMIT")
        held = os.stat(path)
    except sqlite3.Error as error:
        # Whatever else the store says of a file is for want of something that the file should have.
        close(connection)
        raise BookDamaged(path, str(error)) from error
    except BaseException:
        close(connection)
        raise
    place = (held.st_dev, held.st_ino)
    return Found(connection, book, revision, data, schema, place, newer, because)


def _why_only_read(path: Path, read_only: bool) -> str:
    if read_only:
        return "The book was opened for reading."
    if not os.access(path, os.W_OK):
        return "The file of the book is write-protected, so it can only be read."
    if not os.access(path.parent, os.W_OK):
        return "The folder of the book is write-protected, so the book can only be read."
    return ""


def _prepare(connection: sqlite3.Connection, *, write: bool) -> None:
    connection.execute("PRAGMA foreign_keys = ON")
    if not write:
        connection.execute("PRAGMA query_only = ON")
        return
    # One file alone once it is closed, and each edit on the disk before it is shown.
    connection.execute("PRAGMA journal_mode = DELETE")
    connection.execute("PRAGMA synchronous = EXTRA")


def _clear_journal(connection: sqlite3.Connection, path: Path) -> None:
    """Let an empty journal go that a program left which was ended before it wrote.

    One that holds something was played back when the file was first read.
    """
    journal = path.with_name(f"{path.name}-journal")
    if not journal.exists():
        return
    try:
        connection.execute("BEGIN IMMEDIATE")
    except sqlite3.OperationalError:
        # Another program is writing; the journal is its own.
        return
    if journal.exists():
        # Any write makes the journal anew and takes it away.
        connection.execute(f"PRAGMA user_version = {VERSION}")
    connection.execute("COMMIT")


def _brought_up(
    connection: sqlite3.Connection,
    path: Path,
    because: str,
    folder: Path | None,
    backup: bool,
    tick: Tick,
) -> tuple[sqlite3.Connection, str]:
    """A file of an older version in the present form: in its place after a backup, else in memory.

    Returns
    -------
    the connection to use from now on, and why it can only be read
    """
    if not because and backup:
        try:
            backups.make(connection, path, folder, always=True, tick=tick)
        except Fault as fault:
            because = (
                "The book is of an older version and was not brought up to date, because no backup "
                f"of it could be made: {fault.what}"
            )
    if not because:
        _prepare(connection, write=True)
        migrate(connection, path)
        return connection, ""
    held = sqlite3.connect(":memory:", isolation_level=None, check_same_thread=False)
    try:
        copy_pages(connection, held, path, tick)
        migrate(held, path)
    except BaseException:
        close(held)
        raise
    close(connection)
    return held, because
