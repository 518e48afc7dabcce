"""The soft foot of a card: its text fades out where there is more of it below."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QColor, QLinearGradient, QPainter, QPaintEvent
from PySide6.QtWidgets import QScrollArea, QWidget

from pedigreeview.window.style import current, step

__all__ = ["CardFoot"]


class CardFoot(QWidget):
    """Lies on the lower edge of a scrolled text while that is not at its end."""

    def __init__(self, area: QScrollArea) -> None:
        super().__init__(area)
        self._area = area
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        area.installEventFilter(self)
        bar = area.verticalScrollBar()
        bar.valueChanged.connect(lambda _: self._lay())
        bar.rangeChanged.connect(lambda *_: self._lay())

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Resize:
            self._lay()
        return super().eventFilter(watched, event)

    def _lay(self) -> None:
        bar, high = self._area.verticalScrollBar(), 3 * step()
        view = self._area.viewport().geometry()
        self.setGeometry(view.left(), view.bottom() + 1 - high, view.width(), high)
        self.setVisible(bar.value() < bar.maximum())
        self.raise_()

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        try:
            paper = QColor(current().paper)
            clear = QColor(paper)
            clear.setAlpha(0)
            ramp = QLinearGradient(0.0, 0.0, 0.0, float(self.height()))
            ramp.setColorAt(0.0, clear)
            ramp.setColorAt(0.8, paper)
            painter.fillRect(self.rect(), ramp)
        finally:
            painter.end()
