"""What every step on the way into a book has: a name, whether it is needed, what it asks."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from pedigreeview.window.importing.source import Draft

__all__ = ["Step"]


class Step(QWidget):
    """One step; it changes the draft's plan and says so.

    What it asks with is made when it is first shown, so that no step waits for those behind it.
    """

    changed = Signal()
    """The plan is another one now."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._made = False

    def _make(self) -> None:
        """Make what the step asks with."""

    def name(self) -> str:
        """The step in a word or two, for the row on top."""
        return ""

    def wanted(self, draft: Draft) -> bool:
        """Whether there is anything to ask in this step."""
        return True

    def show_draft(self, draft: Draft) -> None:
        """Show what is settled so far."""
        if not self._made:
            self._made = True
            self._make()

    def first_field(self) -> QWidget:
        """The field that the keyboard starts in."""
        return self
