"""What was done in the book, the newest first, and back to any place in that list."""

from __future__ import annotations

import datetime
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QAbstractItemView,
    QDialog,
    QHBoxLayout,
    QHeaderView,
    QTableWidget,
    QTableWidgetItem,
    QWidget,
)

from pedigreeview.book.undo import Done
from pedigreeview.window.backups_dialog import day_and_time
from pedigreeview.window.labels import action_button, column, heading, sentence
from pedigreeview.window.style import current, step

if TYPE_CHECKING:
    from pedigreeview.window.desk import Desk

__all__ = ["EditsList"]


class EditsList(QDialog):
    """Every step that can be undone, with its words and its time; follows the book."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("What was done"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._desk = desk
        self.steps: list[Done] = []
        s = step()
        layout = column(2 * s, 3 * s)
        self.setLayout(layout)
        layout.addWidget(heading(self.tr("What was done"), 2))
        text = self.tr(
            "Every step is kept in the book, also after it is closed. Undo takes steps back from "
            "the newest; those taken back stand in soft letters until something new is written."
        )
        layout.addWidget(sentence(text, "soft"))
        self.table = QTableWidget(0, 2)
        self.table.setAccessibleName(self.tr("Steps, the newest first"))
        self.table.setHorizontalHeaderLabels([self.tr("What"), self.tr("When")])
        self.table.verticalHeader().hide()
        self.table.setShowGrid(False)
        self.table.setTabKeyNavigation(False)
        self.table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        head = self.table.horizontalHeader()
        head.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        head.setSectionResizeMode(1, QHeaderView.ResizeMode.ResizeToContents)
        head.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft)
        self.table.itemSelectionChanged.connect(self._tell)
        layout.addWidget(self.table, 1)
        row = QHBoxLayout()
        row.setSpacing(s)
        self.redo_button = action_button(self.tr("&Make again"), desk.redo)
        row.addWidget(self.redo_button)
        row.addStretch(1)
        close = action_button(self.tr("Close"), self.reject)
        close.setAutoDefault(False)
        row.addWidget(close)
        self.undo_button = action_button(self.tr("&Undo to here"), self.undo_to, main=True)
        row.addWidget(self.undo_button)
        layout.addLayout(row)
        self.resize(80 * s, 70 * s)
        desk.undo_changed.connect(self.ask)
        self.ask()

    def ask(self) -> None:
        """Ask the book anew."""
        self._desk.ask_steps(self._come)
        self._tell()

    def _come(self, steps: list[Done]) -> None:
        held, self.steps = self.table.currentRow(), steps
        soft = current().soft
        self.table.setRowCount(len(steps))
        for row, one in enumerate(steps):
            words = one.words[:1].upper() + one.words[1:]
            if one.undone:
                words = self.tr("{} (undone)").format(words)
            when = day_and_time(datetime.datetime.fromisoformat(one.made_at))
            for at, text in enumerate((words, when)):
                item = QTableWidgetItem(text)
                item.setToolTip(text)
                if one.undone:
                    item.setForeground(soft)
                self.table.setItem(row, at, item)
        self.table.resizeRowsToContents()
        first = next((row for row, one in enumerate(steps) if not one.undone), 0)
        if steps:
            self.table.selectRow(min(max(held, first), len(steps) - 1))
        self._tell()
        self.table.setFocus(Qt.FocusReason.OtherFocusReason)

    def _tell(self) -> None:
        row = self.table.currentRow()
        wanted = [one for one in self.steps[: row + 1] if not one.undone] if row >= 0 else []
        marked = self.steps[row] if 0 <= row < len(self.steps) else None
        ready = bool(wanted) and marked is not None and not marked.undone and self._desk.can_write
        self.undo_button.setEnabled(ready)
        if len(wanted) == 1:
            self.undo_button.setText(self.tr("&Undo this step"))
        else:
            text = self.tr("&Undo to here: {} steps")
            self.undo_button.setText(text.format(len(wanted)) if wanted else self.tr("&Undo"))
        self.redo_button.setEnabled(bool(self._desk.redo_words))
        words = self._desk.redo_words
        self.redo_button.setToolTip(self.tr("Make again: {}").format(words) if words else "")

    def undo_to(self) -> None:
        """Take back every step down to the marked one."""
        row = self.table.currentRow()
        if 0 <= row < len(self.steps):
            self._desk.undo_to(self.steps[row].step)
