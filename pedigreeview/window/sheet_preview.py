"""Sheets of paper in small, as large as there is room for them."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QImage, QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from pedigreeview.window.style import current, step

__all__ = ["SheetPreview"]


class SheetPreview(QWidget):
    """Shows an image of sheets, or a sentence in its place."""

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("sheetPreview")
        self.setAccessibleName(self.tr("Preview of the sheets"))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.image = QImage()
        self._words = ""

    def sizeHint(self) -> QSize:
        return QSize(60 * step(), 60 * step())

    def show_image(self, image: QImage) -> None:
        """Show sheets."""
        self.image, self._words = image, ""
        self.update()

    def show_words(self, words: str) -> None:
        """Say why there is nothing to see."""
        self.image, self._words = QImage(), words
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
            if self.image.isNull():
                painter.setPen(current().soft)
                flags = Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap
                painter.drawText(self.rect(), int(flags), self._words)
                return
            size = self.image.size().scaled(self.size(), Qt.AspectRatioMode.KeepAspectRatio)
            corner = QPointF((self.width() - size.width()) / 2, (self.height() - size.height()) / 2)
            painter.drawImage(
                QRectF(corner.x(), corner.y(), size.width(), size.height()), self.image
            )
        finally:
            painter.end()
