"""The heat map on the screen: to scroll, to zoom, to point at, and to walk through by keys.

A click, or Enter, asks for the pair.  The view says in words what lies under the mouse or the keys;
a screen reader is told the squares of the row that the keys are in.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable

from PySide6.QtCore import QEvent, QPoint, QPointF, QRect, Qt, Signal
from PySide6.QtGui import (
    QAccessible,
    QAccessibleAnnouncementEvent,
    QFocusEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QAbstractScrollArea, QFrame

from pedigreeview.drawing.heat_picture import HeatFrame, HeatPicture, HeatShowing, paint_heat
from pedigreeview.window.canvas_access import Spoken, install
from pedigreeview.window.style import current, step

__all__ = ["HeatMap"]

_ZOOM = 1.25
_DRAGGED = 5
_PAGE = 10
Square = tuple[int, int]


class HeatMap(QAbstractScrollArea):
    """Shows a `HeatPicture`; every place in it is a pair of plants."""

    pointed = Signal(object)
    """(row, column) under the mouse, else where the keys are, else None."""
    pair_chosen = Signal(str, str)
    plant_wanted = Signal(str)
    """A code beside the table was clicked twice."""

    def __init__(self) -> None:
        super().__init__()
        install()
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
        self.setAccessibleName(self.tr("Heat map of relatedness"))
        self.setAccessibleDescription(
            self.tr("Arrow keys move from pair to pair; Enter explains the pair.")
        )
        self.viewport().setMouseTracking(True)
        self.picture: HeatPicture | None = None
        self.words: Callable[[int, int], str] = lambda row, column: ""
        """Says a square in words."""
        self.cell = 1.0
        self._fitted = True
        self._hover: Square | None = None
        self._cursor: Square | None = None
        self._chosen: Square | None = None
        self._marked = -1
        self._lit: frozenset[int] = frozenset()
        self._pressed: QPoint | None = None
        self._dragged_from: tuple[int, int] | None = None
        self.spoken = Spoken(
            self._listed,
            self._spoken_words,
            lambda key: "",
            self._spoken_rect,
            self._key_at,
            lambda: _key(self._cursor),
            lambda key: key == _key(self._chosen),
        )
        for bar in (self.horizontalScrollBar(), self.verticalScrollBar()):
            bar.valueChanged.connect(lambda _: self.viewport().update())

    # What is shown ------------------------------------------------------------------------------

    def show_picture(self, picture: HeatPicture | None, *, keep: bool = False) -> None:
        """Show another table; `keep`: the same plants in the same order, seen as before."""
        self.picture = picture
        if not keep:
            self._hover = self._cursor = self._chosen = None
            self._lit = frozenset()
            self._fitted = True
        if self._fitted:
            self.fit()
        else:
            self._set_bars()
        self.viewport().update()
        if not keep:
            self.pointed.emit(None)

    def mark(self, row: int) -> None:
        """Bring out the row of the focus; −1 for none."""
        self._marked = row
        self.viewport().update()

    def light(self, codes: Iterable[str]) -> None:
        """Bring out the codes that an explanation points at; none puts them back."""
        wanted = set(codes)
        held = self.picture.codes if self.picture is not None else ()
        self._lit = frozenset(row for row, code in enumerate(held) if code in wanted)
        self.viewport().update()

    def frame(self) -> HeatFrame:
        """Which part of the table the window holds."""
        size = self.viewport().size()
        return HeatFrame(
            self.cell,
            self.horizontalScrollBar().value(),
            self.verticalScrollBar().value(),
            size.width(),
            size.height(),
        )

    def fit(self) -> None:
        """All squares at once, as large as there is room, none larger than can be read well."""
        picture = self.picture
        if picture is None or not picture.count:
            return
        self._fitted = True
        size = self.maximumViewportSize()
        room = min(size.width() - picture.left, size.height() - picture.above) - 4
        # Where the codes leave hardly any room the table is scrolled after all.
        room = max(room, 16.0 * step())
        self.cell = min(1.8 * picture.largest_cell(), room / picture.count)
        self._set_bars()
        self.viewport().update()

    def zoom(self, factor: float, at: QPointF | None = None) -> None:
        """Make squares larger or smaller about a place of the view."""
        picture = self.picture
        if picture is None:
            return
        held = self.cell
        smallest = min(1.0, held)
        self.cell = max(smallest, min(3 * picture.largest_cell(), held * factor))
        self._fitted = False
        middle = QPointF(self.viewport().rect().center()) if at is None else at
        if at is None and self._cursor is not None:
            middle = picture.rect(self.frame(), *self._cursor).center()
        bars = self.horizontalScrollBar(), self.verticalScrollBar()
        inside = middle.x() - picture.left, middle.y() - picture.above
        places = [
            (bar.value() + part) / held * self.cell - part
            for bar, part in zip(bars, inside, strict=True)
        ]
        self._set_bars()
        for bar, place in zip(bars, places, strict=True):
            bar.setValue(round(place))
        self.viewport().update()

    def _set_bars(self) -> None:
        picture = self.picture
        whole = picture.whole(self.cell) if picture is not None else (0.0, 0.0)
        head = (picture.left, picture.above) if picture is not None else (0.0, 0.0)
        # Bars that are still there when all fits must not keep themselves in place.
        size = self.maximumViewportSize()
        if whole[0] > size.width() or whole[1] > size.height():
            size = self.viewport().size()
        for bar, all_of_it, room, beside in (
            (self.horizontalScrollBar(), whole[0], size.width(), head[0]),
            (self.verticalScrollBar(), whole[1], size.height(), head[1]),
        ):
            bar.setRange(0, max(0, round(all_of_it - room)))
            bar.setPageStep(max(1, round(room - beside)))
            bar.setSingleStep(max(1, round(max(self.cell, step()))))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self._fitted:
            self.fit()
        else:
            self._set_bars()

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self.viewport())
        try:
            # Numbers and codes stand where the squares are, however the window is turned.
            painter.setLayoutDirection(Qt.LayoutDirection.LeftToRight)
            painter.fillRect(self.viewport().rect(), current().sheet)
            if self.picture is not None:
                showing = HeatShowing(
                    self._hover, self._cursor, self._chosen, self._marked, self._lit
                )
                paint_heat(painter, self.picture, self.frame(), showing)
            if self.hasFocus():
                painter.setPen(current().focus)
                painter.drawRect(self.viewport().rect().adjusted(0, 0, -1, -1))
        finally:
            painter.end()

    # By mouse -----------------------------------------------------------------------------------

    def where(self, a: str, b: str) -> QPoint:
        """Where the square of two plants lies in the viewport."""
        assert self.picture is not None
        codes = self.picture.codes
        rect = self.picture.rect(self.frame(), codes.index(a), codes.index(b))
        return rect.center().toPoint()

    def _square(self, place: QPointF) -> Square | None:
        if self.picture is None:
            return None
        return self.picture.at(self.frame(), place.x(), place.y())

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        place = event.position().toPoint()
        if self._pressed is not None and event.buttons() & Qt.MouseButton.LeftButton:
            moved = place - self._pressed
            if self._dragged_from is None and moved.manhattanLength() > _DRAGGED:
                bars = self.horizontalScrollBar(), self.verticalScrollBar()
                self._dragged_from = bars[0].value(), bars[1].value()
            if self._dragged_from is not None:
                self.horizontalScrollBar().setValue(self._dragged_from[0] - moved.x())
                self.verticalScrollBar().setValue(self._dragged_from[1] - moved.y())
                return
        self._point(self._square(event.position()))

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton:
            self._pressed, self._dragged_from = event.position().toPoint(), None

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if event.button() != Qt.MouseButton.LeftButton:
            return
        dragged, self._pressed, self._dragged_from = self._dragged_from, None, None
        square = self._square(event.position())
        if dragged is None and square is not None:
            self._cursor = square
            self.choose(*square)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        if self.picture is None:
            return
        row = self.picture.row_at(self.frame(), event.position().x(), event.position().y())
        if row >= 0:
            self.plant_wanted.emit(self.picture.codes[row])

    def leaveEvent(self, event: QEvent) -> None:
        super().leaveEvent(event)
        self._point(None)

    def wheelEvent(self, event: QWheelEvent) -> None:
        if event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            turns = event.angleDelta().y() / 120
            self.zoom(_ZOOM**turns, event.position())
            event.accept()
            return
        super().wheelEvent(event)

    def _point(self, square: Square | None) -> None:
        if square != self._hover:
            self._hover = square
            self.viewport().update()
            self.pointed.emit(square if square is not None else self._cursor)

    # By keys ------------------------------------------------------------------------------------

    def event(self, event: QEvent) -> bool:
        # Arrows with Shift and the like are the window's; plain ones are the table's.
        if event.type() == QEvent.Type.ShortcutOverride and isinstance(event, QKeyEvent):
            keys = (Qt.Key.Key_Return, Qt.Key.Key_Plus, Qt.Key.Key_Minus, Qt.Key.Key_0)
            plain = event.modifiers() in (
                Qt.KeyboardModifier.NoModifier,
                Qt.KeyboardModifier.KeypadModifier,
            )
            if plain and event.key() in keys:
                event.accept()
                return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        picture = self.picture
        if picture is None or not picture.count:
            super().keyPressEvent(event)
            return
        key, last = event.key(), picture.count - 1
        row, column = self._cursor or (0, 0)
        whole = bool(event.modifiers() & Qt.KeyboardModifier.ControlModifier)
        moves = {
            Qt.Key.Key_Left: (row, column - 1),
            Qt.Key.Key_Right: (row, column + 1),
            Qt.Key.Key_Up: (row - 1, column),
            Qt.Key.Key_Down: (row + 1, column),
            Qt.Key.Key_PageUp: (row - _PAGE, column),
            Qt.Key.Key_PageDown: (row + _PAGE, column),
            Qt.Key.Key_Home: (0 if whole else row, 0),
            Qt.Key.Key_End: (last if whole else row, last),
        }
        if key in moves and not event.modifiers() & Qt.KeyboardModifier.AltModifier:
            to = moves[Qt.Key(key)] if self._cursor is not None or whole else (0, 0)
            self.go_to(max(0, min(last, to[0])), max(0, min(last, to[1])))
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space) and self._cursor:
            self.choose(*self._cursor)
        elif key in (Qt.Key.Key_Plus, Qt.Key.Key_Equal):
            self.zoom(_ZOOM)
        elif key == Qt.Key.Key_Minus:
            self.zoom(1 / _ZOOM)
        elif key == Qt.Key.Key_0:
            self.fit()
        else:
            super().keyPressEvent(event)

    def go_to(self, row: int, column: int) -> None:
        """Put the cursor of the keys on a square and show it."""
        picture = self.picture
        if picture is None:
            return
        self._cursor = (row, column)
        rect = picture.rect(self.frame(), row, column)
        size = self.viewport().size()
        for bar, low, high, start, room in (
            (self.horizontalScrollBar(), rect.left(), rect.right(), picture.left, size.width()),
            (self.verticalScrollBar(), rect.top(), rect.bottom(), picture.above, size.height()),
        ):
            if low < start:
                bar.setValue(round(bar.value() + low - start))
            elif high > room:
                bar.setValue(round(bar.value() + high - room + 2))
        self.viewport().update()
        self.pointed.emit(self._cursor)
        if QAccessible.isActive() and self.isVisible():
            told = QAccessibleAnnouncementEvent(self, self.words(row, column))
            QAccessible.updateAccessibility(told)

    def choose(self, row: int, column: int) -> None:
        """Ask for the pair of a square."""
        assert self.picture is not None
        self._chosen = (row, column)
        self.viewport().update()
        self.pointed.emit((row, column))
        self.pair_chosen.emit(self.picture.codes[row], self.picture.codes[column])

    def cursor_square(self) -> Square | None:
        """The square where the keys are."""
        return self._cursor

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self.viewport().update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.viewport().update()

    # For a screen reader ------------------------------------------------------------------------

    def _listed(self) -> list[str]:
        if self.picture is None or not self.picture.count:
            return []
        row = self._cursor[0] if self._cursor is not None else 0
        return [f"{row}:{column}" for column in range(self.picture.count)]

    def _spoken_words(self, key: str) -> str:
        row, column = (int(part) for part in key.split(":"))
        if self.picture is None or max(row, column) >= self.picture.count:
            return ""
        return self.words(row, column)

    def _spoken_rect(self, key: str) -> QRect:
        if self.picture is None:
            return QRect()
        row, column = (int(part) for part in key.split(":"))
        return self.picture.rect(self.frame(), row, column).toAlignedRect()

    def _key_at(self, place: QPoint) -> str:
        return _key(self._square(QPointF(place)))


def _key(square: Square | None) -> str:
    return "" if square is None else f"{square[0]}:{square[1]}"
