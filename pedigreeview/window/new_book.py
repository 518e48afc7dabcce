"""Start an empty book: its name, its crop, and where it is kept."""

from __future__ import annotations

import re
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

from pedigreeview.book.book import Book, BookSettings
from pedigreeview.book.crops import crops
from pedigreeview.window.errands import Errands
from pedigreeview.window.keeping import BOOK_ENDING, free_place
from pedigreeview.window.labels import action_button, column, heading, sentence
from pedigreeview.window.style import step
from pedigreeview.window.writing_dialog import WritingDialog

__all__ = ["NewBook"]


class NewBook(WritingDialog):
    """The dialog; `saved` carries the path of the book that was made."""

    def __init__(self, errands: Errands, folder: Path, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.made = self.saved
        self.setWindowTitle(self.tr("New book"))
        self._errands, self._folder = errands, folder
        s = step()
        layout = column(2 * s, 3 * s)
        self.setLayout(layout)
        layout.addWidget(heading(self.tr("New book"), 2))
        text = self.tr(
            "One file holds your varieties, crosses, seed and plants. Everything is saved as you "
            "write it."
        )
        layout.addWidget(sentence(text, "soft"))
        form = QFormLayout()
        form.setSpacing(s)
        self.name = QLineEdit(self.tr("My crosses"))
        self.name.selectAll()
        form.addRow(self.tr("&Name"), self.name)
        self.crop = QComboBox()
        self.crop.setEditable(True)
        self.crop.addItem("")
        self.crop.addItems([crop.name for crop in crops()])
        line = self.crop.lineEdit()
        assert line is not None
        line.setPlaceholderText(self.tr("crop, or nothing for several"))
        form.addRow(self.tr("&Crop"), self.crop)
        place = QHBoxLayout()
        place.setSpacing(s)
        self.file = QLineEdit()
        place.addWidget(self.file, 1)
        place.addWidget(action_button(self.tr("Browse …"), self._browse))
        kept_in = QLabel(self.tr("&Kept in"))
        # A label before a row of widgets has no buddy of its own, and would show its &.
        kept_in.setBuddy(self.file)
        form.addRow(kept_in, place)
        layout.addLayout(form)
        self.message = sentence("", "soft")
        layout.addWidget(self.message)
        layout.addStretch(1)
        buttons = QHBoxLayout()
        buttons.addWidget(action_button(self.tr("Cancel"), self.reject))
        buttons.addStretch(1)
        self.save_button = action_button(self.tr("Start the book"), self.save, main=True)
        self.save_button.setDefault(True)
        buttons.addWidget(self.save_button)
        layout.addLayout(buttons)
        self._own_place = False
        self.file.textEdited.connect(self._typed_place)
        self.name.textChanged.connect(self._propose)
        self._propose()
        self.resize(76 * s, self.sizeHint().height())
        self.finished.connect(self._leave)

    def _typed_place(self) -> None:
        self._own_place = True

    def _propose(self) -> None:
        if not self._own_place:
            stem = re.sub(r'[\\/:*?"<>|\x00-\x1f]+', " ", self.name.text()).strip(" .")
            self.file.setText(str(free_place(self._folder, stem or self.tr("My crosses"))))

    def _browse(self) -> None:
        dialog = QFileDialog(self, self.tr("Where to keep the book"), self.file.text())
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        dialog.setDefaultSuffix(BOOK_ENDING[1:])
        dialog.selectFile(self.file.text())
        dialog.fileSelected.connect(self._chose)
        dialog.open()

    def _chose(self, text: str) -> None:
        self._own_place = True
        self.file.setText(text)

    def save(self) -> None:
        """Make the file off the window's thread."""
        path = Path(self.file.text().strip()).expanduser()
        if path.suffix.lower() != BOOK_ENDING:
            path = path.with_name(path.name + BOOK_ENDING)
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
