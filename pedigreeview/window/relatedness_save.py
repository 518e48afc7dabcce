"""Save what the Relatedness page shows: the table as CSV, XLSX or NPZ, the map as a picture."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Literal

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QFormLayout, QHBoxLayout, QLineEdit, QWidget

from pedigreeview.window.errands import Errands
from pedigreeview.window.labels import action_button, column, dialog_foot, heading, sentence
from pedigreeview.window.picture_fields import CaptionField, MarginField, ask_file
from pedigreeview.window.relatedness_choice import chooser
from pedigreeview.window.style import step
from pedigreeview.window.writing_dialog import WritingDialog

__all__ = ["KINDS", "SaveRelatedness"]

KINDS = ("csv", "xlsx", "npz", "svg", "pdf", "png")
Kind = Literal["csv", "xlsx", "npz", "svg", "pdf", "png"]
_PICTURES = ("svg", "pdf", "png")


class SaveRelatedness(WritingDialog):
    """Asks for the kind and the place, and writes off the window's thread."""

    def __init__(
        self,
        write: Callable[..., None],
        words: str,
        errands: Errands,
        stem: Path,
        parent: QWidget | None = None,
        *,
        with_words: bool = False,
    ) -> None:
        """
        Parameters
        ----------
        write : writes a file by its ending, given its path and whether it is in grey; with words
            also the caption and the margin in mm of a picture
        words : what is saved, in words
        stem : the file to propose, without its ending
        with_words : whether a caption and margins are asked for
        """
        super().__init__(parent)
        self.setWindowTitle(self.tr("Save the relatedness"))
        self._write, self._errands = write, errands
        s = step()
        layout = self._layout = column(s, 3 * s)
        self.setLayout(layout)
        layout.addWidget(heading(self.tr("Save the relatedness"), 2))
        layout.addWidget(sentence(words, "soft"))
        self.kind: QComboBox = chooser(
            self.tr("Kind of file"),
            (
                ("csv", self.tr("CSV, a table for a spreadsheet")),
                ("xlsx", self.tr("XLSX, a table for a spreadsheet")),
                ("npz", self.tr("NPZ, an array for NumPy")),
                ("svg", self.tr("SVG, a picture that can be made larger")),
                ("pdf", self.tr("PDF, a picture for paper")),
                ("png", self.tr("PNG, a picture for messages")),
                ("grey", self.tr("PDF in grey, for a printer without colour")),
            ),
        )
        layout.addWidget(self.kind)
        row = QHBoxLayout()
        row.setSpacing(s)
        self.file = QLineEdit(f"{stem}.csv")
        self.file.setAccessibleName(self.tr("File to write"))
        row.addWidget(self.file, 1)
        row.addWidget(action_button(self.tr("Browse …"), self._browse))
        layout.addLayout(row)
        self._with_words = with_words
        self.caption, self.margin = CaptionField(), MarginField()
        self._of_pictures = QWidget()
        form = QFormLayout(self._of_pictures)
        form.setContentsMargins(0, s, 0, 0)
        form.setSpacing(s)
        form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapAllRows)
        form.setLabelAlignment(Qt.AlignmentFlag.AlignLeft)
        form.addRow(self.tr("Caption"), self.caption)
        form.addRow(self.tr("Margins"), self.margin)
        self._of_pictures.hide()
        layout.addWidget(self._of_pictures)
        self.message = sentence("", "soft")
        layout.addWidget(self.message)
        layout.addStretch(1)
        self.save_button = action_button(self.tr("Save"), self.save, main=True)
        layout.addLayout(dialog_foot(self, self.save_button))
        self.kind.currentIndexChanged.connect(self._turn)
        self.resize(76 * s, 30 * s)
        self.finished.connect(self._leave)

    def suffix(self) -> str:
        """The ending of the chosen kind."""
        kind = str(self.kind.currentData())
        return "pdf" if kind == "grey" else kind

    def _turn(self) -> None:
        path = Path(self.file.text().strip())
        known = path.suffix.lower().lstrip(".") in KINDS
        self.file.setText(
            str(path.with_suffix(f".{self.suffix()}") if known else f"{path}.{self.suffix()}")
        )
        self.margin.set_for(paper=self.suffix() == "pdf")
        self._of_pictures.setVisible(self._with_words and self.suffix() in _PICTURES)
        self._layout.activate()
        self.resize(self.size().expandedTo(self.minimumSizeHint()))

    def _browse(self) -> None:
        title = self.tr("Save the relatedness as")
        ask_file(self, title, self.file, self.suffix(), self.file.setText)

    def save(self) -> None:
        """Write the file."""
        path = Path(self.file.text().strip()).expanduser()
        grey, write = self.kind.currentData() == "grey", self._write
        words: tuple[str, float] | tuple[()] = ()
        if self._with_words:
            words = self.caption.text(), float(self.margin.value())
        self.save_button.setEnabled(False)
        self.message.setText(self.tr("Writing …"))

        def work() -> Path:
            write(path, grey, *words)
            return path

        self._errands.ask("save:relatedness", work, self._done, self._failed)

    def _leave(self) -> None:
        self._errands.drop("save:relatedness")
        self.deleteLater()
