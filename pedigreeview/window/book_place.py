"""Name, crop and file of a book that is to be made: the file follows the name until it is typed."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QComboBox,
    QFileDialog,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QWidget,
)

from pedigreeview.book.crops import crops
from pedigreeview.window.keeping import BOOK_ENDING, free_place
from pedigreeview.window.labels import action_button
from pedigreeview.window.style import step

__all__ = ["BookPlace", "ask_book_file", "path_of_book"]


def ask_book_file(
    parent: QWidget, title: str, field: QLineEdit, chosen: Callable[[str], object]
) -> None:
    """Open the system's dialog for a book to write; the field holds the one to propose."""
    dialog = QFileDialog(parent, title, field.text())
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
    dialog.setDefaultSuffix(BOOK_ENDING[1:])
    dialog.selectFile(field.text())
    dialog.fileSelected.connect(chosen)
    dialog.open()


def path_of_book(text: str) -> Path:
    """The file that was typed, with the ending of a book."""
    path = Path(text.strip()).expanduser()
    if path.suffix.lower() != BOOK_ENDING:
        path = path.with_name(path.name + BOOK_ENDING)
    return path


class BookPlace(QWidget):
    """The three rows; a subclass may put rows of its own before the file (`add_row`)."""

    def __init__(self, folder: Path, name_words: str, crop_words: str) -> None:
        super().__init__()
        self._folder, self._own = folder, False
        s = step()
        self._form = QFormLayout(self)
        self._form.setContentsMargins(0, 0, 0, 0)
        self._form.setSpacing(s)
        self.name = QLineEdit()
        self.name.textChanged.connect(self._propose)
        self._form.addRow(name_words, self.name)
        self.crop = QComboBox()
        self.crop.setEditable(True)
        self.crop.addItem("")
        self.crop.addItems([crop.name for crop in crops()])
        line = self.crop.lineEdit()
        assert line is not None
        line.setPlaceholderText(self.tr("crop, or nothing for several"))
        self._form.addRow(crop_words, self.crop)
        place = QHBoxLayout()
        place.setSpacing(s)
        self.file = QLineEdit()
        self.file.textEdited.connect(self._typed)
        place.addWidget(self.file, 1)
        place.addWidget(action_button(self.tr("Browse …"), self._browse))
        kept_in = QLabel(self.tr("&Kept in"))
        # A label before a row of widgets has no buddy of its own, and would show its &.
        kept_in.setBuddy(self.file)
        self._form.addRow(kept_in, place)

    def add_row(self, words: str, widget: QWidget) -> None:
        """Put a row before the one of the file."""
        self._form.insertRow(self._form.rowCount() - 1, words, widget)

    def propose(self, stem: str) -> None:
        """Propose a name, unless one was typed."""
        if not self.name.text():
            self.name.setText(stem)

    def _typed(self) -> None:
        self._own = True

    def _propose(self) -> None:
        if not self._own:
            stem = re.sub(r'[\\/:*?"<>|\x00-\x1f]+', " ", self.name.text()).strip(" .")
            self.file.setText(str(free_place(self._folder, stem or self.tr("My crosses"))))

    def _browse(self) -> None:
        ask_book_file(self, self.tr("Where to keep the book"), self.file, self._chose)

    def _chose(self, text: str) -> None:
        self._own = True
        self.file.setText(text)

    def path(self) -> Path:
        """The file, with the ending of a book."""
        return path_of_book(self.file.text())
