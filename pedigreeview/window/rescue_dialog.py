"""What can be read of a damaged book goes into a new one; what was lost is said line by line."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import (
    QDialog,
    QFileDialog,
    QHBoxLayout,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QWidget,
)

from pedigreeview.book.faults import Fault
from pedigreeview.book.rescue import Rescued, rescue
from pedigreeview.window.errands import Errands
from pedigreeview.window.keeping import BOOK_ENDING, free_place
from pedigreeview.window.labels import action_button, column, heading, sentence
from pedigreeview.window.style import step

__all__ = ["RescueDialog"]


class RescueDialog(QDialog):
    """Asks where the new book goes, rescues, and shows the report."""

    open_wanted = Signal(object)
    """The new book, to be opened."""

    def __init__(self, path: Path, errands: Errands, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Rescue"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._path, self._errands = path, errands
        self._made: Path | None = None
        s = step()
        layout = column(2 * s, 3 * s)
        self.setLayout(layout)
        layout.addWidget(heading(self.tr("Rescue what can be read of {}").format(path.name), 2))
        text = self.tr(
            "The damaged file stays as it is. Every record that can be read goes into a new book; "
            "what cannot is listed here."
        )
        layout.addWidget(sentence(text, "soft"))
        row = QHBoxLayout()
        row.setSpacing(s)
        self.file = QLineEdit(str(free_place(path.parent, self.tr("{} rescued").format(path.stem))))
        self.file.setAccessibleName(self.tr("The new book"))
        row.addWidget(self.file, 1)
        self.browse_button = action_button(self.tr("Browse …"), self._browse)
        row.addWidget(self.browse_button)
        layout.addLayout(row)
        self.message = sentence("")
        self.message.hide()
        layout.addWidget(self.message)
        self.report = QListWidget()
        self.report.setAccessibleName(self.tr("What came over and what was lost"))
        self.report.setWordWrap(True)
        self.report.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.report.hide()
        layout.addWidget(self.report, 1)
        layout.addStretch()
        buttons = QHBoxLayout()
        buttons.setSpacing(s)
        self.copy_button = action_button(self.tr("Copy all"), self.copy)
        self.copy_button.hide()
        buttons.addWidget(self.copy_button)
        buttons.addStretch(1)
        buttons.addWidget(action_button(self.tr("Close"), self.reject))
        self.go_button = action_button(self.tr("&Rescue"), self.go, main=True)
        self.go_button.setDefault(True)
        buttons.addWidget(self.go_button)
        layout.addLayout(buttons)
        self.resize(78 * s, 56 * s)
        self.finished.connect(lambda _: errands.drop("save"))

    def _browse(self) -> None:
        dialog = QFileDialog(self, self.tr("The new book"), self.file.text())
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        dialog.setDefaultSuffix(BOOK_ENDING[1:])
        dialog.selectFile(self.file.text())
        dialog.fileSelected.connect(self.file.setText)
        dialog.open()

    def go(self) -> None:
        """Rescue; or open the new book once it stands."""
        if self._made is not None:
            self.accept()
            self.open_wanted.emit(self._made)
            return
        source, into = self._path, Path(self.file.text().strip()).expanduser()
        if into.suffix.lower() != BOOK_ENDING:
            into = into.with_name(into.name + BOOK_ENDING)
        self.go_button.setEnabled(False)
        self._say(self.tr("Reading …"))
        errands = self._errands
        errands.ask(
            "save", lambda: rescue(source, into, tick=errands.tick), self._rescued, self._failed
        )

    def _rescued(self, found: Rescued) -> None:
        self._made = found.path
        came, *lost = found.lines()
        self._say(self.tr("The new book is made: {}").format(found.path.name))
        self.report.clear()
        for line in (came, *(lost or [self.tr("Nothing was lost.")])):
            QListWidgetItem(line, self.report)
        self.report.show()
        self.copy_button.show()
        self.file.setReadOnly(True)
        self.browse_button.setEnabled(False)
        self.go_button.setText(self.tr("&Open the new book"))
        self.go_button.setEnabled(True)
        self.go_button.setFocus()

    def copy(self) -> None:
        """Put the report on the clipboard."""
        lines = [self.report.item(row).text() for row in range(self.report.count())]
        QGuiApplication.clipboard().setText("\n".join([self.message.text(), *lines]))

    def _failed(self, fault: Fault) -> None:
        self.go_button.setEnabled(True)
        self._say(fault.sentence())

    def _say(self, text: str) -> None:
        self.message.setText(text)
        self.message.show()
