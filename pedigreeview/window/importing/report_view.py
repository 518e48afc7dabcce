"""The report of what came in, was guessed and was left out, to read, copy and save."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QFileDialog, QHBoxLayout, QPlainTextEdit, QWidget

from pedigreeview.book.faults import Fault
from pedigreeview.window.errands import Errands
from pedigreeview.window.labels import action_button, column, heading, sentence
from pedigreeview.window.style import step

__all__ = ["ReportView"]


class ReportView(QWidget):
    """The report with its buttons."""

    def __init__(self, errands: Errands, folder: Path, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._errands, self._folder = errands, folder
        s = step()
        layout = column(s)
        self.setLayout(layout)
        self.title = heading("", 3)
        layout.addWidget(self.title)
        self.text = QPlainTextEdit()
        self.text.setReadOnly(True)
        self.text.setTabChangesFocus(True)
        self.text.setAccessibleName(self.tr("Report"))
        layout.addWidget(self.text, 1)
        row = QHBoxLayout()
        row.setSpacing(s)
        self.copy_button = action_button(self.tr("&Copy the report"), self.copy)
        self.save_button = action_button(self.tr("&Save the report …"), self._browse)
        row.addWidget(self.copy_button)
        row.addWidget(self.save_button)
        self.said = sentence("", "soft")
        row.addWidget(self.said, 1)
        layout.addLayout(row)

    def show_report(self, title: str, lines: Sequence[str]) -> None:
        """Show a report."""
        self.title.setText(title)
        self.text.setPlainText("\n".join(lines) or self.tr("Nothing new came in."))

    def whole(self) -> str:
        """The report as text, with its title."""
        return f"{self.title.text()}\n\n{self.text.toPlainText()}\n"

    def copy(self) -> None:
        """Put the report on the clipboard."""
        QGuiApplication.clipboard().setText(self.whole())
        self.said.setText(self.tr("The report is on the clipboard."))

    def _browse(self) -> None:
        dialog = QFileDialog(self, self.tr("Save the report"), str(self._folder))
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        dialog.setNameFilter(self.tr("Text (*.txt)"))
        dialog.setDefaultSuffix("txt")
        dialog.fileSelected.connect(lambda text: self.save(Path(text)))
        dialog.open()

    def save(self, path: Path) -> None:
        """Write the report off the window's thread."""
        data = self.whole().encode("utf-8", "replace")

        def work() -> Path:
            from pedigreeview.exchange.writing import replace_file

            with replace_file(path) as beside:
                beside.write_bytes(data)
            return path

        def failed(fault: Fault) -> None:
            self.said.setText(fault.sentence())

        def done(to: Path) -> None:
            self.said.setText(self.tr("Saved as {}").format(to.name))

        self._errands.ask("save:report", work, done, failed)
