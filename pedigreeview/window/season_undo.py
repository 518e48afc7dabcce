"""A line that says what was just recorded, with a button to take it back."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QFrame, QHBoxLayout

from pedigreeview.window.desk import Desk
from pedigreeview.window.labels import action_button, sentence
from pedigreeview.window.style import step

__all__ = ["UndoLine"]


class UndoLine(QFrame):
    """Hidden until something was recorded here; gone as soon as anything else is."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.setObjectName("strip")
        self._desk = desk
        self._words = ""
        s = step()
        row = QHBoxLayout(self)
        row.setContentsMargins(s, s // 2, s, s // 2)
        row.setSpacing(s)
        self.text = sentence("")
        row.addWidget(self.text, 1)
        self.next = action_button("", self._go_on)
        row.addWidget(self.next)
        self.undo = action_button(self.tr("Undo"), self._undo)
        row.addWidget(self.undo)
        self._act: Callable[[], None] | None = None
        desk.undo_changed.connect(self._fit)
        self.hide()

    def show_done(
        self, text: str, words: str, next_text: str = "", act: Callable[[], None] | None = None
    ) -> None:
        """Say what was recorded.

        words : the words of the edit, by which it is known as long as it is the last one
        next_text, act : what one does next, as a button
        """
        self._words, self._act = words, act
        self.text.setText(text)
        self.undo.show()
        self.next.setText(next_text)
        self.next.setVisible(act is not None)
        self.show()

    def show_fault(self, text: str) -> None:
        """Say why something was not recorded."""
        self._words = ""
        self.text.setText(text)
        self.undo.hide()
        self.next.hide()
        self.show()

    def _fit(self) -> None:
        if self._words and self._desk.undo_words != self._words:
            self.hide()

    def _undo(self) -> None:
        self._desk.undo()

    def _go_on(self) -> None:
        if self._act is not None:
            self._act()
