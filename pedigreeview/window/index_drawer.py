"""The index in a drawer at the side: all plants as a list with a filter, or the focus's relatives.

The second leaf is a tree of the same plants that the picture shows: what is marked in one is marked
in the other.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QModelIndex, QObject, Qt, Signal
from PySide6.QtGui import QKeyEvent, QPainter
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QListView,
    QStackedWidget,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTabBar,
    QWidget,
)

from pedigreeview.window.find import CodeList, PlantFinder
from pedigreeview.window.find_field import draw_reason
from pedigreeview.window.labels import SearchField, column, heading, sentence
from pedigreeview.window.relatives_view import RelativesView
from pedigreeview.window.style import step
from pedigreeview.window.words import count

if TYPE_CHECKING:
    from PySide6.QtCore import QPersistentModelIndex

    from pedigreeview.network import PedigreeNetwork

__all__ = ["IndexDrawer"]


class _Listed(QStyledItemDelegate):
    """A row of the index; while something is looked for, it says why the plant was found."""

    def __init__(self, drawer: IndexDrawer) -> None:
        super().__init__(drawer)
        self._drawer = drawer

    def paint(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        super().paint(painter, option, index)
        if self._drawer.filter.text().strip():
            draw_reason(painter, option, index)


class IndexDrawer(QFrame):
    """Filter, list and count; behind a second tab the relatives of the focus."""

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
        self.tabs = QTabBar()
        self.tabs.setObjectName("leaves")
        self.tabs.setAccessibleName(self.tr("What the index lists"))
        self.tabs.setDrawBase(False)
        self.tabs.setExpanding(False)
        self.tabs.setElideMode(Qt.TextElideMode.ElideRight)
        self.tabs.addTab(self.tr("All plants"))
        self.tabs.addTab(self.tr("Relatives"))
        layout.addWidget(self.tabs)
        self.leaves = QStackedWidget()
        self.leaves.addWidget(self._all())
        self.tree = RelativesView()
        self.leaves.addWidget(self.tree)
        layout.addWidget(self.leaves, 1)
        self.tabs.currentChanged.connect(self.leaves.setCurrentIndex)
        self.tabs.installEventFilter(self)
        self.filter.textChanged.connect(self._filter)
        self.filter.installEventFilter(self)
        self.list.installEventFilter(self)
        self.list.clicked.connect(self._choose)
        self.list.activated.connect(self._choose)
        self.tree.plant_wanted.connect(self.plant_wanted)
        self.tree.left.connect(self.left)
        self.hide()

    def _all(self) -> QWidget:
        s = step()
        page = QWidget()
        layout = column(s)
        page.setLayout(layout)
        self.filter = SearchField(
            self.tr("code, name, cross, trait …"),
            self.tr("Filter the index by code, name, cross, trait, status or note"),
        )
        self.filter.left.connect(self.left)
        layout.addWidget(self.filter)
        self.model = CodeList(self)
        self.list = QListView()
        self.list.setAccessibleName(self.tr("Plants"))
        self.list.setModel(self.model)
        self.list.setItemDelegate(_Listed(self))
        self.list.setUniformItemSizes(True)
        self.list.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.list.setTextElideMode(Qt.TextElideMode.ElideRight)
        # A long list is laid out part by part, so that no key waits for all of it.
        self.list.setLayoutMode(QListView.LayoutMode.Batched)
        self.list.setBatchSize(2000)
        layout.addWidget(self.list, 1)
        self.count = sentence("", "soft")
        layout.addWidget(self.count)
        return page

    def set_finder(self, finder: PlantFinder | None) -> None:
        """List the plants of another book."""
        self.model.set_finder(finder)
        self._say_count()

    def show_relatives(self, net: PedigreeNetwork | None, focus: str) -> None:
        """Show the tree of another focus."""
        self.tree.show_focus(net, focus)

    def mark(self, code: str) -> None:
        """Mark a plant's row and its line in the tree without asking for it."""
        row = self.model.row_of(code)
        if row >= 0:
            self.list.setCurrentIndex(self.model.index(row, 0))
        self.tree.mark(code)

    def _filter(self, typed: str) -> None:
        self.model.search(typed)
        self._say_count()

    def _say_count(self) -> None:
        self.count.setText(count(self.model.found, self.tr("plant"), self.tr("plants")))

    def _choose(self, index: QModelIndex) -> None:
        self.plant_wanted.emit(self.model.code(index.row()))

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if not isinstance(event, QKeyEvent) or event.type() != QEvent.Type.KeyPress:
            return super().eventFilter(watched, event)
        key = event.key()
        if watched is self.filter and self.model.rowCount():
            if key == Qt.Key.Key_Down:
                self.list.setFocus()
                self.list.setCurrentIndex(self.model.index(0, 0))
                return True
            if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
                self.plant_wanted.emit(self.model.code(0))
                return True
        elif watched is self.list and key == Qt.Key.Key_Up and self.list.currentIndex().row() == 0:
            self.filter.setFocus()
            return True
        elif watched in (self.list, self.tabs) and key == Qt.Key.Key_Escape:
            self.left.emit()
            return True
        elif watched is self.tabs and key == Qt.Key.Key_Down:
            (self.tree if self.tabs.currentIndex() else self.filter).setFocus()
            return True
        return super().eventFilter(watched, event)
