"""What a screen reader finds in a painted view: a list of what it shows, each with its words.

A view that is painted by hand has no widgets in it.  It carries a `Spoken` that names its children
and says where they lie; the interfaces here are made of that.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import QObject, QPoint, QRect
from PySide6.QtGui import QAccessible, QAccessibleInterface, QColor, QWindow
from PySide6.QtWidgets import QAbstractScrollArea, QAccessibleWidget

__all__ = ["ListAccess", "Spoken", "TagAccess", "install"]


@dataclass(frozen=True, slots=True)
class Spoken:
    """What a view tells a screen reader.

    listed : keys of what there is, in reading order
    words : the name of a key, in words that can be spoken
    more : what may be added to it; ''
    rect : where it lies in the viewport
    at : the key at a place of the viewport, or ''
    current : the key that the arrow keys are at, or ''
    picked : whether it is picked
    """

    listed: Callable[[], Sequence[str]]
    words: Callable[[str], str]
    more: Callable[[str], str]
    rect: Callable[[str], QRect]
    at: Callable[[QPoint], str]
    current: Callable[[], str]
    picked: Callable[[str], bool]


class TagAccess(QAccessibleInterface):
    """One tag, pack, chain, knot, plant or band."""

    def __init__(self, view: QAbstractScrollArea, spoken: Spoken, key: str) -> None:
        super().__init__()
        self._view, self._spoken = view, spoken
        self.key = key

    def isValid(self) -> bool:
        return True

    def object(self) -> QObject | None:  # type: ignore[override]
        return None

    def window(self) -> QWindow | None:  # type: ignore[override]
        return None

    def parent(self) -> QAccessibleInterface | None:  # type: ignore[override]
        return QAccessible.queryAccessibleInterface(self._view)

    def child(self, index: int) -> QAccessibleInterface | None:  # type: ignore[override]
        return None

    def childAt(self, x: int, y: int) -> QAccessibleInterface | None:  # type: ignore[override]
        return None

    def childCount(self) -> int:
        return 0

    def indexOfChild(self, child: QAccessibleInterface) -> int:
        return -1

    def text(self, kind: QAccessible.Text) -> str:
        if kind == QAccessible.Text.Name:
            return self._spoken.words(self.key)
        return self._spoken.more(self.key) if kind == QAccessible.Text.Description else ""

    def setText(self, kind: QAccessible.Text, text: str) -> None:
        return None

    def rect(self) -> QRect:
        inside = self._spoken.rect(self.key)
        return QRect(self._view.viewport().mapToGlobal(inside.topLeft()), inside.size())

    def role(self) -> QAccessible.Role:
        return QAccessible.Role.ListItem

    def state(self) -> QAccessible.State:
        state = QAccessible.State()
        state.focusable = True
        state.selectable = True
        state.multiSelectable = True
        state.selected = self._spoken.picked(self.key)
        if self.key == self._spoken.current():
            state.selected = True
            state.focused = self._view.hasFocus()
        return state

    def foregroundColor(self) -> QColor:
        return QColor()

    def backgroundColor(self) -> QColor:
        return QColor()


class ListAccess(QAccessibleWidget):
    """The view as a list."""

    def __init__(self, view: QAbstractScrollArea, spoken: Spoken) -> None:
        super().__init__(view, QAccessible.Role.List, view.accessibleName())
        self._view, self._spoken = view, spoken
        self._tags: dict[str, TagAccess] = {}

    def _tag(self, key: str) -> TagAccess:
        held = self._tags.get(key)
        if held is None:
            held = self._tags[key] = TagAccess(self._view, self._spoken, key)
        return held

    def childCount(self) -> int:
        return len(self._spoken.listed())

    def child(self, index: int) -> QAccessibleInterface | None:  # type: ignore[override]
        keys = self._spoken.listed()
        return self._tag(keys[index]) if 0 <= index < len(keys) else None

    def indexOfChild(self, child: QAccessibleInterface) -> int:
        keys = self._spoken.listed()
        key = getattr(child, "key", "")
        return keys.index(key) if key in keys else -1

    def childAt(self, x: int, y: int) -> QAccessibleInterface | None:  # type: ignore[override]
        spot = self._view.viewport().mapFromGlobal(QPoint(x, y))
        key = self._spoken.at(spot)
        return self._tag(key) if key in self._spoken.listed() else None

    def focusChild(self) -> QAccessibleInterface | None:  # type: ignore[override]
        key = self._spoken.current()
        return self._tag(key) if key in self._spoken.listed() else None


_held: dict[int, Any] = {}
_installed: list[bool] = []


def _factory(name: str, subject: QObject) -> QAccessibleInterface | None:
    spoken = getattr(subject, "spoken", None)
    if not isinstance(spoken, Spoken) or not isinstance(subject, QAbstractScrollArea):
        return None
    # Qt does not keep the Python side of an interface alive; the view's end lets it go.
    made = ListAccess(subject, spoken)
    number = id(subject)
    _held[number] = made
    subject.destroyed.connect(lambda *_: _held.pop(number, None))
    return made


def install() -> None:
    """Let Qt make these interfaces; once is enough."""
    if not _installed:
        QAccessible.installFactory(_factory)
        _installed.append(True)
