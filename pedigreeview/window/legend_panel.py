"""The signs of the picture with what they mean, drawn by the code that draws the picture."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from PySide6.QtCore import QPointF, QRectF, QSize, QSizeF, Qt, Signal
from PySide6.QtGui import QKeyEvent, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QSizePolicy, QWidget

from pedigreeview.drawing.blocks import View
from pedigreeview.drawing.free_ground import Ground
from pedigreeview.drawing.free_spots import spot_at
from pedigreeview.drawing.legend import Entry, legend_entries, legend_height, paint_legend
from pedigreeview.drawing.legend_list import legend_list, list_height, paint_list
from pedigreeview.drawing.placing import Placed
from pedigreeview.drawing.theme import theme
from pedigreeview.drawing.tinting import TintKey
from pedigreeview.window.labels import column, heading, plain_button, scrolled
from pedigreeview.window.saying import say
from pedigreeview.window.style import current_name, step

__all__ = ["KeyPanel", "Legend", "all_signs"]

_COLUMN = 306.0
"""Width of one column of the legend, in its own units."""
_STEP = 8.0
"""The step of the grid at which the legend has its own size."""
_MOST_SIDE, _LEAST_SIDE = 0.45, 0.8
"""Part of the stage that the key takes at most, and part of its own width that it keeps."""
_LEAST_BESIDE = 24
"""Steps of width that a picture needs beside the key; with less the key lies over it."""
_ASIDE = 236.0
"""Width of the key beside the picture, in the legend's own units."""


def all_signs() -> tuple[Entry, ...]:
    """Every sign that a picture can hold."""
    empty = Placed(View(None, (), (), (), ()), "down", (), (), (), (), (0.0, 0.0, 0.0, 0.0))
    return legend_entries(empty, everything=True)


class Legend(QWidget):
    """The drawn legend; as wide as it is given room, as tall as it then needs."""

    def __init__(self, entries: tuple[Entry, ...] = (), most_columns: int = 5) -> None:
        super().__init__()
        self._entries = entries
        self._most = most_columns
        policy = QSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)
        self.show_entries(entries)

    def show_entries(self, entries: tuple[Entry, ...]) -> None:
        """Show other signs."""
        # Told before they are wrapped: half a sentence is known to no translation.
        self._entries = tuple(replace(entry, words=say(entry.words)) for entry in entries)
        words = "; ".join(entry.said for entry in self._entries)
        self.setAccessibleName(self.tr("Signs: {}").format(words))
        self.updateGeometry()
        self.update()

    def _scale(self) -> float:
        return step() / _STEP

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


class SignList(QWidget):
    """The signs in one narrow column, by kind."""

    def __init__(self) -> None:
        super().__init__()
        self._entries: tuple[Entry, ...] = ()
        self._heads = {
            "Tint": self.tr("Tint"),
            "Founders": self.tr("Founders"),
            "Tags": self.tr("Tags"),
            "Lines": self.tr("Lines"),
            "Crosses": self.tr("Crosses"),
        }
        policy = QSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    def show_entries(self, entries: tuple[Entry, ...]) -> None:
        """Show other signs."""
        self._entries = entries
        self.setAccessibleName(self.tr("Signs: {}").format("; ".join(e.said for e in entries)))
        self.setMinimumHeight(self.heightForWidth(self.width()))
        self.update()

    def _scale(self) -> float:
        return step() / _STEP

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        scale = self._scale()
        return round(list_height(self._entries, width / scale) * scale) + step()

    def sizeHint(self) -> QSize:
        width = round(_ASIDE * self._scale())
        return QSize(width, self.heightForWidth(width))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.setMinimumHeight(self.heightForWidth(self.width()))

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setRenderHint(QPainter.RenderHint.TextAntialiasing)
            painter.scale(self._scale(), self._scale())
            rows = legend_list(self._entries, self.width() / self._scale(), self._heads)
            paint_list(painter, rows, theme(current_name()), 0.0, 2.0)
        finally:
            painter.end()


class KeyPanel(QFrame):
    """The key to the picture: a column at its side, that folds to its title over the picture."""

    closed = Signal()
    turned = Signal()
    """It was folded or opened."""

    def __init__(self, stage: QWidget) -> None:
        super().__init__(stage)
        self._stage = stage
        self.setObjectName("key")
        self.setAccessibleName(self.tr("Key to the signs"))
        s = step()
        layout = column(max(2, s // 2))
        layout.setContentsMargins(2 * s, s, s, s)
        self.setLayout(layout)
        head = QHBoxLayout()
        head.setSpacing(0)
        self._title = heading(self.tr("Key to the signs"), 3)
        head.addWidget(self._title, 1)
        self.fold_button = plain_button("▴", "", self.turn)
        self.close_button = plain_button("✕", self.tr("Put the key away"), self.closed.emit)
        head.addWidget(self.fold_button)
        head.addWidget(self.close_button)
        layout.addLayout(head)
        self.legend = SignList()
        self._area = scrolled(self.legend)
        self._area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        layout.addWidget(self._area, 1)
        self.all_button = QPushButton()
        self.all_button.setCheckable(True)
        self.all_button.toggled.connect(self._tell)
        layout.addWidget(self.all_button, 0, Qt.AlignmentFlag.AlignLeft)
        self.folded = False
        self._here: tuple[Entry, ...] = ()
        self._everything: tuple[Entry, ...] = ()
        self._set_folded(folded=False)
        self._tell()
        self.hide()

    def side(self) -> int:
        """Pixels that it takes from the picture's side; none where it lies over the picture."""
        wide = self._wide()
        leaves = self._stage.width() - wide >= _LEAST_BESIDE * step()
        return wide if leaves and not self.folded else 0

    def _wide(self) -> int:
        """Its width: less where the stage is narrow, but never too little for its words."""
        wanted = round(_ASIDE * step() / _STEP) + 6 * step()
        least, most = round(wanted * _LEAST_SIDE), round(self._stage.width() * _MOST_SIDE)
        return min(max(min(wanted, most), least), self._stage.width())

    def turn(self) -> None:
        """Fold it to its title, or open it again."""
        self._set_folded(not self.folded)
        self.turned.emit()

    def _set_folded(self, folded: bool) -> None:
        self.folded = folded
        self._area.setVisible(not folded)
        self.all_button.setVisible(not folded)
        self.fold_button.setText("▾" if folded else "▴")
        name = self.tr("Open the key") if folded else self.tr("Fold the key to its title")
        self.fold_button.setAccessibleName(name)
        self.fold_button.setToolTip(name)

    def _tell(self) -> None:
        """Show the signs of this picture, or all that there are."""
        every = self.all_button.isChecked()
        self.all_button.setText(
            self.tr("Only the signs of this picture") if every else self.tr("All signs")
        )
        self.legend.show_entries(self._everything if every else self._here)
        self._area.verticalScrollBar().setValue(0)

    def show_key(
        self, placed: Placed, tint: TintKey | None = None, shown: Sequence[str] = ()
    ) -> None:
        """Show the tint and the signs of a picture."""
        self._here = legend_entries(placed, key=tint, shown=shown)
        self._everything = legend_entries(placed, key=tint, everything=True)
        self._tell()
        self.show()
        self.raise_()

    def lie(self, lying: Ground, stage: QRectF, card: QRectF | None = None) -> None:
        """Lie at the right side of the stage, or folded in the corner where it hides least.

        card : where the card lies; the folded key never lies on it
        """
        if not self.folded:
            wide = self._wide()
            self.setGeometry(QRectF(stage.right() - wide, 0, wide, stage.height()).toRect())
            return
        size, card = QSizeF(self._strip()), card or QRectF()
        rects = [
            QRectF(QPointF(*corner), size)
            for corner in _corners(lying.around, size, float(step()), card)
        ]
        clear = [rect for rect in rects if not rect.intersects(card)] or rects
        best = min(
            (spot_at(lying, rect) for rect in clear),
            key=lambda spot: (spot.forbidden, spot.codes, spot.hidden),
        )
        self.setGeometry(best.rect.toRect())

    def _strip(self) -> QSize:
        s = step()
        width = self._title.sizeHint().width() + 5 * s
        for button in (self.fold_button, self.close_button):
            width += button.sizeHint().width()
        return QSize(width, self.close_button.sizeHint().height() + 2 * s + s // 2)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.closed.emit()
            return
        super().keyPressEvent(event)


def _corners(around: QRectF, size: QSizeF, gap: float, card: QRectF) -> list[tuple[float, float]]:
    """The corners of the stage, below first, and the places right below and above the card."""
    low, high = around.bottom() - gap - size.height(), around.top() + gap
    lefts = around.left() + gap, around.right() - gap - size.width()
    found = [(left, top) for top in (low, high) for left in lefts]
    if card.isValid():
        tops = card.bottom() + gap, card.top() - gap - size.height()
        found += [(lefts[1], top) for top in tops if high <= top <= low]
    return found
