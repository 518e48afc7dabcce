"""The find field in the head of the window, with what fits below it as one types."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QModelIndex, QObject, QPersistentModelIndex, QPoint, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QPainter
from PySide6.QtWidgets import (
    QListView,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from pedigreeview.window.find import CodeList, PlantFinder
from pedigreeview.window.labels import SearchField
from pedigreeview.window.style import current, step

__all__ = ["FindField", "draw_reason"]

_SHOWN = 60


def draw_reason(
    painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
) -> None:
    """At the end of a row: why the plant was found, as far as there is room."""
    reason = str(index.data(CodeList.OriginRole) or "")
    metrics = option.fontMetrics
    taken = metrics.horizontalAdvance(str(index.data() or "")) + 3 * step()
    box = option.rect.adjusted(step(), 0, -2 * step(), 0)
    mirrored = option.direction == Qt.LayoutDirection.RightToLeft
    if mirrored:
        box.setRight(box.right() - taken)
    else:
        box.setLeft(box.left() + taken)
    if not reason or box.width() < 8 * step():
        return
    painter.save()
    painter.setPen(current().soft)
    shown = metrics.elidedText(reason, Qt.TextElideMode.ElideRight, box.width())
    side = Qt.AlignmentFlag.AlignLeft if mirrored else Qt.AlignmentFlag.AlignRight
    painter.drawText(
        box, int(side | Qt.AlignmentFlag.AlignAbsolute | Qt.AlignmentFlag.AlignVCenter), shown
    )
    painter.restore()


class _Found(QStyledItemDelegate):
    """A row of what was found: code and name, and at the end why."""

    def paint(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        super().paint(painter, option, index)
        draw_reason(painter, option, index)


class FindField(SearchField):
    """Finds by code, name, cross, trait, status or note; Enter takes the marked one."""

    plant_wanted = Signal(str)

    def __init__(self, window: QWidget) -> None:
        super().__init__("", "")
        self._window = window
        self.setPlaceholderText(self.tr("Find a code, name, cross or trait"))
        self.setAccessibleName(self.tr("Find a plant by code, name, cross, trait, status or note"))
        self.model = CodeList(self, _SHOWN)
        self.found = QListView(window)
        self.found.setObjectName("found")
        self.found.setAccessibleName(self.tr("Plants found"))
        self.found.setModel(self.model)
        self.found.setItemDelegate(_Found(self.found))
        self.found.setUniformItemSizes(True)
        self.found.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.found.setTextElideMode(Qt.TextElideMode.ElideRight)
        self.found.hide()
        self.textEdited.connect(self._search)
        self.found.clicked.connect(self._choose)
        self.installEventFilter(self)

    def set_finder(self, finder: PlantFinder | None) -> None:
        """Search another book."""
        self.model.set_finder(finder)
        self.setEnabled(finder is not None)
        self.clear()
        self.found.hide()

    def _search(self, typed: str) -> None:
        if not typed.strip():
            self.found.hide()
            return
        self.model.search(typed)
        rows = self.model.rowCount()
        if not rows:
            self.found.hide()
            return
        self.found.setCurrentIndex(self.model.index(0, 0))
        height = self.found.sizeHintForRow(0) * min(rows, 10) + step()
        place = self.mapTo(self._window, QPoint(0, self.height() + 2))
        width = min(max(self.width(), 60 * step()), self._window.width() - 2 * step())
        left = min(place.x(), self._window.width() - width - step())
        if self.layoutDirection() == Qt.LayoutDirection.RightToLeft:
            left = max(step(), place.x() + self.width() - width)
        room = self._window.height() - place.y() - step()
        self.found.setGeometry(max(0, left), place.y(), width, min(height, room))
        self.found.show()
        self.found.raise_()

    def _choose(self, index: QModelIndex) -> None:
        code = self.model.code(index.row())
        self.clear()
        self.found.hide()
        self.plant_wanted.emit(code)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress:
            key = event.key()
            if self.found.isVisible():
                if key in (Qt.Key.Key_Down, Qt.Key.Key_Up):
                    way = 1 if key == Qt.Key.Key_Down else -1
                    row = self.found.currentIndex().row() + way
                    row = max(0, min(row, self.model.rowCount() - 1))
                    self.found.setCurrentIndex(self.model.index(row, 0))
                    return True
                if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
                    self._choose(self.found.currentIndex())
                    return True
            if key == Qt.Key.Key_Escape:
                self.found.hide()
        return super().eventFilter(watched, event)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.found.hide()
