"""The index: all plants as a list with a filter, in a drawer pulled out from the side."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QModelIndex, QObject, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QAbstractItemView, QFrame, QListView

from pedigreeview.window.find import CodeList, PlantFinder
from pedigreeview.window.labels import SearchField, column, heading, sentence
from pedigreeview.window.style import step
from pedigreeview.window.words import count

__all__ = ["IndexDrawer"]


class IndexDrawer(QFrame):
    """Filter, list and count."""

    plant_wanted = Signal(str)
    left = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("drawer")
        s = step()
        layout = column(s)
        layout.setContentsMargins(2 * s, 2 * s, s, s)
        self.setLayout(layout)
        layout.addWidget(heading(self.tr("Index"), 2))
        self.filter = SearchField(self.tr("code, name or cross"), self.tr("Filter the index"))
        self.filter.left.connect(self.left)
        layout.addWidget(self.filter)
        self.model = CodeList(self)
        self.list = QListView()
        self.list.setAccessibleName(self.tr("Plants"))
        self.list.setModel(self.model)
        self.list.setUniformItemSizes(True)
        self.list.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.list.setTextElideMode(Qt.TextElideMode.ElideRight)
        layout.addWidget(self.list, 1)
        self.count = sentence("", "soft")
        layout.addWidget(self.count)
        self.filter.textChanged.connect(self._filter)
        self.filter.installEventFilter(self)
        self.list.clicked.connect(self._choose)
        self.list.activated.connect(self._choose)
        self.hide()

    def set_finder(self, finder: PlantFinder | None) -> None:
        """List the plants of another book."""
        self.model.set_finder(finder)
        self._say_count()

    def mark(self, code: str) -> None:
        """Mark a plant's row without asking for it."""
        row = self.model.row_of(code)
        if row >= 0:
            self.list.setCurrentIndex(self.model.index(row, 0))

    def _filter(self, typed: str) -> None:
        self.model.search(typed)
        self._say_count()

    def _say_count(self) -> None:
        self.count.setText(count(self.model.found, self.tr("plant"), self.tr("plants")))

    def _choose(self, index: QModelIndex) -> None:
        self.plant_wanted.emit(self.model.code(index.row()))

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        pressed = watched is self.filter and event.type() == QEvent.Type.KeyPress
        if pressed and isinstance(event, QKeyEvent) and self.model.rowCount():
            if event.key() == Qt.Key.Key_Down:
                self.list.setFocus()
                self.list.setCurrentIndex(self.model.index(0, 0))
                return True
            if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
                self.plant_wanted.emit(self.model.code(0))
                return True
        return super().eventFilter(watched, event)
