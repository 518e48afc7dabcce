"""Start an empty book: its name, its crop, and where it is kept."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtWidgets import QWidget

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.window.book_place import BookPlace
from pedigreeview.window.errands import Errands
from pedigreeview.window.labels import action_button, column, dialog_foot, heading, sentence
from pedigreeview.window.style import step
from pedigreeview.window.writing_dialog import WritingDialog

__all__ = ["NewBook"]


class NewBook(WritingDialog):
    """The dialog; `saved` carries the path of the book that was made."""

    def __init__(self, errands: Errands, folder: Path, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.made = self.saved
        self.setWindowTitle(self.tr("New book"))
        self._errands = errands
        s = step()
        layout = column(2 * s, 3 * s)
        self.setLayout(layout)
        layout.addWidget(heading(self.tr("New book"), 2))
        text = self.tr(
            "One file holds your varieties, crosses, seed and plants. Everything is saved as you "
            "write it."
        )
        layout.addWidget(sentence(text, "soft"))
        self.place = BookPlace(folder, self.tr("&Name"), self.tr("&Crop"))
        self.name, self.crop, self.file = self.place.name, self.place.crop, self.place.file
        self.place.propose(self.tr("My crosses"))
        self.name.selectAll()
        layout.addWidget(self.place)
        self.message = sentence("", "soft")
        layout.addWidget(self.message)
        layout.addStretch(1)
        self.save_button = action_button(self.tr("Start the book"), self.save, main=True)
        layout.addLayout(dialog_foot(self, self.save_button))
        self.resize(76 * s, self.sizeHint().height())
        self.finished.connect(self._leave)

    def save(self) -> None:
        """Make the file off the window's thread."""
        path = self.place.path()
        settings = BookSettings(name=self.name.text().strip(), crop=self.crop.currentText().strip())
        self.save_button.setEnabled(False)
        self.message.setText(self.tr("Writing …"))

        def work() -> Path:
            from pedigreeview.book.book_file import BookFile

            BookFile.create(path, Book(settings=settings)).close()
            return path

        self._errands.ask("save", work, self._done, self._failed)

    def _leave(self) -> None:
        self._errands.drop("save")
        self.deleteLater()
