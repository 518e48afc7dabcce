"""The tree of relatives in the drawer, by mouse and by keys.

Moving in the tree marks the plant in the picture where it is shown; Enter or a double click puts it
in focus, and the tree begins from there.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QModelIndex, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QAbstractItemView, QTreeView

from pedigreeview.window.relatives_tree import RelativesTree

if TYPE_CHECKING:
    from pedigreeview.network import PedigreeNetwork

__all__ = ["RelativesView"]


class RelativesView(QTreeView):
    """Parents and progeny of the plant in focus."""

    plant_wanted = Signal(str)
    """A plant is asked for in focus."""
    marked = Signal(str)
    """The person has moved to a plant."""
    left = Signal()
    """Esc was pressed."""

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("relatives")
        self.setAccessibleName(self.tr("Parents and progeny"))
        self.setHeaderHidden(True)
        self.setUniformRowHeights(True)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setTextElideMode(Qt.TextElideMode.ElideRight)
        self.setExpandsOnDoubleClick(False)
        self.model_of = RelativesTree(self)
        self.setModel(self.model_of)
        self._quiet = False
        self.selectionModel().currentChanged.connect(self._moved)
        self.doubleClicked.connect(self._choose)
        self.clicked.connect(self._clicked)

    def show_focus(self, net: PedigreeNetwork | None, code: str) -> None:
        """Show the relatives of a plant; the same focus of the same book stays as it is opened."""
        tree = self.model_of
        if tree.net is net and tree.focus == code:
            return
        self._quiet = True
        tree.show_focus(net, code)
        for head in tree.heads():
            # The view itself fetches only when it is next laid out, and the mark comes before.
            if tree.canFetchMore(head):
                tree.fetchMore(head)
            self.expand(head)
        self._quiet = False

    def mark(self, code: str) -> None:
        """Go to a plant's line, where it is listed, without saying so by signal."""
        if code == self.code(self.currentIndex()):
            return
        found = self.model_of.listed(code)
        self._quiet = True
        if found.isValid():
            self.setCurrentIndex(found)
            self.scrollTo(found)
        self._quiet = False

    def code(self, index: QModelIndex) -> str:
        """The plant of a line, or ''."""
        return str(index.data(RelativesTree.CodeRole) or "")

    def _moved(self, index: QModelIndex, _before: QModelIndex) -> None:
        code = self.code(index)
        if code and not self._quiet:
            self.marked.emit(code)

    def _clicked(self, index: QModelIndex) -> None:
        one = self.model_of.relation(index)
        if one is not None and one.more:
            self._more(index)
        elif one is not None and one.role == "head":
            self.setExpanded(index, not self.isExpanded(index))

    def _more(self, index: QModelIndex) -> None:
        above, row = index.parent(), index.row()
        self.model_of.list_more(index)
        self.setCurrentIndex(self.model_of.index(row, 0, above))

    def _choose(self, index: QModelIndex) -> None:
        one = self.model_of.relation(index)
        code = self.code(index)
        if code:
            self.plant_wanted.emit(code)
        elif one is not None and one.more:
            self._more(index)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = event.key()
        if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._choose(self.currentIndex())
        elif key == Qt.Key.Key_Escape:
            self.left.emit()
        else:
            super().keyPressEvent(event)
            return
        event.accept()
