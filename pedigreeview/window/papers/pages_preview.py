"""The pages of a paper one by one, each as it will come out, with keys to turn them."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import QRectF, QSize, QSizeF, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QImage,
    QKeyEvent,
    QPainter,
    QPaintEvent,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QFrame, QHBoxLayout, QScrollArea, QSizePolicy, QWidget

from pedigreeview.book.faults import Fault
from pedigreeview.window.errands import Errands
from pedigreeview.window.labels import column, plain_button, sentence
from pedigreeview.window.saying import say
from pedigreeview.window.style import current, step

if TYPE_CHECKING:
    from pedigreeview.reports.papers import Paper

__all__ = ["PagesPreview"]

KIND = "preview:paper page"
_WIDTH = 1800
"""Pixels across a page, so that it stays sharp on a large screen."""
_FAR = 1_000_000
_ZOOMS = (1.0, 1.6, 2.5)


class _Page(QWidget):
    """One page on its ground, with its edge; or a sentence in its place."""

    turned = Signal(int)
    zoomed = Signal(int)
    """Nearer (1) or further (-1)."""

    def __init__(self) -> None:
        super().__init__()
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.image = QImage()
        self.words = ""
        self.whole = True
        """Whether the whole page is seen."""

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        try:
            colours = current()
            room = QRectF(self.rect()).adjusted(4, 4, -6, -6)
            if self.image.isNull():
                painter.setPen(colours.soft)
                flags = Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap
                painter.drawText(room, int(flags), self.words)
                return
            painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
            ratio = self.devicePixelRatioF()
            size = self.image.size().toSizeF()
            size.scale(room.size(), Qt.AspectRatioMode.KeepAspectRatio)
            page = QRectF(
                room.x() + (room.width() - size.width()) / 2,
                room.y() + (room.height() - size.height()) / 2,
                size.width(),
                size.height(),
            )
            shadow = QColor(colours.ink)
            shadow.setAlpha(46)
            painter.fillRect(page.translated(3, 4), shadow)
            small = self.image.scaled(
                (size * ratio).toSize(),
                Qt.AspectRatioMode.IgnoreAspectRatio,
                Qt.TransformationMode.SmoothTransformation,
            )
            painter.drawImage(page, small)
            painter.setPen(colours.focus if self.hasFocus() else colours.rule)
            painter.drawRect(page)
        finally:
            painter.end()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key, pressed = Qt.Key, event.key()
        if pressed in (key.Key_PageDown, key.Key_Right, key.Key_Down):
            turn = 1
        elif pressed in (key.Key_PageUp, key.Key_Left, key.Key_Up):
            turn = -1
        elif pressed in (key.Key_Plus, key.Key_Equal, key.Key_Minus):
            self.zoomed.emit(-1 if pressed == key.Key_Minus else 1)
            return
        elif pressed in (key.Key_Home, key.Key_End):
            turn = _FAR if pressed == key.Key_End else -_FAR
        else:
            super().keyPressEvent(event)
            return
        self.turned.emit(turn)

    def wheelEvent(self, event: QWheelEvent) -> None:
        turn = event.angleDelta().y()
        if event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self.zoomed.emit(1 if turn > 0 else -1)
        elif turn and self.whole:
            self.turned.emit(-1 if turn > 0 else 1)
        else:
            super().wheelEvent(event)


class PagesPreview(QWidget):
    """One page at a time; what it shows is painted off the window's thread."""

    def __init__(self, errands: Errands, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._errands = errands
        self._paper: Paper | None = None
        self.at = 0
        self._step = 0
        s = step()
        body = column(s)
        self.setLayout(body)
        self.page = _Page()
        self.page.setAccessibleName(self.tr("Preview of the page"))
        self.page.turned.connect(self.turn)
        self.page.zoomed.connect(self.zoom)
        self._area = QScrollArea()
        self._area.setWidgetResizable(True)
        self._area.setFrameShape(QFrame.Shape.NoFrame)
        self._area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._area.setWidget(self.page)
        body.addWidget(self._area, 1)
        row = QHBoxLayout()
        row.setSpacing(s)
        self.before = plain_button("‹", self.tr("The page before"), lambda: self.turn(-1))
        self.after = plain_button("›", self.tr("The next page"), lambda: self.turn(1))
        self.where = sentence("", "soft")
        self.where.setWordWrap(False)
        self.where.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.further = plain_button("−", self.tr("Further (-)"), lambda: self.zoom(-1))
        self.nearer = plain_button("+", self.tr("Nearer (+)"), lambda: self.zoom(1))
        row.addWidget(self.before)
        row.addWidget(self.after)
        row.addWidget(self.where, 1)
        row.addWidget(self.further)
        row.addWidget(self.nearer)
        body.addLayout(row)
        self._tell()

    def show_paper(self, paper: Paper) -> None:
        """Show a paper; the page that was looked at stays, if there still is one."""
        self._paper = paper
        self.at = min(self.at, paper.count - 1)
        self._fit()
        self._draw()

    def show_words(self, words: str) -> None:
        """Say why there is nothing to see."""
        self._paper = None
        self._errands.drop(KIND)
        words = say(words)
        self.page.image, self.page.words = QImage(), words
        self.page.setAccessibleDescription(words)
        self.page.update()
        self._tell()

    def turn(self, by: int) -> None:
        """Turn so many pages on."""
        paper = self._paper
        if paper is None:
            return
        to = max(0, min(self.at + by, paper.count - 1))
        if to != self.at:
            self.at = to
            self._draw()

    def zoom(self, by: int) -> None:
        """Come nearer or go further; at the first step the whole page is seen."""
        self._step = max(0, min(self._step + by, len(_ZOOMS) - 1))
        self._fit()
        self._tell()

    def _fit(self) -> None:
        """The page as large as the zoom says; the first step is the whole of it."""
        room, times = self._area.viewport().size(), _ZOOMS[self._step]
        self.page.whole = self._step == 0
        least = QSize(20 * step(), 20 * step())
        if self._paper is not None and not self.page.whole:
            size = QSizeF(*self._paper.size)
            size.scale(room.toSizeF(), Qt.AspectRatioMode.KeepAspectRatio)
            least = (size * times).toSize() + QSize(12, 12)
        self.page.setMinimumSize(least)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def leave(self) -> None:
        """Nothing more is to be drawn."""
        self._errands.drop(KIND)

    def _draw(self) -> None:
        paper, at = self._paper, self.at
        if paper is None:
            return
        work: Callable[[], QImage] = lambda: paper.image(at, _WIDTH)  # noqa: E731
        self._errands.ask(KIND, work, self._drawn, self._not_drawn)
        self._tell()

    def _drawn(self, image: QImage) -> None:
        self.page.image, self.page.words = image, ""
        self.page.update()

    def _not_drawn(self, fault: Fault) -> None:
        self.show_words(fault.sentence())

    def _tell(self) -> None:
        paper = self._paper
        count = paper.count if paper is not None else 0
        self.before.setEnabled(self.at > 0 and count > 0)
        self.after.setEnabled(self.at < count - 1)
        self.further.setEnabled(self._step > 0 and count > 0)
        self.nearer.setEnabled(self._step < len(_ZOOMS) - 1 and count > 0)
        text = self.tr("Page {} of {}").format(self.at + 1, count) if count else ""
        self.where.setText(text)
        if paper is not None:
            self.page.setAccessibleDescription(f"{text}. {paper.words()}")
