"""The backups of a book: when each was made, how large it is, and back to one of them."""

from __future__ import annotations

import datetime
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QLocale, Qt, Signal
from PySide6.QtWidgets import (
    QAbstractItemView,
    QDialog,
    QHBoxLayout,
    QHeaderView,
    QTableWidget,
    QTableWidgetItem,
    QWidget,
)

from pedigreeview.book.backups import KEPT, Backup, folder_of, list_backups, restore_over
from pedigreeview.book.faults import Fault
from pedigreeview.window.errands import Errands
from pedigreeview.window.labels import action_button, column, heading, sentence
from pedigreeview.window.style import step

if TYPE_CHECKING:
    from pedigreeview.window.desk import Desk

__all__ = ["BackupsDialog", "day_and_time"]


def day_and_time(moment: datetime.datetime, *, seconds: bool = False) -> str:
    """A moment as a list shows it: 'Wed 25 Nov 2026, 18:55'."""
    return moment.strftime("%a %d %b %Y, %H:%M:%S" if seconds else "%a %d %b %Y, %H:%M")


class BackupsDialog(QDialog):
    """Lists the backups, the newest first; going back to one is asked a second time."""

    restored = Signal(object, bool)
    """The book's path, and whether it is the one that lies open."""

    def __init__(
        self, path: Path, errands: Errands, desk: Desk | None, parent: QWidget | None = None
    ) -> None:
        """Show the backups.

        Parameters
        ----------
        path : the book
        desk : where the book lies open; None for a book that cannot be opened
        """
        super().__init__(parent)
        self.setWindowTitle(self.tr("Backups"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._path, self._errands, self._desk = path, errands, desk
        s = step()
        layout = column(2 * s, 3 * s)
        self.setLayout(layout)
        layout.addWidget(heading(self.tr("Backups of {}").format(path.stem), 2))
        text = self.tr(
            "A backup is made when the book is opened and has changed since the last one. The last "
            "{} and the newest of each month are kept, in {}."
        ).format(KEPT, folder_of(path))
        layout.addWidget(sentence(text, "soft"))
        self.table = QTableWidget(0, 2)
        self.table.setAccessibleName(self.tr("Backups, the newest first"))
        self.table.setHorizontalHeaderLabels([self.tr("Made"), self.tr("Size")])
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
        self.table.itemActivated.connect(lambda _: self.ask())
        self.table.itemSelectionChanged.connect(self._take_back_question)
        layout.addWidget(self.table, 1)
        self.message = sentence("")
        self.message.hide()
        layout.addWidget(self.message)
        row = QHBoxLayout()
        row.setSpacing(s)
        self.now_button = action_button(self.tr("&Back up now"), self.back_up)
        can_write = desk is not None and desk.can_write
        row.addWidget(self.now_button)
        row.addStretch(1)
        self.close_button = action_button(self.tr("Close"), self.reject)
        row.addWidget(self.close_button)
        self.restore_button = action_button(self.tr("&Go back to this one …"), self.ask, main=True)
        row.addWidget(self.restore_button)
        layout.addLayout(row)
        self.now_button.setVisible(can_write)
        self._may = desk is None or can_write
        self._asked = False
        self.backups: list[Backup] = []
        self.fill()
        self.resize(74 * s, 64 * s)
        self.table.setFocus()

    def fill(self) -> None:
        """Show what lies in the folder now."""
        self.backups = list_backups(self._path)
        self.table.setRowCount(len(self.backups))
        locale = QLocale()
        for row, backup in enumerate(self.backups):
            size = locale.formattedDataSize(backup.size, 0)
            cells = (day_and_time(backup.made_at, seconds=True), size)
            for at, text in enumerate(cells):
                item = QTableWidgetItem(text)
                item.setToolTip(str(backup.path))
                self.table.setItem(row, at, item)
        self.table.resizeRowsToContents()
        if self.backups:
            self.table.selectRow(0)
        else:
            self._say(self.tr("There is no backup yet."))
        self.restore_button.setEnabled(bool(self.backups) and self._may)

    def _chosen(self) -> Backup | None:
        row = self.table.currentRow()
        return self.backups[row] if 0 <= row < len(self.backups) else None

    def _take_back_question(self) -> None:
        self._asked = False
        self.restore_button.setText(self.tr("&Go back to this one …"))
        self.message.hide()

    def ask(self) -> None:
        """Say what going back means; the second time it is done."""
        backup = self._chosen()
        if backup is None or not self.restore_button.isEnabled():
            return
        if self._asked:
            self._restore(backup)
            return
        self._asked = True
        if self._desk is not None:
            text = self.tr(
                "The book will be as it was on {}. What is in it now becomes a backup first, so "
                "nothing is lost."
            )
        else:
            text = self.tr(
                "The book will be as it was on {}. The damaged file is kept beside the backups."
            )
        self._say(text.format(day_and_time(backup.made_at)))
        self.restore_button.setText(self.tr("&Yes, go back to it"))
        self.restore_button.setFocus()

    def _restore(self, backup: Backup) -> None:
        self.restore_button.setEnabled(False)
        self._say(self.tr("Going back …"))
        path, desk = self._path, self._desk
        if desk is not None:
            desk.restore(backup.path, self._restored, self._failed)
            return
        self._errands.ask(
            "save",
            lambda: restore_over(path, backup.path),
            lambda _: self._restored(),
            self._failed,
        )

    def _restored(self) -> None:
        own = self._desk is not None
        self.accept()
        self.restored.emit(self._path, own)

    def back_up(self) -> None:
        """Make a backup now."""
        if self._desk is not None:
            self._desk.back_up(self._made, self._failed)

    def _made(self) -> None:
        self.fill()
        self._say(self.tr("The backup is made."))

    def _failed(self, fault: Fault) -> None:
        self.restore_button.setEnabled(bool(self.backups) and self._may)
        self._say(fault.sentence())

    def _say(self, text: str) -> None:
        self.message.setText(text)
        self.message.show()
