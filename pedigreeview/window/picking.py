"""Picking many plants in a view: Shift with a click or a drag, Ctrl+A, Space, Esc.

`Picking` listens to a view that can say what lies where, and holds the codes.  A drag with Shift
draws a band and adds what it touches; Shift with a click adds a tag or takes it out again.  How a
pick is marked: `drawing.picked`.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Sequence
from dataclasses import dataclass

from PySide6.QtCore import QEvent, QObject, QPoint, QRect, Qt, Signal
from PySide6.QtGui import QKeyEvent, QMouseEvent
from PySide6.QtWidgets import QAbstractScrollArea, QApplication

__all__ = ["Pickable", "Picking"]

_SHIFT = Qt.KeyboardModifier.ShiftModifier
_CONTROL = Qt.KeyboardModifier.ControlModifier


@dataclass(frozen=True, slots=True)
class Pickable:
    """What a view must say of itself.

    at : codes of what lies at a place of the viewport
    inside : codes of what a rectangle of the viewport touches
    all_shown : codes of all that is shown
    current : code of the plant that the keys are at, or ''
    """

    at: Callable[[QPoint], Sequence[str]]
    inside: Callable[[QRect], Sequence[str]]
    all_shown: Callable[[], Sequence[str]]
    current: Callable[[], str]


class Picking(QObject):
    """The plants picked in one view, in the order of picking."""

    changed = Signal(object)
    """The codes now picked, as a tuple; only for what the person does here."""
    clicked = Signal(QPoint)
    """A place was clicked with Shift."""

    def __init__(self, area: QAbstractScrollArea, view: Pickable) -> None:
        super().__init__(area)
        self._area, self._view = area, view
        self._codes: frozenset[str] | None = None
        self._told: tuple[str, ...] = ()
        self._press: QPoint | None = None
        self._band = QRect()
        area.installEventFilter(self)
        area.viewport().installEventFilter(self)

    @property
    def codes(self) -> tuple[str, ...]:
        """The picked plants."""
        return self._told

    @property
    def held(self) -> Collection[str]:
        """The picked plants, to be looked up in."""
        if self._codes is None:
            # Made when first asked for: a whole book can be picked, and few views are painted.
            self._codes = frozenset(self._told)
        return self._codes

    def holds(self, code: str) -> bool:
        """Whether a plant is picked."""
        return code in self.held

    @property
    def band(self) -> QRect:
        """The band being drawn, in the viewport; null when none is."""
        return self._band

    @property
    def drawing(self) -> bool:
        """Whether the mouse is picking at the moment."""
        return self._press is not None

    def set(self, codes: Iterable[str]) -> None:
        """Hold these plants, each named once, without saying so by signal."""
        self._hold(codes)

    def choose(self, codes: Iterable[str]) -> None:
        """Hold these plants, each named once, and say so."""
        if self._hold(codes):
            self.changed.emit(self._told)

    def _hold(self, codes: Iterable[str]) -> bool:
        """Hold them; whether that is another pick than before."""
        told = codes if isinstance(codes, tuple) else tuple(codes)
        if told == self._told:
            return False
        self._told, self._codes = told, None
        self._area.viewport().update()
        return True

    def add(self, codes: Iterable[str]) -> None:
        """Pick these too."""
        new = dict.fromkeys(codes)
        self.choose((*self._told, *(code for code in new if code not in self.held)))

    def turn(self, codes: Sequence[str]) -> None:
        """Pick what is not picked; where all of it is, put it back."""
        if codes and all(code in self.held for code in codes):
            out = set(codes)
            self.choose([code for code in self._told if code not in out])
        else:
            self.add(codes)

    def clear(self) -> None:
        """Pick none."""
        self.choose(())

    # Events of the view -------------------------------------------------------------------------

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if isinstance(event, QMouseEvent):
            return watched is self._area.viewport() and self._mouse(event)
        if isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress:
            return watched is self._area and self._key(event)
        return False

    def _mouse(self, event: QMouseEvent) -> bool:
        kind, spot = event.type(), event.position().toPoint()
        if kind in (QEvent.Type.MouseButtonPress, QEvent.Type.MouseButtonDblClick):
            left = event.button() == Qt.MouseButton.LeftButton
            if not left or not event.modifiers() & _SHIFT or event.modifiers() & _CONTROL:
                return False
            self._press = spot
            return True
        if self._press is None:
            return False
        if kind == QEvent.Type.MouseMove:
            far = (spot - self._press).manhattanLength() >= QApplication.startDragDistance()
            if far or not self._band.isNull():
                self._band = QRect(self._press, spot).normalized()
                self._area.viewport().update()
            return True
        if kind == QEvent.Type.MouseButtonRelease:
            place, band = self._press, self._band
            self._end()
            if not band.isNull():
                self.add(self._view.inside(band))
            elif codes := self._view.at(place):
                self.turn(codes)
                self.clicked.emit(place)
            return True
        return False

    def _end(self) -> None:
        self._press, self._band = None, QRect()
        self._area.viewport().update()

    def _key(self, event: QKeyEvent) -> bool:
        key, held = event.key(), event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier
        if key == Qt.Key.Key_A and held == _CONTROL:
            self.choose(self._view.all_shown())
        elif key == Qt.Key.Key_Space and held == Qt.KeyboardModifier.NoModifier:
            current = self._view.current()
            if not current:
                return False
            self.turn([current])
        elif key == Qt.Key.Key_Escape and self._press is not None:
            self._end()
        elif key == Qt.Key.Key_Escape and self._told:
            self.clear()
        else:
            return False
        event.accept()
        return True
