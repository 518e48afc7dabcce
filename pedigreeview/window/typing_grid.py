"""The grid that cells are typed into as in a spreadsheet, or pasted into from one."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QAbstractItemModel, Qt, Signal
from PySide6.QtGui import QGuiApplication, QKeyEvent, QKeySequence
from PySide6.QtWidgets import QAbstractItemView, QTableView, QWidget

__all__ = ["TypingGrid"]

_FIRST_ROWS = 60
"""Rows that say how wide a column is where none is in sight."""


class TypingGrid(QTableView):
    """A grid in which Enter goes down and Tab goes across; any key begins to type."""

    pasted = Signal(str)
    """Cells from a spreadsheet are to go in from the current cell on."""
    emptied = Signal()
    """The marked cells are to be emptied."""

    def __init__(self, model: QAbstractItemModel, name: str) -> None:
        super().__init__()
        self.setModel(model)
        self.setAccessibleName(name)
        self.setSelectionMode(QAbstractItemView.SelectionMode.ContiguousSelection)
        self.setEditTriggers(
            QAbstractItemView.EditTrigger.DoubleClicked
            | QAbstractItemView.EditTrigger.EditKeyPressed
            | QAbstractItemView.EditTrigger.AnyKeyPressed
        )

    def sizeHintForColumn(self, column: int) -> int:
        if self.isVisible():
            return super().sizeHintForColumn(column)
        # Out of sight Qt would measure every row, at each change of the look anew.
        header = self.horizontalHeader()
        precision = header.resizeContentsPrecision()
        header.setResizeContentsPrecision(_FIRST_ROWS)
        try:
            return super().sizeHintForColumn(column)
        finally:
            header.setResizeContentsPrecision(precision)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        plain = event.modifiers() in (
            Qt.KeyboardModifier.NoModifier,
            Qt.KeyboardModifier.KeypadModifier,
        )
        if event.matches(QKeySequence.StandardKey.Paste):
            self.pasted.emit(QGuiApplication.clipboard().text())
        elif event.matches(QKeySequence.StandardKey.Copy):
            self._copy()
        elif event.key() == Qt.Key.Key_Delete and plain:
            self.emptied.emit()
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and plain:
            # Enter in an editor comes here as well; the end of the editor then goes down.
            if self.state() != QAbstractItemView.State.EditingState:
                self.go_down()
        else:
            super().keyPressEvent(event)

    def go_down(self) -> None:
        """The cell below."""
        at, model = self.currentIndex(), self.model()
        below = model.index(at.row() + 1, at.column())
        if below.isValid():
            self.setCurrentIndex(below)

    def closeEditor(self, editor: QWidget, hint: Any) -> None:
        super().closeEditor(editor, hint)
        delegate_hint = type(hint)
        if hint == delegate_hint.SubmitModelCache:
            self.go_down()

    def _copy(self) -> None:
        places = sorted((one.row(), one.column()) for one in self.selectedIndexes())
        if not places:
            return
        rows = range(places[0][0], places[-1][0] + 1)
        across = range(min(at for _, at in places), max(at for _, at in places) + 1)
        lines = [
            "\t".join(str(self.model().index(row, at).data() or "") for at in across)
            for row in rows
        ]
        QGuiApplication.clipboard().setText("\n".join(lines))
