"""A line of text that ends in '…' where there is no room for all of it; its tip holds the whole."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSize, Qt
from PySide6.QtGui import QFontMetrics, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QLabel, QSizePolicy, QStyle, QStyleOption

__all__ = ["ElidedLabel"]


class ElidedLabel(QLabel):
    """One line that takes the width that is left for it.

    Its text, its accessible name and what a screen reader says are always the whole; only what is
    painted is cut short.  It is the person's own text, as the title of a book, or is translated
    already.
    """

    def __init__(self, role: str) -> None:
        super().__init__()
        self.setProperty("role", role)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)

    def setText(self, text: str) -> None:
        super().setText(text)
        self.setAccessibleName(text)
        self._tell()

    def shown_text(self) -> str:
        """What is painted: as much of the text as there is room for."""
        metrics, room = QFontMetrics(self.font()), self.contentsRect().width()
        return metrics.elidedText(self.text(), Qt.TextElideMode.ElideRight, max(0, room))

    def minimumSizeHint(self) -> QSize:
        return QSize(0, super().minimumSizeHint().height())

    def _tell(self) -> None:
        """The tip says the whole where it cannot be read."""
        cut = self.shown_text() != self.text()
        self.setToolTip(self.text() if cut else "")

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._tell()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self._tell()

    def paintEvent(self, event: QPaintEvent) -> None:
        option = QStyleOption()
        option.initFrom(self)
        painter = QPainter(self)
        try:
            style = self.style()
            style.drawPrimitive(QStyle.PrimitiveElement.PE_Widget, option, painter, self)
            aligned = QStyle.visualAlignment(self.layoutDirection(), self.alignment())
            style.drawItemText(
                painter,
                self.contentsRect(),
                int(aligned),
                option.palette,
                self.isEnabled(),
                self.shown_text(),
                self.foregroundRole(),
            )
        finally:
            painter.end()
