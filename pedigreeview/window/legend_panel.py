"""The signs of the picture with what they mean, drawn by the code that draws the picture."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QPointF, QRectF, QSize, QSizeF, Qt, Signal
from PySide6.QtGui import QKeyEvent, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QSizePolicy, QWidget

from pedigreeview.drawing.blocks import View
from pedigreeview.drawing.legend import Entry, legend_entries, legend_height, paint_legend
from pedigreeview.drawing.placing import Placed
from pedigreeview.drawing.theme import theme
from pedigreeview.drawing.tinting import TintKey
from pedigreeview.window.card_placing import Ground, spot_at
from pedigreeview.window.labels import column, heading, plain_button, scrolled
from pedigreeview.window.style import current_name, step

__all__ = ["KeyPanel", "Legend", "all_signs"]

_COLUMN = 306.0
"""Width of one column of the legend, in its own units."""
_STEP = 8.0
"""The step of the grid at which the legend has its own size."""
_SMALLER = 0.85
"""Scale of the key over the picture."""


def all_signs() -> tuple[Entry, ...]:
    """Every sign that a picture can hold."""
    empty = Placed(View(None, (), (), (), ()), "down", (), (), (), (), (0.0, 0.0, 0.0, 0.0))
    return legend_entries(empty, everything=True)


class Legend(QWidget):
    """The drawn legend; as wide as it is given room, as tall as it then needs."""

    def __init__(
        self, entries: tuple[Entry, ...] = (), most_columns: int = 5, scale: float = 1.0
    ) -> None:
        super().__init__()
        self._entries = entries
        self._own = scale
        self._most = most_columns
        policy = QSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)
        self.show_entries(entries)

    def show_entries(self, entries: tuple[Entry, ...]) -> None:
        """Show other signs."""
        self._entries = entries
        self.setAccessibleName(self.tr("Signs: {}").format("; ".join(e.words for e in entries)))
        self.updateGeometry()
        self.update()

    def _scale(self) -> float:
        return self._own * step() / _STEP

    def _across(self, width: float) -> float:
        return min(width / self._scale(), self._most * _COLUMN)

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        return round(legend_height(self._entries, self._across(width)) * self._scale()) + step()

    def sizeHint(self) -> QSize:
        width = round(_COLUMN * self._scale())
        return QSize(width, self.heightForWidth(width))

    def minimumSizeHint(self) -> QSize:
        return QSize(round(_COLUMN * self._scale()), 4 * step())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.setMinimumHeight(self.heightForWidth(self.width()))

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setRenderHint(QPainter.RenderHint.TextAntialiasing)
            painter.scale(self._scale(), self._scale())
            across = self._across(self.width())
            paint_legend(painter, self._entries, theme(current_name()), 0.0, 4.0, across)
        finally:
            painter.end()


class KeyPanel(QFrame):
    """The legend of what occurs in the picture, over a corner of it."""

    closed = Signal()

    def __init__(self, stage: QWidget) -> None:
        super().__init__(stage)
        self.setObjectName("key")
        self.setAccessibleName(self.tr("Key to the signs"))
        s = step()
        layout = column(max(2, s // 2))
        layout.setContentsMargins(2 * s, s, s, s)
        self.setLayout(layout)
        head = QHBoxLayout()
        head.addWidget(heading(self.tr("Key to the signs"), 3), 1)
        self.close_button = plain_button("✕", self.tr("Put the key away"), self.closed.emit)
        head.addWidget(self.close_button)
        layout.addLayout(head)
        self.legend = Legend(scale=_SMALLER)
        self._area = scrolled(self.legend)
        self._area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        layout.addWidget(self._area, 1)
        self.hide()

    def show_key(
        self,
        placed: Placed,
        lying: Ground,
        tint: TintKey | None = None,
        shown: Sequence[str] = (),
    ) -> None:
        """Show the tint and the signs of a picture, in the corner where they hide least."""
        self.legend.show_entries(legend_entries(placed, key=tint, shown=shown))
        self.lie(lying)
        self.show()
        self.raise_()

    def lie(self, lying: Ground) -> None:
        """Lie in a corner, in as many columns as hide least of what is looked at."""
        spots = [
            spot_at(lying, QRectF(QPointF(*corner), size))
            for size in self._sizes(lying.around)
            for corner in _corners(lying.around, size, float(step()))
        ]
        best = min(spots, key=lambda spot: (spot.forbidden, spot.hidden))
        self.setGeometry(best.rect.toRect())

    def _sizes(self, around: QRectF) -> list[QSizeF]:
        s = step()
        head = self.close_button.sizeHint().height() + 5 * s
        room, most = around.width() - 2 * s, around.height() - 2 * s
        sizes = []
        for columns in range(1, 6):
            inner = columns * (round(_COLUMN * _SMALLER * s / _STEP) + 1)
            width = inner + 6 * s
            height = self.legend.heightForWidth(inner) + head
            if columns == 1 or width <= room:
                sizes.append(QSizeF(min(width, room), min(height, most)))
        return sizes

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.closed.emit()
            return
        super().keyPressEvent(event)


def _corners(around: QRectF, size: QSizeF, gap: float) -> list[tuple[float, float]]:
    lefts = around.left() + gap, around.right() - gap - size.width()
    tops = around.bottom() - gap - size.height(), around.top() + gap
    return [(left, top) for top in tops for left in lefts]
