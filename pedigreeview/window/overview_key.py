"""The founders whose colours the map shows: a row of swatches with their names."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QLocale, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from pedigreeview.drawing.founders import OTHERS, PALETTE_SIZE
from pedigreeview.drawing.overview import Overview
from pedigreeview.drawing.signs import colour
from pedigreeview.drawing.theme import theme
from pedigreeview.window.style import current, current_name, step

__all__ = ["FounderKey"]


class FounderKey(QWidget):
    """As many rows as the names take, each name beside its swatch."""

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("founder_key")
        self.setAccessibleName(self.tr("Founders and their colours"))
        self._cells: list[tuple[int, str]] = []
        self._head = ""
        policy = QSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)
        self.hide()

    def show_founders(
        self, overview: Overview | None, names: Mapping[str, str], marked: str = ""
    ) -> None:
        """Show the founders with a colour of their own, and how many share the last one.

        marked : the plant whose founders have the first claim to a colour, or ''
        """
        self._cells, self._head = [], ""
        if overview is not None:
            self._cells = [
                (at, f"{code} {names.get(code, '')}".strip())
                for at, code in enumerate(overview.named)
            ]
            others = len(overview.links.founders) - len(overview.named)
            if others > 0:
                many = self.tr("1 other") if others == 1 else self.tr("{} others")
                self._cells.append((OTHERS, many.format(QLocale().toString(others))))
                self._head = (
                    self.tr("Largest shares in {}, then in the book:").format(marked)
                    if marked
                    else self.tr("Largest shares in the book:")
                )
        said = "; ".join(words for _, words in self._cells)
        self.setAccessibleDescription(f"{self._head} {said}".strip())
        self.updateGeometry()
        self.update()

    def words(self) -> list[str]:
        """What stands beside the swatches."""
        return [words for _, words in self._cells]

    def heading(self) -> str:
        """By what the founders were chosen; '' where all of them have a colour."""
        return self._head

    def _line(self) -> int:
        return round(self.fontMetrics().height() * 1.5)

    def _places(self, width: int) -> list[QRectF]:
        metrics, line = self.fontMetrics(), self._line()
        found: list[QRectF] = []
        x, y = self._after_head(width), 0.0
        for _, words in self._cells:
            wide = min(metrics.horizontalAdvance(words) + line + 2 * step(), max(width, line))
            if x and x + wide > width:
                x, y = 0.0, y + line
            found.append(QRectF(x, y, wide, line))
            x += wide
        return found

    def _after_head(self, width: int) -> float:
        """Where the first swatch begins."""
        if not self._head:
            return 0.0
        return min(self.fontMetrics().horizontalAdvance(self._head) + 2.0 * step(), float(width))

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        places = self._places(width)
        return round(places[-1].bottom()) if places else 0

    def sizeHint(self) -> QSize:
        width = self.width() if self.width() > 100 else 90 * step()
        return QSize(30 * step(), self.heightForWidth(width))

    def minimumSizeHint(self) -> QSize:
        return QSize(12 * step(), self._line() if self._cells else 0)

    def paintEvent(self, event: QPaintEvent) -> None:
        look = theme(current_name())
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.TextAntialiasing)
            side = self._line() * 0.55
            painter.setPen(current().soft)
            head = QRectF(0, 0, self._after_head(self.width()), self._line())
            painter.drawText(head, Qt.AlignmentFlag.AlignVCenter, self._head)
            for (at, words), rect in zip(self._cells, self._places(self.width()), strict=True):
                swatch = QRectF(rect.left(), rect.center().y() - side / 2, side, side)
                founder = at if 0 <= at < PALETTE_SIZE else OTHERS
                painter.fillRect(swatch, colour(look.founder(founder)))
                painter.setPen(QPen(current().soft, 1))
                painter.drawRect(swatch)
                painter.setPen(current().ink)
                room = rect.adjusted(side + 6, 0, -step() / 2, 0)
                said = painter.fontMetrics().elidedText(
                    words, Qt.TextElideMode.ElideRight, round(room.width())
                )
                painter.drawText(room, Qt.AlignmentFlag.AlignVCenter, said)
        finally:
            painter.end()
