"""What a screen reader finds in the picture: a list of tags, each with its words."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any, cast

from PySide6.QtCore import QObject, QRect
from PySide6.QtGui import QAccessible, QAccessibleInterface, QColor, QWindow
from PySide6.QtWidgets import QAccessibleWidget, QWidget

if TYPE_CHECKING:
    from pedigreeview.window.canvas import PedigreeCanvas

__all__ = ["CanvasAccess", "TagAccess", "install"]


class TagAccess(QAccessibleInterface):
    """One tag, pack, chain or knot."""

    def __init__(self, canvas: PedigreeCanvas, key: str) -> None:
        super().__init__()
        self._canvas = canvas
        self.key = key

    def isValid(self) -> bool:
        return True

    def object(self) -> QObject | None:  # type: ignore[override]
        return None

    def window(self) -> QWindow | None:  # type: ignore[override]
        return None

    def parent(self) -> QAccessibleInterface | None:  # type: ignore[override]
        return QAccessible.queryAccessibleInterface(self._canvas)

    def child(self, index: int) -> QAccessibleInterface | None:  # type: ignore[override]
        return None

    def childAt(self, x: int, y: int) -> QAccessibleInterface | None:  # type: ignore[override]
        return None

    def childCount(self) -> int:
        return 0

    def indexOfChild(self, child: QAccessibleInterface) -> int:
        return -1

    def text(self, kind: QAccessible.Text) -> str:
        return self._canvas.words_of(self.key) if kind == QAccessible.Text.Name else ""

    def setText(self, kind: QAccessible.Text, text: str) -> None:
        return None

    def rect(self) -> QRect:
        inside = self._canvas.rect_of(self.key)
        return QRect(self._canvas.viewport().mapToGlobal(inside.topLeft()), inside.size())

    def role(self) -> QAccessible.Role:
        return QAccessible.Role.ListItem

    def state(self) -> QAccessible.State:
        state = QAccessible.State()
        state.focusable = True
        state.selectable = True
        if self.key == self._canvas.selected_code():
            state.selected = True
            state.focused = self._canvas.hasFocus()
        return state

    def foregroundColor(self) -> QColor:
        return QColor()

    def backgroundColor(self) -> QColor:
        return QColor()


class CanvasAccess(QAccessibleWidget):
    """The picture as a list."""

    def __init__(self, canvas: PedigreeCanvas) -> None:
        super().__init__(canvas, QAccessible.Role.List, "Pedigree picture")
        self._canvas = canvas
        self._tags: dict[str, TagAccess] = {}

    def _tag(self, key: str) -> TagAccess:
        held = self._tags.get(key)
        if held is None:
            held = self._tags[key] = TagAccess(self._canvas, key)
        return held

    def childCount(self) -> int:
        return len(self._canvas.tag_codes())

    def child(self, index: int) -> QAccessibleInterface | None:  # type: ignore[override]
        codes = self._canvas.tag_codes()
        return self._tag(codes[index]) if 0 <= index < len(codes) else None

    def indexOfChild(self, child: QAccessibleInterface) -> int:
        codes = self._canvas.tag_codes()
        key = getattr(child, "key", "")
        return codes.index(key) if key in codes else -1

    def childAt(self, x: int, y: int) -> QAccessibleInterface | None:  # type: ignore[override]
        from PySide6.QtCore import QPoint

        spot = self._canvas.viewport().mapFromGlobal(QPoint(x, y))
        key = self._canvas.part_at(spot)
        return self._tag(key) if key in self._canvas.tag_codes() else None

    def focusChild(self) -> QAccessibleInterface | None:  # type: ignore[override]
        code = self._canvas.selected_code()
        return self._tag(code) if code in self._canvas.tag_codes() else None


_held: dict[int, Any] = {}
_installed: list[bool] = []


def _factory(name: str, subject: QObject) -> QAccessibleInterface | None:
    from pedigreeview.window.canvas import PedigreeCanvas

    if not isinstance(subject, PedigreeCanvas):
        return None
    # Qt does not keep the Python side of an interface alive; the canvas's end lets it go.
    made = CanvasAccess(subject)
    number = id(subject)
    _held[number] = made
    cast("QWidget", subject).destroyed.connect(lambda *_: _held.pop(number, None))
    return made


def install() -> None:
    """Let Qt make these interfaces; once is enough."""
    if not _installed:
        QAccessible.installFactory(_factory)
        _installed.append(True)
