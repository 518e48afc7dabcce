"""Save the book as tables: a folder that carries everything, or one plant table."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog, QHBoxLayout, QLineEdit, QRadioButton, QWidget

from pedigreeview.book.book import Book
from pedigreeview.window.errands import Errands
from pedigreeview.window.labels import action_button, column, heading, sentence
from pedigreeview.window.style import step
from pedigreeview.window.writing_dialog import WritingDialog

__all__ = ["SaveTables"]


class SaveTables(WritingDialog):
    """The dialog; it says first what a plant table cannot carry."""

    def __init__(
        self, book: Book, errands: Errands, opened: Path, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        from pedigreeview.exchange import data_package, plant_table

        self.setWindowTitle(self.tr("Save as tables"))
        self._book, self._errands, self._opened = book, errands, opened
        s = step()
        layout = column(s, 3 * s)
        self.setLayout(layout)
        layout.addWidget(heading(self.tr("Save as tables"), 2))
        self.folder = QRadioButton(self.tr("A folder of tables, with everything that is recorded"))
        self.table = QRadioButton(self.tr("One table, a row for each plant, for a spreadsheet"))
        layout.addWidget(self.folder)
        layout.addWidget(self.table)
        self._lost = {True: data_package.lost(book), False: plant_table.lost(book)}
        self.lost = sentence("")
        layout.addWidget(self.lost)
        row = QHBoxLayout()
        row.setSpacing(s)
        self.file = QLineEdit()
        self.file.setAccessibleName(self.tr("Where to write"))
        row.addWidget(self.file, 1)
        row.addWidget(action_button(self.tr("Browse …"), self._browse))
        layout.addLayout(row)
        self.message = sentence("", "soft")
        layout.addWidget(self.message)
        layout.addStretch(1)
        buttons = QHBoxLayout()
        buttons.addWidget(action_button(self.tr("Cancel"), self.reject))
        buttons.addStretch(1)
        self.save_button = action_button(self.tr("Save"), self.save, main=True)
        self.save_button.setDefault(True)
        buttons.addWidget(self.save_button)
        layout.addLayout(buttons)
        self.folder.toggled.connect(self._kind_changed)
        self.folder.setChecked(True)
        self._fit()
        self.finished.connect(self._leave)

    def _kind_changed(self) -> None:
        folder = self.folder.isChecked()
        lost = self._lost[folder]
        said = self.tr("The folder cannot carry:") if folder else self.tr("The table cannot carry:")
        whole = "" if folder else self.tr("A table carries all of this book.")
        self.lost.setText("\n".join([said, *lost]) if lost else whole)
        self.lost.setVisible(bool(self.lost.text()))
        self._fit()
        stem = self._opened.parent / f"{self._opened.stem}-copy"
        self.file.setText(str(stem if folder else Path(f"{stem}.csv")))

    def _fit(self) -> None:
        """As tall as what it says."""
        layout = self.layout()
        if layout is not None:
            width = max(76 * step(), self.width() if self.isVisible() else 0)
            self.resize(width, layout.heightForWidth(width))

    def _browse(self) -> None:
        dialog = QFileDialog(self, self.tr("Where to write"), self.file.text())
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        if self.table.isChecked():
            dialog.setNameFilters(["CSV (*.csv)", "TSV (*.tsv)"])
            dialog.setDefaultSuffix("csv")
        dialog.selectFile(self.file.text())
        dialog.fileSelected.connect(self.file.setText)
        dialog.open()

    def save(self) -> None:
        """Write off the window's thread."""
        path = Path(self.file.text().strip()).expanduser()
        book, folder = self._book, self.folder.isChecked()
        self.save_button.setEnabled(False)
        self.message.setText(self.tr("Writing …"))

        def work() -> Path:
            from pedigreeview.exchange import data_package, pedbook, plant_table

            # The photos of a book's own file are laid out beside its tables first.
            with pedbook.unpacked(book) as ready:
                (data_package if folder else plant_table).write(ready, path)
            return path

        self._errands.ask("save", work, self._done, self._failed)

    def _leave(self) -> None:
        self._errands.drop("save")
        self.deleteLater()
