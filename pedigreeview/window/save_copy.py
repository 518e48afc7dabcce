"""Save a copy of the book under another name, whole, and go on in it if that is wanted."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QCheckBox, QHBoxLayout, QLineEdit, QWidget

from pedigreeview.book.faults import Fault
from pedigreeview.window.book_place import ask_book_file, path_of_book
from pedigreeview.window.errands import Errands
from pedigreeview.window.keeping import BOOK_ENDING, free_place
from pedigreeview.window.labels import (
    action_button,
    column,
    dialog_foot,
    heading,
    say_in,
    sentence,
)
from pedigreeview.window.style import step
from pedigreeview.window.writing_dialog import WritingDialog

if TYPE_CHECKING:
    from pedigreeview.window.desk import Desk

__all__ = ["SaveCopy", "copy_of_file"]

Writer = Callable[[Path, Callable[[Path], None], Callable[[Fault], None], bool], None]
"""Writes to a path and says when it is done or why not; the last: over a file of that name."""


class SaveCopy(WritingDialog):
    """Asks where the copy goes; `saved` carries its path."""

    def __init__(
        self,
        desk: Desk | None,
        path: Path,
        parent: QWidget | None = None,
        *,
        go_on: bool = False,
        write: Writer | None = None,
    ) -> None:
        """Ask for a copy.

        Parameters
        ----------
        desk : where the book lies open; None with `write`, for a file that is not open
        path : the book
        go_on : whether to propose to go on in the copy
        """
        super().__init__(parent)
        self.setWindowTitle(self.tr("Save a copy"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._write = write
        self._desk = desk
        self._over: str = ""
        s = step()
        layout = column(2 * s, 3 * s)
        self.setLayout(layout)
        layout.addWidget(heading(self.tr("Save a copy"), 2))
        text = self.tr("The copy holds everything: records, photos, and what can be undone.")
        layout.addWidget(sentence(text, "soft"))
        row = QHBoxLayout()
        row.setSpacing(s)
        folder = path.parent if path.parent.is_dir() else Path.home()
        ending = BOOK_ENDING if desk is not None or not path.suffix else path.suffix
        stem = self.tr("{} copy").format(path.stem)
        proposed = free_place(folder, stem)
        self.file = QLineEdit(str(proposed.with_suffix(ending)))
        self.file.setAccessibleName(self.tr("Where to write"))
        row.addWidget(self.file, 1)
        row.addWidget(action_button(self.tr("Browse …"), self._browse))
        layout.addLayout(row)
        self.go_on = QCheckBox(self.tr("&Go on in the copy"))
        self.go_on.setChecked(go_on)
        layout.addWidget(self.go_on)
        self.message = sentence("", "fault")
        self.message.hide()
        layout.addWidget(self.message)
        layout.addStretch(1)
        self.save_button = action_button(self.tr("Save the copy"), self.save, main=True)
        layout.addLayout(dialog_foot(self, self.save_button))
        self.resize(76 * s, layout.heightForWidth(76 * s) + 4 * s)
        self.file.setFocus()
        self.file.selectAll()

    def _browse(self) -> None:
        ask_book_file(self, self.tr("Where to write"), self.file, self._chose)

    def _chose(self, text: str) -> None:
        # The file dialog has asked already whether a file of that name may go.
        self._over = text
        self.file.setText(text)

    def save(self) -> None:
        """Write off the window's thread."""
        text = self.file.text().strip()
        path = path_of_book(text)
        self.save_button.setEnabled(False)
        self._say(self.tr("Writing …"), "soft")
        over = bool(self._over) and self._over == text
        if self._write is not None:
            self._write(path, self._done, self._failed, over)
        elif self._desk is not None:
            self._desk.save_copy(path, self._done, self._failed, over=over)

    def _failed(self, fault: Fault) -> None:
        super()._failed(fault)
        self._say(fault.sentence(), "fault")

    def _say(self, text: str, role: str) -> None:
        say_in(self.message, text, role)
        self.message.show()
        layout = self.layout()
        if layout is not None:
            layout.activate()
            self.resize(self.width(), max(self.height(), layout.heightForWidth(self.width())))


def copy_of_file(errands: Errands, path: Path, parent: QWidget | None = None) -> SaveCopy:
    """The dialog for a file that is not open: it is copied byte by byte."""

    def write(
        to: Path, done: Callable[[Path], None], failed: Callable[[Fault], None], over: bool
    ) -> None:
        def work() -> Path:
            import shutil

            from pedigreeview.book.making_files import written_beside

            with written_beside(to, replace=over) as beside:
                shutil.copyfile(path, beside)
            return to

        errands.ask("save", work, done, failed)

    return SaveCopy(None, path, parent, go_on=True, write=write)
