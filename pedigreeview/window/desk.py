"""The desk: where the window writes in the book, and hears what became of it.

A page never writes by itself.  It hands a function of an `Edit` to `Desk.record`; the function runs
in the one thread that writes, the edit is on disk before anything is shown, and the new book comes
back with `changed`.  A table or a folder is only read: recording in it first keeps it as a book.
"""

from __future__ import annotations

import itertools
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QEventLoop, QObject, QTimer, Signal

from pedigreeview.book.faults import Fault
from pedigreeview.book.file_faults import BookNotWritable
from pedigreeview.window.errands import Errands, OwnFault
from pedigreeview.window.letting_go import LettingGo
from pedigreeview.window.opening import Opened, after_edit
from pedigreeview.window.words import count

if TYPE_CHECKING:
    from pedigreeview.book.book import Book
    from pedigreeview.book.book_file import BookFile
    from pedigreeview.book.edits import Change, Edit
    from pedigreeview.book.undo import Done

__all__ = ["Desk"]

_LOOK_EVERY = 1500
"""Milliseconds between looks for what another window has written."""

_Changes = tuple[Opened, "Change"]


class _Laid:
    """A book as it lies on the desk, as far as the writing thread has worked it out.

    The window hears of an edit later than the next one may run, and may by then show another book;
    so the writing thread goes on from what it made itself, never from what the window shows.
    """

    def __init__(self, opened: Opened | None) -> None:
        self._made = opened
        self._whole = True

    def after(self, file: BookFile, change: Change) -> Opened:
        """The book after an edit that is on disk; only in the writing thread.

        Raises
        ------
        OwnFault : the program could not work it out; the edit is kept all the same
        """
        try:
            return self._after(file, change)
        except Exception as error:
            raise OwnFault(error, kept=True) from error

    def _after(self, file: BookFile, change: Change) -> Opened:
        assert self._made is not None
        if not self._whole:
            change = replace(change, pedigree=True)
        self._whole = False
        self._made = after_edit(self._made, file, change)
        self._whole = True
        return self._made


class Desk(QObject):
    """One open book and everything that is written in it."""

    changed = Signal(object, object)
    """`Opened` with the new book, and the `Change`."""
    undo_changed = Signal()
    """What can be undone or redone is another edit now, or the book can no longer be written in."""
    said = Signal(str)
    """A short sentence for the foot of the window."""
    keep_wanted = Signal(object)
    """The book is a table or folder; it is to be kept as a book, then the given function called."""
    refused = Signal(object)
    """A `Fault`: an edit was not made."""
    troubled = Signal(object)
    """A `Fault` of the file that was noticed while nothing was asked of it, told once."""

    def __init__(self, errands: Errands) -> None:
        super().__init__()
        self._errands = errands
        self._numbers = itertools.count(1)
        self.opened: Opened | None = None
        self._again: Callable[[], None] | None = None
        self._trouble: type[Fault] | None = None
        self._laid = _Laid(None)
        self._letting_go = LettingGo(self)
        self._refusals, self._finishing = 0, False
        self.showing = False
        """Whether an edit that is on disk is being shown: a mistake now costs no record."""
        self._watch = QTimer(self)
        self._watch.setInterval(_LOOK_EVERY)
        self._watch.timeout.connect(self.look)

    # What lies open -----------------------------------------------------------------------------

    @property
    def file(self) -> BookFile | None:
        """The book's file, or None for a table, a folder, or no book at all."""
        return self.opened.file if self.opened is not None else None

    @property
    def book(self) -> Book | None:
        """The book as it is now."""
        return self.opened.net.book if self.opened is not None else None

    @property
    def can_write(self) -> bool:
        """Whether an edit would be kept."""
        return self.file is not None and not self.file.read_only

    @property
    def undo_words(self) -> str:
        """What undo would take back; '' for nothing."""
        return self.file.undo_words if self.can_write and self.file is not None else ""

    @property
    def redo_words(self) -> str:
        """What redo would make again; '' for nothing."""
        return self.file.redo_words if self.can_write and self.file is not None else ""

    def lay(self, opened: Opened | None) -> None:
        """Lay another book on the desk; the one before is closed."""
        held = self.file
        same = opened is not None and held is opened.file
        if opened is not self.opened:
            self._letting_go.take(self.opened, opened)
        self.opened = opened
        self._laid = _Laid(opened)
        self._again, self._trouble = None, None
        if held is not None and not same:
            self._close(held)
        if self.file is not None:
            self._watch.start()
        else:
            self._watch.stop()
        self.undo_changed.emit()

    def _close(self, file: BookFile) -> None:
        """Close a file after the last edit that was sent to it."""
        self._errands.ask(self._write(), file.close, lambda _: None)

    # Writing ------------------------------------------------------------------------------------

    def record(
        self,
        words: str,
        function: Callable[[Edit], Any],
        then: Callable[[Any], None] | None = None,
        refused: Callable[[Fault], None] | None = None,
        *,
        quiet: bool = False,
    ) -> None:
        """Make one edit; nothing of it stays if the function raises.

        Parameters
        ----------
        words : what is done, as the menu says it after 'Undo'
        function : changes the edit; runs in the writing thread, so it holds no widget
        then : called with what the function gave back, after every page has the new book
        refused : called with the fault instead of showing it, as a form does beside its field
        quiet : it is no step to undo (`BookFile.edit`)
        """
        file = self.file
        if self.opened is None:
            return

        def again() -> None:
            self.record(words, function, then, refused)

        if file is None:
            self.keep_wanted.emit(again)
            return
        if file.read_only:
            because = file.read_only_because or self.tr("This book can only be read.")
            self._refuse(BookNotWritable(file.path, because), refused, again)
            return

        laid = self._laid

        def work() -> tuple[Opened | OwnFault, Change, Any]:
            with file.edit(words, quiet=quiet) as edit:
                given = function(edit)
            change = edit.change()
            try:
                return laid.after(file, change), change, given
            except OwnFault as fault:
                return fault, change, given

        def done(answer: tuple[Opened | OwnFault, Change, Any]) -> None:
            made, change, given = answer
            self._again = None
            self.showing = True
            try:
                # It is recorded, whatever became of showing it: its form must not offer it again.
                if isinstance(made, OwnFault):
                    self.refused.emit(made)
                else:
                    self._take(made, change)
                if then is not None and self.file is file:
                    then(given)
            finally:
                self.showing = False

        def failed(fault: Fault) -> None:
            if self.file is file:
                self._refuse(fault, refused, again)
            else:
                self._refusals += 1
                # Another book lies open by now: the form is gone, and its ways on with it.
                self.refused.emit(Fault(fault.what, fault.where, fault.todo))

        self._errands.ask(self._write(), work, done, failed)

    def finish(self) -> bool:
        """Wait until everything is written that was recorded; False if some of it was refused.

        The window closes only then, so that a refusal is not lost with it.
        """
        if self._finishing:
            return False
        self._finishing, refusals = True, self._refusals
        loop, look = QEventLoop(), QTimer()
        look.timeout.connect(lambda: None if self._errands.awaits("write") else loop.quit())
        look.start(10)
        if self._errands.awaits("write"):
            loop.exec(QEventLoop.ProcessEventsFlag.ExcludeUserInputEvents)
        look.stop()
        self._finishing = False
        return self._refusals == refusals

    def try_again(self) -> None:
        """Make again what was refused last because of the file, if that is still wanted."""
        again, self._again = self._again, None
        if again is not None:
            again()

    def undo(self) -> None:
        """Take back the last edit."""
        self._step("undo")

    def redo(self) -> None:
        """Make again the edit that was undone last."""
        self._step("redo")

    def undo_to(self, step: int) -> None:
        """Take back every edit from the newest down to the one of that number."""
        file = self.file
        if file is None or file.read_only:
            return
        laid = self._laid

        def work() -> tuple[_Changes | None, int, Fault | None]:
            done, found, fault = 0, None, None
            wanted = [one for one in file.steps() if not one.undone and one.step >= step]
            try:
                for _ in wanted:
                    change = file.undo()
                    if change is None:
                        break
                    found = change if found is None else found.then(change)
                    done += 1
            except Fault as error:
                # What was taken back before it stays taken back, and is shown.
                fault = error
            changes = None if found is None else (laid.after(file, found), found)
            return changes, done, fault

        def came(answer: tuple[_Changes | None, int, Fault | None]) -> None:
            changes, done, fault = answer
            if changes is not None:
                self._take(*changes)
                self.said.emit(count(done, self.tr("step undone"), self.tr("steps undone")))
            if fault is not None:
                self._refuse(fault, None)

        self._errands.ask(self._write(), work, came, lambda fault: self._refuse(fault, None))

    def ask_steps(self, then: Callable[[list[Done]], None]) -> None:
        """Ask what was done in the book, the newest first."""
        file = self.file
        if file is not None:
            self._errands.ask("write:steps", file.steps, then)

    def _step(self, way: str) -> None:
        file = self.file
        if file is None or file.read_only:
            return
        laid = self._laid

        def work() -> _Changes | None:
            change = file.undo() if way == "undo" else file.redo()
            return None if change is None else (laid.after(file, change), change)

        def done(answer: _Changes | None) -> None:
            if answer is None:
                self.undo_changed.emit()
                return
            self._take(*answer)
            text = self.tr("Undone: {}") if way == "undo" else self.tr("Made again: {}")
            self.said.emit(text.format(answer[1].words))

        again = self.undo if way == "undo" else self.redo
        self._errands.ask(self._write(), work, done, lambda fault: self._refuse(fault, None, again))

    def look(self) -> None:
        """Take over what another window or program has written."""
        file = self.file
        if file is None or self._errands.awaits("write"):
            return
        laid = self._laid

        def work() -> _Changes | None:
            change = file.refresh()
            return None if change is None else (laid.after(file, change), change)

        def done(answer: _Changes | None) -> None:
            if self.file is not file:
                return
            if self._trouble is not None:
                self._trouble = None
                self.said.emit(self.tr("The book is there again."))
            if answer is not None:
                self._take(*answer)
                self.said.emit(self.tr("Another window has written in this book; it is shown."))

        def failed(fault: Fault) -> None:
            if isinstance(fault, OwnFault):
                self.refused.emit(fault)
            elif self.file is file and type(fault) is not self._trouble:
                self._trouble = type(fault)
                self.troubled.emit(fault)

        self._errands.ask("write:look", work, done, failed)

    def _held(self) -> Opened:
        assert self.opened is not None
        return self.opened

    def _take(self, opened: Opened, change: Change) -> None:
        if self.opened is None or opened.file is not self.opened.file:
            return
        self._letting_go.take(self.opened, opened)
        self.opened = opened
        before, self.showing = self.showing, True
        try:
            self.changed.emit(opened, change)
            self.undo_changed.emit()
        finally:
            self.showing = before

    def _refuse(
        self,
        fault: Fault,
        refused: Callable[[Fault], None] | None,
        again: Callable[[], None] | None = None,
    ) -> None:
        self._refusals += 1
        ways = getattr(fault, "ways", ())
        self._again = again if ways else None
        if refused is not None:
            refused(fault)
        # What is wrong with the file cannot be mended in the field that was typed into.
        if refused is None or ways:
            self.refused.emit(fault)

    def _write(self) -> str:
        """A kind of its own for every edit, so that none drops the one before it."""
        return f"write:{next(self._numbers)}"

    # Copies and backups -------------------------------------------------------------------------

    def save_copy(
        self,
        path: Path,
        then: Callable[[Path], None],
        failed: Callable[[Fault], None],
        *,
        over: bool = False,
    ) -> None:
        """Write the book to another file.

        over : whether a file of that name may be replaced
        """
        opened, file = self._held(), self.file

        def work() -> Path:
            from pedigreeview.book.book_file import BookFile
            from pedigreeview.book.file_faults import BookDamaged, BookGone
            from pedigreeview.exchange import pedbook

            if file is None:
                pedbook.write(opened.net.book, path, replace=over).close()
                return path
            try:
                file.save_copy(path, replace=over)
            except (BookGone, BookDamaged):
                if not path.parent.is_dir():
                    raise
                # The drive is gone, but every record is still in memory; the photos were on it.
                book = replace(opened.net.book, path=None, files={})
                BookFile.create(path, book, replace=over).close()
            return path

        self._errands.ask(self._write(), work, then, failed)

    def restore(
        self, backup: Path, then: Callable[[], None], failed: Callable[[Fault], None]
    ) -> None:
        """Put a backup in the place of what is in the book, which becomes a backup first."""
        file, laid = self.file, self._laid
        if file is None:
            return

        def work() -> _Changes:
            change = file.restore(backup)
            return laid.after(file, change), change

        def done(answer: _Changes) -> None:
            self._take(*answer)
            then()

        self._errands.ask(self._write(), work, done, failed)

    def back_up(self, then: Callable[[], None], failed: Callable[[Fault], None]) -> None:
        """Make a backup of the book as it is now."""
        file = self.file
        if file is not None:
            self._errands.ask(
                self._write(), lambda: file.back_up(always=True), lambda _: then(), failed
            )

    # Keeping as a book --------------------------------------------------------------------------

    def keep_as_book(
        self, path: Path, then: Callable[[Path], None], failed: Callable[[Fault], None]
    ) -> None:
        """Write the open table or folder to a book file of its own, with its photos."""
        opened = self._held()

        def work() -> Path:
            from pedigreeview.exchange import pedbook

            pedbook.write(opened.net.book, path).close()
            return path

        self._errands.ask(self._write(), work, then, failed)
