"""The book's own file, `NAME.pedbook`: read, edited, undone, followed.

Every edit is one durable transaction: when `edit` ends, the edit is on disk.  The file is a SQLite
database without side files once it is closed.  Several windows and programs may have it open: an
edit begins by taking in what others wrote, so nothing is written over, and `refresh` follows them.
A `BookFile` may be used from several threads; one of them works at a time.
"""

from __future__ import annotations

import os
import sqlite3
import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

from pedigreeview.book import backups, undo
from pedigreeview.book.backups import Backup
from pedigreeview.book.book import Book
from pedigreeview.book.changes import Change, change_of
from pedigreeview.book.connections import as_faults, close
from pedigreeview.book.drafts import Draft, OutOfStep
from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Fault
from pedigreeview.book.file_faults import (
    BookGone,
    BookNotWritable,
    BookTooNew,
    CannotUndo,
    UnfitBook,
)
from pedigreeview.book.making_files import Files, copy_file, make_file, read_content
from pedigreeview.book.migrations import expected
from pedigreeview.book.opening_files import Found, open_file
from pedigreeview.book.pins import carry_pins, without_pins
from pedigreeview.book.reading_rows import Tick, no_tick, read_book
from pedigreeview.book.records import TABLES
from pedigreeview.book.row_images import RowChange
from pedigreeview.book.schema import VERSION
from pedigreeview.book.strangers import refuse_strangers, version_of
from pedigreeview.book.undo import Done
from pedigreeview.book.writing_rows import write_changes, write_contents

__all__ = ["SUFFIX", "BookFile"]

SUFFIX = ".pedbook"

_KEYED = tuple(name for name, record in TABLES.items() if len(record.KEY) == 1)


class BookFile:
    """An open book.

    Attributes
    ----------
    path : the file
    book : the snapshot as it is now; never changed in place, so threads may go on reading it
    read_only : whether it can only be read, and `read_only_because` the reason, one sentence
    undo_words, redo_words : what undo and redo would do; '' for nothing
    last_change : what the last edit, undo or redo changed, with what others had written before it
    backup_fault : why no backup could be made on opening, or None
    """

    def __init__(self, path: Path, found: Found, backup_folder: Path | None) -> None:
        self.path = path
        self._lock = threading.RLock()
        self._connection = found.connection
        self._place = found.place
        self._newer = found.newer
        self._data_version = found.data_version
        self._schema_version = found.schema_version
        self._revision = found.revision
        self._missed: Change | None = None
        self._backup_folder = backup_folder
        self.book: Book = found.book
        self.read_only = bool(found.read_only_because)
        self.read_only_because = found.read_only_because
        self.backup_fault: Fault | None = None
        self.undo_words = ""
        self.redo_words = ""
        self.last_change: Change | None = None
        self._next: dict[bool, tuple[int, str]] = {}
        self._closed = False
        self._look_at_steps()

    # Opening and closing ------------------------------------------------------------------------

    @classmethod
    def create(
        cls,
        path: str | Path,
        book: Book | None = None,
        *,
        files: Files | None = None,
        replace: bool = False,
        tick: Tick | None = None,
    ) -> BookFile:
        """Make a new file and open it.

        Parameters
        ----------
        book : what it holds, with the photos that lie in the folder or file that it was read from
        files : further files, bytes or a path by their path in the folder
        replace : whether a file of that name may be replaced
        tick : called now and then; may raise `Cancelled`, which leaves nothing behind

        Raises
        ------
        BookExists, DiskFull, BookNotWritable, BookGone : it cannot be made
        UnfitBook : the records break a rule that every book keeps
        """
        path = Path(path)
        make_file(path, book or Book(), files or {}, replace=replace, tick=tick or no_tick)
        return cls.open(path, backups=False)

    @classmethod
    def open(
        cls,
        path: str | Path,
        *,
        read_only: bool = False,
        backups: bool = True,
        backup_folder: str | Path | None = None,
        tick: Tick | None = None,
    ) -> BookFile:
        """Open a file.

        Parameters
        ----------
        read_only : never write; no backup is made then
        backups : whether a backup is made when the book changed since the last one
        backup_folder : where backups go; None: beside the book, in 'NAME.backups'

        Raises
        ------
        NotABook, StrangeBook : it is none of ours, or holds what would run
        BookDamaged : it cannot be read in full
        BookBusy, BookGone : it cannot be read now
        """
        path = Path(path)
        folder = None if backup_folder is None else Path(backup_folder)
        tick = tick or no_tick
        found = open_file(
            path, read_only=read_only, backup_folder=folder, backup=backups, tick=tick
        )
        opened = cls(path, found, folder)
        if backups and not opened.read_only:
            try:
                opened.back_up(tick=tick)
            except Fault as fault:
                # A full disk must not keep anyone from reading the book.
                opened.backup_fault = fault
            except BaseException:
                opened.close()
                raise
        return opened

    def close(self) -> None:
        """Close the file; nothing is left beside it."""
        with self._lock:
            if self._closed:
                return
            self._closed = True
            if not self.read_only:
                self._clear_away()
            close(self._connection)

    def _clear_away(self) -> None:
        """Forget the bytes of photos that nothing names any more; if not now, another time."""
        with suppress(sqlite3.Error, Fault):
            self._refuse_other_file()
            self._connection.execute("PRAGMA busy_timeout = 0")
            self._connection.execute("BEGIN IMMEDIATE")
            undo.clear_away(self._connection)
            self._connection.execute("COMMIT")

    def __enter__(self) -> BookFile:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()

    # Editing ------------------------------------------------------------------------------------

    @contextmanager
    def edit(self, words: str, *, quiet: bool = False) -> Iterator[Edit]:
        """One edit: what the block does to the `Edit` is on disk when the block has ended.

        When the block or the writing raises, nothing is changed.

        quiet : it is no step to undo and leaves redo as it is, as the pins of the picture are
            kept; for rows that no step undoes

        Raises
        ------
        BookNotWritable, BookTooNew, BookBusy, BookGone, DiskFull, BookDamaged, UnfitBook
        """
        with self._lock:
            with self._writing() as done:
                edit = Edit(self.book, words)
                edit.meanwhile = self._missed
                yield edit
                changes = edit.changes
                if changes:
                    revision = self._revision + 1
                    with self._sound():
                        write_contents(self._connection, edit.contents)
                        write_changes(self._connection, changes)
                        if not quiet:
                            undo.add_step(self._connection, edit.words, changes, revision)
                        self._count(revision)
                    done(edit.book, revision)
            self._reported(edit.change())

    def undo(self) -> Change | None:
        """Take the last edit back; None where there is none.

        Raises
        ------
        CannotUndo : its rows are no longer as it left them, or another edit came between
        and what `edit` raises
        """
        return self._step(redo=False)

    def redo(self) -> Change | None:
        """Make again the edit that was taken back last; None where there is none."""
        return self._step(redo=True)

    def _step(self, *, redo: bool) -> Change | None:
        with self._lock:
            known, shown = self._next[redo]
            try:
                with self._writing() as done:
                    step = undo.next_step(self._connection, redo=redo)
                    if self._missed is not None and (step[0] if step else 0) != known:
                        raise CannotUndo(self.path, "meanwhile", step[1] if step else shown)
                    if step is None:
                        return None
                    number, shown, text = step
                    changes = undo.from_json(text)
                    ours = without_pins(changes)
                    draft = Draft(self.book)
                    made = draft.apply(ours if redo else [item.back() for item in ours])
                    pins = carry_pins(draft, made)
                    made += pins
                    revision = self._revision + 1
                    with self._sound():
                        write_changes(self._connection, made)
                        undo.mark(self._connection, number, revision, undone=not redo)
                        if pins or len(ours) < len(changes):
                            undo.forget_event(self._connection, revision)
                        self._count(revision)
                    done(draft.book, revision)
            except ValueError as error:
                raise CannotUndo(self.path, "unreadable", shown) from error
            except (OutOfStep, UnfitBook) as error:
                raise CannotUndo(self.path, "changed", shown) from error
            change = change_of(shown, made)
            return self._reported(change if self._missed is None else self._missed.then(change))

    def steps(self) -> list[Done]:
        """What was done, the newest first; of a book of a newer version nothing is known."""
        with self._lock, as_faults(self.path):
            return [] if self._newer or self._closed else undo.steps(self._connection)

    def _reported(self, change: Change) -> Change:
        self._missed = None
        self.last_change = change
        return change

    @contextmanager
    def _writing(self) -> Iterator[Callable[[Book, int], None]]:
        """A write transaction, begun by taking in what others wrote.

        The function that it gives is called with the new snapshot and revision; when the block ends
        well they are on disk and then shown.
        """
        self._refuse_reading_only()
        new: list[tuple[Book, int]] = []
        connection = self._connection
        try:
            with as_faults(self.path):
                self._refuse_other_file()
                connection.execute("BEGIN IMMEDIATE")
            self._catch_up()
            yield lambda book, revision: new.append((book, revision))
            with self._sound():
                self._refuse_other_file()
                connection.execute("COMMIT" if new else "ROLLBACK")
        except BaseException:
            self._roll_back()
            raise
        if new:
            self.book, self._revision = new[-1]
            self._look_at_steps()

    @contextmanager
    def _sound(self) -> Iterator[None]:
        """Constraints of the store that break are faults of the records."""
        try:
            with as_faults(self.path):
                yield
        except sqlite3.IntegrityError as error:
            raise UnfitBook(self.path, f"The records do not fit together: {error}.") from error

    def _count(self, revision: int) -> None:
        self._connection.execute('UPDATE "about" SET "revision" = ?', (revision,))

    def _roll_back(self) -> None:
        with suppress(sqlite3.Error):
            if self._connection.in_transaction:
                self._connection.execute("ROLLBACK")

    def _refuse_reading_only(self) -> None:
        if self._closed:
            raise BookGone(self.path, "The book is closed.")
        if self._newer:
            raise BookTooNew(self.path, self._newer, VERSION)
        if self.read_only:
            raise BookNotWritable(self.path, self.read_only_because)

    def _refuse_other_file(self) -> None:
        """The file that is open must still be the one at its path: else an edit would be lost."""
        try:
            now = os.stat(self.path)
        except OSError as error:
            raise BookGone(self.path) from error
        if (now.st_dev, now.st_ino) != self._place:
            raise BookGone(self.path, "Another file stands in the place of the book.")

    # Following others ---------------------------------------------------------------------------

    def refresh(self) -> Change | None:
        """Take in what another window or program wrote meanwhile; None where nothing is new.

        Cheap where nothing is new, and never waits for a writer.

        Raises
        ------
        BookGone : the file is no longer there
        BookDamaged, BookTooNew : another program made of it what cannot be read
        """
        if not self._lock.acquire(blocking=False):
            return None
        try:
            if self._closed:
                return None
            self._refuse_other_file()
            connection = self._connection
            try:
                connection.execute("PRAGMA busy_timeout = 0")
                if self._pragma("data_version") == self._data_version and self._missed is None:
                    return None
                connection.execute("BEGIN")
                self._catch_up()
                connection.execute("COMMIT")
            except sqlite3.OperationalError as error:
                if getattr(error, "sqlite_errorcode", 0) & 0xFF == sqlite3.SQLITE_BUSY:
                    return None
                with as_faults(self.path):
                    raise
            finally:
                self._roll_back()
                with suppress(sqlite3.Error):
                    connection.execute("PRAGMA busy_timeout = 5000")
            missed, self._missed = self._missed, None
            return missed
        finally:
            self._lock.release()

    def _catch_up(self) -> None:
        """Bring the snapshot to what is in the file; inside a transaction."""
        with as_faults(self.path):
            version = self._pragma("data_version")
            if version == self._data_version:
                return
            if self._pragma("schema_version") != self._schema_version:
                self._look_at_schema()
            revision = self._read_revision()
            changes = (
                undo.following(self._connection, self._revision, revision)
                if revision > self._revision and not self._newer
                else None
            )
            change = None if changes is None else self._follow(changes)
            if change is None:
                # Something was written past our steps, or so much that they no longer reach back.
                self.book = read_book(self._connection, self.path, newer=bool(self._newer))
                everything = {table: frozenset(getattr(self.book, table)) for table in _KEYED}
                change = Change("", everything, True)
        self._revision = revision
        self._data_version = version
        self._missed = change if self._missed is None else self._missed.then(change)
        self._look_at_steps()

    def _follow(self, changes: list[tuple[str, list[RowChange]]]) -> Change | None:
        """The snapshot after what others did, row by row; None where that leads nowhere."""
        draft, found = Draft(self.book), None
        try:
            for words, rows in changes:
                change = change_of(words, draft.apply(rows))
                found = change if found is None else found.then(change)
        except (OutOfStep, ValueError):
            return None
        self.book = draft.book
        return found

    def _look_at_schema(self) -> None:
        """Another program changed the tables: an upgrade, a restored backup, or a stranger."""
        version = version_of(self._connection, self.path)
        if version != VERSION and not self._newer:
            raise BookTooNew(self.path, version, VERSION)
        refuse_strangers(self._connection, self.path, None if self._newer else expected(VERSION))
        self._schema_version = self._pragma("schema_version")

    def _look_at_steps(self) -> None:
        """What undo and redo would do now."""
        for redo in (False, True):
            step = None
            if not self._newer:
                with as_faults(self.path):
                    step = undo.next_step(self._connection, redo=redo)
            self._next[redo] = (step[0], step[1]) if step else (0, "")
        self.undo_words, self.redo_words = self._next[False][1], self._next[True][1]

    def _pragma(self, name: str) -> int:
        return int(self._connection.execute(f"PRAGMA {name}").fetchone()[0])

    def _read_revision(self) -> int:
        return int(self._connection.execute('SELECT "revision" FROM "about"').fetchone()[0])

    # Files and copies ---------------------------------------------------------------------------

    def file(self, path: str) -> bytes:
        """The bytes of a photo or other file of the book, by its path ('photos/a.jpg').

        Raises
        ------
        Fault : the book holds no such file
        """
        with self._lock, as_faults(self.path):
            return read_content(self._connection, self.path, path)

    def save_copy(
        self, path: str | Path, *, replace: bool = False, tick: Tick | None = None
    ) -> None:
        """Write the book, with its undo steps, to another file.

        Raises
        ------
        BookExists, DiskFull, BookNotWritable, BookGone : it cannot be written
        """
        with self._lock:
            copy_file(self._connection, Path(path), replace=replace, tick=tick or no_tick)

    def back_up(self, *, always: bool = False, tick: Tick | None = None) -> Backup | None:
        """Make a dated backup; None where the book has not changed since the last one.

        Raises
        ------
        BookDamaged : a damaged book makes no backup, so that it pushes no good one out
        DiskFull, BookNotWritable, BookGone : it cannot be written
        """
        with self._lock:
            return backups.make(
                self._connection,
                self.path,
                self._backup_folder,
                always=always,
                tick=tick or no_tick,
            )

    def backups(self) -> list[Backup]:
        """The backups of the book, the newest first."""
        return backups.list_backups(self.path, self._backup_folder)

    def restore(self, backup: Backup | Path, *, tick: Tick | None = None) -> Change:
        """Put a backup in the place of what is in the book, which becomes a backup first.

        Other windows that have the book open see the change.

        Raises
        ------
        what `open` raises of the backup, and `edit` of the book; the book is then as it was
        """
        with self._lock:
            self._refuse_reading_only()
            self._refuse_other_file()
            source = backup.path if isinstance(backup, Backup) else backup
            backups.swap_in(
                self._connection, self.path, source, self._backup_folder, tick or no_tick
            )
            with as_faults(self.path):
                self._data_version = -1
                self._connection.execute("BEGIN")
                try:
                    self._catch_up()
                finally:
                    self._roll_back()
            assert self._missed is not None
            return self._reported(self._missed)
