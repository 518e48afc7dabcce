"""A small card of the plant under the pointer, after the pointer has rested on it for a moment.

It takes no focus and no click, and goes when the pointer leaves, a key is pressed or anything
moves.  For a screen reader it does not come at all: the words are in the tag's description.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Protocol, cast

from PySide6.QtCore import QEvent, QObject, QPoint, QRect, QRectF, QSize, Qt, QTimer
from PySide6.QtGui import QAccessible, QColor, QGuiApplication, QPainter, QPaintEvent
from PySide6.QtWidgets import QAbstractScrollArea, QGridLayout, QLabel, QWidget

from pedigreeview.window.errands import Errands
from pedigreeview.window.labels import clear, column
from pedigreeview.window.plant_facts import PlantFacts
from pedigreeview.window.style import current, step

__all__ = ["HoverCard", "HoverCards"]

_AFTER = 600
"""Milliseconds that the pointer rests before the card comes."""
_GAP = 10


class _Hovered(Protocol):
    """What a view must have for cards."""

    plant_tips: bool

    def rect_of(self, key: str) -> QRect: ...
    def moving(self) -> bool: ...


class HoverCard(QWidget):
    """Code, name, generation and a few lines, on a slip of paper."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._within = parent
        self.setObjectName("hoverCard")
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.code = ""
        self._outer = column(max(2, step() // 3))
        self.setLayout(self._outer)
        self.hide()

    def show_facts(self, facts: PlantFacts, beside: QRect) -> None:
        """Show a plant's card beside a rectangle of the window that it does not cover."""
        self.code = facts.code
        s = step()
        clear(self._outer)
        self._outer.setContentsMargins(2 * s, s, 2 * s, s)
        head = _label(facts.code, "heading3")
        self._outer.addWidget(head)
        below = " · ".join(part for part in (facts.name, facts.generation) if part)
        if below:
            self._outer.addWidget(_label(below, "soft"))
        grid = QGridLayout()
        grid.setHorizontalSpacing(s)
        grid.setVerticalSpacing(max(1, s // 4))
        for at, (name, value) in enumerate(facts.lines):
            grid.addWidget(_label(name, "soft"), at, 0, Qt.AlignmentFlag.AlignTop)
            grid.addWidget(_label(value, "text"), at, 1)
        grid.setColumnStretch(1, 1)
        self._outer.addLayout(grid)
        self._outer.activate()
        self._lay(beside)
        self.show()
        self.raise_()

    def words(self) -> str:
        """Everything on the card, line by line."""
        return "\n".join(one.text() for one in self.findChildren(QLabel))

    def _lay(self, beside: QRect) -> None:
        room = self._within.size()
        wide = min(max(22 * step(), self._outer.sizeHint().width()), 46 * step(), room.width())
        high = self._outer.heightForWidth(wide) if self._outer.hasHeightForWidth() else -1
        size = QSize(wide, high if high > 0 else self._outer.sizeHint().height())
        left = min(max(0, beside.center().x() - size.width() // 2), room.width() - size.width())
        top = beside.bottom() + _GAP
        if top + size.height() > room.height():
            top = max(0, beside.top() - _GAP - size.height())
        self.setGeometry(QRect(QPoint(left, top), size))

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(QColor(current().soft))
            painter.setBrush(QColor(current().paper))
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(0.5, 0.5, -0.5, -0.5), 4, 4)
        finally:
            painter.end()


def _label(text: str, role: str) -> QLabel:
    label = QLabel(text)
    label.setProperty("role", role)
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setWordWrap(True)
    return label


class HoverCards(QObject):
    """Brings the card for one view and takes it away.

    Parameters
    ----------
    view : it says by `hovered(code)` what the pointer is on
    ask : the facts of a plant; called off the window's thread
    wanted : whether a card is wanted for a plant, such as not where a larger one lies open
    """

    def __init__(
        self,
        view: QAbstractScrollArea,
        errands: Errands,
        ask: Callable[[str], PlantFacts],
        wanted: Callable[[str], bool] = lambda code: True,
        after: int = _AFTER,
    ) -> None:
        super().__init__(view)
        self._view, self._errands, self._ask, self._wanted = view, errands, ask, wanted
        self._shown = cast(_Hovered, view)
        self._shown.plant_tips = False
        self._kind = f"hover:{view.objectName()}"
        self._code = ""
        self.card: HoverCard | None = None
        self._rest = QTimer(self)
        self._rest.setSingleShot(True)
        self._rest.setInterval(after)
        self._rest.timeout.connect(self._rested)
        view.hovered.connect(self._hovered)  # type: ignore[attr-defined]
        view.installEventFilter(self)
        view.viewport().installEventFilter(self)

    @property
    def code(self) -> str:
        """The plant whose card is shown, or ''."""
        return self.card.code if self.card is not None and self.card.isVisible() else ""

    def _hovered(self, code: str) -> None:
        self.drop()
        self._code = code
        if code and not QAccessible.isActive() and self._wanted(code):
            self._rest.start()

    def drop(self) -> None:
        """Take the card away, and let none come."""
        self._rest.stop()
        self._code = ""
        self._errands.drop(self._kind)
        if self.card is not None:
            self.card.hide()

    def _rested(self) -> None:
        code = self._code
        pressed = QGuiApplication.mouseButtons() != Qt.MouseButton.NoButton
        if not code or pressed or self._shown.moving() or not self._view.isVisible():
            return
        ask = self._ask
        self._errands.ask(self._kind, lambda: ask(code), self._come, lambda fault: None)

    def _come(self, facts: PlantFacts) -> None:
        place = self._shown.rect_of(facts.code)
        if facts.code != self._code or self._shown.moving() or not place.isValid():
            return
        window = self._view.window()
        if self.card is None:
            self.card = HoverCard(window)
        corner = self._view.viewport().mapTo(window, place.topLeft())
        self.card.show_facts(facts, QRect(corner, place.size()))

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() in (
            QEvent.Type.MouseButtonPress,
            QEvent.Type.Wheel,
            QEvent.Type.KeyPress,
            # A key that is a shortcut of the window is no key press of the view.
            QEvent.Type.ShortcutOverride,
            QEvent.Type.Leave,
            QEvent.Type.Hide,
            QEvent.Type.FocusOut,
        ):
            self.drop()
        return False
