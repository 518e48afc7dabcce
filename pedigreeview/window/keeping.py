"""From a table that is only read to a book that can be written in: one click, and where it goes."""

from __future__ import annotations

import os
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QStandardPaths, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QSizePolicy

from pedigreeview.places import demos
from pedigreeview.window.labels import action_button, plain_button, sentence
from pedigreeview.window.style import step

if TYPE_CHECKING:
    from pedigreeview.window.opening import Opened

__all__ = ["BOOK_ENDING", "KeepStrip", "free_place", "place_for_book"]

BOOK_ENDING = ".pedbook"


def free_place(folder: Path, stem: str) -> Path:
    """A book of that name in the folder, with a number behind it if the name is taken."""
    path, number = folder / f"{stem}{BOOK_ENDING}", 2
    while path.exists():
        path, number = folder / f"{stem} {number}{BOOK_ENDING}", number + 1
    return path


def place_for_book(source: Path) -> Path:
    """Where the book of a table or folder goes: beside it, else among the person's documents.

    Demos stay as they came; a folder that cannot be written in is no place either.
    """
    beside = source.parent
    if not beside.is_relative_to(demos()) and os.access(beside, os.W_OK):
        return free_place(beside, source.stem)
    where = QStandardPaths.StandardLocation.DocumentsLocation
    documents = Path(QStandardPaths.writableLocation(where) or Path.home())
    if not documents.is_dir():
        documents = Path.home()
    return free_place(documents, source.stem)


class KeepStrip(QFrame):
    """Says that a table or folder is only read, and keeps it as a book with one click."""

    wanted = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("strip")
        s = step()
        row = QHBoxLayout(self)
        row.setContentsMargins(2 * s, s // 2, s, s // 2)
        row.setSpacing(2 * s)
        self.text = sentence("")
        self.text.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        row.addWidget(self.text, 1)
        self.button = action_button(self.tr("Keep as a book"), self.wanted.emit)
        row.addWidget(self.button)
        self.put_away = plain_button("✕", self.tr("Only look, and put this line away"), self.hide)
        row.addWidget(self.put_away)
        self.hide()

    def show_for(self, opened: Opened) -> None:
        """Show the line for a table or folder; a book needs none."""
        file = opened.file
        self.button.setVisible(file is None)
        if file is None:
            text = self.tr("{} is shown for reading. To write in it, keep it as a book.")
            self.text.setText(text.format(opened.path.name))
            self.button.setToolTip(self.tr("Makes {}").format(place_for_book(opened.path)))
            self.show()
        elif file.read_only:
            self.text.setText(file.read_only_because)
            self.show()
        else:
            self.hide()
