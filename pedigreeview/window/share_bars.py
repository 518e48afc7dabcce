"""Founder shares as bars on a card."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from pedigreeview.window.style import current, step

__all__ = ["ShareBars"]


class ShareBars(QWidget):
    """Founder shares as bars, in the colours of the stripe on the tag."""

    def __init__(self, shown: list[tuple[str, float, str, QColor]]) -> None:
        super().__init__()
        self._shown = shown
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        words = "; ".join(f"{name} {text}" for name, _, text, _ in shown)
        self.setAccessibleName(self.tr("Founder shares: {}").format(words))

    def colours(self) -> list[QColor]:
        """The colour of each bar."""
        return [colour for *_, colour in self._shown]

    def recolour(self, colours: list[QColor]) -> None:
        """Give each bar another colour, as where the picture gives its founders others."""
        if colours != self.colours():
            self._shown = [
                (name, share, text, colour)
                for (name, share, text, _), colour in zip(self._shown, colours, strict=True)
            ]
            self.update()

    def rows(self) -> int:
        """How many bars there are, each in a row of one height."""
        return len(self._shown)

    def _line(self) -> int:
        return self.fontMetrics().height() + 2 * step()

    def sizeHint(self) -> QSize:
        return QSize(20 * step(), self._line() * len(self._shown))

    def paintEvent(self, event: QPaintEvent) -> None:
        colours, s = current(), step()
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            text_height = self.fontMetrics().height()
            for at, (name, share, text, colour) in enumerate(self._shown):
                top = at * self._line()
                box = QRectF(0, top, self.width(), text_height)
                painter.setPen(colours.ink)
                width = self.fontMetrics().horizontalAdvance(text)
                shown = self.fontMetrics().elidedText(
                    name, Qt.TextElideMode.ElideRight, max(0, self.width() - width - 2 * s)
                )
                painter.drawText(box, int(Qt.AlignmentFlag.AlignLeft), shown)
                painter.setPen(colours.soft)
                painter.drawText(box, int(Qt.AlignmentFlag.AlignRight), text)
                bar = QRectF(0.5, top + text_height + s // 4, self.width() - 1, 0.75 * s)
                painter.setPen(QPen(colours.rule, 1))
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.drawRect(bar)
                painter.setPen(Qt.PenStyle.NoPen)
                painter.setBrush(colour)
                painter.drawRect(QRectF(bar.left(), bar.top(), bar.width() * share, bar.height()))
        finally:
            painter.end()
