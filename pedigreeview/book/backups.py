"""Dated backups of a book: the last ten and the newest of each month, in a folder beside it.

They lie in 'NAME.backups' beside 'NAME.pedbook' unless another folder is given, and are whole books
that open like any other.  A damaged book makes none, so that it pushes no good one out.
"""

from __future__ import annotations

import datetime
import os
import re
import shutil
import sqlite3
from contextlib import closing, suppress
from dataclasses import dataclass
from pathlib import Path

from pedigreeview.book.connections import as_faults, connect
from pedigreeview.book.faults import Fault
from pedigreeview.book.file_faults import BookDamaged, BookTooNew
from pedigreeview.book.making_files import (
    copy_file,
    copy_pages,
    flushed,
    os_fault,
    written_beside,
)
from pedigreeview.book.migrations import expected, migrate
from pedigreeview.book.reading_rows import Tick, no_tick, read_book
from pedigreeview.book.schema import VERSION
from pedigreeview.book.strangers import refuse_strangers, version_of

__all__ = ["KEPT", "Backup", "folder_of", "list_backups", "make", "restore_over", "swap_in"]

KEPT = 10
"""Backups that are kept beside the newest of each month."""

_FORM = "%Y-%m-%d %H.%M.%S"
_DATED = re.compile(r" (\d{4}-\d{2}-\d{2} \d{2}\.\d{2}\.\d{2})\Z")


@dataclass(frozen=True, slots=True)
class Backup:
    """One backup: its file, when it was made by the clock on the wall, and its size in bytes."""

    path: Path
    made_at: datetime.datetime
    size: int


def folder_of(path: Path, folder: Path | None = None) -> Path:
    """The folder that holds the backups of a book."""
    return path.with_name(f"{path.stem}.backups") if folder is None else folder


def list_backups(path: Path, folder: Path | None = None) -> list[Backup]:
    """The backups of a book, the newest first."""
    found = []
    with suppress(OSError):
        for file in folder_of(path, folder).iterdir():
            dated = _DATED.search(file.stem)
            if dated is None or file.suffix != path.suffix:
                continue
            if file.stem[: dated.start()] != path.stem:
                continue
            with suppress(ValueError, OSError):
                made_at = datetime.datetime.strptime(dated[1], _FORM)
                found.append(Backup(file, made_at, file.stat().st_size))
    return sorted(found, key=lambda backup: backup.made_at, reverse=True)


def _state(connection: sqlite3.Connection) -> tuple[str, int]:
    row = connection.execute('SELECT "book_id", "revision" FROM "about"').fetchone()
    return str(row[0]), int(row[1])


def _is_held(connection: sqlite3.Connection, path: Path, folder: Path | None) -> bool:
    """Whether the newest backup holds the book as it is now."""
    held = list_backups(path, folder)
    if not held:
        return False
    try:
        with closing(connect(held[0].path, write=False)) as backup, as_faults(held[0].path):
            same = _state(backup) == _state(connection)
            return same and version_of(backup, path) == version_of(connection, path)
    except Fault:
        return False


def make(
    connection: sqlite3.Connection,
    path: Path,
    folder: Path | None = None,
    *,
    always: bool = False,
    now: datetime.datetime | None = None,
    tick: Tick = no_tick,
) -> Backup | None:
    """Make a backup of an open book, and let those go that are no longer kept.

    Parameters
    ----------
    always : also where the book has not changed since the last one
    now : the time that it is named by

    Returns
    -------
    the backup, or None where none was needed

    Raises
    ------
    BookDamaged : the book is damaged; no backup was made
    DiskFull, BookNotWritable, BookGone : it cannot be written
    """
    with as_faults(path):
        if not always and _is_held(connection, path, folder):
            return None
        said = connection.execute("PRAGMA quick_check").fetchone()
        if said is None or said[0] != "ok":
            raise BookDamaged(path, "" if said is None else str(said[0]).splitlines()[0])
    target = _free_name(path, folder, now or datetime.datetime.now())
    _make_folder(target.parent)
    copy_file(connection, target, tick=tick)
    _thin(path, folder)
    dated = _DATED.search(target.stem)
    assert dated is not None
    return Backup(target, datetime.datetime.strptime(dated[1], _FORM), target.stat().st_size)


def _make_folder(folder: Path) -> None:
    try:
        folder.mkdir(exist_ok=True)
    except OSError as error:
        raise os_fault(folder, error) from error


def _free_name(path: Path, folder: Path | None, now: datetime.datetime, also: str = "") -> Path:
    """A name that is free, a second later for each one taken."""
    while True:
        name = f"{path.stem} {now.strftime(_FORM)}{also}{path.suffix}"
        target = folder_of(path, folder) / name
        if not target.exists():
            return target
        now += datetime.timedelta(seconds=1)


def _thin(path: Path, folder: Path | None) -> None:
    months: set[tuple[int, int]] = set()
    for place, backup in enumerate(list_backups(path, folder)):
        month = (backup.made_at.year, backup.made_at.month)
        if place >= KEPT and month in months:
            with suppress(OSError):
                backup.path.unlink()
        months.add(month)


# Restoring ---------------------------------------------------------------------------------------


def _checked_copy(backup: Path, target: Path, revision: int, tick: Tick) -> None:
    """Copy a backup, look whether it is whole, and bring it to the present version.

    revision : the revision that the copy gets, so that other windows see that the book is another
    """
    with closing(connect(backup, write=False)) as source, as_faults(backup):
        copied = sqlite3.connect(target, isolation_level=None)
        try:
            copy_pages(source, copied, backup, tick)
        finally:
            copied.close()
    with closing(connect(target, write=True)) as held, as_faults(backup):
        version = version_of(held, backup)
        if version > VERSION:
            raise BookTooNew(backup, version, VERSION)
        refuse_strangers(held, backup, expected(version))
        said = held.execute("PRAGMA quick_check").fetchone()
        if said is None or said[0] != "ok":
            raise BookDamaged(backup, "" if said is None else str(said[0]).splitlines()[0])
        migrate(held, backup)
        read_book(held, backup, tick=tick)
        held.execute("BEGIN")
        held.execute('DELETE FROM "events"')
        held.execute('UPDATE "about" SET "revision" = max("revision" + 1, ?)', (revision,))
        held.execute("COMMIT")


def swap_in(
    connection: sqlite3.Connection,
    path: Path,
    backup: Path,
    folder: Path | None,
    tick: Tick = no_tick,
) -> None:
    """Put a backup into an open book, whose present state becomes a backup first.

    The copy is one transaction, so that other windows see the old book or the new one.

    Raises
    ------
    what opening the backup raises; BookBusy, DiskFull ... : the book is then as it was
    """
    with as_faults(path):
        revision = _state(connection)[1] + 1
    beside = path.with_name(f".{path.stem}-restored{path.suffix}")
    try:
        _remove(beside)
        _checked_copy(backup, beside, revision, tick)
        make(connection, path, folder, always=True, tick=tick)
        with closing(connect(beside, write=False)) as source, as_faults(path):
            copy_pages(source, connection, path)
    finally:
        _remove(beside)


def restore_over(
    path: Path, backup: Path, folder: Path | None = None, *, tick: Tick = no_tick
) -> Path | None:
    """Put a backup in the place of a book that cannot be opened any more.

    The damaged file is kept beside the backups, and never counts as one.

    Returns
    -------
    where the damaged file lies now; None where there was none

    Raises
    ------
    what opening the backup raises; DiskFull ... : the book is then as it was
    """
    kept = None
    with written_beside(path, replace=True) as beside:
        _checked_copy(backup, beside, 1, tick)
        if path.exists():
            kept = _free_name(path, folder, datetime.datetime.now(), " damaged")
            _make_folder(kept.parent)
            shutil.copyfile(path, kept)
            flushed(kept)
            journal = path.with_name(f"{path.name}-journal")
            if journal.exists():
                # Left where it is, it would be played into the file that takes the place.
                os.replace(journal, kept.with_name(f"{kept.name}-journal"))
    return kept


def _remove(path: Path) -> None:
    for left in (path, path.with_name(f"{path.name}-journal")):
        with suppress(OSError):
            left.unlink(missing_ok=True)
