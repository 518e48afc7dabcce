"""Fields that the dialogs for pictures share: a choice, a margin, a caption, a file to write."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import QCoreApplication, QEvent, Qt
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QFileDialog,
    QLineEdit,
    QPlainTextEdit,
    QSizePolicy,
    QSpinBox,
    QWidget,
)

from pedigreeview.drawing.margins import (
    LEAST_ON_PAPER_MM,
    MOST_MM,
    ON_PAPER_MM,
    ROUND_A_PICTURE_MM,
)
from pedigreeview.window.labels import set_apart
from pedigreeview.window.style import step

__all__ = ["CaptionField", "MarginField", "ask_file", "choice"]

_LINES = 3
"""Lines of a caption that are in sight."""


def _tr(text: str) -> str:
    return QCoreApplication.translate("PictureFields", text)


def choice(name: str, entries: Sequence[str]) -> QComboBox:
    """A list to choose from that does not widen its form."""
    combo = QComboBox()
    combo.addItems(list(entries))
    combo.setAccessibleName(name)
    combo.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
    combo.setMinimumContentsLength(8)
    return combo


class MarginField(QSpinBox):
    """The blank on all sides, in mm; the usual one until the person chooses another."""

    def __init__(self) -> None:
        super().__init__()
        set_apart(self)
        self.setSuffix(_tr(" mm"))
        self.setAccessibleName(_tr("Margins in millimetres"))
        self._chosen = False
        self.set_for(paper=True)
        self.valueChanged.connect(self._was_chosen)

    def set_for(self, *, paper: bool) -> None:
        """Take the bounds and the usual margin of paper, or of a picture in a file."""
        self.blockSignals(True)
        self.setRange(round(LEAST_ON_PAPER_MM) if paper else 0, round(MOST_MM))
        if not self._chosen:
            self.setValue(round(ON_PAPER_MM if paper else ROUND_A_PICTURE_MM))
        self.blockSignals(False)
        self.setToolTip(
            _tr("From {} to {} mm, blank on all four sides.").format(self.minimum(), self.maximum())
        )

    def _was_chosen(self) -> None:
        self._chosen = True


class CaptionField(QPlainTextEdit):
    """A few lines in the person's own words."""

    def __init__(self) -> None:
        super().__init__()
        self.setTabChangesFocus(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(_tr("Caption"))
        self.setPlaceholderText(_tr("In your own words, below the title"))

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._keep_lines()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self._keep_lines()

    def _keep_lines(self) -> None:
        # A style sheet has a say in heights when it is applied, so this comes after it.
        inside = round(2 * self.document().documentMargin()) + 2 * step()
        self.setFixedHeight(_LINES * self.fontMetrics().lineSpacing() + inside)

    def text(self) -> str:
        """What was written, its lines kept."""
        return self.toPlainText()


def ask_file(
    parent: QWidget, title: str, field: QLineEdit, suffix: str, chosen: Callable[[str], object]
) -> QDialog:
    """Open the system's dialog for a file to write; the field holds the one to propose."""
    dialog = QFileDialog(parent, title, field.text(), f"{suffix.upper()} (*.{suffix})")
    dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.setDefaultSuffix(suffix)
    dialog.selectFile(field.text())
    dialog.fileSelected.connect(chosen)
    dialog.open()
    return dialog
