"""What the dialogs that write a file have in common: a button, a message, an answer that comes."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QDialog, QLabel, QPushButton

from pedigreeview.book.faults import Fault

__all__ = ["WritingDialog"]


class WritingDialog(QDialog):
    """A dialog that writes off the window's thread and closes when the file stands."""

    saved = Signal(object)
    """The path that was written."""
    save_button: QPushButton
    message: QLabel

    def _done(self, path: Path) -> None:
        self.saved.emit(path)
        self.accept()

    def _failed(self, fault: Fault) -> None:
        self.save_button.setEnabled(True)
        self.message.setText(fault.sentence())
