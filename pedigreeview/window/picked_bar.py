"""The small bar over a view that says how many plants are picked and what to do with them."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QRectF, Qt, Signal
from PySide6.QtGui import (
    QAccessible,
    QAccessibleAnnouncementEvent,
    QGuiApplication,
    QPainter,
    QPaintEvent,
)
from PySide6.QtWidgets import QAbstractScrollArea, QHBoxLayout, QLabel, QWidget

from pedigreeview.window.labels import action_button
from pedigreeview.window.style import current, step
from pedigreeview.window.words import count

__all__ = ["PickedBar"]


class PickedBar(QWidget):
    """Lies at the lower edge of a view while plants are picked in it."""

    cleared = Signal()
    group_wanted = Signal()
    """The numbers of the picked plants as a group are asked for."""

    def __init__(self, area: QAbstractScrollArea) -> None:
        super().__init__(area)
        self._area = area
        self.setObjectName("pickedBar")
        # The view below keeps left and right in every language; the words on the bar do not.
        self.setLayoutDirection(QGuiApplication.layoutDirection())
        s = step()
        row = QHBoxLayout(self)
        row.setContentsMargins(2 * s, s // 2, s, s // 2)
        row.setSpacing(s)
        self.label = QLabel()
        self.label.setTextFormat(Qt.TextFormat.PlainText)
        row.addWidget(self.label)
        self.group = action_button(self.tr("Diversity …"), self.group_wanted.emit)
        self.group.setToolTip(self.tr("What the picked plants hold as a group"))
        self.clear = action_button(self.tr("Pick none"), self.cleared.emit)
        self.clear.setToolTip(self.tr("Put all picked plants back (Esc)"))
        row.addWidget(self.group)
        row.addWidget(self.clear)
        area.installEventFilter(self)
        self.hide()

    def show_count(self, number: int) -> None:
        """Say how many are picked; none hides the bar."""
        if number:
            words = count(number, self.tr("plant picked"), self.tr("plants picked"))
        else:
            words = self.tr("No plant is picked.")
        if words == self.label.text():
            return
        self.label.setText(words)
        self.setVisible(number > 0)
        self._lay()
        if QAccessible.isActive() and self._area.isVisible():
            QAccessible.updateAccessibility(QAccessibleAnnouncementEvent(self._area, words))

    def _lay(self) -> None:
        area = self._area
        size = self.sizeHint()
        wide = min(size.width(), area.width())
        top = area.height() - size.height() - 2 * step()
        self.setGeometry((area.width() - wide) // 2, max(0, top), wide, size.height())
        self.raise_()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Resize and self.isVisible():
            self._lay()
        return False

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange) and self.isVisible():
            self._lay()

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(current().rule)
            painter.setBrush(current().sheet)
            around = QRectF(self.rect()).adjusted(0.5, 0.5, -0.5, -0.5)
            painter.drawRoundedRect(around, step(), step())
        finally:
            painter.end()
