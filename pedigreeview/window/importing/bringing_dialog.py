"""What the dialogs share in which records are brought in: the work under way, and what is said."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QDialog,
    QHBoxLayout,
    QProgressBar,
    QPushButton,
    QStackedWidget,
    QWidget,
)

from pedigreeview.book.faults import Fault
from pedigreeview.window.importing.halt import Halt
from pedigreeview.window.labels import action_button, sentence
from pedigreeview.window.style import step

if TYPE_CHECKING:
    from pedigreeview.window.errands import Errands

__all__ = ["BringingDialog"]

_LINES = 6
"""Lines of a fault that are said."""


class BringingDialog(QDialog):
    """A dialog that works off the window's thread, says so at its foot, and can be stopped."""

    def __init__(self, errands: Errands, parent: QWidget | None) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._errands = errands
        self._halt = Halt()
        self._gone = False
        """Whether the dialog was closed, with work still under way."""
        self.busy = False
        self.stack = QStackedWidget()
        self._waiting = QWidget()
        """Shown until there is something to show."""
        self.message = sentence("", "fault")
        self.message.hide()
        self.cancel_button = action_button(self.tr("Cancel"), self.reject)
        self.bar = QProgressBar()
        self.bar.setRange(0, 0)
        self.bar.setTextVisible(False)
        self.bar.setFixedWidth(16 * step())
        self.doing = sentence("", "soft")

    def _foot(self, *buttons: QPushButton) -> QHBoxLayout:
        """Cancel, what is under way, and buttons; Enter presses the last one."""
        row = QHBoxLayout()
        row.setSpacing(step())
        row.addWidget(self.cancel_button)
        row.addWidget(self.bar)
        row.addWidget(self.doing, 1)
        for button in buttons:
            row.addWidget(button)
        buttons[-1].setDefault(True)
        return row

    def _set_busy(self, words: str) -> None:
        """Say what is under way; '' for nothing."""
        self.busy = bool(words)
        self.doing.setText(words)
        self.bar.setVisible(self.busy)
        if self.busy:
            self._say("")
        self.cancel_button.setText(self.tr("Stop") if self.busy else self.tr("Cancel"))

    def _say(self, text: str) -> None:
        self.message.setText(text)
        self.message.setVisible(bool(text))

    def _say_lines(self, fault: Fault) -> None:
        """Say a fault, of a long one the first lines."""
        lines = fault.lines()
        more = self.tr(" … and {} more").format(len(lines) - _LINES) if len(lines) > _LINES else ""
        self._say("\n".join(lines[:_LINES]) + more)
