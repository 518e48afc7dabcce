"""The foot of a card: where there is more text below, it ends between two lines and says so."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QPointF, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QScrollArea, QWidget

from pedigreeview.window.card_rows import Row, last_cut, rows_and_wholes
from pedigreeview.window.style import current, step

__all__ = ["CardFoot"]

_MOST = 0.5
"""Part of the text's room that the foot takes at most, as where one row is taller than that."""
_GIVEN = 12
"""Steps of height that are given up at most so that a text or a heading is not parted."""


class CardFoot(QWidget):
    """Lies on the lower edge of a scrolled text while that is not at its end.

    It is plain paper with a mark that there is more, and as high as covers a line that would be
    cut through.
    """

    def __init__(self, area: QScrollArea) -> None:
        super().__init__(area)
        self._area = area
        self._rows: list[Row] = []
        self._wholes: list[Row] = []
        self.waits = False
        """Whether the card is being laid, which measures by itself."""
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        area.installEventFilter(self)
        bar = area.verticalScrollBar()
        bar.valueChanged.connect(lambda _: self._lay())
        bar.rangeChanged.connect(lambda *_: self._ranged())

    def least(self) -> int:
        """Its height where it need not cover anything."""
        return 2 * step()

    def measure(self) -> list[Row]:
        """Look again where the rows of the text lie, as after a change of it."""
        inner = self._area.widget()
        self._rows, self._wholes = rows_and_wholes(inner) if inner is not None else ([], [])
        self._lay()
        return self._rows

    def _ranged(self) -> None:
        if not self.waits:
            self.measure()

    def room_for(self, most: int) -> int:
        """The height of the text's room, at most a given one, in which whole rows end at it."""
        inner = self._area.widget()
        if inner is None or inner.height() <= most:
            return most
        return self._cut(most - self.least()) + self.least()

    def _cut(self, most: int, above: int = 0) -> int:
        """The lowest place for the end of the text, at most a given one.

        above : how much of the text lies out of sight
        """
        cut = last_cut(self._rows, most)
        if cut - above <= (most + self.least() - above) * _MOST:
            return most
        whole = last_cut([*self._rows, *self._wholes], most)
        near = cut - whole <= _GIVEN * step() and whole - above >= (cut - above) * _MOST
        return whole if near else cut

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Resize:
            self._lay()
        return super().eventFilter(watched, event)

    def _lay(self) -> None:
        bar, view = self._area.verticalScrollBar(), self._area.viewport().geometry()
        most = bar.value() + view.height() - self.least()
        cut = self._cut(most, bar.value())
        high = bar.value() + view.height() - cut
        self.setGeometry(view.left(), view.bottom() + 1 - high, view.width(), high)
        self.setVisible(bar.value() < bar.maximum())
        self.raise_()

    def paintEvent(self, event: QPaintEvent) -> None:
        colours, s = current(), step()
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.fillRect(self.rect(), colours.paper)
            painter.setPen(QPen(colours.rule, 1.0))
            # A little lower, so that it does not underline the last line.
            line = s // 4 + 0.5
            painter.drawLine(QPointF(0.0, line), QPointF(float(self.width()), line))
            painter.setPen(QPen(colours.soft, max(1.5, s / 6)))
            middle = QPointF(self.width() / 2, self.least() / 2 + s / 4)
            wide, high = 0.75 * s, 0.375 * s
            painter.drawPolyline(
                [
                    middle + QPointF(-wide, -high),
                    middle + QPointF(0.0, high),
                    middle + QPointF(wide, -high),
                ]
            )
        finally:
            painter.end()
