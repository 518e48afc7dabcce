"""The head of a card: a handle to move it by, and a click to open or fold it."""

from __future__ import annotations

from typing import Protocol

from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QApplication, QWidget

__all__ = ["CardHead", "Carried"]


class Carried(Protocol):
    """What is moved and turned by its head."""

    def pos(self) -> QPoint:
        """Where it lies."""

    def move_to(self, place: QPoint) -> None:
        """Lay it somewhere by hand."""

    def turn(self) -> None:
        """Fold or open it."""


class CardHead(QWidget):
    """The upper part of the tag with the code: the card is dragged by it, and opened by a click."""

    def __init__(self, card: Carried) -> None:
        super().__init__()
        self._card = card
        self._from: QPoint | None = None
        self._pressed, self._dragged = QPoint(), False
        self.setCursor(Qt.CursorShape.OpenHandCursor)
        self.setToolTip(self.tr("Drag to move the card; a click opens or folds it"))

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton:
            self._pressed = event.globalPosition().toPoint()
            self._from = self._pressed - self._card.pos()
            self._dragged = False
            self.setCursor(Qt.CursorShape.ClosedHandCursor)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._from is None:
            return
        at = event.globalPosition().toPoint()
        far = (at - self._pressed).manhattanLength()
        self._dragged = self._dragged or far >= QApplication.startDragDistance()
        if self._dragged:
            self._card.move_to(at - self._from)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if self._from is not None and not self._dragged:
            self._card.turn()
        self._from = None
        self.setCursor(Qt.CursorShape.OpenHandCursor)
