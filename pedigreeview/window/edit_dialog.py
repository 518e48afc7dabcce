"""What the dialogs have in common that ask for one edit and write it: a refusal, and the end."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QDialog, QLabel, QPushButton, QScrollArea

from pedigreeview.book.edits import Edit
from pedigreeview.book.faults import Fault
from pedigreeview.window.forms.fields import Field

if TYPE_CHECKING:
    from pedigreeview.window.desk import Desk

__all__ = ["EditDialog", "Make", "say_refused"]

Make = Callable[[Edit], object]


def say_refused(fault: Fault, field: Field | None, area: QScrollArea, message: QLabel) -> None:
    """Say why something is refused: at its field, which is brought into sight, else below all."""
    text = f"{fault.what} {fault.todo}".strip()
    if field is not None:
        field.say(text, wrong=True)
        area.ensureWidgetVisible(field)
        field.setFocus()
    else:
        message.setText(text)
        message.show()


class EditDialog(QDialog):
    """A dialog that writes one edit and closes; what is refused is said at its field."""

    _desk: Desk
    area: QScrollArea
    """Where the fields lie."""
    message: QLabel
    go_button: QPushButton

    def entry(self) -> tuple[str, Make]:
        """The words of the edit, and what makes it.

        Raises
        ------
        Fault : something that is needed is not there
        """
        raise NotImplementedError

    def done_words(self, words: str) -> str:
        """What is said of the edit when it is written."""
        raise NotImplementedError

    def field_at(self, column: str) -> Field | None:
        """The field that a refusal by this column belongs to, if it can be typed in."""
        raise NotImplementedError

    def go(self) -> None:
        """Write what is asked for, as one edit."""
        try:
            words, make = self.entry()
        except Fault as fault:
            self._refused(fault)
            return
        self.go_button.setEnabled(False)

        def done(_: object) -> None:
            self._desk.said.emit(self.done_words(words))
            self.accept()

        self._desk.record(words, make, done, self._refused)

    def _refused(self, fault: Fault) -> None:
        self.go_button.setEnabled(True)
        say_refused(fault, self.field_at(fault.where.column), self.area, self.message)
